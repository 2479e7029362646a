// All rules in one list, and the function that asks each of them. Worst first: stop, look, note; within one severity in
// the order of the list. An empty answer means "no limit found", nothing more.

import { InputError, requireFinite, requireNonNegative, requirePositive } from '../numerics/index.ts';
import type { Finding, Severity } from '../quantities/index.ts';
import type { CautionCode } from './codes.ts';
import type { CautionFinding, CautionRule } from './fact.ts';
import type { CautionFacts } from './facts.ts';
import * as powerFailure from './rules/animals/power-failure.ts';
import * as summer from './rules/animals/summer.ts';
import * as warming from './rules/animals/warming.ts';
import * as water from './rules/animals/water.ts';
import * as boards from './rules/house/boards.ts';
import * as covers from './rules/house/covers.ts';
import * as damp from './rules/house/damp.ts';
import * as mains from './rules/house/mains.ts';
import * as motor from './rules/machine/motor.ts';
import * as operation from './rules/machine/operation.ts';
import * as restAndFlow from './rules/machine/rest-and-flow.ts';
import * as start from './rules/machine/start.ts';
import * as airPump from './rules/refrigerant/air-pump.ts';
import * as charge from './rules/refrigerant/charge.ts';
import * as fluid from './rules/refrigerant/fluid.ts';
import * as leak from './rules/refrigerant/leak.ts';
import * as pressure from './rules/refrigerant/pressure.ts';
import * as toxicity from './rules/refrigerant/toxicity.ts';

/** What the rules about the tank apart from any machine look at. */
export type StandingTankFacts = Pick<CautionFacts, 'standing' | 'livestock' | 'waterTemperature' | 'roomVolume'>;

/** Rules about a wrapped or covered tank, which need no machine. */
const standingTankRules = {
  summerOverheating: summer.summerOverheating,
  summerOverheatingWrapped: summer.summerOverheatingWrapped,
  coverHoldsGases: covers.coverHoldsGases,
  lightsUnderCover: covers.lightsUnderCover,
  insulationBurns: boards.insulationBurns,
  glueAndFibres: boards.glueAndFibres,
  boardUnderTank: boards.boardUnderTank,
  wallBehindBoard: boards.wallBehindBoard,
  hiddenFacesSweat: damp.hiddenFacesSweat,
  roomTakesWater: damp.roomTakesWater,
  powerFailureChillsFast: powerFailure.powerFailureChillsFast,
  powerFailureChillsTank: powerFailure.powerFailureChillsTank,
} satisfies Readonly<Partial<Record<CautionCode, CautionRule<StandingTankFacts>>>>;

