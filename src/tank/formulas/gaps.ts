// The formula records of sealed air gaps, layers of water, and layers with joints.

import type { Formula, FormulaSymbol } from '../../quantities/index.ts';
import {
  airLayerConvection,
  airLayerGapResistance,
  airLayerRadiation,
  narrowAirLayerRadiation,
} from '../stack/air-gap.ts';
import type { HeatFlow } from '../stack/films.ts';
import { besideResistance, combinedResistance } from '../stack/joints.ts';
import {
  layerBuoyancy,
  layerRayleigh,
  nusseltFromBelowHollands1984,
  nusseltUprightThess2010,
  waterLayerResistance,
} from '../stack/water-gap.ts';

const annex = 'ISO 6946:2017, Annex D (constants read in a public copy)';
const airFile = 'src/tank/stack/air-gap.ts';
const waterFile = 'src/tank/stack/water-gap.ts';
const jointFile = 'src/tank/stack/joints.ts';
const R: FormulaSymbol = { meaning: 'thermal resistance', unit: 'm² K/W', quantity: 'thermalResistance' };
const d: FormulaSymbol = { meaning: 'thickness of the layer', unit: 'm', quantity: 'length' };
const dT: FormulaSymbol = {
  meaning: 'difference of temperature between its faces',
  unit: 'K',
  quantity: 'temperatureDifference',
};
const T_m: FormulaSymbol = { meaning: 'mean temperature of its faces', unit: 'K', quantity: 'temperature' };
const epsilon1: FormulaSymbol = { meaning: 'emissivity of one face', unit: '1' };
const epsilon2: FormulaSymbol = { meaning: 'emissivity of the other face', unit: '1' };
const h_a: FormulaSymbol = { meaning: 'convective coefficient across the layer', unit: 'W/(m² K)' };
const h_r: FormulaSymbol = { meaning: 'radiative coefficient across the layer', unit: 'W/(m² K)' };
const Ra: FormulaSymbol = { meaning: 'Rayleigh number on the thickness', unit: '1' };
const Pr: FormulaSymbol = { meaning: 'Prandtl number of water', unit: '1' };
const Nu: FormulaSymbol = { meaning: 'Nusselt number: how many times better than standing still', unit: '1' };
const k: FormulaSymbol = { meaning: 'thermal conductivity of water', unit: 'W/(m K)' };

const convections: readonly (readonly [HeatFlow, id: string, title: string, expression: string])[] = [
  ['horizontal', 'Sideways', 'heat flowing sideways', 'max(1.25, 0.73 * cbrt(dT), 0.025 / d)'],
  ['up', 'Up', 'heat flowing up', 'max(1.95, 1.14 * cbrt(dT), 0.025 / d)'],
  ['down', 'Down', 'heat flowing down', 'max(0.12 * d^(-0.44), 0.09 * dT^0.187 * d^(-0.44), 0.025 / d)'],
];

