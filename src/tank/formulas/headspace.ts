// The formula records of the trapped air under a lid.

import type { Formula, FormulaSymbol } from '../../quantities/index.ts';
import {
  headspaceConvection,
  headspaceRadiation,
  headspaceVapour,
  kinematicViscosity,
  lidTemperature,
  lidVapourDensity,
  lidVapourPressure,
  nusseltHollands1975,
  rayleighNumber,
  thermalDiffusivity,
  virtualDifference,
} from '../cover/headspace.ts';

const file = 'src/tank/cover/headspace.ts';
const d: FormulaSymbol = { meaning: 'height of the trapped air', unit: 'm', quantity: 'length' };
const Nu: FormulaSymbol = { meaning: 'Nusselt number', unit: '1' };
const T_w: FormulaSymbol = { meaning: 'temperature of the water', unit: 'K', quantity: 'temperature' };
const T_l: FormulaSymbol = { meaning: 'temperature of the damp inner faces', unit: 'K', quantity: 'temperature' };

const rho: FormulaSymbol = { meaning: 'density of the trapped air', unit: 'kg/m³', quantity: 'density' };
const level = (meaning: string): FormulaSymbol => ({ meaning, unit: 'K', quantity: 'temperature' });
const difference = (meaning: string): FormulaSymbol => ({ meaning, unit: 'K', quantity: 'temperatureDifference' });
const pascal = (meaning: string): FormulaSymbol => ({ meaning, unit: 'Pa', quantity: 'pressure' });

const airFormulas: readonly Formula[] = [
  {
    id: 'tank.lidVapour',
    title: 'Vapour pressure at the underside of the lid',
    result: { symbol: 'p_l', ...pascal('vapour pressure at the lid') },
    expression: 'min(p_ws, p_w)',
    symbols: { p_ws: pascal('saturation vapour pressure at the lid'), p_w: pascal('vapour pressure over the water') },
    source: 'own simplification: a lid too warm for dew is dry, and damp air of the water stands at it',
    validity: 'steady state',
    file,
    compute: (v) => lidVapourPressure(v.p_ws!, v.p_w!),
    examples: [
      { p_ws: 2810.4, p_w: 3294.6 },
      { p_ws: 3611.2, p_w: 3294.6 },
    ],
  },
  {
    id: 'tank.lidVapourDensity',
    title: 'Vapour density at the underside of the lid',
    result: { symbol: 'rho_l', meaning: 'vapour density at the lid', unit: 'kg/m³', quantity: 'density' },
    expression: 'min(p_ws / (287.042 / 0.621945 * T_l), rho_w)',
    symbols: {
      p_ws: pascal('saturation vapour pressure at the lid'),
      T_l,
      rho_w: { meaning: 'vapour density over the water', unit: 'kg/m³', quantity: 'density' },
    },
    source: 'ideal gas; never above that over the water',
    validity: 'steady state',
    file,
    compute: (v) => lidVapourDensity(v.T_l!, v.p_ws!, v.rho_w!),
    examples: [
      { p_ws: 2810.4, T_l: 296.15, rho_w: 0.02387 },
      { p_ws: 3611.2, T_l: 300.4, rho_w: 0.02387 },
    ],
  },
  {
    id: 'tank.virtualDifference',
    title: 'Difference of the virtual temperatures',
    result: { symbol: 'dT_v', ...difference('virtual temperature at the water minus at the lid') },
    expression: 'T_vw - T_vl',
    symbols: { T_vw: level('virtual temperature at the water'), T_vl: level('virtual temperature at the lid') },
    source: 'definition',
    validity: 'any',
    file,
    compute: (v) => virtualDifference(v.T_vw!, v.T_vl!),
    examples: [
      { T_vw: 302.9, T_vl: 299.2 },
      { T_vw: 301.1, T_vl: 295.7 },
    ],
  },
  {
    id: 'tank.kinematicViscosity',
    title: 'Kinematic viscosity of the trapped air',
    result: { symbol: 'nu', meaning: 'kinematic viscosity', unit: 'm²/s' },
    expression: 'mu / rho',
    symbols: { mu: { meaning: 'dynamic viscosity', unit: 'Pa s' }, rho },
    source: 'definition',
    validity: 'any',
    file,
    compute: (v) => kinematicViscosity(v.mu!, v.rho!),
    examples: [
      { mu: 1.84e-5, rho: 1.171 },
      { mu: 1.81e-5, rho: 1.052 },
    ],
  },
  {
    id: 'tank.thermalDiffusivity',
    title: 'Thermal diffusivity of the trapped air',
    result: { symbol: 'alpha', meaning: 'thermal diffusivity', unit: 'm²/s' },
    expression: 'k / (rho * 1006)',
    symbols: { k: { meaning: 'thermal conductivity of air', unit: 'W/(m K)' }, rho },
    source: 'definition; specific heat of dry air 1006 J/(kg K)',
    validity: 'near room temperature',
    file,
    compute: (v) => thermalDiffusivity(v.k!, v.rho!),
    examples: [
      { k: 0.0261, rho: 1.171 },
      { k: 0.0257, rho: 1.052 },
    ],
  },
];

