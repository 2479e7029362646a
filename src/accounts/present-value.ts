// Money now and money every year: annuity factor and capital recovery.
// All yearly sums fall at the end of each year and stay equal; inflation is left out, so the rate is a real one.

import { requireNonNegative, requirePositive } from '../numerics/index.ts';

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
