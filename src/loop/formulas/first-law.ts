// Formula records of the loop's first law: work and heats per kilogram and per second, ratios, approaches; each computed
// by the very function the engine runs, in a form that people read and machines evaluate.

import type { Formula, FormulaSymbol } from '../../quantities/index.ts';
import {
  carnotHeatingCop,
  coefficientOfPerformance,
  energyAccountResidual,
  enthalpyDifference,
  isentropicEfficiency,
  meanTemperatureLorenz,
  outletEnthalpyFromEfficiency,
  pressureRatio,
  streamPower,
  volumetricHeatingCapacity,
} from '../energy.ts';
import {
  condensingTemperature,
  evaporatingTemperature,
  limitedPressure,
  liquidTemperature,
  suctionTemperature,
} from '../operating-point.ts';

const energyFile = 'src/loop/energy.ts';
const operatingFile = 'src/loop/operating-point.ts';
const cengelChapter11 = 'Çengel & Boles, Thermodynamics, 8th ed., chapter 11 (from memory of the source)';
const steadyFlow =
  'steady-flow energy equation, as in Çengel & Boles, Thermodynamics, 8th ed., chapter 5 (from memory)';

const enthalpy = (meaning: string): FormulaSymbol => ({ meaning, unit: 'J/kg' });
const kelvin = (meaning: string): FormulaSymbol => ({ meaning, unit: 'K', quantity: 'temperature' });
const difference = (meaning: string): FormulaSymbol => ({ meaning, unit: 'K', quantity: 'temperatureDifference' });
const watt = (meaning: string): FormulaSymbol => ({ meaning, unit: 'W', quantity: 'power' });
const pascal = (meaning: string): FormulaSymbol => ({ meaning, unit: 'Pa', quantity: 'pressure' });
const flow: FormulaSymbol = { meaning: 'mass flow of refrigerant', unit: 'kg/s', quantity: 'massFlow' };
const compressorPower: FormulaSymbol = {
  meaning: 'electricity into the compressor',
  unit: 'W',
  quantity: 'electricPower',
};
const inletEnthalpy = enthalpy('enthalpy at the compressor inlet');
const isentropicEnthalpy = enthalpy('enthalpy at the outlet of a compressor without losses');
const outletEnthalpy = enthalpy('enthalpy at the compressor outlet');
const liquidEnthalpy = enthalpy('enthalpy at the condenser outlet');
const expandedEnthalpy = enthalpy('enthalpy at the evaporator inlet');
const steady = 'steady flow; kinetic and potential energy neglected';

