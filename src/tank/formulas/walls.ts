// The formula records of films, layers and panes.

import type { Formula, FormulaSymbol } from '../../quantities/index.ts';
import {
  airLayerResistance,
  innerResistance,
  layerResistance,
  outerTemperature,
  paneHeat,
  radiativeCoefficient,
  surfaceResistance,
} from '../stack/films.ts';

const iso = 'ISO 6946:2017';
const file = 'src/tank/stack/films.ts';
const T_i: FormulaSymbol = {
  meaning: 'temperature inside: water, or the damp inner face',
  unit: 'K',
  quantity: 'temperature',
};
const T_r: FormulaSymbol = { meaning: 'temperature of the room', unit: 'K', quantity: 'temperature' };
const R_inner: FormulaSymbol = {
  meaning: 'resistance from the inside to the outer surface',
  unit: 'm² K/W',
  quantity: 'thermalResistance',
};
const R_s: FormulaSymbol = { meaning: 'outer surface resistance', unit: 'm² K/W', quantity: 'thermalResistance' };

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
    title: 'Resistance from the inside to the outer surface of a pane',
    result: { symbol: 'R_inner', meaning: 'thermal resistance', unit: 'm² K/W', quantity: 'thermalResistance' },
    expression: 'R_film + R_pane + R_insulation',
    symbols: {
      R_film: {
        meaning: 'water film, 1/300; 0 where no water touches the face',
        unit: 'm² K/W',
        quantity: 'thermalResistance',
      },
      R_pane: { meaning: 'pane', unit: 'm² K/W', quantity: 'thermalResistance' },
      R_insulation: { meaning: 'wrapping, 0 where there is none', unit: 'm² K/W', quantity: 'thermalResistance' },
    },
    source: `${iso}, clause 6.7.1 (number from memory)`,
    validity: 'heat flow straight through; edges left out',
    file,
    compute: (v) => innerResistance(v.R_film!, v.R_pane!, v.R_insulation!),
    examples: [
      { R_film: 1 / 300, R_pane: 0.012, R_insulation: 0.83 },
      { R_film: 1 / 280, R_pane: 0.0105, R_insulation: 0.4 },
    ],
  },
  {
    id: 'tank.radiativeCoefficient',
    title: 'Radiative coefficient of a surface',
    result: { symbol: 'h_r', meaning: 'radiative coefficient', unit: 'W/(m² K)' },
    expression: '4 * epsilon * 5.670374419e-8 * T_m^3',
    symbols: {
      epsilon: { meaning: 'long-wave emissivity', unit: '1' },
      T_m: { meaning: 'mean temperature of the surface and the room', unit: 'K', quantity: 'temperature' },
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
    id: 'tank.surfaceResistance',
    title: 'Surface resistance',
    result: { symbol: 'R_s', meaning: 'surface resistance', unit: 'm² K/W', quantity: 'thermalResistance' },
    expression: '1 / (f * (h_c + h_r))',
    symbols: {
      h_c: { meaning: 'convective coefficient: heat flow up 5.0, horizontal 2.5, down 0.7', unit: 'W/(m² K)' },
      h_r: { meaning: 'radiative coefficient', unit: 'W/(m² K)' },
      f: { meaning: 'departure of the real film from the standard one; 1 is the standard itself', unit: '1' },
    },
    source: `${iso}, Annex C; the factor is our own`,
    validity: 'indoor surfaces in still air',
    file,
    compute: (v) => surfaceResistance(v.h_c!, v.h_r!, v.f!),
    examples: [
      { h_c: 2.5, h_r: 5.1, f: 0.85 },
      { h_c: 5.0, h_r: 5.3, f: 1.2 },
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
  {
    id: 'tank.airLayerResistance',
    title: 'Thermal resistance of a sealed air layer, heat flowing sideways',
    result: { symbol: 'R', meaning: 'thermal resistance', unit: 'm² K/W', quantity: 'thermalResistance' },
    expression: '1 / (max(1.25, 0.025 / d) + 4 * 5.670374419e-8 * T_m^3 / (1 / epsilon1 + 1 / epsilon2 - 1))',
    symbols: {
      d: { meaning: 'thickness of the layer', unit: 'm', quantity: 'length' },
      T_m: { meaning: 'mean temperature', unit: 'K', quantity: 'temperature' },
      epsilon1: { meaning: 'emissivity of one face', unit: '1' },
      epsilon2: { meaning: 'emissivity of the other face', unit: '1' },
    },
    source: `${iso}, Annex D`,
    validity: 'sealed, much wider than thick, at most 5 K across, horizontal heat flow',
    file,
    compute: (v) => airLayerResistance(v.d!, 'horizontal', v.epsilon1!, v.epsilon2!, v.T_m!),
    examples: [
      { d: 0.0125, T_m: 290.4, epsilon1: 0.87, epsilon2: 0.9 },
      { d: 0.04, T_m: 283.15, epsilon1: 0.05, epsilon2: 0.9 },
    ],
  },
];
