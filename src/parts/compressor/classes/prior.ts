// The ranges of a hermetic machine's numbers before anything of it was measured: of the class it came out of, narrowed by
// the size of its dome, its year and how its motor starts. Not a data sheet: whatever is typed or measured replaces them.

import { InputError, requirePositive } from '../../../numerics/index.ts';
import type { Band } from '../../../quantities/index.ts';
import type { Application, SourcedEstimate } from '../data.ts';
import type { HermeticParameter } from '../hermetic/parameters.ts';
import { applianceClass, applianceRecords } from './appliances.ts';
import { displacementOf, shellConductanceOf } from './dome.ts';
import { erasMet } from './eras.ts';
import { type MachineMechanism, type MechanismNumber, machineData, type StartType } from './machine-data.ts';
import { bothOf, spanOf } from './ranges.ts';

/** What is known of where a machine comes from. */
export interface MachineOrigin {
  /** Class of appliance, one of applianceNames; absent: any machine for its application. */
  readonly appliance?: string | undefined;
  /** Refrigerant it was made for. */
  readonly madeFor: string;
  /** Calendar years in which it may have been made. */
  readonly year?: Band | undefined;
  /** Of the dome without feet, outside [m]. */
  readonly domeHeight?: Band | undefined;
  readonly domeDiameter?: Band | undefined;
  /** Back pressure it was made for; absent: that of the appliance, or any. */
  readonly application?: Application | undefined;
  readonly startType?: StartType | undefined;
  /** Mains its motor was wound for [Hz]. */
  readonly frequency: number;
  /** Whether flow or capacity of it is known: of a machine out of nothing that is named, they alone tell its size. */
  readonly isRated?: boolean;
}

/** Every number with its range and the words of its source. */
export type MachinePrior = Readonly<Record<HermeticParameter, SourcedEstimate>>;

/** Refrigerants that machines were made for, of those something is known of. */
export const compressorFluids: readonly string[] = [...machineData.referencePressures.keys()];

/**
 * Ranges of the numbers of HermeticCompressor, in base SI, origin 'assumed'.
 * @throws InputError 'unknownAppliance'; 'fluidWithoutMachines' for a fluid no such data exist of; for a frequency that is not positive
 */
export function machinePrior(origin: MachineOrigin): MachinePrior {
  requirePositive('frequency', origin.frequency);
  const reference = referencePressure(origin.madeFor);
  const mechanisms = mechanismsOf(origin);
  const number = (key: MechanismNumber) => spanned(mechanisms.map((each) => each[key]));
  const scaled = (key: MechanismNumber, factor: number) => times(number(key), factor);
  const turned = origin.frequency / 50;
  return {
    displacement: displacement(origin, mechanisms),
    clearanceRatio: number('clearanceRatio'),
    suctionVelocity: scaled('suctionVelocity', turned),
    dischargeVelocity: scaled('dischargeVelocity', turned),
    suctionHeatingUnits: number('suctionHeatingUnits'),
    dischargeCoolingUnits: number('dischargeCoolingUnits'),
    leakageRatio: number('leakageRatio'),
    proportionalLoss: number('proportionalLoss'),
    frictionPressure: scaled('frictionShare', reference),
    motorEfficiency: motorEfficiency(origin, mechanisms),
    motorPressure: scaled('motorShare', reference),
    slip: slip(origin),
    powerFactor: machineData.motors.get(startTypeOf(origin, mechanisms))!.powerFactor,
    shellConductance: shellConductance(origin, mechanisms),
  };
}

/** p_r [Pa], saturation pressure at 40 °C of the fluid a machine was made for: its pressures and forces go with it. */
function referencePressure(madeFor: string): number {
  const found = machineData.referencePressures.get(madeFor);
  if (found !== undefined) return found;
  throw new InputError('madeFor', madeFor, `one of ${compressorFluids.join(', ')}`, 'fluidWithoutMachines');
}

/** Mechanisms that may stand behind it. A told application goes before that of the appliance, unless all of those are rotary. */
function mechanismsOf({
  appliance,
  application,
  madeFor,
}: Omit<MachineOrigin, 'frequency'>): readonly MachineMechanism[] {
  const { mechanismsOf: found, mechanisms } = machineData;
  if (appliance !== undefined) {
    const usual = applianceClass(appliance).application;
    const own = found.get(appliance)!;
    if (application === undefined || application === usual || own.every(isRotary)) return own;
  }
  const all = application === undefined ? [...mechanisms.values()] : found.get(application)!;
  const met = all.filter((mechanism) => isMadeFor(mechanism, madeFor));
  return met.length === 0 ? all : met;
}

/** Is any appliance with that mechanism made for the fluid? A mechanism that is behind none of them may be for any. */
function isMadeFor(mechanism: MachineMechanism, fluid: string): boolean {
  const users = applianceRecords.filter(({ name }) => machineData.mechanismsOf.get(name)!.includes(mechanism));
  return users.length === 0 || users.some(({ madeFor }) => madeFor.has(fluid));
}

function isRotary({ name }: MachineMechanism): boolean {
  return name === 'rotary';
}

/** Of its class, of all machines of its application for that fluid, or of all for that fluid; and of its dome. */
function displacement(origin: MachineOrigin, mechanisms: readonly MachineMechanism[]): SourcedEstimate {
  const ofClass = classDisplacement(origin);
  const ofDome = domeDisplacement(origin, mechanisms);
  if (ofDome === undefined) return ofClass;
  const source = `its class (${ofClass.source}) and its dome (${machineData.dome.reciprocating.source})`;
  return { ...bothOf(ofClass, ofDome), origin: 'assumed', source };
}

