// Which given values lie far from what everything else known of the machine predicts for them: its ranges, and all other values.
// The worst is set aside and the others are looked at again, so that one wrong value does not cast doubt on its neighbours.
//     S = Σ + J Jᵀ,  score of value i = [S⁻¹ e]_i / √[S⁻¹]_ii,  e what the ranges' likely machine misses, linearised
// A machine far out in its ranges may meet values that nobody would expect of it: where no single value is conspicuous and the
// whole sum of squares is still larger than chance allows, the most conspicuous value carries it.
// Source: leave-one-out prediction, C. E. Rasmussen, C. K. I. Williams 2006, section 5.4.2 (from memory of the source).

import { choleskyFactor, inverseCholesky, solveCholesky } from '../../../numerics/index.ts';
import { dimensions } from './coordinates.ts';
import type { Fitted } from './fitting/fit.ts';
import type { Datum } from './points.ts';

/** σ from which a value disagrees: one of 370 does by chance. */
export const disagreesAt = 3;

/** Scores in σ, in the order of the data; those from `disagreesAt` on are told without each other. */
export function scoresOf(data: readonly Datum[], covariance: Float64Array, fit: Fitted): Float64Array {
  const size = data.length;
  const { whole, misses } = predictive(data, covariance, fit);
  const scores = new Float64Array(size);
  let kept = data.map((_, row) => row);
  while (kept.length > 0) {
    const found = scoresAmong(kept, whole, misses, size);
    const worst = found.reduce((best, score, index) => (Math.abs(score) > Math.abs(found[best]!) ? index : best), 0);
    kept.forEach((row, index) => {
      scores[row] = found[index]!;
    });
    if (!(Math.abs(found[worst]!) >= disagreesAt)) break;
    kept = kept.filter((_, index) => index !== worst);
  }
  return withWhole(scores, fit.squares);
}

/** The scores, the largest raised to the root of the whole sum of squares where that alone is more than chance allows. */
function withWhole(scores: Float64Array, squares: number): Float64Array {
  if (scores.some((score) => Math.abs(score) >= disagreesAt) || squares < chanceLimit(scores.length)) return scores;
  const worst = scores.reduce((best, score, row) => (Math.abs(score) > Math.abs(scores[best]!) ? row : best), 0);
  return scores.map((score, row) => (row === worst ? Math.sign(score) * Math.sqrt(squares) : score));
}

/**
 * Sum of so many squares that is passed as seldom as `disagreesAt` by one value.
 *     χ² ≈ n (1 − 2/(9n) + u √(2/(9n)))³,  u = 2.782 (one-sided, one of 370)
 * Source: E. B. Wilson, M. M. Hilferty 1931, PNAS 17, 684 (from memory). Worked value: n = 2 → 11.8.
 */
function chanceLimit(count: number): number {
  if (count === 0) return Number.POSITIVE_INFINITY;
  const width = 2 / (9 * count);
  return count * (1 - width + 2.782 * Math.sqrt(width)) ** 3;
}

/** S and e. */
function predictive(data: readonly Datum[], covariance: Float64Array, fit: Fitted) {
  const size = data.length;
  const whole = Float64Array.from(covariance);
  const misses = Float64Array.from(data, ({ observed }, row) => observed - fit.modelled[row]!);
  const { jacobian, deviations } = fit;
  for (let row = 0; row < size; row++) {
    for (let number = 0; number < dimensions; number++) {
      const own = jacobian[row * dimensions + number]!;
      misses[row]! += own * deviations[number]!;
      for (let column = 0; column < size; column++) {
        whole[row * size + column]! += own * jacobian[column * dimensions + number]!;
      }
    }
  }
  return { whole, misses };
}

function scoresAmong(kept: readonly number[], whole: Float64Array, misses: Float64Array, size: number): number[] {
  const count = kept.length;
  const matrix = new Float64Array(count * count);
  kept.forEach((row, a) => {
    kept.forEach((column, b) => {
      matrix[a * count + b] = whole[row * size + column]!;
    });
  });
  const lower = choleskyFactor(matrix, count);
  const solved = solveCholesky(
    lower,
    count,
    kept.map((row) => misses[row]!),
  );
  const inverse = inverseCholesky(lower, count);
  return kept.map((_, index) => solved[index]! / Math.sqrt(inverse[index * count + index]!));
}
