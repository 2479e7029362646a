// Public names of the exchangers: sizes of coil and face, films, assumptions and working.

export type { SourcedRange, TubeMaterial, TubeWall } from './assumptions.ts';
export { exchangerAssumptions, tubeMaterials, tubeWall } from './assumptions.ts';
export type {
  CondenserArrangement,
  CondenserAssumptions,
  CondenserCoil,
  CondenserRequest,
  CondenserWarning,
  TankCoil,
  Tube,
} from './condenser.ts';
export { condenserCoil, condenserLeavesOut, likelyCondenserAssumptions } from './condenser.ts';
export {
  effectivenessCounterFlow,
  effectivenessIsothermal,
  logarithmicMean,
  transferUnitsIsothermal,
} from './effectiveness.ts';
export type { EvaporatorAssumptions, EvaporatorFace, EvaporatorRequest, EvaporatorWarning } from './evaporator.ts';
export { evaporatorFace, evaporatorLeavesOut, likelyEvaporatorAssumptions } from './evaporator.ts';
export {
  frictionFactorChurchill1977,
  nusseltHorizontalCylinderChurchillChu1975,
  nusseltImmersedCoilXinEbadian1996,
  nusseltInsideTube,
  nusseltTurbulentGnielinski1976,
} from './films.ts';
export { exchangerFormulas } from './formulas.ts';
export type { LoopFlow, RefrigerantToLoop } from './loop-water.ts';
export type { CondenserOrigins, EvaporatorOrigins } from './working.ts';
export { condenserWorking, evaporatorWorking } from './working.ts';
