// Formula records of the gas on its way through a hermetic machine.

import type { Formula } from '../../../../quantities/index.ts';
import {
  exchangedCapacity,
  fillingEnthalpy,
  heatAtWall,
  leakageFlow,
  leakagePressureRatio,
  leakingExponent,
  openingLoss,
  powerToGas,
  pressureInEmptying,
  pressureInFilling,
  pumpedFlow,
  shaftPowerOf,
  transferUnits,
  wallEffectiveness,
} from '../gas-path.ts';
import { referenceSweptDensity } from '../parameters.ts';
import { symbols, winandy } from './symbols.ts';

const n = leakingExponent;
const file = 'src/parts/compressor/hermetic/gas-path.ts';

const openings: readonly Formula[] = [
  {
    id: 'compressor.openingLoss',
    title: 'Pressure lost in an opening',
    result: { symbol: 'dp', ...symbols.openingLoss },
    expression: '0.5 * rho * (u * m / (rho * V_d * f_r))^2',
    symbols: {
      u: symbols.velocity,
      m: symbols.massFlow,
      rho: symbols.openingDensity,
      V_d: symbols.displacement,
      f_r: symbols.ratedFrequency,
    },
    source: winandy,
    validity: 'suction path: up to half of the pressure',
    file,
    compute: ({ u, m, rho, V_d, f_r }) => openingLoss(u!, m!, rho!, V_d!, f_r!),
    examples: [
      { u: 15, m: 1e-3, rho: 5, V_d: 8e-6, f_r: 50 },
      { u: 62, m: 8.4e-4, rho: 31, V_d: 1.35e-5, f_r: 60 },
    ],
  },
  {
    id: 'compressor.fillingPressure',
    title: 'Pressure while the cylinder fills',
    result: { symbol: 'p_f', ...symbols.fillingPressure },
    expression: 'p_s - dp',
    symbols: { p_s: symbols.suctionPressure, dp: symbols.openingLoss },
    source: 'definition',
    validity: 'steady flow',
    file,
    compute: ({ p_s, dp }) => pressureInFilling(p_s!, dp!),
    examples: [
      { p_s: 1.2e5, dp: 900 },
      { p_s: 3.1e5, dp: 2200 },
    ],
  },
  {
    id: 'compressor.emptyingPressure',
    title: 'Pressure while the cylinder empties',
    result: { symbol: 'p_e', ...symbols.emptyingPressure },
    expression: 'p_d + dp',
    symbols: { p_d: symbols.dischargePressure, dp: symbols.openingLoss },
    source: 'definition',
    validity: 'steady flow',
    file,
    compute: ({ p_d, dp }) => pressureInEmptying(p_d!, dp!),
    examples: [
      { p_d: 1.4e6, dp: 9000 },
      { p_d: 5.3e5, dp: 4100 },
    ],
  },
];

