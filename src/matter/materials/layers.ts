// A layer as it enters a wall: of a material of the table, or of a user's own. Numbers in base SI, each refused outside
// believable ends with the path of the place it was written at.

import { InputError } from '../../numerics/index.ts';
import { conductivityLimits, emissivityLimits, type Limits, thicknessLimits } from './limits.ts';
import { material } from './materials.ts';
import { equivalentConductivity, interpolatedTransmittance } from './sheets.ts';
import type { MaterialRange } from './types.ts';

/** A sheet, board or bed: thickness d [m], conductivity k [W/(m K)], emissivity ε [-] of its faces. */
export interface MaterialLayer {
  readonly thickness: number;
  readonly conductivity: MaterialRange;
  readonly emissivity: MaterialRange;
}

/** A user's own material: k [W/(m K)], d [m], and ε [-] of its faces if known. */
export interface OwnMaterial {
  readonly conductivity: number;
  readonly thickness: number;
  readonly emissivity?: number;
}

/** ε of a face nobody described, with its ends: paint, plastic, wood, stone. Handbook range, from memory, not re-read. */
const usualEmissivity: MaterialRange = {
  low: 0.85,
  likely: 0.9,
  high: 0.95,
  source: 'long-wave emissivity of paint, plastics, wood and stone as heat transfer handbooks give it, from memory',
};

/**
 * Layer of a material of the table.
 * @param name       name of the material
 * @param thickness  d [m]
 * @param path       where the layer was written, for errors: 'tank.load.wall'; its name and thickness follow
 * @returns          layer with k and ε, low, likely, high
 * @throws InputError for an unknown name, a thickness outside 1e-6 to 5 m, or a sheet thickness outside the tabulated ones.
 * Source: the material's own. Worked value: glass, 10 mm → k 1.0 (0.9 to 1.1) W/(m K), ε 0.87.
 */
export function materialLayer(name: string, thickness: number, path = ''): MaterialLayer {
  requireLimits(joined(path, 'thickness'), thickness, thicknessLimits, 'm');
  return { thickness, conductivity: layerConductivity(name, thickness), emissivity: material(name).emissivity };
}

/**
 * Layer of a user's own material.
 * @param own   k [W/(m K)], d [m], ε [-]
 * @param path  where it was written, for errors
 * @returns     layer whose three conductivities are the user's; ε 0.9 (0.85 to 0.95) where none was given
 * @throws InputError if k is outside 0.01 to 450 W/(m K), d outside 1e-6 to 5 m, or ε outside 0.01 to 1.
 * Worked value: k 0.035, d 0.02 → R 0.571 m² K/W.
 */
export function ownMaterialLayer(own: OwnMaterial, path = ''): MaterialLayer {
  const { conductivity, thickness, emissivity } = own;
  requireLimits(joined(path, 'conductivity'), conductivity, conductivityLimits, 'W/(m K)');
  requireLimits(joined(path, 'thickness'), thickness, thicknessLimits, 'm');
  if (emissivity !== undefined) requireLimits(joined(path, 'emissivity'), emissivity, emissivityLimits, '');
  return {
    thickness,
    conductivity: exactly(conductivity),
    emissivity: emissivity === undefined ? usualEmissivity : exactly(emissivity),
  };
}

/**
 * Conductivity k of a layer of this material: for a solid the tabulated one; for a twin-wall sheet the equivalent one
 *     k = d / (1/U − 0.17),  U interpolated linearly over the thickness
 * @param name       name of the material
 * @param thickness  d [m]
 * @returns          k [W/(m K)], low, likely, high
 * @throws InputError for an unknown name, a thickness outside 1e-6 to 5 m, or a sheet thickness outside the tabulated ones.
 * Source: the material's own. Worked value: polycarbonateTwinWall, 10 mm → 0.0656 W/(m K).
 */
export function layerConductivity(name: string, thickness: number): MaterialRange {
  const { sheets, conductivity } = material(name);
  requireLimits('thickness', thickness, thicknessLimits, 'm');
  if (sheets === undefined) return conductivity;
  const likely = equivalentConductivity(interpolatedTransmittance(name, sheets.points, thickness), thickness);
  return {
    low: likely * (1 - sheets.doubt),
    likely,
    high: likely * (1 + sheets.doubt),
    source: sheets.source,
  };
}

function exactly(value: number): MaterialRange {
  return { low: value, likely: value, high: value, source: 'own value' };
}

function requireLimits(path: string, value: number, { min, max }: Limits, unit: string): void {
  if (!(value >= min && value <= max)) throw new InputError(path, value, `${min} to ${max} ${unit}`.trimEnd());
}

function joined(path: string, last: string): string {
  return path === '' ? last : `${path}.${last}`;
}
