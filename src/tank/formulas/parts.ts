// The formula records of what parts of a tank are cut from and added up to: lengths and areas, layers with joints, the wall of a
// house across a gap, inner faces above the water, the air of a hood.

import type { Formula, FormulaSymbol } from '../../quantities/index.ts';
import { innerFacesTemperature } from '../cover/headspace.ts';
import { airCapacityFlow, hoodConvection, vapourConductance } from '../cover/hood-air.ts';
import { circumference, remainder, shareOfArea } from '../geometry/measures.ts';
import { jointedResistance, jointTakes } from '../stack/joints.ts';
import { wallFaceTemperature } from '../stack/outer-surface.ts';

const geometryFile = 'src/tank/geometry/measures.ts';
const length = (meaning: string): FormulaSymbol => ({ meaning, unit: 'm', quantity: 'length' });
const area = (meaning: string): FormulaSymbol => ({ meaning, unit: 'm²', quantity: 'area' });
const kelvin = (meaning: string): FormulaSymbol => ({ meaning, unit: 'K', quantity: 'temperature' });
const resistance = (meaning: string): FormulaSymbol => ({ meaning, unit: 'm² K/W', quantity: 'thermalResistance' });
const coefficient = (meaning: string): FormulaSymbol => ({ meaning, unit: 'W/(m² K)' });

