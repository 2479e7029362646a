// Water temperatures at which usual advice raises alarm, by what lives in the tank; from memory: a rule on them can warn and
// never clears.

import type { Livestock } from '../../facts.ts';

/** Water temperature above which usual advice is alarm [K], by livestock; from memory. */
export const highestUsualWater: Readonly<Record<Livestock, number>> = {
  fish: 303.15,
  invertebrates: 302.15,
  plantsOnly: 303.15,
  unknown: 302.15,
};

/** Water temperature below which tropical fish and reef animals are in trouble [K]; from memory. */
export const lowestUsualWater = 293.15;
