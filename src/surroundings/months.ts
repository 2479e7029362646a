// The twelve months as this project counts them: a common year of 365 days, and how far a month lies from the coldest
// one. From this distance alone follow which months are heated and which are summer.

import { InputError, requireWithin } from '../numerics/index.ts';

export const monthNames = [
  'january',
  'february',
  'march',
  'april',
  'may',
  'june',
  'july',
  'august',
  'september',
  'october',
  'november',
  'december',
] as const;

export type MonthName = (typeof monthNames)[number];

/** Days of each month in a common year. The year has 365 days, always. */
const daysOfMonth = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31] as const;

const secondsPerDay = 86_400;

/** Duration of a month [s]. */
export function monthDuration(month: MonthName): number {
  return daysOfMonth[monthIndex('month', month)]! * secondsPerDay;
}

/**
 * Distance d of a month from the coldest month, in whole months the short way round the year: 0 to 6.
 * Worked value: december from january → 1; july from january → 6.
 * @throws InputError if a name is not one of `monthNames`
 */
export function monthsFromColdest(month: MonthName, coldestMonth: MonthName): number {
  const apart = Math.abs(monthIndex('month', month) - monthIndex('coldestMonth', coldestMonth));
  return Math.min(apart, 12 - apart);
}

/**
 * Share of a month that is heated.
 *     s = min(1, max(0, (N − n_closer) / n_same))
 * The N months nearest the coldest month are heated; n_closer months lie closer to it than this one, n_same months lie
 * exactly as far (one at distances 0 and 6, two otherwise) and share what is left of N evenly.
 * @param distance      d [months], 0 to 6, whole: see `monthsFromColdest`
 * @param monthsHeated  N [months], 0 to 12, fractions allowed (N is a doubtful number and is varied)
 * @returns             s [-], 0 to 1; the twelve shares add up to N
 * @throws InputError outside these ranges
 * Source: a definition of this project, no physics.
 * Worked value: d = 4, N = 8 → (8 − 7)/2 = 0.5.
 */
export function heatedShare(distance: number, monthsHeated: number): number {
  requireWholeDistance(distance);
  requireWithin('monthsHeated', monthsHeated, 0, 12);
  return Math.min(1, Math.max(0, (monthsHeated - monthsCloser(distance)) / monthsAtSameDistance(distance)));
}

/** How many months lie closer to the coldest month than `distance` whole months. */
export function monthsCloser(distance: number): number {
  return distance === 0 ? 0 : 2 * distance - 1;
}

/** How many months lie exactly `distance` whole months from the coldest month. */
export function monthsAtSameDistance(distance: number): number {
  return distance === 0 || distance === 6 ? 1 : 2;
}

/** @throws InputError unless `distance` is a whole number from 0 to 6 */
export function requireWholeDistance(distance: number): void {
  if (!(Number.isInteger(distance) && distance >= 0 && distance <= 6)) {
    throw new InputError('distance', distance, 'a whole number of months from 0 to 6');
  }
}

function monthIndex(path: string, month: MonthName): number {
  const index = monthNames.indexOf(month);
  if (index < 0) throw new InputError(path, month, `one of ${monthNames.join(', ')}`, 'unknownMonth');
  return index;
}
