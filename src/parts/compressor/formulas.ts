// Formula records of the compressor: the same functions the engine runs, in a form that people read and machines evaluate.

import type { Formula, FormulaSymbol } from '../../quantities/index.ts';
import { benchFormulas } from './bench/formulas.ts';
import { domeFormulas } from './classes/dome.ts';
import { limitFormulas } from './envelope/limit-distance.ts';
import { nameplateFormulas } from './envelope/nameplate.ts';
import { startingFormulas } from './envelope/starting.ts';
import { hermeticFormulas } from './hermetic/formulas/index.ts';
import { identificationFormulas } from './identification/formulas.ts';
import {
  compressorMassFlow,
  compressorPower,
  dischargeEnthalpy,
  isentropicWorkOf,
  overallEfficiency,
  pressureRatioOf,
  shellHeatOf,
  volumetricEfficiency,
} from './point.ts';
import { polynomialFormulas } from './polynomial/formulas.ts';
import { compressionEfficiencyFromPower, displacementFromFlow, massFlowFromCapacity } from './rating.ts';
import { runningFormulas } from './running-formulas.ts';

const pointFile = 'src/parts/compressor/point.ts';
const ratingFile = 'src/parts/compressor/rating.ts';

const massFlow: FormulaSymbol = { meaning: 'mass flow of refrigerant', unit: 'kg/s', quantity: 'massFlow' };
const displacement: FormulaSymbol = { meaning: 'displacement per revolution', unit: 'm³', quantity: 'displacement' };
const speed: FormulaSymbol = { meaning: 'speed of the shaft', unit: '1/s', quantity: 'frequency' };
const density: FormulaSymbol = {
  meaning: 'density of the gas at the inlet of the shell',
  unit: 'kg/m³',
  quantity: 'density',
};
const flowEfficiency: FormulaSymbol = { meaning: 'volumetric efficiency', unit: '1' };
const isentropicWork: FormulaSymbol = { meaning: 'isentropic work, h_2s − h_1', unit: 'J/kg' };
const compression: FormulaSymbol = { meaning: 'compression efficiency', unit: '1' };
const friction: FormulaSymbol = {
  meaning: 'friction pressure: constant losses per swept volume flow',
  unit: 'Pa',
  quantity: 'pressureDifference',
};
const power: FormulaSymbol = { meaning: 'electric power', unit: 'W', quantity: 'electricPower' };
const shellShare: FormulaSymbol = { meaning: 'share of the power that leaves through the shell', unit: '1' };
const inletEnthalpy: FormulaSymbol = { meaning: 'enthalpy of the gas at the inlet of the shell', unit: 'J/kg' };

