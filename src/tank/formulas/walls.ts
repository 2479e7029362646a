// The formula records of films, solid layers in series, and the outer surface of a panel.

import type { Formula, FormulaSymbol } from '../../quantities/index.ts';
import {
  innerResistance,
  layerResistance,
  outerTemperature,
  paneHeat,
  radiativeCoefficient,
  surfaceResistance,
  windConvection,
} from '../stack/films.ts';
import { outerResistance, radiationToWall, radiativeCoefficientByWall } from '../stack/outer-surface.ts';

const iso = 'ISO 6946:2017';
const file = 'src/tank/stack/films.ts';
const outerFile = 'src/tank/stack/outer-surface.ts';
const T_i: FormulaSymbol = {
  meaning: 'temperature inside: water, or the damp inner face',
  unit: 'K',
  quantity: 'temperature',
};
const T_r: FormulaSymbol = {
  meaning: 'temperature of what lies beyond: room, outdoor air or ground',
  unit: 'K',
  quantity: 'temperature',
};
const R_inner: FormulaSymbol = {
  meaning: 'resistance from the inside to the outer surface',
  unit: 'm² K/W',
  quantity: 'thermalResistance',
};
const R_s: FormulaSymbol = {
  meaning: 'resistance from the outer surface to what lies beyond',
  unit: 'm² K/W',
  quantity: 'thermalResistance',
};
const h_r: FormulaSymbol = { meaning: 'radiative coefficient', unit: 'W/(m² K)' };
const f: FormulaSymbol = {
  meaning: 'departure of the real film from the standard one; 1 is the standard itself',
  unit: '1',
};

