// What money spent once is worth beside money saved every year: payback without and with interest, and the net value over a
// number of years. All savings fall at the end of each year and stay equal; inflation is left out, so the rate is a real one.

import { InputError, requireFinite, requireNonNegative, requirePositive } from '../../numerics/index.ts';
import { annuityFactor } from '../present-value.ts';

/**
 * Net value of a measure over a number of years.
 *     NPV = S (1 − (1 + r)^(−n)) / r − C;   r = 0: NPV = S n − C
 * @param cost    C [money], spent now, ≥ 0
 * @param saving  S [money/year], below 0 where it costs more every year
 * @param rate    r [1/year], real discount rate, ≥ 0
 * @param years   n [-], > 0
 * @returns       NPV [money]; above 0 where the measure pays
 * @throws InputError outside these ranges
 * Source: any engineering-economics text. Worked value: 600, 120, 5 %, 10 → +326.608.
 */
export function netValue(cost: number, saving: number, rate: number, years: number): number {
  requireNonNegative('cost', cost);
  requireFinite('saving', saving);
  return saving * annuityFactor(rate, years) - cost;
}

/**
 * Simple payback: years until the savings have added up to the cost, interest left out.
 *     t = C / S
 * @param cost    C [money], ≥ 0
 * @param saving  S [money/year], > 0
 * @returns       t [years]
 * @throws InputError outside these ranges: what saves nothing has no payback, see `paybackOrNever`
 * Source: any engineering-economics text. Worked value: 600, 120 → 5.00.
 */
export function simplePayback(cost: number, saving: number): number {
  requireNonNegative('cost', cost);
  requirePositive('saving', saving);
  return cost / saving;
}

/**
 * Discounted payback: years until the discounted savings have added up to the cost.
 *     t = −ln(1 − r C/S) / ln(1 + r);   r = 0: t = C/S
 * @param cost    C [money], ≥ 0
 * @param saving  S [money/year], above r C: less never pays the interest
 * @param rate    r [1/year], ≥ 0
 * @returns       t [years]
 * @throws InputError outside these ranges
 * Pitfall: between two payments the fraction of a year is that of the continued formula.
 * Source: any engineering-economics text. Worked value: 600, 120, 5 % → 5.8963.
 */
export function discountedPayback(cost: number, saving: number, rate: number): number {
  requireNonNegative('rate', rate);
  const simple = simplePayback(cost, saving);
  if (rate === 0) return simple;
  if (rate * simple >= 1) throw new InputError('saving', saving, `more than the interest on the cost, ${rate * cost}`);
  return -Math.log1p(-rate * simple) / Math.log1p(rate);
}

/** Simple payback [years]; 0 for what costs nothing and saves, null for what never pays itself back. */
export function paybackOrNever(cost: number, saving: number): number | null {
  return saving > 0 ? simplePayback(cost, saving) : null;
}

/** Discounted payback [years]; null for what never pays itself back. */
export function discountedPaybackOrNever(cost: number, saving: number, rate: number): number | null {
  return saving > 0 && rate * cost < saving ? discountedPayback(cost, saving, rate) : null;
}
