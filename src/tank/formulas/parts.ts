// The formula records of what parts of a tank are cut from and added up to: lengths and areas, layers with joints, the wall of a
// house across a gap, inner faces above the water, the air of a hood.

import type { Formula, FormulaSymbol, FormulaValues } from '../../quantities/index.ts';
import { innerFacesTemperature } from '../cover/headspace.ts';
import { airCapacityFlow, hoodConvection, vapourConductance } from '../cover/hood-air.ts';
import { circumference, remainder, shareOfArea } from '../geometry/measures.ts';
import {
  heatOfLength,
  insideDiameter,
  outerCoefficient,
  outsideDiameter,
  pipeInnerResistance,
  pipeSurface,
} from '../pipes.ts';
import { faceTemperature, heatFlux } from '../stack/films.ts';
import { jointedResistance, jointTakes } from '../stack/joints.ts';
import { wallFaceTemperature } from '../stack/outer-surface.ts';
import { squareSide } from '../stack/panel.ts';
import { slimness, waterPrandtl } from '../stack/water-gap.ts';

const geometryFile = 'src/tank/geometry/measures.ts';
const length = (meaning: string): FormulaSymbol => ({ meaning, unit: 'm', quantity: 'length' });
const area = (meaning: string): FormulaSymbol => ({ meaning, unit: 'm²', quantity: 'area' });
const kelvin = (meaning: string): FormulaSymbol => ({ meaning, unit: 'K', quantity: 'temperature' });
const resistance = (meaning: string): FormulaSymbol => ({ meaning, unit: 'm² K/W', quantity: 'thermalResistance' });
const perMetre = (meaning: string): FormulaSymbol => ({ meaning, unit: 'm K/W' });
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
    id: 'tank.waterPrandtl',
    title: 'Prandtl number of water',
    result: { symbol: 'Pr', meaning: 'Prandtl number', unit: '1' },
    expression: 'mu * c_p / k',
    symbols: {
      mu: { meaning: 'dynamic viscosity', unit: 'Pa s' },
      c_p: { meaning: 'specific heat', unit: 'J/(kg K)' },
      k: { meaning: 'thermal conductivity', unit: 'W/(m K)' },
    },
    source: 'definition',
    validity: 'any',
    file: 'src/tank/stack/water-gap.ts',
    compute: (v) => waterPrandtl(v.mu!, v.c_p!, v.k!),
    examples: [
      { mu: 8.7e-4, c_p: 4181, k: 0.608 },
      { mu: 1.1e-3, c_p: 4184, k: 0.597 },
    ],
  },
  {
    id: 'tank.slimness',
    title: 'Height of a layer over its thickness',
    result: { symbol: 's', meaning: 'height over thickness', unit: '1' },
    expression: 'H / d',
    symbols: { H: length('height'), d: length('thickness') },
    source: 'definition',
    validity: 'any',
    file: 'src/tank/stack/water-gap.ts',
    compute: (v) => slimness(v.H!, v.d!),
    examples: [
      { H: 0.54, d: 0.03 },
      { H: 0.7, d: 0.045 },
    ],
  },
  {
    id: 'tank.squareSide',
    title: 'Side of a square of an area',
    result: { symbol: 'H', ...length('side') },
    expression: 'sqrt(A)',
    symbols: { A: area('area of the panel') },
    source: 'geometry; own simplification for the height of a panel',
    validity: 'panels that are not much longer than high',
    file: 'src/tank/stack/panel.ts',
    compute: (v) => squareSide(v.A!),
    examples: [{ A: 0.57 }, { A: 0.34 }],
  },
  {
    id: 'tank.heatFlux',
    title: 'Heat per area through a face',
    result: { symbol: 'q', meaning: 'heat per area', unit: 'W/m²', quantity: 'heatFlux' },
    expression: 'U * (T_i - T_r)',
    symbols: { U: coefficient('transmittance'), T_i: kelvin('inside'), T_r: kelvin('what lies beyond') },
    source: 'definition of U',
    validity: 'steady state',
    file: 'src/tank/stack/films.ts',
    compute: (v) => heatFlux(v.U!, v.T_i!, v.T_r!),
    examples: [
      { U: 6.98, T_i: 299.15, T_r: 295.15 },
      { U: 0.99, T_i: 298.2, T_r: 290.4 },
    ],
  },
  {
    id: 'tank.faceTemperature',
    title: 'Temperature behind a resistance, on the way out',
    result: { symbol: 'T', ...kelvin('temperature there') },
    expression: 'T_i - q * R',
    symbols: {
      T_i: kelvin('inside'),
      q: { meaning: 'heat per area', unit: 'W/m²', quantity: 'heatFlux' },
      R: resistance('from the inside up to there'),
    },
    source: 'resistances in series',
    validity: 'steady state; found by repetition where a resistance depends on it',
    file: 'src/tank/stack/films.ts',
    compute: (v) => faceTemperature(v.T_i!, v.q!, v.R!),
    examples: [
      { T_i: 299.15, q: 27.9, R: 0.0133 },
      { T_i: 298.2, q: 7.7, R: 0.83 },
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
  ofPipe(
    'diameterInside',
    'Bore of a pipe',
    { symbol: 'D_1', ...length('bore') },
    'D - 2 * d',
    { D: length('outer diameter'), d: length('wall') },
    (v) => insideDiameter(v.D!, v.d!),
    [
      { D: 0.032, d: 0.0024 },
      { D: 0.05, d: 0.003 },
    ],
  ),
  ofPipe(
    'diameterOutside',
    'Diameter over a wrapping',
    { symbol: 'D_2', ...length('diameter') },
    'D + 2 * d',
    { D: length('outer diameter of the pipe'), d: length('wrapping') },
    (v) => outsideDiameter(v.D!, v.d!),
    [
      { D: 0.032, d: 0.013 },
      { D: 0.05, d: 0.019 },
    ],
  ),
  ofPipe(
    'pipeInnerResistance',
    'From the water to the outer surface of a pipe',
    { symbol: 'R_inner', ...perMetre('per metre') },
    'R_film + R_wall + R_wrapping',
    {
      R_film: perMetre('water film'),
      R_wall: perMetre('wall'),
      R_wrapping: perMetre('wrapping, 0 where there is none'),
    },
    (v) => pipeInnerResistance(v.R_film!, v.R_wall!, v.R_wrapping!),
    [
      { R_film: 0.039, R_wall: 0.16, R_wrapping: 0.4 },
      { R_film: 0.024, R_wall: 0.13, R_wrapping: 2.4 },
    ],
  ),
  ofPipe(
    'outerCoefficient',
    'Coefficient at the outer surface of a pipe',
    { symbol: 'h_o', ...coefficient('surface coefficient') },
    'f * (h_c + h_r)',
    {
      f: { meaning: 'departure of the real film from the computed one', unit: '1' },
      h_c: coefficient('convective coefficient'),
      h_r: coefficient('radiative coefficient'),
    },
    (v) => outerCoefficient(v.f!, v.h_c!, v.h_r!),
    [
      { f: 0.85, h_c: 4.9, h_r: 5.2 },
      { f: 1.2, h_c: 3.7, h_r: 5.4 },
    ],
  ),
  ofPipe(
    'pipeSurface',
    'Outer surface of a pipe',
    { symbol: 'T_s', ...kelvin('outer surface') },
    'T_w - q * R_inner',
    {
      T_w: kelvin('water'),
      q: { meaning: 'heat per metre', unit: 'W/m' },
      R_inner: perMetre('from the water to the outer surface'),
    },
    (v) => pipeSurface(v.T_w!, v.q!, v.R_inner!),
    [
      { T_w: 299.15, q: 4.2, R_inner: 0.2 },
      { T_w: 298.3, q: 1.8, R_inner: 2.5 },
    ],
  ),
  ofPipe(
    'heatOfLength',
    'Heat of a length of pipe',
    { symbol: 'Q', meaning: 'heat out of the water', unit: 'W', quantity: 'power' },
    'L * q',
    { L: length('length'), q: { meaning: 'heat per metre', unit: 'W/m' } },
    (v) => heatOfLength(v.L!, v.q!),
    [
      { L: 2.5, q: 4.2 },
      { L: 6, q: 1.8 },
    ],
  ),
];

/** A simple relation of a pipe. */
function ofPipe(
  id: string,
  title: string,
  result: Formula['result'],
  expression: string,
  symbols: Formula['symbols'],
  compute: Formula['compute'],
  examples: readonly FormulaValues[],
): Formula {
  const own = { id: `tank.${id}`, title, result, expression, symbols, compute, examples };
  return {
    ...own,
    source: 'geometry and resistances in series',
    validity: 'steady state; fittings left out',
    file: 'src/tank/pipes.ts',
  };
}
