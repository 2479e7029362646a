// Where a machine is beyond a limit at one condensing temperature, as hatched margins of the evaporating temperature: from below and
// from above only the nearest, since the others lie within it.

import type { MapLimit } from '../../assess/index.ts';
import { listed, sayQuantity, toView, type UnitView } from '../../quantities/index.ts';
import type { LimitBand } from '../specification.ts';

/** A margin narrower than this share of the picture is none: a limit at its very edge. */
const leastWidth = 0.005;

interface Margin {
  readonly label: string;
  readonly beyond: 'above' | 'below';
  /** In the units of the view. */
  readonly at: number;
}

/**
 * The margins, and what they are in words.
 * @param all         every limit, with where it is passed
 * @param condensing  of the line they belong to [K]
 * @param range       of the evaporating temperature, in the units of the view
 * @param view        units
 */
export function limitsAt(
  all: readonly MapLimit[],
  condensing: number,
  range: readonly [number, number],
  view: UnitView,
): { readonly limits: readonly LimitBand[]; readonly words: string } {
  const [first, last] = range;
  const margins = all.flatMap(({ label, edges }): readonly Margin[] =>
    edges.flatMap((edge) => {
      if (edge.condensing !== condensing || edge.at === null) return [];
      const whole = edge.beyond === 'above' ? first : last;
      const at = edge.at === 'all' ? whole : toView(edge.at, 'temperature', view);
      return [{ label, beyond: edge.beyond, at: Math.min(last, Math.max(first, at)) }];
    }),
  );
  const above = nearest(margins, 'above');
  const isAll = above !== undefined && above.at <= first;
  const below = isAll ? undefined : nearest(margins, 'below');
  const least = leastWidth * (last - first);
  const limits: LimitBand[] = [
    ...(below === undefined || below.at - first < least
      ? []
      : [{ label: below.label, axis: 'x' as const, from: first, to: below.at }]),
    ...(above === undefined || last - above.at < least
      ? []
      : [{ label: above.label, axis: 'x' as const, from: above.at, to: last }]),
  ];
  return { limits, words: words(margins, limits, condensing, view) };
}

function nearest(margins: readonly Margin[], beyond: Margin['beyond']): Margin | undefined {
  const sign = beyond === 'above' ? 1 : -1;
  return margins.filter((margin) => margin.beyond === beyond).toSorted((a, b) => sign * (a.at - b.at))[0];
}

function words(margins: readonly Margin[], limits: readonly LimitBand[], condensing: number, view: UnitView): string {
  const at = `at ${sayQuantity(condensing, 'temperature', view)} condensing`;
  if (limits.length === 0) return `No limit is passed within the pictures ${at}.`;
  const others = [...new Set(margins.map(({ label }) => label))].filter(
    (label) => !limits.some((limit) => limit.label === label),
  );
  const hatched = listed(limits.map(({ label }) => label));
  const beside = others.length === 0 ? '' : ` Further in, these are passed too: ${listed(others)}.`;
  const which = limits.length === 1 ? 'this limit' : 'these limits';
  return `Hatched ${at} is what lies beyond ${which}: ${hatched}.${beside}`;
}