export const wallFormulas: readonly Formula[] = [
  {
    id: 'tank.layerResistance',
    title: 'Thermal resistance of a solid layer',
    result: { symbol: 'R', meaning: 'thermal resistance', unit: 'm² K/W', quantity: 'thermalResistance' },
    expression: 'd / k',
    symbols: {
      d: { meaning: 'thickness of the layer', unit: 'm', quantity: 'length' },
      k: { meaning: 'thermal conductivity', unit: 'W/(m K)' },
    },
    source: `${iso}, clause 6.7.1 (number from memory)`,
    validity: 'any solid layer',
    file,
    compute: (v) => layerResistance(v.d!, v.k!),
    examples: [
      { d: 0.012, k: 1.05 },
      { d: 0.025, k: 0.031 },
    ],
  },
  {
    id: 'tank.innerResistance',
    title: 'Resistance up to the far face of a layer',
    result: { symbol: 'R_inner', meaning: 'thermal resistance', unit: 'm² K/W', quantity: 'thermalResistance' },
    expression: 'R_before + R_layer',
    symbols: {
      R_before: {
        meaning: 'water film, 1/300 or 0 where no water touches the face, and the layers before this one',
        unit: 'm² K/W',
        quantity: 'thermalResistance',
      },
      R_layer: { meaning: 'this layer, joints included', unit: 'm² K/W', quantity: 'thermalResistance' },
    },
    source: `${iso}, clause 6.7.1 (number from memory)`,
    validity: 'heat flow straight through; edges left out',
    file,
    compute: (v) => innerResistance(v.R_before!, v.R_layer!),
    examples: [
      { R_before: 1 / 300, R_layer: 0.012 },
      { R_before: 0.0138, R_layer: 0.83 },
    ],
  },
  {
    id: 'tank.radiativeCoefficient',
    title: 'Radiative coefficient of a surface',
    result: { symbol: 'h_r', ...h_r },
    expression: '4 * epsilon * 5.670374419e-8 * T_m^3',
    symbols: {
      epsilon: { meaning: 'long-wave emissivity', unit: '1' },
      T_m: { meaning: 'mean temperature of the surface and what it looks at', unit: 'K', quantity: 'temperature' },
    },
    source: `${iso}, Annex C`,
    validity: 'small differences; 0.1 % up to 20 K',
    file,
    compute: (v) => radiativeCoefficient(v.epsilon!, v.T_m!),
    examples: [
      { epsilon: 0.87, T_m: 295.4 },
      { epsilon: 0.9, T_m: 290.1 },
    ],
  },
  {
    id: 'tank.windConvection',
    title: 'Convective coefficient in outdoor air',
    result: { symbol: 'h_c', meaning: 'convective coefficient', unit: 'W/(m² K)' },
    expression: '4 + 4 * v',
    symbols: { v: { meaning: 'wind close to the face', unit: 'm/s' } },
    source: `${iso}, Annex C`,
    validity: 'faces outdoors',
    file,
    compute: (v) => windConvection(v.v!),
    examples: [{ v: 1.3 }, { v: 4.2 }],
  },
  {
    id: 'tank.radiationToWall',
    title: 'Radiative coefficient between a surface and a wall close by',
    result: { symbol: 'h_r', ...h_r },
    expression: '4 * 5.670374419e-8 * T_m^3 / (1 / epsilon + 1 / epsilon_w - 1)',
    symbols: {
      epsilon: { meaning: 'long-wave emissivity of the surface', unit: '1' },
      epsilon_w: { meaning: 'long-wave emissivity of the wall', unit: '1' },
      T_m: { meaning: 'mean temperature of both', unit: 'K', quantity: 'temperature' },
    },
    source: 'parallel grey plates',
    validity: 'gap much narrower than the panel is wide',
    file: outerFile,
    compute: (v) => radiationToWall(v.epsilon!, v.epsilon_w!, v.T_m!),
    examples: [
      { epsilon: 0.87, epsilon_w: 0.9, T_m: 294.8 },
      { epsilon: 0.05, epsilon_w: 0.92, T_m: 291.2 },
    ],
  },
  {
    id: 'tank.radiationByWall',
    title: 'Radiative coefficient to the room by way of a wall close by',
    result: { symbol: 'h_rw', meaning: 'radiative coefficient from the surface to the room', unit: 'W/(m² K)' },
    expression: 'h_r * (f * R_w * h_c + 1) / (f * R_w * (h_r + h_c) + 1)',
    symbols: {
      h_r: { meaning: 'radiative coefficient from the surface to the wall', unit: 'W/(m² K)' },
      h_c: { meaning: 'convective coefficient from the wall to the air of the gap', unit: 'W/(m² K)' },
      f,
      R_w: {
        meaning: 'from the face of the wall to the room beyond it',
        unit: 'm² K/W',
        quantity: 'thermalResistance',
      },
    },
    source: 'resistances in series and side by side; own simplification: the air of the open gap is room air',
    validity: 'gap open at its edges',
    file: outerFile,
    compute: (v) => radiativeCoefficientByWall(v.h_r!, v.h_c!, v.R_w!, v.f!),
    examples: [
      { h_r: 4.67, h_c: 2.5, f: 1, R_w: 0.45 },
      { h_r: 4.58, h_c: 2.5, f: 0.8, R_w: 2.2 },
    ],
  },
  {
    id: 'tank.surfaceResistance',
    title: 'Surface resistance',
    result: { symbol: 'R_f', meaning: 'resistance of the outer film', unit: 'm² K/W', quantity: 'thermalResistance' },
    expression: '1 / (f * (h_c + h_r))',
    symbols: {
      h_c: { meaning: 'convective coefficient: heat flow up 5.0, horizontal 2.5, down 0.7', unit: 'W/(m² K)' },
      h_r,
      f,
    },
    source: `${iso}, Annex C; the factor is our own`,
    validity: 'indoor surfaces in still air; outdoors with the coefficient of the wind',
    file,
    compute: (v) => surfaceResistance(v.h_c!, v.h_r!, v.f!),
    examples: [
      { h_c: 2.5, h_r: 5.1, f: 0.85 },
      { h_c: 5.0, h_r: 5.3, f: 1.2 },
    ],
  },
  {
    id: 'tank.outerResistance',
    title: 'Resistance from the outer surface to what lies beyond',
    result: { symbol: 'R_s', ...R_s },
    expression: 'R_f + R_b',
    symbols: {
      R_f: { meaning: 'outer film; 0 on a slab', unit: 'm² K/W', quantity: 'thermalResistance' },
      R_b: {
        meaning: 'beyond the film: air and boards of a closed stand, or slab and ground; 0 in room or outdoor air',
        unit: 'm² K/W',
        quantity: 'thermalResistance',
      },
    },
    source: 'resistances in series',
    validity: 'steady state',
    file: outerFile,
    compute: (v) => outerResistance(v.R_f!, v.R_b!),
    examples: [
      { R_f: 0.171, R_b: 0.061 },
      { R_f: 0.131, R_b: 0.24 },
    ],
  },
  {
    id: 'tank.outerTemperature',
    title: 'Temperature of the outer surface',
    result: { symbol: 'T_s', meaning: 'temperature of the outer surface', unit: 'K', quantity: 'temperature' },
    expression: 'T_i - (T_i - T_r) * R_inner / (R_inner + R_s)',
    symbols: { T_i, T_r, R_inner, R_s },
    source: 'resistances in series; the surface resistance belongs to this temperature (found by repetition)',
    validity: 'steady state',
    file,
    compute: (v) => outerTemperature(v.T_i!, v.T_r!, v.R_inner!, v.R_s!),
    examples: [
      { T_i: 299.15, T_r: 292.4, R_inner: 0.0153, R_s: 0.131 },
      { T_i: 298.2, T_r: 290.15, R_inner: 0.85, R_s: 0.134 },
    ],
  },
  {
    id: 'tank.paneHeat',
    title: 'Heat through a face',
    result: { symbol: 'Q', meaning: 'heat out of the tank', unit: 'W', quantity: 'power' },
    expression: 'A * (T_i - T_r) / (R_inner + R_s)',
    symbols: { A: { meaning: 'area of the face', unit: 'm²' }, T_i, T_r, R_inner, R_s },
    source: iso,
    validity: 'steady state',
    file,
    compute: (v) => paneHeat(v.A!, v.T_i!, v.T_r!, v.R_inner!, v.R_s!),
    examples: [
      { A: 0.855, T_i: 299.15, T_r: 292.4, R_inner: 0.0153, R_s: 0.131 },
      { A: 0.57, T_i: 298.2, T_r: 290.15, R_inner: 0.85, R_s: 0.134 },
    ],
  },
];
