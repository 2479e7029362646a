// How the misses of the given points make the correction of the model at one running point: the weight of each point there, what
// the machine misses of it, and their products, whose sum is the logarithm of the correction's factor.

import { solveCholesky } from '../../../../numerics/index.ts';
import type { HermeticCompressor } from '../../hermetic/parameters.ts';
import type { IdentifiedMachine, KrigedMisses } from '../identified.ts';
import { type DeviationKind, deviationCovariance, type Place } from './discrepancy.ts';
import { movementOf } from './doubt.ts';

/** One given value of flow or of power. */
export interface Contribution {
  /** Index in the residuals of the identified machine. */
  readonly residual: number;
  /** λ [-]: how much it counts at the running point; small far from it, and shared among points that stand close together. */
  readonly weight: number;
  /** r [-], ln of given over modelled by this machine. */
  readonly miss: number;
  /** λ r [-]. */
  readonly contribution: number;
}

/**
 * The correction of modelDoubt, point by point.
 *     μ = Σ λ_i r_i,  λ = Σ⁻¹ k,  correction = e^μ − 1
 * @param identified  the machine as identified
 * @param compressor  the machine as it is taken to be
 * @param kind        flow or power
 * @param at          dew temperatures of the running point [K]
 * @returns           one a given value, in their order; none where no value of that kind was given, and then μ = 0
 * Accuracy: adds up to the correction within 1e-12.
 * Source: as discrepancy.ts.
 */
export function contributionsOf(
  identified: IdentifiedMachine,
  compressor: HermeticCompressor,
  kind: DeviationKind,
  at: Place,
): readonly Contribution[] {
  const kriged = identified.kriged[kind];
  if (kriged === null) return [];
  const { places, middle, weighing, rows } = kriged;
  const covariance = places.map((place) => deviationCovariance(kind, middle, at, place));
  const weights = solveCholesky(weighing, places.length, covariance);
  const misses = missesOf(kriged, movementOf(identified, compressor));
  return rows.map((residual, index) => {
    const weight = weights[index]!;
    const miss = misses[index]!;
    return { residual, weight, miss, contribution: contributionOf(weight, miss) };
  });
}

/** What one point adds to the logarithm of the factor [-] = λ r. */
export function contributionOf(weight: number, miss: number): number {
  return weight * miss;
}

/** r less J Δz: a machine that gives more misses that much less. What all values of a series may be off by together is left out of it. */
function missesOf({ misses, weighing, sensitivity }: KrigedMisses, moved: Float64Array | undefined): Float64Array {
  if (moved === undefined) return misses;
  const size = misses.length;
  const weighted = Float64Array.from(misses, (_, row) => {
    const own = sensitivity.subarray(row * moved.length, (row + 1) * moved.length);
    return own.reduce((sum, value, number) => sum + value * moved[number]!, 0);
  });
  const changed = timesLower(weighing, size, timesLowerTransposed(weighing, size, weighted));
  return misses.map((miss, row) => miss - changed[row]!);
}

function timesLower(lower: Float64Array, size: number, vector: Float64Array): Float64Array {
  return vector.map((_, row) => {
    let sum = 0;
    for (let column = 0; column <= row; column++) sum += lower[row * size + column]! * vector[column]!;
    return sum;
  });
}

function timesLowerTransposed(lower: Float64Array, size: number, vector: Float64Array): Float64Array {
  return vector.map((_, column) => {
    let sum = 0;
    for (let row = column; row < size; row++) sum += lower[row * size + column]! * vector[row]!;
    return sum;
  });
}
