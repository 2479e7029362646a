// Formula records of the exchangers: the same functions the engine runs, in a form that people read and machines evaluate.

import type { Formula, FormulaSymbol, QuantityName } from '../../quantities/index.ts';
import {
  effectivenessCounterFlow,
  effectivenessIsothermal,
  logarithmicMean,
  transferUnitsIsothermal,
} from './effectiveness.ts';
import { moistHeatCapacity } from './evaporator.ts';
import {
  frictionFactorChurchill1977,
  nusseltHorizontalCylinderChurchillChu1975,
  nusseltImmersedCoilXinEbadian1996,
  nusseltTurbulentGnielinski1976,
  rayleighNumber,
  tubeWallResistance,
} from './films.ts';
import { loopWaterFormulas } from './loop-formulas.ts';
import {
  airCapacityFlow,
  airVolumeFlow,
  areaForDuty,
  conductanceFor,
  faceAreaFor,
  filmCoefficient,
  insideFilmResistance,
  tubeCoefficient,
  tubeLength,
  twoFilmCoefficient,
} from './relations.ts';

const filmFile = 'src/parts/exchangers/films.ts';
const effectivenessFile = 'src/parts/exchangers/effectiveness.ts';
const relationFile = 'src/parts/exchangers/relations.ts';

const s = (meaning: string, unit: string, quantity?: QuantityName): FormulaSymbol =>
  quantity === undefined ? { meaning, unit } : { meaning, unit, quantity };
const r = (symbol: string, meaning: string, unit: string, quantity?: QuantityName) => ({
  symbol,
  ...s(meaning, unit, quantity),
});

const Ra = s('Rayleigh number on the outer diameter', '1');
const Pr = s('Prandtl number', '1');
const Re = s('Reynolds number on the inner diameter', '1');
const outer = s('outer diameter of the tube', 'm', 'length');
const inner = s('inner diameter of the tube', 'm', 'length');
const conductivity = s('thermal conductivity', 'W/(m K)');
const density = s('density', 'kg/m³', 'density');
const heatCapacity = s('specific heat at constant pressure', 'J/(kg K)');
const duty = s('heat carried', 'W', 'power');
const overall = s('overall coefficient on the outer area', 'W/(m² K)');
const meanDifference = s('mean temperature difference', 'K', 'temperatureDifference');
const difference = (end: string) => s(`temperature difference at ${end}`, 'K', 'temperatureDifference');
const capacityFlow = s('capacity flow of the air', 'W/K');
const effectiveness = s('effectiveness: share of the largest possible cooling', '1');
const units = s('transfer units, UA over capacity flow', '1');

