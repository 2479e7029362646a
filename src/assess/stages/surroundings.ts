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

/** The source without the size of its room, which no temperature depends on. */
export type SourceSlice =
  | { readonly kind: 'roomAir' }
  | Omit<Extract<StagedDesign['source'], { readonly kind: 'otherRoom' }>, 'volume'>;

/** What the surroundings need of the design. */
export interface SurroundingsSlice {
  readonly altitude: number;
  readonly room: Pick<StagedDesign['room'], 'temperature' | 'coldest' | 'warmest' | 'monthsHeated' | 'coldestMonth'>;
  readonly source: SourceSlice;
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

/** What the surroundings need of the design's source. */
export function sourceSlice(source: StagedDesign['source']): SourceSlice {
  if (source.kind === 'roomAir') return { kind: 'roomAir' };
  const { kind, temperature, coldest, warmest } = source;
  return { kind, temperature, coldest, warmest };
}
