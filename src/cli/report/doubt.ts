// What doubt means for the verdict, as a person reads it in a terminal: which input alone would change what can be said of
// the load, and what to measure next.

import type { Assessment, Influence, LoadStanding } from '../../assess/index.ts';
import { isQuantityName, sayRange, sentenceStart, type UnitView } from '../../quantities/index.ts';
import { paragraph, section } from './text-table.ts';

const thenWords: Readonly<Record<LoadStanding, string>> = {
  fallsShort: 'it would fall short',
  uncertain: 'nobody could know',
  carriesLoad: 'it would carry the load',
};

/** "Known to be 20 cm³, it would carry the load. "; empty where neither end changes anything. */
export function flipWords(
  { input, quantity, flipsAtLow, flipsAtHigh }: Influence,
  currency: string,
  view: UnitView,
): string {
  if (!isQuantityName(quantity)) return '';
  const ends = [
    [input.low, flipsAtLow],
    [input.high, flipsAtHigh],
  ] as const;
  return ends
    .flatMap(([value, then]) => {
      if (then === null) return [];
      const said = sayRange({ low: value, likely: value, high: value }, quantity, view, { currency });
      return [`Known to be ${said}, ${thenWords[then]}. `];
    })
    .join('');
}

export function measureNextSection({ measureNext, margin }: Assessment, view: UnitView): string {
  const title = 'Measure this next';
  if (measureNext.length === 0) {
    return section(title, '  Nothing that you could measure or read would narrow the verdict worth speaking of.');
  }
  const entries = measureNext.map(({ measure, marginIfKnown, enterAt }, index) => {
    const fields = enterAt.length === 0 ? '' : ` The result goes into ${enterAt.join(', ')}.`;
    const words = `${measure}. The margin, now ${sayRange(margin, 'power', view)}, would run from ${sayRange(marginIfKnown, 'power', view)} at best.${fields}`;
    return paragraph(`${index + 1}. ${sentenceStart(words)}`, '  ');
  });
  return section(title, entries.join('\n'));
}
