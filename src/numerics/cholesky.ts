// Small dense symmetric systems by Cholesky's factor: solving, whitening, inverse, and the leading directions of a covariance.
// Matrices are row by row in one array; of a symmetric one only the lower half is read.

import { InputError } from './errors.ts';

/**
 * Lower triangular L of a symmetric positive definite matrix A.
 *     A = L Lᵀ
 * @param matrix  A, size × size numbers row by row; only the lower half is read
 * @param size    rows of A, 1 or more
 * @returns       L, size × size numbers row by row, zeros above the diagonal
 * @throws InputError 'notPositiveDefinite' that names the row where a pivot is not above 0 (or not finite)
 * Pitfall: a pivot that rounding makes negative is refused; a covariance needs its own scatter on the diagonal.
 * Source: G. H. Golub, C. F. Van Loan, Matrix Computations, 4th edition, section 4.2 (from memory of the source).
 * Worked value: A = [4 2; 2 5] → L = [2 0; 1 2].
 */
export function choleskyFactor(matrix: ArrayLike<number>, size: number): Float64Array {
  const lower = new Float64Array(size * size);
  for (let row = 0; row < size; row++) {
    for (let column = 0; column <= row; column++) {
      let sum = matrix[row * size + column]!;
      for (let k = 0; k < column; k++) sum -= lower[row * size + k]! * lower[column * size + k]!;
      if (column < row) {
        lower[row * size + column] = sum / lower[column * size + column]!;
      } else {
        if (!(sum > 0 && Number.isFinite(sum))) {
          throw new InputError(
            `matrix.${row}`,
            sum,
            'a symmetric matrix with all pivots above 0',
            'notPositiveDefinite',
          );
        }
        lower[row * size + row] = Math.sqrt(sum);
      }
    }
  }
  return lower;
}

/** x of L x = b. Worked value: L = [2 0; 1 2], b = [2, 5] → [1, 2]. */
export function solveLower(lower: ArrayLike<number>, size: number, right: ArrayLike<number>): Float64Array {
  const solved = new Float64Array(size);
  for (let row = 0; row < size; row++) {
    let sum = right[row]!;
    for (let k = 0; k < row; k++) sum -= lower[row * size + k]! * solved[k]!;
    solved[row] = sum / lower[row * size + row]!;
  }
  return solved;
}

/** x of Lᵀ x = b. Worked value: L = [2 0; 1 2], b = [4, 4] → [1, 2]. */
export function solveLowerTransposed(lower: ArrayLike<number>, size: number, right: ArrayLike<number>): Float64Array {
  const solved = new Float64Array(size);
  for (let row = size - 1; row >= 0; row--) {
    let sum = right[row]!;
    for (let k = row + 1; k < size; k++) sum -= lower[k * size + row]! * solved[k]!;
    solved[row] = sum / lower[row * size + row]!;
  }
  return solved;
}

/** x of A x = b from L with A = L Lᵀ. Worked value: A = [4 2; 2 5], b = [8, 12] → [1, 2]. */
export function solveCholesky(lower: ArrayLike<number>, size: number, right: ArrayLike<number>): Float64Array {
  return solveLowerTransposed(lower, size, solveLower(lower, size, right));
}

/** A⁻¹, row by row, from L with A = L Lᵀ. Worked value: A = [4 2; 2 5] → [5 −2; −2 4] / 16. */
export function inverseCholesky(lower: ArrayLike<number>, size: number): Float64Array {
  const inverse = new Float64Array(size * size);
  const unit = new Float64Array(size);
  for (let column = 0; column < size; column++) {
    unit.fill(0);
    unit[column] = 1;
    const solved = solveCholesky(lower, size, unit);
    for (let row = 0; row < size; row++) inverse[row * size + column] = solved[row]!;
  }
  return inverse;
}

/**
 * Directions d whose products d dᵀ add up to a symmetric matrix A that may be singular, the one that takes most of the
 * remaining diagonal first (Cholesky's factor with complete pivoting).
 * @param matrix     A, size × size numbers row by row; no eigenvalue below 0 beyond rounding
 * @param size       rows of A
 * @param remainder  stops when the diagonal that is left adds up to less than this share of the whole; above 0
 * @returns          at most `size` directions; the last is scaled so that the sum of the whole diagonal is kept
 * Source: N. J. Higham 1990, in Reliable Numerical Computation, 161 (from memory of the source).
 * Worked value: A = [4 2; 2 1] → one direction [2, 1].
 */
export function leadingDirections(matrix: ArrayLike<number>, size: number, remainder: number): readonly Float64Array[] {
  const left = Float64Array.from(matrix);
  const whole = trace(left, size);
  const directions: Float64Array[] = [];
  let rest = whole;
  while (directions.length < size && rest > remainder * whole && rest > 0) {
    const pivot = largestDiagonal(left, size);
    const root = Math.sqrt(left[pivot * size + pivot]!);
    const direction = Float64Array.from({ length: size }, (_, row) => left[row * size + pivot]! / root);
    for (let row = 0; row < size; row++) {
      for (let column = 0; column < size; column++) left[row * size + column]! -= direction[row]! * direction[column]!;
    }
    directions.push(direction);
    rest = trace(left, size);
  }
  const last = directions.at(-1);
  if (last !== undefined && rest > 0) {
    const own = last.reduce((sum, value) => sum + value * value, 0);
    last.forEach((value, row) => {
      last[row] = value * Math.sqrt(1 + rest / own);
    });
  }
  return directions;
}

function trace(matrix: Float64Array, size: number): number {
  let sum = 0;
  for (let row = 0; row < size; row++) sum += matrix[row * size + row]!;
  return sum;
}

function largestDiagonal(matrix: Float64Array, size: number): number {
  let largest = 0;
  for (let row = 1; row < size; row++) {
    if (matrix[row * size + row]! > matrix[largest * size + largest]!) largest = row;
  }
  return largest;
}
