// The range of a payback: all times at which the band of "savings so far less cost" holds zero. A ratio of two doubtful numbers
// varied end by end would break down where the saving may be nothing; this says "never" there.
// Source of the idea: Fieller (1954), J. R. Statist. Soc. B 16, 175 (from memory).

import { annuityFactor } from '../../../accounts/index.ts';
import { findRoot } from '../../../numerics/index.ts';
import { combinedReach, type Doubt, endMoves } from '../../doubt/doubt.ts';
import type { PaybackRange } from './answer.ts';

/** What has not paid for itself by then never does [years]. */
const longest = 1000;
/** Times at which the first crossing is looked for, a tenth of a year to the longest, by equal ratios. */
const times = Array.from({ length: 121 }, (_, index) => 0.1 * (longest / 0.1) ** (index / 120));

/**
 * @param doubt  with the numbers `<gain>.cost` and `<gain>.netSaving`
 * @param gain   name of the group
 * @param rate   discount rate [1/year]; 0 for the simple payback
 */
export function paybackRange(doubt: Doubt, gain: string, rate: number): PaybackRange {
  const cost = doubt.bands[`${gain}.cost`]!.likely;
  const saving = doubt.bands[`${gain}.netSaving`]!.likely;
  const moves = doubt.moves.map((move) => ({
    cost: endMoves(move, `${gain}.cost`),
    saving: endMoves(move, `${gain}.netSaving`),
  }));
  const factor = (time: number) => (time === 0 ? 0 : annuityFactor(rate, time));
  const surplus = (time: number) => saving * factor(time) - cost;
  const reach = (time: number) =>
    combinedReach(
      moves.map((move) => [move.saving[0] * factor(time) - move.cost[0], move.saving[1] * factor(time) - move.cost[1]]),
    );
  return {
    low: firstTime((time) => surplus(time) + reach(time).up),
    likely: firstTime(surplus),
    high: firstTime((time) => surplus(time) - reach(time).down),
  };
}

/** When a number first reaches 0; null where it never does. */
function firstTime(number: (time: number) => number): number | null {
  if (number(0) >= 0) return number(times[0]!) > 0 ? 0 : null;
  let before = 0;
  for (const time of times) {
    if (number(time) >= 0) return findRoot(number, before, time, { relativeTolerance: 1e-9, what: 'payback' }).root;
    before = time;
  }
  return null;
}
