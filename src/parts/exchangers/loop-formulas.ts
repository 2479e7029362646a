// Formula records of the water at the coil and of the intermediate loop: temperatures, properties of the film, flow in the
// tube, and the differences that drive the heat.

import type { Formula, FormulaSymbol, QuantityName } from '../../quantities/index.ts';
import { nusseltInsideTube } from './films.ts';
import { loopInlet, loopMassFlow, loopOutlet, loopTemperature, reynoldsNumber, tubeVelocity } from './loop-water.ts';
import { finnedAreaFor, innerDiameterOf, surfaceDifference, temperatureDifference } from './relations.ts';
import { filmTemperature, prandtlNumber } from './water-film.ts';

const loopFile = 'src/parts/exchangers/loop-water.ts';
const relationFile = 'src/parts/exchangers/relations.ts';
const waterFile = 'src/parts/exchangers/water-film.ts';

const s = (meaning: string, unit: string, quantity?: QuantityName): FormulaSymbol =>
  quantity === undefined ? { meaning, unit } : { meaning, unit, quantity };
const r = (symbol: string, about: FormulaSymbol) => ({ symbol, ...about });

const kelvin = (meaning: string) => s(meaning, 'K', 'temperature');
const difference = (meaning: string) => s(meaning, 'K', 'temperatureDifference');
const coefficient = (meaning: string) => s(meaning, 'W/(m² K)');
const inner = s('inner diameter of the tube', 'm', 'length');
const density = s('density', 'kg/m³', 'density');
const heatCapacity = s('specific heat at constant pressure', 'J/(kg K)');
const viscosity = s('dynamic viscosity', 'Pa s');
const velocity = s('velocity in the tube', 'm/s');
const massFlow = s('mass flow of loop water', 'kg/s', 'massFlow');
const Re = s('Reynolds number on the inner diameter', '1');
const Pr = s('Prandtl number', '1');
const change = difference('how far the loop water cools on its way through the tank');
const loopMean = kelvin('mean temperature of the loop water');
const delta = difference('surface of the coil against the bulk of the water');

/** Churchill's friction factor and Gnielinski's Nusselt number of a smooth tube at a Reynolds number, written out. */
const friction = (re: string) =>
  `(8 * ((8/${re})^12 + ((2.457 * log(1/((7/${re})^0.9)))^16 + (37530/${re})^16)^(-1.5))^(1/12))`;
const turbulent = (re: string) =>
  `(${friction(re)}/8 * (${re} - 1000) * Pr / (1 + 12.7 * sqrt(${friction(re)}/8) * (Pr^(2/3) - 1)))`;

const waterFormulas: readonly Formula[] = [
  {
    id: 'exchanger.surfaceDifference',
    title: 'Surface of the coil against the bulk of the water',
    result: r('dT', delta),
    expression: 'dT_m * U / h_w',
    symbols: {
      dT_m: difference('mean temperature difference'),
      U: coefficient('overall coefficient on the outer area'),
      h_w: coefficient('film of the tank water'),
    },
    source: 'all of the heat crosses the film of the tank water',
    validity: 'the film depends on this difference: both were found together',
    file: relationFile,
    compute: (v) => surfaceDifference(v.dT_m!, v.U!, v.h_w!),
    examples: [
      { dT_m: 5.9, U: 352, h_w: 579 },
      { dT_m: 8.2, U: 281, h_w: 640 },
    ],
  },
  {
    id: 'exchanger.filmTemperature',
    title: 'Temperature at which the properties of the film are taken',
    result: r('T', kelvin('film temperature')),
    expression: 'T_w + dT / 2',
    symbols: { T_w: kelvin('bulk of the tank water'), dT: delta },
    source: 'convention of the films',
    validity: 'any',
    file: waterFile,
    compute: (v) => filmTemperature(v.T_w!, v.dT!),
    examples: [
      { T_w: 299.15, dT: 4.1 },
      { T_w: 297.2, dT: 2.7 },
    ],
  },
  {
    id: 'exchanger.prandtl',
    title: 'Prandtl number',
    result: r('Pr', Pr),
    expression: 'mu * c_p / k',
    symbols: { mu: viscosity, c_p: heatCapacity, k: s('thermal conductivity', 'W/(m K)') },
    source: 'definition',
    validity: 'any',
    file: waterFile,
    compute: (v) => prandtlNumber(v.mu!, v.c_p!, v.k!),
    examples: [
      { mu: 8.3e-4, c_p: 4180, k: 0.61 },
      { mu: 9.2e-4, c_p: 4002, k: 0.607 },
    ],
  },
  {
    id: 'exchanger.innerDiameter',
    title: 'Inner diameter of the tube',
    result: r('D_i', inner),
    expression: 'D_o - 2 * s',
    symbols: { D_o: s('outer diameter of the tube', 'm', 'length'), s: s('thickness of the wall', 'm', 'length') },
    source: 'geometry',
    validity: 'wall below half of the outer diameter',
    file: relationFile,
    compute: (v) => innerDiameterOf(v.D_o!, v.s!),
    examples: [
      { D_o: 0.0095, s: 0.0007 },
      { D_o: 0.0127, s: 0.001 },
    ],
  },
  {
    id: 'exchanger.temperatureDifference',
    title: 'Difference of two temperatures',
    result: r('dT', difference('temperature difference')),
    expression: 'T_1 - T_2',
    symbols: { T_1: kelvin('the warmer one'), T_2: kelvin('the colder one') },
    source: 'definition',
    validity: 'any',
    file: relationFile,
    compute: (v) => temperatureDifference(v.T_1!, v.T_2!),
    examples: [
      { T_1: 306.15, T_2: 299.15 },
      { T_1: 309.4, T_2: 304.2 },
    ],
  },
  {
    id: 'exchanger.finnedArea',
    title: 'Finned surface that a conductance implies',
    result: r('A', s('whole finned surface', 'm²')),
    expression: 'UA / U',
    symbols: { UA: s('conductance', 'W/K'), U: coefficient('overall coefficient on the finned surface') },
    source: 'definition of the overall coefficient',
    validity: 'dry coil',
    file: relationFile,
    compute: (v) => finnedAreaFor(v.UA!, v.U!),
    examples: [
      { UA: 39.4, U: 30 },
      { UA: 71.2, U: 24 },
    ],
  },
];