export const compressorFormulas: readonly Formula[] = [
  {
    id: 'compressor.pressureRatio',
    title: 'Pressure ratio',
    result: { symbol: 'r', meaning: 'pressure ratio', unit: '1' },
    expression: 'p_d / p_s',
    symbols: {
      p_d: { meaning: 'discharge pressure, absolute', unit: 'Pa', quantity: 'pressure' },
      p_s: { meaning: 'suction pressure, absolute', unit: 'Pa', quantity: 'pressure' },
    },
    source: 'definition',
    validity: 'absolute pressures',
    file: pointFile,
    compute: ({ p_d, p_s }) => pressureRatioOf(p_d!, p_s!),
    examples: [
      { p_d: 1.4e6, p_s: 1.2e5 },
      { p_d: 5.3e5, p_s: 7.1e4 },
    ],
  },
  {
    id: 'compressor.volumetricEfficiency',
    title: 'Volumetric efficiency of a machine with clearance',
    result: { symbol: 'eta_v', ...flowEfficiency },
    expression: 'f * (1 - C * (r^(1/n) - 1))',
    symbols: {
      f: { meaning: 'filling factor', unit: '1' },
      C: { meaning: 'clearance volume over swept volume', unit: '1' },
      n: { meaning: 'polytropic exponent of re-expansion', unit: '1' },
      r: { meaning: 'pressure ratio', unit: '1' },
    },
    source: 'clearance volumetric efficiency as in textbooks of refrigeration',
    validity: 'C 0.02 to 0.05, n 1.05 to 1.15 usual of small reciprocating machines; r from 1 to where the flow ends',
    file: pointFile,
    compute: ({ f, C, n, r }) => volumetricEfficiency(f!, C!, n!, r!),
    examples: [
      { f: 0.9, C: 0.03, n: 1.1, r: 8 },
      { f: 0.95, C: 0.015, n: 1.07, r: 4.3 },
    ],
  },
  {
    id: 'compressor.massFlow',
    title: 'Mass flow of the compressor',
    result: { symbol: 'm', ...massFlow },
    expression: 'eta_v * V_d * N * rho_s',
    symbols: { eta_v: flowEfficiency, V_d: displacement, N: speed, rho_s: density },
    source: 'definition of volumetric efficiency',
    validity: 'positive displacement',
    file: pointFile,
    compute: ({ eta_v, V_d, N, rho_s }) => compressorMassFlow(eta_v!, V_d!, N!, rho_s!),
    examples: [
      { eta_v: 0.75, V_d: 6.5e-6, N: 49, rho_s: 4.7 },
      { eta_v: 0.82, V_d: 1.3e-5, N: 58, rho_s: 2.1 },
    ],
  },
  {
    id: 'compressor.isentropicWork',
    title: 'Isentropic work',
    result: { symbol: 'dh_s', ...isentropicWork },
    expression: 'h_2s - h_1',
    symbols: {
      h_2s: { meaning: 'enthalpy at discharge pressure and the entropy of the suction gas', unit: 'J/kg' },
      h_1: inletEnthalpy,
    },
    source: 'definition',
    validity: 'both enthalpies with the same reference state',
    file: pointFile,
    compute: ({ h_2s, h_1 }) => isentropicWorkOf(h_2s!, h_1!),
    examples: [
      { h_2s: 4.98e5, h_1: 4.3e5 },
      { h_2s: 7.05e5, h_1: 6.1e5 },
    ],
  },
  {
    id: 'compressor.power',
    title: 'Electric power: proportional plus constant losses',
    result: { symbol: 'W', ...power },
    expression: 'm * dh_s / eta_c + p_f * V_d * N',
    symbols: { m: massFlow, dh_s: isentropicWork, eta_c: compression, p_f: friction, V_d: displacement, N: speed },
    source:
      'structure after Winandy, Saavedra & Lebrun 2002, Int. J. Thermal Sciences 41, from memory; supported by the R600a rows of F. Fortkamp 2022',
    validity: 'near the conditions that fixed eta_c and p_f; pressure ratio 4 to 13 in the R600a rows',
    file: pointFile,
    compute: ({ m, dh_s, eta_c, p_f, V_d, N }) => compressorPower(m!, dh_s!, eta_c!, p_f!, V_d!, N!),
    examples: [
      { m: 1.1e-3, dh_s: 6.8e4, eta_c: 0.55, p_f: 6e4, V_d: 6.5e-6, N: 49 },
      { m: 8.4e-4, dh_s: 9.5e4, eta_c: 0.6, p_f: 3.2e4, V_d: 1.35e-5, N: 57.5 },
    ],
  },
  {
    id: 'compressor.overallEfficiency',
    title: 'Overall isentropic efficiency',
    result: { symbol: 'eta_o', meaning: 'isentropic power over electric power', unit: '1', quantity: 'fraction' },
    expression: 'm * dh_s / W',
    symbols: { m: massFlow, dh_s: isentropicWork, W: power },
    source: 'definition',
    validity: 'any machine; never above 1',
    file: pointFile,
    compute: ({ m, dh_s, W }) => overallEfficiency(m!, dh_s!, W!),
    examples: [
      { m: 1.1e-3, dh_s: 6.8e4, W: 155 },
      { m: 8.4e-4, dh_s: 9.5e4, W: 160 },
    ],
  },
  {
    id: 'compressor.shellHeat',
    title: 'Heat that leaves through the shell',
    result: { symbol: 'Q_s', meaning: 'heat that leaves through the shell', unit: 'W', quantity: 'power' },
    expression: 'f_s * W',
    symbols: { f_s: shellShare, W: power },
    source: 'share by class of machine: typical range, from memory',
    validity: 'steady running',
    file: pointFile,
    compute: ({ f_s, W }) => shellHeatOf(f_s!, W!),
    examples: [
      { f_s: 0.45, W: 155 },
      { f_s: 0.1, W: 620 },
    ],
  },
  {
    id: 'compressor.dischargeEnthalpy',
    title: 'Discharge enthalpy from the energy balance of the shell',
    result: { symbol: 'h_2', meaning: 'enthalpy in the discharge line', unit: 'J/kg' },
    expression: 'h_1 + (1 - f_s) * W / m',
    symbols: { h_1: inletEnthalpy, f_s: shellShare, W: power, m: massFlow },
    source: 'first law',
    validity: 'steady running',
    file: pointFile,
    compute: ({ h_1, f_s, W, m }) => dischargeEnthalpy(h_1!, f_s!, W!, m!),
    examples: [
      { h_1: 4.3e5, f_s: 0.45, W: 155, m: 1.1e-3 },
      { h_1: 6.1e5, f_s: 0.3, W: 160, m: 8.4e-4 },
    ],
  },
  {
    id: 'compressor.massFlowFromCapacity',
    title: 'Mass flow that a rated capacity implies',
    result: { symbol: 'm', ...massFlow },
    expression: 'Q_e / (h_1 - h_l)',
    symbols: {
      Q_e: { meaning: 'rated refrigerating capacity', unit: 'W', quantity: 'power' },
      h_1: inletEnthalpy,
      h_l: { meaning: 'enthalpy of the saturated liquid at the rating liquid temperature', unit: 'J/kg' },
    },
    source: 'first law on the rated evaporator',
    validity: 'the four temperatures of the rating known',
    file: ratingFile,
    compute: ({ Q_e, h_1, h_l }) => massFlowFromCapacity(Q_e!, h_1!, h_l!),
    examples: [
      { Q_e: 282, h_1: 6.1e5, h_l: 2.75e5 },
      { Q_e: 170, h_1: 4.3e5, h_l: 2.45e5 },
    ],
  },
  {
    id: 'compressor.displacementFromRating',
    title: 'Displacement that a rated flow implies',
    result: { symbol: 'V_d', ...displacement },
    expression: 'm / (eta_v * N * rho_s)',
    symbols: { m: massFlow, eta_v: flowEfficiency, N: speed, rho_s: density },
    source: 'inverse of the mass flow',
    validity: 'exact at the rating point; as good as the assumed speed and volumetric efficiency',
    file: ratingFile,
    compute: ({ m, eta_v, N, rho_s }) => displacementFromFlow(m!, eta_v!, N!, rho_s!),
    examples: [
      { m: 8.4e-4, eta_v: 0.8, N: 57.5, rho_s: 1.35 },
      { m: 1.1e-3, eta_v: 0.72, N: 49, rho_s: 4.7 },
    ],
  },
  {
    id: 'compressor.compressionEfficiencyFromRating',
    title: 'Compression efficiency that a rated power implies',
    result: { symbol: 'eta_c', ...compression },
    expression: 'm * dh_s / (W - p_f * V_d * N)',
    symbols: { m: massFlow, dh_s: isentropicWork, W: power, p_f: friction, V_d: displacement, N: speed },
    source: 'inverse of the power',
    validity: 'exact at the rating point; as good as the assumed friction pressure',
    file: ratingFile,
    compute: ({ m, dh_s, W, p_f, V_d, N }) => compressionEfficiencyFromPower(m!, dh_s!, W!, p_f!, V_d!, N!),
    examples: [
      { m: 8.4e-4, dh_s: 9.5e4, W: 160, p_f: 3.2e4, V_d: 1.35e-5, N: 57.5 },
      { m: 1.1e-3, dh_s: 6.8e4, W: 160, p_f: 6e4, V_d: 6.5e-6, N: 49 },
    ],
  },
  ...benchFormulas,
  ...domeFormulas,
  ...identificationFormulas,
  ...hermeticFormulas,
  ...runningFormulas,
  ...limitFormulas,
  ...nameplateFormulas,
  ...startingFormulas,
  ...polynomialFormulas,
];
