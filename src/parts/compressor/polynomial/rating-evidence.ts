// One printed rating as a point the identification reads.

import type { Refrigerant } from '../../../matter/refrigerants/index.ts';
import { InputError, requirePositive } from '../../../numerics/index.ts';
import type { Estimate } from '../../../quantities/index.ts';
import type { EvidencePoint } from '../identification/evidence.ts';
import { type RatingConditions, ratingConditions } from '../rating-points.ts';
import { ratedConditions } from './basis.ts';
import { requireFrequency, type StatedSupply } from './coefficient-set.ts';

export interface PrintedRating {
  readonly fluid: Refrigerant;
  readonly path: string;
  readonly label: string;
  /** Name of a confirmed rating point, or the four temperatures of the sheet [K]. */
  readonly at: string | RatingConditions;
  /** W, W, A. */
  readonly given: { readonly capacity?: Estimate; readonly power?: Estimate; readonly current?: Estimate };
  readonly supply: StatedSupply;
  /** Air around the shell at the rating [K]. */
  readonly surroundings: number;
  /** Path of the series of its sheet; absent where it stands alone. */
  readonly series?: string;
}

/**
 * A rating at a named point or at four temperatures.
 * @throws InputError 'unknownRatingPoint'; 'unsureRatingPoint' where the temperatures behind a name are not confirmed and must be
 *         typed; 'missingFrequency'; 'nothingGiven'; 'evaporatingAboveCondensing', 'returnGasBelowEvaporating',
 *         'liquidAboveCondensing'; for values that are not positive; errors of the refrigerant's equation outside its range
 */
export function ratingEvidence(request: PrintedRating): EvidencePoint {
  const { fluid, path, label, at, given, surroundings, series } = request;
  for (const [name, { low }] of Object.entries(given) as [string, Estimate][]) requirePositive(`${path}.${name}`, low);
  if (Object.keys(given).length === 0) {
    throw new InputError(path, 'none of them', 'capacity, power or current of the rating', 'nothingGiven');
  }
  return {
    path,
    label,
    ...possibleConditions(fluid, typeof at === 'string' ? ratingConditions(at) : at, path),
    surroundings,
    supply: requireFrequency(path, request.supply),
    given,
    ...(series === undefined ? {} : { series }),
  };
}

function possibleConditions(fluid: Refrigerant, at: RatingConditions, path: string): RatingConditions {
  const { evaporating, condensing, returnGas, liquid } = at;
  return ratedConditions(
    fluid,
    { gas: { kind: 'returnGas', returnGas }, liquid: { kind: 'liquid', liquid }, saturation: 'dew' },
    evaporating,
    condensing,
    `${path}.at`,
  );
}
