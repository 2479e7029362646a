// Public names of the materials of panes, lids, insulation, stands, pipes and beds.

export {
  layerConductivity,
  type MaterialLayer,
  materialLayer,
  type OwnMaterial,
  ownMaterialLayer,
} from './layers.ts';
export {
  conductivityLimits,
  emissivityLimits,
} from './limits.ts';
export {
  backgroundMaterialNames,
  bedMaterialNames,
  insulationNames,
  jointMaterialNames,
  lidMaterialNames,
  liningMaterialNames,
  material,
  materialNames,
  pipeMaterialNames,
  standMaterialNames,
  wallMaterialNames,
} from './materials.ts';
export { readMaterials } from './read.ts';
export {
  type Material,
  type MaterialRange,
  type MaterialUse,
  type MaterialValue,
  materialUses,
  type SheetPoint,
} from './types.ts';
