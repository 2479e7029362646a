// Formula records of the numbers by which loops of several refrigerants are held beside one another; each computed by the
// very function the engine runs.

import type { Formula, FormulaSymbol } from '../../quantities/index.ts';
import { gaugePressureOf, relativeVolumeDrawn, temperatureLift } from '../compared.ts';

const file = 'src/loop/compared.ts';
const kelvin = (meaning: string): FormulaSymbol => ({ meaning, unit: 'K', quantity: 'temperature' });
const pascal = (meaning: string): FormulaSymbol => ({ meaning, unit: 'Pa', quantity: 'pressure' });
const perVolume = (meaning: string): FormulaSymbol => ({ meaning, unit: 'J/m³' });

export const comparedFormulas: readonly Formula[] = [
  {
    id: 'loop.temperatureLift',
    title: 'Temperature lift',
    result: {
      symbol: 'dT',
      meaning: 'condensing above evaporating temperature',
      unit: 'K',
      quantity: 'temperatureDifference',
    },
    expression: 'T_c - T_e',
    symbols: { T_c: kelvin('condensing dew temperature'), T_e: kelvin('evaporating dew temperature') },
    source: 'definition',
    validity: 'both temperatures above 0 K',
    file,
    compute: ({ T_c, T_e }) => temperatureLift(T_c!, T_e!),
    examples: [
      { T_c: 311, T_e: 268 },
      { T_c: 325.4, T_e: 251.9 },
    ],
  },
  {
    id: 'loop.gaugePressure',
    title: 'Pressure above the air of the place',
    result: { symbol: 'p_g', meaning: 'gauge pressure', unit: 'Pa', quantity: 'gaugePressure' },
    expression: 'p - p_atm',
    symbols: { p: pascal('absolute pressure'), p_atm: pascal('air pressure of the place') },
    source: 'definition',
    validity: 'both pressures absolute, above 0 Pa',
    file,
    compute: ({ p, p_atm }) => gaugePressureOf(p!, p_atm!),
    examples: [
      { p: 285e3, p_atm: 98.4e3 },
      { p: 63e3, p_atm: 101.3e3 },
    ],
  },
  {
    id: 'loop.relativeVolumeDrawn',
    title: 'Volume of gas to be drawn in for the same heat, over that of another refrigerant',
    result: { symbol: 'v', meaning: 'ratio of volumes drawn in', unit: '1' },
    expression: 'q_v0 / q_v',
    symbols: {
      q_v0: perVolume('volumetric heating capacity of the refrigerant held beside'),
      q_v: perVolume('volumetric heating capacity'),
    },
    source: 'definition',
    validity: 'both capacities above 0; equal volumetric efficiency, which differs between refrigerants',
    file,
    compute: (v) => relativeVolumeDrawn(v.q_v0!, v.q_v!),
    examples: [
      { q_v0: 2.05e6, q_v: 1.22e6 },
      { q_v0: 1.31e6, q_v: 3.4e6 },
    ],
  },
];
