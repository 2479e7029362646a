// The formula records of geometry, sums, the net load and a measured tank.

import type { Formula, FormulaSymbol, FormulaValues } from '../../quantities/index.ts';
import { meanOverDay } from '../built/night.ts';
import { circleArea, faceArea, headspaceGap, waterVolume } from '../geometry/measures.ts';
import { difference, meanPower, scaledHeat, shareOfLoss } from '../measured.ts';
import { coolingTime, heatCapacity, netLoad } from '../totals.ts';

const geometryFile = 'src/tank/geometry/measures.ts';
const file = 'src/tank/totals.ts';
const measuredFile = 'src/tank/measured.ts';
/** What a number is counted in, and of what. */
type Counted = Pick<FormulaSymbol, 'unit' | 'quantity'>;

const warmth: Counted = { unit: 'K', quantity: 'temperature' };
const warmthDifference: Counted = { unit: 'K', quantity: 'temperatureDifference' };
const vapour: Counted = { unit: 'Pa', quantity: 'pressure' };
const vapourDifference: Counted = { unit: 'Pa', quantity: 'pressureDifference' };
const watts = (meaning: string): FormulaSymbol => ({ meaning, unit: 'W', quantity: 'power' });

export const totalFormulas: readonly Formula[] = [
  {
    id: 'tank.faceArea',
    title: 'Area of a face, of two like ones, or of a share of one',
    result: { symbol: 'A', meaning: 'area', unit: 'm²' },
    expression: 'n * b * h',
    symbols: {
      n: { meaning: 'number of faces, or share of one', unit: '1' },
      b: { meaning: 'breadth', unit: 'm', quantity: 'length' },
      h: { meaning: 'height, or the other breadth', unit: 'm', quantity: 'length' },
    },
    source: 'geometry',
    validity: 'inner dimensions, flat corners',
    file: geometryFile,
    compute: (v) => faceArea(v.n!, v.b!, v.h!),
    examples: [
      { n: 2, b: 0.5, h: 0.57 },
      { n: 0.85, b: 1.5, h: 0.5 },
    ],
  },
  {
    id: 'tank.headspaceGap',
    title: 'Height of the air between water and rim',
    result: { symbol: 'd', meaning: 'height of the trapped air', unit: 'm', quantity: 'length' },
    expression: 'H - D',
    symbols: {
      H: { meaning: 'inner height', unit: 'm', quantity: 'length' },
      D: { meaning: 'depth of the water', unit: 'm', quantity: 'length' },
    },
    source: 'geometry',
    validity: 'lid at the rim',
    file: geometryFile,
    compute: (v) => headspaceGap(v.H!, v.D!),
    examples: [
      { H: 0.6, D: 0.57 },
      { H: 0.45, D: 0.4 },
    ],
  },
  {
    id: 'tank.circleArea',
    title: 'Area of a round bottom or water surface',
    result: { symbol: 'A', meaning: 'area', unit: 'm²' },
    expression: 'pi * D^2 / 4',
    symbols: { D: { meaning: 'inner diameter', unit: 'm', quantity: 'length' } },
    source: 'geometry',
    validity: 'any',
    file: geometryFile,
    compute: (v) => circleArea(v.D!),
    examples: [{ D: 0.8 }, { D: 1.15 }],
  },
  {
    id: 'tank.waterVolume',
    title: 'Water above a bottom',
    result: { symbol: 'V', meaning: 'volume', unit: 'm³', quantity: 'volume' },
    expression: 'A * D',
    symbols: {
      A: { meaning: 'area of the bottom', unit: 'm²' },
      D: { meaning: 'depth of the water', unit: 'm', quantity: 'length' },
    },
    source: 'geometry',
    validity: 'upright walls; gravel and rock not taken off',
    file: geometryFile,
    compute: (v) => waterVolume(v.A!, v.D!),
    examples: [
      { A: 0.75, D: 0.57 },
      { A: 0.28, D: 0.36 },
    ],
  },
  {
    id: 'tank.meanOverDay',
    title: 'Mean over day and night of a path under two covers',
    result: { symbol: 'Q', ...watts('mean heat') },
    expression: '(1 - s) * Q_day + s * Q_night',
    symbols: {
      s: { meaning: 'share of the day that counts as night', unit: '1', quantity: 'fraction' },
      Q_day: watts('heat by day'),
      Q_night: watts('heat by night'),
    },
    source: 'definition of a mean',
    validity: 'water equally warm by day and night',
    file: 'src/tank/built/night.ts',
    compute: (v) => meanOverDay(v.Q_day!, v.Q_night!, v.s!),
    examples: [
      { s: 0.4, Q_day: 120, Q_night: 40 },
      { s: 0.25, Q_day: -8, Q_night: 3 },
    ],
  },
  {
    id: 'tank.heatCapacity',
    title: 'Heat capacity of the water',
    result: { symbol: 'C', meaning: 'heat capacity', unit: 'J/K' },
    expression: 'V * rho * c_p',
    symbols: {
      V: { meaning: 'volume', unit: 'm³', quantity: 'volume' },
      rho: { meaning: 'density', unit: 'kg/m³', quantity: 'density' },
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
    id: 'tank.coolingTime',
    title: 'Time in which the water cools by a small difference, without heat',
    result: { symbol: 't', meaning: 'time', unit: 's' },
    expression: 'C * dT / Q_load',
    symbols: {
      C: { meaning: 'heat capacity of the water', unit: 'J/K' },
      dT: { meaning: 'how far the water cools', ...warmthDifference },
      Q_load: watts('heating needed'),
    },
    source: 'definition of heat capacity',
    validity: 'a difference small against that to the room; load above 0',
    file,
    compute: (v) => coolingTime(v.C!, v.dT!, v.Q_load!),
    examples: [
      { C: 8.34e5, dT: 1, Q_load: 120 },
      { C: 1.79e6, dT: 0.5, Q_load: 335 },
    ],
  },
  {
    id: 'tank.load',
    title: 'Net heating needed',
    result: { symbol: 'Q_load', meaning: 'heating needed', unit: 'W', quantity: 'power' },
    expression: 'Q_loss - Q_pump - Q_light - Q_ultraviolet',
    symbols: {
      Q_loss: watts('whole loss'),
      Q_pump: watts('heat of the pumps that stays in the water'),
      Q_light: watts('heat of the lights that stays in the water'),
      Q_ultraviolet: watts('heat of the ultraviolet lamp that stays in the water'),
    },
    source: 'energy balance',
    validity: 'steady state, daily mean',
    file,
    compute: (v) => netLoad(v.Q_loss!, v.Q_pump!, v.Q_light!, v.Q_ultraviolet!),
    examples: [
      { Q_loss: 334.2, Q_pump: 9, Q_light: 4.5, Q_ultraviolet: 6 },
      { Q_loss: -20.4, Q_pump: 12, Q_light: 3.2, Q_ultraviolet: 0 },
    ],
  },
  {
    id: 'tank.meanPower',
    title: 'Mean power of the heater while it was measured',
    result: { symbol: 'P', meaning: 'mean power', unit: 'W', quantity: 'electricPower' },
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
    result: { symbol: 'Q_then', meaning: 'this share of the loss', unit: 'W', quantity: 'power' },
    expression: 's * (P + Q_pump + Q_light)',
    symbols: {
      s: { meaning: 'share that leaves as vapour, or one minus it', unit: '1' },
      P: { meaning: 'mean power of the heater', unit: 'W', quantity: 'electricPower' },
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
  differenceOf('temperature', 'tank.temperatureDifference', warmth, warmthDifference, [
    { inside: 299.15, outside: 292.4 },
    { inside: 297.65, outside: 289.15 },
  ]),
  differenceOf('vapour pressure', 'tank.vapourPressureDifference', vapour, vapourDifference, [
    { inside: 3294.6, outside: 1098.1 },
    { inside: 3052.4, outside: 1411.9 },
  ]),
  scaledWith('temperature difference', 'tank.scaledDryHeat', warmthDifference, [
    { Q_then: 147, difference: 9.2, difference_then: 7 },
    { Q_then: 96.5, difference: 5.4, difference_then: 8 },
  ]),
  scaledWith('vapour pressure difference', 'tank.scaledVapourHeat', vapourDifference, [
    { Q_then: 79.2, difference: 2240, difference_then: 2080 },
    { Q_then: 41.7, difference: 1690, difference_then: 1935 },
  ]),
];

/** What the water has more of than the room. */
function differenceOf(
  what: string,
  id: string,
  level: Counted,
  counted: Counted,
  examples: readonly FormulaValues[],
): Formula {
  return {
    id,
    title: `Difference of ${what} between the water and the room`,
    result: { symbol: 'difference', meaning: `difference of ${what}`, ...counted },
    expression: 'inside - outside',
    symbols: { inside: { meaning: 'of the water', ...level }, outside: { meaning: 'of the room', ...level } },
    source: 'definition',
    validity: 'any',
    file: measuredFile,
    compute: (v) => difference(v.inside!, v.outside!),
    examples,
  };
}

/** A measured share of the loss in proportion to what drives it. */
function scaledWith(what: string, id: string, counted: Counted, examples: readonly FormulaValues[]): Formula {
  return {
    id,
    title: `Measured loss carried to another ${what}`,
    result: { symbol: 'Q', ...watts('heat out of the tank') },
    expression: 'Q_then * difference / difference_then',
    symbols: {
      Q_then: watts('this share of the loss while it was measured'),
      difference: { meaning: what, ...counted },
      difference_then: { meaning: 'the same while it was measured', ...counted },
    },
    source: 'own simplification, no source',
    validity: 'differences of like size',
    file: measuredFile,
    compute: (v) => scaledHeat(v.Q_then!, v.difference!, v.difference_then!),
    examples,
  };
}