/** Undefined where its size is not told. */
function domeDisplacement(
  { domeHeight, domeDiameter }: Pick<MachineOrigin, 'domeHeight' | 'domeDiameter'>,
  mechanisms: readonly MachineMechanism[],
): Band | undefined {
  if (domeHeight === undefined || domeDiameter === undefined) return undefined;
  const kinds = new Set(mechanisms.map((each) => (isRotary(each) ? 'rotary' : 'reciprocating')));
  return spanOf([...kinds].map((kind) => displacementOf(domeHeight, domeDiameter, kind)));
}

/**
 * What class and dome each tell of the swept volume [m³], where they tell two things that do not meet; undefined where they do.
 * @throws InputError as machinePrior
 */
export function displacementContradiction(
  origin: Omit<MachineOrigin, 'frequency'>,
): { readonly ofClass: Band; readonly ofDome: Band } | undefined {
  const ofDome = domeDisplacement(origin, mechanismsOf(origin));
  if (ofDome === undefined) return undefined;
  const ofClass = classDisplacement(origin);
  return ofDome.high < ofClass.low || ofDome.low > ofClass.high ? { ofClass, ofDome } : undefined;
}

function classDisplacement({
  appliance,
  application,
  madeFor,
  isRated = false,
}: Omit<MachineOrigin, 'frequency'>): SourcedEstimate {
  const ofFluid = applianceRecords.filter((record) => record.madeFor.has(madeFor));
  const named = ofFluid.filter((record) => record.name === appliance);
  const ofUse = ofFluid.filter((record) => record.application === application);
  const records = [named, ofUse, ofFluid].find((each) => each.length > 0) ?? [];
  if (records.length === 0) throw noDisplacement(madeFor);
  const usual = spanned(records.map((record) => record.madeFor.get(madeFor)!.displacement));
  if (!isRated) return usual;
  return named.length > 0 ? ofUnusualSize(usual) : ofAnySize(usual);
}

/** What a rated machine of unknown origin may be smaller or larger than those of all classes: own judgement. */
const anySize = { smaller: 2, larger: 6 };

function ofAnySize({ low, high, source }: SourcedEstimate): SourcedEstimate {
  const ends = { low: low / anySize.smaller, high: high * anySize.larger };
  return { ...ends, likely: Math.sqrt(ends.low * ends.high), origin: 'assumed', source };
}

/**
 * What a rated machine may be smaller or larger than those usual in its appliance: own judgement. Its rating tells its size; a
 * tight range of the class would have the other numbers bend instead.
 */
const unusualSize = { smaller: 1.5, larger: 2 };

function ofUnusualSize(usual: SourcedEstimate): SourcedEstimate {
  return { ...usual, low: usual.low / unusualSize.smaller, high: usual.high * unusualSize.larger };
}

/** A rolling piston's motor has a run capacitor unless something else is told. */
function startTypeOf({ startType }: MachineOrigin, mechanisms: readonly MachineMechanism[]): StartType {
  if (startType !== undefined && startType !== 'unknown') return startType;
  return mechanisms.every(isRotary) ? 'runCapacitor' : 'unknown';
}

function motorEfficiency(origin: MachineOrigin, mechanisms: readonly MachineMechanism[]): SourcedEstimate {
  const type = startTypeOf(origin, mechanisms);
  const { motorEfficiency: ofType } = machineData.motors.get(type)!;
  const { year } = origin;
  if (type !== 'unknown' || year === undefined) return ofType;
  const met = erasMet(machineData.unknownMotors, year);
  return spanned(met.map(({ motorEfficiency: each }) => each));
}

/** Slip of two-pole motors differs between 50 and 60 Hz; between and beyond, that of the nearer. */
function slip({ startType, frequency }: MachineOrigin): SourcedEstimate {
  if (startType === 'inverter') return machineData.slip.inverter;
  return machineData.slip[frequency < 55 ? '50' : '60'];
}

/** From the dome where its size is told, else from domes usual for the class or its mechanism. */
function shellConductance(origin: MachineOrigin, mechanisms: readonly MachineMechanism[]): SourcedEstimate {
  const ofClass = machineData.domes.get(origin.appliance ?? '');
  const conductances = mechanisms.map((each) => {
    const height = origin.domeHeight ?? ofClass?.height ?? each.domeHeight;
    const diameter = origin.domeDiameter ?? ofClass?.diameter ?? each.domeDiameter;
    const { source } = each.shellFilm;
    return { ...shellConductanceOf(height, diameter, each.shellFilm), origin: 'assumed', source } as const;
  });
  return spanned(conductances);
}

function spanned(estimates: readonly SourcedEstimate[]): SourcedEstimate {
  if (estimates.length === 1) return estimates[0]!;
  const sources = [...new Set(estimates.map(({ source }) => source))];
  return { ...spanOf(estimates), origin: 'assumed', source: sources.join('; ') };
}

function times(estimate: SourcedEstimate, factor: number): SourcedEstimate {
  const { low, likely, high } = estimate;
  return { ...estimate, low: low * factor, likely: likely * factor, high: high * factor };
}

function noDisplacement(madeFor: string): InputError {
  return new InputError('madeFor', madeFor, 'a fluid some appliance class was made for', 'fluidWithoutMachines');
}