/** Every rule by the code it speaks with. */
export const cautionRules: Readonly<Record<CautionCode, CautionRule<CautionFacts>>> = {
  flammableFluidInUnsuitableEquipment: fluid.flammableFluidInUnsuitableEquipment,
  flammableFluidEquipmentUnconfirmed: fluid.flammableFluidEquipmentUnconfirmed,
  flammableFluid: fluid.flammableFluid,
  notForThisMachine: fluid.notForThisMachine,
  oilNotForThisFluid: fluid.oilNotForThisFluid,
  materialsForOtherFluid: fluid.materialsForOtherFluid,
  fluidForStudyOnly: fluid.fluidForStudyOnly,
  fluidAttacksCopper: fluid.fluidAttacksCopper,
  ozoneDepletingFluid: fluid.ozoneDepletingFluid,
  highWarmingFluid: fluid.highWarmingFluid,
  openingNeedsLicence: fluid.openingNeedsLicence,
  leakFlammableInEnclosure: leak.leakFlammableInEnclosure,
  leakNearFlammableInEnclosure: leak.leakNearFlammableInEnclosure,
  leakFlammableInRoom: leak.leakFlammableInRoom,
  leakNearFlammableInRoom: leak.leakNearFlammableInRoom,
  leakAbovePracticalLimitInRoom: leak.leakAbovePracticalLimitInRoom,
  leakAboveBreathingLimitInRoom: toxicity.leakAboveBreathingLimitInRoom,
  toxicFluid: toxicity.toxicFluid,
  leakToxicInRoom: toxicity.leakToxicInRoom,
  flammableFluidInOtherRoom: leak.flammableFluidInOtherRoom,
  leakGathersInLowPlace: leak.leakGathersInLowPlace,
  lowPlaceUnknown: leak.lowPlaceUnknown,
  airPumpDrawsLeak: airPump.airPumpDrawsLeak,
  airPumpIntakeUnknown: airPump.airPumpIntakeUnknown,
  flammableChargeLarge: charge.flammableChargeLarge,
  flammableChargeAboveFloorArea: charge.flammableChargeAboveFloorArea,
  motorOverloaded: operation.motorOverloaded,
  motorWouldTrip: motor.motorWouldTrip,
  currentAboveRated: motor.currentAboveRated,
  suctionAboveMotor: motor.suctionAboveMotor,
  littleFlowToCoolMotor: motor.littleFlowToCoolMotor,
  floodBack: motor.floodBack,
  returnGasTooCold: motor.returnGasTooCold,
  lowTorqueStartAgainstPressure: start.lowTorqueStartAgainstPressure,
  shortOffTime: start.shortOffTime,
  evaporatingAboveApplication: operation.evaporatingAboveApplication,
  evaporatingBelowApplication: operation.evaporatingBelowApplication,
  dischargeAboveHighest: operation.dischargeAboveHighest,
  dischargeNearHighest: operation.dischargeNearHighest,
  condensingAbovePeak: operation.condensingAbovePeak,
  condensingAboveContinuous: operation.condensingAboveContinuous,
  pressureRatioTooLow: operation.pressureRatioTooLow,
  pressureRatioAboveHighest: operation.pressureRatioAboveHighest,
  pressureRatioHigh: operation.pressureRatioHigh,
  suctionBelowAtmosphere: operation.suctionBelowAtmosphere,
  highSideAboveUsualRating: pressure.highSideAboveUsualRating,
  fluidAbovePartsPressure: pressure.fluidAbovePartsPressure,
  standingPressureAboveLowSide: pressure.standingPressureAboveLowSide,
  capillaryTooTight: restAndFlow.capillaryTooTight,
  migrationToCompressor: restAndFlow.migrationToCompressor,
  migrationToEvaporator: restAndFlow.migrationToEvaporator,
  oilTakesUpWater: restAndFlow.oilTakesUpWater,
  frostOnEvaporator: operation.frostOnEvaporator,
  condensateOnEvaporator: operation.condensateOnEvaporator,
  copperInWater: water.copperInWater,
  copperInFreshWater: water.copperInFreshWater,
  metalInWaterUnknown: water.metalInWaterUnknown,
  stainlessInSeaWater: water.stainlessInSeaWater,
  coilInTankSingleWall: water.coilInTankSingleWall,
  coilBurnsAnimals: water.coilBurnsAnimals,
  coilWarmerThanUsual: water.coilWarmerThanUsual,
  overTemperatureCutOutMissing: warming.overTemperatureCutOutMissing,
  overTemperatureCutOutUnknown: warming.overTemperatureCutOutUnknown,
  heatsWaterFast: warming.heatsWaterFast,
  waterAboveUsual: water.waterAboveUsual,
  waterBelowUsual: water.waterBelowUsual,
  reliesOnBackup: warming.reliesOnBackup,
  machineFailureCoolsTank: warming.machineFailureCoolsTank,
  machineFailureCoolsFast: warming.machineFailureCoolsFast,
  ...standingTankRules,
  residualCurrentProtectionMissing: mains.residualCurrentProtectionMissing,
  residualCurrentProtectionUnknown: mains.residualCurrentProtectionUnknown,
  mainsNearWater: mains.mainsNearWater,
  mainsNearWaterUnknown: mains.mainsNearWaterUnknown,
};

const order: Readonly<Record<Severity, number>> = { stop: 0, look: 1, note: 2 };

/**
 * All findings about a design, worst first.
 * @throws InputError if a number in the facts is impossible: a rule never judges by NaN
 */