const firstLawPerMass: readonly Formula[] = [
  {
    id: 'loop.specificWork',
    title: 'Work on the gas per kilogram, adiabatic compressor',
    result: { symbol: 'w', ...enthalpy('specific work') },
    expression: 'h_2 - h_1',
    symbols: { h_2: outletEnthalpy, h_1: inletEnthalpy },
    source: cengelChapter11,
    validity: `${steady}; no heat through the compressor's shell`,
    file: energyFile,
    compute: ({ h_1, h_2 }) => enthalpyDifference(h_2!, h_1!),
    examples: [
      { h_1: 391e3, h_2: 442e3 },
      { h_1: 552e3, h_2: 631.5e3 },
    ],
  },
  {
    id: 'loop.heatDeliveredPerMass',
    title: 'Heat out of the refrigerant in the condenser per kilogram',
    result: { symbol: 'q_H', ...enthalpy('heat delivered per kilogram') },
    expression: 'h_2 - h_3',
    symbols: { h_2: outletEnthalpy, h_3: liquidEnthalpy },
    source: cengelChapter11,
    validity: steady,
    file: energyFile,
    compute: ({ h_2, h_3 }) => enthalpyDifference(h_2!, h_3!),
    examples: [
      { h_2: 442e3, h_3: 256e3 },
      { h_2: 631.5e3, h_3: 307e3 },
    ],
  },
  {
    id: 'loop.heatTakenPerMass',
    title: 'Heat into the refrigerant in the evaporator per kilogram',
    result: { symbol: 'q_L', ...enthalpy('heat taken per kilogram') },
    expression: 'h_1 - h_4',
    symbols: { h_1: inletEnthalpy, h_4: expandedEnthalpy },
    source: cengelChapter11,
    validity: `${steady}; all superheat gained in the evaporator`,
    file: energyFile,
    compute: ({ h_1, h_4 }) => enthalpyDifference(h_1!, h_4!),
    examples: [
      { h_1: 391e3, h_4: 256e3 },
      { h_1: 552e3, h_4: 307e3 },
    ],
  },
  {
    id: 'loop.outletEnthalpy',
    title: 'Enthalpy at the outlet of an adiabatic compressor',
    result: { symbol: 'h_2', ...outletEnthalpy },
    expression: 'h_1 + (h_2s - h_1) / eta_s',
    symbols: { h_1: inletEnthalpy, h_2s: isentropicEnthalpy, eta_s: { meaning: 'isentropic efficiency', unit: '1' } },
    source: 'Çengel & Boles, Thermodynamics, 8th ed., equation 7-61 (from memory of the source)',
    validity: `${steady}; efficiency above 0, at most 1`,
    file: energyFile,
    compute: ({ h_1, h_2s, eta_s }) => outletEnthalpyFromEfficiency(h_1!, h_2s!, eta_s!),
    examples: [
      { h_1: 391e3, h_2s: 425e3, eta_s: 0.63 },
      { h_1: 552e3, h_2s: 611e3, eta_s: 0.48 },
    ],
  },
  {
    id: 'loop.isentropicEfficiency',
    title: 'Isentropic efficiency of an adiabatic compressor',
    result: { symbol: 'eta_s', meaning: 'isentropic efficiency', unit: '1' },
    expression: '(h_2s - h_1) / (h_2 - h_1)',
    symbols: { h_1: inletEnthalpy, h_2s: isentropicEnthalpy, h_2: outletEnthalpy },
    source: 'Çengel & Boles, Thermodynamics, 8th ed., equation 7-61 (from memory of the source)',
    validity: `${steady}; outlet above inlet`,
    file: energyFile,
    compute: ({ h_1, h_2s, h_2 }) => isentropicEfficiency(h_1!, h_2s!, h_2!),
    examples: [
      { h_1: 391e3, h_2s: 425e3, h_2: 442e3 },
      { h_1: 552e3, h_2s: 611e3, h_2: 640e3 },
    ],
  },
  {
    id: 'loop.volumetricHeatingCapacity',
    title: 'Volumetric heating capacity',
    result: { symbol: 'q_v', meaning: 'heat delivered per volume of gas drawn in', unit: 'J/m³' },
    expression: 'q_H * rho_1',
    symbols: {
      q_H: enthalpy('heat delivered per kilogram'),
      rho_1: { meaning: 'density at the compressor inlet', unit: 'kg/m³', quantity: 'density' },
    },
    source: 'definition',
    validity: 'density above 0; volume drawn in, not volume swept',
    file: energyFile,
    compute: ({ q_H, rho_1 }) => volumetricHeatingCapacity(q_H!, rho_1!),
    examples: [
      { q_H: 186e3, rho_1: 9.6 },
      { q_H: 324e3, rho_1: 3.1 },
    ],
  },
];

