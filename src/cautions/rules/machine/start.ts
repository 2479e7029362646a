// Rules about starts: a motor that cannot start against pressure, and rests that are too short. Typical guides,
// from memory.

import type { CautionFinding } from '../../fact.ts';
import { duration, word } from '../../fact.ts';
import type { CautionFacts } from '../../facts.ts';

export type StartFacts = Pick<CautionFacts, 'machine'>;

/** A motor that starts only against equalised pressures, where what meters the refrigerant keeps them apart. */
export function lowTorqueStartAgainstPressure({ machine }: StartFacts): CautionFinding | undefined {
  const starting = machine?.starting ?? null;
  if (starting === null || starting.startsAgainstPressure === 'no') return undefined;
  const isCertain = starting.startsAgainstPressure === 'hasTo';
  return {
    code: 'lowTorqueStartAgainstPressure',
    severity: isCertain ? 'look' : 'note',
    subject: 'machine',
    facts: isCertain ? { lowTorque: word(starting.lowTorque) } : {},
    source: 'typical application guides for relay and run-capacitor motors, from memory',
    certainty: 'memory',
    remedy:
      'A capillary tube lets the pressures become alike while it rests; so does a valve made to bleed. A start capacitor with its relay is for a licensed person, and only where the maker foresees it.',
    needsLicensedPerson: true,
  };
}

/** The control would start it again sooner than pressures, protector and starting device allow. */
export function shortOffTime({ machine }: StartFacts): CautionFinding | undefined {
  const rest = machine?.shortestOffTime ?? null;
  const wanted = machine?.starting?.minimumOffTime ?? null;
  if (rest === null || wanted === null || rest >= wanted.likely) return undefined;
  return {
    code: 'shortOffTime',
    severity: 'look',
    subject: 'machine',
    facts: { rest: duration(rest), limit: duration(wanted.likely) },
    source: wanted.source,
    certainty: 'memory',
    remedy:
      'A delay in the control, a wider band of temperature or more water in the loop leaves it time; each start before that draws locked-rotor current until the protector opens.',
    needsLicensedPerson: false,
  };
}
