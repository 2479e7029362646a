// Where a doubtful line crosses zero: against the textbook solution of Fieller's theorem for a ratio of two independent
// doubtful numbers, and in the cases that have no crossing, or no end.

import { describe, expect, test } from 'vitest';
import { crossingOf } from '../../src/assess/against/crossing.ts';
import { type Doubt, doubt } from '../../src/assess/doubt/doubt.ts';

/** D(x) = a + b x with a and b each in doubt by itself. */
function line(a: number, da: number, b: number, db: number): Doubt {
  const inputs = [
    { path: 'a', label: 'a', estimate: { low: a - da, likely: a, high: a + da, origin: 'assumed' as const } },
    { path: 'b', label: 'b', estimate: { low: b - db, likely: b, high: b + db, origin: 'assumed' as const } },
  ];
  return doubt({ a, b }, inputs, (path, value) => ({ a, b, [path]: value }));
}

const names = { at0: 'a', slope: 'b', sign: 1 } as const;
const reach = { from: 0, to: Number.POSITIVE_INFINITY, searchedTo: 1e6 };

describe('with a crossing', () => {
  test('the range is that of Fieller’s theorem: roots of (a + b x)² = da² + db² x²', () => {
    const [a, da, b, db] = [-90, 20, 30, 4];
    const { loopCostsLess, at } = crossingOf(line(a, da, b, db), names, reach);
    // (b² − db²) x² + 2ab x + (a² − da²) = 0
    const [A, B, C] = [b ** 2 - db ** 2, 2 * a * b, a ** 2 - da ** 2];
    const root = Math.sqrt(B ** 2 - 4 * A * C);
    expect(loopCostsLess).toBe('below');
    expect(at?.likely).toBeCloseTo(3, 12);
    expect(at?.low).toBeCloseTo((-B - root) / (2 * A), 7);
    expect(at?.high).toBeCloseTo((-B + root) / (2 * A), 7);
  });

  test('a falling line costs less above it', () => {
    const { loopCostsLess, at } = crossingOf(line(90, 0, -30, 3), names, reach);
    expect(loopCostsLess).toBe('above');
    expect([at?.low, at?.likely, at?.high].map((x) => x?.toFixed(6))).toEqual([
      (90 / 33).toFixed(6),
      '3.000000',
      (90 / 27).toFixed(6),
    ]);
  });

  test('where the slope itself may be zero the range has no upper end, and says so', () => {
    const { at } = crossingOf(line(-90, 20, 30, 31), names, reach);
    expect(at?.low).toBeGreaterThan(0);
    expect(at?.high).toBeNull();
  });

  test('and where the line may begin above zero it has no lower end', () => {
    expect(crossingOf(line(-90, 95, 30, 1), names, reach).at).toMatchObject({ low: null, likely: 3 });
  });

  test('what moves both alike cancels: a doubt common to a and b leaves the crossing exact', () => {
    const estimate = { low: 0.7, likely: 1, high: 1.3, origin: 'assumed' as const };
    const both = doubt({ a: -90, b: 30 }, [{ path: 'k', label: 'k', estimate }], (_, k) => ({ a: -90 * k, b: 30 * k }));
    const { at } = crossingOf(both, names, reach);
    expect(at?.low).toBeCloseTo(3, 6);
    expect(at?.high).toBeCloseTo(3, 6);
  });
});

test.each([
  ['always below zero', line(-90, 5, -30, 3), reach, 'always'],
  ['never below zero', line(90, 5, 30, 3), reach, 'never'],
  ['level, below', line(-90, 5, 0, 0), reach, 'always'],
  ['level, above', line(90, 5, 0, 0), reach, 'never'],
  ['crossing beyond what is asked', line(-90, 5, 30, 3), { from: 0, to: 1, searchedTo: 10 }, 'always'],
] as const)('%s', (_, doubtful, asked, side) => {
  expect(crossingOf(doubtful, names, asked)).toEqual({ loopCostsLess: side, at: null });
});
