// Formula records of the further properties of a state, and of the slope of the saturation line.

import type { Formula, FormulaSymbol } from '../../../quantities/index.ts';
import { clapeyronOf, compressibilityOf, expansionOf, isentropicExponentOf, jouleThomsonOf } from './relations.ts';

const file = 'src/matter/refrigerants/derivatives/relations.ts';
const T: FormulaSymbol = { meaning: 'temperature', unit: 'K', quantity: 'temperature' };
const rho: FormulaSymbol = { meaning: 'density', unit: 'kg/m³', quantity: 'density' };
const R: FormulaSymbol = { meaning: 'specific gas constant of the fluid', unit: 'J/(kg K)' };
const K: FormulaSymbol = { meaning: 'stiffness, slope of pressure over density by R T', unit: '1' };
const P: FormulaSymbol = { meaning: 'thermal push, slope of pressure over temperature by ρ R', unit: '1' };

const ofTheEquation = {
  source: 'R. Span (2000), Multiparameter Equations of State, chapter 3; the derivatives from the fluid’s own equation',
  validity: 'limits of the fluid’s equation, one phase',
  file,
} as const;

export const derivedFormulas: readonly Formula[] = [
  {
    id: 'refrigerants.jouleThomsonCoefficient',
    title: 'Joule–Thomson coefficient',
    result: { symbol: 'mu', meaning: 'temperature over pressure at constant enthalpy', unit: 'K/Pa' },
    expression: '-(phi_d + phi_dd + phi_dt) / (rho * cp * K)',
    symbols: {
      phi_d: { meaning: 'density derivative of the residual part, δ φʳ_δ', unit: '1' },
      phi_dd: { meaning: 'second density derivative of the residual part, δ² φʳ_δδ', unit: '1' },
      phi_dt: { meaning: 'mixed derivative of the residual part, δ τ φʳ_δτ', unit: '1' },
      rho,
      cp: { meaning: 'heat capacity at constant pressure', unit: 'J/(kg K)' },
      K,
    },
    ...ofTheEquation,
    compute: (v) => jouleThomsonOf(v.phi_d!, v.phi_dd!, v.phi_dt!, v.rho!, v.cp!, v.K!),
    examples: [
      { phi_d: -0.151, phi_dd: 0.004, phi_dt: -0.31, rho: 17.6, cp: 1945, K: 0.702 },
      { phi_d: -0.978, phi_dd: 12.4, phi_dt: -9.2, rho: 1203, cp: 1425, K: 11.444 },
    ],
  },
  {
    id: 'refrigerants.isentropicExponent',
    title: 'Isentropic exponent of a real fluid',
    result: { symbol: 'kappa', meaning: 'isentropic exponent', unit: '1' },
    expression: 'rho * w^2 / p',
    symbols: {
      rho,
      w: { meaning: 'speed of sound', unit: 'm/s' },
      p: { meaning: 'pressure, absolute', unit: 'Pa', quantity: 'pressure' },
    },
    ...ofTheEquation,
    compute: (v) => isentropicExponentOf(v.rho!, v.w!, v.p!),
    examples: [
      { rho: 17.6, w: 221.9, p: 847000 },
      { rho: 1203, w: 498, p: 703000 },
    ],
  },
  {
    id: 'refrigerants.isobaricExpansion',
    title: 'Isobaric expansion coefficient',
    result: {
      symbol: 'alpha',
      meaning: 'relative growth of volume over temperature at constant pressure',
      unit: '1/K',
    },
    expression: 'P / (T * K)',
    symbols: { P, T, K },
    ...ofTheEquation,
    compute: (v) => expansionOf(v.T!, v.P!, v.K!),
    examples: [
      { P: 1.159, T: 300, K: 0.702 },
      { P: 8.244, T: 280, K: 11.444 },
    ],
  },
  {
    id: 'refrigerants.isothermalCompressibility',
    title: 'Isothermal compressibility',
    result: {
      symbol: 'kappa_T',
      meaning: 'relative loss of volume over pressure at constant temperature',
      unit: '1/Pa',
    },
    expression: '1 / (rho * R * T * K)',
    symbols: { rho, R, T, K },
    ...ofTheEquation,
    compute: (v) => compressibilityOf(v.rho!, v.R!, v.T!, v.K!),
    examples: [
      { rho: 17.6, R: 188.56, T: 300, K: 0.702 },
      { rho: 1203, R: 81.49, T: 280, K: 11.444 },
    ],
  },
  {
    id: 'refrigerants.saturationPressureSlope',
    title: 'Slope of the saturation pressure over temperature',
    result: { symbol: 'dp_dT', meaning: 'slope of the saturation pressure over temperature', unit: 'Pa/K' },
    expression: '(s_vapour - s_liquid) / (1 / rho_vapour - 1 / rho_liquid)',
    symbols: {
      s_liquid: { meaning: 'entropy of the saturated liquid', unit: 'J/(kg K)' },
      s_vapour: { meaning: 'entropy of the saturated vapour', unit: 'J/(kg K)' },
      rho_liquid: { meaning: 'density of the saturated liquid', unit: 'kg/m³', quantity: 'density' },
      rho_vapour: { meaning: 'density of the saturated vapour', unit: 'kg/m³', quantity: 'density' },
    },
    source: 'B. P. E. Clapeyron (1834), relation of the slope of a line of equilibrium with the entropies beside it',
    validity: 'pure fluids, triple point to critical point',
    file,
    compute: (v) => clapeyronOf(v.s_liquid!, v.s_vapour!, v.rho_liquid!, v.rho_vapour!),
    examples: [
      { s_liquid: 1000, s_vapour: 2372, rho_liquid: 528.6, rho_vapour: 10.35 },
      { s_liquid: 1128.7, s_vapour: 1715.6, rho_liquid: 1199.7, rho_vapour: 34.193 },
    ],
  },
];
