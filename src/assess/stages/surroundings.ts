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
import type { StagedDesign } from './engine-assumptions.ts';

export interface SurroundingsResult {
  readonly atmosphericPressure: number;
  readonly spell: ColdestSpell;
  readonly months: readonly MonthConditions[];
}

/** What the surroundings need of the design. */
export interface SurroundingsSlice {
  readonly altitude: number;
  readonly room: Pick<StagedDesign['room'], 'temperature' | 'coldest' | 'warmest' | 'monthsHeated' | 'coldestMonth'>;
  readonly source: StagedDesign['source'];
}

export function surroundingsOf({ altitude, room, source }: SurroundingsSlice): SurroundingsResult {
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
    atmosphericPressure: pressureAtAltitude(altitude),
    spell: coldestSpell(climate, heatSource),
    months: monthlyConditions(climate, heatSource),
  };
}
