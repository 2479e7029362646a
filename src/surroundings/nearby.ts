// What lies around the house and reaches the tank by a wall, a slab or a tap: outdoor air, ground and the water main, month by
// month and at the coldest spell. Outdoor air and the main follow the same cosine as an unheated room.

import { requirePositive } from '../numerics/index.ts';
import { groundTemperature, yearlyMean } from './ground.ts';
import { type MonthName, monthDuration, monthNames, monthsFromColdest } from './months.ts';
import { seasonalTemperature } from './seasonal.ts';

/** Outdoor air: mean of the coldest month, lowest sustained (coldest spell), mean at the height of summer [K]. */
export interface OutdoorClimate {
  readonly winter: number;
  readonly coldest: number;
  readonly summer: number;
}

/** Water of the main in the coldest month and at the height of summer [K]. */
export interface MainsClimate {
  readonly winter: number;
  readonly summer: number;
}

/** Ground that still feels the year: depth z [m] below open land and thermal diffusivity a [m²/s]. */
export interface GroundClimate {
  readonly depth: number;
  readonly diffusivity: number;
}

/** As far as the tank asks for it. Ground follows the outdoor air: its yearly mean, or its wave at a depth. */
export interface NearbyClimates {
  readonly outdoors?: OutdoorClimate;
  readonly mains?: MainsClimate;
  readonly ground?: GroundClimate;
}

/** Temperatures [K]; absent where nobody has said what they follow from. */
export interface NearbyTemperatures {
  readonly outdoorTemperature?: number;
  readonly groundTemperature?: number;
  readonly mainsTemperature?: number;
}

/** Temperatures in a month. */
export function nearbyInMonth(
  { outdoors, mains, ground }: NearbyClimates,
  month: MonthName,
  coldestMonth: MonthName,
): NearbyTemperatures {
  const distance = monthsFromColdest(month, coldestMonth);
  return {
    ...(outdoors === undefined
      ? {}
      : {
          outdoorTemperature: seasonalTemperature(outdoors.winter, outdoors.summer, distance),
          groundTemperature: groundInMonth(outdoors, ground, month, coldestMonth),
        }),
    ...(mains === undefined ? {} : { mainsTemperature: seasonalTemperature(mains.winter, mains.summer, distance) }),
  };
}

/** Temperatures at the coldest spell: outdoors its lowest sustained one, ground and main as in the coldest month. */
export function nearbyInSpell(nearby: NearbyClimates, coldestMonth: MonthName): NearbyTemperatures {
  const month = nearbyInMonth(nearby, coldestMonth, coldestMonth);
  return nearby.outdoors === undefined ? month : { ...month, outdoorTemperature: nearby.outdoors.coldest };
}

/** @throws InputError naming the temperature that is impossible */
export function requireNearby({ outdoors, mains }: NearbyClimates): void {
  for (const name of ['winter', 'coldest', 'summer'] as const) {
    if (outdoors !== undefined) requirePositive(`place.outdoors.${name}`, outdoors[name]);
  }
  for (const name of ['winter', 'summer'] as const) {
    if (mains !== undefined) requirePositive(`place.mains.${name}`, mains[name]);
  }
}

function groundInMonth(
  { winter, summer }: OutdoorClimate,
  ground: GroundClimate | undefined,
  month: MonthName,
  coldestMonth: MonthName,
): number {
  const mean = yearlyMean(winter, summer);
  if (ground === undefined) return mean;
  const since = middleOf(month) - middleOf(coldestMonth);
  return groundTemperature(mean, (summer - winter) / 2, ground.depth, ground.diffusivity, since);
}

/** Middle of a month [s] from the beginning of the year. */
function middleOf(month: MonthName): number {
  const before = monthNames.slice(0, monthNames.indexOf(month)).reduce((sum, name) => sum + monthDuration(name), 0);
  return before + monthDuration(month) / 2;
}
