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
export { cautionFluid, isFlammable, isToxic } from './facts.ts';
export { cautionRules, findCautions, findStandingTankCautions, type StandingTankFacts, worstFirst } from './find.ts';
export { cautionsFormulas } from './formulas.ts';
export type { MachineFacts, MachineStateFacts, StepsOfLimit } from './machine-facts.ts';
export { type ChargeComparison, type ComparisonName, chargeComparisons } from './rules/charge.ts';
export { moistureExcess } from './rules/damp.ts';
export {
  flammableFluidInUnsuitableEquipment,
  fluidAttacksCopper,
  fluidForStudyOnly,
  notForThisMachine,
  oilNotForThisFluid,
} from './rules/fluid.ts';
export { leakConcentration, leakLimit } from './rules/leak.ts';
export { highestUsualWater, lowestUsualWater } from './rules/livestock.ts';
export { highSideDesignTemperature, lowSideDesignTemperature } from './rules/pressure.ts';
export { type LeakSpace, leakSpaces, type SpaceName, type SpaceState } from './rules/spaces.ts';
export type { DampFaces, RestingWater, StandingTank, SummerFacts } from './standing-tank.ts';
