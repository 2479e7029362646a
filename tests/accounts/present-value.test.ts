// Money over time against published standard factors and laws.
// The values for 5 % over 10 years are those of the interest tables of engineering-economics texts
// (present worth of an annuity 7.7217, capital recovery 0.1295), digits beyond the tables by exact arithmetic.

import { describe, expect, it } from 'vitest';
import { annuityFactor, capitalRecoveryFactor } from '../../src/accounts/index.ts';

describe('present value', () => {
  it('matches the interest tables', () => {
    expect(annuityFactor(0.05, 10)).toBeCloseTo(7.721735, 6);
    expect(capitalRecoveryFactor(0.05, 10)).toBeCloseTo(0.1295046, 7);
    expect(annuityFactor(0.08, 20)).toBeCloseTo(9.8181, 4); // interest table, 8 %, 20 years
    expect(annuityFactor(0.1, 5)).toBeCloseTo(3.7908, 4); // interest table, 10 %, 5 years
  });

  it('works the example: 600 now, 120 a year, 5 %, 10 years', () => {
    // The example's net present value, +326.608.
    expect(-600 + 120 * annuityFactor(0.05, 10)).toBeCloseTo(326.608, 3);
  });

  it('goes smoothly to no interest', () => {
    expect(annuityFactor(0, 8)).toBe(8);
    expect(annuityFactor(1e-12, 8)).toBeCloseTo(8, 9);
  });

  it('is a sum of yearly payments', () => {
    let sum = 0;
    for (let year = 1; year <= 7; year += 1) sum += 1.04 ** -year;
    expect(annuityFactor(0.04, 7)).toBeCloseTo(sum, 12);
  });

  it('refuses impossible rates and years', () => {
    expect(() => annuityFactor(-0.01, 8)).toThrow(/rate/);
    expect(() => annuityFactor(0.02, 0)).toThrow(/years/);
  });
});
