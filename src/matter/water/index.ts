// Public names of fresh and sea water: properties and formula records.

export { waterFormulas } from './formulas.ts';
export {
  latentHeat,
  vapourPressureFactor,
  waterConductivity,
  waterDensity,
  waterExpansion,
  waterHeatCapacity,
  waterValidity,
  waterViscosity,
} from './properties.ts';
