// Which fields of the design could settle a caution, by its code; the first is the likeliest. A field the open design does
// not have is left out where it is shown.

import type { CautionCode } from '../../../cautions/index.ts';

const fluid = ['machine.refrigerant', 'machine.compressor.madeFor'];
const enclosure = ['machine.enclosure.kind', 'machine.enclosure.volume', 'machine.charge', 'machine.refrigerant'];
const room = ['room.volume', 'source.volume', 'machine.charge', 'machine.refrigerant'];
const evaporating = ['exchangers.evaporatorApproach', 'source.coldest', 'source.temperature', 'machine.application'];
const condensing = ['exchangers.condenserApproach', 'exchangers.condenserArrangement'];
const lift = ['exchangers.evaporatorApproach', 'exchangers.condenserApproach'];
const nameplate = ['machine.compressor.nameplate.ratedCurrent', 'machine.compressor.displacement'];
const start = ['machine.compressor.nameplate.startType', 'machine.compressor.madeFor'];
const rest = ['machine.shellPlace', 'source.kind'];
const cutOut = ['safeguards.overTemperatureCutOut'];
const mains = ['safeguards.sockets', 'safeguards.dripLoops', 'safeguards.machineLevel', 'safeguards.metalEarthed'];

export const settledBy: Readonly<Record<CautionCode, readonly string[]>> = {
  flammableFluidInUnsuitableEquipment: ['machine.refrigerant', 'machine.forFlammables'],
  flammableFluidEquipmentUnconfirmed: ['machine.forFlammables'],
  flammableFluid: ['machine.refrigerant'],
  notForThisMachine: fluid,
  oilNotForThisFluid: [...fluid, 'machine.compressor.nameplate.oil'],
  materialsForOtherFluid: fluid,
  fluidForStudyOnly: ['machine.refrigerant'],
  fluidAttacksCopper: ['machine.refrigerant'],
  ozoneDepletingFluid: ['machine.refrigerant', 'place.region'],
  highWarmingFluid: ['machine.refrigerant', 'place.region'],
  openingNeedsLicence: ['place.region'],
  leakFlammableInEnclosure: enclosure,
  leakNearFlammableInEnclosure: enclosure,
  leakFlammableInRoom: room,
  leakNearFlammableInRoom: room,
  leakAbovePracticalLimitInRoom: room,
  leakAboveBreathingLimitInRoom: room,
  toxicFluid: ['machine.refrigerant'],
  leakToxicInRoom: room,
  flammableFluidInOtherRoom: ['source.kind', 'machine.refrigerant'],
  leakGathersInLowPlace: ['machine.sunkenPlace.kind', 'machine.sunkenPlace.volume', 'machine.charge'],
  lowPlaceUnknown: ['machine.sunkenPlace.kind'],
  airPumpDrawsLeak: ['safeguards.airPumpIntake'],
  airPumpIntakeUnknown: ['safeguards.airPumpIntake'],
  flammableChargeLarge: ['machine.charge', 'machine.refrigerant'],
  flammableChargeAboveFloorArea: ['room.volume', 'room.height', 'source.volume', 'machine.charge'],
  motorOverloaded: ['machine.application', ...evaporating, 'exchangers.suctionPressureLimit'],
  motorWouldTrip: [...nameplate, 'machine.application', ...evaporating, 'exchangers.suctionPressureLimit'],
  currentAboveRated: [...nameplate, ...evaporating],
  suctionAboveMotor: [...fluid, 'machine.application', ...evaporating, 'exchangers.suctionPressureLimit'],
  littleFlowToCoolMotor: ['exchangers.superheat', ...evaporating],
  floodBack: ['exchangers.superheat'],
  returnGasTooCold: ['exchangers.superheat'],
  lowTorqueStartAgainstPressure: start,
  shortOffTime: start,
  evaporatingAboveApplication: ['machine.application', ...evaporating],
  evaporatingBelowApplication: evaporating,
  dischargeAboveHighest: [...lift, 'exchangers.superheat'],
  dischargeNearHighest: [...lift, 'exchangers.superheat'],
  condensingAbovePeak: condensing,
  condensingAboveContinuous: condensing,
  pressureRatioTooLow: lift,
  pressureRatioAboveHighest: lift,
  pressureRatioHigh: lift,
  suctionBelowAtmosphere: evaporating,
  highSideAboveUsualRating: [...condensing, 'machine.compressor.madeFor'],
  fluidAbovePartsPressure: fluid,
  standingPressureAboveLowSide: ['room.warmest', 'source.warmest', ...fluid],
  capillaryTooTight: ['machine.application', 'machine.compressor.displacement'],
  migrationToCompressor: [...rest, 'power.crankcaseHeater'],
  migrationToEvaporator: rest,
  oilTakesUpWater: [],
  frostOnEvaporator: evaporating,
  condensateOnEvaporator: ['room.relativeHumidity', 'exchangers.evaporatorApproach'],
  copperInWater: ['exchangers.wettedMetal', 'tank.livestock'],
  copperInFreshWater: ['exchangers.wettedMetal', 'tank.livestock'],
  metalInWaterUnknown: ['exchangers.wettedMetal'],
  stainlessInSeaWater: ['exchangers.wettedMetal'],
  coilInTankSingleWall: ['exchangers.condenserArrangement'],
  coilBurnsAnimals: condensing,
  coilWarmerThanUsual: condensing,
  overTemperatureCutOutMissing: cutOut,
  overTemperatureCutOutUnknown: cutOut,
  heatsWaterFast: ['machine.compressor.displacement', ...cutOut],
  waterAboveUsual: ['tank.waterTemperature', 'tank.livestock'],
  waterBelowUsual: ['tank.waterTemperature', 'tank.livestock'],
  reliesOnBackup: ['tank.load.kind', 'machine.compressor.displacement', 'room.coldest'],
  machineFailureCoolsTank: ['tank.load.lid', 'room.coldest'],
  machineFailureCoolsFast: ['tank.load.lid', 'room.coldest'],
  summerOverheating: ['room.warmest', 'tank.load.pumpPower', 'tank.load.lightPower', 'tank.livestock'],
  summerOverheatingWrapped: ['room.warmest', 'tank.load.pumpPower', 'tank.load.lightPower', 'tank.livestock'],
  coverHoldsGases: ['tank.load.lid', 'tank.load.airStones'],
  lightsUnderCover: ['tank.load.lid', 'tank.load.lightPower'],
  insulationBurns: ['tank.load.insulation.back.material', 'tank.load.insulation.bottom.material'],
  glueAndFibres: ['tank.load.insulation.back.material', 'tank.load.insulation.bottom.material'],
  boardUnderTank: ['tank.load.insulation.bottom.material'],
  wallBehindBoard: ['tank.load.insulation.back.material'],
  hiddenFacesSweat: ['room.relativeHumidity', 'room.warmest'],
  roomTakesWater: ['tank.load.lid', 'room.volume', 'room.moisture.kind'],
  powerFailureChillsFast: ['tank.load.lid', 'room.coldest'],
  powerFailureChillsTank: ['tank.load.lid', 'room.coldest'],
  residualCurrentProtectionMissing: ['safeguards.residualCurrentProtection'],
  residualCurrentProtectionUnknown: ['safeguards.residualCurrentProtection'],
  mainsNearWater: mains,
  mainsNearWaterUnknown: mains,
};

/** Fields that could settle a finding; none for what the models leave out. */
export function fieldsSettling(code: string): readonly string[] {
  return Object.hasOwn(settledBy, code) ? settledBy[code as CautionCode] : [];
}
