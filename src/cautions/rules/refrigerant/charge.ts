// Rules and comparisons about the charge as a whole against the figures of product and system standards. None of them
// applies to a machine made at home: the figures are comparisons in words, above or below, and never clear anything. The
// upper end of the charge's range counts, and the lower end of the space's. Which clause of which edition applies to which
// product is left out, since it is not sure.

import type { Certainty } from '../../../quantities/index.ts';
import {
  chargeAtFlammabilityLimit,
  chargeFactors,
  commercialCabinetVolume,
  floorReleaseHeight,
  largestChargeOnFloorArea,
} from '../../charge-limits.ts';
import type { CautionFinding } from '../../fact.ts';
import { area, mass, word } from '../../fact.ts';
import type { CautionFacts } from '../../facts.ts';
import { isFlammable, isHeavierThanAir } from '../../facts.ts';
import { leakLimit } from './leak.ts';

export type ChargeFacts = Pick<
  CautionFacts,
  'fluid' | 'molarMass' | 'charge' | 'roomVolume' | 'otherRoomVolume' | 'floorArea'
>;

/** Flammable charge of a household appliance's circuit [kg], IEC 60335-2-24, from memory. */
const householdFlammableCharge = 0.15;

/** Largest charges of EN 378-1 Annex C for a fluid of class 3 where anybody may be [kg]; from memory. */
const annexCAboveGround = 1.5;
const annexCBelowGround = 1;

/** What a figure of a standard is set for. */
export type ComparisonName =
  | 'householdAppliance'
  | 'heatPumpSmallest'
  | 'heatPumpFloorArea'
  | 'heatPumpLarge'
  | 'commercialCabinet'
  | 'roomConcentration'
  | 'aboveGround'
  | 'belowGround';

/** The charge beside one figure of a standard that does not apply to it. */
export interface ChargeComparison {
  readonly name: ComparisonName;
  readonly standard: string;
  /** Figure of the standard [kg]. */
  readonly limit: number;
  readonly certainty: Certainty;
  /** `above`: the whole range of the charge is; `between`: its upper end alone is. */
  readonly charge: 'below' | 'between' | 'above';
}

/** Every figure the charge can be held against; of a fluid that does not burn only that of the room's concentration. */
export function chargeComparisons(facts: ChargeFacts): readonly ChargeComparison[] {
  const { fluid, charge } = facts;
  const compare = (name: ComparisonName, standard: string, limit: number, certainty: Certainty): ChargeComparison => ({
    name,
    standard,
    limit,
    certainty,
    charge: charge.low > limit ? 'above' : charge.high > limit ? 'between' : 'below',
  });
  const limit = leakLimit(fluid);
  const smallest = Math.min(facts.roomVolume, facts.otherRoomVolume ?? facts.roomVolume);
  const inRoom =
    limit === null ? [] : [compare('roomConcentration', 'EN 378-1:2016', limit * smallest, limitCertainty(facts))];
  const flammability = fluid.lowerFlammabilityLimit;
  if (!isFlammable(fluid) || flammability === null) return inRoom;
  const { m1, m2 } = chargeFactors(flammability, fluid.safetyClass);
  const commercial = chargeAtFlammabilityLimit(commercialCabinetVolume, flammability);
  return [
    compare('householdAppliance', 'IEC 60335-2-24', householdFlammableCharge, 'memory'),
    compare('heatPumpSmallest', 'IEC 60335-2-40', m1, 'memory'),
    compare('heatPumpFloorArea', 'IEC 60335-2-40', floorCharge(facts, flammability), 'confirmed'),
    compare('heatPumpLarge', 'IEC 60335-2-40', m2, 'memory'),
    compare('commercialCabinet', 'IEC 60335-2-89:2019', commercial, 'memory'),
    ...inRoom,
    compare('aboveGround', 'EN 378-1 Annex C', annexCAboveGround, 'memory'),
    compare('belowGround', 'EN 378-1 Annex C', annexCBelowGround, 'memory'),
  ];
}

/** More flammable charge than one circuit of a household appliance holds. */
export function flammableChargeLarge({ fluid, charge }: ChargeFacts): CautionFinding | undefined {
  if (!isFlammable(fluid) || charge.high <= householdFlammableCharge) return undefined;
  return {
    code: 'flammableChargeLarge',
    severity: 'look',
    subject: 'house',
    facts: {
      fluid: word(fluid.name),
      chargeLow: mass(charge.low),
      chargeHigh: mass(charge.high),
      householdCharge: mass(householdFlammableCharge),
    },
    source: 'IEC 60335-2-24 (household appliances), from memory; it does not cover a home-made machine',
    certainty: 'memory',
    remedy: 'A smaller circuit needs less; above this charge makers build to stricter standards.',
    needsLicensedPerson: true,
  };
}

/** More flammable charge than a product standard sets for a machine on a floor of this size. */
export function flammableChargeAboveFloorArea(facts: ChargeFacts): CautionFinding | undefined {
  const { fluid, charge, floorArea } = facts;
  const flammability = fluid.lowerFlammabilityLimit;
  if (!isFlammable(fluid) || flammability === null) return undefined;
  const limit = floorCharge(facts, flammability);
  if (charge.high <= limit) return undefined;
  const sinks = isHeavierThanAir(facts);
  return {
    code: 'flammableChargeAboveFloorArea',
    severity: 'look',
    subject: 'house',
    facts: {
      fluid: word(fluid.name),
      chargeLow: mass(charge.low),
      chargeHigh: mass(charge.high),
      floorArea: area(floorArea),
      limit: mass(limit),
    },
    source: `IEC 60335-2-40, charge by floor area for a machine on the floor; the standard applies it to larger charges of products built to it and does not cover a home-made machine, ${sinks ? 'but gas lies on the floor at any charge' : 'and counts with gas that lies on the floor, while this one rises'}`,
    certainty: 'confirmed',
    remedy: `A larger room, a smaller charge or a fluid that does not burn; no flame or spark ${sinks ? 'near the floor' : 'in the room'}.`,
    needsLicensedPerson: true,
  };
}

function floorCharge({ fluid, floorArea }: ChargeFacts, flammabilityLimit: number): number {
  return largestChargeOnFloorArea(flammabilityLimit, floorReleaseHeight, floorArea, fluid.safetyClass);
}

/** As sure as the limit that leakLimit takes; one from memory above it changes nothing. */
function limitCertainty({ fluid }: ChargeFacts): Certainty {
  const limit = leakLimit(fluid);
  const isFromMemory =
    (limit === fluid.practicalLimit && fluid.practicalLimitGrounds.certainty === 'memory') ||
    (limit === fluid.toxicityLimit && fluid.toxicityLimitGrounds.certainty === 'memory') ||
    fluid.unconfirmed.includes('flammability');
  return isFromMemory ? 'memory' : 'confirmed';
}
