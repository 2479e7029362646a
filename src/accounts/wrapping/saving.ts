// What one state of a tank saves beside another, line by line of the account of tank and room.

import { requireFinite } from '../../numerics/index.ts';
import { netRunningCost } from '../account.ts';

/** The running lines of an account of a year [money]. */
export interface RunningLines {
  readonly electricityCost: number;
  readonly roomHeatCredit: number;
  readonly coolingCost: number;
  readonly runningCost: number;
}

/** Money a year that the second state saves beside the first. */
export interface Saving {
  readonly electricitySaved: number;
  /** Below 0 where the room is credited less. */
  readonly roomCreditChange: number;
  readonly coolingSaved: number;
  readonly netSaving: number;
}

/** @returns what `after` saves beside `before` */
export function savingOf(before: RunningLines, after: RunningLines): Saving {
  const electricitySaved = lessThanBefore(before.electricityCost, after.electricityCost);
  const roomCreditChange = lessThanBefore(after.roomHeatCredit, before.roomHeatCredit);
  const coolingSaved = lessThanBefore(before.coolingCost, after.coolingCost);
  return {
    electricitySaved,
    roomCreditChange,
    coolingSaved,
    netSaving: netSaving(electricitySaved, roomCreditChange, coolingSaved),
  };
}

/**
 * How much less one number is than another, of the same kind.
 *     S = K_before − K_after
 * @param before  K_before
 * @param after   K_after
 * @returns       S, above 0 where it fell
 * Source: definition. Worked value: 260, 110 → 150.
 */
export function lessThanBefore(before: number, after: number): number {
  requireFinite('before', before);
  requireFinite('after', after);
  return before - after;
}

/**
 * Net saving of a year, tank and room together: what the socket saves, with what the room loses by it.
 *     S = S_el + ΔK_room + S_cool
 * @param electricity  S_el [money/year], saved
 * @param room         ΔK_room [money/year], change of the room's credit: a wrapped tank warms its room less
 * @param cooling      S_cool [money/year], saved
 * @returns            S [money/year]
 * Source: definition of this project: the running cost is electricity less the room's credit plus cooling.
 * Worked value: 150, −40, 5 → 115.
 */
export function netSaving(electricity: number, room: number, cooling: number): number {
  return -netRunningCost(-electricity, room, -cooling);
}
