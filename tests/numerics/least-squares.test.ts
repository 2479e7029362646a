// Least squares and Student's distribution: hand-worked values, the defining property, and references from outside.

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { leastSquares, studentTail } from '../../src/numerics/index.ts';

/** Two-sided probabilities by SciPy 1.17.1, scipy.stats.t.sf. */
const student: readonly (readonly [t: number, freedom: number, probability: number])[] = [
  [0.3, 1, 0.8144528418445154],
  [2.228, 10, 0.05001177181711132],
  [1.2, 2, 0.3530033607793695],
  [3.5, 3, 0.039481037619282774],
  [2.1, 4, 0.10365328631760218],
  [4.2, 5, 0.008489558963066208],
  [3.66, 19, 0.0016647792598404065],
  [6.0, 4, 0.0038825370469605107],
  [0.05, 30, 0.9604538086499531],
  [2.75, 57, 0.007971650479655212],
  [12.7062, 1, 0.0500000185607104],
  [1.959964, 1000, 0.050277399222846575],
];

describe('least squares', () => {
  test('a line through four points: 0.8 + 2.3 x, by hand from the normal equations', () => {
    const rows = Float64Array.from([1, 0, 1, 1, 1, 2, 1, 3]);
    const { solution, residuals, leverages, rank } = leastSquares(rows, 2, Float64Array.from([1, 3, 5, 8]));
    expect(solution[0]).toBeCloseTo(0.8, 12);
    expect(solution[1]).toBeCloseTo(2.3, 12);
    expect([...residuals].map((value) => value.toFixed(10))).toEqual(
      [0.2, -0.1, -0.4, 0.3].map((value) => value.toFixed(10)),
    );
    // 1/4 + (x − 1.5)²/5
    [0.7, 0.3, 0.3, 0.7].forEach((expected, index) => {
      expect(leverages[index]).toBeCloseTo(expected, 12);
    });
    expect(rank).toBe(2);
  });

  test('columns that others make up are told by the rank, and left out', () => {
    const rows = Float64Array.from([1, 0, 1, 1, 1, 2, 1, 2, 3, 1, 3, 4]);
    const { rank, residuals, solution } = leastSquares(rows, 3, Float64Array.from([1, 3, 5, 7]));
    expect(rank).toBe(2);
    for (const residual of residuals) expect(Math.abs(residual)).toBeLessThan(1e-12);
    expect([...solution].filter((value) => value === 0)).toHaveLength(1);
  });

  test('residuals stand at right angles to every column; leverages sum to the rank (seed 7)', () => {
    const size = fc.tuple(fc.integer({ min: 1, max: 6 }), fc.integer({ min: 0, max: 12 }));
    fc.assert(
      fc.property(
        size,
        fc.infiniteStream(fc.double({ min: -10, max: 10, noNaN: true })),
        ([columns, more], numbers) => {
          const take = (count: number) => Float64Array.from({ length: count }, () => numbers.next().value);
          const count = columns + more;
          const rows = take(count * columns);
          const values = take(count);
          const { residuals, leverages, rank } = leastSquares(rows, columns, values);
          expect(leverages.reduce((sum, each) => sum + each, 0)).toBeCloseTo(rank, 9);
          for (let j = 0; j < columns; j++) {
            let product = 0;
            let length = 0;
            for (let i = 0; i < count; i++) {
              product += rows[i * columns + j]! * residuals[i]!;
              length += rows[i * columns + j]! ** 2;
            }
            const size = Math.sqrt(length) * Math.sqrt(values.reduce((sum, each) => sum + each ** 2, 0));
            // Columns that are left out as depending on others may miss it by the tolerance of the rank.
            expect(Math.abs(product)).toBeLessThanOrEqual(1e-5 * size + 1e-12);
          }
        },
      ),
      { seed: 7, numRuns: 200 },
    );
  });

  test('sizes that do not fit and numbers that are none are refused', () => {
    expect(() => leastSquares(new Float64Array(4), 3, new Float64Array(2))).toThrow(/columns/);
    expect(() => leastSquares(new Float64Array(3), 2, new Float64Array(2))).toThrow(/rows/);
    expect(() => leastSquares(Float64Array.from([1, Number.NaN]), 1, new Float64Array(2))).toThrow(/rows/);
  });
});

describe("Student's distribution", () => {
  test.each(student)('t %d, %d degrees of freedom: %d', (t, freedom, probability) => {
    expect(Math.abs(studentTail(t, freedom) - probability)).toBeLessThan(1e-12);
    expect(studentTail(-t, freedom)).toBe(studentTail(t, freedom));
  });

  test('degrees of freedom that are no whole number are refused', () => {
    for (const freedom of [0, -1, 2.5, Number.NaN]) expect(() => studentTail(1, freedom)).toThrow(/freedom/);
    expect(() => studentTail(Number.NaN, 3)).toThrow(/t:/);
  });
});