export function findCautions(facts: CautionFacts): readonly CautionFinding[] {
  requireFacts(facts);
  return asked(cautionRules, facts);
}

/**
 * Findings about the tank apart from any machine, worst first.
 * @throws InputError if a number in the facts is impossible
 */
export function findStandingTankCautions(facts: StandingTankFacts): readonly CautionFinding[] {
  requireStandingTank(facts);
  return asked(standingTankRules, facts);
}

function asked<Facts>(rules: Readonly<Record<string, CautionRule<Facts>>>, facts: Facts): readonly CautionFinding[] {
  const findings: CautionFinding[] = [];
  for (const rule of Object.values(rules)) {
    const finding = rule(facts);
    if (finding !== undefined) findings.push(finding);
  }
  return worstFirst(findings);
}

/** Findings by severity: stop, look, note; within one severity in the order given. */
export function worstFirst<Any extends Finding>(findings: readonly Any[]): readonly Any[] {
  return [...findings].sort((left, right) => order[left.severity] - order[right.severity]);
}

function requireFacts(facts: CautionFacts): void {
  if (facts.operating.length === 0) throw new InputError('operating', 0, 'at least one state of the loop');
  requireNonNegative('charge.high', facts.charge.high);
  requireStandingTank(facts);
  if (facts.enclosure.kind !== 'openRoom') requirePositive('enclosure.volume', facts.enclosure.volume);
  if (facts.sunkenPlace.kind === 'pit') requirePositive('sunkenPlace.volume', facts.sunkenPlace.volume);
  if (facts.otherRoomVolume !== null) requirePositive('otherRoomVolume', facts.otherRoomVolume);
  requirePositive('floorArea', facts.floorArea);
  requirePositive('atmosphericPressure', facts.atmosphericPressure);
  requirePositive('tankHeatCapacity', facts.tankHeatCapacity);
  requirePlain('pressures', facts.pressures);
  requireNumbers('machine', facts.machine ?? {});
  if (facts.stuckOn !== null) requirePlain('stuckOn', facts.stuckOn);
  for (const name of ['hardestAllowedPower', 'ratedMassFlow', 'shellSurroundings', 'coilSurface'] as const) {
    if (facts[name] !== null) requireFinite(name, facts[name]);
  }
  facts.operating.forEach((state, index) => {
    const { ranges, machine, ...values } = state;
    requireNumbers(`operating.${index}.machine`, machine ?? {});
    requirePlain(`operating.${index}`, values);
    for (const [name, span] of Object.entries(ranges)) requirePlain(`operating.${index}.ranges.${name}`, span);
    requirePositive(`operating.${index}.evaporatingPressure`, state.evaporatingPressure);
    requirePositive(`operating.${index}.condensingPressure`, state.condensingPressure);
  });
}

function requireStandingTank({ standing, roomVolume, waterTemperature }: StandingTankFacts): void {
  requirePositive('roomVolume', roomVolume);
  requirePositive('waterTemperature', waterTemperature);
  if (standing === null) return;
  requireNumbers('standing', standing);
  requireNonNegative('standing.openShare', standing.openShare);
  if (standing.airChanges !== null) requireNonNegative('standing.airChanges', standing.airChanges);
  if (standing.timeToAlarm !== null) requireNonNegative('standing.timeToAlarm', standing.timeToAlarm);
}

/** Every number in the tree finite. */
function requireNumbers(path: string, values: object): void {
  for (const [name, value] of Object.entries(values) as [string, unknown][]) {
    if (typeof value === 'number') requireFinite(`${path}.${name}`, value);
    if (typeof value === 'object' && value !== null) requireNumbers(`${path}.${name}`, value);
  }
}

/** Every number finite; null and words, which stand for what is not known, are left alone. */
function requirePlain(path: string, values: object): void {
  for (const [name, value] of Object.entries(values) as [string, unknown][]) {
    if (value === null || typeof value === 'string') continue;
    if (typeof value !== 'number' || !Number.isFinite(value)) {
      throw new InputError(`${path}.${name}`, value, 'a finite number');
    }
  }
}
