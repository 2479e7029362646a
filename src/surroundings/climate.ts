// Room and source temperature month by month, and at the coldest spell, from the few temperatures a person knows.
// Shape: a cosine over the year from the winter level to the summer level; months that are heated sit at the usual
// temperature of the heating season. Left out: weather, days, and what tank and loop do to the room's temperature
// (whatever heats or airs the room is taken to hold it; the heat itself is counted in the accounts).

import { InputError, requirePositive, requireWithin } from '../numerics/index.ts';
import {
  heatedShare,
  type MonthName,
  monthDuration,
  monthNames,
  monthsFromColdest,
  requireWholeDistance,
} from './months.ts';
import { seasonalTemperature } from './seasonal.ts';

/** The room the tank stands in; temperatures in K. */
export interface RoomClimate {
  /** Usual temperature in the heating season. */
  readonly usual: number;
  /** Lowest sustained temperature: the coldest spell. */
  readonly coldest: number;
  /** Usual temperature at the height of summer. */
  readonly warmest: number;
  /** Months of heating a year, 0 to 12; fractions allowed. */
  readonly monthsHeated: number;
  readonly coldestMonth: MonthName;
}

/** Where the machine takes its heat from. */
export type SourceClimate =
  /** The air of the tank's own room. */
  | { readonly kind: 'roomAir' }
  /** The air of an unheated room: `usual` is its level in the coldest month, `warmest` at the height of summer. */
  | { readonly kind: 'otherRoom'; readonly usual: number; readonly coldest: number; readonly warmest: number };

/** One month of the year. */
export interface MonthConditions {
  readonly month: MonthName;
  /** Duration [s]. */
  readonly duration: number;
  /** Whole months from the coldest month, 0 to 6. */
  readonly distance: number;
  readonly roomTemperature: number;
  readonly sourceTemperature: number;
  /** Share of the month in which the room is heated, 0 to 1. */
  readonly heatedShare: number;
  /** Share of the month that is summer: the three months around the warmest one, as far as they are not heated. */
  readonly summerShare: number;
}

export interface ColdestSpell {
  readonly roomTemperature: number;
  readonly sourceTemperature: number;
}

/** Months at least this far from the coldest are summer: with January coldest these are June, July and August. */
export const summerDistance = 5;

/**
 * Temperature of the tank's room in a month, T.
 *     T = s · T_u + (1 − s) · T_free
 * @param usual       T_u [K], usual temperature in the heating season
 * @param unheated    T_free [K], what the room would have unheated in that month
 * @param heatedPart  s [-], heated share of the month, 0 to 1
 * @returns           T [K]
 * Pitfall: a partly heated month is one mean temperature, not two halves.
 * @throws InputError outside these ranges
 * Source: a definition of this project.
 * Worked value: 293 K, 296 K, s = 0.5 → 294.5 K.
 */
export function roomMonthTemperature(usual: number, unheated: number, heatedPart: number): number {
  requirePositive('usual', usual);
  requirePositive('unheated', unheated);
  requireWithin('heatedPart', heatedPart, 0, 1);
  return heatedPart * usual + (1 - heatedPart) * unheated;
}

/**
 * Share of a month that is summer.
 *     s_s = 1 − s for months far from the coldest, else 0
 * @param distance    d [months] from the coldest month, whole, 0 to 6; `summerDistance` or more is far
 * @param heatedPart  s [-], heated share of the month, 0 to 1
 * @returns           s_s [-]
 * @throws InputError outside these ranges
 * Source: a definition of this project. Worked value: d = 5, s = 0.25 → 0.75; d = 4 → 0.
 */
export function summerShare(distance: number, heatedPart: number): number {
  requireWholeDistance(distance);
  requireWithin('heatedPart', heatedPart, 0, 1);
  return distance >= summerDistance ? 1 - heatedPart : 0;
}

/** The twelve months, January first. @throws InputError naming the field that is impossible */
export function monthlyConditions(room: RoomClimate, source: SourceClimate): readonly MonthConditions[] {
  requireRoom(room);
  requireSource(source);
  return monthNames.map((month) => {
    const distance = monthsFromColdest(month, room.coldestMonth);
    const heated = heatedShare(distance, room.monthsHeated);
    const unheated = seasonalTemperature(room.usual, room.warmest, distance);
    const roomTemperature = roomMonthTemperature(room.usual, unheated, heated);
    return {
      month,
      duration: monthDuration(month),
      distance,
      roomTemperature,
      sourceTemperature:
        source.kind === 'roomAir' ? roomTemperature : seasonalTemperature(source.usual, source.warmest, distance),
      heatedShare: heated,
      summerShare: summerShare(distance, heated),
    };
  });
}

/** Lowest sustained room and source temperature: where the verdict is judged. */
export function coldestSpell(room: RoomClimate, source: SourceClimate): ColdestSpell {
  requireRoom(room);
  requireSource(source);
  return {
    roomTemperature: room.coldest,
    sourceTemperature: source.kind === 'roomAir' ? room.coldest : source.coldest,
  };
}

function requireRoom(room: RoomClimate): void {
  requirePositive('room.usual', room.usual);
  requirePositive('room.coldest', room.coldest);
  requirePositive('room.warmest', room.warmest);
  requireWithin('room.monthsHeated', room.monthsHeated, 0, 12);
}

function requireSource(source: SourceClimate): void {
  switch (source.kind) {
    case 'roomAir':
      return;
    case 'otherRoom':
      requirePositive('source.usual', source.usual);
      requirePositive('source.coldest', source.coldest);
      requirePositive('source.warmest', source.warmest);
      return;
    default: {
      const unknown: never = source;
      throw new InputError('source.kind', (unknown as SourceClimate).kind, 'roomAir or otherRoom', 'unknownSource');
    }
  }
}
