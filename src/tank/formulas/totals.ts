// The formula records of geometry, sums, the net load and a measured tank.

import type { Formula, FormulaSymbol } from '../../quantities/index.ts';
import { type HeatPath, heatCapacity, netLoad, type PathName, sumOfPaths, waterVolume } from '../load.ts';
import { meanPower, scaledHeat, shareOfLoss } from '../measured.ts';

const file = 'src/tank/load.ts';
const measuredFile = 'src/tank/measured.ts';
const watts = (meaning: string): FormulaSymbol => ({ meaning, unit: 'W' });

/** Symbol of each path in the sum, with its words; absent paths are 0. */
export const pathSymbols: Readonly<Record<PathName, readonly [string, string]>> = {
  evaporation: ['Q_evaporation', 'evaporation of the open surface'],
  surfaceConvection: ['Q_convection', 'convection from the open surface'],
  surfaceRadiation: ['Q_radiation', 'radiation from the open surface'],
  lid: ['Q_lid', 'through the lid'],
  freeboard: ['Q_freeboard', 'through the panes above the water, under a lid'],
  front: ['Q_front', 'front pane'],
  back: ['Q_back', 'back pane'],
  sides: ['Q_sides', 'both ends'],
  bottom: ['Q_bottom', 'bottom'],
  airStonesVapour: ['Q_bubbleVapour', 'evaporation into air blown through the water'],
  airStones: ['Q_bubbles', 'warming of air blown through the water'],
  makeUpWater: ['Q_makeUp', 'warming of the make-up water'],
  wallsAndSurface: ['Q_dry', 'all dry paths of a measured tank'],
};

const symbolPairs = Object.values(pathSymbols);

export const totalFormulas: readonly Formula[] = [
  {
    id: 'tank.waterVolume',
    title: 'Water in a rectangular tank',
    result: { symbol: 'V', meaning: 'volume', unit: 'm³' },
    expression: 'L * B * D',
    symbols: {
      L: { meaning: 'inner length', unit: 'm' },
      B: { meaning: 'inner width', unit: 'm' },
      D: { meaning: 'depth of the water', unit: 'm' },
    },
    source: 'geometry',
    validity: 'gravel and rock not taken off',
    file,
    compute: (v) => waterVolume(v.L!, v.B!, v.D!),
    examples: [
      { L: 1.5, B: 0.5, D: 0.57 },
      { L: 0.8, B: 0.35, D: 0.36 },
    ],
  },
  {
    id: 'tank.heatCapacity',
    title: 'Heat capacity of the water',
    result: { symbol: 'C', meaning: 'heat capacity', unit: 'J/K' },
    expression: 'V * rho * c_p',
    symbols: {
      V: { meaning: 'volume', unit: 'm³' },
      rho: { meaning: 'density', unit: 'kg/m³' },
      c_p: { meaning: 'specific heat', unit: 'J/(kg K)' },
    },
    source: 'definition',
    validity: 'water alone',
    file,
    compute: (v) => heatCapacity(v.V!, v.rho!, v.c_p!),
    examples: [
      { V: 0.4275, rho: 996.8, c_p: 4186 },
      { V: 0.1, rho: 1023.5, c_p: 4001 },
    ],
  },
  {
    id: 'tank.loss',
    title: 'Heat leaving the water by all paths',
    result: { symbol: 'Q_loss', meaning: 'whole loss', unit: 'W' },
    expression: symbolPairs.map(([symbol]) => symbol).join(' + '),
    symbols: Object.fromEntries(symbolPairs.map(([symbol, meaning]) => [symbol, watts(meaning)])),
    source: 'energy balance',
    validity: 'steady state',
    file,
    compute: (v) => sumOfPaths(pathsFromSymbols(v)),
    examples: [exampleOfPaths(3.1), exampleOfPaths(-1.7)],
  },
  {
    id: 'tank.load',
    title: 'Net heating needed',
    result: { symbol: 'Q_load', meaning: 'heating needed', unit: 'W' },
    expression: 'Q_loss - Q_pump - Q_light',
    symbols: {
      Q_loss: watts('whole loss'),
      Q_pump: watts('heat of the pumps that stays in the water'),
      Q_light: watts('heat of the lights that stays in the water'),
    },
    source: 'energy balance',
    validity: 'steady state, daily mean',
    file,
    compute: (v) => netLoad(v.Q_loss!, v.Q_pump!, v.Q_light!),
    examples: [
      { Q_loss: 334.2, Q_pump: 9, Q_light: 4.5 },
      { Q_loss: -20.4, Q_pump: 12, Q_light: 3.2 },
    ],
  },
  {
    id: 'tank.meanPower',
    title: 'Mean power of the heater while it was measured',
    result: { symbol: 'P', meaning: 'mean power', unit: 'W' },
    expression: 'E / t',
    symbols: { E: { meaning: 'energy used', unit: 'J' }, t: { meaning: 'duration', unit: 's' } },
    source: 'definition',
    validity: 'an immersed heater turns all its electricity into heat of the water',
    file: measuredFile,
    compute: (v) => meanPower(v.E!, v.t!),
    examples: [
      { E: 1.368e8, t: 604800 },
      { E: 2.1e7, t: 86400 },
    ],
  },
  {
    id: 'tank.measuredShare',
    title: 'Share of the loss while it was measured',
    result: { symbol: 'Q_then', meaning: 'this share of the loss', unit: 'W' },
    expression: 's * (P + Q_pump + Q_light)',
    symbols: {
      s: { meaning: 'share that leaves as vapour, or one minus it', unit: '1' },
      P: watts('mean power of the heater'),
      Q_pump: watts('heat of the pumps that stays in the water'),
      Q_light: watts('heat of the lights that stays in the water'),
    },
    source: 'energy balance',
    validity: 'water temperature the same at the start and the end of the measurement',
    file: measuredFile,
    compute: (v) => shareOfLoss(v.s!, v.P!, v.Q_pump!, v.Q_light!),
    examples: [
      { s: 0.35, P: 226.2, Q_pump: 9, Q_light: 4 },
      { s: 0.6, P: 118, Q_pump: 6, Q_light: 2.5 },
    ],
  },
  {
    id: 'tank.scaledHeat',
    title: 'Measured loss carried to other conditions',
    result: { symbol: 'Q', meaning: 'heat out of the tank', unit: 'W' },
    expression: 'Q_then * difference / difference_then',
    symbols: {
      Q_then: watts('this share of the loss while it was measured'),
      difference: { meaning: 'temperature difference (dry) or vapour pressure difference (vapour)', unit: 'K or Pa' },
      difference_then: { meaning: 'the same while it was measured', unit: 'K or Pa' },
    },
    source: 'own simplification, no source',
    validity: 'differences of like size',
    file: measuredFile,
    compute: (v) => scaledHeat(v.Q_then!, v.difference!, v.difference_then!),
    examples: [
      { Q_then: 147, difference: 9.2, difference_then: 7 },
      { Q_then: 79.2, difference: 2240, difference_then: 2080 },
    ],
  },
];

function pathsFromSymbols(values: Readonly<Record<string, number>>): HeatPath[] {
  return Object.entries(pathSymbols).map(([path, [symbol]]) => ({
    path: path as PathName,
    heat: values[symbol]!,
    kind: 'sensible',
  }));
}

function exampleOfPaths(step: number): Record<string, number> {
  return Object.fromEntries(symbolPairs.map(([symbol], index) => [symbol, 5.3 + step * (index + 1)]));
}
