// What a wrapped tank needs and gives at the coldest spell and in each month. Simplification: an aired room stays as humid as it
// is without the measures (room-air.ts), so what surrounds the tank is found once for all sets of measures.

import {
  applyMeasures,
  type BareTankHeat,
  type Measure,
  type TankConditions,
  tankHeatOf,
} from '../../../tank/index.ts';
import type { SurroundingsResult } from '../surroundings.ts';
import { dependsOnSeasons, type TankPlace, type TankSlice, tankConditions, tankDescription } from '../tank.ts';

/** What surrounds the tank at one moment. */
export interface Moment {
  readonly conditions: TankConditions;
  /** Of the water main [K]. */
  readonly mainsTemperature: number;
}

/** The coldest spell, the months that differ, and which of these each month is. */
export interface Moments {
  readonly spell: Moment;
  readonly different: readonly Moment[];
  readonly ofMonth: readonly number[];
}

/** What surrounds the tank, which is carried by its meter where one was adopted. */
export function momentsOf(slice: TankSlice, surroundings: SurroundingsResult): Moments {
  const { spell, months, atmosphericPressure } = surroundings;
  const momentOf = (place: TankPlace): Moment => ({
    conditions: tankConditions(slice, place, atmosphericPressure),
    mainsTemperature: place.mainsTemperature,
  });
  const readsSeasons = dependsOnSeasons(slice);
  const keys: string[] = [];
  const different: Moment[] = [];
  const ofMonth = months.map((month) => {
    const key = readsSeasons ? `${month.roomTemperature} at ${month.distance}` : String(month.roomTemperature);
    const known = keys.indexOf(key);
    if (known >= 0) return known;
    keys.push(key);
    different.push(momentOf(month));
    return keys.length - 1;
  });
  return { spell: momentOf(spell), different, ofMonth };
}

/** Heat of the tank with measures, at any of the moments. */
export function wrappedHeat(slice: TankSlice, measures: readonly Measure[]): (moment: Moment) => BareTankHeat {
  const byMains = new Map<number, (conditions: TankConditions) => BareTankHeat>();
  const at = (mainsTemperature: number) => {
    const known = byMains.get(mainsTemperature);
    if (known !== undefined) return known;
    const described = tankDescription(slice, mainsTemperature);
    const { tank, waterTemperature } = applyMeasures(described, slice.tank.waterTemperature, measures);
    const heatAt = tankHeatOf(tank);
    const made = (conditions: TankConditions) => heatAt({ ...conditions, waterTemperature });
    byMains.set(mainsTemperature, made);
    return made;
  };
  return ({ conditions, mainsTemperature }) => at(mainsTemperature)(conditions);
}

/** Heat of each month. */
export function monthHeats(
  slice: TankSlice,
  measures: readonly Measure[],
  { different, ofMonth }: Moments,
): readonly BareTankHeat[] {
  const heats = different.map(wrappedHeat(slice, measures));
  return ofMonth.map((index) => heats[index]!);
}
