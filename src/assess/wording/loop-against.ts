// This loop against another way, in sentences: by how much they differ, what it would cost to be wrong, and at which price of
// house heat and which COP over the year they would cost the same. Two digits and ranges, never to the cent.

import {
  type Band,
  formatNumber,
  type QuantityContext,
  type QuantityName,
  sayBand,
  sayQuantity,
  type UnitView,
} from '../../quantities/index.ts';
import type { BreakEven, LoopAgainst } from '../assessment/assessment.ts';

export interface LoopAgainstWords {
  readonly difference: string;
  /** What being wrong would cost: having built it, and having not. */
  readonly ifBuilt: string;
  readonly ifNotBuilt: string;
  readonly houseHeatPrice: string;
  /** Null where there is no COP over the year. */
  readonly seasonCop: string | null;
  /** The same in a few words, for a table. */
  readonly short: {
    readonly difference: string;
    readonly houseHeatPrice: string;
    readonly seasonCop: string;
  };
}

/** Sentences in the units of the view; money in the currency of the design. */
export function sayLoopAgainst(against: LoopAgainst, currency: string, view: UnitView): LoopAgainstWords {
  const { label, ifBuilt, ifNotBuilt, houseHeatPrice, seasonCop } = against;
  const money = (value: number) => sayQuantity(value, 'money', view, undefined, { currency });
  return {
    difference: differenceWords(against, currency, view),
    ifBuilt:
      ifBuilt > 0
        ? `If you build this loop and the unfavourable end is true, it costs about ${money(ifBuilt)} a year more than ${label}.`
        : `If you build this loop and the unfavourable end is true, it still costs no more than ${label}.`,
    ifNotBuilt:
      ifNotBuilt > 0
        ? `If you keep to ${label} and the favourable end is true, you forgo about ${money(ifNotBuilt)} a year.`
        : `If you keep to ${label}, you forgo nothing, even at the favourable end.`,
    houseHeatPrice: priceWords(houseHeatPrice, label, (at) => withRange(at, 'energyPrice', { currency }, view)),
    seasonCop: seasonCop && copWords(seasonCop, label, (at) => withRange(at, 'ratio', {}, view)),
    short: {
      difference: sayDifference(against.lifeCost, currency, view),
      houseHeatPrice: sayBreakEven(houseHeatPrice, 'energyPrice', currency, view),
      seasonCop: seasonCop === null ? '' : sayBreakEven(seasonCop, 'ratio', currency, view),
    },
  };
}

/** "below about 0.3 EUR/kWh (0.2 to 0.5)", with an open end said as such; words where the two never cost the same. */
function sayBreakEven(
  { at, loopCostsLess }: BreakEven,
  quantity: Extract<QuantityName, 'energyPrice' | 'ratio'>,
  currency: string,
  view: UnitView,
): string {
  if (at === null) return loopCostsLess === 'always' ? 'at any' : 'at none';
  return `${loopCostsLess} ${withRange(at, quantity, { currency }, view)}`;
}

/** "about 440 EUR (350 to 540) less", or a difference that its range does not settle: "likely about 60 EUR less (100 less to 29 more)". */
function sayDifference(cost: Band, currency: string, view: UnitView): string {
  const context = { currency };
  if (cost.low > 0) return `${sayBand(cost, 'money', view, context)} more`;
  if (cost.high < 0) return `${sayBand(turned(cost), 'money', view, context)} less`;
  const amount = (value: number) => sayQuantity(Math.abs(value), 'money', view, undefined, context);
  const bare = (value: number) => formatNumber(Math.abs(value), 2);
  const side = cost.likely > 0 ? 'more' : 'less';
  return `likely about ${amount(cost.likely)} ${side} (${bare(cost.low)} less to ${bare(cost.high)} more)`;
}

function turned({ low, likely, high }: Band): Band {
  return { low: -high, likely: -likely, high: -low };
}

function differenceWords({ lifeCost, label }: LoopAgainst, currency: string, view: UnitView): string {
  const { low, likely, high } = lifeCost;
  const money = (value: number) => sayQuantity(value, 'money', view, undefined, { currency });
  if (low > 0) {
    const more = sayBand(lifeCost, 'money', view, { currency });
    return `This loop costs ${more} a year more than ${label}, at both ends of the range.`;
  }
  if (high < 0) {
    const less = sayBand(turned(lifeCost), 'money', view, { currency });
    return `This loop costs ${less} a year less than ${label}, at both ends of the range.`;
  }
  const side = likely > 0 ? 'more' : 'less';
  return `This loop would likely cost about ${money(Math.abs(likely))} a year ${side} than ${label}. The range does not settle it: from ${money(-low)} less to ${money(high)} more.`;
}

function priceWords({ loopCostsLess, at }: BreakEven, label: string, say: SayEven): string {
  if (at === null) {
    return loopCostsLess === 'always'
      ? `At any price of house heat this loop would likely cost less than ${label}.`
      : `At no price of house heat would this loop likely cost less than ${label}.`;
  }
  return `This loop costs less than ${label} as long as house heat costs ${loopCostsLess === 'below' ? 'less' : 'more'} than ${say(at)}.`;
}

function copWords({ loopCostsLess, at }: BreakEven, label: string, say: SayEven): string {
  if (at === null) {
    return loopCostsLess === 'always'
      ? `Even with a COP over the year of 1, no better than a plain heater, this loop would likely cost less than ${label}.`
      : `With no COP over the year would this loop likely cost less than ${label}.`;
  }
  if (loopCostsLess === 'above') {
    return `To cost less than ${label}, this loop must reach a COP over the year of ${say(at)}.`;
  }
  return `House heat is so dear here that this loop would cost less than ${label} only with a COP over the year below ${say(at)}.`;
}

type At = NonNullable<BreakEven['at']>;
type SayEven = (at: At) => string;

/** "about 0.29 CHF/kWh (0.09 to 0.42)"; an end that the range does not have is said as such. */
function withRange(at: At, quantity: QuantityName, context: QuantityContext, view: UnitView): string {
  const { low, likely, high } = at;
  if (low !== null && high !== null) return sayBand({ low, likely, high }, quantity, view, context);
  const say = (value: number) => sayQuantity(value, quantity, view, 2, context);
  const range =
    low !== null
      ? `${say(low)} or more; the range has no upper end`
      : high !== null
        ? `${say(high)} or less; the range has no lower end`
        : 'the range has no end on either side';
  return `about ${say(likely)} (${range})`;
}
