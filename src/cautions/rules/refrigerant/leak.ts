// Rules about a leak: what concentration the whole charge would make, evenly mixed, in the enclosure around the circuit
// and in the room. The upper end of the charge's range counts, and the lower end of the space's. A real leak is not evenly
// mixed: heavy gas lies on the floor.
// Product standards do not apply to a home-made machine; their figures are comparisons, nothing more.

import { InputError, requireNonNegative, requirePositive } from '../../../numerics/index.ts';
import type { Formula } from '../../../quantities/index.ts';
import type { CautionFinding, Grounds } from '../../fact.ts';
import { chargeDensity, mass, volume, word } from '../../fact.ts';
import type { CautionFacts, CautionFluid } from '../../facts.ts';
import { isFlammable, isHeavierThanAir } from '../../facts.ts';

export type LeakFacts = Pick<
  CautionFacts,
  'fluid' | 'molarMass' | 'charge' | 'enclosure' | 'roomVolume' | 'otherRoomVolume' | 'sunkenPlace'
>;

/** Share of the lower flammability limit that a leak should stay below: EN 378-1 takes 20 %. */
const shareOfFlammabilityLimit = 0.2;

const limits: Grounds = {
  source:
    'lower flammability and practical limits: EN 378-1:2016+A1:2020 Annex E, the lower where sources differ; 20 % of the limit: EN 378-1',
  certainty: 'confirmed',
};

/** What the flammability limit of a fluid rests on. */
function limitGrounds({ unconfirmed }: CautionFluid): Grounds {
  return unconfirmed.includes('flammability')
    ? { source: 'lower flammability limit: ASHRAE 34, from memory; 20 % of the limit: EN 378-1', certainty: 'memory' }
    : limits;
}

/**
 * Concentration c of a whole charge evenly mixed into a closed volume.
 *     c = m / V
 * @param charge  m [kg], ≥ 0
 * @param space   V [m³], free volume of the space, > 0
 * @returns       c [kg/m³]
 * Pitfall: gas heavier than air lies on the floor; the true concentration there is higher.
 * @throws InputError outside these ranges
 * Source: definition. Worked value: 0.0114 kg in 0.3 m³ → 0.038 kg/m³.
 */
export function leakConcentration(charge: number, space: number): number {
  requireNonNegative('charge', charge);
  requirePositive('space', space);
  return charge / space;
}

/**
 * Concentration a leak should stay below, c_max: the smallest of the practical limit, the limit for breathing and 20 % of
 * the flammability limit, of those that are known.
 *     c_max = min(PL, ATEL/ODL, 0.2 LFL)
 * @returns c_max [kg/m³], or null where none is known
 * Source: EN 378-1:2016 for all three; its Annex C takes the smaller of the latter two.
 * Worked values: R290, LFL 0.038, PL 0.008, ATEL/ODL 0.09 → 0.0076; R1270, LFL 0.046, PL 0.008, ATEL/ODL 0.0017 → 0.0017.
 */
export function leakLimit({ practicalLimit, toxicityLimit, lowerFlammabilityLimit }: CautionFluid): number | null {
  const known = [practicalLimit, toxicityLimit].filter((limit) => limit !== null);
  if (lowerFlammabilityLimit !== null) known.push(shareOfFlammabilityLimit * lowerFlammabilityLimit);
  return known.length === 0 ? null : Math.min(...known);
}

/** The same of a fluid that burns, whose flammability limit [kg/m³] is known; its practical limit [kg/m³] may not be. */
function smallestLimit(practicalLimit: number | null, flammabilityLimit: number): number {
  const share = shareOfFlammabilityLimit * flammabilityLimit;
  return practicalLimit === null ? share : Math.min(practicalLimit, share);
}

/** The whole charge would make the air in a closed cabinet or hood flammable. */
export function leakFlammableInEnclosure(facts: LeakFacts): CautionFinding | undefined {
  const leak = enclosureLeak(facts);
  if (leak === undefined || leak.concentration < leak.flammabilityLimit) return undefined;
  return {
    code: 'leakFlammableInEnclosure',
    severity: 'stop',
    subject: 'house',
    facts: leak.facts,
    ...limitGrounds(facts.fluid),
    remedy: 'Take the circuit out of the enclosure, or choose a fluid that does not burn.',
    needsLicensedPerson: true,
  };
}

