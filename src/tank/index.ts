// Public names of the tank: its description, its load by path, and its working.

export { builtEvaporation, builtLoad, builtLosses } from './built/built-load.ts';
export { checkBuilt } from './built/checks.ts';
export { addBuiltTankModel } from './built-model.ts';
export type {
  BuiltTank,
  Cover,
  Exposure,
  Facing,
  Panel,
  Pipe,
  Surface,
  Vessel,
  VesselName,
  WaterExchange,
} from './built-tank.ts';
export { vesselNames } from './built-tank.ts';
export { fallTimeLinear, meanLoss, timeConstant, timesAlong, timesToFall, timeToFall } from './cooling.ts';
export type { HoodState } from './cover/hood.ts';
export type { MeasuredTank, TankConditions, TankDescription } from './description.ts';
export { tankValidity } from './description.ts';
export type { TankFindingCode } from './findings/codes.ts';
export { tankFindingCodes } from './findings/codes.ts';
export { tankFormulas } from './formulas/index.ts';
export { lightHeat, pumpHeat, ultravioletHeat } from './gains.ts';
export type {
  CylindricalShape,
  Face,
  Layer,
  LidLayer,
  LShape,
  Outline,
  OutlineFace,
  PiecesShape,
  Point,
  RectangularShape,
  RectangularTank,
  Shape,
  ShapeMeasures,
} from './geometry/index.ts';
export { LOOSE_LID_OPEN_SHARE, measuresOf, OUTER_EMISSIVITY, outline, rectangularTank } from './geometry/index.ts';
export type {
  AirDrawnState,
  AirState,
  BuiltIntermediates,
  HeatPath,
  HeatSink,
  LidState,
  MeasuredIntermediates,
  SurfaceState,
  TankGains,
  TankLoad,
  VesselState,
} from './load.ts';
export {
  fromLoadMap,
  type LoadMap,
  loadMap,
  type MapAxes,
  type MapAxis,
  type MapAxisName,
  type MapColumn,
  mapAxisNames,
  mapColumns,
  pointOf,
} from './load-map.ts';
export { meanPower } from './measured.ts';
export {
  applyMeasures,
  applyToBuilt,
  areaOf,
  type ChangedPart,
  type LidSheet,
  type Measure,
  type MeasureOutcome,
  type NoEffect,
  type NoEffectReason,
  type PanelGroup,
  type PanelPlace,
  panelGroups,
  panelsOf,
  type WrappedTank,
} from './measures/index.ts';
export { carriedHeat, heatThatLeft, measuredOverModelled } from './meter.ts';
export type { PipeState } from './pipes.ts';
export type { DampFace, DewPoints } from './stack/condensation.ts';
export { dampFaces } from './stack/condensation.ts';
export { standResistance } from './stack/enclosures.ts';
export { outerFilmRange } from './stack/films.ts';
export type { ResistanceLayer, SealedGap, SolidLayer, Stack, StackLayer, WaterGap } from './stack/layers.ts';
export type { LayerState, PanelState } from './stack/panel.ts';
export { type BareTankHeat, tankEvaporationOf, tankHeatOf } from './tank-heat.ts';
export { tankLoad } from './tank-load.ts';
export type { MethodCoefficients, SurfaceMethodRange } from './water-surface/methods.ts';
export { surfaceMethodRange } from './water-surface/methods.ts';
export { INDOOR_AIR_SPEED, surfaceMethods } from './water-surface/surface.ts';
export type { ConditionOrigins, LayerPart } from './working/index.ts';
export { coolingWorking, tankLoadWorking } from './working/index.ts';
