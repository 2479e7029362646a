// What to measure next: the one to three measurements that would narrow the margin's range most. One measurement may settle
// several inputs at once (a meter on the heater replaces all sizes and films of the tank), so inputs are gathered by the
// measurement that settles them. How far the range would shrink is told as if the measurement left no doubt of its own.

import type { Band } from '../../quantities/index.ts';
import type { Influence, MeasureNext } from '../assessment/assessment.ts';
import { enteredAt, isMeasurable } from '../wording/measure.ts';
import { bandWithout, type Doubt } from './doubt.ts';

/** More would be a list, not an advice. */
const most = 3;

/** A measurement that narrows the range by less than this share of its width is not worth the trouble. */
const leastNarrowing = 0.03;

/** The most telling first; empty where nothing that can be measured matters. */
export function measureNext(doubt: Doubt, influences: readonly Influence[]): readonly MeasureNext[] {
  const groups = new Map<string, Influence[]>();
  for (const influence of influences.filter(({ path }) => isMeasurable(path))) {
    groups.set(influence.measure, [...(groups.get(influence.measure) ?? []), influence]);
  }
  const now = doubt.bands['plant.margin']!;
  return [...groups]
    .map(([measure, settled]): MeasureNext => {
      const paths = settled.map(({ path }) => path);
      return {
        measure,
        paths,
        labels: settled.map(({ label }) => label),
        enterAt: [...new Set(paths.flatMap(enteredAt))],
        share: settled.reduce((sum, { share }) => sum + share, 0),
        marginIfKnown: bandWithout(doubt, 'plant.margin', paths),
      };
    })
    .filter(({ marginIfKnown }) => widthOf(marginIfKnown) <= (1 - leastNarrowing) * widthOf(now))
    .sort((left, right) => widthOf(left.marginIfKnown) - widthOf(right.marginIfKnown))
    .slice(0, most);
}

function widthOf({ low, high }: Band): number {
  return high - low;
}