/** The charge would come above a fifth of the flammability limit in the enclosure. */
export function leakNearFlammableInEnclosure(facts: LeakFacts): CautionFinding | undefined {
  const leak = enclosureLeak(facts);
  if (leak === undefined || leak.concentration >= leak.flammabilityLimit) return undefined;
  if (leak.concentration <= leak.limit) return undefined;
  return {
    code: 'leakNearFlammableInEnclosure',
    severity: 'look',
    subject: 'house',
    facts: leak.facts,
    ...limitGrounds(facts.fluid),
    remedy: 'Open the enclosure to the room, or choose a fluid that does not burn.',
    needsLicensedPerson: true,
  };
}

/** The whole charge would make the air of a room flammable. */
export function leakFlammableInRoom(facts: LeakFacts): CautionFinding | undefined {
  const leak = roomLeak(facts);
  if (leak === undefined || leak.concentration < leak.flammabilityLimit) return undefined;
  return {
    code: 'leakFlammableInRoom',
    severity: 'stop',
    subject: 'house',
    facts: leak.facts,
    ...limitGrounds(facts.fluid),
    remedy: 'This charge does not belong in a room of this size: choose a fluid that does not burn.',
    needsLicensedPerson: true,
  };
}

/** The charge would come above a fifth of the flammability limit in a room. */
export function leakNearFlammableInRoom(facts: LeakFacts): CautionFinding | undefined {
  const leak = roomLeak(facts);
  if (leak === undefined || leak.concentration >= leak.flammabilityLimit) return undefined;
  if (leak.concentration <= leak.limit) return undefined;
  return {
    code: 'leakNearFlammableInRoom',
    severity: 'look',
    subject: 'house',
    facts: leak.facts,
    ...limitGrounds(facts.fluid),
    remedy: 'A larger room, a smaller charge or a fluid that does not burn.',
    needsLicensedPerson: true,
  };
}

/** A fluid that does not burn would come above its practical limit, set for breathing, in a room. */
export function leakAbovePracticalLimitInRoom(facts: LeakFacts): CautionFinding | undefined {
  const { fluid, charge } = facts;
  if (isFlammable(fluid) || fluid.practicalLimit === null) return undefined;
  const room = smallestRoom(facts);
  const concentration = leakConcentration(charge.high, room.volume);
  if (concentration <= fluid.practicalLimit) return undefined;
  return {
    code: 'leakAbovePracticalLimitInRoom',
    severity: 'look',
    subject: 'person',
    facts: { ...concentrationFacts(facts, room.volume, fluid.practicalLimit), room: word(room.kind) },
    source: `practical limit: ${fluid.practicalLimitGrounds.source}`,
    certainty: fluid.practicalLimitGrounds.certainty,
    remedy: 'A larger room or a smaller charge; a leak of this size takes the air one breathes.',
    needsLicensedPerson: true,
  };
}

/** A fluid that burns, and part of the circuit in another room, of which the design says little. */
export function flammableFluidInOtherRoom(facts: LeakFacts): CautionFinding | undefined {
  if (facts.otherRoomVolume === null || !isFlammable(facts.fluid)) return undefined;
  return {
    code: 'flammableFluidInOtherRoom',
    severity: 'look',
    subject: 'house',
    facts: { fluid: word(facts.fluid.name), chargeLow: mass(facts.charge.low), chargeHigh: mass(facts.charge.high) },
    source: 'EN 378-1:2016 Annex C treats each room, and rooms below ground with a lower limit (from memory)',
    certainty: 'memory',
    remedy: `${isHeavierThanAir(facts) ? 'A cellar holds a heavy gas like a basin' : 'Its gas rises and gathers under the ceiling'}, and boilers, dryers and switches light it: ask a licensed technician what stands there.`,
    needsLicensedPerson: true,
  };
}

/** A leak would gather below the floor, of a light gas as long as it is cold: the whole charge there is above the concentration a leak should stay below. */
export function leakGathersInLowPlace(facts: LeakFacts): CautionFinding | undefined {
  if (facts.sunkenPlace.kind !== 'pit') return undefined;
  const { fluid, charge, sunkenPlace } = facts;
  const limit = leakLimit(fluid);
  const concentration = leakConcentration(charge.high, sunkenPlace.volume);
  if (limit === null || concentration <= limit) return undefined;
  return {
    code: 'leakGathersInLowPlace',
    severity: 'look',
    subject: isFlammable(fluid) ? 'house' : 'person',
    facts: {
      ...concentrationFacts(facts, sunkenPlace.volume, limit),
      ...(isHeavierThanAir(facts) ? {} : { rises: word('yes') }),
    },
    source: `${weightGrounds(facts)}; ${limits.source}`,
    certainty: 'physics',
    remedy:
      'Stand the machine away from the low place, or close it off from the room. Nobody puts head or flame into it while the circuit holds refrigerant.',
    needsLicensedPerson: true,
  };
}

