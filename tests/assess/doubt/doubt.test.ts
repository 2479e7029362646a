// Combination of ranges: the guide's own worked example, and laws of linear models.

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type DoubtfulInput,
  doubt,
  type EndMoves,
  nonNegativeBand,
  varianceShares,
} from '../../../src/assess/doubt/doubt.ts';
import { NoSolutionError } from '../../../src/numerics/index.ts';

function symmetric(path: string, likely: number, half: number): DoubtfulInput {
  return { path, label: path, estimate: { low: likely - half, likely, high: likely + half, origin: 'typed' } };
}

// JCGM 100:2008, H.1 (end gauge): contributions 25, 9.7, 2.9 and 16.6 nm combine to u_c = 32 nm as printed.
// The contributions are quoted from memory of the guide; the arithmetic is exact: u_c² = 1003.06 nm².
test('end-gauge example of JCGM 100 H.1: 25, 9.7, 2.9 and 16.6 nm combine to 31.67 nm, printed as 32', () => {
  const contributions = [25, 9.7, 2.9, 16.6];
  const inputs = contributions.map((half, index) => symmetric(`x${index}`, 0, half));
  const result = doubt({ length: 0 }, inputs, (_path, value) => ({ length: value }));
  expect(result.bands.length!.high).toBeCloseTo(31.67, 2);
  expect(result.bands.length!.high ** 2).toBeCloseTo(1003.06, 6);
  expect(Math.round(result.bands.length!.high)).toBe(32);
});

test('law, seed 20260401: the band of a linear model is the root sum of squares of coefficient times half range', () => {
  const term = fc.record({
    coefficient: fc.double({ min: -50, max: 50, noNaN: true }),
    likely: fc.double({ min: -100, max: 100, noNaN: true }),
    half: fc.double({ min: 0.001, max: 20, noNaN: true }),
  });
  fc.assert(
    fc.property(fc.array(term, { minLength: 1, maxLength: 8 }), (terms) => {
      const evaluate = (values: number[]) =>
        terms.reduce((sum, { coefficient }, i) => sum + coefficient * values[i]!, 3);
      const likelyValues = terms.map(({ likely }) => likely);
      const likely = evaluate(likelyValues);
      const inputs = terms.map(({ likely: at, half }, i) => symmetric(`x${i}`, at, half));
      const result = doubt({ y: likely }, inputs, (path, value) => {
        const index = Number(path.slice(1));
        return { y: evaluate(likelyValues.map((old, i) => (i === index ? value : old))) };
      });
      const expected = Math.sqrt(terms.reduce((sum, { coefficient, half }) => sum + (coefficient * half) ** 2, 0));
      const scale = Math.abs(likely) + expected + 1;
      expect(Math.abs(result.bands.y!.high - likely - expected)).toBeLessThan(1e-9 * scale);
      expect(Math.abs(likely - result.bands.y!.low - expected)).toBeLessThan(1e-9 * scale);
    }),
    { seed: 20260401, numRuns: 200 },
  );
});

test('a lopsided range stays lopsided, and an input that moves nothing explains nothing', () => {
  const inputs: DoubtfulInput[] = [
    { path: 'a', label: 'a', estimate: { low: 9, likely: 10, high: 14, origin: 'assumed' } },
    { path: 'b', label: 'b', estimate: { low: 1, likely: 2, high: 3, origin: 'assumed' } },
  ];
  const result = doubt({ y: 10 }, inputs, (path, value) => ({ y: path === 'a' ? value : 10 }));
  expect(result.bands.y).toEqual({ low: 9, likely: 10, high: 14 });
  expect(varianceShares(result.moves, 'y').get('a')).toBe(1);
  expect(varianceShares(result.moves, 'y').get('b')).toBe(0);
});

test('an end at which the engine has no answer is reported with its path, never dropped in silence', () => {
  const result = doubt({ y: 1 }, [symmetric('a', 1, 0.5)], (_path, value) => {
    if (value > 1) throw new NoSolutionError('no flow is left', 'pressure ratio 40');
    return { y: value };
  });
  expect(result.unanswered).toEqual([{ path: 'a', label: 'a', end: 'high', value: 1.5, message: 'no flow is left' }]);
  expect(result.bands.y).toEqual({ low: 0.5, likely: 1, high: 1 });
});

test('an error that is not one of the engine’s own passes through', () => {
  expect(() =>
    doubt({ y: 1 }, [symmetric('a', 1, 0.5)], () => {
      throw new TypeError('a fault in the program');
    }),
  ).toThrow(TypeError);
});

describe('a number that is never below zero', () => {
  // Worked by hand: √2 · 70 = 98.995; √2 · ln(100 / 30) = 1.70267, exp(−1.70267) = 0.18220.
  test.each<[string, readonly EndMoves[], number]>([
    [
      'narrow moves: the sum of squares',
      [
        [-30, 30],
        [-40, 40],
      ],
      50,
    ],
    ['one move ends where it leads', [[-95, 10]], 5],
    [
      'wide moves: half of what the logarithms give',
      [
        [-70, 70],
        [-70, 70],
      ],
      9.11,
    ],
    [
      'an input that alone leads to zero',
      [
        [-100, 20],
        [-10, 10],
      ],
      0,
    ],
  ])('%s', (_, moves, low) => {
    expect(nonNegativeBand(100, moves).low).toBeCloseTo(low, 2);
  });

  test('law, seed 20261127: the lower end lies between zero and the likely value, and wider moves never raise it', () => {
    const share = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(fc.array(share, { minLength: 1, maxLength: 12 }), share, (shares, narrower) => {
        const wide = nonNegativeBand(
          7,
          shares.map((each): EndMoves => [-7 * each, 7 * each]),
        );
        const narrow = nonNegativeBand(
          7,
          shares.map((each): EndMoves => [-7 * each * narrower, 7 * each * narrower]),
        );
        expect(wide.low).toBeGreaterThanOrEqual(0);
        expect(wide.low).toBeLessThanOrEqual(narrow.low + 1e-12);
        expect(narrow.low).toBeLessThanOrEqual(7);
      }),
      { seed: 20261127, numRuns: 300 },
    );
  });

  test('is told to the combination by name; others may have either sign', () => {
    const inputs = [symmetric('a', 10, 8), symmetric('b', 10, 8)];
    const product = (a: number, b: number) => ({ product: a * b, same: a * b });
    const result = doubt(
      product(10, 10),
      inputs,
      (path, value) => (path === 'a' ? product(value, 10) : product(10, value)),
      new Set(['product']),
    );
    expect(result.bands.same!.low).toBeCloseTo(100 - Math.SQRT2 * 80, 9);
    expect(result.bands.product!.low).toBeGreaterThan(0);
    expect(result.bands.product!.high).toBe(result.bands.same!.high);
  });
});
