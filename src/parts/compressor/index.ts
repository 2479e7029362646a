// Public names of the compressor: model, running point, ratings, appliance classes and limits.

export { displacementOfSize, ofAnotherSize, shellConductanceOfSize, sizeForHeat } from './another-size.ts';
export { clampError, clampSensitivities, dischargeLag, type Sensitivities } from './bench/clamps.ts';
export { type BenchMeasurement, type BenchMeter, benchPoint } from './bench/point.ts';
export {
  type ApplianceClass,
  type ApplianceRanges,
  applianceClass,
  applianceClasses,
  applianceNames,
  applianceRanges,
} from './classes/appliances.ts';
export { oilChoices, startTypeChoices } from './classes/choices.ts';
export { domeSizes } from './classes/dome.ts';
export { type LikelyFluid, likelyFluid, usualOil } from './classes/fluids-by-year.ts';
export { type StartType, startTypes } from './classes/machine-data.ts';
export {
  compressorFluids,
  displacementContradiction,
  type MachineOrigin,
  type MachinePrior,
  machinePrior,
} from './classes/prior.ts';
export type { Application, SourcedEstimate } from './data.ts';
export { applications } from './data.ts';
export type {
  EnvelopeLimit,
  EnvelopeRequest,
  LimitedQuantity,
  LimitName,
  LimitReach,
} from './envelope/envelope.ts';
export { envelopeOf, limitedQuantities, limitsReached } from './envelope/envelope.ts';
export type { ApplicationLimits } from './envelope/limits.ts';
export { applicationLimits } from './envelope/limits.ts';
export {
  type Contradiction,
  currentShare,
  lockedRotorCurrentOf,
  type Nameplate,
  nameplateContradictions,
} from './envelope/nameplate.ts';
export { type RestingMeter, type StartingNumbers, type StartingRequest, startingNumbers } from './envelope/starting.ts';
export { type Trip, type TripFound, type TripSearch, tripAt } from './envelope/trip.ts';
export { compressorFormulas } from './formulas.ts';
export { clearanceVolumetricEfficiency } from './hermetic/efficiencies.ts';
export type { MotorPoint } from './hermetic/motor.ts';
export type { HermeticCompressor, HermeticParameter, Supply } from './hermetic/parameters.ts';
export { hermeticParameters, requireHermeticCompressor } from './hermetic/parameters.ts';
export type { CompressorWarning, HermeticPoint, RunningConditions } from './hermetic/point.ts';
export { hermeticPoint } from './hermetic/point.ts';
export { parameterScales } from './identification/coordinates.ts';
export { type Contribution, contributionsOf } from './identification/deviation/contributions.ts';
export { type DeviationKind, deviationKind } from './identification/deviation/discrepancy.ts';
export { type DoubtedPlace, modelDoubt } from './identification/deviation/doubt.ts';
export type {
  EvidencePoint,
  EvidenceQuantity,
  EvidenceSeries,
  MachineDescription,
  PriorRange,
} from './identification/evidence.ts';
export type {
  IdentifiedMachine,
  Influence,
  KnownPoint,
  ModelDoubt,
  ModelDoubtReason,
  Residual,
  SetAsidePoint,
} from './identification/identified.ts';
export {
  contributionSymbols,
  identifiedFormulas,
  missOf,
  pointsOfSum,
  sumOfContributions,
} from './identification/identified-formulas.ts';
export { identifyMachine } from './identification/identify.ts';
export { compressorWith } from './identification/machine-with.ts';
export { machineOfRanges } from './identification/of-ranges.ts';
export { endsAt } from './identification/priors.ts';
export { evidenceQuantityNames } from './identification/quantity-names.ts';
export { addMachineReading, hasMachineReading, type MachineReading, machineReading } from './machine-reading.ts';
export type { PlausibilityDoubt } from './plausibility/group-plausibility.ts';
export { type RatingDoubt, requirePlausibleRating } from './plausibility/rating-plausibility.ts';
export type { SensibleReading, UnitReading } from './plausibility/unit-readings.ts';
export {
  readingWords,
  remarkableOverallEfficiency,
  sensibleOverallEfficiency,
  unlikelyWords,
} from './plausibility/unit-readings.ts';
export type { GasBasis, LiquidBasis, RatingBasis, SaturationBasis } from './polynomial/basis.ts';
export { ratedConditions } from './polynomial/basis.ts';
export { type CoefficientAt, coefficientAt } from './polynomial/coefficient-at.ts';
export type {
  CoefficientCoverage,
  CoefficientEvidence,
  CoefficientRequest,
} from './polynomial/coefficient-evidence.ts';
export { evidenceFromCoefficients } from './polynomial/coefficient-evidence.ts';
export {
  type CoefficientGroup,
  coefficientGroups,
  type GridLevel,
  gridLevels,
} from './polynomial/coefficient-groups.ts';
export type { CoefficientSet, StatedSupply, TemperatureRange } from './polynomial/coefficient-set.ts';
export type { FitPoint, FitResidual, FitWeighting, TenCoefficientFit } from './polynomial/fit.ts';
export { fitTenCoefficients } from './polynomial/fit.ts';
export type { RatedStates } from './polynomial/flow-and-capacity.ts';
export { liquidWorth, ratedStates } from './polynomial/flow-and-capacity.ts';
export type { PrintedRating } from './polynomial/rating-evidence.ts';
export { ratingEvidence } from './polynomial/rating-evidence.ts';
export { flowRatioDabiriRice1981, powerRatioDabiriRice1981 } from './polynomial/superheat.ts';
export type { TableQuantity } from './polynomial/table/columns.ts';
export type { ImpliedLiquid, TableEvidence, TableRequest } from './polynomial/table/evidence.ts';
export { evidenceFromTable } from './polynomial/table/evidence.ts';
export type { TableDoubt } from './polynomial/table/plausibility.ts';
export type {
  PointRow,
  PointTable,
  ReadTable,
  TableColumn,
  TableProblem,
  TableProblemCode,
} from './polynomial/table/point-table.ts';
export { readPointTable } from './polynomial/table/point-table.ts';
export type { TenCoefficients } from './polynomial/ten-coefficients.ts';
export { requireTenCoefficients, tenCoefficients } from './polynomial/ten-coefficients.ts';
export { sheetTolerance } from './polynomial/tolerance.ts';
export type { PolynomialQuantity, PolynomialUnit, TemperatureUnit } from './polynomial/units.ts';
export { polynomialUnits, polynomialUnitsInSi } from './polynomial/units.ts';
export { coefficientWorking, polynomialWorking } from './polynomial/working.ts';
export type { RatingConditions, RatingPoint } from './rating-points.ts';
export { ratingConditions, ratingPoint, ratingPointNames, ratingPoints, ratingPointVariants } from './rating-points.ts';
export type { BetweenPressures, RunningMachine, RunningPoint } from './running.ts';
export { runningPoint } from './running.ts';
export type { DoubtOrigins, MachineOrigins, RunningEnds } from './running-working.ts';
export { runningWorking } from './running-working.ts';
