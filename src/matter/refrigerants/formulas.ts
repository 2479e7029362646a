// Formula records of the refrigerant engine. States come out of iterations on an equation with some twenty terms; what can
// be shown with numbers put in are the relations between the derivatives of that equation and the properties. Those stand
// here; the rules of the dome in dome-formulas.ts.

import type { Formula, FormulaSymbol } from '../../quantities/index.ts';
import { derivedFormulas } from './derivatives/formulas.ts';
import { domeFormulas } from './dome/mixture-formulas.ts';
import {
  densityOf,
  densityOfEntropy,
  enthalpyOfPressure,
  entropyOfDensity,
  heatCapacityAtConstantPressure,
  heatCapacityAtConstantVolume,
  internalEnergyOf,
  pressureOf,
  soundSpeedOf,
  stiffnessOf,
  temperatureOf,
  temperatureOfPressure,
  thermalPushOf,
} from './equation/relations.ts';
import { surfaceTensionOf } from './surface-tension.ts';
import { transportFormulas } from './transport/formulas.ts';

const T: FormulaSymbol = { meaning: 'temperature', unit: 'K', quantity: 'temperature' };
const rho: FormulaSymbol = { meaning: 'density', unit: 'kg/m³', quantity: 'density' };
const pressure: FormulaSymbol = { meaning: 'pressure, absolute', unit: 'Pa', quantity: 'pressure' };
const enthalpyShift: FormulaSymbol = {
  meaning: 'shift to the reference state: 200 kJ/kg in the saturated liquid at 0 °C, unless another was asked for',
  unit: 'J/kg',
};
const entropyShift: FormulaSymbol = {
  meaning: 'shift to the reference state: 1 kJ/(kg K) in the saturated liquid at 0 °C, unless another was asked for',
  unit: 'J/(kg K)',
};
const R: FormulaSymbol = { meaning: 'specific gas constant of the fluid', unit: 'J/(kg K)' };
const phi_s: FormulaSymbol = {
  meaning: 'reduced Helmholtz energy of both parts without its logarithm of density, φ⁰ + φʳ − ln(ρ/ρ_c)',
  unit: '1',
};
const rho_c: FormulaSymbol = {
  meaning: 'density at the critical point of the equation',
  unit: 'kg/m³',
  quantity: 'density',
};
const phi_d: FormulaSymbol = { meaning: 'density derivative of the residual part, δ φʳ_δ', unit: '1' };
const phi_dd: FormulaSymbol = { meaning: 'second density derivative of the residual part, δ² φʳ_δδ', unit: '1' };
const phi_dt: FormulaSymbol = { meaning: 'mixed derivative of the residual part, δ τ φʳ_δτ', unit: '1' };
const phi_t: FormulaSymbol = { meaning: 'temperature derivative of both parts, τ (φ⁰_τ + φʳ_τ)', unit: '1' };
const phi_tt: FormulaSymbol = { meaning: 'second temperature derivative of both parts, τ² (φ⁰_ττ + φʳ_ττ)', unit: '1' };
const K: FormulaSymbol = { meaning: 'stiffness, slope of pressure over density by R T', unit: '1' };
const P: FormulaSymbol = { meaning: 'thermal push, slope of pressure over temperature by ρ R', unit: '1' };

/** What all relations of the equation share. */
const ofTheEquation = {
  source: 'R. Span (2000), Multiparameter Equations of State, chapter 3; the derivatives from the fluid’s own equation',
  validity: 'limits of the fluid’s equation, one phase',
  file: 'src/matter/refrigerants/equation/relations.ts',
} as const;