const flowFormulas: readonly Formula[] = [
  {
    id: 'exchanger.loopTemperature',
    title: 'Mean temperature of the loop water along the coil',
    result: r('T_m', loopMean),
    expression: 'T_w + share * (T_c - T_w)',
    symbols: {
      T_w: kelvin('tank water'),
      T_c: kelvin('condensing temperature, dew'),
      share: s('part of the approach that stands between loop and tank', '1'),
    },
    source: 'definition of the share; the share itself is assumed',
    validity: 'share between 0 and 1',
    file: loopFile,
    compute: (v) => loopTemperature(v.T_w!, v.T_c!, v.share!),
    examples: [
      { T_w: 299.15, T_c: 309.15, share: 0.6 },
      { T_w: 297.2, T_c: 305.9, share: 0.45 },
    ],
  },
  {
    id: 'exchanger.loopInlet',
    title: 'Loop water where it enters the coil',
    result: r('T_in', kelvin('loop water at the inlet')),
    expression: 'T_m + dT / 2',
    symbols: { T_m: loopMean, dT: change },
    source: 'definition of the mean',
    validity: 'any',
    file: loopFile,
    compute: (v) => loopInlet(v.T_m!, v.dT!),
    examples: [
      { T_m: 305.15, dT: 2 },
      { T_m: 302.3, dT: 3.4 },
    ],
  },
  {
    id: 'exchanger.loopOutlet',
    title: 'Loop water where it leaves the coil',
    result: r('T_out', kelvin('loop water at the outlet')),
    expression: 'T_m - dT / 2',
    symbols: { T_m: loopMean, dT: change },
    source: 'definition of the mean',
    validity: 'any',
    file: loopFile,
    compute: (v) => loopOutlet(v.T_m!, v.dT!),
    examples: [
      { T_m: 305.15, dT: 2 },
      { T_m: 302.3, dT: 3.4 },
    ],
  },
  {
    id: 'exchanger.loopMassFlow',
    title: 'Mass flow of loop water that carries the heat',
    result: r('m', massFlow),
    expression: 'Q / (c_p * dT)',
    symbols: { Q: s('heat carried', 'W', 'power'), c_p: heatCapacity, dT: change },
    source: 'energy balance',
    validity: 'loop without losses',
    file: loopFile,
    compute: (v) => loopMassFlow(v.Q!, v.c_p!, v.dT!),
    examples: [
      { Q: 410, c_p: 4179, dT: 2 },
      { Q: 655, c_p: 4181, dT: 3.4 },
    ],
  },
  {
    id: 'exchanger.tubeVelocity',
    title: 'Velocity of the loop water in one tube',
    result: r('w', velocity),
    expression: 'm / (rho * pi / 4 * D^2)',
    symbols: { m: massFlow, rho: density, D: inner },
    source: 'continuity',
    validity: 'one tube',
    file: loopFile,
    compute: (v) => tubeVelocity(v.m!, v.rho!, v.D!),
    examples: [
      { m: 0.049, rho: 994.9, D: 0.0081 },
      { m: 0.078, rho: 996.1, D: 0.0107 },
    ],
  },
  {
    id: 'exchanger.reynolds',
    title: 'Reynolds number in the tube',
    result: r('Re', Re),
    expression: 'rho * w * D / mu',
    symbols: { rho: density, w: velocity, D: inner, mu: viscosity },
    source: 'definition',
    validity: 'any',
    file: loopFile,
    compute: (v) => reynoldsNumber(v.rho!, v.w!, v.D!, v.mu!),
    examples: [
      { rho: 994.9, w: 0.95, D: 0.0081, mu: 7.7e-4 },
      { rho: 996.1, w: 0.31, D: 0.0107, mu: 8.2e-4 },
    ],
  },
  {
    id: 'exchanger.nusseltInsideTube',
    title: 'Flow of loop water in the tube, laminar, transition or turbulent',
    result: r('Nu', s('Nusselt number on the inner diameter', '1')),
    expression: `Re <= 2300 ? 3.66 : Re >= 4000 ? ${turbulent('Re')} : 3.66 * (1 - (Re - 2300) / 1700) + ${turbulent('4000')} * (Re - 2300) / 1700`,
    symbols: { Re, Pr },
    source:
      'laminar 3.66 at constant wall temperature; Gnielinski 1976 with Churchill 1977; linear bridge after Gnielinski 2013, from memory',
    validity: 'smooth tube, fully developed; in the transition a bridge',
    file: 'src/parts/exchangers/films.ts',
    compute: (v) => nusseltInsideTube(v.Re!, v.Pr!),
    examples: [
      { Re: 1820, Pr: 5.4 },
      { Re: 3170, Pr: 5.1 },
      { Re: 9400, Pr: 5.6 },
    ],
  },
];

export const loopWaterFormulas: readonly Formula[] = [...waterFormulas, ...flowFormulas];
