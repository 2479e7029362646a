// Stage: air pressure of the place, the coldest spell, and the twelve months of room and source.

import { pressureAtAltitude } from '../../../matter/air/index.ts';
import {
  type ColdestSpell,
  coldestSpell,
  type MonthConditions,
  monthlyConditions,
  nearbyInMonth,
  nearbyInSpell,
  type RoomClimate,
  type SourceClimate,
} from '../../../surroundings/index.ts';
import type { StagedDesign } from '../engine-assumptions.ts';
import type { TankPlace } from '../tank/tank.ts';

export interface SurroundingsResult {
  readonly atmosphericPressure: number;
  readonly spell: ColdestSpell & TankPlace;
  readonly months: readonly (MonthConditions & TankPlace)[];
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
  readonly outdoors: Pick<StagedDesign['place']['outdoors'], 'winter' | 'coldest' | 'summer'>;
  readonly mains: StagedDesign['place']['mains'];
}

export function surroundingsOf(slice: SurroundingsSlice): SurroundingsResult {
  const { altitude, room, source, outdoors, mains } = slice;
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
  const nearby = { outdoors, mains };
  return {
    atmosphericPressure: pressureAtAltitude(altitude),
    spell: { ...coldestSpell(climate, heatSource), ...nearbyInSpell(nearby, room.coldestMonth) },
    months: monthlyConditions(climate, heatSource).map((conditions) => ({
      ...conditions,
      ...nearbyInMonth(nearby, conditions.month, room.coldestMonth),
    })),
  };
}

/** What the surroundings read of the design. */
export function surroundingsSlice({ place, room, source }: StagedDesign): SurroundingsSlice {
  const { temperature, coldest, warmest, monthsHeated, coldestMonth } = room;
  return {
    altitude: place.altitude,
    room: { temperature, coldest, warmest, monthsHeated, coldestMonth },
    source: sourceSlice(source),
    outdoors: outdoorsSlice(place),
    mains: place.mains,
  };
}

/** What the surroundings need of the design's source. */
function sourceSlice(source: StagedDesign['source']): SourceSlice {
  if (source.kind === 'roomAir') return { kind: 'roomAir' };
  const { kind, temperature, coldest, warmest } = source;
  return { kind, temperature, coldest, warmest };
}

/** The air outdoors without its wind, which no temperature depends on. */
function outdoorsSlice({ outdoors }: StagedDesign['place']): SurroundingsSlice['outdoors'] {
  const { winter, coldest, summer } = outdoors;
  return { winter, coldest, summer };
}
