export { type AssessOutcome, Assessor, assessDesign, type EngineError } from './assess.ts';
export type {
  Assessment,
  AssumptionLeft,
  BandWithUnit,
  HeatFlows,
  Influence,
  LimitMargin,
  LoopPoint,
  LossPath,
  MonthAnswer,
  OperatingAnswer,
  ScenarioAccount,
  SizingAnswer,
  Standing,
  TankAnswer,
} from './assessment.ts';
export { type DoubtfulInput, doubt, varianceShares } from './doubt.ts';
export type { StageCounts } from './stage.ts';
export { pathLabel, scenarioLabel } from './wording/labels.ts';
export { sayFinding } from './wording/say-finding.ts';
export { standingTitles } from './wording/verdict.ts';
export { allFormulas, formulaById } from './workings.ts';
