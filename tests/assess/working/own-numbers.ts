// Numbers of a working that come from nowhere else: constants of the models and of the refrigerants' equations.

import { pointsOfSum } from '../../../src/parts/compressor/index.ts';

/**
 * Constants of the model: films, coefficients of still air, the wall of a house, days of a month, a heater's coefficient of 1,
 * one kelvin, sections of a stack; losses of the tank computed anew a little warmer and cooler, and on the way down.
 */
export const modelsOwn = [
  ...[
    'COP',
    'COP_cool',
    'R_before',
    'dT',
    'epsilon',
    'epsilon1',
    'epsilon2',
    'epsilon_w',
    'h',
    'h_c',
    'n',
    's',
    't',
    'v',
  ],
  ...['Q_warmer', 'Q_cooler', 'Q_m'],
  // Spreads of the machine's ranges, where its points put it, what it gives at them; how doubtful the model is between them.
  ...['sigma', 'z', 'X_max', 'X', 'X_given', 'T', 'T_given', 'mu', 'f', 'v'],
  // How much each point counts; levels at which coefficients are read, their scale and unit; share of a density that reaches the flow.
  ...Array.from({ length: pointsOfSum }, (_, index) => `lambda_${index + 1}`),
  ...['i', 'n', 'a', 'b', 'k_unit', 'F'],
];
/** What a fluid's equation gives at a state of the loop. */
export const ofTheEquation = [
  ...['R', 'phi_d', 'phi_t', 'phi_s', 'phi_dd', 'phi_dt', 'phi_tt', 'rho_c', 'h_zero', 's_zero'],
  ...['phi_liquid', 'phi_vapour', 'rho_liquid', 'rho_vapour'],
  // The published lines of a blend.
  ...['theta', 'T_r', 'p_r', 'n1', 'n2', 'n3', 'n4', 't1', 't2', 't3', 't4'],
];
