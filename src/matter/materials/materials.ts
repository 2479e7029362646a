// What tanks and lids are made of and wrapped in: conductivity with its doubt, density, specific heat, emissivity, from
// data/materials.json, checked once when loaded. Left out: moisture, ageing and temperature beyond the given ends.

import data from '../../../data/materials.json';
import { InputError } from '../../numerics/index.ts';
import { readMaterials } from './read.ts';
import type { Material, MaterialUse } from './types.ts';

const materials = readMaterials(data);
const byName = new Map(materials.map((entry) => [entry.name, entry]));

/** All names, in the file's order. */
export const materialNames: readonly string[] = materials.map((entry) => entry.name);
/** Names of what a tank is built of. */
export const wallMaterialNames: readonly string[] = namesFor('wall');
/** Names of what a lid is made of. */
export const lidMaterialNames: readonly string[] = namesFor('lid');
/** Names of what a tank is wrapped in. */
export const insulationNames: readonly string[] = namesFor('insulation');
/** Names of thin sheets and coats: liner, render, foil. */
export const liningMaterialNames: readonly string[] = namesFor('lining');
/** Names of the boards of a stand. */
export const standMaterialNames: readonly string[] = namesFor('stand');
/** Names of what bridges a layer: battens, frames, sealant. */
export const jointMaterialNames: readonly string[] = namesFor('joint');
/** Names of what pipes and hoses are made of. */
export const pipeMaterialNames: readonly string[] = namesFor('pipe');
/** Names of what lies on the bottom. */
export const bedMaterialNames: readonly string[] = namesFor('bed');
/** Names of what stands as a background in the water. */
export const backgroundMaterialNames: readonly string[] = namesFor('background');

/**
 * The material of this name.
 * @throws InputError (code unknownMaterial) naming the accepted names.
 */
export function material(name: string): Material {
  const found = byName.get(name);
  if (found === undefined) {
    throw new InputError('material', name, `one of ${materialNames.join(', ')}`, 'unknownMaterial');
  }
  return found;
}

function namesFor(use: MaterialUse): string[] {
  return materials.filter((entry) => entry.uses.includes(use)).map((entry) => entry.name);
}
