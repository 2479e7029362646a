// The formula records of pipes, and of the closed stand that panels may look into.

import type { Formula, FormulaSymbol } from '../../quantities/index.ts';
import {
  airPrandtl,
  cylinderFilmResistance,
  cylinderRayleigh,
  cylinderResistance,
  filmCoefficient,
  nusseltCylinderChurchillChu1975,
  pipeHeat,
} from '../pipes.ts';
import { standResistance } from '../stack/enclosures.ts';

const file = 'src/tank/pipes.ts';
const perMetre = (meaning: string): FormulaSymbol => ({ meaning, unit: 'm K/W' });
const D: FormulaSymbol = { meaning: 'diameter', unit: 'm', quantity: 'length' };
const T_s: FormulaSymbol = { meaning: 'temperature of the outer surface', unit: 'K', quantity: 'temperature' };
const T_r: FormulaSymbol = { meaning: 'temperature of the room', unit: 'K', quantity: 'temperature' };
const Nu: FormulaSymbol = { meaning: 'Nusselt number on the diameter', unit: '1' };
const Ra: FormulaSymbol = { meaning: 'Rayleigh number on the diameter', unit: '1' };
const Pr: FormulaSymbol = { meaning: 'Prandtl number of air', unit: '1' };
const h_c: FormulaSymbol = { meaning: 'convective coefficient', unit: 'W/(m² K)' };

