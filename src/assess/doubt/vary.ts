// Varies every uncertain input of a design alone, and says which of them move a result most. Used for the whole assessment
// and for the tank alone: the runner decides which stages there are, the list of values what is read from them.

import type { Resolution } from '../../design/index.ts';
import type { IdentifiedMachine } from '../../parts/compressor/index.ts';
import type { ResultValue } from '../answers/tank-values.ts';
import { readValues } from '../answers/values.ts';
import { doubtfulInputs, withInput } from '../inputs.ts';
import type { StagedDesign } from '../stages/engine-assumptions.ts';
import { howToMeasure } from '../wording/measure.ts';
import { type Doubt, type DoubtfulInput, doubt, endMoves, varianceShares } from './doubt.ts';

/** What is varied. */
export interface VariedSubject {
  readonly resolution: Resolution;
  readonly design: StagedDesign;
  readonly identified?: IdentifiedMachine;
}

/**
 * Bands and moves of the values by one-at-a-time variation.
 * @param runner   has run the likely design, so that a variation costs only what depends on it
 * @param subject  the design as it was run, how it was resolved, and its machine where one was identified
 * @param values   what is read from each run
 * @param likely   that run's results
 * @param matters  false for an input that cannot move any of these values
 */
export function varied<Results>(
  runner: { readonly probe: (design: StagedDesign) => Results },
  subject: VariedSubject,
  values: readonly ResultValue<Results>[],
  likely: Results,
  matters: (input: DoubtfulInput) => boolean = () => true,
): Doubt {
  const { resolution, design, identified } = subject;
  const inputs = doubtfulInputs(resolution, design, identified).filter(matters);
  const neverNegative = new Set(values.flatMap(({ name, isNeverNegative }) => (isNeverNegative ? [name] : [])));
  return doubt(
    readValues(values, likely),
    inputs,
    (path, value) => readValues(values, runner.probe(withInput(design, resolution.followers, path, value))),
    neverNegative,
  );
}

/** How far one uncertain input alone moves a result. */
export interface InputInfluence {
  readonly path: string;
  readonly label: string;
  /** The result with this input at its low and at its high end. */
  readonly atLow: number;
  readonly atHigh: number;
  /** Share of the variance of the result, 0 to 1. */
  readonly share: number;
  readonly measure: string;
}

/** Inputs by how much of a result's variance each explains, the most telling first; those that move nothing left out. */
export function influencesOn({ bands, moves }: Doubt, result: string): readonly InputInfluence[] {
  const { likely } = bands[result]!;
  const shares = varianceShares(moves, result);
  return moves
    .map((move) => {
      const { path, label } = move;
      const [low, high] = endMoves(move, result);
      const measure = howToMeasure(path);
      return { path, label, atLow: likely + low, atHigh: likely + high, share: shares.get(path)!, measure };
    })
    .filter(({ share }) => share > 0)
    .sort((left, right) => right.share - left.share);
}
