// Public names of the cautions: the sentence on everything, the rules, and the facts they read.

export { caution, machineCautions } from './caution.ts';
export type { ChargeFactors } from './charge-limits.ts';
export {
  chargeAtFlammabilityLimit,
  chargeFactors,
  chargeLimitFormulas,
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
export {
  cautionsFormulas,
  householdFlammableCharge,
  leakConcentration,
  leakLimit,
  shareOfFlammabilityLimit,
} from './leak.ts';
export { lowestUsualPressureRatio, overloadedPowerRatio } from './operation.ts';
export { cautionRules, findCautions, worstFirst } from './rules.ts';
export { highestUsualWater, lowestUsualWater } from './water.ts';
