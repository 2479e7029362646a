// Public names of the tank: its description, its load by path, and its working.

export { fallTimeLinear, meanLoss, timeConstant, timesAlong, timesToFall, timeToFall } from './cooling.ts';
export type {
  Layer,
  Lid,
  LidLayer,
  MeasuredTank,
  RectangularTank,
  Surface,
  TankConditions,
  TankDescription,
} from './description.ts';
export { tankValidity } from './description.ts';
export type { TankFindingCode } from './findings.ts';
export { tankFindingCodes } from './findings.ts';
export { tankFormulas } from './formulas/index.ts';
export { lightHeat, pumpHeat } from './gains.ts';
export type {
  AirState,
  HeatPath,
  LidState,
  MeasuredIntermediates,
  PaneState,
  PathName,
  RectangularIntermediates,
  SurfaceState,
  TankAreas,
  TankLoad,
} from './load.ts';
export { LOOSE_LID_OPEN_SHARE, OUTER_EMISSIVITY } from './rectangular.ts';
export { outerFilmRange } from './stack/films.ts';
export { tankLoad } from './tank-load.ts';
export { surfaceMethods } from './water-surface/surface.ts';
export type { ConditionOrigins } from './working/index.ts';
export { tankLoadWorking } from './working/index.ts';
