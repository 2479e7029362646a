// Public names of the surroundings: the months, room and source through the year, the coldest spell.

export type { ColdestSpell, MonthConditions, RoomClimate, SourceClimate } from './climate.ts';
export {
  coldestSpell,
  monthlyConditions,
  roomMonthTemperature,
  seasonalTemperature,
  summerDistance,
  summerShare,
} from './climate.ts';
export { surroundingsFormulas } from './formulas.ts';
export type { MonthName } from './months.ts';
export {
  heatedShare,
  monthDuration,
  monthNames,
  monthsAtSameDistance,
  monthsCloser,
  monthsFromColdest,
} from './months.ts';
export type { ClimateOrigins } from './working.ts';
export { monthWorking } from './working.ts';