export const pipeFormulas: readonly Formula[] = [
  {
    id: 'tank.cylinderResistance',
    title: 'Resistance of a cylindrical layer, per metre',
    result: { symbol: 'R', ...perMetre('resistance of a metre of the layer') },
    expression: 'log(D_2 / D_1) / (2 * pi * k)',
    symbols: {
      D_1: { meaning: 'inner diameter', unit: 'm', quantity: 'length' },
      D_2: { meaning: 'outer diameter', unit: 'm', quantity: 'length' },
      k: { meaning: 'thermal conductivity', unit: 'W/(m K)' },
    },
    source: 'Bergman et al., Fundamentals of Heat and Mass Transfer, radial conduction',
    validity: 'long cylinders',
    file,
    compute: (v) => cylinderResistance(v.D_1!, v.D_2!, v.k!),
    examples: [
      { D_1: 0.025, D_2: 0.045, k: 0.036 },
      { D_1: 0.021, D_2: 0.025, k: 0.17 },
    ],
  },
  {
    id: 'tank.cylinderFilmResistance',
    title: 'Resistance of a film on a cylinder, per metre',
    result: { symbol: 'R', ...perMetre('resistance of a metre of the film') },
    expression: '1 / (pi * D * h)',
    symbols: { D, h: { meaning: 'surface coefficient', unit: 'W/(m² K)' } },
    source: 'definition',
    validity: 'long cylinders',
    file,
    compute: (v) => cylinderFilmResistance(v.D!, v.h!),
    examples: [
      { D: 0.045, h: 9 },
      { D: 0.021, h: 300 },
    ],
  },
  {
    id: 'tank.cylinderRayleigh',
    title: 'Rayleigh number of a cylinder in air',
    result: { symbol: 'Ra', ...Ra },
    expression:
      '9.80665 * abs(T_s - T_r) * D^3 * 1006 * (p / (287.042 * (T_s + T_r) / 2))^2 / ((T_s + T_r) / 2 * (1.458e-6 * ((T_s + T_r) / 2)^1.5 / ((T_s + T_r) / 2 + 110.4)) * (2.64638e-3 * ((T_s + T_r) / 2)^1.5 / ((T_s + T_r) / 2 + 245.4 * 10^(-12 / ((T_s + T_r) / 2)))))',
    symbols: { T_s, T_r, D, p: { meaning: 'atmospheric pressure', unit: 'Pa', quantity: 'pressure' } },
    source: 'definition; dry air at the mean temperature (U.S. Standard Atmosphere 1976)',
    validity: 'still room air',
    file,
    compute: (v) => cylinderRayleigh(v.T_s!, v.T_r!, v.D!, v.p!),
    examples: [
      { T_s: 298.9, T_r: 293.15, D: 0.025, p: 101325 },
      { T_s: 294.2, T_r: 295.4, D: 0.052, p: 89875 },
    ],
  },
  {
    id: 'tank.airPrandtl',
    title: 'Prandtl number of air',
    result: { symbol: 'Pr', ...Pr },
    expression: '1006 * (1.458e-6 * T^1.5 / (T + 110.4)) / (2.64638e-3 * T^1.5 / (T + 245.4 * 10^(-12 / T)))',
    symbols: { T: { meaning: 'mean temperature of surface and room', unit: 'K', quantity: 'temperature' } },
    source: 'definition; dry air (U.S. Standard Atmosphere 1976)',
    validity: '200 to 600 K',
    file,
    compute: (v) => airPrandtl(v.T!),
    examples: [{ T: 296.2 }, { T: 290.4 }],
  },
  {
    id: 'tank.cylinderNusselt',
    title: 'Nusselt number of a horizontal cylinder',
    result: { symbol: 'Nu', ...Nu },
    expression: '(0.60 + 0.387 * Ra^(1/6) / (1 + (0.559 / Pr)^(9/16))^(8/27))^2',
    symbols: { Ra, Pr },
    source: 'Churchill & Chu, Int. J. Heat Mass Transfer 18 (1975) 1049, as given in an open heat-transfer library',
    validity: 'Rayleigh number 1e-5 to 1e12, long and lying',
    file,
    compute: (v) => nusseltCylinderChurchillChu1975(v.Ra!, v.Pr!),
    examples: [
      { Ra: 1.867e6, Pr: 0.7241 },
      { Ra: 8.2e3, Pr: 0.708 },
    ],
  },
  {
    id: 'tank.cylinderConvection',
    title: 'Convective coefficient of a cylinder',
    result: { symbol: 'h_c', ...h_c },
    expression: 'Nu * k / D',
    symbols: { Nu, k: { meaning: 'thermal conductivity of air', unit: 'W/(m K)' }, D },
    source: 'definition of the Nusselt number',
    validity: 'still room air',
    file,
    compute: (v) => filmCoefficient(v.Nu!, v.k!, v.D!),
    examples: [
      { Nu: 17.4, k: 0.02699, D: 0.08 },
      { Nu: 4.6, k: 0.0259, D: 0.025 },
    ],
  },
  {
    id: 'tank.pipeHeat',
    title: 'Heat per metre of pipe',
    result: { symbol: 'q', meaning: 'heat out of the water, per metre', unit: 'W/m' },
    expression: '(T_w - T_r) / (R_inner + R_outer)',
    symbols: {
      T_w: { meaning: 'temperature of the water', unit: 'K', quantity: 'temperature' },
      T_r,
      R_inner: perMetre('water film, wall and wrapping, per metre'),
      R_outer: perMetre('outer surface, per metre'),
    },
    source: 'resistances in series',
    validity: 'steady state; fittings left out',
    file,
    compute: (v) => pipeHeat(v.T_w!, v.T_r!, v.R_inner!, v.R_outer!),
    examples: [
      { T_w: 299.15, T_r: 293.15, R_inner: 2.5986, R_outer: 0.786 },
      { T_w: 298.2, T_r: 290.4, R_inner: 0.21, R_outer: 1.31 },
    ],
  },
  {
    id: 'tank.standResistance',
    title: 'From the air of a closed stand to the room',
    result: {
      symbol: 'R_b',
      meaning: 'resistance per area of the panels',
      unit: 'm² K/W',
      quantity: 'thermalResistance',
    },
    expression: '(2 * 0.13 + R_boards) * A_panels / A_boards',
    symbols: {
      R_boards: { meaning: 'one board', unit: 'm² K/W', quantity: 'thermalResistance' },
      A_panels: { meaning: 'all panels that face the air of the stand', unit: 'm²' },
      A_boards: { meaning: 'sides and doors of the stand', unit: 'm²' },
    },
    source:
      'ISO 6946:2017, conventional surface resistances; unheated space as in its clause 6.10 (number from memory)',
    validity: 'no openings; the floor left out; exact where all panels give the same heat per area',
    file: 'src/tank/stack/enclosures.ts',
    compute: (v) => standResistance(v.R_boards!, v.A_panels!, v.A_boards!),
    examples: [
      { R_boards: 0.138, A_panels: 0.6, A_boards: 2.4 },
      { R_boards: 0.09, A_panels: 1.9, A_boards: 3.1 },
    ],
  },
];