export const partFormulas: readonly Formula[] = [
  {
    id: 'tank.lengthLess',
    title: 'What is left of a length',
    result: { symbol: 'b', ...length('length') },
    expression: 'b_1 - b_2',
    symbols: { b_1: length('the whole'), b_2: length('the part cut out') },
    source: 'geometry',
    validity: 'inner dimensions',
    file: geometryFile,
    compute: (v) => remainder(v.b_1!, v.b_2!),
    examples: [
      { b_1: 0.6, b_2: 0.25 },
      { b_1: 1.5, b_2: 0.7 },
    ],
  },
  {
    id: 'tank.areaLess',
    title: 'What is left of an area',
    result: { symbol: 'A', ...area('area') },
    expression: 'A_1 - A_2',
    symbols: { A_1: area('the whole'), A_2: area('the part cut out') },
    source: 'geometry',
    validity: 'inner dimensions',
    file: geometryFile,
    compute: (v) => remainder(v.A_1!, v.A_2!),
    examples: [
      { A_1: 0.9, A_2: 0.2 },
      { A_1: 1.4, A_2: 0.35 },
    ],
  },
  {
    id: 'tank.circumference',
    title: 'Way around an upright cylinder',
    result: { symbol: 'b', ...length('circumference') },
    expression: 'pi * D',
    symbols: { D: length('inner diameter') },
    source: 'geometry',
    validity: 'inner dimension',
    file: geometryFile,
    compute: (v) => circumference(v.D!),
    examples: [{ D: 0.8 }, { D: 1.35 }],
  },
  {
    id: 'tank.shareOfArea',
    title: 'Share of an area',
    result: { symbol: 'A_s', ...area('area') },
    expression: 's * A',
    symbols: { s: { meaning: 'share', unit: '1', quantity: 'fraction' }, A: area('the whole') },
    source: 'definition',
    validity: 'any',
    file: geometryFile,
    compute: (v) => shareOfArea(v.s!, v.A!),
    examples: [
      { s: 0.85, A: 0.75 },
      { s: 0.15, A: 1.2 },
    ],
  },
  {
    id: 'tank.jointedResistance',
    title: 'Resistance of a layer with a joint',
    result: { symbol: 'R', ...resistance('thermal resistance') },
    expression: 'R_beside + (R_mean - R_lower) * dR / dR_all',
    symbols: {
      R_beside: resistance('joint and layer side by side'),
      R_mean: resistance('mean of both limits of the whole stack'),
      R_lower: resistance('lower limit of the whole stack'),
      dR: resistance('what the joint takes from this layer'),
      dR_all: resistance('what all joints take'),
    },
    source: 'own sharing of the mean of ISO 6946 among the layers',
    validity: 'joints of one behind the other',
    file: 'src/tank/stack/joints.ts',
    compute: (v) => jointedResistance(v.R_beside!, v.R_mean! - v.R_lower!, v.dR!, v.dR_all!),
    examples: [
      { R_beside: 1.279, R_mean: 1.591, R_lower: 1.539, dR: 0.445, dR_all: 0.445 },
      { R_beside: 0.62, R_mean: 1.21, R_lower: 1.16, dR: 0.11, dR_all: 0.27 },
    ],
  },
  {
    id: 'tank.jointTakes',
    title: 'What a joint takes from the resistance of a layer',
    result: { symbol: 'dR', ...resistance('difference') },
    expression: 'abs(R_main - R_beside)',
    symbols: { R_main: resistance('layer away from the joint'), R_beside: resistance('joint and layer side by side') },
    source: 'definition',
    validity: 'any',
    file: 'src/tank/stack/joints.ts',
    compute: (v) => jointTakes(v.R_main!, v.R_beside!),
    examples: [
      { R_main: 1.724, R_beside: 1.279 },
      { R_main: 0.4, R_beside: 0.51 },
    ],
  },
  {
    id: 'tank.wallFaceTemperature',
    title: 'Temperature of a wall of the house across an open gap',
    result: { symbol: 'T_w', ...kelvin('temperature of the wall') },
    expression: 'T_s - (T_s - T_r) * h_onward / h_direct',
    symbols: {
      T_s: kelvin('outer surface of the panel'),
      T_r: kelvin('room'),
      h_onward: coefficient('radiative coefficient of what reaches the room in the end'),
      h_direct: coefficient('radiative coefficient from the surface to the wall'),
    },
    source: 'heat balance of the wall',
    validity: 'air of the gap as warm as the room',
    file: 'src/tank/stack/outer-surface.ts',
    compute: (v) => wallFaceTemperature(v.T_s!, v.T_r!, v.h_onward!, v.h_direct!),
    examples: [
      { T_s: 298.4, T_r: 292.2, h_onward: 2.9, h_direct: 4.7 },
      { T_s: 296.1, T_r: 290.15, h_onward: 1.8, h_direct: 4.6 },
    ],
  },
  {
    id: 'tank.innerFacesTemperature',
    title: 'Temperature of the inner faces above the water',
    result: { symbol: 'T_l', ...kelvin('inner faces of lid and panels above the water') },
    expression: 'T_w - (Q / A - q_r - m_v * h_fg) * d / (Nu * k)',
    symbols: {
      T_w: kelvin('water'),
      Q: { meaning: 'heat that leaves through these faces', unit: 'W', quantity: 'power' },
      A: area('covered water surface'),
      q_r: { meaning: 'radiation across the trapped air', unit: 'W/m²', quantity: 'heatFlux' },
      m_v: { meaning: 'vapour that crosses it', unit: 'kg/(s m²)' },
      h_fg: { meaning: 'latent heat of evaporation', unit: 'J/kg' },
      d: length('height of the trapped air'),
      Nu: { meaning: 'Nusselt number', unit: '1' },
      k: { meaning: 'thermal conductivity of air', unit: 'W/(m K)' },
    },
    source: 'energy balance of these faces; the heat that leaves depends on this temperature (found by root search)',
    validity: 'one inner temperature for all of them',
    file: 'src/tank/cover/headspace.ts',
    compute: (v) => innerFacesTemperature(v.T_w!, v.Q!, v.A!, v.q_r!, v.m_v! * v.h_fg!, v.d!, v.Nu!, v.k!),
    examples: [
      { T_w: 299.15, Q: 27.6, A: 0.75, q_r: 16.2, m_v: 5.9e-6, h_fg: 2.4394e6, d: 0.06, Nu: 3.74, k: 0.026 },
      { T_w: 298.3, Q: 11.2, A: 0.31, q_r: 14.1, m_v: 5.1e-6, h_fg: 2.4412e6, d: 0.05, Nu: 3.1, k: 0.0259 },
    ],
  },
  {
    id: 'tank.hoodConvection',
    title: 'Convective coefficient inside a hood',
    result: { symbol: 'h_l', ...coefficient('mean over all inner faces') },
    expression: '(5 * A_top + 2.5 * A_side) / (A_top + A_side)',
    symbols: { A_top: area('faces that look down'), A_side: area('upright faces') },
    source: 'ISO 6946:2017, Annex C, heat flowing up and sideways; own simplification',
    validity: 'air that a fan stirs',
    file: 'src/tank/cover/hood-air.ts',
    compute: (v) => hoodConvection(v.A_top!, v.A_side!),
    examples: [
      { A_top: 0.6, A_side: 1.2 },
      { A_top: 0.9, A_side: 1.7 },
    ],
  },
  {
    id: 'tank.vapourConductance',
    title: 'Vapour coefficient times area',
    result: { symbol: 'KA', meaning: 'vapour per difference of vapour pressure', unit: 'kg/(s Pa)' },
    expression: 'K * A',
    symbols: { K: { meaning: 'vapour coefficient', unit: 'kg/(s m² Pa)' }, A: area('area') },
    source: 'definition',
    validity: 'any',
    file: 'src/tank/cover/hood-air.ts',
    compute: (v) => vapourConductance(v.K!, v.A!),
    examples: [
      { K: 2.4e-8, A: 0.6 },
      { K: 2e-8, A: 1.9 },
    ],
  },
  {
    id: 'tank.airCapacityFlow',
    title: 'Heat that a flow of air carries per kelvin',
    result: { symbol: 'C', meaning: 'heat per kelvin', unit: 'W/K' },
    expression: 'm_da * (1006 + 1860 * W)',
    symbols: {
      m_da: { meaning: 'dry air', unit: 'kg/s', quantity: 'massFlow' },
      W: { meaning: 'humidity ratio', unit: 'kg/kg', quantity: 'humidityRatio' },
    },
    source: 'definition',
    validity: 'specific heats of air and vapour near room temperature',
    file: 'src/tank/cover/hood-air.ts',
    compute: (v) => airCapacityFlow(v.m_da!, v.W!),
    examples: [
      { m_da: 2.36e-3, W: 0.0082 },
      { m_da: 2.4e-4, W: 0.0064 },
    ],
  },
];
