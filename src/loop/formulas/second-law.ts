// Formula records of the loop's second law: exergy destroyed by part, minimum work, second-law efficiency; each computed
// by the very function the engine runs.

import type { Formula, FormulaSymbol } from '../../quantities/index.ts';
import { enthalpyDifference } from '../energy.ts';
import { exergyDestroyedAdiabatic, exergyDestroyedWithHeat, minimumWork, secondLawEfficiency } from '../exergy.ts';

const energyFile = 'src/loop/energy.ts';
const exergyFile = 'src/loop/exergy.ts';
const cengel = 'Çengel & Boles, Thermodynamics, 8th ed., section 11-5 (from memory of the source)';

const enthalpy = (meaning: string): FormulaSymbol => ({ meaning, unit: 'J/kg' });
const entropy = (meaning: string): FormulaSymbol => ({ meaning, unit: 'J/(kg K)' });
const kelvin = (meaning: string): FormulaSymbol => ({ meaning, unit: 'K', quantity: 'temperature' });

export const secondLawFormulas: readonly Formula[] = [
  {
    id: 'loop.exergyDestroyedAdiabatic',
    title: 'Exergy destroyed without heat exchange (compressor, expansion)',
    result: { symbol: 'x', ...enthalpy('exergy destroyed per kilogram') },
    expression: 'T_0 * (s_out - s_in)',
    symbols: {
      T_0: kelvin('dead state'),
      s_in: entropy('entropy at the inlet'),
      s_out: entropy('entropy at the outlet'),
    },
    source: cengel,
    validity: 'steady, adiabatic',
    file: exergyFile,
    compute: ({ T_0, s_in, s_out }) => exergyDestroyedAdiabatic(T_0!, s_in!, s_out!),
    examples: [
      { T_0: 298.15, s_in: 1733, s_out: 1788 },
      { T_0: 300, s_in: 1190, s_out: 1214 },
    ],
  },
  {
    id: 'loop.exergyDestroyedWithHeat',
    title: 'Exergy destroyed with heat to or from a body of constant temperature (condenser, evaporator)',
    result: { symbol: 'x', ...enthalpy('exergy destroyed per kilogram') },
    expression: 'T_0 * (s_out - s_in + q / T_body)',
    symbols: {
      T_0: kelvin('dead state'),
      s_in: entropy('entropy at the inlet'),
      s_out: entropy('entropy at the outlet'),
      q: enthalpy('heat given to the body; negative where it is taken'),
      T_body: kelvin('temperature of the body'),
    },
    source: cengel,
    validity: 'steady; body of constant temperature',
    file: exergyFile,
    compute: ({ T_0, s_in, s_out, q, T_body }) => exergyDestroyedWithHeat(T_0!, s_in!, s_out!, q!, T_body!),
    examples: [
      { T_0: 298.15, s_in: 1788, s_out: 1190, q: 186e3, T_body: 299.15 },
      { T_0: 300, s_in: 1214, s_out: 1740, q: -139e3, T_body: 291.15 },
    ],
  },
  {
    id: 'loop.minimumWork',
    title: 'Least work that could move the same heats',
    result: { symbol: 'w_min', ...enthalpy('minimum work per kilogram') },
    expression: 'q_H * (1 - T_0 / T_H) - q_L * (1 - T_0 / T_L)',
    symbols: {
      q_H: enthalpy('heat delivered per kilogram'),
      q_L: enthalpy('heat taken per kilogram'),
      T_0: kelvin('dead state'),
      T_H: kelvin('temperature of the body heated'),
      T_L: kelvin('temperature of the body cooled'),
    },
    source: cengel,
    validity: 'bodies of constant temperature',
    file: exergyFile,
    compute: ({ q_H, q_L, T_0, T_H, T_L }) => minimumWork(q_H!, q_L!, T_H!, T_L!, T_0!),
    examples: [
      { q_H: 186e3, q_L: 135e3, T_0: 298.15, T_H: 299.65, T_L: 291.15 },
      { q_H: 324e3, q_L: 244.5e3, T_0: 285, T_H: 318, T_L: 270 },
    ],
  },
  {
    id: 'loop.exergyDestruction',
    title: 'Exergy destroyed in the whole cycle',
    result: { symbol: 'x', ...enthalpy('exergy destroyed per kilogram') },
    expression: 'w - w_min',
    symbols: { w: enthalpy('specific work'), w_min: enthalpy('minimum work per kilogram') },
    source: cengel,
    validity: 'equals the sum over the four parts; a result is given only where both agree to 1e-9',
    file: energyFile,
    compute: ({ w, w_min }) => enthalpyDifference(w!, w_min!),
    examples: [
      { w: 51e3, w_min: 4100 },
      { w: 79.5e3, w_min: 12250 },
    ],
  },
  {
    id: 'loop.secondLawEfficiency',
    title: 'Second-law efficiency',
    result: { symbol: 'eta_II', meaning: 'minimum work by work', unit: '1' },
    expression: 'w_min / w',
    symbols: { w_min: enthalpy('minimum work per kilogram'), w: enthalpy('specific work') },
    source: cengel,
    validity: 'work above 0',
    file: exergyFile,
    compute: ({ w_min, w }) => secondLawEfficiency(w_min!, w!),
    examples: [
      { w_min: 4100, w: 51e3 },
      { w_min: 12250, w: 79.5e3 },
    ],
  },
];
