// Formula records of the room's humidity: exchanged air and dehumidifier.

import type { Formula, FormulaSymbol } from '../../quantities/index.ts';
import {
  carriedMoisture,
  dehumidifierHeat,
  dehumidifierPower,
  ventilationAirFlow,
  ventilationHeat,
  waterRemoved,
} from '../room-moisture.ts';

const file = 'src/surroundings/room-moisture.ts';
const m_da: FormulaSymbol = { meaning: 'dry air exchanged with outdoors', unit: 'kg/s', quantity: 'massFlow' };
const m_d: FormulaSymbol = { meaning: 'water taken out of the air', unit: 'kg/s', quantity: 'evaporation' };
const m_v: FormulaSymbol = { meaning: 'moisture carried off by exchanged air', unit: 'kg/s', quantity: 'evaporation' };
const W_o: FormulaSymbol = { meaning: 'humidity ratio outdoors', unit: 'kg/kg', quantity: 'humidityRatio' };
const P_d: FormulaSymbol = { meaning: 'electricity of the dehumidifier', unit: 'W', quantity: 'electricPower' };
const steady = 'steady state; one well-mixed room';

export const moistureFormulas: readonly Formula[] = [
  {
    id: 'surroundings.ventilationAirFlow',
    title: 'Air exchanged with outdoors',
    result: { symbol: 'm_da', ...m_da },
    expression: 'n * V * rho_da',
    symbols: {
      n: { meaning: 'air changes', unit: 'changes/s', quantity: 'airChangeRate' },
      V: { meaning: 'volume of the room', unit: 'm³', quantity: 'volume' },
      rho_da: { meaning: 'dry air per volume in the room', unit: 'kg/m³', quantity: 'density' },
    },
    source: 'definition of the air change',
    validity: steady,
    file,
    compute: (v) => ventilationAirFlow(v.n!, v.V!, v.rho_da!),
    examples: [
      { n: 1.39e-4, V: 50, rho_da: 1.18 },
      { n: 5.6e-5, V: 36, rho_da: 1.07 },
    ],
  },
  {
    id: 'surroundings.carriedMoisture',
    title: 'Moisture that exchanged air carries off',
    result: { symbol: 'm_v', ...m_v },
    expression: 'm_da * (W_r - W_o)',
    symbols: { m_da, W_r: { meaning: 'humidity ratio of the room', unit: 'kg/kg', quantity: 'humidityRatio' }, W_o },
    source: 'mass balance; solved together with the evaporation, which follows the humidity',
    validity: steady,
    file,
    compute: (v) => carriedMoisture(v.m_da!, v.W_r!, v.W_o!),
    examples: [
      { m_da: 8.2e-3, W_r: 0.0082, W_o: 0.0045 },
      { m_da: 2.2e-3, W_r: 0.0071, W_o: 0.0093 },
    ],
  },
  {
    id: 'surroundings.ventilationHeat',
    title: 'Warmth that exchanged air takes out of the room',
    result: { symbol: 'Q_v', meaning: 'heat of ventilation', unit: 'W', quantity: 'power' },
    expression: 'm_da * (1006 + 1860 * W_o) * (T_r - T_o)',
    symbols: {
      m_da,
      W_o,
      T_r: { meaning: 'temperature of the room', unit: 'K', quantity: 'temperature' },
      T_o: { meaning: 'temperature outdoors', unit: 'K', quantity: 'temperature' },
    },
    source: 'energy balance',
    validity: steady,
    file,
    compute: (v) => ventilationHeat(v.m_da!, v.W_o!, v.T_r!, v.T_o!),
    examples: [
      { m_da: 8.2e-3, W_o: 0.0045, T_r: 294.3, T_o: 273.9 },
      { m_da: 2.2e-3, W_o: 0.0093, T_r: 296.1, T_o: 300.4 },
    ],
  },
  {
    id: 'surroundings.waterRemoved',
    title: 'Water that a dehumidifier takes out of the air',
    result: { symbol: 'm_d', ...m_d },
    expression: 'max(0, m_e - m_v)',
    symbols: { m_e: { meaning: 'evaporation of the tank', unit: 'kg/s', quantity: 'evaporation' }, m_v },
    source: 'mass balance at the humidity that is held; air exchanged beside the dehumidifier is left out, m_v = 0',
    validity: steady,
    file,
    compute: (v) => waterRemoved(v.m_e!, v.m_v!),
    examples: [
      { m_e: 5.1e-5, m_v: 3.03e-5 },
      { m_e: 2.7e-5, m_v: -4e-6 },
    ],
  },
  {
    id: 'surroundings.dehumidifierPower',
    title: 'Electricity of a dehumidifier',
    result: { symbol: 'P_d', ...P_d },
    expression: 'm_d * e',
    symbols: { m_d, e: { meaning: 'electricity per water taken out', unit: 'J/kg' } },
    source: 'definition',
    validity: 'the energy per litre holds at the humidity that is set',
    file,
    compute: (v) => dehumidifierPower(v.m_d!, v.e!),
    examples: [
      { m_d: 2.1e-5, e: 1.44e6 },
      { m_d: 3.4e-5, e: 2.1e6 },
    ],
  },
  {
    id: 'surroundings.dehumidifierHeat',
    title: 'Heat that a dehumidifier gives the room',
    result: { symbol: 'Q_d', meaning: 'heat to the room', unit: 'W', quantity: 'power' },
    expression: 'm_d * h_fg + P_d',
    symbols: { m_d, h_fg: { meaning: 'latent heat at the room temperature', unit: 'J/kg' }, P_d },
    source: 'energy balance; the water leaves as warm as the room',
    validity: steady,
    file,
    compute: (v) => dehumidifierHeat(v.m_d!, v.h_fg!, v.P_d!),
    examples: [
      { m_d: 2.1e-5, h_fg: 2.45e6, P_d: 30.2 },
      { m_d: 3.4e-5, h_fg: 2.46e6, P_d: 71.4 },
    ],
  },
];
