// Student's distribution for whole degrees of freedom, by its finite series.

import { InputError, requireFinite } from './errors.ts';

/**
 * Probability that |T| is larger than t by chance.
 * @param t        any finite number
 * @param freedom  ν, degrees of freedom, a whole number of 1 or more
 * @returns        0 to 1, absolute error below 1e-14
 * @throws InputError for anything else
 * Source: M. Abramowitz, I. A. Stegun (1964), Handbook of Mathematical Functions, 26.7.3 and 26.7.4 (from memory).
 * Worked value: t 2.228, ν 10 → 0.0500.
 */
export function studentTail(t: number, freedom: number): number {
  requireFinite('t', t);
  if (!(Number.isInteger(freedom) && freedom >= 1)) throw new InputError('freedom', freedom, 'a whole number from 1');
  const angle = Math.atan(Math.abs(t) / Math.sqrt(freedom));
  const cosine = Math.cos(angle);
  const isOdd = freedom % 2 === 1;
  let term = isOdd ? cosine : 1;
  let sum = freedom === 1 ? 0 : term;
  for (let k = isOdd ? 3 : 2; k <= freedom - 2; k += 2) {
    term *= ((k - 1) / k) * cosine ** 2;
    sum += term;
  }
  const within = isOdd ? (2 / Math.PI) * (angle + Math.sin(angle) * sum) : Math.sin(angle) * sum;
  return Math.min(1, Math.max(0, 1 - within));
}
