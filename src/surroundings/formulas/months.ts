// Formula records of the months: what each monthly number was computed from.

import type { Formula } from '../../quantities/index.ts';
import { roomMonthTemperature, summerShare } from '../climate.ts';
import { heatedShare, monthsAtSameDistance, monthsCloser } from '../months.ts';
import { seasonalTemperature } from '../seasonal.ts';

export const monthFormulas: readonly Formula[] = [
  {
    id: 'surroundings.heatedShare',
    title: 'Share of a month that is heated',
    result: { symbol: 's', meaning: 'share of the month that is heated', unit: '1' },
    expression: 'min(1, max(0, (N - n_closer) / n_same))',
    symbols: {
      N: { meaning: 'months of heating a year', unit: '1' },
      n_closer: { meaning: 'months that lie closer to the coldest month', unit: '1' },
      n_same: { meaning: 'months that lie equally far from the coldest month', unit: '1' },
    },
    source: 'a definition of this project: the months nearest the coldest one are heated',
    validity: '0 to 12 months; whole months from the coldest',
    file: 'src/surroundings/months.ts',
    compute: (v) => heatedShare(distanceWith(v.n_closer!, v.n_same!), v.N!),
    examples: [
      { N: 6.2, n_closer: 5, n_same: 2 },
      { N: 8.5, n_closer: 7, n_same: 2 },
    ],
  },
  {
    id: 'surroundings.seasonalTemperature',
    title: 'Temperature of an unheated place in a month',
    result: { symbol: 'T', meaning: 'temperature in that month', unit: 'K', quantity: 'temperature' },
    expression: 'T_w + (T_s - T_w) * (1 - cos(pi * d / 6)) / 2',
    symbols: {
      T_w: { meaning: 'level in the coldest month', unit: 'K', quantity: 'temperature' },
      T_s: { meaning: 'level at the height of summer', unit: 'K', quantity: 'temperature' },
      d: { meaning: 'months from the coldest month', unit: '1' },
    },
    source:
      'first harmonic of a yearly course, the shape Kusuda & Achenbach (1965) use for ground surfaces; for rooms common practice, no source',
    validity: 'a usual year in a temperate climate; d whole, 0 to 6',
    file: 'src/surroundings/seasonal.ts',
    compute: (v) => seasonalTemperature(v.T_w!, v.T_s!, v.d!),
    examples: [
      { T_w: 285.2, T_s: 297.4, d: 2 },
      { T_w: 291.7, T_s: 298.9, d: 5 },
    ],
  },
  {
    id: 'surroundings.roomMonthTemperature',
    title: "Temperature of the tank's room in a month",
    result: { symbol: 'T', meaning: 'mean room temperature of the month', unit: 'K', quantity: 'temperature' },
    expression: 's * T_u + (1 - s) * T_free',
    symbols: {
      s: { meaning: 'share of the month that is heated', unit: '1' },
      T_u: { meaning: 'usual temperature in the heating season', unit: 'K', quantity: 'temperature' },
      T_free: { meaning: 'temperature without heating', unit: 'K', quantity: 'temperature' },
    },
    source: 'a definition of this project: heated months sit at the usual temperature',
    validity: 's from 0 to 1',
    file: 'src/surroundings/climate.ts',
    compute: (v) => roomMonthTemperature(v.T_u!, v.T_free!, v.s!),
    examples: [
      { s: 0.3, T_u: 293.2, T_free: 296.1 },
      { s: 0.75, T_u: 291.4, T_free: 297.3 },
    ],
  },
  {
    id: 'surroundings.summerShare',
    title: 'Share of a month that is summer',
    result: { symbol: 's_s', meaning: 'share of the month that is summer', unit: '1' },
    expression: 'd >= 5 ? 1 - s : 0',
    symbols: {
      d: { meaning: 'months from the coldest month', unit: '1' },
      s: { meaning: 'share of the month that is heated', unit: '1' },
    },
    source: 'a definition of this project: the three months around the warmest one, as far as they are not heated',
    validity: 'd whole, 0 to 6',
    file: 'src/surroundings/climate.ts',
    compute: (v) => summerShare(v.d!, v.s!),
    examples: [
      { d: 5, s: 0.25 },
      { d: 4, s: 0.25 },
    ],
  },
];

/** The distance whose counts of months are these; the formula speaks of counts, the function of the distance. */
function distanceWith(closer: number, same: number): number {
  for (let distance = 0; distance <= 6; distance += 1) {
    if (monthsCloser(distance) === closer && monthsAtSameDistance(distance) === same) return distance;
  }
  return Number.NaN;
}
