// Formula records of the numbers by which loops of several refrigerants are held beside one another; each computed by the
// very function the engine runs.

import type { Formula, FormulaSymbol } from '../../quantities/index.ts';
import {
  displacementForHeat,
  gaugePressureOf,
  powerAtDisplacement,
  relativeVolumeDrawn,
  temperatureLift,
} from '../compared.ts';

const file = 'src/loop/compared.ts';
const proportional = 'flow, heat and power of the compressor’s model are in proportion to the displacement';
const sameMachine = 'same states, speed, efficiencies and losses per swept volume';
const swept: FormulaSymbol = {
  meaning: 'displacement of the compressor per revolution',
  unit: 'm³',
  quantity: 'displacement',
};
const needed: FormulaSymbol = {
  meaning: 'displacement needed for the same heat',
  unit: 'm³',
  quantity: 'displacement',
};
const kelvin = (meaning: string): FormulaSymbol => ({ meaning, unit: 'K', quantity: 'temperature' });
const pascal = (meaning: string): FormulaSymbol => ({ meaning, unit: 'Pa', quantity: 'pressure' });
const watt = (meaning: string): FormulaSymbol => ({ meaning, unit: 'W', quantity: 'power' });
const electric = (meaning: string): FormulaSymbol => ({ meaning, unit: 'W', quantity: 'electricPower' });
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
    id: 'loop.displacementForHeat',
    title: 'Displacement needed for the same heat',
    result: { symbol: 'V', ...needed },
    expression: 'V_d * Q_w / Q',
    symbols: { V_d: swept, Q_w: watt('heat wanted'), Q: watt('heat given with the displacement there is') },
    source: proportional,
    validity: sameMachine,
    file,
    compute: ({ V_d, Q_w, Q }) => displacementForHeat(V_d!, Q!, Q_w!),
    examples: [
      { V_d: 6.5e-6, Q_w: 350, Q: 245 },
      { V_d: 11.2e-6, Q_w: 410, Q: 620 },
    ],
  },
  {
    id: 'loop.powerAtDisplacement',
    title: 'Electricity of the compressor with another displacement',
    result: { symbol: 'W_V', ...electric('electric power with the displacement needed') },
    expression: 'W * V / V_d',
    symbols: { W: electric('electric power with the displacement there is'), V: needed, V_d: swept },
    source: proportional,
    validity: sameMachine,
    file,
    compute: ({ W, V, V_d }) => powerAtDisplacement(W!, V_d!, V!),
    examples: [
      { W: 118, V: 9.1e-6, V_d: 6.5e-6 },
      { W: 236, V: 7.4e-6, V_d: 11.2e-6 },
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
