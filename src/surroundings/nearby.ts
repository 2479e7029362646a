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

/** Ground follows the outdoor air: its yearly mean, or its wave at a depth. */
export interface NearbyClimates {
  readonly outdoors: OutdoorClimate;
  readonly mains: MainsClimate;
  readonly ground?: GroundClimate;
}

/** Temperatures [K]. */
export interface NearbyTemperatures {
  readonly outdoorTemperature: number;
  readonly groundTemperature: number;
  readonly mainsTemperature: number;
}

/** Temperatures in a month. @throws InputError naming the temperature that is impossible */
export function nearbyInMonth(nearby: NearbyClimates, month: MonthName, coldestMonth: MonthName): NearbyTemperatures {
  requireNearby(nearby);
  const { outdoors, mains, ground } = nearby;
  const distance = monthsFromColdest(month, coldestMonth);
  return {
    outdoorTemperature: seasonalTemperature(outdoors.winter, outdoors.summer, distance),
    groundTemperature: groundInMonth(outdoors, ground, month, coldestMonth),
    mainsTemperature: seasonalTemperature(mains.winter, mains.summer, distance),
  };
}

/** Temperatures at the coldest spell: outdoors its lowest sustained one, ground and main as in the coldest month. */
export function nearbyInSpell(nearby: NearbyClimates, coldestMonth: MonthName): NearbyTemperatures {
  return { ...nearbyInMonth(nearby, coldestMonth, coldestMonth), outdoorTemperature: nearby.outdoors.coldest };
}

function requireNearby({ outdoors, mains }: NearbyClimates): void {
  for (const name of ['winter', 'coldest', 'summer'] as const) {
    requirePositive(`place.outdoors.${name}`, outdoors[name]);
  }
  for (const name of ['winter', 'summer'] as const) requirePositive(`place.mains.${name}`, mains[name]);
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
