// The design of a study of its machine: resolved and run once at likely values; and the machine in it with each uncertain input that
// it reads alone at its ends.

import { type DesignDocument, type Resolution, resolveDesign } from '../../../design/index.ts';
import type { DoubtfulInput } from '../../doubt/doubt.ts';
import { doubtfulInputs, withInput } from '../../inputs.ts';
import { type Stage, StageRunner, stageOf } from '../../stage.ts';
import { type StagedDesign, stagedDesign } from '../../stages/engine-assumptions.ts';
import { loopSlice, type StageResults, stages } from '../../stages/index.ts';
import { type CompressorResult, type LoopSlice, type MachinePlace, machineAt } from '../../stages/machine.ts';
import type { StatesFrom } from '../../stages/states.ts';
import type { Run } from './running.ts';
import { type Variants, variantsOf } from './variants.ts';

/** The machine of a design, and the loop around it. */
export interface LoopRun extends Run {
  readonly slice: LoopSlice;
  readonly compressor: CompressorResult;
  readonly spell: MachinePlace;
}

/** What the machine alone needs. */
export type MachineResults = Pick<StageResults, 'surroundings' | 'identified' | 'compressor'>;

export interface MachineSubject {
  readonly document: DesignDocument;
  readonly resolution: Resolution;
  /** At its likely values. */
  readonly design: StagedDesign;
  readonly results: MachineResults;
  readonly inputs: readonly DoubtfulInput[];
}

const machineStageNames = ['surroundings', 'identified', 'compressor'];

const machineStages = stages.filter(({ name }) => machineStageNames.includes(name)) as unknown as readonly Stage<
  MachineResults,
  keyof MachineResults
>[];

/** @throws what the identification of the machine throws */
export function machineSubject(document: DesignDocument, states: StatesFrom): MachineSubject {
  const resolution = resolveDesign(document);
  const design = stagedDesign(resolution.design, states);
  const results = new StageRunner<MachineResults>(machineStages).run(design);
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
    machineStages.map((each) => (each.name === 'identified' ? identified : each)),
  );
  const likely = loopRun(design, runner.run(design));
  return variantsOf(
    likely,
    inputs.filter(({ path }) => matters(path)),
    (path, value) => {
      const changed = withInput(design, resolution.followers, path, value);
      return loopRun(changed, runner.probe(changed));
    },
    isSameRun,
  );
}

/** The machine of one run of the stages. */
export function loopRun(design: StagedDesign, { surroundings, compressor }: MachineResults): LoopRun {
  const slice = loopSlice(design);
  const { superheat, subcooling, suctionPressureLimit } = slice.exchangers;
  const { spell } = surroundings;
  return {
    machine: machineAt(slice, compressor, spell),
    fluid: slice.states.fluid(slice.refrigerant),
    superheat,
    subcooling,
    ...(suctionPressureLimit === undefined ? {} : { suctionPressureLimit }),
    slice,
    compressor,
    spell,
  };
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

function isSameRun(left: LoopRun, right: LoopRun): boolean {
  return (
    left.fluid === right.fluid &&
    sameNumbers(left.slice.exchangers, right.slice.exchangers) &&
    left.slice.waterTemperature === right.slice.waterTemperature &&
    left.machine.surroundings === right.machine.surroundings &&
    left.spell.sourceTemperature === right.spell.sourceTemperature &&
    sameNumbers(left.machine.supply, right.machine.supply) &&
    left.machine.known?.flow === right.machine.known?.flow &&
    left.machine.known?.power === right.machine.known?.power &&
    sameNumbers(left.machine.compressor, right.machine.compressor) &&
    sameNumbers(left.machine.compressor.ratedSupply, right.machine.compressor.ratedSupply)
  );
}

/** Whether two plain objects have the same numbers; what is no number is not looked at. */
function sameNumbers(left: object, right: object): boolean {
  const others = right as Readonly<Record<string, unknown>>;
  return Object.entries(left).every(([key, value]) => typeof value !== 'number' || value === others[key]);
}
