// Stage: air pressure of the place, the coldest spell, and the twelve months of room and source.

import { pressureAtAltitude } from '../../matter/air/index.ts';
import {
  type ColdestSpell,
  coldestSpell,
  type MonthConditions,
  monthlyConditions,
  type RoomClimate,
  type SourceClimate,
} from '../../surroundings/index.ts';
import type { DesignSlice } from '../stage.ts';

export interface SurroundingsResult {
  readonly atmosphericPressure: number;
  readonly spell: ColdestSpell;
  readonly months: readonly MonthConditions[];
}

export function surroundingsOf({ place, room, source }: DesignSlice<'place' | 'room' | 'source'>): SurroundingsResult {
  const climate: RoomClimate = {
    usual: room.temperature,
    coldest: room.coldest,
    warmest: room.warmest,
    monthsHeated: room.monthsHeated,
    coldestMonth: room.coldestMonth,
  };
  const heatSource: SourceClimate =
    source.kind === 'roomAir'
      ? { kind: 'roomAir' }
      : { kind: 'otherRoom', usual: source.temperature, coldest: source.coldest, warmest: source.warmest };
  return {
    atmosphericPressure: pressureAtAltitude(place.altitude),
    spell: coldestSpell(climate, heatSource),
    months: monthlyConditions(climate, heatSource),
  };
}
