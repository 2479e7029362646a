// Formula records of sets of ten coefficients, of flow and capacity, and of another superheat.

import type { Formula, FormulaSymbol } from '../../../quantities/index.ts';
import { levelOfGrid } from './coefficient-groups.ts';
import { capacityOfFlow, flowOfCapacity } from './flow-and-capacity.ts';
import { capacityRatioOf, carriedValue, flowRatioDabiriRice1981, powerRatioDabiriRice1981 } from './superheat.ts';
import { coefficientPowers, requireTenCoefficients, tenCoefficients } from './ten-coefficients.ts';
import { onTemperatureScale, valueInSi } from './units.ts';

const flowFile = 'src/parts/compressor/polynomial/flow-and-capacity.ts';
const superheatFile = 'src/parts/compressor/polynomial/superheat.ts';

const massFlow: FormulaSymbol = { meaning: 'mass flow of refrigerant', unit: 'kg/s', quantity: 'massFlow' };
const capacity: FormulaSymbol = { meaning: 'refrigerating capacity as stated', unit: 'W', quantity: 'power' };
const gas: FormulaSymbol = { meaning: 'enthalpy of the gas at the inlet of the shell', unit: 'J/kg' };
const liquid: FormulaSymbol = {
  meaning: 'enthalpy of the saturated liquid at the stated liquid temperature',
  unit: 'J/kg',
};

/** C1 … C10 with their units, and the two temperatures. */
function polynomialSymbols(): Readonly<Record<string, FormulaSymbol>> {
  const coefficients = coefficientPowers.map(([i, j], index): [string, FormulaSymbol] => {
    const power = i + j;
    const per = power === 0 ? '' : power === 1 ? '/degree' : `/degree^${power}`;
    return [`C${index + 1}`, { meaning: `coefficient ${index + 1} of the set`, unit: `unit of X${per}` }];
  });
  return {
    ...Object.fromEntries(coefficients),
    S: { meaning: 'saturation temperature at suction, on the scale of the set', unit: 'degrees of the set' },
    D: { meaning: 'saturation temperature at discharge, on the scale of the set', unit: 'degrees of the set' },
  };
}

/** A set with values, for examples. */
function example(values: readonly number[], S: number, D: number): Readonly<Record<string, number>> {
  return { ...Object.fromEntries(values.map((value, index) => [`C${index + 1}`, value])), S, D };
}

const level: FormulaSymbol = { meaning: 'saturation temperature', unit: 'K', quantity: 'temperature' };

