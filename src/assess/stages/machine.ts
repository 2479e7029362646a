// Stages: the machine as its description tells it, as its inputs move it, and the loop it runs in at one source temperature.

import { type OperatingPoint, operatingPoint } from '../../loop/index.ts';
import { NoSolutionError, OutOfModelError } from '../../numerics/index.ts';
import {
  compressorWith,
  type HermeticCompressor,
  type IdentifiedMachine,
  type RunningMachine,
} from '../../parts/compressor/index.ts';
import type { ShellPlace } from '../../plant/index.ts';
import type { EngineValues, StagedDesign } from './engine-assumptions.ts';
import type { StatesFrom } from './states.ts';

/** A machine where its inputs put it, and how it is known. */
export interface CompressorResult {
  readonly compressor: HermeticCompressor;
  readonly identified: IdentifiedMachine;
  /** As printed on it [A]; null where that is not known. */
  readonly ratedCurrent: number | null;
}

/** What moves the machine: the plain values of its fields, of what the identification leaves open, and its motor's mains. */
export interface MachineInputs {
  readonly compressor: StagedDesign['machine']['compressor'];
  /** By path, the influences that are no field of the design; absent at their likely values. */
  readonly open: Readonly<Record<string, number>>;
}

/** Prefix of every field of the compressor. */
export const compressorPath = 'machine.compressor';

/** The machine with every influence at its present value. */
export function compressorOf({ compressor, open }: MachineInputs, identified: IdentifiedMachine): CompressorResult {
  const moved: Record<string, number> = {};
  for (const { path, estimate } of identified.influences) {
    const value = open[path] ?? valueAt(compressor, path);
    if (value !== undefined && value !== estimate.likely) moved[path] = value;
  }
  const { frequency, voltage, ratedCurrent } = compressor.nameplate;
  const machine = compressorWith(identified, moved);
  const { ratedSupply } = machine;
  const isSame = ratedSupply.frequency === frequency && ratedSupply.voltage === voltage;
  return {
    compressor: isSame ? machine : { ...machine, ratedSupply: { frequency, voltage } },
    identified,
    ratedCurrent: ratedCurrent ?? null,
  };
}

/** The plain number of a field of the compressor; undefined where no field stands at the path. */
export function valueAt(compressor: MachineInputs['compressor'], path: string): number | undefined {
  if (!path.startsWith(`${compressorPath}.`)) return undefined;
  let node: unknown = compressor;
  for (const key of path.slice(compressorPath.length + 1).split('.')) {
    if (typeof node !== 'object' || node === null || !Object.hasOwn(node, key)) return undefined;
    node = (node as Readonly<Record<string, unknown>>)[key];
  }
  return typeof node === 'number' ? node : undefined;
}

/** What the loop needs of the design beside its compressor. */
export interface LoopSlice {
  readonly refrigerant: StagedDesign['machine']['refrigerant'];
  readonly states: StatesFrom;
  readonly waterTemperature: number;
  readonly exchangers: Pick<
    StagedDesign['exchangers'],
    'evaporatorApproach' | 'condenserApproach' | 'superheat' | 'subcooling' | 'suctionPressureLimit'
  >;
  readonly machine: {
    readonly shellPlace: ShellPlace;
    readonly supply: StagedDesign['machine']['supply'];
    /** Where within its doubt the model is taken to stand, −1 to 1. */
    readonly doubt: Pick<EngineValues, 'machineFlowDoubt' | 'machinePowerDoubt'>;
  };
}

/** Temperatures around the machine [K]. */
export interface MachinePlace {
  readonly roomTemperature: number;
  readonly sourceTemperature: number;
  readonly outdoorTemperature: number;
}

/** Air around the shell [K]. */
export function aroundShell(shellPlace: ShellPlace, place: MachinePlace): number {
  const temperatures = {
    tankRoom: place.roomTemperature,
    sourceRoom: place.sourceTemperature,
    outdoors: place.outdoorTemperature,
  };
  return temperatures[shellPlace];
}

/** The machine where it stands, on the mains here. */
export function machineAt(
  { machine }: LoopSlice,
  { compressor, identified }: CompressorResult,
  place: MachinePlace,
): RunningMachine {
  const { machineFlowDoubt: flow, machinePowerDoubt: power } = machine.doubt;
  return {
    compressor,
    surroundings: aroundShell(machine.shellPlace, place),
    supply: machine.supply,
    known: { identified, flow, power },
  };
}

/** The loop in one place. @throws what loop/ throws where it has no operating point */
export function operatingAt(slice: LoopSlice, known: CompressorResult, place: MachinePlace): OperatingPoint {
  const { refrigerant, states, waterTemperature, exchangers } = slice;
  return operatingPoint({
    fluid: states.fluid(refrigerant),
    machine: machineAt(slice, known, place),
    sourceTemperature: place.sourceTemperature,
    waterTemperature,
    ...exchangers,
  });
}

/** The loop in one place, or null where physics or the model allow none. */
export function operatingOrNull(slice: LoopSlice, known: CompressorResult, place: MachinePlace): OperatingPoint | null {
  try {
    return operatingAt(slice, known, place);
  } catch (error) {
    if (error instanceof NoSolutionError || error instanceof OutOfModelError) return null;
    throw error;
  }
}
