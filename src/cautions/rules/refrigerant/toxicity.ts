// Rules about breathing what has leaked: fluids of higher toxicity (classes B of ISO 817), and the concentration that can be
// breathed for a while (ATEL/ODL), which for some fluids that burn lies far below what could catch fire. The whole charge,
// upper end of its range, evenly mixed into the smallest room; heavy gas on the floor is thicker.

import type { CautionFinding, Grounds } from '../../fact.ts';
import { word } from '../../fact.ts';
import { isFlammable, isToxic } from '../../facts.ts';
import { classGrounds } from './fluid.ts';
import { concentrationFacts, type LeakFacts, leakConcentration, smallestRoom } from './leak.ts';

/** Any fluid of higher toxicity. */
export function toxicFluid({ fluid }: Pick<LeakFacts, 'fluid'>): CautionFinding | undefined {
  if (!isToxic(fluid)) return undefined;
  return {
    code: 'toxicFluid',
    severity: 'look',
    subject: 'person',
    facts: { fluid: word(fluid.name), safetyClass: word(fluid.safetyClass) },
    ...classGrounds(fluid),
    remedy:
      'Such fluids belong to plants with trained people, alarms and a way out. Choose a fluid of class A for a room people live in.',
    needsLicensedPerson: true,
  };
}

/** A leak of a fluid of higher toxicity would come above what can be breathed. */
export function leakToxicInRoom(facts: LeakFacts): CautionFinding | undefined {
  const { fluid } = facts;
  if (!isToxic(fluid)) return undefined;
  const limits = [
    ...(fluid.practicalLimit === null ? [] : [{ value: fluid.practicalLimit, grounds: fluid.practicalLimitGrounds }]),
    ...(fluid.toxicityLimit === null ? [] : [{ value: fluid.toxicityLimit, grounds: fluid.toxicityLimitGrounds }]),
  ].sort((left, right) => left.value - right.value);
  const lowest = limits[0];
  if (lowest === undefined) return undefined;
  return breathedLeak(facts, 'leakToxicInRoom', lowest.value, lowest.grounds);
}

/**
 * A leak of another fluid would come above what can be breathed for a while, and below the practical limit, of which
 * leakAbovePracticalLimitInRoom speaks.
 */
export function leakAboveBreathingLimitInRoom(facts: LeakFacts): CautionFinding | undefined {
  const { fluid, charge } = facts;
  if (isToxic(fluid) || fluid.toxicityLimit === null) return undefined;
  const concentration = leakConcentration(charge.high, smallestRoom(facts).volume);
  if (!isFlammable(fluid) && fluid.practicalLimit !== null && concentration > fluid.practicalLimit) return undefined;
  return breathedLeak(facts, 'leakAboveBreathingLimitInRoom', fluid.toxicityLimit, fluid.toxicityLimitGrounds);
}

function breathedLeak(
  facts: LeakFacts,
  code: 'leakToxicInRoom' | 'leakAboveBreathingLimitInRoom',
  limit: number,
  grounds: Grounds,
): CautionFinding | undefined {
  const room = smallestRoom(facts);
  if (leakConcentration(facts.charge.high, room.volume) <= limit) return undefined;
  const isStop = code === 'leakToxicInRoom';
  return {
    code,
    severity: isStop ? 'stop' : 'look',
    subject: 'person',
    facts: { ...concentrationFacts(facts, room.volume, limit), room: word(room.kind) },
    source: `limit for breathing: ${grounds.source}`,
    certainty: grounds.certainty,
    remedy: isStop
      ? 'This charge does not belong in a room of this size: choose a fluid of class A.'
      : 'A larger room or a smaller charge; a leak of this size is not fit to breathe.',
    needsLicensedPerson: true,
  };
}
