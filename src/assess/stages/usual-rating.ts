// The rating point after which an application is named: where a machine's plate is read, and where its capillary was chosen.

import type { ApplicationName } from '../../design/index.ts';
import { type RatingConditions, ratingPoint } from '../../parts/compressor/index.ts';

const names: Readonly<Record<ApplicationName, string>> = {
  low: 'ashraeLow',
  medium: 'ashraeMedium',
  high: 'ashraeHigh',
};

/** The four temperatures [K] of the point of that application, all of which state their gas and liquid; that of the medium one is not confirmed. */
export function usualRating(application: ApplicationName): RatingConditions {
  const { evaporating, condensing, returnGas, liquid } = ratingPoint(names[application]);
  return { evaporating, condensing, returnGas: returnGas!, liquid: liquid! };
}