const atTheWall: readonly Formula[] = [
  {
    id: 'compressor.transferUnits',
    title: 'Transfer units between gas and wall',
    result: { symbol: 'NTU', ...symbols.units },
    expression: `NTU_r * (m / (V_d * f_r * ${referenceSweptDensity}))^(-0.2)`,
    symbols: {
      NTU_r: symbols.referenceUnits,
      m: symbols.massFlow,
      V_d: symbols.displacement,
      f_r: symbols.ratedFrequency,
    },
    source: `${winandy}: AU as flow^0.8`,
    validity: 'turbulent films',
    file,
    compute: ({ NTU_r, m, V_d, f_r }) => transferUnits(NTU_r!, m!, V_d!, f_r!),
    examples: [
      { NTU_r: 0.6, m: 1e-3, V_d: 8e-6, f_r: 50 },
      { NTU_r: 0.9, m: 8.4e-4, V_d: 1.35e-5, f_r: 60 },
    ],
  },
  {
    id: 'compressor.wallEffectiveness',
    title: 'Effectiveness of gas along the wall',
    result: { symbol: 'eps', ...symbols.effectiveness },
    expression: '1 - exp(-NTU)',
    symbols: { NTU: symbols.units },
    source: 'exchanger with one side of one temperature, as in textbooks',
    validity: 'wall of one temperature',
    file,
    compute: ({ NTU }) => wallEffectiveness(NTU!),
    examples: [{ NTU: 0.6 }, { NTU: 1.3 }],
  },
  {
    id: 'compressor.exchangedCapacity',
    title: 'Heat exchanged per kelvin',
    result: { symbol: 'C_x', ...symbols.capacity },
    expression: 'eps * m * c_p',
    symbols: { eps: symbols.effectiveness, m: symbols.massFlow, c_p: symbols.heatCapacity },
    source: 'definition of the effectiveness',
    validity: 'gas whose heat capacity changes little on the way',
    file,
    compute: ({ eps, m, c_p }) => exchangedCapacity(eps!, m!, c_p!),
    examples: [
      { eps: 0.45, m: 1e-3, c_p: 880 },
      { eps: 0.6, m: 8.4e-4, c_p: 1750 },
    ],
  },
  {
    id: 'compressor.heatAtWall',
    title: 'Heat exchanged with the wall',
    result: { symbol: 'Q', meaning: 'heat exchanged with the wall', unit: 'W', quantity: 'power' },
    expression: 'C_x * (T_hot - T_cold)',
    symbols: { C_x: symbols.capacity, T_hot: symbols.hot, T_cold: symbols.cold },
    source: 'definition of the effectiveness',
    validity: 'below 0 where the side named hot is the colder one',
    file,
    compute: ({ C_x, T_hot, T_cold }) => heatAtWall(C_x!, T_hot!, T_cold!),
    examples: [
      { C_x: 0.4, T_hot: 325, T_cold: 280 },
      { C_x: 0.7, T_hot: 340, T_cold: 352 },
    ],
  },
];

const leak: readonly Formula[] = [
  {
    id: 'compressor.leakagePressureRatio',
    title: 'Pressure ratio in the leak',
    result: { symbol: 'r_l', ...symbols.leakRatio },
    expression: `max(p_f / p_e, (2 / (${n} + 1))^(${n} / (${n} - 1)))`,
    symbols: { p_f: symbols.fillingPressure, p_e: symbols.emptyingPressure },
    source: 'choked nozzle, as in textbooks; exponent 1.1 from memory',
    validity: 'exponent 1.1',
    file,
    compute: ({ p_f, p_e }) => leakagePressureRatio(p_f!, p_e!),
    examples: [
      { p_f: 1.2e5, p_e: 1.4e6 },
      { p_f: 8e5, p_e: 1e6 },
    ],
  },
  {
    id: 'compressor.leakage',
    title: 'Flow that leaks back to suction',
    result: { symbol: 'm_l', ...symbols.leakage },
    expression: `lambda * V_d^(2/3) * sqrt(2 * ${n} / (${n} - 1) * p_e * rho_e * (r_l^(2 / ${n}) - r_l^((${n} + 1) / ${n})))`,
    symbols: {
      lambda: symbols.leakageRatio,
      V_d: symbols.displacement,
      p_e: symbols.emptyingPressure,
      rho_e: symbols.compressedDensity,
      r_l: symbols.leakRatio,
    },
    source: `isentropic nozzle, as in textbooks; a leak as a nozzle after ${winandy}`,
    validity: 'exponent 1.1; friction is part of the opening',
    file,
    compute: ({ lambda, V_d, p_e, rho_e, r_l }) => leakageFlow(lambda!, V_d!, p_e!, rho_e!, r_l!),
    examples: [
      { lambda: 1e-4, V_d: 8e-6, p_e: 1e6, rho_e: 40, r_l: 0.8 },
      { lambda: 3e-5, V_d: 1.35e-5, p_e: 5.5e5, rho_e: 13, r_l: 0.62 },
    ],
  },
  {
    id: 'compressor.fillingEnthalpy',
    title: 'Enthalpy of the gas in the filled cylinder',
    result: { symbol: 'h_f', ...symbols.fillingEnthalpy },
    expression: '(m * h_1 + Q_su + m_l * h_e) / (m + m_l)',
    symbols: {
      m: symbols.massFlow,
      h_1: symbols.inletEnthalpy,
      Q_su: symbols.suctionHeat,
      m_l: symbols.leakage,
      h_e: symbols.compressedEnthalpy,
    },
    source: 'first law',
    validity: 'what leaked back mixes before the cylinder closes',
    file,
    compute: ({ m, h_1, Q_su, m_l, h_e }) => fillingEnthalpy(m!, h_1!, Q_su!, m_l!, h_e!),
    examples: [
      { m: 1e-3, h_1: 4e5, Q_su: 10, m_l: 1e-4, h_e: 4.6e5 },
      { m: 8.4e-4, h_1: 6.1e5, Q_su: 31, m_l: 2e-5, h_e: 7.2e5 },
    ],
  },
];

