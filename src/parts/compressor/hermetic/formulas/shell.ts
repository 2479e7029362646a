// Formula records of the wall's balance and of the shell's.

import type { Formula } from '../../../../quantities/index.ts';
import { dischargeEnthalpyOf, lossesToWall, shellHeatOf, wallTemperature } from '../shell.ts';
import { symbols, winandy } from './symbols.ts';

const file = 'src/parts/compressor/hermetic/shell.ts';

export const shellFormulas: readonly Formula[] = [
  {
    id: 'compressor.lossesToWall',
    title: 'Losses that the wall gets',
    result: { symbol: 'P_w', ...symbols.losses },
    expression: 'W - W_in',
    symbols: { W: symbols.power, W_in: symbols.internalPower },
    source: 'first law',
    validity: 'steady running',
    file,
    compute: ({ W, W_in }) => lossesToWall(W!, W_in!),
    examples: [
      { W: 165, W_in: 80 },
      { W: 99, W_in: 51 },
    ],
  },
  {
    id: 'compressor.wallTemperature',
    title: 'Temperature of the wall from its balance',
    result: { symbol: 'T_w', ...symbols.wall },
    expression: '(P_w + UA * T_amb + C_su * T_1 + C_ex * T_e) / (UA + C_su + C_ex)',
    symbols: {
      P_w: symbols.losses,
      UA: symbols.shellConductance,
      T_amb: symbols.surroundings,
      C_su: symbols.suctionCapacity,
      T_1: symbols.suctionTemperature,
      C_ex: symbols.dischargeCapacity,
      T_e: symbols.compressedTemperature,
    },
    source: winandy,
    validity: 'one temperature for shell, motor and pump; steady running',
    file,
    compute: ({ P_w, UA, T_amb, C_su, T_1, C_ex, T_e }) => wallTemperature(P_w!, UA!, T_amb!, C_su!, T_1!, C_ex!, T_e!),
    examples: [
      { P_w: 60, UA: 2, T_amb: 295, C_su: 0.4, T_1: 280, C_ex: 0.6, T_e: 350 },
      { P_w: 41, UA: 1.3, T_amb: 288, C_su: 0.8, T_1: 301, C_ex: 0.5, T_e: 338 },
    ],
  },
  {
    id: 'compressor.heatOfShell',
    title: 'Heat that leaves through the shell',
    result: { symbol: 'Q_s', ...symbols.shellHeat },
    expression: 'UA * (T_w - T_amb)',
    symbols: { UA: symbols.shellConductance, T_w: symbols.wall, T_amb: symbols.surroundings },
    source: 'definition of the conductance',
    validity: 'below 0 where the air around the shell is the warmer one',
    file,
    compute: ({ UA, T_w, T_amb }) => shellHeatOf(UA!, T_w!, T_amb!),
    examples: [
      { UA: 2, T_w: 324, T_amb: 295 },
      { UA: 1.3, T_w: 331, T_amb: 288 },
    ],
  },
  {
    id: 'compressor.enthalpyAfterShell',
    title: 'Discharge enthalpy from the energy balance of the shell',
    result: { symbol: 'h_2', ...symbols.dischargeEnthalpy },
    expression: 'h_1 + (W - Q_s) / m',
    symbols: { h_1: symbols.inletEnthalpy, W: symbols.power, Q_s: symbols.shellHeat, m: symbols.massFlow },
    source: 'first law',
    validity: 'steady running',
    file,
    compute: ({ h_1, W, Q_s, m }) => dischargeEnthalpyOf(h_1!, W!, Q_s!, m!),
    examples: [
      { h_1: 4e5, W: 120, Q_s: 60, m: 1e-3 },
      { h_1: 6.1e5, W: 160, Q_s: 71, m: 8.4e-4 },
    ],
  },
];
