// The formula records of the open water surface, fresh water and air drawn through the water.

import type { Formula, FormulaSymbol } from '../../quantities/index.ts';
import {
  airStoneEvaporation,
  airStoneHeat,
  blownDryAir,
  evaporationHeat,
  makeUpHeat,
  waterChangeHeat,
} from '../exchange.ts';
import {
  activeCoefficientAshrae,
  evaporationRate,
  quietCoefficientShah2014,
  surfaceCoefficient,
  surfaceConvection,
  surfaceConvectionCoefficient,
  surfaceRadiation,
} from '../water-surface/surface.ts';
import { waterVapourPressure } from '../water-surface/vapour.ts';

const file = 'src/tank/water-surface/surface.ts';
const exchangeFile = 'src/tank/exchange.ts';
const T_w: FormulaSymbol = { meaning: 'temperature of the water', unit: 'K', quantity: 'temperature' };
const T_r: FormulaSymbol = { meaning: 'temperature of the room', unit: 'K', quantity: 'temperature' };
const p_w: FormulaSymbol = { meaning: 'vapour pressure over the water', unit: 'Pa', quantity: 'pressure' };
const p_r: FormulaSymbol = { meaning: 'vapour pressure in the room', unit: 'Pa', quantity: 'pressure' };
const p: FormulaSymbol = { meaning: 'atmospheric pressure', unit: 'Pa', quantity: 'pressure' };
const A: FormulaSymbol = { meaning: 'open water surface', unit: 'm²' };
const K: FormulaSymbol = { meaning: 'evaporation per area and vapour pressure difference', unit: 'kg/(s m² Pa)' };
const h_fg: FormulaSymbol = { meaning: 'latent heat of evaporation', unit: 'J/kg' };
const m_e: FormulaSymbol = { meaning: 'evaporation', unit: 'kg/s', quantity: 'evaporation' };
const W_r: FormulaSymbol = { meaning: 'humidity ratio of the room', unit: 'kg/kg', quantity: 'humidityRatio' };
const m_da: FormulaSymbol = { meaning: 'dry air blown through the water', unit: 'kg/s', quantity: 'massFlow' };

/** Dry air per volume at the water surface and in the room, as the quiet-water formula wants them. */
const rho_w = '((p - p_w) / (287.042 * T_w))';
const rho_r = '((p - p_r) / (287.042 * T_r))';

