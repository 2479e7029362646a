export type { ApplianceClass, ApplianceRanges, CompressorRanges } from './classes.ts';
export {
  applianceClass,
  applianceClasses,
  applianceNames,
  applianceRanges,
  genericRanges,
  speedForMains,
} from './classes.ts';
export type { Application, SourcedEstimate } from './data.ts';
export { applications } from './data.ts';
export type { ApplicationLimits } from './limits.ts';
export { applicationLimits } from './limits.ts';
export type { CompressorModel } from './model.ts';
export { requireCompressorModel } from './model.ts';
export type { RatingConditions, RatingPoint } from './rating-points.ts';
export { ratingConditions, ratingPoint, ratingPointNames, ratingPoints } from './rating-points.ts';
