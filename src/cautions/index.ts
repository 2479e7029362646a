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
export { highestUsualWater, lowestUsualWater } from './rules/animals/livestock.ts';
export { moistureExcess } from './rules/house/damp.ts';
export { type ChargeComparison, type ComparisonName, chargeComparisons } from './rules/refrigerant/charge.ts';
export {
  flammableFluidInUnsuitableEquipment,
  fluidAttacksCopper,
  fluidForStudyOnly,
  notForThisMachine,
  oilNotForThisFluid,
} from './rules/refrigerant/fluid.ts';
export { leakConcentration, leakLimit } from './rules/refrigerant/leak.ts';
export { highSideDesignTemperature, lowSideDesignTemperature } from './rules/refrigerant/pressure.ts';
export { type LeakSpace, leakSpaces, type SpaceName, type SpaceState } from './rules/refrigerant/spaces.ts';
export type { DampFaces, RestingWater, StandingTank, SummerFacts } from './standing-tank.ts';
