// The design of a study of its machine: resolved and run once at likely values; and the loop in it with each uncertain input that it
// reads alone at its ends.

import { type DesignDocument, type Resolution, resolveDesign } from '../../../design/index.ts';
import type { OperatingPoint } from '../../../loop/index.ts';
import type { DoubtfulInput } from '../../doubt/doubt.ts';
import { doubtfulInputs, withInput } from '../../inputs.ts';
import { type Stage, StageRunner, stageOf } from '../../stage.ts';
import { type StagedDesign, stagedDesign } from '../../stages/engine-assumptions.ts';
import { loopSlice, type StageResults, stages } from '../../stages/index.ts';
import {
  type CompressorResult,
  type LoopSlice,
  type MachinePlace,
  machineAt,
  operatingAt,
} from '../../stages/machine.ts';
import type { StatesFrom } from '../../stages/states.ts';
import type { SurroundingsResult } from '../../stages/surroundings/surroundings.ts';
import type { Run } from './running.ts';
import { type Variants, variantsOf } from './variants.ts';

/** The machine of a design as the loop in it runs it in the coldest spell. */
export interface LoopRun extends Run {
  readonly slice: LoopSlice;
  readonly compressor: CompressorResult;
  readonly surroundings: SurroundingsResult;
}

/** What the machine alone needs. */
export type MachineResults = Pick<StageResults, 'surroundings' | 'identified' | 'compressor'>;

export interface MachineSubject<Results extends MachineResults = MachineResults> {
  readonly document: DesignDocument;
  readonly resolution: Resolution;
  /** At its likely values. */
  readonly design: StagedDesign;
  readonly results: Results;
  readonly inputs: readonly DoubtfulInput[];
}

const machineStageNames = ['surroundings', 'identified', 'compressor'] as const;

/** The stages of these names, in their order. */
function stagesNamed<Name extends keyof StageResults>(
  names: readonly Name[],
): readonly Stage<Pick<StageResults, Name>, Name>[] {
  const wanted: readonly (keyof StageResults)[] = names;
  return stages.filter(({ name }) => wanted.includes(name)) as unknown as readonly Stage<
    Pick<StageResults, Name>,
    Name
  >[];
}

/** The machine of a design, whatever its tank. @throws what the identification of the machine throws */
export function machineSubject(document: DesignDocument, states: StatesFrom): MachineSubject {
  return subjectWith(document, states, machineStageNames);
}

/** The stages of a loop in a coldest spell and in each month, with what the tank needs. */
const loopStageNames = [
  'surroundings',
  'meter',
  'tank',
  'identified',
  'compressor',
  'operating',
  'hardware',
  'monthLoads',
  'monthOperating',
] as const;

export type LoopResults = Pick<StageResults, (typeof loopStageNames)[number]>;

/** The machine of a design with its loop and its tank. @throws what the machine's identification and the loop throw */
export function loopSubject(document: DesignDocument, states: StatesFrom): MachineSubject<LoopResults> {
  return subjectWith(document, states, loopStageNames);
}

function subjectWith<Name extends keyof StageResults>(
  document: DesignDocument,
  states: StatesFrom,
  names: readonly Name[],
): MachineSubject<Pick<StageResults, Name> & MachineResults> {
  const resolution = resolveDesign(document);
  const design = stagedDesign(resolution.design, states);
  const results = new StageRunner(stagesNamed(names)).run(design) as Pick<StageResults, Name> & MachineResults;
  return { document, resolution, design, results, inputs: doubtfulInputs(resolution, design, results.identified) };
}

const stage = stageOf<MachineResults>();

/** The machine as the design has it, and with each of these inputs at its ends. */
export function loopVariants(subject: MachineSubject, matters: (path: string) => boolean): Variants<LoopRun> {
  const { design, resolution, results, inputs } = subject;
  // Found once: an identification of its own at each end would find each end's own likely machine.
  const identified = stage(
    'identified',
    () => ({}),
    [],
    () => results.identified,
  );
  const runner = new StageRunner<MachineResults>(
    stagesNamed(machineStageNames).map((each) => (each.name === 'identified' ? identified : each)),
  );
  return variantsOf(
    loopRun(design, runner.run(design)),
    inputs.filter(({ path }) => matters(path)),
    (path, value) => {
      const changed = withInput(design, resolution.followers, path, value);
      return loopRun(changed, runner.probe(changed));
    },
    isSameRun,
  );
}

/** The machine of one run of the stages. */
function loopRun(design: StagedDesign, { surroundings, compressor }: MachineResults): LoopRun {
  const slice = loopSlice(design);
  const { superheat, subcooling, suctionPressureLimit } = slice.exchangers;
  return {
    machine: machineAt(slice, compressor, surroundings.spell),
    fluid: slice.states.fluid(slice.refrigerant),
    superheat,
    subcooling,
    ...(suctionPressureLimit === undefined ? {} : { suctionPressureLimit }),
    slice,
    compressor,
    surroundings,
  };
}

/** The loop of a run where it settles in the coldest spell or in one of the months. */
export function settledAt({ slice, compressor, surroundings }: LoopRun, month: number | null): OperatingPoint {
  return operatingAt(slice, compressor, placeOf(surroundings, month));
}

/** Temperatures of the coldest spell, or of a month by its place in the year. */
export function placeOf({ spell, months }: SurroundingsResult, month: number | null): MachinePlace {
  return month === null ? spell : months[month]!;
}

/** Inputs that may still move a machine between two dew temperatures that are held. */
export function isOfMachine(path: string): boolean {
  return (
    ['machine.compressor.', 'machine.supply.', 'engine.machine'].some((part) => path.startsWith(part)) ||
    ['exchangers.superheat', 'exchangers.subcooling'].includes(path)
  );
}

/** Those, what moves the air around the shell, and where the loop settles. */
export function isOfLoop(path: string): boolean {
  return (
    isOfMachine(path) ||
    path === 'tank.waterTemperature' ||
    ['exchangers.', 'source.', 'room.', 'place.'].some((part) => path.startsWith(part))
  );
}

/** Stages that nothing changed for return what they returned before. */
function isSameRun(left: LoopRun, right: LoopRun): boolean {
  return (
    left.compressor === right.compressor &&
    left.surroundings === right.surroundings &&
    left.slice.waterTemperature === right.slice.waterTemperature &&
    sameNumbers(left.slice.exchangers, right.slice.exchangers) &&
    sameNumbers(left.slice.machine.supply, right.slice.machine.supply) &&
    sameNumbers(left.slice.machine.doubt, right.slice.machine.doubt)
  );
}

/** Whether two plain objects have the same numbers. */
function sameNumbers(left: object, right: object): boolean {
  const others = right as Readonly<Record<string, unknown>>;
  return Object.entries(left).every(([key, value]) => value === others[key]);
}
