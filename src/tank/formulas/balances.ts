// The formula records of gains, water lost, means, transmittance and conductance.

import type { Formula, FormulaSymbol, FormulaValues } from '../../quantities/index.ts';
import { evaporationFromHeat } from '../exchange.ts';
import { lightHeat, pumpHeat, ultravioletHeat } from '../gains.ts';
import { mean, transmittance } from '../stack/films.ts';
import { conductance, waterLost } from '../totals.ts';

const file = 'src/tank/totals.ts';
const gainsFile = 'src/tank/gains.ts';
const watts = (meaning: string): FormulaSymbol => ({ meaning, unit: 'W', quantity: 'power' });
const electric = (meaning: string): FormulaSymbol => ({ meaning, unit: 'W', quantity: 'electricPower' });
const flow = (meaning: string): FormulaSymbol => ({ meaning, unit: 'kg/s', quantity: 'evaporation' });
const resistance = (meaning: string): FormulaSymbol => ({ meaning, unit: 'm² K/W', quantity: 'thermalResistance' });
const share: FormulaSymbol = { meaning: 'share that ends in the water', unit: '1' };

export const balanceFormulas: readonly Formula[] = [
  {
    id: 'tank.pumpHeat',
    title: 'Heat of the pumps that stays in the water',
    result: { symbol: 'Q_pump', ...watts('heat into the water') },
    expression: 'P * phi',
    symbols: { P: electric('electricity of the pumps'), phi: share },
    source: 'energy balance',
    validity: 'on all day',
    file: gainsFile,
    compute: (v) => pumpHeat(v.P!, v.phi!),
    examples: [
      { P: 12, phi: 0.9 },
      { P: 27.5, phi: 0.75 },
    ],
  },
  {
    id: 'tank.ultravioletHeat',
    title: 'Heat of an ultraviolet lamp that stays in the water',
    result: { symbol: 'Q_uv', ...watts('heat into the water') },
    expression: 'P * phi',
    symbols: { P: electric('electricity of the lamp'), phi: share },
    source: 'energy balance; what is absorbed as light ends as heat',
    validity: 'on all day',
    file: gainsFile,
    compute: (v) => ultravioletHeat(v.P!, v.phi!),
    examples: [
      { P: 18, phi: 0.8 },
      { P: 9, phi: 0.95 },
    ],
  },
  {
    id: 'tank.lightHeat',
    title: 'Heat of the lights that stays in the water',
    result: { symbol: 'Q_light', ...watts('heat into the water, mean over the day') },
    expression: 'P * t * phi / 86400',
    symbols: {
      P: electric('electricity of the lights while on'),
      t: { meaning: 'time on per day', unit: 's' },
      phi: share,
    },
    source: 'energy balance',
    validity: 'daily mean',
    file: gainsFile,
    compute: (v) => lightHeat(v.P!, v.t!, v.phi!),
    examples: [
      { P: 60, t: 28800, phi: 0.3 },
      { P: 145, t: 36000, phi: 0.22 },
    ],
  },
  {
    id: 'tank.waterLost',
    title: 'Water lost as vapour',
    result: { symbol: 'm_e', ...flow('evaporation') },
    expression: 'm_s + m_b',
    symbols: { m_s: flow('from the open surface'), m_b: flow('into air blown through the water') },
    source: 'mass balance',
    validity: 'negative where the vapour of the room condenses on the water',
    file,
    compute: (v) => waterLost(v.m_s!, v.m_b!),
    examples: [
      { m_s: 5.1e-5, m_b: 2.6e-6 },
      { m_s: -3.2e-6, m_b: 1.1e-6 },
    ],
  },
  {
    id: 'tank.evaporationFromHeat',
    title: 'Water lost as vapour, from the heat it takes',
    result: { symbol: 'm_e', ...flow('evaporation') },
    expression: 'Q_latent / h_fg',
    symbols: {
      Q_latent: watts('heat that leaves as vapour'),
      h_fg: { meaning: 'latent heat of evaporation', unit: 'J/kg' },
    },
    source: 'definition of the latent heat',
    validity: 'measured tank',
    file: 'src/tank/exchange.ts',
    compute: (v) => evaporationFromHeat(v.Q_latent!, v.h_fg!),
    examples: [
      { Q_latent: 122, h_fg: 2.4394e6 },
      { Q_latent: 41.5, h_fg: 2.4441e6 },
    ],
  },
  meanOf('temperature', 'tank.meanTemperature', { unit: 'K', quantity: 'temperature' }, [
    { x_1: 298.78, x_2: 292.4 },
    { x_1: 286.15, x_2: 301.5 },
  ]),
  meanOf('vapour pressure', 'tank.meanVapourPressure', { unit: 'Pa', quantity: 'pressure' }, [
    { x_1: 3294.6, x_2: 2810.3 },
    { x_1: 2204.8, x_2: 1630.1 },
  ]),
  {
    id: 'tank.transmittance',
    title: 'Transmittance of a face (U-value)',
    result: { symbol: 'U', meaning: 'transmittance', unit: 'W/(m² K)' },
    expression: '1 / (R_inner + R_s)',
    symbols: {
      R_inner: resistance('resistance from the inside to the outer surface'),
      R_s: resistance('outer surface resistance'),
    },
    source: 'ISO 6946:2017',
    validity: 'steady state',
    file: 'src/tank/stack/films.ts',
    compute: (v) => transmittance(v.R_inner!, v.R_s!),
    examples: [
      { R_inner: 0.0153, R_s: 0.131 },
      { R_inner: 0.85, R_s: 0.134 },
    ],
  },
  {
    id: 'tank.conductance',
    title: 'Conductance of a panel',
    result: { symbol: 'H', meaning: 'area times transmittance', unit: 'W/K' },
    expression: 'A * U',
    symbols: {
      A: { meaning: 'area', unit: 'm²' },
      U: { meaning: 'transmittance', unit: 'W/(m² K)' },
    },
    source: 'definition',
    validity: 'steady state',
    file,
    compute: (v) => conductance(v.A!, v.U!),
    examples: [
      { A: 0.045, U: 6.1 },
      { A: 0.75, U: 0.83 },
    ],
  },
];

/** The mean of two values of one quantity. */
function meanOf(
  what: string,
  id: string,
  counted: Pick<FormulaSymbol, 'unit' | 'quantity'>,
  examples: readonly FormulaValues[],
): Formula {
  return {
    id,
    title: `Mean of two values of the ${what}`,
    result: { symbol: 'x_m', meaning: `mean ${what}`, ...counted },
    expression: '(x_1 + x_2) / 2',
    symbols: { x_1: { meaning: 'one of them', ...counted }, x_2: { meaning: 'the other', ...counted } },
    source: 'definition',
    validity: 'any',
    file: 'src/tank/stack/films.ts',
    compute: (v) => mean(v.x_1!, v.x_2!),
    examples,
  };
}