const filmFormulas: readonly Formula[] = [
  {
    id: 'exchanger.rayleigh',
    title: 'Rayleigh number of tank water at the coil',
    result: r('Ra', Ra.meaning, '1'),
    expression: '9.80665 * abs(beta) * dT * D^3 * rho^2 * c_p / (mu * k)',
    symbols: {
      beta: s('thermal expansion of the water', '1/K'),
      dT: s('surface of the coil against the bulk of the water', 'K', 'temperatureDifference'),
      D: outer,
      rho: density,
      c_p: heatCapacity,
      mu: s('dynamic viscosity', 'Pa s'),
      k: conductivity,
    },
    source: 'definition',
    validity: 'properties at the mean of surface and bulk',
    file: filmFile,
    compute: ({ beta, dT, D, rho, c_p, mu, k }) => rayleighNumber(beta!, dT!, D!, rho!, c_p!, mu!, k!),
    examples: [
      { beta: 2.8e-4, dT: 5, D: 0.0095, rho: 996, c_p: 4180, mu: 8.3e-4, k: 0.61 },
      { beta: -3.1e-5, dT: 3.2, D: 0.0127, rho: 1022, c_p: 4000, mu: 9e-4, k: 0.612 },
    ],
  },
  {
    id: 'exchanger.nusseltCylinder',
    title: 'Free convection at a horizontal tube',
    result: r('Nu', 'Nusselt number on the outer diameter', '1'),
    expression: '(0.60 + 0.387 * Ra^(1/6) / (1 + (0.559/Pr)^(9/16))^(8/27))^2',
    symbols: { Ra, Pr },
    source: 'Churchill & Chu 1975, Int. J. Heat Mass Transfer 18, 1049',
    validity: 'Ra 1e-5 to 1e12; one tube alone',
    file: filmFile,
    compute: (v) => nusseltHorizontalCylinderChurchillChu1975(v.Ra!, v.Pr!),
    examples: [
      { Ra: 8.8e4, Pr: 5.7 },
      { Ra: 4.2e5, Pr: 6.3 },
    ],
  },
  {
    id: 'exchanger.nusseltImmersedCoil',
    title: 'Free convection at an immersed coil with vertical axis (second opinion)',
    result: r('Nu', 'Nusselt number on the outer diameter', '1'),
    expression: '0.290 * Ra^0.293',
    symbols: { Ra },
    source: 'Xin & Ebadian 1996, J. Thermophysics Heat Transfer 10, 297',
    validity: 'Ra 5e3 to 1e5',
    file: filmFile,
    compute: (v) => nusseltImmersedCoilXinEbadian1996(v.Ra!, 'vertical'),
    examples: [{ Ra: 1.4e4 }, { Ra: 8.8e4 }],
  },
  {
    id: 'exchanger.frictionFactor',
    title: 'Darcy friction factor of the smooth loop tube',
    result: r('f', 'Darcy friction factor', '1'),
    expression: '8 * ((8/Re)^12 + ((2.457 * log(1/((7/Re)^0.9)))^16 + (37530/Re)^16)^(-1.5))^(1/12)',
    symbols: { Re },
    source: 'Churchill 1977, Chemical Engineering 84(24), 91',
    validity: 'all Re; the transition is a bridge',
    file: filmFile,
    compute: (v) => frictionFactorChurchill1977(v.Re!, 0),
    examples: [{ Re: 1e4 }, { Re: 1500 }],
  },
  {
    id: 'exchanger.nusseltTube',
    title: 'Turbulent flow of loop water in the tube',
    result: r('Nu', 'Nusselt number on the inner diameter', '1'),
    expression: '(f/8) * (Re - 1000) * Pr / (1 + 12.7 * sqrt(f/8) * (Pr^(2/3) - 1))',
    symbols: { Re, Pr, f: s('Darcy friction factor', '1') },
    source: 'Gnielinski 1976; below Re 4000 a bridge to 3.66 at Re 2300, from memory',
    validity: 'Re 4000 to 5e6 here',
    file: filmFile,
    compute: (v) => nusseltTurbulentGnielinski1976(v.Re!, v.Pr!, v.f!),
    examples: [
      { Re: 1e5, Pr: 1.2, f: 0.0185 },
      { Re: 9e3, Pr: 5.6, f: 0.032 },
    ],
  },
  {
    id: 'exchanger.film',
    title: 'Film coefficient from a Nusselt number',
    result: r('h', 'film coefficient', 'W/(m² K)'),
    expression: 'Nu * k / D',
    symbols: {
      Nu: s('Nusselt number', '1'),
      k: conductivity,
      D: s('diameter the Nusselt number is built on', 'm', 'length'),
    },
    source: 'definition',
    validity: 'any',
    file: relationFile,
    compute: (v) => filmCoefficient(v.Nu!, v.k!, v.D!),
    examples: [
      { Nu: 9.1, k: 0.61, D: 0.0095 },
      { Nu: 72, k: 0.615, D: 0.0083 },
    ],
  },
];

