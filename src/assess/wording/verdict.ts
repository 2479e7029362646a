// The verdict in one or two sentences, by standing. Never says that anything is safe or allowed.

import { type Band, type Finding, sayBand, sayQuantity, sentenceStart, type UnitView } from '../../quantities/index.ts';
import { distanceQuantity } from '../answers/limits.ts';
import type { Influence, LimitMargin, LoopAgainst, Standing } from '../assessment/assessment.ts';
import { inputPhrase } from './labels.ts';
import { sayFinding } from './say-finding.ts';

export interface VerdictFacts {
  readonly standing: Standing;
  readonly tankLoad: Band;
  readonly heatDelivered: Band;
  readonly findings: readonly Finding[];
  readonly limits: readonly LimitMargin[];
  /** Machines alike, side by side. */
  readonly count: number;
  readonly influences: readonly Pick<Influence, 'path' | 'label' | 'measure'>[];
  readonly loopAgainst: readonly LoopAgainst[];
  readonly currency: string;
}

/** Heading of each standing, in plain words. */
export const standingTitles: Readonly<Record<Standing, string>> = {
  doNotBuild: 'Do not build this',
  fallsShort: 'Falls short',
  uncertain: 'We cannot know yet',
  notWorthIt: 'Carries the load, but is not worth it',
  carriesLoad: 'Carries the load',
};

export function verdictSentence(facts: VerdictFacts, view: UnitView): string {
  switch (facts.standing) {
    case 'doNotBuild':
      return `${stopTitle(facts, view)}. For study only: ${balance(facts, view)}.`;
    case 'fallsShort':
      return `${sentenceStart(balance(facts, view))}: short by at least about ${sayQuantity(facts.tankLoad.low - facts.heatDelivered.high, 'power', view)}.`;
    case 'uncertain':
      return `${sentenceStart(balance(facts, view))}: the two ranges overlap. ${nextMeasurement(facts)}`;
    case 'notWorthIt':
      return `${sentenceStart(balance(facts, view))}. ${insteadOfLoop(facts)}${costAboveCheapest(facts, view)}.`;
    case 'carriesLoad':
      return `${sentenceStart(balance(facts, view))}. ${firstLimit(facts, view)}`;
  }
}

/** "in the coldest spell the tank needs about 220 W (…) and this machine brings about 310 W (…)". */
function balance({ tankLoad, heatDelivered, count }: VerdictFacts, view: UnitView): string {
  const machine = count === 1 ? 'this machine' : `${count} of these machines together`;
  const heat = sayBand(heatDelivered, 'power', view);
  if (tankLoad.high <= 0) {
    return `even in the coldest spell this tank needs no heat; ${machine} would bring ${heat}`;
  }
  const bring = count === 1 ? 'brings' : 'bring';
  return `in the coldest spell the tank needs ${sayBand(tankLoad, 'power', view)} and ${machine} ${bring} ${heat}`;
}

function stopTitle({ findings }: VerdictFacts, view: UnitView): string {
  const [first, ...more] = findings.filter((finding) => finding.severity === 'stop');
  if (first === undefined) return standingTitles.doNotBuild;
  const { title } = sayFinding(first, view);
  if (more.length === 0) return title;
  return `${title}, and there ${more.length === 1 ? 'is one more reason' : `are ${more.length} more reasons`} to stop`;
}

function nextMeasurement({ influences }: VerdictFacts): string {
  const first = influences[0];
  if (first === undefined) return 'No single input would settle it.';
  return `What would settle most is ${inputPhrase(first.path, first.label)}: ${first.measure}.`;
}

/** What to do in its place, where that is to wrap the tank and build nothing. */
function insteadOfLoop({ loopAgainst }: VerdictFacts): string {
  const cheapest = loopAgainst.find(({ isCheapest }) => isCheapest);
  return cheapest?.against === 'insulationOnly' ? 'Insulate and stop: ' : 'But ';
}

/** "over its life it costs about 90 EUR a year (30 to 170) more than …", or that the range also holds the contrary. */
function costAboveCheapest({ loopAgainst, currency }: VerdictFacts, view: UnitView): string {
  const { lifeCost, label } = loopAgainst.find(({ isCheapest }) => isCheapest)!;
  const counted = 'tank and room counted together';
  const amount = (value: number) => sayQuantity(value, 'money', view, undefined, { currency });
  if (lifeCost.low > 0) {
    const more = sayBand(lifeCost, 'money', view, { currency });
    return `over its life it costs ${more} a year more than ${label}, ${counted}. That holds at both ends of the range`;
  }
  return `over its life it would likely cost about ${amount(lifeCost.likely)} a year more than ${label}, ${counted}. The range of that difference does not settle it: from ${amount(-lifeCost.low)} less to ${amount(lifeCost.high)} more`;
}

function firstLimit({ limits }: VerdictFacts, view: UnitView): string {
  const nearest = limits[0];
  if (nearest === undefined) return '';
  const bound = sayQuantity(nearest.bound, nearest.quantity, view);
  const away = sayQuantity(Math.abs(nearest.margin), distanceQuantity(nearest.quantity), view);
  const limit = `the ${nearest.label} of ${bound} that is usual for such a machine`;
  if (nearest.passed) return `It has passed a limit, though: ${limit}, by ${away}.`;
  return `The limit it comes nearest to is ${limit}: ${away} are left.`;
}
