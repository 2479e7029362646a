// The formula records of gains, water lost, what the room receives, and the sums behind a lid's balance.

import type { Formula, FormulaSymbol, FormulaValues } from '../../quantities/index.ts';
import { evaporationFromHeat } from '../exchange.ts';
import { lightHeat, pumpHeat } from '../gains.ts';
import { freeboardConductance, latentToRoom, sensibleToRoom, waterLost } from '../load.ts';
import { mean, transmittance } from '../stack/films.ts';
import { examplesOf, latentSymbols, pathsFromSymbols, sensibleSymbols, symbolsOf } from './paths.ts';

const file = 'src/tank/load.ts';
const gainsFile = 'src/tank/gains.ts';
const watts = (meaning: string): FormulaSymbol => ({ meaning, unit: 'W', quantity: 'power' });
const electric = (meaning: string): FormulaSymbol => ({ meaning, unit: 'W', quantity: 'electricPower' });
const flow = (meaning: string): FormulaSymbol => ({ meaning, unit: 'kg/s', quantity: 'evaporation' });
const area = (meaning: string): FormulaSymbol => ({ meaning: `area, ${meaning}`, unit: 'm²' });
const coefficient = (meaning: string): FormulaSymbol => ({ meaning: `transmittance, ${meaning}`, unit: 'W/(m² K)' });
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
  {
    id: 'tank.sensibleToRoom',
    title: 'Warmth the room receives from the tank',
    result: { symbol: 'Q_tank', ...watts('sensible heat into the room') },
    expression: sensibleSymbols.join(' + '),
    symbols: symbolsOf(sensibleSymbols),
    source: 'energy balance; what warms make-up water stays in the tank',
    validity: 'steady state',
    file,
    compute: (v) => sensibleToRoom(pathsFromSymbols(v)),
    examples: examplesOf(sensibleSymbols),
  },
  {
    id: 'tank.latentToRoom',
    title: 'Heat that leaves the tank as vapour',
    result: { symbol: 'Q_latent', ...watts('heat that leaves as vapour') },
    expression: latentSymbols.join(' + '),
    symbols: symbolsOf(latentSymbols),
    source: 'energy balance',
    validity: 'warms a room only where the vapour condenses',
    file,
    compute: (v) => latentToRoom(pathsFromSymbols(v)),
    examples: examplesOf(latentSymbols),
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
    id: 'tank.freeboardConductance',
    title: 'Conductance of the panes above the water, under a lid',
    result: { symbol: 'H_dry', meaning: 'area times transmittance of those panes', unit: 'W/K' },
    expression: 'A_front * U_front + A_back * U_back + A_sides * U_sides',
    symbols: {
      A_front: area('front'),
      U_front: coefficient('front'),
      A_back: area('back'),
      U_back: coefficient('back'),
      A_sides: area('both ends'),
      U_sides: coefficient('both ends'),
    },
    source: 'definition',
    validity: 'one inner temperature for all of them',
    file,
    compute: (v) =>
      freeboardConductance({
        front: { area: v.A_front!, transmittance: v.U_front! },
        back: { area: v.A_back!, transmittance: v.U_back! },
        sides: { area: v.A_sides!, transmittance: v.U_sides! },
      }),
    examples: [
      { A_front: 0.045, U_front: 6.1, A_back: 0.045, U_back: 1.9, A_sides: 0.03, U_sides: 6.2 },
      { A_front: 0.024, U_front: 6.6, A_back: 0.024, U_back: 6.6, A_sides: 0.021, U_sides: 0.9 },
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
