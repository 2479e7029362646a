// Formula records of the dome: the saturation line by Maxwell's conditions, and the rules for mixtures of saturated liquid
// and vapour.

import type { Formula, FormulaSymbol, FormulaValues } from '../../../quantities/index.ts';
import {
  mixed,
  mixedDensity,
  qualityOf,
  saturationPressureOf,
  saturationTemperatureOf,
} from '../equation/relations.ts';
import { lineFormulas } from './line-formulas.ts';

const file = 'src/matter/refrigerants/equation/relations.ts';
const R: FormulaSymbol = { meaning: 'specific gas constant of the fluid', unit: 'J/(kg K)' };
const x: FormulaSymbol = { meaning: 'quality, mass of vapour by mass', unit: '1' };

/** What all rules inside the dome share. */
const insideTheDome = {
  source: 'definition of quality',
  validity: 'quality 0 to 1, both phases in equilibrium',
  file,
} as const;

/** Both phases of a fluid in equilibrium. */
const bothPhases: Readonly<Record<string, FormulaSymbol>> = {
  phi_liquid: { meaning: 'reduced Helmholtz energy of the liquid, φ⁰ + φʳ', unit: '1' },
  phi_vapour: { meaning: 'reduced Helmholtz energy of the vapour, φ⁰ + φʳ', unit: '1' },
  rho_liquid: { meaning: 'density of the saturated liquid', unit: 'kg/m³', quantity: 'density' },
  rho_vapour: { meaning: 'density of the saturated vapour', unit: 'kg/m³', quantity: 'density' },
};
const maxwell = {
  source: 'J. C. Maxwell, equal Gibbs energy of both phases; the energies from the fluid’s own equation',
  validity: 'triple point to critical point; densities and temperature, or pressure, were found together',
  file,
} as const;

