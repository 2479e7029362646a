// Rules about water that pumps, lights and lamp warm in summer beyond what its animals bear, because little heat leaves the
// tank. The temperature at rest is a balance of energy; the alarm temperatures are from memory, so these rules warn and never
// stop.

import type { CautionFinding, Grounds } from '../../fact.ts';
import { power, temperature, word } from '../../fact.ts';
import type { CautionFacts } from '../../facts.ts';
import type { RestingWater, SummerFacts } from '../../standing-tank.ts';
import { highestUsualWater } from './livestock.ts';

export type SummerRuleFacts = Pick<CautionFacts, 'standing' | 'livestock'>;

const grounds: Grounds = {
  source:
    'energy balance of the tank: the water rests where its losses have grown to what pumps, lights and lamp give; the alarm temperature is usual advice, from memory',
  certainty: 'memory',
};

/** The tank as it is comes to rest above the alarm temperature. */
export function summerOverheating(facts: SummerRuleFacts): CautionFinding | undefined {
  if (facts.standing === null) return undefined;
  const { summer } = facts.standing;
  const limit = highestUsualWater[facts.livestock];
  if (summer.asItIs === null || !mayPass(summer.asItIs, limit)) return undefined;
  return {
    code: 'summerOverheating',
    severity: 'look',
    subject: 'livestock',
    facts: {
      ...common(summer, facts, limit),
      ...restFacts(summer.asItIs, limit),
      ...(summer.wrapped === null ? {} : wrappedFacts(summer.wrapped)),
    },
    ...grounds,
    remedy:
      'Fewer watts in the water, lamps off at noon, a cover taken off in summer, a fan over the open water and topping up; where that is not enough, a cooler.',
    needsLicensedPerson: false,
  };
}

/** Wrapped with the measures it comes to rest above the alarm temperature, and without them it likely does not. */
export function summerOverheatingWrapped(facts: SummerRuleFacts): CautionFinding | undefined {
  if (facts.standing === null) return undefined;
  const { asItIs, wrapped, ...summer } = facts.standing.summer;
  const limit = highestUsualWater[facts.livestock];
  if (wrapped === null || !mayPass(wrapped, limit) || (asItIs !== null && isBeyond(asItIs, limit))) return undefined;
  return {
    code: 'summerOverheatingWrapped',
    severity: 'look',
    subject: 'livestock',
    facts: {
      ...common(summer, facts, limit),
      ...restFacts(wrapped, limit),
      ...(asItIs?.settlesAt ? { bare: temperature(asItIs.settlesAt.likely) } : {}),
    },
    ...grounds,
    remedy:
      'Choose covers and boards that come off for the summer, put fewer watts in the water, and have a fan ready; watch a thermometer through the first hot week.',
    needsLicensedPerson: false,
  };
}

function isBeyond({ settlesAt }: RestingWater, limit: number): boolean {
  return settlesAt === null || settlesAt.likely > limit;
}

function mayPass(water: RestingWater, limit: number): boolean {
  return isBeyond(water, limit) || water.settlesAt!.high > limit;
}

function common(
  { roomTemperature, gains }: Pick<SummerFacts, 'roomTemperature' | 'gains'>,
  { livestock }: SummerRuleFacts,
  limit: number,
): CautionFinding['facts'] {
  return {
    room: temperature(roomTemperature),
    gains: power(gains),
    livestock: word(livestock),
    limit: temperature(limit),
  };
}

function restFacts({ settlesAt, searchedUpTo }: RestingWater, limit: number): CautionFinding['facts'] {
  if (settlesAt === null) return { beyondWater: temperature(searchedUpTo) };
  const { low, likely, high } = settlesAt;
  const isOnlyTheEnd = !(likely > limit);
  return {
    settlesAt: temperature(likely),
    restLow: temperature(low),
    restHigh: temperature(high),
    ...(isOnlyTheEnd ? { endOfRange: temperature(high) } : {}),
  };
}

function wrappedFacts({ settlesAt, searchedUpTo }: RestingWater): CautionFinding['facts'] {
  return settlesAt === null ? { beyondWrapped: temperature(searchedUpTo) } : { wrapped: temperature(settlesAt.likely) };
}
