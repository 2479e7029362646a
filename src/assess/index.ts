// Public names of the assessment: design to verdict, its doubt, its words and its working.

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
  OperatingMomentAnswer,
  ScenarioAccount,
  SizingAnswer,
  Standing,
  TankAnswer,
} from './assessment.ts';
export { type DoubtfulInput, doubt, varianceShares } from './doubt.ts';
export { allFormulas, formulaById } from './formulas.ts';
export type { ResultRange } from './range.ts';
export type { StageCounts } from './stage.ts';
export { assessTankLoad, type LoadInfluence, type TankLoadAnswer, type TankLoadOutcome } from './tank-load.ts';
export { isCharge, withheldWord, withholdsCharge, withoutCharge } from './withheld.ts';
export { pathLabel, scenarioLabel } from './wording/labels.ts';
export { sayFinding } from './wording/say-finding.ts';
export { messageInView } from './wording/si-text.ts';
export { standingTitles } from './wording/verdict.ts';
