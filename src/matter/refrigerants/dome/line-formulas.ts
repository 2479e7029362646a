// Formula records of a blend's bubble and dew line: the published curve of each, the curve solved for the temperature, and
// the glide between them.

import type { Formula, FormulaSymbol, FormulaValues } from '../../../quantities/index.ts';
import { glideOf } from './glide.ts';
import { curveExponent, linePressureOf, lineTemperatureOf } from './saturation-curve.ts';

const T_r: FormulaSymbol = { meaning: 'temperature at which the curve ends', unit: 'K', quantity: 'temperature' };
const p_r: FormulaSymbol = { meaning: 'pressure at which the curve ends', unit: 'Pa', quantity: 'pressure' };
const terms: Readonly<Record<string, FormulaSymbol>> = Object.fromEntries(
  ['first', 'second', 'third', 'fourth'].flatMap((word, k) => [
    [`n${k + 1}`, { meaning: `${word} factor of the curve`, unit: '1' }],
    [`t${k + 1}`, { meaning: `${word} exponent of the curve`, unit: '1' }],
  ]),
);
const published = {
  source: 'E. W. Lemmon (2003), Int. J. Thermophys. 24, 991',
  validity: 'the blend’s own lowest temperature to its critical point',
  file: 'src/matter/refrigerants/dome/saturation-curve.ts',
} as const;

const bubbleTerms = { n1: -7.2818, n2: 2.5093, n3: -3.2695, n4: -2.8022, t1: 1, t2: 1.8, t3: 2.4, t4: 4.9 };
const dewTerms = { n1: -0.086077, n2: -6.6364, n3: -2.4648, n4: -3.4776, t1: 0.4, t2: 0.965, t3: 3.1, t4: 5 };
const r410a = { T_r: 344.494, p_r: 4.9012e6, ...bubbleTerms };
const r407c = { T_r: 359.345, p_r: 4.6317e6, ...dewTerms };

export const lineFormulas: readonly Formula[] = [
  ...lineOf('bubble', 'bubble', r410a),
  ...lineOf('dew', 'dew', r407c),
  {
    id: 'refrigerants.glide',
    title: 'Glide of a blend at one pressure',
    result: { symbol: 'dT', meaning: 'glide', unit: 'K', quantity: 'temperatureDifference' },
    expression: 'T_dew - T_bubble',
    symbols: {
      T_dew: { meaning: 'dew temperature', unit: 'K', quantity: 'temperature' },
      T_bubble: { meaning: 'bubble temperature', unit: 'K', quantity: 'temperature' },
    },
    source: 'definition',
    validity: 'both at one pressure',
    file: 'src/matter/refrigerants/dome/glide.ts',
    compute: (v) => glideOf(v.T_dew!, v.T_bubble!),
    examples: [
      { T_dew: 318.15, T_bubble: 312.9 },
      { T_dew: 263.15, T_bubble: 262.6 },
    ],
  },
];

/** Records of one line: its pressure from the temperature, and its temperature at a pressure. */
function lineOf(line: 'bubble' | 'dew', words: string, example: FormulaValues): readonly Formula[] {
  const pressure: FormulaSymbol = { meaning: `${words} pressure`, unit: 'Pa', quantity: 'pressure' };
  const temperature: FormulaSymbol = { meaning: `${words} temperature`, unit: 'K', quantity: 'temperature' };
  const theta: FormulaSymbol = { meaning: 'distance from the end of the curve, 1 − T/T_r', unit: '1' };
  return [
    {
      id: `refrigerants.${line}Pressure`,
      title: `Pressure on the ${words} line of a blend`,
      result: { symbol: 'p', ...pressure },
      expression:
        'p_r * exp(T_r / T * (n1 * (1 - T / T_r)^t1 + n2 * (1 - T / T_r)^t2 + n3 * (1 - T / T_r)^t3 + n4 * (1 - T / T_r)^t4))',
      symbols: { T: temperature, T_r, p_r, ...terms },
      ...published,
      compute: (v) => linePressureOf(v.p_r!, v.T_r!, v.T!, exponentOf(v, 1 - v.T! / v.T_r!)),
      examples: [
        { T: 273.15, ...example },
        { T: 318.15, ...example },
      ],
    },
    {
      id: `refrigerants.${line}Temperature`,
      title: `Temperature on the ${words} line of a blend`,
      result: { symbol: 'T', ...temperature },
      expression: 'T_r * (n1 * theta^t1 + n2 * theta^t2 + n3 * theta^t3 + n4 * theta^t4) / log(p / p_r)',
      symbols: { theta, p: pressure, T_r, p_r, ...terms },
      ...published,
      validity: `${published.validity}; temperature and distance were found together`,
      compute: (v) => lineTemperatureOf(v.p_r!, v.T_r!, v.p!, exponentOf(v, v.theta!)),
      examples: [
        { theta: 0.2, p: 0.8e6, ...example },
        { theta: 0.1, p: 2.1e6, ...example },
      ],
    },
  ];
}

function exponentOf(v: FormulaValues, distance: number): number {
  return curveExponent([v.n1!, v.n2!, v.n3!, v.n4!], [v.t1!, v.t2!, v.t3!, v.t4!], distance);
}