/** A fluid that burns, and nobody has said whether there is a low place. */
export function lowPlaceUnknown(facts: LeakFacts): CautionFinding | undefined {
  const { fluid, sunkenPlace } = facts;
  if (sunkenPlace.kind !== 'unknown' || !isFlammable(fluid)) return undefined;
  return {
    code: 'lowPlaceUnknown',
    severity: 'note',
    subject: 'house',
    facts: { fluid: word(fluid.name), ...(isHeavierThanAir(facts) ? {} : { rises: word('yes') }) },
    source: weightGrounds(facts),
    certainty: 'physics',
    remedy:
      'Look for a pit, a sunken stand, an open drain or a step down, and measure its length, width and depth below the floor with a tape.',
    needsLicensedPerson: false,
  };
}

function weightGrounds(facts: LeakFacts): string {
  return isHeavierThanAir(facts)
    ? 'physics: the vapour of this refrigerant is heavier than air'
    : 'physics: the vapour of this refrigerant is lighter than air, the cold mist of a leak at first heavier';
}

/** Formula records of this file. */
export const leakFormulas: readonly Formula[] = [
  {
    id: 'cautions.leakConcentration',
    title: 'Concentration of a whole charge in a closed space',
    result: { symbol: 'c', meaning: 'concentration, evenly mixed', unit: 'kg/m³', quantity: 'chargeDensity' },
    expression: 'm / V',
    symbols: {
      m: { meaning: 'charge of the circuit', unit: 'kg' },
      V: { meaning: 'volume of the space', unit: 'm³', quantity: 'volume' },
    },
    source: 'definition',
    validity: 'evenly mixed; heavy gas collects lower down',
    file: 'src/cautions/rules/refrigerant/leak.ts',
    compute: (v) => leakConcentration(v.m!, v.V!),
    examples: [
      { m: 0.062, V: 0.31 },
      { m: 0.148, V: 38 },
    ],
  },
];

interface Leak {
  readonly concentration: number;
  readonly limit: number;
  readonly flammabilityLimit: number;
  readonly facts: CautionFinding['facts'];
}

function enclosureLeak(facts: LeakFacts): Leak | undefined {
  if (facts.enclosure.kind === 'openRoom') return undefined;
  const leak = flammableLeak(facts, facts.enclosure.volume);
  if (leak === undefined) return undefined;
  return { ...leak, facts: { ...leak.facts, enclosure: word(facts.enclosure.kind) } };
}

function roomLeak(facts: LeakFacts): Leak | undefined {
  const room = smallestRoom(facts);
  const leak = flammableLeak(facts, room.volume);
  return leak === undefined ? undefined : { ...leak, facts: { ...leak.facts, room: word(room.kind) } };
}

/** Of the rooms that hold part of the circuit, the one in which a leak would be thickest. */
export function smallestRoom({ roomVolume, otherRoomVolume }: LeakFacts): {
  kind: 'tankRoom' | 'otherRoom';
  volume: number;
} {
  return otherRoomVolume !== null && otherRoomVolume < roomVolume
    ? { kind: 'otherRoom', volume: otherRoomVolume }
    : { kind: 'tankRoom', volume: roomVolume };
}

/** The whole charge in a space, upper end, held against a limit [kg/m³]. */
export function concentrationFacts(
  { fluid, charge }: LeakFacts,
  space: number,
  limit: number,
): CautionFinding['facts'] {
  return {
    fluid: word(fluid.name),
    chargeLow: mass(charge.low),
    chargeHigh: mass(charge.high),
    volume: volume(space),
    concentration: chargeDensity(leakConcentration(charge.high, space)),
    limit: chargeDensity(limit),
  };
}

function flammableLeak(facts: LeakFacts, space: number): Leak | undefined {
  const { fluid, charge } = facts;
  if (!isFlammable(fluid)) return undefined;
  if (fluid.lowerFlammabilityLimit === null) {
    throw new InputError(
      'fluid.lowerFlammabilityLimit',
      null,
      `a limit in kg/m³ for ${fluid.name}, class ${fluid.safetyClass}`,
    );
  }
  const concentration = leakConcentration(charge.high, space);
  const limit = smallestLimit(fluid.practicalLimit, fluid.lowerFlammabilityLimit);
  return {
    concentration,
    limit,
    flammabilityLimit: fluid.lowerFlammabilityLimit,
    facts: {
      ...concentrationFacts(facts, space, limit),
      flammabilityLimit: chargeDensity(fluid.lowerFlammabilityLimit),
    },
  };
}