const resistanceFormulas: readonly Formula[] = [
  {
    id: 'exchanger.tubeWall',
    title: 'Resistance of the tube wall, on its outer area',
    result: r('R_w', 'resistance of the wall', 'm² K/W', 'surfaceResistance'),
    expression: 'D_o * log(D_o / D_i) / (2 * k)',
    symbols: { D_o: outer, D_i: inner, k: conductivity },
    source: 'conduction through a cylinder',
    validity: 'D_i below D_o',
    file: filmFile,
    compute: (v) => tubeWallResistance(v.D_o!, v.D_i!, v.k!),
    examples: [
      { D_o: 0.0095, D_i: 0.0083, k: 16.2 },
      { D_o: 0.0127, D_i: 0.0107, k: 0.4 },
    ],
  },
  {
    id: 'exchanger.overallCoefficient',
    title: 'Overall coefficient of the coil in the tank',
    result: r('U', overall.meaning, overall.unit),
    expression: '1 / (1/h_w + R_f + R_w + D_o / (D_i * h_i))',
    symbols: {
      h_w: s('film of the tank water', 'W/(m² K)'),
      R_f: s('fouling on the tank-water side', 'm² K/W', 'surfaceResistance'),
      R_w: s('resistance of the wall', 'm² K/W', 'surfaceResistance'),
      D_o: outer,
      D_i: inner,
      h_i: s('film inside the tube, on inner area', 'W/(m² K)'),
    },
    source: 'resistances in series',
    validity: 'any',
    file: relationFile,
    compute: (v) => tubeCoefficient(v.h_w!, v.R_f!, v.R_w!, insideFilmResistance(v.D_o!, v.D_i!, v.h_i!)),
    examples: [
      { h_w: 579, R_f: 1.5e-4, R_w: 4e-5, D_o: 0.0095, D_i: 0.0083, h_i: 1500 },
      { h_w: 640, R_f: 1e-4, R_w: 2.7e-3, D_o: 0.0127, D_i: 0.0107, h_i: 4200 },
    ],
  },
  {
    id: 'exchanger.loopSideCoefficient',
    title: 'Overall coefficient between refrigerant and loop water',
    result: r('U', 'overall coefficient', 'W/(m² K)'),
    expression: '1 / (1/h_r + R_f + 1/h_l)',
    symbols: {
      h_r: s('film of the condensing refrigerant', 'W/(m² K)'),
      R_f: s('fouling', 'm² K/W', 'surfaceResistance'),
      h_l: s('film of the loop water', 'W/(m² K)'),
    },
    source: 'resistances in series, wall left out; both films assumed',
    validity: 'any',
    file: relationFile,
    compute: (v) => twoFilmCoefficient(v.h_r!, v.R_f!, v.h_l!),
    examples: [
      { h_r: 1500, R_f: 1.5e-4, h_l: 2000 },
      { h_r: 900, R_f: 1e-4, h_l: 3300 },
    ],
  },
  {
    id: 'exchanger.area',
    title: 'Area that duty and mean difference imply',
    result: r('A', 'area', 'm²'),
    expression: 'Q / (U * dT_m)',
    symbols: { Q: duty, U: overall, dT_m: meanDifference },
    source: 'definition of the overall coefficient',
    validity: 'any',
    file: relationFile,
    compute: (v) => areaForDuty(v.Q!, v.U!, v.dT_m!),
    examples: [
      { Q: 410, U: 310, dT_m: 6 },
      { Q: 650, U: 352, dT_m: 5.8 },
    ],
  },
  {
    id: 'exchanger.length',
    title: 'Length of tube that an area implies',
    result: r('L', 'length of tube', 'm', 'length'),
    expression: 'A / (pi * D_o)',
    symbols: { A: s('outer area', 'm²'), D_o: outer },
    source: 'geometry',
    validity: 'any',
    file: relationFile,
    compute: (v) => tubeLength(v.A!, v.D_o!),
    examples: [
      { A: 0.22, D_o: 0.0095 },
      { A: 0.31, D_o: 0.0127 },
    ],
  },
];

