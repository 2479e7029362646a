// The formula records of the air in a hood with a fan.

import type { Formula, FormulaSymbol } from '../../quantities/index.ts';
import {
  hoodAirHeat,
  hoodCondensate,
  hoodInnerTemperature,
  hoodRadiation,
  hoodTemperature,
  hoodVapourPressure,
  wallVapourCoefficient,
} from '../cover/hood-air.ts';

const file = 'src/tank/cover/hood-air.ts';
const kelvin = (meaning: string): FormulaSymbol => ({ meaning, unit: 'K', quantity: 'temperature' });
const pascal = (meaning: string): FormulaSymbol => ({ meaning, unit: 'Pa', quantity: 'pressure' });
const watt = (meaning: string): FormulaSymbol => ({ meaning, unit: 'W', quantity: 'power' });
const conductance = (meaning: string): FormulaSymbol => ({ meaning, unit: 'W/K' });
const square = (meaning: string): FormulaSymbol => ({ meaning, unit: 'm²', quantity: 'area' });
const T_w = kelvin('temperature of the water');
const T_h = kelvin('temperature of the air in the hood');
const T_l = kelvin('temperature of the inner faces');
const T_r = kelvin('temperature of the room');
const C = conductance('air drawn through times its specific heat');
const G_l = conductance('inner faces times their convective coefficient');
const K_l: FormulaSymbol = { meaning: 'vapour coefficient of the inner faces', unit: 'kg/(s m² Pa)' };
const mixed = 'steady state; well-mixed air; one temperature for all inner faces';

/** The quadratic of the vapour balance: a x² − b x + c = 0 with these. */
const a = '(KA + G)';
const b = '(m * (0.621945 + W_r) + (KA + G) * p + (KA * p_w + G * p_l))';
const c = '(p * (m * W_r + KA * p_w + G * p_l))';

