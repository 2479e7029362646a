// The formula records of moist air.

import type { Formula, FormulaSymbol } from '../../quantities/index.ts';
import {
  dryAirDensity,
  humidityRatio,
  moistAirDensity,
  moistAirEnthalpy,
  moistAirVolume,
  pressureAtAltitude,
  vapourDensity,
  vapourPressureFromRatio,
  vapourPressureFromSaturation,
  virtualTemperature,
} from './moist-air.ts';
import { saturationVapourPressure } from './saturation.ts';
import { airConductivity, airViscosity, vapourDiffusivity } from './transport.ts';

const T: FormulaSymbol = { meaning: 'temperature of the air, dry bulb', unit: 'K', quantity: 'temperature' };
const p_w: FormulaSymbol = { meaning: 'partial pressure of the vapour', unit: 'Pa', quantity: 'pressure' };
const p: FormulaSymbol = { meaning: 'total pressure, absolute', unit: 'Pa', quantity: 'pressure' };
const W: FormulaSymbol = { meaning: 'humidity ratio, vapour per dry air', unit: 'kg/kg', quantity: 'humidityRatio' };
const handbook = 'ASHRAE Handbook Fundamentals 2017, chapter 1';
const file = 'src/matter/air/moist-air.ts';
const saturationFile = 'src/matter/air/saturation.ts';
const transportFile = 'src/matter/air/transport.ts';
const room = [
  { T: 295.15, p_w: 1322.38, p: 101325 },
  { T: 301.6, p_w: 2710.5, p: 89874.5 },
];

const humid = [
  { T: 298.15, W: 0.009881, p: 101325 },
  { T: 313.15, W: 0.0064, p: 89874.5 },
];