export const refrigerantFormulas: readonly Formula[] = [
  {
    id: 'refrigerants.density',
    title: 'Density of a refrigerant of known pressure and temperature',
    result: { symbol: 'rho', ...rho },
    expression: 'p / (R * T * (1 + phi_d))',
    symbols: { p: pressure, R, T, phi_d },
    ...ofTheEquation,
    compute: (v) => densityOf(v.p!, v.R!, v.T!, v.phi_d!),
    examples: [
      { p: 845000, R: 188.56, T: 300, phi_d: -0.151 },
      { p: 604000, R: 188.56, T: 280, phi_d: -0.978 },
    ],
  },
  {
    id: 'refrigerants.densityFromEntropy',
    title: 'Density of a refrigerant of known entropy',
    result: { symbol: 'rho', ...rho },
    expression: 'rho_c * exp(phi_t - phi_s - (s - s_zero) / R)',
    symbols: {
      rho_c,
      phi_t,
      phi_s,
      s: { meaning: 'entropy', unit: 'J/(kg K)' },
      s_zero: entropyShift,
      R,
    },
    ...ofTheEquation,
    compute: (v) => densityOfEntropy(v.rho_c!, v.phi_t!, v.phi_s!, v.s!, v.s_zero!, v.R!),
    examples: [
      { rho_c: 220.5, phi_t: 4.2, phi_s: -5.1, s: 2380, s_zero: 31, R: 188.56 },
      { rho_c: 511.9, phi_t: 3.7, phi_s: -14.9, s: 1760, s_zero: -12, R: 81.49 },
    ],
  },
  {
    id: 'refrigerants.temperatureFromPressure',
    title: 'Temperature of a refrigerant of known pressure and density',
    result: { symbol: 'T', ...T },
    expression: 'p / (rho * R * (1 + phi_d))',
    symbols: { p: pressure, rho, R, phi_d },
    ...ofTheEquation,
    compute: (v) => temperatureOfPressure(v.p!, v.rho!, v.R!, v.phi_d!),
    examples: [
      { p: 845000, rho: 17.6, R: 188.56, phi_d: -0.151 },
      { p: 1160000, rho: 52.4, R: 81.49, phi_d: -0.118 },
    ],
  },
  {
    id: 'refrigerants.internalEnergy',
    title: 'Internal energy of a refrigerant',
    result: { symbol: 'u', meaning: 'internal energy', unit: 'J/kg' },
    expression: 'h - p / rho',
    symbols: { h: { meaning: 'enthalpy', unit: 'J/kg' }, p: pressure, rho },
    source: 'definition of enthalpy',
    validity: 'any state',
    file: 'src/matter/refrigerants/equation/relations.ts',
    compute: (v) => internalEnergyOf(v.h!, v.p!, v.rho!),
    examples: [
      { h: 591e3, p: 845000, rho: 17.6 },
      { h: 412e3, p: 201000, rho: 9.6 },
    ],
  },
  {
    id: 'refrigerants.pressure',
    title: 'Pressure of a refrigerant',
    result: { symbol: 'p', meaning: 'pressure', unit: 'Pa', quantity: 'pressure' },
    expression: 'rho * R * T * (1 + phi_d)',
    symbols: { rho, R, T, phi_d },
    ...ofTheEquation,
    compute: (v) => pressureOf(v.rho!, v.R!, v.T!, v.phi_d!),
    examples: [
      { rho: 17.6, R: 188.56, T: 300, phi_d: -0.151 },
      { rho: 520, R: 188.56, T: 280, phi_d: -0.978 },
    ],
  },
  {
    id: 'refrigerants.stiffness',
    title: 'Slope of pressure over density',
    result: { symbol: 'K', ...K },
    expression: '1 + 2 * phi_d + phi_dd',
    symbols: { phi_d, phi_dd },
    ...ofTheEquation,
    compute: (v) => stiffnessOf(v.phi_d!, v.phi_dd!),
    examples: [
      { phi_d: -0.151, phi_dd: 0.004 },
      { phi_d: -0.978, phi_dd: 12.4 },
    ],
  },
  {
    id: 'refrigerants.thermalPush',
    title: 'Slope of pressure over temperature',
    result: { symbol: 'P', ...P },
    expression: '1 + phi_d - phi_dt',
    symbols: { phi_d, phi_dt },
    ...ofTheEquation,
    compute: (v) => thermalPushOf(v.phi_d!, v.phi_dt!),
    examples: [
      { phi_d: -0.151, phi_dt: -0.31 },
      { phi_d: -0.978, phi_dt: -9.2 },
    ],
  },
  {
    id: 'refrigerants.enthalpy',
    title: 'Enthalpy of a refrigerant',
    result: { symbol: 'h', meaning: 'enthalpy', unit: 'J/kg' },
    expression: 'R * T * phi_t + p / rho + h_zero',
    symbols: { R, T, phi_t, p: pressure, rho, h_zero: enthalpyShift },
    ...ofTheEquation,
    compute: (v) => enthalpyOfPressure(v.R!, v.T!, v.phi_t!, v.p!, v.rho!, v.h_zero!),
    examples: [
      { R: 188.56, T: 300, phi_t: 4.2, p: 845000, rho: 17.6, h_zero: 9700 },
      { R: 81.49, T: 280, phi_t: -1.7, p: 604000, rho: 1203, h_zero: -2500 },
    ],
  },
  {
    id: 'refrigerants.temperature',
    title: 'Temperature of a refrigerant of known enthalpy',
    result: { symbol: 'T', meaning: 'temperature', unit: 'K', quantity: 'temperature' },
    expression: '(h - h_zero) / (R * (1 + phi_d + phi_t))',
    symbols: {
      h: { meaning: 'enthalpy', unit: 'J/kg' },
      h_zero: enthalpyShift,
      R,
      phi_d,
      phi_t,
    },
    ...ofTheEquation,
    compute: (v) => temperatureOf(v.h!, v.h_zero!, v.R!, v.phi_d!, v.phi_t!),
    examples: [
      { h: 412e3, h_zero: 51e3, R: 81.49, phi_d: -0.07, phi_t: 12.1 },
      { h: 575e3, h_zero: 102e3, R: 188.56, phi_d: -0.12, phi_t: 7.9 },
    ],
  },
  {
    id: 'refrigerants.entropy',
    title: 'Entropy of a refrigerant',
    result: { symbol: 's', meaning: 'entropy', unit: 'J/(kg K)' },
    expression: 'R * (phi_t - phi_s - log(rho / rho_c)) + s_zero',
    symbols: { R, phi_t, phi_s, rho, rho_c, s_zero: entropyShift },
    ...ofTheEquation,
    compute: (v) => entropyOfDensity(v.R!, v.phi_t!, v.phi_s!, v.rho!, v.rho_c!, v.s_zero!),
    examples: [
      { R: 188.56, phi_t: 4.2, phi_s: -5.1, rho: 17.6, rho_c: 220.5, s_zero: 31 },
      { R: 81.49, phi_t: -1.7, phi_s: -10.3, rho: 1203, rho_c: 511.9, s_zero: -12 },
    ],
  },
  {
    id: 'refrigerants.heatCapacityAtConstantVolume',
    title: 'Heat capacity at constant volume',
    result: { symbol: 'cv', meaning: 'heat capacity at constant volume', unit: 'J/(kg K)' },
    expression: '-R * phi_tt',
    symbols: { R, phi_tt },
    ...ofTheEquation,
    compute: (v) => heatCapacityAtConstantVolume(v.R!, v.phi_tt!),
    examples: [
      { R: 188.56, phi_tt: -8.3 },
      { R: 81.49, phi_tt: -10.9 },
    ],
  },
  {
    id: 'refrigerants.heatCapacityAtConstantPressure',
    title: 'Heat capacity at constant pressure',
    result: { symbol: 'cp', meaning: 'heat capacity at constant pressure', unit: 'J/(kg K)' },
    expression: 'R * (-phi_tt + P^2 / K)',
    symbols: { R, phi_tt, P, K },
    ...ofTheEquation,
    compute: (v) => heatCapacityAtConstantPressure(v.R!, v.phi_tt!, v.P!, v.K!),
    examples: [
      { R: 188.56, phi_tt: -8.3, P: 1.159, K: 0.702 },
      { R: 81.49, phi_tt: -10.9, P: 8.244, K: 11.444 },
    ],
  },
  {
    id: 'refrigerants.soundSpeed',
    title: 'Speed of sound in a refrigerant',
    result: { symbol: 'w', meaning: 'speed of sound', unit: 'm/s' },
    expression: 'sqrt(R * T * (K - P^2 / phi_tt))',
    symbols: { R, T, K, P, phi_tt },
    ...ofTheEquation,
    compute: (v) => soundSpeedOf(v.R!, v.T!, v.phi_tt!, v.P!, v.K!),
    examples: [
      { R: 188.56, T: 300, phi_tt: -8.3, P: 1.159, K: 0.702 },
      { R: 81.49, T: 280, phi_tt: -10.9, P: 8.244, K: 11.444 },
    ],
  },
  {
    id: 'refrigerants.surfaceTension',
    title: 'Surface tension, fit of up to three terms',
    result: { symbol: 'sigma', meaning: 'surface tension', unit: 'N/m' },
    expression: 'a1 * (1 - T / Tc)^n1 + a2 * (1 - T / Tc)^n2 + a3 * (1 - T / Tc)^n3',
    symbols: {
      T,
      Tc: { meaning: 'critical temperature of the fit', unit: 'K', quantity: 'temperature' },
      a1: { meaning: 'first factor', unit: 'N/m' },
      a2: { meaning: 'second factor', unit: 'N/m' },
      a3: { meaning: 'third factor', unit: 'N/m' },
      n1: { meaning: 'first exponent', unit: '1' },
      n2: { meaning: 'second exponent', unit: '1' },
      n3: { meaning: 'third exponent', unit: '1' },
    },
    source:
      'A. Mulero, I. Cachadina, M. I. Parra (2012), J. Phys. Chem. Ref. Data 41, 043105; other sources of the same form by fluid',
    validity: 'triple point to critical point, on the saturation line',
    file: 'src/matter/refrigerants/surface-tension.ts',
    compute: (v) =>
      surfaceTensionOf({ criticalTemperature: v.Tc!, a: [v.a1!, v.a2!, v.a3!], n: [v.n1!, v.n2!, v.n3!] }, v.T!),
    examples: [
      { T: 300, Tc: 369.89, a1: 0.05334, a2: -0.01748, a3: 0, n1: 1.235, n2: 4.404, n3: 1 },
      { T: 273.15, Tc: 385.12, a1: -0.000124, a2: 0.05662, a3: 0.0031, n1: 0.4318, n2: 1.263, n3: 2.2 },
    ],
  },
  ...domeFormulas,
  ...derivedFormulas,
  ...transportFormulas,
];