const ratios: readonly Formula[] = [
  {
    id: 'loop.heatingCop',
    title: 'Heating COP of the textbook cycle',
    result: { symbol: 'COP_H', meaning: 'heat delivered by work on the gas', unit: '1' },
    expression: 'q_H / w',
    symbols: { q_H: enthalpy('heat delivered per kilogram'), w: enthalpy('specific work') },
    source: cengelChapter11,
    validity: 'work on the gas, not electricity',
    file: energyFile,
    compute: ({ q_H, w }) => coefficientOfPerformance(q_H!, w!),
    examples: [
      { q_H: 186e3, w: 51e3 },
      { q_H: 324e3, w: 79.5e3 },
    ],
  },
  {
    id: 'loop.coolingCop',
    title: 'Cooling COP of the textbook cycle',
    result: { symbol: 'COP_C', meaning: 'heat taken by work on the gas', unit: '1' },
    expression: 'q_L / w',
    symbols: { q_L: enthalpy('heat taken per kilogram'), w: enthalpy('specific work') },
    source: cengelChapter11,
    validity: 'work on the gas, not electricity',
    file: energyFile,
    compute: ({ q_L, w }) => coefficientOfPerformance(q_L!, w!),
    examples: [
      { q_L: 135e3, w: 51e3 },
      { q_L: 244.5e3, w: 79.5e3 },
    ],
  },
  {
    id: 'loop.compressorCop',
    title: 'COP of the loop by the electricity of its compressor',
    result: { symbol: 'COP', meaning: 'heat delivered by electricity into the compressor', unit: '1' },
    expression: 'Q_c / W',
    symbols: { Q_c: watt('heat out of the refrigerant in the condenser'), W: compressorPower },
    source: 'definition',
    validity: 'no fan, pump or control is in it',
    file: energyFile,
    compute: ({ Q_c, W }) => coefficientOfPerformance(Q_c!, W!),
    examples: [
      { Q_c: 312, W: 128 },
      { Q_c: 187, W: 96 },
    ],
  },
  {
    id: 'loop.pressureRatio',
    title: 'Pressure ratio',
    result: { symbol: 'r', meaning: 'discharge by suction pressure', unit: '1' },
    expression: 'p_d / p_s',
    symbols: { p_d: pascal('discharge pressure, absolute'), p_s: pascal('suction pressure, absolute') },
    source: 'definition',
    validity: 'absolute pressures',
    file: energyFile,
    compute: ({ p_d, p_s }) => pressureRatio(p_d!, p_s!),
    examples: [
      { p_d: 1.16e6, p_s: 2.01e5 },
      { p_d: 5.3e5, p_s: 1.08e5 },
    ],
  },
  {
    id: 'loop.carnotHeatingCop',
    title: 'Heating COP of a reversible heat pump between two temperatures (Carnot)',
    result: { symbol: 'COP_rev', meaning: 'greatest possible heating COP', unit: '1' },
    expression: 'T_h / (T_h - T_c)',
    symbols: { T_h: kelvin('temperature of the warm side'), T_c: kelvin('temperature of the cold side') },
    source: 'Çengel & Boles, Thermodynamics, 8th ed., chapter 6 (from memory of the source)',
    validity: 'constant temperatures, warm above cold',
    file: energyFile,
    compute: ({ T_h, T_c }) => carnotHeatingCop(T_h!, T_c!),
    examples: [
      { T_h: 301.15, T_c: 278.15 },
      { T_h: 318.15, T_c: 263.15 },
    ],
  },
  {
    id: 'loop.meanTemperatureLorenz',
    title: 'Thermodynamic mean temperature of a stream (Lorenz)',
    result: { symbol: 'T_mean', ...kelvin('thermodynamic mean temperature') },
    expression: '(T_2 - T_1) / log(T_2 / T_1)',
    symbols: { T_1: kelvin('temperature at the inlet'), T_2: kelvin('temperature at the outlet') },
    source: 'H. Lorenz 1894, after textbooks (from memory); follows from the entropy change c ln(T_2/T_1)',
    validity: 'constant heat capacity; two different temperatures',
    file: energyFile,
    compute: ({ T_1, T_2 }) => meanTemperatureLorenz(T_1!, T_2!),
    examples: [
      { T_1: 283.15, T_2: 278.15 },
      { T_1: 298.15, T_2: 303.15 },
    ],
  },
];

