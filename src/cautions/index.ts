// Public names of the cautions: the sentence on everything, the rules, and the facts they read.

export { caution, machineCautions, notChecked } from './caution.ts';
export type { ChargeFactors } from './charge-limits.ts';
export {
  chargeAtFlammabilityLimit,
  chargeFactors,
  chargeVolumes,
  commercialCabinetVolume,
  floorOfRoom,
  floorReleaseHeight,
  largestChargeOnFloorArea,
  smallestFloorArea,
  smallestRoomVolume,
  wallReleaseHeight,
} from './charge-limits.ts';
export type { CautionCode } from './codes.ts';
export { cautionCodes } from './codes.ts';
export type { CautionFinding, CautionRule } from './fact.ts';
export type {
  AirPumpIntake,
  CautionFacts,
  CautionFluid,
  CondenserArrangement,
  Enclosure,
  LevelOverWater,
  Livestock,
  MachineLimits,
  OperatingFacts,
  OperatingMoment,
  OverTemperatureCutOut,
  PressureFacts,
  RangedFact,
  Region,
  Span,
  StuckOn,
  SunkenPlace,
  WettedMetal,
  YesNoUnknown,
} from './facts.ts';
export { cautionFluid, isFlammable } from './facts.ts';
export { cautionRules, findCautions, worstFirst } from './find.ts';
export { cautionsFormulas } from './formulas.ts';
export {
  annexCAboveGround,
  annexCBelowGround,
  type ChargeComparison,
  type ComparisonName,
  chargeComparisons,
  householdFlammableCharge,
} from './rules/charge.ts';
export { flammableFluidInUnsuitableEquipment, notForThisMachine, oilNotForThisFluid } from './rules/fluid.ts';
export { leakConcentration, leakLimit, shareOfFlammabilityLimit } from './rules/leak.ts';
export { lowestUsualPressureRatio, overloadedPowerRatio } from './rules/operation.ts';
export { highSideDesignTemperature, lowSideDesignTemperature } from './rules/pressure.ts';
export { capillaryFlowRatio, migrationDifference } from './rules/rest-and-flow.ts';
export { type LeakSpace, leakSpaces, type SpaceName, type SpaceState } from './rules/spaces.ts';
export { usualTimePerKelvin } from './rules/warming.ts';
export { burningSurface, highestUsualWater, lowestUsualWater } from './rules/water.ts';
