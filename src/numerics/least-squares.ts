// Linear least squares by Householder's QR with column pivoting: accurate where normal equations would square the condition, and
// it tells when the points do not fix all unknowns. Small dense systems, tens to hundreds of rows.

import { InputError, requireFinite } from './errors.ts';

export interface LeastSquares {
  /** One number per column. */
  readonly solution: Float64Array;
  /** Given less fitted, one number per row. */
  readonly residuals: Float64Array;
  /** Diagonal of the projection onto the columns, 0 to 1: how far a row fixes its own fitted value. */
  readonly leverages: Float64Array;
  /** Columns that the rows fix; the others have 0 in the solution. */
  readonly rank: number;
}

/** A column counts as fixed while what is left of it is more than this share of the largest, each of length 1 at first. */
const rankTolerance = 1e-7;

/**
 * x with the least sum of squares of (A x − b).
 * @param rows     A row by row, `columns` numbers each
 * @param columns  how many unknowns, at least 1 and at most as many as rows
 * @param values   b, one number per row
 * @throws InputError unless the sizes fit and all numbers are finite
 * Source: Golub & Van Loan, Matrix Computations, section 5.5 (from memory).
 * Worked value: a line through (0, 1), (1, 3), (2, 5), (3, 8): 0.8 + 2.3 x.
 */
export function leastSquares(rows: Float64Array, columns: number, values: Float64Array): LeastSquares {
  const count = values.length;
  if (!(Number.isInteger(columns) && columns >= 1 && columns <= count)) {
    throw new InputError('columns', columns, `a whole number from 1 to ${count}, the number of rows`);
  }
  if (rows.length !== count * columns) {
    throw new InputError('rows', rows.length, `${count} rows of ${columns} numbers`);
  }
  for (const [name, numbers] of [['rows', rows] as const, ['values', values] as const]) {
    for (const number of numbers) requireFinite(name, number);
  }
  const system = normalised(rows, columns, count);
  const { order, rank, reflectors } = triangulate(system.matrix, columns, count);
  const right = Float64Array.from(values);
  for (const reflector of reflectors) reflect(reflector, right);
  const solution = new Float64Array(columns);
  for (let i = rank - 1; i >= 0; i--) {
    let sum = right[i]!;
    for (let j = i + 1; j < rank; j++) sum -= system.matrix[i * columns + order[j]!]! * solution[order[j]!]!;
    solution[order[i]!] = sum / system.matrix[i * columns + order[i]!]!;
  }
  for (let j = 0; j < columns; j++) solution[j] = solution[j]! / system.lengths[j]!;
  return {
    solution,
    residuals: values.map((value, row) => value - rowTimes(rows, columns, row, solution)),
    leverages: leveragesOf(reflectors, rank, count),
    rank,
  };
}

function rowTimes(rows: Float64Array, columns: number, row: number, solution: Float64Array): number {
  let sum = 0;
  for (let j = 0; j < columns; j++) sum += rows[row * columns + j]! * solution[j]!;
  return sum;
}

/** Columns of length 1, so that their units do not decide which is fixed. */
function normalised(rows: Float64Array, columns: number, count: number) {
  const matrix = Float64Array.from(rows);
  const lengths = new Float64Array(columns);
  for (let j = 0; j < columns; j++) {
    let sum = 0;
    for (let i = 0; i < count; i++) sum += rows[i * columns + j]! ** 2;
    const length = Math.sqrt(sum) || 1;
    lengths[j] = length;
    for (let i = 0; i < count; i++) matrix[i * columns + j] = rows[i * columns + j]! / length;
  }
  return { matrix, lengths };
}

/** I − 2 v vᵀ with v of length 1, zero above `from`. */
interface Reflector {
  readonly from: number;
  readonly vector: Float64Array;
}

/** Turns the matrix into a triangle, its columns in the returned order. */
function triangulate(matrix: Float64Array, columns: number, count: number) {
  const order = Array.from({ length: columns }, (_, j) => j);
  const reflectors: Reflector[] = [];
  let rank = 0;
  for (; rank < columns; rank++) {
    const best = longestColumn(matrix, columns, count, order, rank);
    if (best.length <= rankTolerance) break;
    [order[rank], order[best.place]] = [order[best.place]!, order[rank]!];
    const reflector = reflectorOf(matrix, columns, count, order[rank]!, rank);
    reflectors.push(reflector);
    for (let k = rank; k < columns; k++) reflectColumn(reflector, matrix, columns, order[k]!);
  }
  return { order, rank, reflectors };
}

function longestColumn(matrix: Float64Array, columns: number, count: number, order: readonly number[], from: number) {
  let best = { place: from, length: -1 };
  for (let k = from; k < columns; k++) {
    let sum = 0;
    for (let i = from; i < count; i++) sum += matrix[i * columns + order[k]!]! ** 2;
    if (Math.sqrt(sum) > best.length) best = { place: k, length: Math.sqrt(sum) };
  }
  return best;
}

function reflectorOf(matrix: Float64Array, columns: number, count: number, column: number, from: number): Reflector {
  const vector = new Float64Array(count);
  let sum = 0;
  for (let i = from; i < count; i++) {
    vector[i] = matrix[i * columns + column]!;
    sum += vector[i]! ** 2;
  }
  const head = vector[from]!;
  vector[from] = head + (head >= 0 ? 1 : -1) * Math.sqrt(sum);
  const length = Math.sqrt(sum - head ** 2 + vector[from]! ** 2);
  for (let i = from; i < count; i++) vector[i] = vector[i]! / length;
  return { from, vector };
}

function reflectColumn({ from, vector }: Reflector, matrix: Float64Array, columns: number, column: number): void {
  let product = 0;
  for (let i = from; i < vector.length; i++) product += vector[i]! * matrix[i * columns + column]!;
  for (let i = from; i < vector.length; i++) {
    const place = i * columns + column;
    matrix[place] = matrix[place]! - 2 * product * vector[i]!;
  }
}

function reflect({ from, vector }: Reflector, values: Float64Array): void {
  let product = 0;
  for (let i = from; i < vector.length; i++) product += vector[i]! * values[i]!;
  for (let i = from; i < vector.length; i++) values[i] = values[i]! - 2 * product * vector[i]!;
}

/** Squared lengths of the rows of the orthonormal factor. */
function leveragesOf(reflectors: readonly Reflector[], rank: number, count: number): Float64Array {
  const leverages = new Float64Array(count);
  for (let k = 0; k < rank; k++) {
    const column = new Float64Array(count);
    column[k] = 1;
    for (let r = reflectors.length - 1; r >= 0; r--) reflect(reflectors[r]!, column);
    for (let i = 0; i < count; i++) leverages[i] = leverages[i]! + column[i]! ** 2;
  }
  return leverages;
}
