// The steps that show how the temperatures and shares of one month were computed.

import { type StepInput, type WorkingStep, workingStep } from '../quantities/index.ts';
import type { MonthConditions, RoomClimate, SourceClimate } from './climate.ts';
import { monthsAtSameDistance, monthsCloser } from './months.ts';
import type { NearbyTemperatures } from './nearby.ts';
import { seasonalTemperature } from './seasonal.ts';

/** Where the climate came from: design paths. Those of the source are read for another room only. */
export interface ClimateOrigins {
  readonly usual: string;
  readonly warmest: string;
  readonly monthsHeated: string;
  readonly coldestMonth: string;
  readonly sourceUsual: string;
  readonly sourceWarmest: string;
}

/** Winter and summer levels [K] of what lies around the house. */
export interface NearbySeasons {
  readonly outdoors: { readonly winter: number; readonly summer: number };
  readonly mains: { readonly winter: number; readonly summer: number };
}

/** Where the climates around the house came from: design paths. */
export interface NearbyOrigins {
  readonly outdoorWinter: string;
  readonly outdoorSummer: string;
  readonly mainsWinter: string;
  readonly mainsSummer: string;
}

/**
 * Steps of what lies around the house in one month: `<prefix>.outdoorTemperature`, `.groundTemperature` (the yearly mean) and
 * `.mainsTemperature`.
 * @param seasons       outdoor air and main
 * @param conditions    of the month, as found from it without a depth of the ground
 * @param origins       where the climates came from
 * @param coldestMonth  where the coldest month came from
 * @param prefix        path of the month in the caller's result
 */
export function nearbyWorking(
  seasons: NearbySeasons,
  conditions: NearbyTemperatures & Pick<MonthConditions, 'distance'>,
  origins: NearbyOrigins,
  coldestMonth: string,
  prefix: string,
): readonly WorkingStep[] {
  const { outdoors, mains } = seasons;
  const d: StepInput = [conditions.distance, coldestMonth];
  const T_w: StepInput = [outdoors.winter, origins.outdoorWinter];
  const T_s: StepInput = [outdoors.summer, origins.outdoorSummer];
  const step = (name: keyof NearbyTemperatures, formula: string, inputs: Readonly<Record<string, StepInput>>) =>
    workingStep(`${prefix}.${name}`, `surroundings.${formula}`, conditions[name], inputs);
  return [
    step('outdoorTemperature', 'seasonalTemperature', { T_w, T_s, d }),
    step('groundTemperature', 'yearlyMean', { T_w, T_s }),
    step('mainsTemperature', 'seasonalTemperature', {
      T_w: [mains.winter, origins.mainsWinter],
      T_s: [mains.summer, origins.mainsSummer],
      d,
    }),
  ];
}

/**
 * Steps of one month, in the order of computing: `<prefix>.heatedShare`, `.unheatedTemperature`, `.roomTemperature`,
 * `.summerShare`, and `.sourceTemperature` where the source is not the tank's room.
 * @param room        the room's climate
 * @param source      the source's climate
 * @param conditions  of the month, as found from the two
 * @param origins     where the numbers of both climates came from
 * @param prefix      path of the month in the caller's result: 'year.january'
 */
export function monthWorking(
  room: RoomClimate,
  source: SourceClimate,
  conditions: MonthConditions,
  origins: ClimateOrigins,
  prefix: string,
): readonly WorkingStep[] {
  const { distance, heatedShare, roomTemperature, sourceTemperature, summerShare } = conditions;
  const own = (name: string) => `${prefix}.${name}`;
  const counted = (count: number): StepInput => [count, origins.coldestMonth];
  const d = counted(distance);
  const s: StepInput = [heatedShare, own('heatedShare')];
  const unheated = seasonalTemperature(room.usual, room.warmest, distance);
  const T_u: StepInput = [room.usual, origins.usual];
  return [
    workingStep(own('heatedShare'), 'surroundings.heatedShare', heatedShare, {
      N: [room.monthsHeated, origins.monthsHeated],
      n_closer: counted(monthsCloser(distance)),
      n_same: counted(monthsAtSameDistance(distance)),
    }),
    workingStep(own('unheatedTemperature'), 'surroundings.seasonalTemperature', unheated, {
      T_w: T_u,
      T_s: [room.warmest, origins.warmest],
      d,
    }),
    workingStep(own('roomTemperature'), 'surroundings.roomMonthTemperature', roomTemperature, {
      s,
      T_u,
      T_free: [unheated, own('unheatedTemperature')],
    }),
    workingStep(own('summerShare'), 'surroundings.summerShare', summerShare, { d, s }),
    ...(source.kind === 'roomAir'
      ? []
      : [
          workingStep(own('sourceTemperature'), 'surroundings.seasonalTemperature', sourceTemperature, {
            T_w: [source.usual, origins.sourceUsual],
            T_s: [source.warmest, origins.sourceWarmest],
            d,
          }),
        ]),
  ];
}