export const gapFormulas: readonly Formula[] = [
  ...convections.map(
    ([flow, id, title, expression]): Formula => ({
      id: `tank.airLayerConvection${id}`,
      title: `Convective coefficient across a sealed air layer, ${title}`,
      result: { symbol: 'h_a', ...h_a },
      expression,
      symbols: { dT, d },
      source: `${annex}; the larger of its terms for up to 5 K and for more, so that no step is left at 5 K (1.3 % at most)`,
      validity: 'sealed, up to 0.3 m thick',
      file: airFile,
      compute: (v) => airLayerConvection(v.d!, flow, v.dT!),
      examples: [
        { d: 0.0125, dT: 2.1 },
        { d: 0.04, dT: 8.3 },
        { d: 0.027, dT: 3.4 },
      ],
    }),
  ),
  {
    id: 'tank.airLayerRadiation',
    title: 'Radiative coefficient across an air layer',
    result: { symbol: 'h_r', ...h_r },
    expression: '4 * 5.670374419e-8 * T_m^3 / (1 / epsilon1 + 1 / epsilon2 - 1)',
    symbols: { T_m, epsilon1, epsilon2 },
    source: annex,
    validity: 'ten times wider than thick, or more',
    file: airFile,
    compute: (v) => airLayerRadiation(v.epsilon1!, v.epsilon2!, v.T_m!),
    examples: [
      { T_m: 290.4, epsilon1: 0.87, epsilon2: 0.9 },
      { T_m: 283.15, epsilon1: 0.05, epsilon2: 0.9 },
    ],
  },
  {
    id: 'tank.narrowAirLayerRadiation',
    title: 'Radiative coefficient across a small or divided air layer',
    result: { symbol: 'h_r', ...h_r },
    expression:
      '4 * 5.670374419e-8 * T_m^3 / (1 / epsilon1 + 1 / epsilon2 - 2 + 2 / (1 + sqrt(1 + (d / b)^2) - d / b))',
    symbols: {
      T_m,
      epsilon1,
      epsilon2,
      d,
      b: { meaning: 'smaller dimension of its face', unit: 'm', quantity: 'length' },
    },
    source: 'ISO 6946:2017, Annex D (form from memory of the source)',
    validity: 'less than ten times wider than thick',
    file: airFile,
    compute: (v) => narrowAirLayerRadiation(v.epsilon1!, v.epsilon2!, v.T_m!, v.d!, v.b!),
    examples: [
      { T_m: 290.4, epsilon1: 0.87, epsilon2: 0.9, d: 0.04, b: 0.05 },
      { T_m: 283.15, epsilon1: 0.05, epsilon2: 0.9, d: 0.025, b: 0.12 },
    ],
  },
  {
    id: 'tank.airLayerResistance',
    title: 'Thermal resistance of a sealed air layer',
    result: { symbol: 'R', ...R },
    expression: '1 / (h_a + h_r)',
    symbols: { h_a, h_r },
    source: annex,
    validity: 'sealed; a gap that is open to the room is room air and counts for nothing',
    file: airFile,
    compute: (v) => airLayerGapResistance(v.h_a!, v.h_r!),
    examples: [
      { h_a: 1.25, h_r: 4.2 },
      { h_a: 1.95, h_r: 0.26 },
    ],
  },
  {
    id: 'tank.waterLayerBuoyancy',
    title: 'Buoyancy of water: Rayleigh number of a layer 1 m thick with 1 K across',
    result: { symbol: 'B', meaning: 'buoyancy', unit: '1/(m³ K)' },
    expression: '9.80665 * beta * rho^2 * c_p / (mu * k)',
    symbols: {
      beta: { meaning: 'thermal expansion', unit: '1/K' },
      rho: { meaning: 'density', unit: 'kg/m³', quantity: 'density' },
      c_p: { meaning: 'specific heat', unit: 'J/(kg K)' },
      mu: { meaning: 'dynamic viscosity', unit: 'Pa s' },
      k,
    },
    source: 'definition of the Rayleigh number',
    validity: 'fresh water at the temperature inside; salt matters by less than 1 % of the resistance',
    file: waterFile,
    compute: (v) => layerBuoyancy(v.beta!, v.rho!, v.c_p!, v.mu!, v.k!),
    examples: [
      { beta: 2.68e-4, rho: 996.8, c_p: 4181, mu: 8.7e-4, k: 0.609 },
      { beta: 1.5e-4, rho: 999.1, c_p: 4188, mu: 1.14e-3, k: 0.59 },
    ],
  },
  {
    id: 'tank.waterLayerRayleigh',
    title: 'Rayleigh number of a layer of water',
    result: { symbol: 'Ra', ...Ra },
    expression: 'B * dT * d^3',
    symbols: { B: { meaning: 'buoyancy', unit: '1/(m³ K)' }, dT, d },
    source: 'definition',
    validity: 'water warmer than 4 °C',
    file: waterFile,
    compute: (v) => layerRayleigh(v.B!, v.dT!, v.d!),
    examples: [
      { B: 2.05e10, dT: 0.31, d: 0.03 },
      { B: 1.1e10, dT: 0.12, d: 0.012 },
    ],
  },
  {
    id: 'tank.waterLayerNusselt',
    title: 'Nusselt number of an upright layer of water',
    result: { symbol: 'Nu', ...Nu },
    expression: 'max(1, 0.42 * Pr^0.012 * (Ra / s)^0.25, 0.049 * Ra^0.33)',
    symbols: { Ra, Pr, s: { meaning: 'height over thickness', unit: '1' } },
    source: 'A. Thess in VDI Heat Atlas, 2nd edition 2010, as given in an open heat-transfer library',
    validity: 'Rayleigh number 1e4 to 1e9, height up to 80 thicknesses; conduction below',
    file: waterFile,
    compute: (v) => nusseltUprightThess2010(v.Ra!, v.Pr!, v.s!),
    examples: [
      { Ra: 1.66e5, Pr: 5.9, s: 18 },
      { Ra: 3.3e7, Pr: 6.4, s: 5.5 },
    ],
  },
  {
    id: 'tank.waterLayerNusseltFromBelow',
    title: 'Nusselt number of a lying layer of water, heated from below',
    result: { symbol: 'Nu', ...Nu },
    expression:
      '1 + (1 - 1708 / Ra) * (1.44 / (1 + 0.018 / Pr + 0.00136 / Pr^2) + 2 * (cbrt(Ra) / (75 * exp(1.5 / sqrt(Pr))))^(1 - log(cbrt(Ra) / (75 * exp(1.5 / sqrt(Pr)))))) + max(0, cbrt(Ra / 5830) - 1)',
    symbols: { Ra, Pr },
    source: 'Hollands, Int. J. Heat Mass Transfer 27 (1984) 466, as given in an open heat-transfer library',
    validity: 'Rayleigh number above 1708; below it and when heated from above the layer stands still and Nu is 1',
    file: waterFile,
    compute: (v) => nusseltFromBelowHollands1984(v.Ra!, v.Pr!),
    examples: [
      { Ra: 4.1e4, Pr: 5.9 },
      { Ra: 2.6e6, Pr: 6.4 },
    ],
  },
  {
    id: 'tank.waterLayerResistance',
    title: 'Thermal resistance of a layer of water',
    result: { symbol: 'R', ...R },
    expression: 'd / (Nu * k)',
    symbols: { d, Nu, k },
    source: 'definition of the Nusselt number',
    validity: 'closed at its edges; flow through holes carries more heat',
    file: waterFile,
    compute: (v) => waterLayerResistance(v.d!, v.k!, v.Nu!),
    examples: [
      { d: 0.03, Nu: 3.61, k: 0.609 },
      { d: 0.012, Nu: 1, k: 0.601 },
    ],
  },
  {
    id: 'tank.besideResistance',
    title: 'Layer with a joint, lower limit',
    result: { symbol: 'R', ...R },
    expression: '1 / ((1 - f) / R_main + f / R_joint)',
    symbols: {
      f: { meaning: 'share of the area that the joint has', unit: '1', quantity: 'fraction' },
      R_main: { meaning: 'layer away from the joint', unit: 'm² K/W', quantity: 'thermalResistance' },
      R_joint: { meaning: 'the same thickness of the joint', unit: 'm² K/W', quantity: 'thermalResistance' },
    },
    source: 'ISO 6946:2017, clause 6.7.2 (number from memory)',
    validity: 'no metal joints',
    file: jointFile,
    compute: (v) => besideResistance(v.R_main!, v.R_joint!, v.f!),
    examples: [
      { f: 0.1, R_main: 1.724, R_joint: 0.385 },
      { f: 0.04, R_main: 0.9, R_joint: 0.17 },
    ],
  },
  {
    id: 'tank.combinedResistance',
    title: 'Stack of layers with joints',
    result: { symbol: 'R_T', ...R },
    expression: '(R_upper + R_lower) / 2',
    symbols: {
      R_upper: {
        meaning: 'upper limit: sections side by side without heat between them',
        unit: 'm² K/W',
        quantity: 'thermalResistance',
      },
      R_lower: {
        meaning: 'lower limit: every face at one temperature',
        unit: 'm² K/W',
        quantity: 'thermalResistance',
      },
    },
    source: 'ISO 6946:2017, clause 6.7.2 (number from memory)',
    validity: 'no metal joints; upper limit at most 1.5 times the lower',
    file: jointFile,
    compute: (v) => combinedResistance(v.R_upper!, v.R_lower!),
    examples: [
      { R_upper: 1.6428, R_lower: 1.5388 },
      { R_upper: 0.92, R_lower: 0.81 },
    ],
  },
];
