// Public names of the compressor: model, running point, ratings, appliance classes and limits.

export { oilChoices, startTypeChoices } from './classes/choices.ts';
export { type LikelyFluid, likelyFluid, usualOil } from './classes/fluids-by-year.ts';
export { type StartType, startTypes } from './classes/machine-data.ts';
export { type MachineOrigin, type MachinePrior, machinePrior, referencePressure } from './classes/prior.ts';
export type { ApplianceClass, ApplianceRanges, CompressorRanges } from './classes.ts';
export {
  applianceClass,
  applianceClasses,
  applianceNames,
  applianceRanges,
  compressorFluids,
  genericRanges,
  speedForMains,
} from './classes.ts';
export type { Application, SourcedEstimate } from './data.ts';
export { applications } from './data.ts';
export { distanceAbove, distanceBelow } from './envelope/limit-distance.ts';
export type { ApplicationLimits } from './envelope/limits.ts';
export { applicationLimits } from './envelope/limits.ts';
export { compressorFormulas } from './formulas.ts';
export type { MotorPoint } from './hermetic/motor.ts';
export { stallingSlip } from './hermetic/motor.ts';
export type { HermeticCompressor, HermeticParameter, Supply } from './hermetic/parameters.ts';
export { hermeticParameters, requireHermeticCompressor, requireSupply } from './hermetic/parameters.ts';
export type { HermeticPoint, RunningConditions } from './hermetic/point.ts';
export { hermeticPoint } from './hermetic/point.ts';
export { parameterScales } from './identification/coordinates.ts';
export { type DoubtedPlace, modelDoubt } from './identification/deviation/doubt.ts';
export type {
  EvidencePoint,
  EvidenceQuantity,
  EvidenceSeries,
  MachineDescription,
  PriorRange,
} from './identification/evidence.ts';
export { evidenceQuantities } from './identification/evidence.ts';
export { identificationFormulas } from './identification/formulas.ts';
export type {
  IdentifiedMachine,
  Influence,
  KnownPoint,
  ModelDoubt,
  ModelDoubtReason,
  Residual,
} from './identification/identified.ts';
export { identifyMachine } from './identification/identify.ts';
export { compressorWith } from './identification/machine-with.ts';
export type { CompressorModel } from './model.ts';
export { requireCompressorModel } from './model.ts';
export { currentShare, nameplateFormulas } from './nameplate.ts';
export type { CompressorPoint, CompressorWarning } from './point.ts';
export { compressorPoint, littleFlowVolumetricEfficiency, volumetricEfficiency } from './point.ts';
export type { RatedMachine, RatingRequest, RatingWarning } from './rating.ts';
export { identifiableDisplacement, modelFromRating, usualOverallEfficiency } from './rating.ts';
export type { RatingConditions, RatingPoint } from './rating-points.ts';
export { ratingConditions, ratingPoint, ratingPointNames, ratingPoints } from './rating-points.ts';
export type { RatingOrigins } from './rating-working.ts';
export { ratingWorking } from './rating-working.ts';
export type { BetweenPressures, RunningMachine, RunningPoint, RunningPointOf } from './running.ts';
export { runningPoint } from './running.ts';
export type { CompressorOrigins } from './working.ts';
export { compressorWorking } from './working.ts';
