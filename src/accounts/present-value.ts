// Money now and money every year: annuity factor, capital recovery, net present value, payback times.
// All yearly sums fall at the end of each year and stay equal; inflation is left out, so the rate is a real one.

import { InputError, NoSolutionError, requireFinite, requireNonNegative, requirePositive } from '../numerics/index.ts';

/**
 * Annuity factor a: present value of 1 a year for n years.
 *     a = (1 − (1 + r)^(−n)) / r;   r = 0: a = n
 * @param rate   r [1/year], real discount rate, ≥ 0
 * @param years  n [-], number of yearly payments, > 0, fractions allowed
 * @returns      a [-]
 * Pitfall: near r = 0 the printed form loses digits; computed here as −expm1(−n·log1p(r))/r.
 * @throws InputError outside these ranges
 * Source: any engineering-economics text. Worked value: 5 %, 10 → 7.721735.
 */
export function annuityFactor(rate: number, years: number): number {
  requireNonNegative('rate', rate);
  requirePositive('years', years);
  return rate === 0 ? years : -Math.expm1(-years * Math.log1p(rate)) / rate;
}

/**
 * Capital recovery factor: equal yearly payment that pays back 1 borrowed now.
 *     f = r / (1 − (1 + r)^(−n));   r = 0: f = 1/n
 * @param rate   r [1/year], ≥ 0
 * @param years  n [-], > 0
 * @returns      f [1/year]
 * @throws InputError outside these ranges
 * Source: any engineering-economics text. Worked value: 5 %, 10 → 0.1295046.
 */
export function capitalRecoveryFactor(rate: number, years: number): number {
  return 1 / annuityFactor(rate, years);
}

/**
 * Net present value of a purchase that saves the same sum every year.
 *     NPV = −C + S · a(r, n)
 * @param purchase  C [money]
 * @param saving    S [money/year]; negative where it costs more
 * @param rate      r [1/year], ≥ 0
 * @param years     n [-], > 0
 * @returns         NPV [money]
 * @throws InputError outside these ranges
 * Source: any engineering-economics text. Worked value: 600, 120, 5 %, 10 → +326.608.
 */
export function netPresentValue(purchase: number, saving: number, rate: number, years: number): number {
  requireFinite('purchase', purchase);
  requireFinite('saving', saving);
  return -purchase + saving * annuityFactor(rate, years);
}

/**
 * Discounted payback time: when the present value of the savings equals the purchase.
 *     t = −ln(1 − r C / S) / ln(1 + r);   r = 0: t = C / S
 * @param purchase  C [money], ≥ 0
 * @param saving    S [money/year], > 0
 * @param rate      r [1/year], ≥ 0
 * @returns         t [years]
 * @throws InputError outside these ranges; NoSolutionError if r C ≥ S: interest eats the saving
 * Source: any engineering-economics text. Worked value: 600, 120, 5 % → 5.8963 (5.00 at rate 0).
 */
export function discountedPayback(purchase: number, saving: number, rate: number): number {
  requireNonNegative('purchase', purchase);
  requirePositive('saving', saving);
  requireNonNegative('rate', rate);
  if (rate === 0) return purchase / saving;
  const eaten = (rate * purchase) / saving;
  if (eaten >= 1) {
    throw new NoSolutionError(
      'the purchase is never paid back: its interest is at least the saving',
      `a saving above ${rate * purchase} a year is needed`,
      'neverPaidBack',
    );
  }
  return -Math.log1p(-eaten) / Math.log1p(rate);
}

/** Whether a saving ever pays back a purchase at this rate. */
export function isPaidBack(purchase: number, saving: number, rate: number): boolean {
  if (!(Number.isFinite(purchase) && Number.isFinite(saving) && Number.isFinite(rate))) {
    throw new InputError('purchase, saving, rate', [purchase, saving, rate], 'finite numbers');
  }
  return purchase <= 0 || (saving > 0 && rate * purchase < saving);
}
