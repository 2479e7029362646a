// Ten coefficients fitted to points: against an independent computation, exact sets returned, and what cannot be fitted refused.

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type FitPoint, fitTenCoefficients } from '../../../../src/parts/compressor/polynomial/fit.ts';
import {
  requireTenCoefficients,
  tenCoefficients,
} from '../../../../src/parts/compressor/polynomial/ten-coefficients.ts';
import reference from '../../../reference/parts/compressor-polynomial.json';

const kelvin = (celsius: number) => celsius + 273.15;

function pointsOf(rows: readonly (readonly number[])[]): readonly FitPoint[] {
  return rows.map(([evaporating, condensing, value], index) => ({
    evaporating: kelvin(evaporating!),
    condensing: kelvin(condensing!),
    value: value!,
    name: `row ${index}`,
  }));
}

/** A grid of a smooth surface, invented. */
const smooth = requireTenCoefficients([620, 22, -4.1, 0.26, -0.16, 0.012, 0.0011, -0.0014, 0.0006, -0.00025]);
function gridOf(evaporating: readonly number[], condensing: readonly number[]): readonly FitPoint[] {
  return pointsOf(condensing.flatMap((d) => evaporating.map((s) => [s, d, tenCoefficients(smooth, s, d)])));
}
const whole = gridOf([-35, -30, -25, -20, -15, -10], [35, 40, 45, 50, 55]);

describe('reference: an independent computation (see the source in the file)', () => {
  test.each(['relative', 'absolute'] as const)('%s weighting', (weighting) => {
    const expected = reference.fit[weighting];
    const fit = fitTenCoefficients(pointsOf(reference.fit.points), weighting);
    fit.residuals.forEach(({ fitted, studentised }, index) => {
      expect(Math.abs(fitted / expected.fitted[index]! - 1)).toBeLessThan(1e-10);
      expect(Math.abs(studentised! - expected.studentised[index]!)).toBeLessThan(1e-7);
    });
    fit.coefficients.forEach((coefficient, index) => {
      const size = Math.max(Math.abs(expected.coefficients[index]!), 1e-4);
      expect(Math.abs(coefficient - expected.coefficients[index]!) / size).toBeLessThan(1e-5);
    });
  });

  test('the raised point, and no other, disagrees, and the others say what stands there', () => {
    const fit = fitTenCoefficients(pointsOf(reference.fit.points));
    expect(fit.residuals.filter(({ disagrees }) => disagrees).map(({ name }) => name)).toEqual(['row 13']);
    const { given, byTheOthers } = fit.residuals[13]!;
    expect(given / byTheOthers!).toBeGreaterThan(1.07);
    expect(given / byTheOthers!).toBeLessThan(1.11);
    expect(fit.scatter).toBeGreaterThan(0.006);
  });
});

describe('law', () => {
  test('points of a set give the set back', () => {
    const fit = fitTenCoefficients(whole);
    fit.coefficients.forEach((coefficient, index) => {
      expect(Math.abs(coefficient / smooth[index]! - 1)).toBeLessThan(1e-6);
    });
    for (const { deviation, disagrees, byTheOthers } of fit.residuals) {
      expect(Math.abs(deviation)).toBeLessThan(1e-11);
      expect(disagrees).toBe(false);
      expect(byTheOthers).toBeNull();
    }
    expect(fit.evaporatingRange).toEqual({ low: kelvin(-35), high: kelvin(-10) });
    expect(fit.condensingRange).toEqual({ low: kelvin(35), high: kelvin(55) });
  });

  test('two wrong points among exact ones are both found', () => {
    const wrong = whole.map((point, index) =>
      index === 3 || index === 22 ? { ...point, value: point.value * (index === 3 ? 1.2 : 0.85) } : point,
    );
    const { residuals } = fitTenCoefficients(wrong);
    expect(residuals.filter(({ disagrees }) => disagrees).map(({ name }) => name)).toEqual(['row 3', 'row 22']);
    expect(residuals[3]!.byTheOthers! / whole[3]!.value).toBeCloseTo(1, 6);
  });

  test('without points to spare nothing can disagree', () => {
    const least = [0, 1, 2, 3, 6, 7, 8, 12, 13, 18].map((index) => whole[index]!);
    const fit = fitTenCoefficients(least);
    expect(fit.scatter).toBe(0);
    for (const { studentised, disagrees } of fit.residuals) {
      expect(studentised).toBeNull();
      expect(disagrees).toBe(false);
    }
  });

  test('rounding to printed digits is no disagreement', () => {
    const printed = whole.map((point) => ({ ...point, value: Number(point.value.toPrecision(3)) }));
    expect(fitTenCoefficients(printed).residuals.filter(({ disagrees }) => disagrees)).toEqual([]);
  });

  test('honest noise disagrees in about one set out of twenty, as stated (seeds 1 to 300)', () => {
    let sets = 0;
    for (let seed = 1; seed <= 300; seed++) {
      const noise = normal(seed);
      const noisy = whole.map((point) => ({ ...point, value: point.value * (1 + 0.02 * noise()) }));
      if (fitTenCoefficients(noisy).residuals.some(({ disagrees }) => disagrees)) sets += 1;
    }
    // 15 expected of 300, standard deviation 3.8; Bonferroni's bound is a little wide.
    expect(sets).toBeGreaterThan(2);
    expect(sets).toBeLessThan(28);
  });
});

describe('refusals', () => {
  test.each([
    ['nine points', whole.slice(0, 9), 'tooFewPoints', /10 points/],
    [
      'one condensing temperature',
      gridOf([-35, -30, -25, -20, -15, -10, -5, 0, 2, 4], [35]),
      'pointsNotSpread',
      /4 different condensing/,
    ],
    [
      'three evaporating temperatures',
      gridOf([-30, -20, -10], [35, 40, 45, 50]),
      'pointsNotSpread',
      /4 different evaporating/,
    ],
    [
      'points along a line',
      pointsOf(Array.from({ length: 12 }, (_, k) => [-35 + 2 * k, 30 + 2 * k, 100 + k])),
      'pointsNotSpread',
      /spread over both/,
    ],
    ['a value of 0', whole.map((point, index) => (index === 4 ? { ...point, value: 0 } : point)), 'badInput', /row 4/],
  ] as const)('%s', (_, points, code, words) => {
    const thrown = expect(() => fitTenCoefficients(points));
    thrown.toThrow(expect.objectContaining({ name: 'InputError', code }));
    thrown.toThrow(words);
  });

  test('random points: a fit of finite numbers or a typed error (seed 5)', () => {
    const point = fc.record({
      evaporating: fc.double({ min: 200, max: 300 }),
      condensing: fc.double({ min: 250, max: 350 }),
      value: fc.double({ min: -1, max: 1e6 }),
      name: fc.constant('p'),
    });
    fc.assert(
      fc.property(fc.array(point, { maxLength: 30 }), (points) => {
        try {
          const fit = fitTenCoefficients(points);
          for (const value of [...fit.coefficients, fit.scatter]) expect(Number.isFinite(value)).toBe(true);
        } catch (error) {
          expect(error).toMatchObject({ name: 'InputError' });
        }
      }),
      { seed: 5, numRuns: 300 },
    );
  });
});

/** Standard normal numbers of a seed: a linear congruential generator, Box and Muller's transform. */
function normal(seed: number): () => number {
  let state = (seed * 2654435761) >>> 0;
  const uniform = () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return (state + 0.5) / 2 ** 32;
  };
  return () => Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform());
}