const crossingFormulas: readonly Formula[] = [
  {
    id: 'tank.rayleigh',
    title: 'Rayleigh number of the trapped air',
    result: { symbol: 'Ra', meaning: 'Rayleigh number', unit: '1' },
    expression: '9.80665 * max(0, dT_v) * d^3 / (T_vm * nu * alpha)',
    symbols: {
      dT_v: {
        meaning: 'virtual temperature at the water minus at the lid',
        unit: 'K',
        quantity: 'temperatureDifference',
      },
      d,
      T_vm: { meaning: 'mean virtual temperature', unit: 'K', quantity: 'temperature' },
      nu: { meaning: 'kinematic viscosity', unit: 'm²/s' },
      alpha: { meaning: 'thermal diffusivity', unit: 'm²/s' },
    },
    source: 'definition; virtual temperatures because damp air is lighter',
    validity: 'horizontal layer',
    file,
    compute: (v) => rayleighNumber(v.dT_v!, v.T_vm!, v.d!, v.nu!, v.alpha!),
    examples: [
      { dT_v: 3.66, d: 0.06, T_vm: 301.1, nu: 1.57e-5, alpha: 2.2e-5 },
      { dT_v: 5.1, d: 0.031, T_vm: 299.4, nu: 1.56e-5, alpha: 2.19e-5 },
    ],
  },
  {
    id: 'tank.nusseltHollands',
    title: 'Nusselt number of an air layer heated from below',
    result: { symbol: 'Nu', ...Nu },
    expression: 'Ra <= 1708 ? 1 : 1 + 1.44 * (1 - 1708 / Ra) + max(0, cbrt(Ra / 5830) - 1)',
    symbols: { Ra: { meaning: 'Rayleigh number', unit: '1' } },
    source: 'Hollands, Raithby & Konicek, Int. J. Heat Mass Transfer 18 (1975) 879; the 5830 not seen in print',
    validity: 'air, Ra to 1e8, layer much wider than high',
    file,
    compute: (v) => nusseltHollands1975(v.Ra!),
    examples: [{ Ra: 912 }, { Ra: 3.3e3 }, { Ra: 7.4e4 }],
  },
  {
    id: 'tank.headspaceConvection',
    title: 'Convection across the trapped air',
    result: { symbol: 'q_c', meaning: 'heat flux upwards', unit: 'W/m²' },
    expression: 'Nu * k / d * (T_w - T_l)',
    symbols: { Nu, k: { meaning: 'thermal conductivity of air', unit: 'W/(m K)' }, d, T_w, T_l },
    source: 'definition of the Nusselt number',
    validity: 'horizontal layer',
    file,
    compute: (v) => headspaceConvection(v.Nu!, v.k!, v.d!, v.T_w!, v.T_l!),
    examples: [
      { Nu: 3.74, k: 0.0261, d: 0.06, T_w: 299.15, T_l: 296.15 },
      { Nu: 2.4, k: 0.0259, d: 0.03, T_w: 298.3, T_l: 294.7 },
    ],
  },
  {
    id: 'tank.headspaceRadiation',
    title: 'Radiation from the water to the wet underside of the lid',
    result: { symbol: 'q_r', meaning: 'heat flux upwards', unit: 'W/m²' },
    expression: '5.670374419e-8 * (T_w^4 - T_l^4) / (2 / 0.95 - 1)',
    symbols: { T_w, T_l },
    source: 'parallel grey plates; emissivity of water 0.95 on both',
    validity: 'headspace much wider than high, lid wet or of like emissivity',
    file,
    compute: (v) => headspaceRadiation(v.T_w!, v.T_l!),
    examples: [
      { T_w: 299.15, T_l: 296.15 },
      { T_w: 298.3, T_l: 294.7 },
    ],
  },
  {
    id: 'tank.headspaceVapour',
    title: 'Vapour that condenses on the lid and runs back',
    result: { symbol: 'm_v', meaning: 'vapour flux', unit: 'kg/(s m²)' },
    expression: 'Nu * D / d * (rho_w - rho_l)',
    symbols: {
      Nu,
      D: { meaning: 'diffusivity of vapour in air', unit: 'm²/s' },
      d,
      rho_w: { meaning: 'vapour density over the water', unit: 'kg/m³', quantity: 'density' },
      rho_l: {
        meaning: 'vapour density at the lid; that over the water where the lid is dry',
        unit: 'kg/m³',
        quantity: 'density',
      },
    },
    source: 'analogy of heat and mass transfer, Sherwood number taken as the Nusselt number',
    validity: 'as the Nusselt number',
    file,
    compute: (v) => headspaceVapour(v.Nu!, v.D!, v.d!, v.rho_w!, v.rho_l!),
    examples: [
      { Nu: 3.74, D: 2.5e-5, d: 0.06, rho_w: 0.02436, rho_l: 0.02057 },
      { Nu: 2.4, D: 2.46e-5, d: 0.03, rho_w: 0.0232, rho_l: 0.0189 },
    ],
  },
  {
    id: 'tank.lidTemperature',
    title: 'Temperature of the damp inner faces',
    result: { symbol: 'T_l', ...T_l },
    expression: 'T_r + A * (q_c + q_r + m_v * h_fg) / (U_lid * A + H_dry)',
    symbols: {
      T_r: { meaning: 'temperature of the room', unit: 'K', quantity: 'temperature' },
      A: { meaning: 'covered water surface', unit: 'm²' },
      q_c: { meaning: 'convection across the trapped air', unit: 'W/m²' },
      q_r: { meaning: 'radiation across the trapped air', unit: 'W/m²' },
      m_v: { meaning: 'vapour flux', unit: 'kg/(s m²)' },
      h_fg: { meaning: 'latent heat of evaporation', unit: 'J/kg' },
      U_lid: { meaning: 'transmittance of the lid', unit: 'W/(m² K)' },
      H_dry: { meaning: 'area times transmittance of the panes above the water', unit: 'W/K' },
    },
    source: 'heat balance, solved for the temperature on which all of its terms depend',
    validity: 'steady state; one temperature for lid and panes above the water',
    file,
    compute: (v) => lidTemperature(v.T_r!, v.A!, v.q_c! + v.q_r! + v.m_v! * v.h_fg!, v.U_lid! * v.A! + v.H_dry!),
    examples: [
      { T_r: 292.15, A: 0.75, q_c: 6.4, q_r: 16.6, m_v: 7.7e-6, h_fg: 2.4394e6, U_lid: 9.7, H_dry: 0.82 },
      { T_r: 290.4, A: 0.3, q_c: 5.2, q_r: 14.1, m_v: 5.1e-6, h_fg: 2.4412e6, U_lid: 8.8, H_dry: 0.51 },
    ],
  },
];

export const headspaceFormulas: readonly Formula[] = [...airFormulas, ...crossingFormulas];
