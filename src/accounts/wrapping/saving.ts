// What one state of a tank saves beside another, line by line of the account of tank and room.

import { requireFinite } from '../../numerics/index.ts';
import { netRunningCost } from '../account.ts';

/** The running lines of an account of a year [money]. */
export interface RunningLines {
  readonly electricityCost: number;
  readonly roomHeatCredit: number;
  readonly coolingCost: number;
  /** Null in a room without a dehumidifier. */
  readonly dehumidifierCost: number | null;
  readonly runningCost: number;
}

/** Money a year that the second state saves beside the first. */
export interface Saving {
  /** At the socket: of what heats the water, and of a dehumidifier that has less to take out. */
  readonly electricitySaved: number;
  /** Below 0 where the room is credited less. */
  readonly roomCreditChange: number;
  readonly coolingSaved: number;
  readonly netSaving: number;
}

/** @returns what `after` saves beside `before` */
export function savingOf(before: RunningLines, after: RunningLines): Saving {
  const electricitySaved = lessThanBefore(fromSocket(before), fromSocket(after));
  const roomCreditChange = lessThanBefore(after.roomHeatCredit, before.roomHeatCredit);
  const coolingSaved = lessThanBefore(before.coolingCost, after.coolingCost);
  return {
    electricitySaved,
    roomCreditChange,
    coolingSaved,
    netSaving: netSaving(electricitySaved, roomCreditChange, coolingSaved),
  };
}

/** Electricity paid, dehumidifier included. */
function fromSocket({ electricityCost, dehumidifierCost }: RunningLines): number {
  return electricityCost + (dehumidifierCost ?? 0);
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
 * @param electricity  S_el [money/year], saved; that of a dehumidifier included
 * @param room         ΔK_room [money/year], change of the room's credit: a wrapped tank warms its room less
 * @param cooling      S_cool [money/year], saved
 * @returns            S [money/year]
 * Source: definition of this project: the running cost is electricity less the room's credit plus cooling.
 * Worked value: 150, −40, 5 → 115.
 */
export function netSaving(electricity: number, room: number, cooling: number): number {
  return -netRunningCost(-electricity, room, -cooling, 0);
}
