// Root finding: against roots that mathematics gives in closed form or that are tabulated, and against the door's rules.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ConvergenceError, findRoot, InputError } from '../../src/numerics/index.ts';

describe('findRoot against known roots', () => {
  // Closed forms, and two constants of mathematics: the Dottie number (OEIS A003957) and the first zero of the Bessel
  // function J0 (Abramowitz & Stegun 1964, table 9.5), both from memory of the source.
  const besselJ0 = (x: number): number => {
    let term = 1;
    let sum = 1;
    for (let k = 1; k < 60; k++) {
      term *= -(x * x) / (4 * k * k);
      sum += term;
    }
    return sum;
  };
  it.each([
    ['square root of 2', (x: number) => x * x - 2, 0, 2, Math.SQRT2],
    ['cos x = x', (x: number) => Math.cos(x) - x, 0, 1, 0.7390851332151607],
    ['first zero of J0', besselJ0, 2, 3, 2.404825557695773],
    ['exp x = 10', (x: number) => Math.exp(x) - 10, -50, 50, Math.LN10],
    ['flat triple root (x − 1)³', (x: number) => (x - 1) ** 3, -3, 4, 1],
    ['steep: 1/x − 1e-6', (x: number) => 1 / x - 1e-6, 1, 1e12, 1e6],
    ['bracket given backwards', (x: number) => x ** 3 - 8, 5, 0, 2],
  ])('%s', (_name, f, low, high, expected) => {
    const { root, iterations, residual } = findRoot(f, low, high);
    expect(Math.abs(root - expected)).toBeLessThan(1e-11 * Math.abs(expected));
    expect(residual).toBe(f(root));
    expect(iterations).toBeLessThan(200);
  });

  it('takes few evaluations on a smooth function: fewer than a quarter of bisection', () => {
    const { iterations } = findRoot((x) => Math.exp(x) - 10, 0, 5);
    expect(iterations).toBeLessThan(12);
    expect(iterations).toBeGreaterThan(2);
  });

  it('a root at an end of the bracket needs no iteration', () => {
    expect(findRoot((x) => x, 0, 1)).toEqual({ root: 0, iterations: 0, residual: 0 });
    expect(findRoot((x) => x - 1, 0, 1)).toEqual({ root: 1, iterations: 0, residual: 0 });
  });

  it('takes known values at the ends for granted', () => {
    const tried: number[] = [];
    const f = (x: number) => {
      tried.push(x);
      return Math.log(x);
    };
    const { root } = findRoot(f, 0, 8, { valueAtLow: -1000, valueAtHigh: Math.log(8) });
    expect(root).toBeCloseTo(1, 11);
    expect(Math.min(...tried)).toBeGreaterThan(0);
    expect(Math.max(...tried)).toBeLessThan(8);
  });

  it('stops at the residual asked for', () => {
    const { residual } = findRoot((x) => x * x - 2, 0, 2, { residualTolerance: 0.01 });
    expect(Math.abs(residual)).toBeLessThanOrEqual(0.01);
    expect(residual).not.toBe(0);
  });
});

describe('findRoot, laws (seed 20261)', () => {
  it('inverts a monotone cubic anywhere inside its bracket', () => {
    fc.assert(
      fc.property(fc.double({ min: -100, max: 100, noNaN: true }), (x) => {
        const f = (y: number) => y ** 3 + 3 * y;
        const { root } = findRoot((y) => f(y) - f(x), -101, 101);
        expect(Math.abs(root - x)).toBeLessThanOrEqual(1e-11 * (1 + Math.abs(x)));
      }),
      { seed: 20261, numRuns: 300 },
    );
  });

  it('a step function is closed in by bisection, at least to the tolerance', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 0.99, noNaN: true }), (edge) => {
        const { root, iterations } = findRoot((x) => (x < edge ? -1 : 1), 0, 1);
        expect(Math.abs(root - edge)).toBeLessThanOrEqual(1e-12);
        expect(iterations).toBeLessThan(200);
      }),
      { seed: 20262, numRuns: 100 },
    );
  });
});

describe('findRoot refuses', () => {
  const failure = (run: () => unknown): unknown => {
    try {
      run();
    } catch (error) {
      return error;
    }
    throw new Error('expected an error');
  };

  it('a bracket without a change of sign, and names both ends', () => {
    const error = failure(() => findRoot((x) => x * x + 1, -1, 1, { what: 'wall temperature' }));
    expect(error).toBeInstanceOf(InputError);
    expect(error).toMatchObject({ code: 'noSignChange', path: 'wall temperature' });
    expect((error as InputError).message).toContain('f(-1) = 2');
  });

  it.each([
    [Number.NaN, 1, 'low'],
    [0, Number.POSITIVE_INFINITY, 'high'],
    [1, 1, 'high'],
  ])('the ends %s and %s', (low, high, path) => {
    expect(failure(() => findRoot((x) => x, low, high))).toMatchObject({ path, name: 'InputError' });
  });

  it.each([
    [{ relativeTolerance: -1 }, 'relativeTolerance'],
    [{ absoluteTolerance: Number.NaN }, 'absoluteTolerance'],
    [{ residualTolerance: -1 }, 'residualTolerance'],
    [{ maxIterations: 0.5 }, 'maxIterations'],
  ])('the options %s', (options, path) => {
    expect(failure(() => findRoot((x) => x, -1, 2, options))).toMatchObject({ path });
  });

  it('a function that is not finite inside the bracket: ConvergenceError with point and bracket, not NaN', () => {
    const error = failure(() => findRoot((x) => (x > 0.2 && x < 0.8 ? Number.NaN : x - 0.5), 0, 1));
    expect(error).toBeInstanceOf(ConvergenceError);
    expect((error as ConvergenceError).bracket).toEqual([0, 1]);
    expect((error as ConvergenceError).lastPoint[0]).toBeCloseTo(0.5, 12);
  });

  it('too few iterations: ConvergenceError with the bracket reached', () => {
    const error = failure(() => findRoot((x) => (x < 0.3 ? -1 : 1), 0, 1, { maxIterations: 5 })) as ConvergenceError;
    expect(error).toBeInstanceOf(ConvergenceError);
    expect(error.iterations).toBe(5);
    const [low, high] = error.bracket ?? [0, 0];
    expect(low).toBeLessThanOrEqual(0.3);
    expect(high).toBeGreaterThanOrEqual(0.3);
  });
});
