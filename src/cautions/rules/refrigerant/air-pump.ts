// Rules about an air pump that draws from where a leak would flow: it blows the gas through the water and carries it into
// the fish room, and in the water the gas takes the place of oxygen.

import type { CautionFinding, Grounds } from '../../fact.ts';
import { chargeDensity, mass, word } from '../../fact.ts';
import type { CautionFacts } from '../../facts.ts';
import { isFlammable } from '../../facts.ts';
import { leakConcentration, leakLimit } from './leak.ts';

export type AirPumpFacts = Pick<
  CautionFacts,
  'fluid' | 'charge' | 'enclosure' | 'roomVolume' | 'otherRoomVolume' | 'airPumpIntake'
>;

const grounds: Grounds = {
  source: 'physics: an air pump passes on whatever gas surrounds it; refrigerant in it takes the place of oxygen',
  certainty: 'physics',
};

const remedy = 'Lead a tube from the air pump’s intake to outdoors, or to a room without any part of the circuit.';

/** The air pump draws from beside the machine, or from a room in which a leak would pass its limit. */
export function airPumpDrawsLeak(facts: AirPumpFacts): CautionFinding | undefined {
  const { airPumpIntake, charge, fluid } = facts;
  if (airPumpIntake !== 'besideMachine' && !(airPumpIntake === 'sameRoom' && isAboveLimit(facts))) return undefined;
  return {
    code: 'airPumpDrawsLeak',
    severity: 'look',
    subject: 'livestock',
    facts: {
      fluid: word(fluid.name),
      intake: word(airPumpIntake),
      chargeLow: mass(charge.low),
      chargeHigh: mass(charge.high),
      concentration: chargeDensity(atIntake(facts)),
    },
    ...grounds,
    remedy,
    needsLicensedPerson: false,
  };
}

/** Nobody has said where it draws from, and the circuit holds a fluid that burns or stands in a closed space. */
export function airPumpIntakeUnknown(facts: AirPumpFacts): CautionFinding | undefined {
  if (facts.airPumpIntake !== 'unknown') return undefined;
  if (!isFlammable(facts.fluid) && facts.enclosure.kind === 'openRoom') return undefined;
  return {
    code: 'airPumpIntakeUnknown',
    severity: 'note',
    subject: 'livestock',
    facts: { fluid: word(facts.fluid.name) },
    ...grounds,
    remedy: `Follow the air pump’s intake. ${remedy}`,
    needsLicensedPerson: false,
  };
}

/** What the whole charge would make, evenly mixed, of the air at the intake [kg/m³]. */
export function atIntake({ charge, enclosure, roomVolume, otherRoomVolume, airPumpIntake }: AirPumpFacts): number {
  const rooms = Math.min(roomVolume, otherRoomVolume ?? roomVolume);
  const isEnclosed = airPumpIntake === 'besideMachine' && enclosure.kind !== 'openRoom';
  return leakConcentration(charge.high, isEnclosed ? enclosure.volume : rooms);
}

function isAboveLimit(facts: AirPumpFacts): boolean {
  const limit = leakLimit(facts.fluid);
  return limit === null || atIntake(facts) > limit;
}
