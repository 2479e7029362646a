// One design per rule in which it speaks and one in which it is silent, near the border where the rule has one.

import type { CautionCode, CautionFacts } from '../../src/cautions/index.ts';
import type { Severity } from '../../src/quantities/index.ts';
import { carbonDioxide, quiet, r12, r134a, r290, r600a, running } from './sample.ts';

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
  ozoneDepletingFluid: { speaks: { ...quiet, fluid: r12, madeFor: r12 }, severity: 'look', silent: quiet },
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
  flammableFluidInOtherRoom: {
    speaks: { ...flammable, sourceIsTankRoom: false },
    severity: 'look',
    silent: flammable,
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
