// Formula records of the ground around the house.

import type { Formula } from '../../quantities/index.ts';
import { groundTemperature, yearlyMean } from '../ground.ts';

const file = 'src/surroundings/ground.ts';

export const nearbyFormulas: readonly Formula[] = [
  {
    id: 'surroundings.yearlyMean',
    title: 'Temperature of deep ground: the yearly mean of outdoor air',
    result: { symbol: 'T_m', meaning: 'yearly mean', unit: 'K', quantity: 'temperature' },
    expression: '(T_w + T_s) / 2',
    symbols: {
      T_w: { meaning: 'level in the coldest month', unit: 'K', quantity: 'temperature' },
      T_s: { meaning: 'level at the height of summer', unit: 'K', quantity: 'temperature' },
    },
    source: 'mean of the cosine that the months follow',
    validity: 'deep ground under open land; ground under a heated house is warmer',
    file,
    compute: (v) => yearlyMean(v.T_w!, v.T_s!),
    examples: [
      { T_w: 274.1, T_s: 291.7 },
      { T_w: 280.6, T_s: 295.2 },
    ],
  },
  {
    id: 'surroundings.groundTemperature',
    title: 'Temperature of the ground at a depth',
    result: { symbol: 'T', meaning: 'temperature of the ground', unit: 'K', quantity: 'temperature' },
    expression:
      'T_m - A * exp(-z * sqrt(pi / (a * 31536000))) * cos(2 * pi / 31536000 * (t - z / 2 * sqrt(31536000 / (pi * a))))',
    symbols: {
      T_m: { meaning: 'yearly mean at the surface', unit: 'K', quantity: 'temperature' },
      A: {
        meaning: 'how far summer and winter at the surface lie from the mean',
        unit: 'K',
        quantity: 'temperatureDifference',
      },
      z: { meaning: 'depth', unit: 'm', quantity: 'length' },
      a: { meaning: 'thermal diffusivity of the ground', unit: 'm²/s' },
      t: { meaning: 'time since the coldest day at the surface', unit: 's', quantity: 'duration' },
    },
    source: 'Kusuda & Achenbach, ASHRAE Transactions 71(1) (1965) 61; a year of 365 days',
    validity: 'open land without ground water or snow',
    file,
    compute: (v) => groundTemperature(v.T_m!, v.A!, v.z!, v.a!, v.t!),
    examples: [
      { T_m: 283.15, A: 12, z: 2, a: 5.787e-7, t: 14256000 },
      { T_m: 281.4, A: 8.5, z: 1.2, a: 4.1e-7, t: 3024000 },
    ],
  },
];