export const hoodFormulas: readonly Formula[] = [
  {
    id: 'tank.hoodVapourPressure',
    title: 'Vapour pressure of the air in a hood',
    result: { symbol: 'p_h', ...pascal('vapour pressure in the hood') },
    expression: `2 * ${c} / (${b} + sqrt(${b}^2 - 4 * ${a} * ${c}))`,
    symbols: {
      m: { meaning: 'dry air drawn through', unit: 'kg/s', quantity: 'massFlow' },
      W_r: { meaning: 'humidity ratio of the room', unit: 'kg/kg', quantity: 'humidityRatio' },
      KA: { meaning: 'water surface times its evaporation coefficient', unit: 'kg/(s Pa)' },
      p_w: pascal('vapour pressure over the water'),
      G: { meaning: 'inner faces times their vapour coefficient; 0 where they are dry', unit: 'kg/(s Pa)' },
      p_l: pascal('saturation vapour pressure at the inner faces'),
      p: pascal('atmospheric pressure'),
    },
    source: 'mass balance m (W_h − W_r) = K A (p_w − p_h) − G (p_h − p_l), a quadratic in p_h',
    validity: mixed,
    file,
    compute: (v) => hoodVapourPressure(v.m!, v.W_r!, v.KA!, v.p_w!, v.G!, v.p_l!, v.p!),
    examples: [
      { m: 2.36e-3, W_r: 0.0082, KA: 2e-8, p_w: 3363, G: 0, p_l: 2810, p: 101325 },
      { m: 2.4e-4, W_r: 0.0064, KA: 1.8e-8, p_w: 3290, G: 3.1e-8, p_l: 2750, p: 89874.5 },
    ],
  },
  {
    id: 'tank.hoodTemperature',
    title: 'Temperature of the air in a hood',
    result: { symbol: 'T_h', ...T_h },
    expression: '(G_w * T_w + G_l * T_l + C * T_r) / (G_w + G_l + C)',
    symbols: { G_w: conductance('water surface times its convective coefficient'), T_w, G_l, T_l, C, T_r },
    source: 'heat balance of the air',
    validity: mixed,
    file,
    compute: (v) => hoodTemperature(v.G_w!, v.T_w!, v.G_l!, v.T_l!, v.C!, v.T_r!),
    examples: [
      { G_w: 3.1, T_w: 299.15, G_l: 5.2, T_l: 296.1, C: 2.4, T_r: 295.15 },
      { G_w: 2.4, T_w: 298.3, G_l: 4.4, T_l: 293.9, C: 0.24, T_r: 290.4 },
    ],
  },
  {
    id: 'tank.hoodRadiation',
    title: 'Radiation from the water to the inside of a hood',
    result: { symbol: 'Q_r', ...watt('net radiation') },
    expression: '5.670374419e-8 * A * (T_w^4 - T_l^4) / (1 / 0.95 + A / A_l * (1 / 0.95 - 1))',
    symbols: { A: square('water surface'), A_l: square('inner faces of hood and panels above the water'), T_w, T_l },
    source: 'two grey surfaces that form an enclosure (textbooks); emissivity of water 0.95 on both',
    validity: 'inner faces wet or of like emissivity',
    file,
    compute: (v) => hoodRadiation(v.A!, v.A_l!, v.T_w!, v.T_l!),
    examples: [
      { A: 0.6, A_l: 1.9, T_w: 299.15, T_l: 296.1 },
      { A: 0.8, A_l: 2.6, T_w: 298.3, T_l: 293.9 },
    ],
  },
  {
    id: 'tank.wallVapourCoefficient',
    title: 'Vapour coefficient of the inside of a hood',
    result: { symbol: 'K_l', ...K_l },
    expression: '0.622 * h_l / (1006 * p)',
    symbols: {
      h_l: { meaning: 'convective coefficient inside', unit: 'W/(m² K)' },
      p: pascal('atmospheric pressure'),
    },
    source: 'Bowen, Physical Review 27 (1926) 779; Lewis number taken as 1',
    validity: 'air and water; about 10 %',
    file,
    compute: (v) => wallVapourCoefficient(v.h_l!, v.p!),
    examples: [
      { h_l: 3.3, p: 101325 },
      { h_l: 2.9, p: 89874.5 },
    ],
  },
  {
    id: 'tank.hoodCondensate',
    title: 'Vapour that condenses inside a hood and runs back',
    result: { symbol: 'm_c', meaning: 'condensate', unit: 'kg/s', quantity: 'evaporation' },
    expression: 'K_l * A_l * max(0, p_h - p_l)',
    symbols: {
      K_l,
      A_l: square('inner faces of hood and panels above the water'),
      p_h: pascal('vapour pressure in the hood'),
      p_l: pascal('saturation vapour pressure at the inner faces'),
    },
    source: "Dalton's law of evaporation",
    validity: mixed,
    file,
    compute: (v) => hoodCondensate(v.K_l!, v.A_l!, v.p_h!, v.p_l!),
    examples: [
      { K_l: 2e-8, A_l: 1.9, p_h: 3010, p_l: 2810 },
      { K_l: 1.8e-8, A_l: 2.6, p_h: 2410, p_l: 2750 },
    ],
  },
  {
    id: 'tank.hoodAirHeat',
    title: 'Warmth carried to the room by the air of a hood',
    result: { symbol: 'Q_h', ...watt('sensible heat') },
    expression: 'C * (T_h - T_r)',
    symbols: { C, T_h, T_r },
    source: 'heat balance',
    validity: mixed,
    file,
    compute: (v) => hoodAirHeat(v.C!, v.T_h!, v.T_r!),
    examples: [
      { C: 2.4, T_h: 296.85, T_r: 295.15 },
      { C: 0.24, T_h: 294.9, T_r: 290.4 },
    ],
  },
  {
    id: 'tank.hoodInnerTemperature',
    title: 'Temperature of the inside of a hood',
    result: { symbol: 'T_l', ...T_l },
    expression: 'T_h + (Q_r + m_c * h_fg - Q_out) / G_l',
    symbols: {
      T_h,
      Q_r: watt('radiation from the water'),
      m_c: { meaning: 'condensate', unit: 'kg/s', quantity: 'evaporation' },
      h_fg: { meaning: 'latent heat of evaporation', unit: 'J/kg' },
      Q_out: watt('heat through walls and panels above the water'),
      G_l,
    },
    source: 'heat balance, solved for the temperature on which all of its terms depend',
    validity: mixed,
    file,
    compute: (v) => hoodInnerTemperature(v.T_h!, v.Q_r!, v.m_c! * v.h_fg!, v.Q_out!, v.G_l!),
    examples: [
      { T_h: 296.85, Q_r: 10.4, m_c: 3.3e-6, h_fg: 2.4394e6, Q_out: 25.2, G_l: 5.2 },
      { T_h: 294.9, Q_r: 14.1, m_c: 5.1e-6, h_fg: 2.4412e6, Q_out: 33.9, G_l: 4.4 },
    ],
  },
];
