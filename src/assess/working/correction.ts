// The working of how the given points correct the model at one running point: what the machine misses of each value, how much each
// counts there, and their sum.

import { type Refrigerant, saturationAtPressure } from '../../matter/refrigerants/index.ts';
import {
  type Contribution,
  contributionSymbols,
  contributionsOf,
  type DeviationKind,
  deviationKind,
  endsAt,
  type IdentifiedMachine,
  type ModelDoubt,
  missOf,
  pointsOfSum,
  type RunningPoint,
  sumOfContributions,
} from '../../parts/compressor/index.ts';
import { type StepInput, type WorkingStep, workingStep } from '../../quantities/index.ts';
import type { CompressorResult } from '../stages/machine.ts';

const kinds: readonly DeviationKind[] = ['flow', 'power'];

/** Name of the step that tells how far the likely machine is off a given value. */
export function residualResult(index: number): string {
  return `identified.residuals.${index}`;
}

function missResult(index: number): string {
  return `identified.misses.${index}`;
}

/** Steps `identified.misses.<index>`, in the order of the given values; of those that correct the model. */
export function missSteps({ residuals }: IdentifiedMachine): readonly WorkingStep[] {
  return residuals.flatMap(({ quantity, deviation }, index) => {
    if (deviationKind(quantity) === undefined) return [];
    const from = residualResult(index);
    return workingStep(missResult(index), 'compressor.missOfPoint', missOf(deviation), { delta: [deviation, from] });
  });
}

/**
 * Steps `<prefix>.doubt.flow.correction`, `<prefix>.doubt.flow.halfWidth`, …: what the points around tell of the model there.
 * @param point    where the machine runs
 * @param machine  as it was identified, and as its inputs have it
 * @param fluid    in it
 * @param prefix   of the steps of the point: 'operating'
 */
export function doubtSteps(
  point: RunningPoint,
  machine: Pick<CompressorResult, 'compressor' | 'identified'>,
  fluid: Refrigerant,
  prefix: string,
): readonly WorkingStep[] {
  const { doubt, suction, discharge } = point;
  if (doubt === null) return [];
  const place = {
    evaporating: saturationAtPressure(fluid, suction.pressure).vapour.temperature,
    condensing: saturationAtPressure(fluid, discharge.pressure).vapour.temperature,
  };
  return kinds.flatMap((kind) => {
    const parts = contributionsOf(machine.identified, machine.compressor, kind, place);
    return [...sumSteps(parts, `${prefix}.doubt.${kind}.sum`), ...endSteps(doubt, kind, parts.length > 0, prefix)];
  });
}

/** As many sums as the points take; the last one has the name, those before it `<name>.part<number>`. */
function sumSteps(parts: readonly Contribution[], name: string): readonly WorkingStep[] {
  const steps: WorkingStep[] = [];
  let before: StepInput = [0];
  for (let first = 0; first < parts.length; first += pointsOfSum) {
    const isLast = first + pointsOfSum >= parts.length;
    const result = isLast ? name : `${name}.part${first / pointsOfSum + 1}`;
    const step = sumStep(result, before, parts.slice(first, first + pointsOfSum));
    before = [step.value, result];
    steps.push(step);
  }
  return steps;
}

function sumStep(result: string, before: StepInput, parts: readonly Contribution[]): WorkingStep {
  const inputs = contributionSymbols.flatMap(([weight, miss], index): [string, StepInput][] => {
    const part = parts[index];
    const from = part === undefined ? undefined : missResult(part.residual);
    return [
      [weight, [part?.weight ?? 0]],
      [miss, [part?.miss ?? 0, from]],
    ];
  });
  const sum = sumOfContributions(
    before[0],
    parts.map(({ weight }) => weight),
    parts.map(({ miss }) => miss),
  );
  return workingStep(result, 'compressor.sumOfContributions', sum, { mu_0: before, ...Object.fromEntries(inputs) });
}

function endSteps(doubt: ModelDoubt, kind: DeviationKind, hasPoints: boolean, prefix: string): readonly WorkingStep[] {
  const { correction, halfWidth } = doubt[kind];
  const own = (name: string) => `${prefix}.doubt.${kind}.${name}`;
  return [
    workingStep(own('correction'), 'compressor.modelCorrection', correction, {
      mu: [Math.log1p(correction), hasPoints ? own('sum') : undefined],
    }),
    workingStep(own('halfWidth'), 'compressor.modelDoubt', halfWidth, {
      f: [1 + correction],
      v: [(halfWidth / (1 + correction) / endsAt) ** 2],
    }),
  ];
}
