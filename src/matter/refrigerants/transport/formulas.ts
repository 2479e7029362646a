// Formula records of viscosity and thermal conductivity: the dilute gas, the sums, the gain near the critical point, and what
// the estimates reckon with. Sums of many terms of one fluid stand in its coefficient file.

import type { Formula, FormulaSymbol } from '../../../quantities/index.ts';
import { freeVolumeViscosity } from './batschinski-hildebrand.ts';
import {
  correlationLengthOf,
  criticalConductivityOf,
  crossoverOf,
  susceptibilityExcessOf,
} from './critical-enhancement.ts';
import { conformalFactorOf, diluteConductivityOf } from './estimates/corresponding-states.ts';
import { viscosityRatioBell2016 } from './estimates/residual-entropy.ts';
import { collisionIntegralNeufeld1972, diluteGasViscosity } from './low-density.ts';
import { conductivityOf, viscosityOf } from './models.ts';

const T: FormulaSymbol = { meaning: 'temperature', unit: 'K', quantity: 'temperature' };
const rho: FormulaSymbol = { meaning: 'density', unit: 'kg/m³', quantity: 'density' };
const eta: FormulaSymbol = { meaning: 'viscosity', unit: 'Pa s' };
const eta_0: FormulaSymbol = { meaning: 'viscosity of the dilute gas', unit: 'Pa s' };
const R: FormulaSymbol = { meaning: 'specific gas constant of the fluid', unit: 'J/(kg K)' };
const cp: FormulaSymbol = { meaning: 'heat capacity at constant pressure', unit: 'J/(kg K)' };
const delta: FormulaSymbol = { meaning: 'density over the reducing density', unit: '1' };
const xi: FormulaSymbol = {
  meaning: 'correlation length, reach of fluctuations of density',
  unit: 'm',
  quantity: 'length',
};

const near = {
  source: 'G. A. Olchowy, J. V. Sengers (1989), Int. J. Thermophys. 10, 417, simplified form; from memory of the paper',
  validity: 'one phase, to rounding of the critical point',
  file: 'src/matter/refrigerants/transport/critical-enhancement.ts',
} as const;
const states = {
  source: 'M. L. Huber, A. Laesecke, R. A. Perkins (2003), Ind. Eng. Chem. Res. 42, 3163',
  validity: 'an estimate; one phase, limits of the equations of both fluids',
  file: 'src/matter/refrigerants/transport/estimates/corresponding-states.ts',
} as const;