export const airFormulas: readonly Formula[] = [
  {
    id: 'air.saturationVapourPressure',
    title: 'Saturation vapour pressure of water',
    result: { symbol: 'p_ws', meaning: 'saturation vapour pressure', unit: 'Pa', quantity: 'pressure' },
    expression:
      'T <= 273.16 ? exp(-5.6745359e3/T + 6.3925247 - 9.677843e-3*T + 6.2215701e-7*T^2 + 2.0747825e-9*T^3 - 9.484024e-13*T^4 + 4.1635019*log(T)) : exp(-5.8002206e3/T + 1.3914993 - 4.8640239e-2*T + 4.1764768e-5*T^2 - 1.4452093e-8*T^3 + 6.5459673*log(T))',
    symbols: { T: { meaning: 'temperature of the water or ice', unit: 'K', quantity: 'temperature' } },
    source: `${handbook}, equations 5 and 6 (Hyland & Wexler 1983)`,
    validity: '173.15 to 473.15 K',
    file: saturationFile,
    compute: (v) => saturationVapourPressure(v.T!),
    examples: [{ T: 299.15 }, { T: 291.9 }, { T: 261.3 }],
  },
  {
    id: 'air.vapourPressure',
    title: 'Vapour pressure of moist air',
    result: { symbol: 'p_w', meaning: 'partial pressure of the vapour', unit: 'Pa', quantity: 'pressure' },
    expression: 'RH * p_ws',
    symbols: {
      RH: { meaning: 'relative humidity', unit: '1' },
      p_ws: { meaning: 'saturation vapour pressure at the air temperature', unit: 'Pa', quantity: 'pressure' },
    },
    source: handbook,
    validity: 'relative humidity 0 to 1, 173.15 to 473.15 K',
    file,
    compute: (v) => vapourPressureFromSaturation(v.RH!, v.p_ws!),
    examples: [
      { RH: 0.5, p_ws: saturationVapourPressure(295.15) },
      { RH: 0.42, p_ws: saturationVapourPressure(290.4) },
    ],
  },
  {
    id: 'air.humidityRatio',
    title: 'Humidity ratio',
    result: { symbol: 'W', meaning: 'vapour per dry air', unit: 'kg/kg', quantity: 'humidityRatio' },
    expression: '0.621945 * p_w / (p - p_w)',
    symbols: { p_w, p },
    source: `${handbook}, equation 20`,
    validity: '0 ≤ p_w < p',
    file,
    compute: (v) => humidityRatio(v.p_w!, v.p!),
    examples: room.map(({ p_w, p }) => ({ p_w, p })),
  },
  {
    id: 'air.vapourPressureFromRatio',
    title: 'Vapour pressure from the humidity ratio',
    result: { symbol: 'p_w', meaning: 'partial pressure of the vapour', unit: 'Pa', quantity: 'pressure' },
    expression: 'p * W / (0.621945 + W)',
    symbols: { W, p },
    source: `${handbook}, equation 20`,
    validity: 'W ≥ 0',
    file,
    compute: (v) => vapourPressureFromRatio(v.W!, v.p!),
    examples: humid.map(({ W, p }) => ({ W, p })),
  },
  {
    id: 'air.volume',
    title: 'Specific volume of moist air per dry air',
    result: { symbol: 'v', meaning: 'volume of mixture per kg of dry air', unit: 'm³/kg' },
    expression: '287.042 * T * (1 + W / 0.621945) / p',
    symbols: { T, W, p },
    source: `${handbook}, equation 26`,
    validity: 'ideal gas; W ≥ 0',
    file,
    compute: (v) => moistAirVolume(v.T!, v.W!, v.p!),
    examples: humid,
  },
  {
    id: 'air.dryAirDensity',
    title: 'Density of moist air, dry-air basis',
    result: { symbol: 'rho_da', meaning: 'dry air per volume of mixture', unit: 'kg/m³', quantity: 'density' },
    expression: '(p - p_w) / (287.042 * T)',
    symbols: { T, p_w, p },
    source: handbook,
    validity: 'ideal gas; 0 ≤ p_w < p',
    file,
    compute: (v) => dryAirDensity(v.T!, v.p_w!, v.p!),
    examples: room,
  },
  {
    id: 'air.moistAirDensity',
    title: 'Density of moist air, mixture',
    result: { symbol: 'rho', meaning: 'mixture per volume', unit: 'kg/m³', quantity: 'density' },
    expression: '(p - p_w) / (287.042 * T) * (1 + 0.621945 * p_w / (p - p_w))',
    symbols: { T, p_w, p },
    source: handbook,
    validity: 'ideal gas; 0 ≤ p_w < p',
    file,
    compute: (v) => moistAirDensity(v.T!, v.p_w!, v.p!),
    examples: room,
  },
  {
    id: 'air.vapourDensity',
    title: 'Density of the vapour alone',
    result: { symbol: 'rho_v', meaning: 'vapour per volume', unit: 'kg/m³', quantity: 'density' },
    expression: 'p_w / (287.042 / 0.621945 * T)',
    symbols: { T, p_w },
    source: 'ideal gas',
    validity: 'ideal gas',
    file,
    compute: (v) => vapourDensity(v.T!, v.p_w!),
    examples: room.map(({ T, p_w }) => ({ T, p_w })),
  },
  {
    id: 'air.virtualTemperature',
    title: 'Virtual temperature of moist air',
    result: {
      symbol: 'T_v',
      meaning: 'temperature of dry air of the same density',
      unit: 'K',
      quantity: 'temperature',
    },
    expression: 'T / (1 - (1 - 0.621945) * p_w / p)',
    symbols: { T, p_w, p },
    source: 'ideal gas mixture',
    validity: 'ideal gas; 0 ≤ p_w < p',
    file,
    compute: (v) => virtualTemperature(v.T!, v.p_w!, v.p!),
    examples: room,
  },
  {
    id: 'air.enthalpy',
    title: 'Enthalpy of moist air per dry air',
    result: { symbol: 'h', meaning: 'enthalpy, zero at 0 °C', unit: 'J/kg' },
    expression: '1006 * (T - 273.15) + W * (2.501e6 + 1860 * (T - 273.15))',
    symbols: { T, W },
    source: `${handbook}, equation 30`,
    validity: '−60 to 90 °C',
    file,
    compute: (v) => moistAirEnthalpy(v.T!, v.W!),
    examples: [
      { T: 303.15, W: 0.02 },
      { T: 291.4, W: 0.0063 },
    ],
  },
  {
    id: 'air.pressureAtAltitude',
    title: 'Pressure of the standard atmosphere',
    result: { symbol: 'p', meaning: 'absolute pressure', unit: 'Pa', quantity: 'pressure' },
    expression: '101325 * (1 - 2.25577e-5 * z)^5.2559',
    symbols: { z: { meaning: 'altitude above sea level', unit: 'm', quantity: 'altitude' } },
    source: `${handbook}, equation 3`,
    validity: '−5000 to 11000 m',
    file,
    compute: (v) => pressureAtAltitude(v.z!),
    examples: [{ z: 120 }, { z: 1000 }],
  },
  {
    id: 'air.viscosity',
    title: 'Dynamic viscosity of air',
    result: { symbol: 'mu', meaning: 'dynamic viscosity', unit: 'Pa s' },
    expression: '1.458e-6 * T^1.5 / (T + 110.4)',
    symbols: { T },
    source: 'U.S. Standard Atmosphere 1976, equation 51 (constants from memory of the source)',
    validity: '200 to 600 K, dry air',
    file: transportFile,
    compute: (v) => airViscosity(v.T!),
    examples: [{ T: 298.15 }, { T: 283.4 }],
  },
  {
    id: 'air.conductivity',
    title: 'Thermal conductivity of air',
    result: { symbol: 'k', meaning: 'thermal conductivity', unit: 'W/(m K)' },
    expression: '2.64638e-3 * T^1.5 / (T + 245.4 * 10^(-12/T))',
    symbols: { T },
    source: 'U.S. Standard Atmosphere 1976, equation 53 (constants from memory of the source)',
    validity: '200 to 600 K, dry air',
    file: transportFile,
    compute: (v) => airConductivity(v.T!),
    examples: [{ T: 298.15 }, { T: 283.4 }],
  },
  {
    id: 'air.vapourDiffusivity',
    title: 'Diffusivity of water vapour in air',
    result: { symbol: 'D', meaning: 'diffusivity', unit: 'm²/s' },
    expression: '1.87e-10 * T^2.072 / (p / 101325)',
    symbols: { T, p },
    source: 'Marrero & Mason, J. Phys. Chem. Ref. Data 1 (1972) 3 (constants from memory of the source)',
    validity: '282 to 450 K',
    file: transportFile,
    compute: (v) => vapourDiffusivity(v.T!, v.p!),
    examples: [
      { T: 298.15, p: 101325 },
      { T: 290.2, p: 89874.5 },
    ],
  },
];