export const domeFormulas: readonly Formula[] = [
  {
    id: 'refrigerants.saturationPressure',
    title: 'Saturation pressure',
    result: { symbol: 'p', meaning: 'saturation pressure', unit: 'Pa', quantity: 'pressure' },
    expression: 'R * T * (phi_liquid - phi_vapour) / (1 / rho_vapour - 1 / rho_liquid)',
    symbols: { R, T: { meaning: 'saturation temperature', unit: 'K', quantity: 'temperature' }, ...bothPhases },
    ...maxwell,
    compute: (v) => saturationPressureOf(v.R!, v.T!, v.phi_liquid!, v.phi_vapour!, v.rho_liquid!, v.rho_vapour!),
    examples: [
      { R: 188.56, T: 273.15, phi_liquid: -3.1, phi_vapour: -3.98, rho_liquid: 528.6, rho_vapour: 10.35 },
      { R: 81.49, T: 300, phi_liquid: -4.2, phi_vapour: -5.03, rho_liquid: 1199.7, rho_vapour: 34.2 },
    ],
  },
  {
    id: 'refrigerants.saturationTemperature',
    title: 'Saturation temperature',
    result: { symbol: 'T', meaning: 'saturation temperature', unit: 'K', quantity: 'temperature' },
    expression: 'p * (1 / rho_vapour - 1 / rho_liquid) / (R * (phi_liquid - phi_vapour))',
    symbols: { p: { meaning: 'saturation pressure', unit: 'Pa', quantity: 'pressure' }, R, ...bothPhases },
    ...maxwell,
    compute: (v) => saturationTemperatureOf(v.p!, v.R!, v.phi_liquid!, v.phi_vapour!, v.rho_liquid!, v.rho_vapour!),
    examples: [
      { p: 474500, R: 188.56, phi_liquid: -3.1, phi_vapour: -3.98, rho_liquid: 528.6, rho_vapour: 10.35 },
      { p: 702800, R: 81.49, phi_liquid: -4.2, phi_vapour: -5.03, rho_liquid: 1199.7, rho_vapour: 34.2 },
    ],
  },
  ...lineFormulas,
  mixtureOf('Temperature', 'temperature', { unit: 'K', quantity: 'temperature' }, [
    { x: 0.27, y_liquid: 281.15, y_vapour: 281.15 },
    { x: 0.81, y_liquid: 268.4, y_vapour: 274.9 },
  ]),
  mixtureOf('Enthalpy', 'enthalpy', { unit: 'J/kg' }, [
    { x: 0.27, y_liquid: 256e3, y_vapour: 398e3 },
    { x: 0.81, y_liquid: 203e3, y_vapour: 574e3 },
  ]),
  mixtureOf('Entropy', 'entropy', { unit: 'J/(kg K)' }, [
    { x: 0.27, y_liquid: 1187, y_vapour: 1732 },
    { x: 0.81, y_liquid: 1011, y_vapour: 2369 },
  ]),
  {
    id: 'refrigerants.mixtureDensity',
    title: 'Density inside the dome',
    result: { symbol: 'rho', meaning: 'density', unit: 'kg/m³', quantity: 'density' },
    expression: '1 / ((1 - x) / rho_liquid + x / rho_vapour)',
    symbols: {
      x,
      rho_liquid: { meaning: 'density of the saturated liquid', unit: 'kg/m³', quantity: 'density' },
      rho_vapour: { meaning: 'density of the saturated vapour', unit: 'kg/m³', quantity: 'density' },
    },
    ...insideTheDome,
    compute: (v) => mixedDensity(v.rho_liquid!, v.rho_vapour!, v.x!),
    examples: [
      { x: 0.27, rho_liquid: 1176, rho_vapour: 14.4 },
      { x: 0.81, rho_liquid: 528, rho_vapour: 10.3 },
    ],
  },
  {
    id: 'refrigerants.quality',
    title: 'Quality of a mixture of known enthalpy',
    result: { symbol: 'x', ...x },
    expression: '(h - h_liquid) / (h_vapour - h_liquid)',
    symbols: {
      h: { meaning: 'enthalpy of the mixture', unit: 'J/kg' },
      h_liquid: { meaning: 'enthalpy of the saturated liquid', unit: 'J/kg' },
      h_vapour: { meaning: 'enthalpy of the saturated vapour', unit: 'J/kg' },
    },
    ...insideTheDome,
    compute: (v) => qualityOf(v.h!, v.h_liquid!, v.h_vapour!),
    examples: [
      { h: 256e3, h_liquid: 211e3, h_vapour: 402e3 },
      { h: 305e3, h_liquid: 203e3, h_vapour: 574e3 },
    ],
  },
  {
    id: 'refrigerants.qualityFromEntropy',
    title: 'Quality of a mixture of known entropy',
    result: { symbol: 'x', ...x },
    expression: '(s - s_liquid) / (s_vapour - s_liquid)',
    symbols: {
      s: { meaning: 'entropy of the mixture', unit: 'J/(kg K)' },
      s_liquid: { meaning: 'entropy of the saturated liquid', unit: 'J/(kg K)' },
      s_vapour: { meaning: 'entropy of the saturated vapour', unit: 'J/(kg K)' },
    },
    ...insideTheDome,
    compute: (v) => qualityOf(v.s!, v.s_liquid!, v.s_vapour!),
    examples: [
      { s: 1402, s_liquid: 1187, s_vapour: 1732 },
      { s: 2301, s_liquid: 1011, s_vapour: 2369 },
    ],
  },
];

/** A property per mass inside the dome, or the temperature of a blend between its lines. */
function mixtureOf(
  title: string,
  what: string,
  counted: Pick<FormulaSymbol, 'unit' | 'quantity'>,
  examples: readonly FormulaValues[],
): Formula {
  return {
    id: `refrigerants.mixture${title}`,
    title: `${title} inside the dome`,
    result: { symbol: 'y', meaning: what, ...counted },
    expression: '(1 - x) * y_liquid + x * y_vapour',
    symbols: {
      x,
      y_liquid: { meaning: `${what} of the saturated liquid`, ...counted },
      y_vapour: { meaning: `${what} of the saturated vapour`, ...counted },
    },
    ...insideTheDome,
    compute: (v) => mixed(v.y_liquid!, v.y_vapour!, v.x!),
    examples,
  };
}
