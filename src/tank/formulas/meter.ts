// The formula records of a meter beside a tank's sizes.

import type { Formula, FormulaSymbol } from '../../quantities/index.ts';
import { carriedHeat, heatThatLeft, measuredOverModelled } from '../meter.ts';

const file = 'src/tank/meter.ts';
const watts = (meaning: string): FormulaSymbol => ({ meaning, unit: 'W', quantity: 'power' });
const f = { meaning: 'measured over modelled loss', unit: '1', quantity: 'ratio' } as const;

export const meterFormulas: readonly Formula[] = [
  {
    id: 'tank.heatThatLeft',
    title: 'Heat that left the tank while the meter ran',
    result: { symbol: 'Q_meas', ...watts('measured loss') },
    expression: 'P + Q_gains',
    symbols: {
      P: { meaning: 'mean power of the heater', unit: 'W', quantity: 'electricPower' },
      Q_gains: watts('heat of pumps, lights and ultraviolet lamp that stays in the water'),
    },
    source: 'energy balance',
    validity: 'water as warm at the end of the measurement as at its start',
    file,
    compute: (v) => heatThatLeft(v.P!, v.Q_gains!),
    examples: [
      { P: 226.2, Q_gains: 13 },
      { P: 118, Q_gains: 8.5 },
    ],
  },
  {
    id: 'tank.measuredOverModelled',
    title: 'Measured over modelled loss',
    result: { symbol: 'f', ...f },
    expression: 'Q_meas / Q_model',
    symbols: {
      Q_meas: watts('measured loss'),
      Q_model: watts('loss of the model at the same temperatures'),
    },
    source: 'definition',
    validity: 'both above 0',
    file,
    compute: (v) => measuredOverModelled(v.Q_meas!, v.Q_model!),
    examples: [
      { Q_meas: 239.2, Q_model: 260 },
      { Q_meas: 126.5, Q_model: 98.3 },
    ],
  },
  {
    id: 'tank.carriedHeat',
    title: 'Modelled heat carried by the measurement',
    result: { symbol: 'Q', ...watts('heat out of the tank') },
    expression: 'f * Q_model',
    symbols: { f, Q_model: watts('heat by this path as the model has it') },
    source: 'own simplification, no source',
    validity: 'what the model misses acts in the same proportion on every path',
    file,
    compute: (v) => carriedHeat(v.f!, v.Q_model!),
    examples: [
      { f: 0.92, Q_model: 31 },
      { f: 1.27, Q_model: 84.6 },
    ],
  },
  {
    id: 'tank.carriedVapour',
    title: 'Modelled evaporation carried by the measurement',
    result: { symbol: 'm_e', meaning: 'evaporation', unit: 'kg/s', quantity: 'evaporation' },
    expression: 'f * m_model',
    symbols: { f, m_model: { meaning: 'evaporation as the model has it', unit: 'kg/s', quantity: 'evaporation' } },
    source: 'own simplification, no source',
    validity: 'what the model misses acts in the same proportion on every path',
    file,
    compute: (v) => carriedHeat(v.f!, v.m_model!),
    examples: [
      { f: 0.92, m_model: 4.1e-5 },
      { f: 1.27, m_model: 6.6e-5 },
    ],
  },
];
