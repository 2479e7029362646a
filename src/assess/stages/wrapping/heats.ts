// What a wrapped tank needs and gives at the coldest spell and in each month. Simplification: an aired room stays as humid as it
// is without the measures (room-air.ts), so what surrounds the tank is found once for all sets of measures.

import {
  applyMeasures,
  type BareTankHeat,
  type Measure,
  type TankConditions,
  type TankDescription,
  tankHeatOf,
} from '../../../tank/index.ts';
import type { SurroundingsResult } from '../surroundings/surroundings.ts';
import { differentMonths, type TankPlace, type TankSlice, tankConditions } from '../tank/tank.ts';

/** What surrounds the tank in the coldest spell, in the months that differ, and which of these each month is. */
export interface Moments {
  readonly spell: TankConditions;
  readonly different: readonly TankConditions[];
  readonly ofMonth: readonly number[];
}

/** What surrounds the tank, which is carried by its meter where one was adopted. */
export function momentsOf(slice: TankSlice, surroundings: SurroundingsResult): Moments {
  const { spell, months, atmosphericPressure } = surroundings;
  const around = (place: TankPlace) => tankConditions(slice, place, atmosphericPressure);
  const { different, ofMonth } = differentMonths(slice, months);
  return { spell: around(spell), different: different.map(around), ofMonth };
}

/**
 * Heat of a tank with measures, at any moment.
 * @param described         the tank without them
 * @param waterTemperature  T_w [K] without them; they may lower it
 * @param measures          any number of them
 */
export function wrappedHeat(
  described: TankDescription,
  waterTemperature: number,
  measures: readonly Measure[],
): (conditions: TankConditions) => BareTankHeat {
  const wrapped = applyMeasures(described, waterTemperature, measures);
  const heatAt = tankHeatOf(wrapped.tank);
  return (conditions) => heatAt({ ...conditions, waterTemperature: wrapped.waterTemperature });
}

/** Heat of each month. */
export function monthHeats(
  heat: (conditions: TankConditions) => BareTankHeat,
  { different, ofMonth }: Moments,
): readonly BareTankHeat[] {
  const heats = different.map(heat);
  return ofMonth.map((index) => heats[index]!);
}
