// Public names of the surroundings: the months, room and source through the year, the coldest spell, what lies around the
// house, and how humid the room is.

export type { ColdestSpell, MonthConditions, RoomClimate, SourceClimate } from './climate.ts';
export {
  coldestSpell,
  monthlyConditions,
  roomMonthTemperature,
  summerDistance,
  summerShare,
} from './climate.ts';
export { surroundingsFormulas } from './formulas/index.ts';
export { groundTemperature, yearlyMean } from './ground.ts';
export type { MonthName } from './months.ts';
export {
  heatedShare,
  monthDuration,
  monthNames,
  monthsAtSameDistance,
  monthsCloser,
  monthsFromColdest,
} from './months.ts';
export type {
  GroundClimate,
  MainsClimate,
  NearbyClimates,
  NearbyTemperatures,
  OutdoorClimate,
} from './nearby.ts';
export { nearbyInMonth, nearbyInSpell } from './nearby.ts';
export type { Dehumidifier, EvaporationAt, RoomAir, VentilatedRoom, Ventilation } from './room-moisture.ts';
export { dehumidifier, ventilatedRoom } from './room-moisture.ts';
export { seasonalTemperature } from './seasonal.ts';
export type { ClimateOrigins, NearbyOrigins, NearbySeasons } from './working.ts';
export { monthWorking, nearbyWorking } from './working.ts';