export const polynomialFormulas: readonly Formula[] = [
  {
    id: 'compressor.levelOfGrid',
    title: 'Saturation temperature at which the coefficients are read',
    result: { symbol: 'T', ...level },
    expression: 'n == 0 ? T_low : T_low + (T_high - T_low) * i / n',
    symbols: {
      T_low: { ...level, meaning: 'lowest at which all sets of the machine hold' },
      T_high: { ...level, meaning: 'highest at which all sets of the machine hold' },
      i: { meaning: 'number of the level, from 0', unit: '1' },
      n: { meaning: 'number of the last level', unit: '1' },
    },
    source: 'levels spread evenly over the common range of the sets, its ends among them',
    validity: 'inside the ranges of the sets only',
    file: 'src/parts/compressor/polynomial/coefficient-groups.ts',
    compute: ({ T_low, T_high, i, n }) => levelOfGrid(T_low!, T_high!, i!, n!),
    examples: [
      { T_low: 238.15, T_high: 263.15, i: 2, n: 5 },
      { T_low: 308.15, T_high: 328.15, i: 3, n: 4 },
    ],
  },
  {
    id: 'compressor.onTemperatureScale',
    title: 'Saturation temperature on the scale of the set',
    result: { symbol: 'S', meaning: 'saturation temperature on the scale of the set', unit: 'degrees of the set' },
    expression: '(T - 273.15) * a + b',
    symbols: {
      T: level,
      a: { meaning: 'degrees of the scale per kelvin', unit: 'degree/K' },
      b: { meaning: 'what the scale reads at 0 °C', unit: 'degree' },
    },
    source: 'definition of °C and °F',
    validity: 'everywhere',
    file: 'src/parts/compressor/polynomial/units.ts',
    compute: ({ T, a, b }) => onTemperatureScale(T!, a!, b!),
    examples: [
      { T: 258.15, a: 1.8, b: 32 },
      { T: 318.15, a: 1, b: 0 },
    ],
  },
  {
    id: 'compressor.valueInSi',
    title: 'Value of the ten coefficients in base SI',
    result: { symbol: 'X', meaning: 'flow, capacity, power or current in base SI', unit: 'base SI' },
    expression: 'X_set * k_unit',
    symbols: {
      X_set: { meaning: 'value in the unit of the set', unit: 'unit of X' },
      k_unit: { meaning: 'base SI per unit of the set', unit: 'SI per unit' },
    },
    source: 'definition of the unit',
    validity: 'everywhere',
    file: 'src/parts/compressor/polynomial/units.ts',
    compute: ({ X_set, k_unit }) => valueInSi(X_set!, k_unit!),
    examples: [
      { X_set: 3.2, k_unit: 1 / 3600 },
      { X_set: 640, k_unit: 0.29307107 },
    ],
  },
  {
    id: 'compressor.tenCoefficients',
    title: 'Ten coefficients over two saturation temperatures',
    result: { symbol: 'X', meaning: 'flow, capacity, power or current, as the set is of', unit: 'unit of X' },
    expression:
      'C1 + C2 * S + C3 * D + C4 * S^2 + C5 * S * D + C6 * D^2 + C7 * S^3 + C8 * D * S^2 + C9 * S * D^2 + C10 * D^3',
    symbols: polynomialSymbols(),
    source: 'AHRI 540 and EN 12900, order read in open implementations of both',
    validity: 'only inside the ranges of both temperatures that the set was made from',
    file: 'src/parts/compressor/polynomial/ten-coefficients.ts',
    compute: (values) => {
      const coefficients = coefficientPowers.map((_, index) => values[`C${index + 1}`]!);
      return tenCoefficients(requireTenCoefficients(coefficients), values.S!, values.D!);
    },
    examples: [
      example([1, 1, 1, 1, 1, 1, 1, 1, 1, 1], 2, 3),
      example([420, 14, -3.2, 0.17, -0.09, 0.011, 0.0008, -0.0011, 0.0004, -0.00021], -12.5, 47.3),
    ],
  },
  {
    id: 'compressor.flowOfCapacity',
    title: 'Mass flow that a stated capacity stands for',
    result: { symbol: 'm', ...massFlow },
    expression: 'Q_e / (h_1 - h_l)',
    symbols: { Q_e: capacity, h_1: gas, h_l: liquid },
    source: 'first law on the rated evaporator',
    validity: 'gas and liquid temperature of the statement known',
    file: flowFile,
    compute: ({ Q_e, h_1, h_l }) => flowOfCapacity(Q_e!, h_1!, h_l!),
    examples: [
      { Q_e: 282, h_1: 6.1e5, h_l: 2.75e5 },
      { Q_e: 170, h_1: 4.3e5, h_l: 2.45e5 },
    ],
  },
  {
    id: 'compressor.capacityOfFlow',
    title: 'Capacity that a mass flow stands for',
    result: { symbol: 'Q_e', ...capacity },
    expression: 'm * (h_1 - h_l)',
    symbols: { m: massFlow, h_1: gas, h_l: liquid },
    source: 'first law on the rated evaporator',
    validity: 'gas and liquid temperature known',
    file: flowFile,
    compute: ({ m, h_1, h_l }) => capacityOfFlow(m!, h_1!, h_l!),
    examples: [
      { m: 8.4e-4, h_1: 6.1e5, h_l: 2.75e5 },
      { m: 1.1e-3, h_1: 4.3e5, h_l: 2.45e5 },
    ],
  },
  {
    id: 'compressor.flowAtOtherSuperheat',
    title: 'Flow at another superheat over flow of the map',
    result: { symbol: 'r_m', meaning: 'flow at the other superheat over flow of the map', unit: '1' },
    expression: '1 + F * (rho_new / rho_map - 1)',
    symbols: {
      F: { meaning: 'part of a change of density that reaches the flow', unit: '1' },
      rho_new: { meaning: 'density of the gas at the inlet of the shell', unit: 'kg/m³', quantity: 'density' },
      rho_map: { meaning: 'density of the gas the map was made with', unit: 'kg/m³', quantity: 'density' },
    },
    source: 'Dabiri & Rice 1981, ASHRAE Transactions 87(2), 771; F = 0.75 from memory',
    validity: 'hermetic reciprocating machines, one evaporating pressure, some tens of kelvins',
    file: superheatFile,
    compute: ({ F, rho_new, rho_map }) => flowRatioDabiriRice1981(rho_new! / rho_map!, F!),
    examples: [
      { F: 0.75, rho_new: 5.238, rho_map: 4.7159 },
      { F: 0.75, rho_new: 1.29, rho_map: 1.41 },
    ],
  },
  {
    id: 'compressor.powerAtOtherSuperheat',
    title: 'Power at another superheat over power of the map',
    result: { symbol: 'r_W', meaning: 'power at the other superheat over power of the map', unit: '1' },
    expression: 'r_m * (dh_new / dh_map)',
    symbols: {
      r_m: { meaning: 'flow at the other superheat over flow of the map', unit: '1' },
      dh_new: { meaning: 'isentropic work from the gas to discharge pressure', unit: 'J/kg' },
      dh_map: { meaning: 'isentropic work with the gas the map was made with', unit: 'J/kg' },
    },
    source: 'Dabiri & Rice 1981, ASHRAE Transactions 87(2), 771: the same efficiency, from memory',
    validity: 'as the flow',
    file: superheatFile,
    compute: ({ r_m, dh_new, dh_map }) => powerRatioDabiriRice1981(r_m!, dh_new! / dh_map!),
    examples: [
      { r_m: 1.083, dh_new: 60916, dh_map: 67903 },
      { r_m: 0.94, dh_new: 84100, dh_map: 79500 },
    ],
  },
  {
    id: 'compressor.capacityAtOtherGas',
    title: 'Capacity with other gas and liquid over capacity of the map',
    result: { symbol: 'r_Q', meaning: 'capacity with the other gas and liquid over capacity of the map', unit: '1' },
    expression: 'r_m * ((h_1 - h_l) / (h_1map - h_lmap))',
    symbols: {
      r_m: { meaning: 'flow at the other superheat over flow of the map', unit: '1' },
      h_1: gas,
      h_l: { meaning: 'enthalpy of the liquid before the valve', unit: 'J/kg' },
      h_1map: { meaning: 'enthalpy of the gas the map was made with', unit: 'J/kg' },
      h_lmap: { meaning: 'enthalpy of the liquid the map was made with', unit: 'J/kg' },
    },
    source: 'first law, with the flow after Dabiri & Rice 1981',
    validity: 'as the flow',
    file: superheatFile,
    compute: ({ r_m, h_1, h_l, h_1map, h_lmap }) => capacityRatioOf(r_m!, (h_1! - h_l!) / (h_1map! - h_lmap!)),
    examples: [
      { r_m: 1.083, h_1: 4.08e5, h_l: 2.45e5, h_1map: 4.33e5, h_lmap: 2.45e5 },
      { r_m: 0.94, h_1: 6.3e5, h_l: 3.1e5, h_1map: 6.1e5, h_lmap: 2.8e5 },
    ],
  },
  {
    id: 'compressor.carriedValue',
    title: 'Value of the map carried to another gas',
    result: { symbol: 'X_new', meaning: 'flow, capacity or power with the other gas', unit: 'unit of X' },
    expression: 'X * r',
    symbols: {
      X: { meaning: 'value of the ten coefficients', unit: 'unit of X' },
      r: { meaning: 'ratio for the other gas', unit: '1' },
    },
    source: 'definition of the ratio',
    validity: 'as the ratio',
    file: superheatFile,
    compute: ({ X, r }) => carriedValue(X!, r!),
    examples: [
      { X: 170, r: 1.04 },
      { X: 9.1e-4, r: 1.083 },
    ],
  },
];
