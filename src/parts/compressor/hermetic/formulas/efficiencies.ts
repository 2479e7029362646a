// Formula records of what tells how good a running point is.

import type { Formula } from '../../../../quantities/index.ts';
import {
  clearanceVolumetricEfficiency,
  isentropicWorkOf,
  overallEfficiency,
  pressureRatioOf,
  volumetricEfficiencyOf,
} from '../efficiencies.ts';
import { symbols } from './symbols.ts';

const file = 'src/parts/compressor/hermetic/efficiencies.ts';

export const efficiencyFormulas: readonly Formula[] = [
  {
    id: 'compressor.pressureRatio',
    title: 'Pressure ratio',
    result: { symbol: 'r', meaning: 'pressure ratio', unit: '1' },
    expression: 'p_d / p_s',
    symbols: { p_d: symbols.dischargePressure, p_s: symbols.suctionPressure },
    source: 'definition',
    validity: 'absolute pressures',
    file,
    compute: ({ p_d, p_s }) => pressureRatioOf(p_d!, p_s!),
    examples: [
      { p_d: 1.4e6, p_s: 1.2e5 },
      { p_d: 5.3e5, p_s: 7.1e4 },
    ],
  },
  {
    id: 'compressor.isentropicWork',
    title: 'Isentropic work',
    result: { symbol: 'dh_s', ...symbols.isentropicWork },
    expression: 'h_2s - h_1',
    symbols: { h_2s: symbols.isentropicEnthalpy, h_1: symbols.inletEnthalpy },
    source: 'definition',
    validity: 'both enthalpies with the same reference state',
    file,
    compute: ({ h_2s, h_1 }) => isentropicWorkOf(h_2s!, h_1!),
    examples: [
      { h_2s: 4.98e5, h_1: 4.3e5 },
      { h_2s: 7.05e5, h_1: 6.1e5 },
    ],
  },
  {
    id: 'compressor.overallEfficiency',
    title: 'Overall isentropic efficiency',
    result: { symbol: 'eta_o', meaning: 'isentropic power over electric power', unit: '1', quantity: 'fraction' },
    expression: 'm * dh_s / W',
    symbols: { m: symbols.massFlow, dh_s: symbols.isentropicWork, W: symbols.power },
    source: 'definition',
    validity: 'any machine; never above 1',
    file,
    compute: ({ m, dh_s, W }) => overallEfficiency(m!, dh_s!, W!),
    examples: [
      { m: 1.1e-3, dh_s: 6.8e4, W: 155 },
      { m: 8.4e-4, dh_s: 9.5e4, W: 160 },
    ],
  },
  {
    id: 'compressor.flowOverSwept',
    title: 'Volumetric efficiency',
    result: { symbol: 'eta_v', ...symbols.volumetricEfficiency },
    expression: 'm / (rho_1 * V_d * N)',
    symbols: {
      m: symbols.massFlow,
      rho_1: symbols.inletDensity,
      V_d: symbols.displacement,
      N: symbols.speed,
    },
    source: 'definition',
    validity: 'speed of the shaft under load',
    file,
    compute: ({ m, rho_1, V_d, N }) => volumetricEfficiencyOf(m!, rho_1!, V_d!, N!),
    examples: [
      { m: 1.6e-3, rho_1: 5, V_d: 8e-6, N: 49 },
      { m: 8.4e-4, rho_1: 1.35, V_d: 1.35e-5, N: 58 },
    ],
  },
  {
    id: 'compressor.clearanceVolumetricEfficiency',
    title: 'Volumetric efficiency that clearance alone leaves',
    result: { symbol: 'eta_vc', ...symbols.volumetricEfficiency },
    expression: '1 - C * (r^(1/n) - 1)',
    symbols: {
      C: symbols.clearanceRatio,
      n: { meaning: 'polytropic exponent of re-expansion', unit: '1' },
      r: { meaning: 'pressure ratio', unit: '1' },
    },
    source: 'clearance volumetric efficiency as in textbooks of refrigeration',
    validity: 'C 0.02 to 0.05, n 1.05 to 1.15 usual of small reciprocating machines; r from 1 to where the flow ends',
    file,
    compute: ({ C, n, r }) => clearanceVolumetricEfficiency(C!, n!, r!),
    examples: [
      { C: 0.03, n: 1.1, r: 8 },
      { C: 0.015, n: 1.07, r: 4.3 },
    ],
  },
];
