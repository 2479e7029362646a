// How far the model is off at one running point: the deviation that the points around it tell (kriging), and how doubtful that
// still is. It widens away from the points, for another fluid than theirs, for another mains frequency, and without any.

import { requirePositive } from '../../../../numerics/index.ts';
import type { HermeticCompressor, Supply } from '../../hermetic/parameters.ts';
import { dimensions } from '../coordinates.ts';
import type { IdentifiedMachine, KrigedMisses, ModelDoubt, ModelDoubtReason } from '../identified.ts';
import { deviationsOf, endsAt } from '../priors.ts';
import { type DeviationKind, deviationAmounts, deviationCovariance, type Place } from './discrepancy.ts';

/** Where the machine runs: name of the fluid in it, dew temperatures [K], mains. */
export interface DoubtedPlace extends Place {
  readonly fluid: string;
  readonly supply: Supply;
}

/** σ of ln added where nothing is known from points [-]; own judgement, the first two after published curves of three and four machines. */
export const furtherDoubt = {
  /** Another fluid than the points are of: transport in the openings and at the wall, oil, lubrication. */
  otherFluid: { flow: 0.055, power: 0.035 },
  /** From 50 to 60 Hz or back; grows with the logarithm of the ratio. */
  otherFrequency: { flow: 0.028, power: 0.035 },
  /** No point of that quantity. */
  noPoints: { flow: 0.03, power: 0.03 },
} as const;

/** Beyond the outermost point by more than this the reason is told [K]: a printed level rounds to a tenth. */
const beyondBy = 0.1;

/**
 * Correction of the model and its half width, relative, for flow and for power.
 *     ln factor = kᵀ Σ⁻¹ (r − J Δz),  σ² = k(x,x) − kᵀ Σ⁻¹ k + further doubts²,  half width = 1.645 σ
 * Values that scatter more than the model is stated to widen it, until it reaches as far as the farthest of them.
 * @param identified  the machine as identified
 * @param compressor  the machine as it is taken to be, such as one of compressorWith: what it misses of the points itself
 * @param at          fluid, dew temperatures [K] and mains where it runs
 * @returns           relative corrections; half widths are passed about one time in ten; reasons of the width
 * @throws InputError for temperatures or frequency not above 0
 * Source: as discrepancy.ts; the amounts are own judgement.
 */
export function modelDoubt(
  identified: IdentifiedMachine,
  compressor: HermeticCompressor,
  at: DoubtedPlace,
): ModelDoubt {
  requirePositive('evaporating', at.evaporating);
  requirePositive('condensing', at.condensing);
  requirePositive('supply.frequency', at.supply.frequency);
  const moved = movementOf(identified, compressor);
  const reasons = reasonsAt(identified, at);
  return {
    flow: doubtOf(identified, 'flow', moved, at, reasons),
    power: doubtOf(identified, 'power', moved, at, reasons),
    reasons,
  };
}

/** Δz from the likely machine; undefined for that machine itself. */
export function movementOf(identified: IdentifiedMachine, compressor: HermeticCompressor): Float64Array | undefined {
  if (compressor === identified.compressor) return undefined;
  const moved = deviationsOf(identified.prior, compressor);
  for (let number = 0; number < dimensions; number++) moved[number]! -= identified.deviations[number]!;
  return moved;
}

function doubtOf(
  identified: IdentifiedMachine,
  kind: DeviationKind,
  moved: Float64Array | undefined,
  at: DoubtedPlace,
  reasons: readonly ModelDoubtReason[],
): ModelDoubt['flow'] {
  const misses = identified.kriged[kind];
  const { mean, variance } =
    misses === null ? { mean: 0, variance: noPointsVariance(kind) } : kriged(kind, misses, moved, at);
  let sum = variance;
  if (reasons.includes('otherFluid')) sum += furtherDoubt.otherFluid[kind] ** 2;
  if (reasons.includes('otherFrequency')) {
    sum += (furtherDoubt.otherFrequency[kind] * (logarithmicDistance(identified, at) / Math.log(60 / 50))) ** 2;
  }
  const factor = Math.exp(mean);
  return { correction: factor - 1, halfWidth: halfWidthOf(factor, sum) };
}

/** [-] = 1.645 k σ: relative half width of a correction by the factor k, passed one time in ten. */
export function halfWidthOf(factor: number, variance: number): number {
  return factor * endsAt * Math.sqrt(variance);
}

function noPointsVariance(kind: DeviationKind): number {
  return furtherDoubt.noPoints[kind] ** 2;
}

/** Mean and variance of the deviation there. Plain loops: every running point of the loop asks for it. */
function kriged(
  kind: DeviationKind,
  misses: KrigedMisses,
  moved: Float64Array | undefined,
  at: Place,
): { mean: number; variance: number } {
  const { places, middle, lower, weights, sensitivity, widened, farthest } = misses;
  const size = places.length;
  const solved = new Float64Array(size);
  let mean = 0;
  let known = 0;
  for (let row = 0; row < size; row++) {
    const covariance = deviationCovariance(kind, middle, at, places[row]!);
    const start = row * size;
    let sum = covariance;
    for (let k = 0; k < row; k++) sum -= lower[start + k]! * solved[k]!;
    sum /= lower[start + row]!;
    solved[row] = sum;
    known += sum * sum;
    mean += covariance * (weights[row]! - (moved === undefined ? 0 : changeOf(sensitivity, row, moved)));
  }
  const rough = deviationAmounts[kind].rough ** 2;
  const free = deviationCovariance(kind, middle, at, at) - known;
  // Rounding may take the known part a little above the whole.
  const stated = Math.max(free, 0) + rough;
  return { mean, variance: Math.min(widened ** 2 * stated, stated + farthest ** 2) };
}

function changeOf(sensitivity: Float64Array, row: number, moved: Float64Array): number {
  const count = moved.length;
  const start = row * count;
  let change = 0;
  for (let number = 0; number < count; number++) change += sensitivity[start + number]! * moved[number]!;
  return change;
}

/** |ln| of the frequency over the nearest of the points. */
function logarithmicDistance({ frequencies }: IdentifiedMachine, { supply }: DoubtedPlace): number {
  return Math.min(...frequencies.map((frequency) => Math.abs(Math.log(supply.frequency / frequency))));
}

/** Mains move by some tenths of a hertz: a frequency is another one beyond this share. */
const sameFrequency = 0.01;

function reasonsAt(identified: IdentifiedMachine, at: DoubtedPlace): readonly ModelDoubtReason[] {
  const reasons: ModelDoubtReason[] = [];
  if (at.fluid !== identified.madeFor) reasons.push('otherFluid');
  if (logarithmicDistance(identified, at) > sameFrequency) reasons.push('otherFrequency');
  const { known } = identified;
  if (known.length === 0) return [...reasons, 'noPoints'];
  if (
    isBeyond(
      known.map(({ evaporating }) => evaporating),
      at.evaporating,
    )
  )
    reasons.push('beyondEvaporating');
  if (
    isBeyond(
      known.map(({ condensing }) => condensing),
      at.condensing,
    )
  )
    reasons.push('beyondCondensing');
  return reasons;
}

function isBeyond(values: readonly number[], at: number): boolean {
  return at < Math.min(...values) - beyondBy || at > Math.max(...values) + beyondBy;
}