const cylinder: readonly Formula[] = [
  {
    id: 'compressor.pumpedFlow',
    title: 'Flow that the stroke leaves after re-expansion and leakage',
    result: { symbol: 'm', ...symbols.massFlow },
    expression: 'rho_f * V_d * N * (1 - C * (rho_e / rho_f - 1)) - m_l',
    symbols: {
      rho_f: symbols.fillingDensity,
      rho_e: symbols.compressedDensity,
      V_d: symbols.displacement,
      N: symbols.speed,
      C: symbols.clearanceRatio,
      m_l: symbols.leakage,
    },
    source: winandy,
    validity: 'isentropic re-expansion; above 0',
    file,
    compute: ({ rho_f, rho_e, V_d, N, C, m_l }) => pumpedFlow(rho_f!, rho_e!, V_d!, N!, C!, m_l!),
    examples: [
      { rho_f: 5, rho_e: 30, V_d: 8e-6, N: 49, C: 0.03, m_l: 2e-5 },
      { rho_f: 1.4, rho_e: 12, V_d: 1.35e-5, N: 58, C: 0.02, m_l: 1e-5 },
    ],
  },
  {
    id: 'compressor.internalPower',
    title: 'Power given to the gas',
    result: { symbol: 'W_in', ...symbols.internalPower },
    expression: '(m + m_l) * (h_e - h_f)',
    symbols: {
      m: symbols.massFlow,
      m_l: symbols.leakage,
      h_e: symbols.compressedEnthalpy,
      h_f: symbols.fillingEnthalpy,
    },
    source: 'first law; isentropic compression',
    validity: 'what leaks back is compressed too',
    file,
    compute: ({ m, m_l, h_e, h_f }) => powerToGas(m!, m_l!, h_e!, h_f!),
    examples: [
      { m: 1e-3, m_l: 5e-5, h_e: 4.7e5, h_f: 4.1e5 },
      { m: 8.4e-4, m_l: 2e-5, h_e: 7.3e5, h_f: 6.3e5 },
    ],
  },
  {
    id: 'compressor.shaftPower',
    title: 'Power at the shaft: proportional plus constant losses',
    result: { symbol: 'W_sh', ...symbols.shaftPower },
    expression: 'W_in * (1 + alpha) + p_fr * V_d * N',
    symbols: {
      W_in: symbols.internalPower,
      alpha: symbols.proportionalLoss,
      p_fr: symbols.frictionPressure,
      V_d: symbols.displacement,
      N: symbols.speed,
    },
    source: winandy,
    validity: 'oil and bearings as warm as they run',
    file,
    compute: ({ W_in, alpha, p_fr, V_d, N }) => shaftPowerOf(W_in!, alpha!, p_fr!, V_d!, N!),
    examples: [
      { W_in: 80, alpha: 0.1, p_fr: 2.5e4, V_d: 8e-6, N: 49 },
      { W_in: 61, alpha: 0.06, p_fr: 1.8e4, V_d: 1.35e-5, N: 58 },
    ],
  },
];

export const gasPathFormulas: readonly Formula[] = [...openings, ...atTheWall, ...leak, ...cylinder];
