// Public names of the cautions: the sentence on everything, the rules, and the facts they read.

export { caution, machineCautions } from './caution.ts';
export type { ChargeFactors } from './charge-limits.ts';
export {
  chargeAtFlammabilityLimit,
  chargeFactors,
  chargeVolumes,
  commercialCabinetVolume,
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
  CautionFacts,
  CautionFluid,
  CondenserArrangement,
  Enclosure,
  Livestock,
  MachineLimits,
  OperatingFacts,
  OperatingMoment,
  OverTemperatureCutOut,
  WettedMetal,
  YesNoUnknown,
} from './facts.ts';
export { cautionFluid, isFlammable } from './facts.ts';
export { cautionRules, findCautions, worstFirst } from './find.ts';
export { cautionsFormulas } from './formulas.ts';
export {
  householdFlammableCharge,
  leakConcentration,
  leakLimit,
  shareOfFlammabilityLimit,
} from './rules/leak.ts';
export { lowestUsualPressureRatio, overloadedPowerRatio } from './rules/operation.ts';
export { highestUsualWater, lowestUsualWater } from './rules/water.ts';
