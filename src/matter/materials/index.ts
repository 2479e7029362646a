// Public names of the materials of panes, lids and insulation.

export type { Material, MaterialRange, MaterialUse, MaterialValue, SheetPoint } from './materials.ts';
export {
  insulationNames,
  layerConductivity,
  lidMaterialNames,
  material,
  materialNames,
  readMaterials,
  wallMaterialNames,
} from './materials.ts';
