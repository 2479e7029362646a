// Every code a rule can speak. The words for each stand with the sentences; a test holds the two together.

export const cautionCodes = [
  // fluid and law
  'flammableFluidInUnsuitableEquipment',
  'flammableFluidEquipmentUnconfirmed',
  'flammableFluid',
  'notForThisMachine',
  'oilNotForThisFluid',
  'ozoneDepletingFluid',
  'openingNeedsLicence',
  // leaks and volumes
  'leakFlammableInEnclosure',
  'leakNearFlammableInEnclosure',
  'leakFlammableInRoom',
  'leakNearFlammableInRoom',
  'leakAbovePracticalLimitInRoom',
  'flammableFluidInOtherRoom',
  'flammableChargeLarge',
  // limits of the machine
  'motorOverloaded',
  'evaporatingAboveApplication',
  'evaporatingBelowApplication',
  'dischargeAboveHighest',
  'dischargeNearHighest',
  'condensingAbovePeak',
  'condensingAboveContinuous',
  'pressureRatioTooLow',
  'pressureRatioAboveHighest',
  'pressureRatioHigh',
  'suctionBelowAtmosphere',
  // source side
  'frostOnEvaporator',
  'condensateOnEvaporator',
  // water and animals
  'copperInWater',
  'copperInFreshWater',
  'metalInWaterUnknown',
  'stainlessInSeaWater',
  'coilInTankSingleWall',
  'overTemperatureCutOutMissing',
  'overTemperatureCutOutUnknown',
  'waterAboveUsual',
  'waterBelowUsual',
  'reliesOnBackup',
  'machineFailureCoolsTank',
  // mains electricity
  'residualCurrentProtectionMissing',
  'residualCurrentProtectionUnknown',
] as const;

export type CautionCode = (typeof cautionCodes)[number];
