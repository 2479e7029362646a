// How far printed flows and powers lie from what a machine's ranges let expect, in one number: the square of their distance in σ,
// all of them taken together, so that an unlikely efficiency or a flow that grows too fast counts even where the size of the
// machine is not known.
//     D² = dᵀ S⁻¹ d,  d the logarithms of printed over expected, S their covariance: Σ of the products of the moves of all
//     ranges, what all points of a sheet have in common, and what each has alone
// Source: distance of P. C. Mahalanobis 1936, from memory. Differences of D² between readings of the same numbers in other units are
// twice the logarithm of how much likelier one is than the other; with degrees of another scale S is another one too, nearly as large.

import { choleskyFactor, solveCholesky } from '../../../numerics/index.ts';
import type { Expected, Logarithms } from './expected.ts';

/** Flow [kg/s] and power [W] as printed at one point; either may be absent. */
export interface PrintedValues {
  readonly flow: number | undefined;
  readonly power: number | undefined;
  /** σ of ln of each, where it was given as a range; absent: none of its own. */
  readonly spread?: Partial<Logarithms>;
}

/** Up to here printed values are those of such a machine [-]; own judgement, as both below. */
export const usualSurprise = 8;
/** Another reading that is so much less surprising is told. */
export const toldGain = 6;
/**
 * With a reading that is so much less surprising the printed one is refused. It is e⁹ = 8100 times less likely then: were that very
 * slip met once in 400 sheets, and this is a judgement too, one refusal in twenty would still be of a sheet that is right.
 */
export const refusedGain = 18;

/** From here on numbers are told as unusual even where no other reading is likelier: of one point, of several. */
export const farSurprise = { onePoint: 18, severalPoints: 30 } as const;

/** σ of ln by which a sheet and the model may be off beside the ranges: all points together, and each for itself; own judgement. */
const otherDoubt = { common: 0.05, own: 0.06 } as const;

/**
 * D² over some points [-]; null where nothing can be compared.
 * @param expected  at each point; undefined where no such machine runs
 * @param printed   at the same points
 */
export function surpriseOf(
  expected: readonly (Expected | undefined)[],
  printed: readonly PrintedValues[],
): number | null {
  const values = expected.flatMap((each, index) => (each === undefined ? [] : comparedValues(each, printed[index]!)));
  const size = values.length;
  if (size === 0) return null;
  const covariance = new Float64Array(size * size);
  values.forEach((a, row) => {
    values.forEach((b, column) => {
      const common = a.of === b.of ? otherDoubt.common ** 2 : 0;
      const own = row === column ? otherDoubt.own ** 2 + a.spread ** 2 : 0;
      covariance[row * size + column] = common + own + productOf(a.moves, b.moves);
    });
  });
  const distances = values.map(({ distance }) => distance);
  const solved = solveCholesky(choleskyFactor(covariance, size), size, distances);
  return distances.reduce((sum, distance, index) => sum + distance * solved[index]!, 0);
}

interface ComparedValue {
  readonly of: keyof Logarithms;
  /** ln of printed over expected. */
  readonly distance: number;
  /** σ of the printed value itself, in ln. */
  readonly spread: number;
  /** How far each range moves what is expected, in ln. */
  readonly moves: readonly number[];
}

function comparedValues(expected: Expected, printed: PrintedValues): readonly ComparedValue[] {
  return (['flow', 'power'] as const).flatMap((of) => {
    const value = printed[of];
    if (value === undefined) return [];
    const moves = expected.moves.map((move) => move[of]);
    return [{ of, distance: Math.log(value) - expected.likely[of], spread: printed.spread?.[of] ?? 0, moves }];
  });
}

function productOf(a: readonly number[], b: readonly number[]): number {
  return a.reduce((sum, each, index) => sum + each * b[index]!, 0);
}
