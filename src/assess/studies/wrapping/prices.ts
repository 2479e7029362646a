// What the measures are worth at other prices of electricity and other discount rates: the order is looked for anew in each cell.
// The tank's own numbers are those of the states found before.

import { bestInTurn, type Candidate, eachAlone, payingSteps } from '../../../accounts/index.ts';
import { type HeaterPrices, type WrappedStates, wrappedAccount } from '../../stages/wrapping/states.ts';
import type { PriceCell, PriceTable } from './answer.ts';

/** Multiples of the design's own price of electricity. */
const multiples = [0.5, 1, 1.5, 2] as const;
/** Discount rates beside the design's own [1/year]. */
const rates = [0, 0.03, 0.06, 0.1] as const;

export function priceTable(
  states: WrappedStates,
  candidates: readonly Candidate[],
  own: HeaterPrices,
  terms: { readonly discountRate: number; readonly years: number },
): PriceTable {
  const electricityPrices = multiples.map((multiple) => multiple * own.prices.electricity);
  const discountRates = [...new Set([...rates, terms.discountRate])].sort((left, right) => left - right);
  const cells = electricityPrices.map((electricity) => {
    const prices = { ...own, prices: { ...own.prices, electricity } };
    const costWith = (ids: readonly string[]) => wrappedAccount(states.yearWith(ids), prices).runningCost;
    return discountRates.map((discountRate): PriceCell => {
      const here = { ...terms, discountRate };
      const paying = payingSteps(bestInTurn(candidates, costWith, here));
      const alone = eachAlone(candidates, costWith, here);
      return {
        electricityPrice: electricity,
        discountRate,
        netValue: paying.reduce((sum, { netValue }) => sum + netValue, 0),
        paying: paying.map(({ id }) => id),
        alone: Object.fromEntries(alone.map(({ id, netValue }) => [id, netValue])),
      };
    });
  });
  return {
    electricityPrices,
    discountRates,
    ownPrice: multiples.indexOf(1),
    ownRate: discountRates.indexOf(terms.discountRate),
    cells,
  };
}
