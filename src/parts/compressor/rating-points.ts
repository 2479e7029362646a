// Named conditions under which makers state capacity and power. The liquid temperature alone is worth a fifth of the
// capacity, so only points whose four temperatures are confirmed may identify a machine; the others are named as unsure.

import { InputError } from '../../numerics/index.ts';
import type { RatingPointRecord } from './data.ts';
import { compressorData } from './data.ts';

/** The four temperatures [K] without which a capacity means nothing: dew, dew, gas at the inlet, liquid before the valve. */
export interface RatingConditions {
  readonly evaporating: number;
  readonly condensing: number;
  readonly returnGas: number;
  readonly liquid: number;
}

/** A named point. `returnGas` is null where editions disagree; `status` says in words what is confirmed. */
export type RatingPoint = RatingPointRecord;

/** All points, confirmed or not. */
export const ratingPoints: readonly RatingPoint[] = compressorData.ratingPoints;

/** Names of the confirmed points: the only ones modelFromRating accepts by name. */
export const ratingPointNames: readonly string[] = compressorData.ratingPoints
  .filter((record) => record.confirmed)
  .map((record) => record.name);

/** The point of that name, confirmed or not. @throws InputError 'unknownRatingPoint' that lists the confirmed names. */
export function ratingPoint(name: string): RatingPoint {
  const found = compressorData.ratingPoints.find((record) => record.name === name);
  if (found === undefined) {
    throw new InputError('ratingPoint', name, `one of ${ratingPointNames.join(', ')}`, 'unknownRatingPoint');
  }
  return found;
}

/**
 * The four temperatures of a confirmed point.
 * @throws InputError 'unsureRatingPoint' with the reason, where the conditions behind the name are not confirmed: give
 *         the four temperatures printed on the sheet instead.
 */
export function ratingConditions(name: string): RatingConditions {
  const { evaporating, condensing, returnGas, liquid, confirmed, status } = ratingPoint(name);
  if (!confirmed || returnGas === null) {
    throw new InputError(
      'ratingPoint',
      name,
      `a confirmed rating point (${ratingPointNames.join(', ')}), or the four temperatures of the sheet; ${status}`,
      'unsureRatingPoint',
    );
  }
  return { evaporating, condensing, returnGas, liquid };
}
