// The loop of a machine on one fluid with the bands of its numbers: the stages of the assessment that a loop needs, run at the
// likely values and with each uncertain input at its ends.

import { type OperatingPoint, operatingPoint } from '../../../loop/index.ts';
import { KettlefinError, NoSolutionError } from '../../../numerics/index.ts';
import { ofAnotherSize, type RunningMachine, sizeForHeat } from '../../../parts/compressor/index.ts';
import { bandWithUnit, loopPoints } from '../../answers/pieces.ts';
import { type Doubt, doubt, type ResultValues } from '../../doubt/doubt.ts';
import { refusalOf } from '../../from-design.ts';
import { withInput } from '../../inputs.ts';
import { type Stage, StageRunner, stageOf } from '../../stage.ts';
import type { StagedDesign } from '../../stages/engine-assumptions.ts';
import { loopSlice, type StageResults, stages } from '../../stages/index.ts';
import { type LoopSlice, type MachinePlace, machineAt } from '../../stages/machine.ts';
import { runningAt } from '../machine/running.ts';
import type { ComparedCycle } from './comparison.ts';
import { type ComparedLevels, onFluid, type Subject } from './subject.ts';
import { type ComparedRun, comparedStages, comparedValues } from './values.ts';

/** The loop on the design's own fluid with one input changed, or at the likely values. */
export type OwnLoop = (change?: InputChange) => OperatingPoint;

interface InputChange {
  readonly path: string;
  readonly value: number;
}

/**
 * The loop of the subject's machine on one fluid.
 * @param subject  the design and what is held
 * @param fluid    its name
 * @param own      the loop on the design's own fluid, where heat is matched
 * @returns        numbers with bands, or the error; the doubt and the run behind them where there is a loop
 */
export function cycleOn(
  subject: Subject,
  fluid: string,
  own: OwnLoop | undefined,
): { readonly cycle: ComparedCycle; readonly doubt: Doubt | undefined; readonly run: ComparedRun | undefined } {
  const { design, resolution, inputs, basis } = subject;
  const values = comparedValues(basis);
  const runner = runnerFor(subject);
  const readFrom = (changed: StagedDesign, results: StageResults, change?: InputChange): ComparedRun =>
    own === undefined ? { results, size: 1 } : matchedRun(subject, changed, results, own(change));
  const numbers = (run: ComparedRun): ResultValues =>
    Object.fromEntries(values.map(({ name, read }) => [name, read(run)]));
  try {
    const likely = onFluid(design, fluid);
    const run = readFrom(likely, runner.run(likely));
    const found = doubt(numbers(run), inputs, (path, value) => {
      const changed = onFluid(withInput(design, resolution.followers, path, value), fluid);
      return numbers(readFrom(changed, runner.probe(changed), { path, value }));
    });
    const bands = values.map(
      ({ name, result, quantity }) => [name, bandWithUnit(result, quantity, found.bands[name]!)] as const,
    );
    const cycle: ComparedCycle = {
      ok: true,
      values: Object.fromEntries(bands),
      points: loopPoints(run.results.operating.points),
      unanswered: found.unanswered,
    };
    return { cycle, doubt: found, run };
  } catch (error) {
    if (!(error instanceof KettlefinError)) throw error;
    return { cycle: { ok: false, error: refusalOf(error).error }, doubt: undefined, run: undefined };
  }
}

/** The machine of the size that gives the heat of the design's own fluid, and its loop in place of that of the machine there is. */
function matchedRun(
  { levels }: Subject,
  design: StagedDesign,
  results: StageResults,
  own: OperatingPoint,
): ComparedRun {
  const slice = loopSlice(design);
  const { spell } = results.surroundings;
  const machine = machineAt(slice, results.compressor, spell);
  let operating = results.operating;
  const heatAt = (size: number) => {
    operating = operatingOf(slice, ofAnotherSize(machine, size), spell, levels);
    return operating.heatDelivered;
  };
  const size = sizeForHeat(heatAt, own.heatDelivered, operating.heatDelivered);
  return { results: { ...results, operating }, own, size };
}

/** The loop of one machine at the coldest spell, or at the levels asked for. */
function operatingOf(
  slice: LoopSlice,
  machine: RunningMachine,
  { sourceTemperature }: MachinePlace,
  levels: ComparedLevels | undefined,
): OperatingPoint {
  const fluid = slice.states.fluid(slice.refrigerant);
  if (levels !== undefined) return runningAt({ machine, fluid, ...slice.exchangers }, levels);
  return operatingPoint({
    fluid,
    machine,
    sourceTemperature,
    waterTemperature: slice.waterTemperature,
    ...slice.exchangers,
  });
}

/** Only where heat is matched. @throws NoSolutionError 'noHeatToMatch' at the likely values if the design has no loop */
export function ownLoopOf(subject: Subject): OwnLoop | undefined {
  if (subject.basis !== 'sameHeat') return undefined;
  const { design, resolution } = subject;
  const runner = runnerFor(subject);
  const known = new Map<string, OperatingPoint>();
  const computed = (change: InputChange | undefined): OperatingPoint => {
    if (change === undefined) {
      try {
        return runner.run(design).operating;
      } catch (error) {
        if (!(error instanceof KettlefinError)) throw error;
        throw new NoSolutionError(
          `There is no heat to match: ${design.machine.refrigerant}, the fluid of the design, has no loop here. ${error.message}`,
          error.message,
          'noHeatToMatch',
        );
      }
    }
    return runner.probe(withInput(design, resolution.followers, change.path, change.value)).operating;
  };
  return (change) => {
    const key = change === undefined ? '' : `${change.path} ${change.value}`;
    const point = known.get(key) ?? computed(change);
    known.set(key, point);
    return point;
  };
}

/** The stages of one loop at the coldest spell, or at the levels asked for. */
function runnerFor({ levels }: Subject): StageRunner<StageResults> {
  const needed = stages.filter(({ name }) => (comparedStages as readonly string[]).includes(name));
  if (levels === undefined) return new StageRunner(needed);
  const held = heldOperating(levels);
  return new StageRunner(needed.map((stage) => (stage.name === 'operating' ? held : stage)));
}

const stage = stageOf<StageResults>();

function heldOperating(levels: ComparedLevels): Stage<StageResults, 'operating'> {
  return stage('operating', loopSlice, ['surroundings', 'compressor'], (slice, { surroundings, compressor }) =>
    operatingOf(slice, machineAt(slice, compressor, surroundings.spell), surroundings.spell, levels),
  );
}
