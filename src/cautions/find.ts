// All rules in one list, and the function that asks each of them. Worst first: stop, look, note; within one severity in
// the order of the list. An empty answer means "no limit found", nothing more.

import { InputError, requireNonNegative, requirePositive } from '../numerics/index.ts';
import type { Finding, Severity } from '../quantities/index.ts';
import type { CautionCode } from './codes.ts';
import type { CautionFinding, CautionRule } from './fact.ts';
import type { CautionFacts } from './facts.ts';
import * as fluid from './rules/fluid.ts';
import * as leak from './rules/leak.ts';
import * as mains from './rules/mains.ts';
import * as operation from './rules/operation.ts';
import * as water from './rules/water.ts';

/** Every rule by the code it speaks with. */
export const cautionRules: Readonly<Record<CautionCode, CautionRule<CautionFacts>>> = {
  flammableFluidInUnsuitableEquipment: fluid.flammableFluidInUnsuitableEquipment,
  flammableFluidEquipmentUnconfirmed: fluid.flammableFluidEquipmentUnconfirmed,
  flammableFluid: fluid.flammableFluid,
  notForThisMachine: fluid.notForThisMachine,
  oilNotForThisFluid: fluid.oilNotForThisFluid,
  ozoneDepletingFluid: fluid.ozoneDepletingFluid,
  openingNeedsLicence: fluid.openingNeedsLicence,
  leakFlammableInEnclosure: leak.leakFlammableInEnclosure,
  leakNearFlammableInEnclosure: leak.leakNearFlammableInEnclosure,
  leakFlammableInRoom: leak.leakFlammableInRoom,
  leakNearFlammableInRoom: leak.leakNearFlammableInRoom,
  leakAbovePracticalLimitInRoom: leak.leakAbovePracticalLimitInRoom,
  flammableFluidInOtherRoom: leak.flammableFluidInOtherRoom,
  flammableChargeLarge: leak.flammableChargeLarge,
  motorOverloaded: operation.motorOverloaded,
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
  frostOnEvaporator: operation.frostOnEvaporator,
  condensateOnEvaporator: operation.condensateOnEvaporator,
  copperInWater: water.copperInWater,
  copperInFreshWater: water.copperInFreshWater,
  metalInWaterUnknown: water.metalInWaterUnknown,
  stainlessInSeaWater: water.stainlessInSeaWater,
  coilInTankSingleWall: water.coilInTankSingleWall,
  overTemperatureCutOutMissing: water.overTemperatureCutOutMissing,
  overTemperatureCutOutUnknown: water.overTemperatureCutOutUnknown,
  waterAboveUsual: water.waterAboveUsual,
  waterBelowUsual: water.waterBelowUsual,
  reliesOnBackup: water.reliesOnBackup,
  machineFailureCoolsTank: water.machineFailureCoolsTank,
  residualCurrentProtectionMissing: mains.residualCurrentProtectionMissing,
  residualCurrentProtectionUnknown: mains.residualCurrentProtectionUnknown,
};

const order: Readonly<Record<Severity, number>> = { stop: 0, look: 1, note: 2 };

/**
 * All findings about a design, worst first.
 * @throws InputError if a number in the facts is impossible: a rule never judges by NaN
 */
export function findCautions(facts: CautionFacts): readonly CautionFinding[] {
  requireFacts(facts);
  const findings: CautionFinding[] = [];
  for (const rule of Object.values(cautionRules)) {
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
  requirePositive('roomVolume', facts.roomVolume);
  if (facts.enclosure.kind !== 'openRoom') requirePositive('enclosure.volume', facts.enclosure.volume);
  requirePositive('atmosphericPressure', facts.atmosphericPressure);
  requirePositive('waterTemperature', facts.waterTemperature);
  requirePositive('tankHeatCapacity', facts.tankHeatCapacity);
  facts.operating.forEach((state, index) => {
    for (const [name, value] of Object.entries(state) as [string, unknown][]) {
      if (name === 'when' || value === null) continue;
      if (typeof value !== 'number' || !Number.isFinite(value)) {
        throw new InputError(`operating.${index}.${name}`, value, 'a finite number');
      }
    }
    requirePositive(`operating.${index}.evaporatingPressure`, state.evaporatingPressure);
    requirePositive(`operating.${index}.condensingPressure`, state.condensingPressure);
  });
}
