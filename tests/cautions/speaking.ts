// One design per rule in which it speaks and one in which it is silent, near the border where the rule has one.

import type { CautionCode, CautionFacts } from '../../src/cautions/index.ts';
import type { Severity } from '../../src/quantities/index.ts';
import { machineCases } from './machine-cases.ts';
import {
  ammonia,
  carbonDioxide,
  mineral,
  propylene,
  quiet,
  r12,
  r134a,
  r290,
  r600a,
  resting,
  running,
  standing,
} from './sample.ts';

export interface Case {
  readonly speaks: CautionFacts;
  readonly severity: Severity;
  readonly silent: CautionFacts;
}

export const flammable: CautionFacts = {
  ...quiet,
  fluid: r600a,
  madeFor: r600a,
  forFlammables: 'yes',
  charge: { low: 0.03, likely: 0.05, high: 0.07 },
};
const toxic: CautionFacts = {
  ...quiet,
  fluid: ammonia,
  madeFor: ammonia,
  forFlammables: 'yes',
  charge: { low: 0.005, likely: 0.007, high: 0.01 },
};
const sea: CautionFacts = { ...quiet, water: 'sea', livestock: 'fish' };

export const cases: Readonly<Record<CautionCode, Case>> = {
  flammableFluidInUnsuitableEquipment: {
    speaks: { ...flammable, madeFor: r134a, forFlammables: 'unknown' },
    severity: 'stop',
    silent: flammable,
  },
  flammableFluidEquipmentUnconfirmed: {
    speaks: { ...flammable, forFlammables: 'unknown' },
    severity: 'look',
    silent: flammable,
  },
  flammableFluid: { speaks: flammable, severity: 'note', silent: quiet },
  notForThisMachine: { speaks: { ...quiet, madeFor: r12 }, severity: 'stop', silent: quiet },
  oilNotForThisFluid: {
    speaks: { ...quiet, madeFor: r12 },
    severity: 'look',
    silent: { ...quiet, fluid: r290, madeFor: r134a },
  },
  materialsForOtherFluid: { speaks: { ...quiet, madeFor: r12 }, severity: 'note', silent: quiet },
  fluidForStudyOnly: {
    speaks: { ...quiet, fluid: { ...r134a, unconfirmed: ['safetyClass'] } },
    severity: 'stop',
    silent: quiet,
  },
  fluidAttacksCopper: {
    speaks: { ...quiet, fluid: ammonia, madeFor: ammonia },
    severity: 'stop',
    silent: { ...quiet, fluid: { ...ammonia, metalsAttacked: ['zinc'] }, madeFor: ammonia },
  },
  ozoneDepletingFluid: { speaks: { ...quiet, fluid: r12, madeFor: r12 }, severity: 'look', silent: quiet },
  // Servicing is forbidden from 2,500 on: regulation (EU) 2024/573, Article 13(3).
  highWarmingFluid: {
    speaks: { ...quiet, region: 'europeanUnion', fluid: { ...r134a, globalWarmingPotential: 2500 } },
    severity: 'look',
    silent: { ...quiet, region: 'europeanUnion', fluid: { ...r134a, globalWarmingPotential: 2499 } },
  },
  openingNeedsLicence: { speaks: quiet, severity: 'note', silent: { ...quiet, fluid: carbonDioxide } },
  // 11.4 g of R290 reach 0.038 kg/m³ in 0.3 m³.
  leakFlammableInEnclosure: {
    speaks: enclosed(0.01141, 0.3),
    severity: 'stop',
    silent: enclosed(0.01139, 0.3),
  },
  leakNearFlammableInEnclosure: {
    speaks: enclosed(0.01139, 0.3),
    severity: 'look',
    silent: enclosed(0.00227, 0.3),
  },
  leakFlammableInRoom: { speaks: inRoom(0.153, 4), severity: 'stop', silent: inRoom(0.151, 4) },
  // 150 g of R290 need 19.7 m³ to stay below 20 % of the limit.
  leakNearFlammableInRoom: { speaks: inRoom(0.15, 19.6), severity: 'look', silent: inRoom(0.15, 19.8) },
  leakAbovePracticalLimitInRoom: {
    speaks: { ...quiet, roomVolume: 0.79 },
    severity: 'look',
    silent: { ...quiet, roomVolume: 0.81 },
  },
  // 0.2 kg of R134a in 0.95 m³ are 0.2105 kg/m³, in 0.96 m³ 0.2083; its ATEL/ODL is 0.21.
  leakAboveBreathingLimitInRoom: {
    speaks: { ...quiet, roomVolume: 0.95 },
    severity: 'look',
    silent: { ...quiet, roomVolume: 0.96 },
  },
  toxicFluid: {
    speaks: { ...quiet, fluid: ammonia, madeFor: ammonia },
    severity: 'look',
    silent: { ...quiet, fluid: propylene, madeFor: propylene },
  },
  // 10 g of R717 in 45 m³ are 0.000222 kg/m³, in 46 m³ 0.000217; its ATEL/ODL is 0.00022.
  leakToxicInRoom: {
    speaks: { ...toxic, roomVolume: 45 },
    severity: 'stop',
    silent: { ...toxic, roomVolume: 46 },
  },
  flammableFluidInOtherRoom: {
    speaks: { ...flammable, otherRoomVolume: 60 },
    severity: 'look',
    silent: flammable,
  },
  // 12 g of R290 in 1.6 m³ are 0.0075 kg/m³, in 1.5 m³ 0.008; a fifth of its limit is 0.0076.
  leakGathersInLowPlace: {
    speaks: { ...enclosed(0.012, 1), enclosure: { kind: 'openRoom' }, sunkenPlace: { kind: 'pit', volume: 1.5 } },
    severity: 'look',
    silent: { ...enclosed(0.012, 1), enclosure: { kind: 'openRoom' }, sunkenPlace: { kind: 'pit', volume: 1.6 } },
  },
  lowPlaceUnknown: {
    speaks: { ...flammable, sunkenPlace: { kind: 'unknown' } },
    severity: 'note',
    silent: { ...quiet, sunkenPlace: { kind: 'unknown' } },
  },
  airPumpDrawsLeak: {
    speaks: { ...quiet, airPumpIntake: 'besideMachine' },
    severity: 'look',
    silent: { ...quiet, airPumpIntake: 'sameRoom' },
  },
  airPumpIntakeUnknown: {
    speaks: { ...flammable, airPumpIntake: 'unknown' },
    severity: 'note',
    silent: { ...quiet, airPumpIntake: 'unknown' },
  },
  // 79.6 g of R290 for a machine on a floor of 10 m² (IEC 60335-2-40).
  flammableChargeAboveFloorArea: {
    speaks: { ...inRoom(0.08, 40), floorArea: 10 },
    severity: 'look',
    silent: { ...inRoom(0.079, 40), floorArea: 10 },
  },
  flammableChargeLarge: {
    speaks: { ...flammable, charge: { low: 0.1, likely: 0.13, high: 0.16 } },
    severity: 'look',
    silent: flammable,
  },
  motorOverloaded: {
    speaks: running({ evaporatingTemperature: 288.2, compressorPower: 138 }),
    severity: 'stop',
    silent: running({ evaporatingTemperature: 288.2, compressorPower: 137 }),
  },
  ...machineCases,
  evaporatingAboveApplication: {
    speaks: running({ evaporatingTemperature: 288.2 }),
    severity: 'look',
    silent: running({ evaporatingTemperature: 288.1 }),
  },
  evaporatingBelowApplication: {
    speaks: running({ evaporatingTemperature: 258.1 }),
    severity: 'look',
    silent: running({ evaporatingTemperature: 258.2 }),
  },
  dischargeAboveHighest: {
    speaks: running({ dischargeTemperature: 403.2 }),
    severity: 'look',
    silent: running({ dischargeTemperature: 403.1 }),
  },
  dischargeNearHighest: {
    speaks: running({ dischargeTemperature: 403.1 }),
    severity: 'look',
    silent: running({ dischargeTemperature: 393.1 }),
  },
  condensingAbovePeak: {
    speaks: running({ condensingTemperature: 343.2 }),
    severity: 'stop',
    silent: running({ condensingTemperature: 343.1 }),
  },
  condensingAboveContinuous: {
    speaks: running({ condensingTemperature: 338.2 }),
    severity: 'look',
    silent: running({ condensingTemperature: 338.1 }),
  },
  pressureRatioTooLow: {
    speaks: running({ condensingPressure: 1.99 * 3.9e5 }),
    severity: 'look',
    silent: running({ condensingPressure: 2.01 * 3.9e5 }),
  },
  pressureRatioAboveHighest: {
    speaks: running({ condensingPressure: 12.1 * 3.9e5 }),
    severity: 'look',
    silent: running({ condensingPressure: 11.9 * 3.9e5 }),
  },
  pressureRatioHigh: {
    speaks: running({ condensingPressure: 10.1 * 3.9e5 }),
    severity: 'note',
    silent: running({ condensingPressure: 9.9 * 3.9e5 }),
  },
  suctionBelowAtmosphere: {
    speaks: running({ evaporatingPressure: 101_324 }),
    severity: 'look',
    silent: running({ evaporatingPressure: 101_326 }),
  },
  highSideAboveUsualRating: {
    speaks: running({ condensingPressure: 14.95e5 }),
    severity: 'look',
    silent: running({ condensingPressure: 14.85e5 }),
  },
  // At 55 °C R290 stands at 19.1 bar, R134a at 14.9 bar (published saturation tables, rounded).
  fluidAbovePartsPressure: {
    speaks: { ...quiet, fluid: r290, pressures: { ...quiet.pressures, highSide: 19.1e5 } },
    severity: 'look',
    silent: { ...quiet, fluid: r600a, pressures: { ...quiet.pressures, highSide: 7.8e5 } },
  },
  standingPressureAboveLowSide: {
    speaks: { ...quiet, pressures: { ...quiet.pressures, standing: 8.2e5 } },
    severity: 'look',
    silent: { ...quiet, pressures: { ...quiet.pressures, standing: 8.1e5 } },
  },
  capillaryTooTight: {
    speaks: { ...quiet, ratedMassFlow: 1.59e-3 },
    severity: 'look',
    silent: { ...quiet, ratedMassFlow: 1.61e-3 },
  },
  migrationToCompressor: {
    speaks: { ...quiet, shellSurroundings: 289.1 },
    severity: 'look',
    silent: { ...quiet, shellSurroundings: 289.2 },
  },
  migrationToEvaporator: {
    speaks: { ...quiet, shellSurroundings: 293.2 },
    severity: 'note',
    silent: { ...quiet, shellSurroundings: 293.1 },
  },
  oilTakesUpWater: { speaks: quiet, severity: 'note', silent: { ...quiet, fluid: mineral, madeFor: mineral } },
  frostOnEvaporator: {
    speaks: running({ evaporatingTemperature: 273.1 }),
    severity: 'look',
    silent: running({ evaporatingTemperature: 273.2 }),
  },
  condensateOnEvaporator: {
    speaks: running({ sourceDewPoint: 282.15 }),
    severity: 'note',
    silent: running({ sourceDewPoint: null }),
  },
  copperInWater: {
    speaks: { ...sea, wettedMetal: 'cupronickel' },
    severity: 'stop',
    silent: { ...quiet, wettedMetal: 'copper' },
  },
  copperInFreshWater: {
    speaks: { ...quiet, wettedMetal: 'copper', livestock: 'unknown' },
    severity: 'look',
    silent: { ...quiet, wettedMetal: 'copper', livestock: 'plantsOnly' },
  },
  metalInWaterUnknown: {
    speaks: { ...quiet, wettedMetal: 'unknown' },
    severity: 'look',
    silent: { ...quiet, wettedMetal: 'unknown', livestock: 'plantsOnly' },
  },
  stainlessInSeaWater: {
    speaks: { ...sea, wettedMetal: 'stainless316' },
    severity: 'look',
    silent: { ...quiet, wettedMetal: 'stainless316' },
  },
  coilInTankSingleWall: {
    speaks: { ...quiet, condenserArrangement: 'coilInTank' },
    severity: 'look',
    silent: quiet,
  },
  coilBurnsAnimals: {
    speaks: { ...running({ condensingTemperature: 316.2 }), condenserArrangement: 'coilInTank' },
    severity: 'look',
    silent: { ...running({ condensingTemperature: 316.1 }), condenserArrangement: 'coilInTank' },
  },
  coilWarmerThanUsual: {
    speaks: { ...running({ condensingTemperature: 303.2 }), condenserArrangement: 'coilInTank' },
    severity: 'note',
    silent: { ...running({ condensingTemperature: 303.1 }), condenserArrangement: 'coilInTank' },
  },
  overTemperatureCutOutMissing: {
    speaks: { ...quiet, overTemperatureCutOut: 'none' },
    severity: 'stop',
    silent: quiet,
  },
  overTemperatureCutOutUnknown: {
    speaks: { ...quiet, overTemperatureCutOut: 'unknown' },
    severity: 'look',
    silent: { ...quiet, overTemperatureCutOut: 'none' },
  },
  heatsWaterFast: {
    speaks: { ...quiet, stuckOn: { ...quiet.stuckOn!, timePerKelvin: 3599 } },
    severity: 'note',
    silent: { ...quiet, stuckOn: { ...quiet.stuckOn!, timePerKelvin: 3600 } },
  },
  waterAboveUsual: {
    speaks: { ...quiet, waterTemperature: 302.5, livestock: 'invertebrates' },
    severity: 'look',
    silent: { ...quiet, waterTemperature: 302.5, livestock: 'fish' },
  },
  waterBelowUsual: {
    speaks: { ...quiet, waterTemperature: 293 },
    severity: 'note',
    silent: { ...quiet, waterTemperature: 293, livestock: 'plantsOnly' },
  },
  reliesOnBackup: {
    speaks: running({ heatDelivered: 249 }),
    severity: 'look',
    silent: running({ heatDelivered: 250 }),
  },
  machineFailureCoolsTank: { speaks: quiet, severity: 'note', silent: running({ load: 0 }) },
  machineFailureCoolsFast: {
    speaks: running({ load: 334 }),
    severity: 'look',
    silent: running({ load: 333 }),
  },
  // Fish: alarm above 30 °C. The end of a range counts.
  summerOverheating: { speaks: resting(302.7), severity: 'look', silent: resting(302.6) },
  summerOverheatingWrapped: { speaks: resting(300, 302.7), severity: 'look', silent: resting(300, 302.6) },
  coverHoldsGases: {
    speaks: standing({ cover: 'lid', openShare: 0.049 }),
    severity: 'look',
    silent: standing({ cover: 'lid', openShare: 0.05 }),
  },
  lightsUnderCover: {
    speaks: standing({ cover: 'hood', airDrawn: 1e-4 }),
    severity: 'look',
    silent: standing({ cover: 'hood', airDrawn: 1e-4, lightPower: 0 }),
  },
  insulationBurns: {
    speaks: standing({ insulation: ['cellularGlass', 'extrudedPolystyrene'] }),
    severity: 'look',
    silent: standing({ insulation: ['cellularGlass', 'mineralWool'] }),
  },
  glueAndFibres: { speaks: standing({ insulation: ['mineralWool'] }), severity: 'note', silent: quiet },
  boardUnderTank: { speaks: standing({ isOnBoard: true }), severity: 'look', silent: quiet },
  wallBehindBoard: { speaks: standing({ isBoardAtWall: true }), severity: 'look', silent: quiet },
  hiddenFacesSweat: {
    speaks: standing({ dampFaces: { when: 'in july', faces: 'bottom, back', coldest: 287, dewPoint: 289 } }),
    severity: 'look',
    silent: quiet,
  },
  // 40 m³ aired at half its air an hour: 4 g/m³ are 4e-3 · 40 · 0.5 / 3600 = 2.222e-5 kg/s, 1.92 L a day.
  roomTakesWater: {
    speaks: standing({ evaporation: 2.223e-5 }),
    severity: 'look',
    silent: standing({ evaporation: 2.222e-5 }),
  },
  powerFailureChillsFast: {
    speaks: standing({ timeToAlarm: 43_200 }),
    severity: 'look',
    silent: standing({ timeToAlarm: 43_201 }),
  },
  powerFailureChillsTank: {
    speaks: standing({ timeToAlarm: 43_201 }),
    severity: 'note',
    silent: standing({ timeToAlarm: 43_200 }),
  },
  residualCurrentProtectionMissing: {
    speaks: { ...quiet, residualCurrentProtection: 'no' },
    severity: 'stop',
    silent: quiet,
  },
  residualCurrentProtectionUnknown: {
    speaks: { ...quiet, residualCurrentProtection: 'unknown' },
    severity: 'look',
    silent: { ...quiet, residualCurrentProtection: 'no' },
  },
  mainsNearWater: {
    speaks: { ...quiet, sockets: 'belowWater', dripLoops: 'no' },
    severity: 'look',
    silent: { ...quiet, wettedMetal: 'polymer', metalEarthed: 'no' },
  },
  mainsNearWaterUnknown: {
    speaks: { ...quiet, metalEarthed: 'unknown' },
    severity: 'note',
    silent: { ...quiet, wettedMetal: 'polymer', metalEarthed: 'unknown' },
  },
};

/** The facts in which each rule speaks. */
export const speaking = Object.fromEntries(
  Object.entries(cases).map(([code, { speaks }]) => [code, speaks]),
) as Readonly<Record<CautionCode, CautionFacts>>;

export function enclosed(charge: number, volume: number): CautionFacts {
  return {
    ...quiet,
    fluid: r290,
    madeFor: r290,
    forFlammables: 'yes',
    charge: { low: charge / 2, likely: charge * 0.75, high: charge },
    enclosure: { kind: 'closedCabinet', volume },
  };
}

export function inRoom(charge: number, volume: number): CautionFacts {
  return { ...enclosed(charge, 1), enclosure: { kind: 'openRoom' }, roomVolume: volume };
}
