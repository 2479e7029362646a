// Public names of the assessment: design to verdict, its doubt, its words and its working.

export { distanceQuantity } from './answers/limits.ts';
export { type AssessOutcome, Assessor, assessDesign, lastWorkings } from './assess.ts';
export type {
  Assessment,
  AssumptionLeft,
  BandWithUnit,
  BreakEven,
  ChargeComparisonAnswer,
  HeatFlows,
  Influence,
  LimitMargin,
  LimitQuantity,
  LoadStanding,
  LoopAgainst,
  LoopPoint,
  MeasureNext,
  MonthAnswer,
  MonthOfAccount,
  OperatingAnswer,
  OperatingMomentAnswer,
  ScenarioAccount,
  SizingAnswer,
  SpaceAnswer,
  Standing,
} from './assessment/assessment.ts';
export type { MachineAnswer, ModelCorrection, ResidualAnswer } from './assessment/machine-answer.ts';
export type {
  FallAnswer,
  HeatSink,
  LayerAnswer,
  LossPath,
  MeterAnswer,
  MeterExplanation,
  PanelAnswer,
  TankAnswer,
  TankMonth,
  VesselAnswer,
} from './assessment/tank-answer.ts';
export {
  type AssessOptions,
  type BareAssessment,
  BareAssessor,
  type OutcomeOf,
} from './bare-assessor.ts';
export { type DoubtfulInput, doubt, varianceShares } from './doubt/doubt.ts';
export type { ResultRange } from './doubt/range.ts';
export { isCharge, withheldWord, withholdsCharge, withoutCharge } from './findings/withheld.ts';
export { allFormulas, formulaById } from './formulas.ts';
export type { EngineError, Refusal } from './from-design.ts';
export type { StageCounts } from './stage.ts';
export { hasMachineParts } from './stages/machine-handed-over.ts';
export { hasSizedTanks } from './stages/sized-tank/handed-over.ts';
export { exactStates, type StatesFrom } from './stages/states.ts';
export { tableStates } from './stages/table-states.ts';
export { type CompareOutcome, compareRefrigerants } from './studies/compare.ts';
export { compareTextbookCycles, type TextbookComparisonRequest } from './studies/compare-textbook.ts';
export {
  type ChargeFigures,
  type ComparedCycle,
  type ComparedFacts,
  type ComparisonBasis,
  type ComparisonColumn,
  type ComparisonRow,
  comparisonBases,
  type MachineBasis,
  type PairDifference,
  type RefrigerantComparison,
} from './studies/comparison/comparison.ts';
export { fewestFluids, mostFluids } from './studies/comparison/fluids.ts';
export type { ComparedLevels } from './studies/comparison/subject.ts';
export { assessLoadMap, type LoadMapAnswer, type LoadMapOutcome } from './studies/load-map.ts';
export { type ReadMachine, readMachine } from './studies/machine/alone.ts';
export type {
  CompatibilityFact,
  CountRow,
  HowMany,
  MachineOutcome,
  MachineSentence,
  MachineStudy,
  MapBasis,
  MapFamily,
  MapLimit,
  MapMark,
  MapPoint,
  MapQuantity,
  MapTrip,
  OtherFluid,
  Remedy,
  RemedyName,
  RemedyReason,
  RemedyState,
  StagedMonth,
  StartingFact,
} from './studies/machine/answer.ts';
export type { AskedBasis } from './studies/machine/points/basis.ts';
export { assessFit, type CoefficientFit, type FitAnswer, type FitOutcome } from './studies/machine/points/fit.ts';
export type {
  BasisValue,
  CoefficientValue,
  MachinePoint,
  PointBasis,
  UnansweredPoint,
  UnitBand,
} from './studies/machine/points/point-answer.ts';
export { type AskedPoints, assessMachinePoints } from './studies/machine/points/points.ts';
export {
  type AskedPlace,
  assessSettle,
  type PlaceValue,
  type SettleAnswer,
  type SettledNumber,
  type SettleOutcome,
} from './studies/machine/points/settle.ts';
export { assessMachine, type MachineStudyOptions } from './studies/machine/study.ts';
export { type StateDifference, stateDifferences } from './studies/state-differences.ts';
export type {
  BoardPoint,
  HeatPumpStep,
  LastInchCurve,
  MeasureAlone,
  MeasureChange,
  MeasureCost,
  MeasureKind,
  MeasureNotApplied,
  NotAppliedReason,
  PathOfState,
  PaybackRange,
  PriceCell,
  PriceTable,
  WaterfallBar,
  WithHeatPump,
  WrappedState,
  WrappingAnswer,
  WrappingBasis,
  WrappingGain,
  WrappingMeasure,
  WrappingOutcome,
  WrappingStep,
} from './studies/wrapping/answer.ts';
export { assessWrapping } from './studies/wrapping/study.ts';
export {
  assessTankLoad,
  type LoadInfluence,
  type TankLoadAnswer,
  type TankLoadOptions,
  type TankLoadOutcome,
} from './tank-load.ts';
export { pathLabel, scenarioLabel } from './wording/labels.ts';
export { limitLabel } from './wording/limits.ts';
export { type LoopAgainstWords, sayLoopAgainst } from './wording/loop-against.ts';
export {
  doubtWords,
  evidenceWords,
  limitWords,
  type MachineWords,
  remedyBasis,
  remedyReasons,
  remedyWords,
  sayMachine,
  saySpan,
  sayStartsAndFailure,
  whenWords,
} from './wording/machine.ts';
export { possibleOf, sayNoLoop } from './wording/no-loop.ts';
export {
  basisTitles,
  type SaidColumn,
  type SaidComparison,
  sayRefrigerants,
} from './wording/refrigerant-comparison.ts';
export type { SaidCell, SaidGroup, SaidRow } from './wording/refrigerant-table.ts';
export { sayFinding } from './wording/say-finding.ts';
export { messageInView, sayProblemInView } from './wording/si-text.ts';
export { sayStudyOnly } from './wording/study-only.ts';
export { standingTitles } from './wording/verdict.ts';
export { type SaidWrapping, sayPayback, sayWrapping, sayYears } from './wording/wrapping.ts';
export { designPathsOf } from './working/design-paths.ts';
export { type NamedResult, namedResults, type ResultGroup } from './working/results.ts';