export const surfaceFormulas: readonly Formula[] = [
  {
    id: 'tank.waterVapour',
    title: 'Vapour pressure over the water',
    result: { symbol: 'p_w', ...p_w },
    expression: 'a_w * p_ws',
    symbols: {
      a_w: { meaning: 'lowering by salt', unit: '1' },
      p_ws: { meaning: 'saturation vapour pressure of pure water', unit: 'Pa', quantity: 'pressure' },
    },
    source: 'definition of the activity of water',
    validity: 'surface as warm as the bulk',
    file: 'src/tank/water-surface/vapour.ts',
    compute: (v) => waterVapourPressure(v.a_w!, v.p_ws!),
    examples: [
      { a_w: 0.97962, p_ws: 3363.13 },
      { a_w: 0.99, p_ws: 3170.2 },
    ],
  },
  {
    id: 'tank.quietCoefficient',
    title: 'Evaporation coefficient of undisturbed water (Shah)',
    result: { symbol: 'K_q', ...K },
    expression: `max(35 * ${rho_w} * cbrt(max(0, ${rho_r} - ${rho_w})) * 0.621945 * p / ((p - p_w) * (p - p_r)), 5e-5) / 3600`,
    symbols: { T_w, p_w, T_r, p_r, p },
    source:
      'Shah, HVAC&R Research 8 (2002) 125 and ASHRAE Transactions 120(2) (2014) SE-14-001; densities on the dry-air basis; the 5e-5 is not confirmed',
    validity: 'water 7 to 94 °C, air 6 to 35 °C, 28 to 95 % relative humidity; mean deviation 18 %',
    file,
    compute: (v) => quietCoefficientShah2014(v.T_w!, v.p_w!, v.T_r!, v.p_r!, v.p!),
    examples: [
      { T_w: 299.15, p_w: 3363.13, T_r: 295.15, p_r: 1322.38, p: 101325 },
      { T_w: 298.3, p_w: 3120.4, T_r: 304.2, p_r: 1108.7, p: 97800 },
    ],
  },
  {
    id: 'tank.activeCoefficient',
    title: 'Evaporation coefficient of active water (handbook)',
    result: { symbol: 'K_a', ...K },
    expression: '(0.089 + 0.0782 * v) / h_fg',
    symbols: { v: { meaning: 'air speed over the surface', unit: 'm/s' }, h_fg },
    source: 'ASHRAE Handbook HVAC Applications, natatoriums (after Carrier 1918)',
    validity: 'near sea level, disturbed water, air speed 0 to 0.3 m/s',
    file,
    compute: (v) => activeCoefficientAshrae(v.v!, v.h_fg!),
    examples: [
      { v: 0.1, h_fg: 2.4394e6 },
      { v: 0.23, h_fg: 2.4301e6 },
    ],
  },
  {
    id: 'tank.surfaceCoefficient',
    title: 'Evaporation coefficient of this surface',
    result: { symbol: 'K', ...K },
    expression: 'f * (K_q + a * (K_a - K_q))',
    symbols: {
      f: { meaning: 'evaporation factor: the doubt of the method', unit: '1' },
      K_q: { meaning: 'coefficient of undisturbed water', unit: 'kg/(s m² Pa)' },
      K_a: { meaning: 'coefficient of active water', unit: 'kg/(s m² Pa)' },
      a: { meaning: 'share of active: still 0, rippled 0.5, rough 1', unit: '1' },
    },
    source: 'own blend of the two methods, no source',
    validity: 'between the two methods',
    file,
    compute: (v) => surfaceCoefficient(v.K_q!, v.K_a!, v.a!, v.f!),
    examples: [
      { f: 1.1, K_q: 2.43e-8, K_a: 3.97e-8, a: 0.5 },
      { f: 0.85, K_q: 2.1e-8, K_a: 3.9e-8, a: 0.25 },
    ],
  },
  {
    id: 'tank.evaporationRate',
    title: 'Evaporation of the open surface',
    result: { symbol: 'm_e', ...m_e },
    expression: 'K * A * (p_w - p_r)',
    symbols: { K, A, p_w, p_r },
    source: "Dalton's law of evaporation",
    validity: 'negative where room air condenses on the water',
    file,
    compute: (v) => evaporationRate(v.K!, v.A!, v.p_w!, v.p_r!),
    examples: [
      { K: 3.2e-8, A: 0.75, p_w: 3363.13, p_r: 1322.38 },
      { K: 2.4e-8, A: 0.32, p_w: 3105.8, p_r: 1098.1 },
    ],
  },
  {
    id: 'tank.evaporationHeat',
    title: 'Heat taken by vapour',
    result: { symbol: 'Q_e', meaning: 'latent heat out of the tank', unit: 'W', quantity: 'power' },
    expression: 'm_e * h_fg',
    symbols: { m_e, h_fg },
    source: 'definition of the latent heat',
    validity: 'latent heat at the water temperature',
    file: exchangeFile,
    compute: (v) => evaporationHeat(v.m_e!, v.h_fg!),
    examples: [
      { m_e: 4.9e-5, h_fg: 2.4394e6 },
      { m_e: 1.7e-5, h_fg: 2.4412e6 },
    ],
  },
  {
    id: 'tank.surfaceConvectionCoefficient',
    title: "Convective coefficient of the open surface (Bowen's ratio)",
    result: { symbol: 'h_c', meaning: 'convective coefficient', unit: 'W/(m² K)' },
    expression: 'K * 1006 * p / 0.622',
    symbols: { K, p },
    source: 'Bowen, Physical Review 27 (1926) 779; Lewis number taken as 1',
    validity: 'air and water; about 10 %',
    file,
    compute: (v) => surfaceConvectionCoefficient(v.K!, v.p!),
    examples: [
      { K: 3.2e-8, p: 101325 },
      { K: 2.4e-8, p: 89874.5 },
    ],
  },
  {
    id: 'tank.surfaceConvection',
    title: 'Convection from the open surface',
    result: { symbol: 'Q_c', meaning: 'sensible heat out of the tank', unit: 'W', quantity: 'power' },
    expression: 'h_c * A * (T_w - T_r)',
    symbols: { h_c: { meaning: 'convective coefficient', unit: 'W/(m² K)' }, A, T_w, T_r },
    source: 'definition of the coefficient',
    validity: 'steady state',
    file,
    compute: (v) => surfaceConvection(v.h_c!, v.A!, v.T_w!, v.T_r!),
    examples: [
      { h_c: 5.2, A: 0.75, T_w: 299.15, T_r: 292.4 },
      { h_c: 4.1, A: 0.32, T_w: 298.2, T_r: 301.7 },
    ],
  },
  {
    id: 'tank.surfaceRadiation',
    title: 'Long-wave radiation from the open surface',
    result: { symbol: 'Q_r', meaning: 'sensible heat out of the tank', unit: 'W', quantity: 'power' },
    expression: '0.95 * 5.670374419e-8 * A * (T_w^4 - T_r^4)',
    symbols: { A, T_w, T_r },
    source: 'Stefan-Boltzmann law; emissivity of water 0.95 from memory of handbooks',
    validity: 'room surfaces as warm as the air',
    file,
    compute: (v) => surfaceRadiation(v.A!, v.T_w!, v.T_r!),
    examples: [
      { A: 0.75, T_w: 299.15, T_r: 292.4 },
      { A: 0.32, T_w: 298.2, T_r: 301.7 },
    ],
  },
  {
    id: 'tank.makeUpHeat',
    title: 'Heat that warms the make-up water',
    result: { symbol: 'Q_m', meaning: 'sensible heat', unit: 'W', quantity: 'power' },
    expression: 'm_e * c_p * (T_w - T_m)',
    symbols: {
      m_e,
      c_p: { meaning: 'specific heat of fresh water', unit: 'J/(kg K)' },
      T_w,
      T_m: { meaning: 'temperature at which the make-up water comes', unit: 'K', quantity: 'temperature' },
    },
    source: 'energy balance',
    validity: 'all vapour is made up with fresh water',
    file: exchangeFile,
    compute: (v) => makeUpHeat(v.m_e!, v.c_p!, v.T_w!, v.T_m!),
    examples: [
      { m_e: 4.9e-5, c_p: 4181, T_w: 299.15, T_m: 292.4 },
      { m_e: 1.7e-5, c_p: 4185, T_w: 298.2, T_m: 288.3 },
    ],
  },
  {
    id: 'tank.waterChangeHeat',
    title: 'Heat that warms the fresh water of water changes',
    result: { symbol: 'Q_x', meaning: 'sensible heat, mean over time', unit: 'W', quantity: 'power' },
    expression: 'V * rho * c_p * (T_w - T_f)',
    symbols: {
      V: { meaning: 'water changed over the time between two changes', unit: 'm³/s', quantity: 'volumeFlow' },
      rho: { meaning: 'density of the tank’s water', unit: 'kg/m³', quantity: 'density' },
      c_p: { meaning: 'specific heat of the tank’s water', unit: 'J/(kg K)' },
      T_w,
      T_f: { meaning: 'temperature at which the new water comes', unit: 'K', quantity: 'temperature' },
    },
    source: 'energy balance; the outgoing water leaves as warm as the tank',
    validity: 'a mean: on the day of a change all of it is needed at once',
    file: exchangeFile,
    compute: (v) => waterChangeHeat(v.V!, v.rho!, v.c_p!, v.T_w!, v.T_f!),
    examples: [
      { V: 6.6e-8, rho: 1023.4, c_p: 4001, T_w: 298.15, T_f: 283.15 },
      { V: 1.2e-7, rho: 997.1, c_p: 4181, T_w: 299.4, T_f: 287.9 },
    ],
  },
  {
    id: 'tank.blownDryAir',
    title: 'Dry air blown through the water',
    result: { symbol: 'm_da', ...m_da },
    expression: 'V * rho_da',
    symbols: {
      V: { meaning: 'air flow at room state', unit: 'm³/s', quantity: 'volumeFlow' },
      rho_da: { meaning: 'dry air per volume in the room', unit: 'kg/m³', quantity: 'density' },
    },
    source: 'definition',
    validity: 'air drawn from the room',
    file: exchangeFile,
    compute: (v) => blownDryAir(v.V!, v.rho_da!),
    examples: [
      { V: 1.667e-4, rho_da: 1.1803 },
      { V: 4.2e-5, rho_da: 1.193 },
    ],
  },
  {
    id: 'tank.airStoneEvaporation',
    title: 'Evaporation into air blown through the water',
    result: { symbol: 'm_b', ...m_e },
    expression: 'm_da * (W_s - W_r)',
    symbols: {
      m_da,
      W_s: { meaning: 'humidity ratio saturated at the water', unit: 'kg/kg', quantity: 'humidityRatio' },
      W_r,
    },
    source: 'mass balance; the bubbles leave saturated',
    validity: 'fine bubbles',
    file: exchangeFile,
    compute: (v) => airStoneEvaporation(v.m_da!, v.W_s!, v.W_r!),
    examples: [
      { m_da: 1.97e-4, W_s: 0.0213, W_r: 0.0082 },
      { m_da: 5.5e-5, W_s: 0.0201, W_r: 0.0064 },
    ],
  },
  {
    id: 'tank.airStoneHeat',
    title: 'Sensible heat of air blown through the water',
    result: { symbol: 'Q_b', meaning: 'sensible heat', unit: 'W', quantity: 'power' },
    expression: 'm_da * (1006 + 1860 * W_r) * (T_w - T_r)',
    symbols: { m_da, W_r, T_w, T_r },
    source: 'energy balance; the bubbles leave as warm as the water',
    validity: 'fine bubbles',
    file: exchangeFile,
    compute: (v) => airStoneHeat(v.m_da!, v.W_r!, v.T_w!, v.T_r!),
    examples: [
      { m_da: 1.97e-4, W_r: 0.0082, T_w: 299.15, T_r: 295.15 },
      { m_da: 5.5e-5, W_r: 0.0064, T_w: 298.2, T_r: 290.4 },
    ],
  },
];