const differenceFormulas: readonly Formula[] = [
  {
    id: 'exchanger.logarithmicMean',
    title: 'Logarithmic mean temperature difference',
    result: r('dT_m', meanDifference.meaning, 'K', 'temperatureDifference'),
    expression: '(dT_1 - dT_2) / log(dT_1 / dT_2)',
    symbols: { dT_1: difference('one end'), dT_2: difference('the other end') },
    source: 'textbook definition',
    validity: 'both above 0; equal ends: their common value',
    file: effectivenessFile,
    compute: (v) => logarithmicMean(v.dT_1!, v.dT_2!),
    examples: [
      { dT_1: 10, dT_2: 5 },
      { dT_1: 4.9, dT_2: 6.9 },
    ],
  },
  {
    id: 'exchanger.effectivenessIsothermal',
    title: 'Effectiveness with one side at constant temperature',
    result: r('eps', effectiveness.meaning, '1'),
    expression: '1 - exp(-NTU)',
    symbols: { NTU: units },
    source: 'Kays & London',
    validity: 'one side condensing or evaporating at constant pressure',
    file: effectivenessFile,
    compute: (v) => effectivenessIsothermal(v.NTU!),
    examples: [{ NTU: 1.5 }, { NTU: 0.92 }],
  },
  {
    id: 'exchanger.transferUnits',
    title: 'Transfer units that an effectiveness asks for',
    result: r('NTU', units.meaning, '1'),
    expression: '-log(1 - eps)',
    symbols: { eps: effectiveness },
    source: 'Kays & London, inverse',
    validity: 'effectiveness below 1',
    file: effectivenessFile,
    compute: (v) => transferUnitsIsothermal(v.eps!),
    examples: [{ eps: 0.6 }, { eps: 0.7768698 }],
  },
  {
    id: 'exchanger.effectivenessCounterFlow',
    title: 'Effectiveness in counter flow',
    result: r('eps', effectiveness.meaning, '1'),
    expression: '(1 - exp(-N * (1 - C))) / (1 - C * exp(-N * (1 - C)))',
    symbols: { N: s('transfer units on the smaller capacity flow', '1'), C: s('ratio of the capacity flows', '1') },
    source: 'Kays & London',
    validity: 'C from 0 to below 1; at C = 1 it is N/(1 + N)',
    file: effectivenessFile,
    compute: (v) => effectivenessCounterFlow(v.N!, v.C!),
    examples: [
      { N: 2, C: 0.5 },
      { N: 0.8, C: 0.25 },
    ],
  },
];

const airFormulas: readonly Formula[] = [
  {
    id: 'exchanger.airCapacityFlow',
    title: 'Capacity flow of air that the duty needs',
    result: r('C', capacityFlow.meaning, 'W/K'),
    expression: 'Q / (eps * dT)',
    symbols: {
      Q: duty,
      eps: effectiveness,
      dT: s('air at the inlet minus evaporating temperature', 'K', 'temperatureDifference'),
    },
    source: 'definition of effectiveness, one side isothermal',
    validity: 'dry coil',
    file: relationFile,
    compute: (v) => airCapacityFlow(v.Q!, v.eps!, v.dT!),
    examples: [
      { Q: 260, eps: 0.6, dT: 10 },
      { Q: 430, eps: 0.5, dT: 12 },
    ],
  },
  {
    id: 'exchanger.airVolumeFlow',
    title: 'Volume flow of moist air',
    result: r('V', 'volume flow at the inlet', 'm³/s', 'volumeFlow'),
    expression: 'C / (rho_da * (1006 + 1860 * W))',
    symbols: {
      C: capacityFlow,
      rho_da: s('dry air in a cubic metre of moist air', 'kg/m³', 'density'),
      W: s('humidity ratio', 'kg/kg', 'humidityRatio'),
    },
    source: 'ASHRAE Handbook Fundamentals, moist air: 1006 and 1860 J/(kg K)',
    validity: 'near room temperature',
    file: relationFile,
    compute: (v) => airVolumeFlow(v.C!, v.rho_da!, moistHeatCapacity(v.W!)),
    examples: [
      { C: 43, rho_da: 1.19, W: 0.0072 },
      { C: 71, rho_da: 1.05, W: 0.0041 },
    ],
  },
  {
    id: 'exchanger.faceArea',
    title: 'Face area for a face velocity',
    result: r('A_face', 'face area', 'm²'),
    expression: 'V / w',
    symbols: { V: s('volume flow at the inlet', 'm³/s', 'volumeFlow'), w: s('air speed before the face', 'm/s') },
    source: 'continuity',
    validity: 'any',
    file: relationFile,
    compute: (v) => faceAreaFor(v.V!, v.w!),
    examples: [
      { V: 0.036, w: 1.5 },
      { V: 0.07, w: 1.2 },
    ],
  },
  {
    id: 'exchanger.conductance',
    title: 'Conductance of the evaporator',
    result: r('UA', 'conductance', 'W/K'),
    expression: 'NTU * C',
    symbols: { NTU: units, C: capacityFlow },
    source: 'definition of transfer units',
    validity: 'any',
    file: relationFile,
    compute: (v) => conductanceFor(v.NTU!, v.C!),
    examples: [
      { NTU: 0.92, C: 43 },
      { NTU: 1.4, C: 71 },
    ],
  },
];

export const exchangerFormulas: readonly Formula[] = [
  ...filmFormulas,
  ...resistanceFormulas,
  ...differenceFormulas,
  ...airFormulas,
  ...loopWaterFormulas,
];
