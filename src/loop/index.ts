// Public names of the loop: textbook cycle, operating point, property diagrams, and their working.

export {
  gaugePressureOf,
  relativeVolumeDrawn,
  temperatureLift,
} from './compared.ts';
export {
  inletVolumeFlow,
  massFlowFromDisplacement,
  massFlowFromPower,
  ratePerSecond,
} from './cycle-flow.ts';
export { cyclePath, type DiagramState, type PathPoint, type Process } from './cycle-path.ts';
export type { TextbookCycleRequest } from './cycle-request.ts';
export { checkTextbookCycleRequest, usualDeadState } from './cycle-request.ts';
export type {
  CycleLevel,
  CyclePerSecond,
  CyclePoint,
  CyclePointName,
  CyclePoints,
  CycleWarning,
  ExergyBasis,
  LiquidSuctionExchange,
  MassFlowKey,
  PressureLosses,
  TextbookCycle,
} from './cycle-result.ts';
export {
  type DiagramKind,
  type DiagramLine,
  type DiagramRegion,
  diagramRegion,
  type LineKind,
  type PropertyDiagram,
  propertyDiagram,
} from './diagram.ts';
export {
  carnotHeatingCop,
  coefficientOfPerformance,
  energyAccountResidual,
  enthalpyDifference,
  isentropicEfficiency,
  meanTemperatureLorenz,
  outletEnthalpyFromEfficiency,
  pressureLoss,
  pressureRatio,
  streamPower,
  volumetricHeatingCapacity,
} from './energy.ts';
export {
  type ExergyDestruction,
  exergyAccount,
  exergyDestroyedAdiabatic,
  exergyDestroyedWithHeat,
  minimumWork,
  secondLawEfficiency,
} from './exergy.ts';
export { loopFormulas } from './formulas/index.ts';
export {
  enthalpyAfterHeat,
  exchangedHeat,
  exchangerEffectiveness,
  exergyDestroyedBetweenStreams,
} from './liquid-suction-exchange.ts';
export {
  condensingTemperature,
  evaporatingTemperature,
  type OperatingPoint,
  type OperatingPointInput,
  type OperatingWarning,
  operatingPoint,
  smallLift,
} from './operating-point.ts';
export { textbookCycle } from './textbook-cycle.ts';
export { type OperatingOrigins, operatingPointWorking } from './working/operating-point.ts';
export { textbookCycleWorking } from './working/textbook-cycle.ts';