export const transportFormulas: readonly Formula[] = [
  {
    id: 'refrigerants.collisionIntegral',
    title: 'Collision integral of a dilute gas',
    result: { symbol: 'Omega', meaning: 'collision integral for viscosity', unit: '1' },
    expression: '1.16145 * t^(-0.14874) + 0.52487 * exp(-0.7732 * t) + 2.16178 * exp(-2.43787 * t)',
    symbols: { t: { meaning: 'temperature over the depth of the pair potential, T/(ε/k)', unit: '1' } },
    source: 'P. D. Neufeld, A. R. Janzen, R. A. Aziz (1972), J. Chem. Phys. 57, 1100, without its sine term',
    validity: 'reduced temperature 0.3 to 100 (from memory)',
    file: 'src/matter/refrigerants/transport/low-density.ts',
    compute: (v) => collisionIntegralNeufeld1972(v.t!),
    examples: [{ t: 1.1 }, { t: 0.84 }],
  },
  {
    id: 'refrigerants.diluteGasViscosity',
    title: 'Viscosity of a dilute gas',
    result: { symbol: 'eta_0', ...eta_0 },
    expression: 'f * sqrt(M * T) / (sigma^2 * Omega)',
    symbols: {
      f: {
        meaning: 'factor of the correlation, 26.692e-9 for the collision integral',
        unit: 'Pa s nm² (mol/(g K))^0.5',
      },
      M: { meaning: 'molar mass', unit: 'g/mol' },
      T,
      sigma: { meaning: 'diameter of the molecules', unit: 'nm' },
      Omega: { meaning: 'collision integral', unit: '1' },
    },
    source: 'S. Chapman, D. Enskog; parameters from each fluid’s own source',
    validity: 'density without influence; temperatures of the fluid’s source',
    file: 'src/matter/refrigerants/transport/low-density.ts',
    compute: (v) => diluteGasViscosity(v.f!, v.M!, v.T!, v.sigma!, v.Omega!),
    examples: [
      { f: 26.692e-9, M: 120.0214, T: 300, sigma: 0.5235, Omega: 1.4177 },
      { f: 21.357e-9, M: 102.031, T: 280, sigma: 0.468932, Omega: 1.47 },
    ],
  },
  {
    id: 'refrigerants.viscosity',
    title: 'Viscosity of a refrigerant from its parts',
    result: { symbol: 'eta', ...eta },
    expression: 'eta_0 * (1 + B * rho_m) + eta_r',
    symbols: {
      eta_0,
      B: { meaning: 'second viscosity virial coefficient', unit: 'm³/mol' },
      rho_m: { meaning: 'molar density', unit: 'mol/m³' },
      eta_r: { meaning: 'gain at higher density', unit: 'Pa s' },
    },
    source: 'each fluid’s own; the form as in E. Vogel and others (1998), J. Phys. Chem. Ref. Data 27, 947',
    validity: 'as each fluid’s source states',
    file: 'src/matter/refrigerants/transport/models.ts',
    compute: (v) => viscosityOf(v.eta_0!, v.B!, v.rho_m!, v.eta_r!),
    examples: [
      { eta_0: 8.2e-6, B: -4.5e-5, rho_m: 480, eta_r: 2.1e-7 },
      { eta_0: 1.17e-5, B: 2.1e-5, rho_m: 11900, eta_r: 1.83e-4 },
    ],
  },
  {
    id: 'refrigerants.freeVolumeViscosity',
    title: 'Viscosity of molecules that come to be packed closely',
    result: { symbol: 'eta_f', meaning: 'free-volume part of the viscosity', unit: 'Pa s' },
    expression: 'f * delta^k * (1 / (delta_0 - delta) - 1 / delta_0)',
    symbols: {
      f: { meaning: 'factor', unit: 'Pa s' },
      delta,
      k: { meaning: 'power, 0 or 1', unit: '1' },
      delta_0: { meaning: 'the same of close packing at this temperature', unit: '1' },
    },
    source: 'A. Batschinski, J. H. Hildebrand; the form as in E. Vogel and others (1998)',
    validity: 'below close packing',
    file: 'src/matter/refrigerants/transport/batschinski-hildebrand.ts',
    compute: (v) => freeVolumeViscosity(v.f!, v.delta!, v.delta_0!, v.k!),
    examples: [
      { f: 1.617e-3, delta: 2.3, k: 1, delta_0: 3.1 },
      { f: 2.1476e-4, delta: 2.4, k: 0, delta_0: 3.2 },
    ],
  },
  {
    id: 'refrigerants.residualEntropyViscosity',
    title: 'Viscosity over that of the dilute gas, by residual entropy',
    result: { symbol: 'eta_r', meaning: 'viscosity over that of the dilute gas', unit: '1' },
    expression:
      '1 + C * (exp((a0 + a1 * x + a2 * x^2 + a3 * x^3) / (1 + exp(-100 * (x - 2))) + (b0 + b1 * x + b2 * x^2 + b3 * x^3) / (1 + exp(100 * (x - 2)))) - 1)',
    symbols: {
      x: { meaning: 'residual entropy by volume over that at the critical point', unit: '1' },
      C: { meaning: 'factor of the fluid', unit: '1' },
      ...Object.fromEntries(
        ['a', 'b'].flatMap((letter) =>
          [0, 1, 2, 3].map((power): [string, FormulaSymbol] => [
            `${letter}${power}`,
            { meaning: `factor of power ${power} of the ${letter === 'a' ? 'liquid' : 'vapour'}’s curve`, unit: '1' },
          ]),
        ),
      ),
    },
    source:
      'I. H. Bell, A. Laesecke (2016), 16th International Refrigeration and Air Conditioning Conference at Purdue',
    validity: 'an estimate; one phase, limits of the fluid’s equation',
    file: 'src/matter/refrigerants/transport/estimates/residual-entropy.ts',
    compute: (v) =>
      viscosityRatioBell2016(v.x!, {
        factor: v.C!,
        criticalEntropyDensity: -1,
        liquid: [v.a0!, v.a1!, v.a2!, v.a3!],
        vapour: [v.b0!, v.b1!, v.b2!, v.b3!],
      }),
    examples: [0.31, 2.004, 4.7].map((x) => ({
      x,
      C: 0.79022,
      a0: 0.6100913843,
      a1: 0.4508958312,
      a2: -0.017063,
      a3: 0.000564,
      b0: 0.01,
      b1: 1.2,
      b2: -0.308598,
      b3: 0.035317,
    })),
  },
  {
    id: 'refrigerants.conformalFactor',
    title: 'Factor from the reference fluid’s gain at higher density to the fluid’s own',
    result: { symbol: 'F', meaning: 'factor', unit: '1' },
    expression: 'sqrt(f * m) / cbrt(h)^2',
    symbols: {
      f: { meaning: 'temperature over that of the corresponding state of the reference fluid', unit: '1' },
      h: { meaning: 'molar density of the corresponding state over the fluid’s own', unit: '1' },
      m: { meaning: 'molar mass over that of the reference fluid; for conductivity the other way round', unit: '1' },
    },
    ...states,
    compute: (v) => conformalFactorOf(v.f!, v.h!, v.m!),
    examples: [
      { f: 1.03, h: 1.08, m: 1.19 },
      { f: 0.98, h: 0.95, m: 0.84 },
    ],
  },
  {
    id: 'refrigerants.diluteGasConductivity',
    title: 'Thermal conductivity of a dilute gas whose molecules turn and swing',
    result: { symbol: 'lambda_0', meaning: 'thermal conductivity of the dilute gas', unit: 'W/(m K)' },
    expression: 'eta_0 * (3.75 * R + 1000 * f_int * (cp_0 - 2.5 * R))',
    symbols: {
      eta_0,
      R,
      f_int: { meaning: 'factor of the share of turning and swinging, as printed', unit: '1' },
      cp_0: { meaning: 'heat capacity of the ideal gas at constant pressure', unit: 'J/(kg K)' },
    },
    ...states,
    compute: (v) => diluteConductivityOf(v.eta_0!, v.R!, v.f_int!, v.cp_0!),
    examples: [
      { eta_0: 1.19e-5, R: 68.8, f_int: 1.344e-3, cp_0: 612 },
      { eta_0: 1.28e-5, R: 159.8, f_int: 0.971e-3, cp_0: 828 },
    ],
  },
  {
    id: 'refrigerants.conductivity',
    title: 'Thermal conductivity of a refrigerant from its parts',
    result: { symbol: 'lambda', meaning: 'thermal conductivity', unit: 'W/(m K)' },
    expression: 'lambda_0 + lambda_r + lambda_c',
    symbols: {
      lambda_0: { meaning: 'that of the dilute gas', unit: 'W/(m K)' },
      lambda_r: { meaning: 'gain at higher density', unit: 'W/(m K)' },
      lambda_c: { meaning: 'gain near the critical point', unit: 'W/(m K)' },
    },
    source: 'each fluid’s own; the form as in R. A. Perkins (2002), J. Chem. Eng. Data 47, 1272',
    validity: 'as each fluid’s source states',
    file: 'src/matter/refrigerants/transport/models.ts',
    compute: (v) => conductivityOf(v.lambda_0!, v.lambda_r!, v.lambda_c!),
    examples: [
      { lambda_0: 0.0151, lambda_r: 2.6e-4, lambda_c: 1.1e-4 },
      { lambda_0: 0.0138, lambda_r: 0.0652, lambda_c: 4.1e-4 },
    ],
  },
  {
    id: 'refrigerants.susceptibilityExcess',
    title: 'Excess of the susceptibility near the critical point',
    result: { symbol: 'chi', meaning: 'excess of the reduced susceptibility', unit: '1' },
    expression: 'p_c * delta / (rho_r * R * T) * (1 / K - 1 / K_ref)',
    symbols: {
      p_c: { meaning: 'critical pressure of the correlation', unit: 'Pa', quantity: 'pressure' },
      delta,
      rho_r: { meaning: 'reducing density of the fluid’s equation', unit: 'kg/m³', quantity: 'density' },
      R,
      T,
      K: { meaning: 'stiffness, slope of pressure over density by R T', unit: '1' },
      K_ref: { meaning: 'the same at the reference temperature and this density', unit: '1' },
    },
    ...near,
    compute: (v) => susceptibilityExcessOf(v.p_c!, v.delta!, v.rho_r!, v.R!, v.T!, v.K!, v.K_ref!),
    examples: [
      { p_c: 4059280, delta: 0.41, rho_r: 508, R: 81.49, T: 371, K: 0.21, K_ref: 0.74 },
      { p_c: 3629000, delta: 1.2, rho_r: 225.5, R: 143.05, T: 409, K: 0.031, K_ref: 0.61 },
    ],
  },
  {
    id: 'refrigerants.correlationLength',
    title: 'Reach of fluctuations of density near the critical point',
    result: { symbol: 'xi', ...xi },
    expression: 'xi_0 * (chi / Gamma)^(0.63 / 1.239)',
    symbols: {
      xi_0: { meaning: 'amplitude of the correlation length', unit: 'm', quantity: 'length' },
      chi: { meaning: 'excess of the reduced susceptibility', unit: '1' },
      Gamma: { meaning: 'amplitude of the susceptibility', unit: '1' },
    },
    ...near,
    compute: (v) => correlationLengthOf(v.xi_0!, v.chi!, v.Gamma!),
    examples: [
      { xi_0: 1.94e-10, chi: 0.38, Gamma: 0.0496 },
      { xi_0: 1.5e-10, chi: 4.1, Gamma: 0.052 },
    ],
  },
  {
    id: 'refrigerants.crossover',
    title: 'Share of the fluctuations that carries heat',
    result: { symbol: 'Omega', meaning: 'crossover function less its background', unit: '1' },
    expression: '2 / pi * ((1 - 1 / kappa) * atan(y) + y / kappa - (1 - exp(-1 / (1 / y + y^2 / (3 * delta^2)))))',
    symbols: {
      y: { meaning: 'correlation length by cut-off length', unit: '1' },
      kappa: { meaning: 'ratio of the heat capacities', unit: '1' },
      delta,
    },
    ...near,
    compute: (v) => crossoverOf(v.y!, v.kappa!, v.delta!),
    examples: [
      { y: 1.1, kappa: 2.9, delta: 0.41 },
      { y: 4.7, kappa: 21, delta: 1.2 },
    ],
  },
  {
    id: 'refrigerants.criticalConductivity',
    title: 'Gain of thermal conductivity near the critical point',
    result: { symbol: 'lambda_c', meaning: 'gain near the critical point', unit: 'W/(m K)' },
    expression: 'R_0 * 1.3806488e-23 * T / (6 * pi * eta * xi) * rho * cp * Omega',
    symbols: {
      R_0: { meaning: 'universal amplitude, 1.01 to 1.03', unit: '1' },
      T,
      eta,
      xi,
      rho,
      cp,
      Omega: { meaning: 'share of the fluctuations that carries heat', unit: '1' },
    },
    ...near,
    compute: (v) => criticalConductivityOf(v.R_0!, v.T!, v.rho!, v.cp!, v.eta!, v.xi!, v.Omega!),
    examples: [
      { R_0: 1.03, T: 371, rho: 208, cp: 4100, eta: 1.74e-5, xi: 5.5e-10, Omega: 0.31 },
      { R_0: 1.02, T: 305, rho: 420, cp: 28000, eta: 2.9e-5, xi: 1.4e-9, Omega: 0.72 },
    ],
  },
];
