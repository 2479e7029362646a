// Cholesky's factor and what is made of it: worked values, and matrices from a seed against mathjs.

import fc from 'fast-check';
import { inv, lusolve, multiply } from 'mathjs';
import { describe, expect, test } from 'vitest';
import {
  choleskyFactor,
  InputError,
  inverseCholesky,
  leadingDirections,
  solveCholesky,
  solveLower,
  solveLowerTransposed,
} from '../../src/numerics/index.ts';

/** A = B Bᵀ + 0.1, positive definite whatever B is. */
const definite = fc.integer({ min: 1, max: 7 }).chain((size) =>
  fc
    .array(fc.double({ min: -2, max: 2, noNaN: true }), { minLength: size * size, maxLength: size * size })
    .map((b) => ({
      size,
      matrix: Float64Array.from({ length: size * size }, (_, index) => {
        const [row, column] = [Math.floor(index / size), index % size];
        let sum = row === column ? 0.1 : 0;
        for (let k = 0; k < size; k++) sum += b[row * size + k]! * b[column * size + k]!;
        return sum;
      }),
    })),
);

function rowsOf(matrix: ArrayLike<number>, size: number): number[][] {
  return Array.from({ length: size }, (_, row) =>
    Array.from({ length: size }, (_, column) => matrix[row * size + column]!),
  );
}

describe('worked by hand', () => {
  const matrix = [4, 2, 2, 5];
  const lower = choleskyFactor(matrix, 2);
  test('factor', () => expect([...lower]).toEqual([2, 0, 1, 2]));
  test('halves of the solution', () => {
    expect([...solveLower(lower, 2, [2, 5])]).toEqual([1, 2]);
    expect([...solveLowerTransposed(lower, 2, [4, 4])]).toEqual([1, 2]);
  });
  test('solution', () => expect([...solveCholesky(lower, 2, [8, 12])]).toEqual([1, 2]));
  test('inverse', () => {
    const inverse = inverseCholesky(lower, 2);
    [5, -2, -2, 4].forEach((value, index) => {
      expect(inverse[index]).toBeCloseTo(value / 16, 15);
    });
  });
  test('directions of a matrix of rank one', () => {
    expect(leadingDirections([4, 2, 2, 1], 2, 1e-9).map((each) => [...each])).toEqual([[2, 1]]);
  });
  test('no direction of nothing', () => expect(leadingDirections([0, 0, 0, 0], 2, 1e-9)).toEqual([]));
});

describe('refused', () => {
  test.each([
    ['indefinite', [1, 2, 2, 1], 'matrix.1'],
    ['zero', [0], 'matrix.0'],
    ['no number', [Number.NaN], 'matrix.0'],
  ])('%s', (_, matrix, path) => {
    const size = Math.sqrt(matrix.length);
    expect(() => choleskyFactor(matrix, size)).toThrow(InputError);
    try {
      choleskyFactor(matrix, size);
    } catch (error) {
      expect((error as InputError).code).toBe('notPositiveDefinite');
      expect((error as InputError).path).toBe(path);
    }
  });
});

describe('against mathjs', () => {
  test('solution and inverse (seed 30110)', () => {
    fc.assert(
      fc.property(definite, ({ size, matrix }) => {
        const lower = choleskyFactor(matrix, size);
        const right = Array.from({ length: size }, (_, index) => index - 1.5);
        const rows = rowsOf(matrix, size);
        const solved = (lusolve(rows, right) as number[][]).map((row) => row[0]!);
        const inverse = inv(rows);
        const ours = rowsOf(inverseCholesky(lower, size), size);
        const scale = Math.max(...inverse.flat().map(Math.abs));
        solveCholesky(lower, size, right).forEach((value, index) => {
          expect(Math.abs(value - solved[index]!)).toBeLessThan(1e-9 * scale * size * 2);
        });
        ours.flat().forEach((value, index) => {
          expect(Math.abs(value - inverse.flat()[index]!)).toBeLessThan(1e-9 * scale);
        });
      }),
      { seed: 30110, numRuns: 100 },
    );
  });

  test('all directions add up to the matrix; few keep its diagonal (seed 30111)', () => {
    fc.assert(
      fc.property(definite, ({ size, matrix }) => {
        const whole = leadingDirections(matrix, size, 1e-14);
        const product = multiply(
          Array.from({ length: size }, (_, row) => whole.map((direction) => direction[row]!)),
          whole.map((direction) => [...direction]),
        );
        product.flat().forEach((value, index) => {
          expect(Math.abs(value - matrix[index]!)).toBeLessThan(1e-9 * size);
        });
        const few = leadingDirections(matrix, size, 0.3);
        const trace = rowsOf(matrix, size).reduce((sum, row, index) => sum + row[index]!, 0);
        const kept = few.reduce((sum, each) => sum + each.reduce((own, value) => own + value * value, 0), 0);
        expect(kept).toBeCloseTo(trace, 8);
        expect(few.length).toBeLessThanOrEqual(whole.length);
      }),
      { seed: 30111, numRuns: 100 },
    );
  });
});