const perSecond: readonly Formula[] = [
  {
    id: 'loop.evaporatingTemperature',
    title: 'Evaporating temperature from the approach',
    result: { symbol: 'T_e', ...kelvin('evaporating dew temperature') },
    expression: 'T_source - dT_e',
    symbols: { T_source: kelvin('temperature of the source'), dT_e: difference('approach of the evaporator') },
    source: 'definition of the approach: the smallest difference that boiling meets',
    validity: 'approach above 0',
    file: operatingFile,
    compute: ({ T_source, dT_e }) => evaporatingTemperature(T_source!, dT_e!),
    examples: [
      { T_source: 291.15, dT_e: 10 },
      { T_source: 283.15, dT_e: 7.5 },
    ],
  },
  {
    id: 'loop.condensingTemperature',
    title: 'Condensing temperature from the approach',
    result: {
      symbol: 'T_c',
      ...kelvin('condensing temperature; of a blend its bubble temperature, the nearest to the water'),
    },
    expression: 'T_water + dT_c',
    symbols: { T_water: kelvin('temperature of the tank water'), dT_c: difference('approach of the condenser') },
    source: 'definition of the approach: the smallest difference that condensing meets',
    validity: 'approach above 0',
    file: operatingFile,
    compute: ({ T_water, dT_c }) => condensingTemperature(T_water!, dT_c!),
    examples: [
      { T_water: 299.15, dT_c: 10 },
      { T_water: 297.65, dT_c: 6.5 },
    ],
  },
  {
    id: 'loop.suctionTemperature',
    title: 'Temperature of the gas at the compressor inlet',
    result: { symbol: 'T_1', ...kelvin('gas at the compressor inlet') },
    expression: 'T_e + dT_sh',
    symbols: { T_e: kelvin('evaporating dew temperature'), dT_sh: difference('superheat') },
    source: 'definition of superheat',
    validity: 'superheat of 0 or more',
    file: operatingFile,
    compute: ({ T_e, dT_sh }) => suctionTemperature(T_e!, dT_sh!),
    examples: [
      { T_e: 281.15, dT_sh: 6 },
      { T_e: 275.65, dT_sh: 3.5 },
    ],
  },
  {
    id: 'loop.limitedPressure',
    title: 'Pressure behind a valve that limits it',
    result: { symbol: 'p_1', meaning: 'pressure of the gas at the compressor inlet', unit: 'Pa', quantity: 'pressure' },
    expression: 'min(p_e, p_max)',
    symbols: {
      p_e: { meaning: 'evaporating pressure', unit: 'Pa', quantity: 'pressure' },
      p_max: { meaning: 'largest pressure that the valve lets through', unit: 'Pa', quantity: 'pressure' },
    },
    source: 'definition of the valve',
    validity: 'absolute pressures; a valve without a proportional band',
    file: operatingFile,
    compute: ({ p_e, p_max }) => limitedPressure(p_e!, p_max!),
    examples: [
      { p_e: 3.1e5, p_max: 1.6e5 },
      { p_e: 1.2e5, p_max: 2e5 },
    ],
  },
  {
    id: 'loop.liquidTemperature',
    title: 'Temperature of the liquid at the condenser outlet',
    result: { symbol: 'T_3', ...kelvin('liquid at the condenser outlet') },
    expression: 'T_b - dT_sc',
    symbols: {
      T_b: kelvin('condensing bubble temperature; of a pure fluid also the dew temperature'),
      dT_sc: difference('subcooling'),
    },
    source: 'definition of subcooling',
    validity: 'subcooling of 0 or more',
    file: operatingFile,
    compute: ({ T_b, dT_sc }) => liquidTemperature(T_b!, dT_sc!),
    examples: [
      { T_b: 309.15, dT_sc: 3 },
      { T_b: 313.15, dT_sc: 5.5 },
    ],
  },
  {
    id: 'loop.heatDelivered',
    title: 'Heat out of the refrigerant in the condenser',
    result: { symbol: 'Q_c', ...watt('heat delivered') },
    expression: 'm * (h_2 - h_3)',
    symbols: { m: flow, h_2: outletEnthalpy, h_3: liquidEnthalpy },
    source: steadyFlow,
    validity: steady,
    file: energyFile,
    compute: ({ m, h_2, h_3 }) => streamPower(m!, h_2!, h_3!),
    examples: [
      { m: 0.0016, h_2: 442e3, h_3: 252e3 },
      { m: 0.0007, h_2: 631.5e3, h_3: 298e3 },
    ],
  },
  {
    id: 'loop.heatTaken',
    title: 'Heat into the refrigerant in the evaporator',
    result: { symbol: 'Q_e', ...watt('heat taken') },
    expression: 'm * (h_1 - h_4)',
    symbols: { m: flow, h_1: inletEnthalpy, h_4: expandedEnthalpy },
    source: steadyFlow,
    validity: `${steady}; all superheat gained in the evaporator`,
    file: energyFile,
    compute: ({ m, h_1, h_4 }) => streamPower(m!, h_1!, h_4!),
    examples: [
      { m: 0.0016, h_1: 405e3, h_4: 252e3 },
      { m: 0.0007, h_1: 566e3, h_4: 298e3 },
    ],
  },
  {
    id: 'loop.energyAccountResidual',
    title: 'What is left of the energy account, as a share of the heat delivered',
    result: { symbol: 'r', meaning: 'residual of the energy account', unit: '1' },
    expression: '(Q_e + W - Q_c - Q_shell) / Q_c',
    symbols: {
      Q_e: watt('heat taken'),
      W: compressorPower,
      Q_c: watt('heat delivered'),
      Q_shell: watt('heat from the shell'),
    },
    source: 'first law on the loop as a whole',
    validity: 'steady; a result is given only below 1e-9',
    file: energyFile,
    compute: ({ Q_e, W, Q_c, Q_shell }) => energyAccountResidual(Q_e!, W!, Q_c!, Q_shell!),
    examples: [
      { Q_e: 245, W: 118, Q_c: 304, Q_shell: 47 },
      { Q_e: 188, W: 92, Q_c: 231, Q_shell: 41 },
    ],
  },
];

export const firstLawFormulas: readonly Formula[] = [...firstLawPerMass, ...ratios, ...perSecond];
