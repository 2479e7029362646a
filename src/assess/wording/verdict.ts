// The verdict in one or two sentences, by standing. Never says that anything is safe or allowed.

import { type Band, type Finding, sayBand, sayQuantity, type UnitView } from '../../quantities/index.ts';
import type { Influence, LimitMargin, ScenarioAccount, Standing } from '../assessment.ts';
import { inputPhrase } from './labels.ts';
import { sayFinding } from './say-finding.ts';

export interface VerdictFacts {
  readonly standing: Standing;
  readonly tankLoad: Band;
  readonly heatDelivered: Band;
  readonly findings: readonly Finding[];
  readonly limits: readonly LimitMargin[];
  readonly influences: readonly Influence[];
  readonly accounts: readonly ScenarioAccount[];
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
      return `${capitalised(balance(facts, view))}: short by at least about ${sayQuantity(facts.tankLoad.low - facts.heatDelivered.high, 'power', view)}.`;
    case 'uncertain':
      return `${capitalised(balance(facts, view))}: the two ranges overlap. ${nextMeasurement(facts)}`;
    case 'notWorthIt':
      return `${capitalised(balance(facts, view))}. But ${costAboveCheapest(facts, view)}.`;
    case 'carriesLoad':
      return `${capitalised(balance(facts, view))}. ${firstLimit(facts, view)}`;
  }
}

/** "in the coldest spell the tank needs about 220 W (…) and this machine brings about 310 W (…)". */
function balance({ tankLoad, heatDelivered }: VerdictFacts, view: UnitView): string {
  const brings = `this machine would bring ${sayBand(heatDelivered, 'power', view)}`;
  if (tankLoad.high <= 0) return `even in the coldest spell this tank needs no heat; ${brings}`;
  return `in the coldest spell the tank needs ${sayBand(tankLoad, 'power', view)} and this machine brings ${sayBand(heatDelivered, 'power', view)}`;
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

function costAboveCheapest({ accounts, currency }: VerdictFacts, view: UnitView): string {
  const loop = accounts.find((each) => each.scenario === 'thisLoop')!;
  const others = accounts.filter((each) => each.scenario !== 'thisLoop');
  const cheapest = others.reduce((best, each) =>
    each.lifeCostPerYear.likely < best.lifeCostPerYear.likely ? each : best,
  );
  const more = loop.lifeCostPerYear.likely - cheapest.lifeCostPerYear.likely;
  const amount = sayQuantity(more, 'money', view, undefined, { currency });
  return `over its life it costs about ${amount} a year more than ${cheapest.label}, tank and room counted together`;
}

function firstLimit({ limits }: VerdictFacts, view: UnitView): string {
  const nearest = limits[0];
  if (nearest === undefined) return '';
  const quantity = nearest.quantity === 'ratio' ? 'ratio' : 'temperature';
  const distance = nearest.quantity === 'ratio' ? 'ratio' : 'temperatureDifference';
  const bound = sayQuantity(nearest.bound, quantity, view);
  const away = sayQuantity(Math.abs(nearest.margin), distance, view);
  const limit = `the ${nearest.label} of ${bound} that is usual for such a machine`;
  if (nearest.passed) return `It has passed a limit, though: ${limit}, by ${away}.`;
  return `The limit it comes nearest to is ${limit}: ${away} are left.`;
}

function capitalised(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
