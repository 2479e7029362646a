// Several smooth functions of one variable as polynomials piece by piece: fitted once from exact values at Chebyshev's points,
// a piece halved until its last coefficients are below a tolerance, then evaluated by Horner's rule all at once.

import { chebyshevInPowers } from '../../../numerics/index.ts';

/** Points of a piece, and coefficients of each of its polynomials. */
const ORDER = 12;
/** Pieces of the first division, and how often one may be halved. */
const FIRST_PIECES = 4;
const LARGEST_DEPTH = 7;
const BINS = FIRST_PIECES * 2 ** LARGEST_DEPTH;

/** Chebyshev's points from −1 to 1, and what leads from the values there to the coefficients of Chebyshev's polynomials. */
const points = Float64Array.from({ length: ORDER }, (_, j) => Math.cos((Math.PI * (j + 0.5)) / ORDER));
const toChebyshev = Float64Array.from({ length: ORDER * ORDER }, (_, index) => {
  const k = Math.floor(index / ORDER);
  const angle = (Math.PI * ((index % ORDER) + 0.5)) / ORDER;
  return ((k === 0 ? 1 : 2) / ORDER) * Math.cos(k * angle);
});
const chebyshevPowers = chebyshevInPowers(ORDER);

interface Piece {
  readonly from: number;
  readonly size: number;
  readonly bins: number;
  /** By function and power of the place in the piece from −1 to 1. */
  readonly coefficients: Float64Array;
}

export class Expansion {
  /** The functions at the place of the last call of `fill`. */
  readonly values: Float64Array;
  private readonly low: number;
  private readonly perBin: number;
  /** The piece that a bin, the width of the smallest piece, lies in. */
  private readonly pieceOfBin = new Uint16Array(BINS);
  private readonly middle: Float64Array;
  private readonly perHalf: Float64Array;
  private readonly coefficients: Float64Array;

  /**
   * @param columns    how many functions
   * @param low        lower end of the variable
   * @param high       upper end
   * @param tolerance  how small the last three coefficients of each function must be in a piece around a place; a piece
   *                   of the smallest width is kept as it is
   * @param at         fills in all functions at a place
   */
  constructor(
    columns: number,
    low: number,
    high: number,
    tolerance: (place: number) => number,
    at: (place: number, values: Float64Array) => void,
  ) {
    const pieces = divided(columns, low, high, tolerance, at);
    this.low = low;
    this.perBin = BINS / (high - low);
    this.middle = Float64Array.from(pieces, ({ from, size }) => from + size / 2);
    this.perHalf = Float64Array.from(pieces, ({ size }) => 2 / size);
    this.coefficients = new Float64Array(pieces.length * columns * ORDER);
    this.values = new Float64Array(columns);
    let bin = 0;
    pieces.forEach(({ bins, coefficients }, number) => {
      this.pieceOfBin.fill(number, bin, bin + bins);
      this.coefficients.set(coefficients, number * columns * ORDER);
      bin += bins;
    });
  }

  /** Evaluates all functions; beyond the ends by the first or last piece. */
  fill(place: number): Float64Array {
    const { coefficients, values } = this;
    const bin = Math.min(Math.max(Math.floor((place - this.low) * this.perBin), 0), BINS - 1);
    const piece = this.pieceOfBin[bin]!;
    const u = (place - this.middle[piece]!) * this.perHalf[piece]!;
    let from = piece * values.length * ORDER;
    for (let column = 0; column < values.length; column++) {
      let sum = coefficients[from + ORDER - 1]!;
      for (let k = from + ORDER - 2; k >= from; k--) sum = sum * u + coefficients[k]!;
      values[column] = sum;
      from += ORDER;
    }
    return values;
  }
}

function divided(
  columns: number,
  low: number,
  high: number,
  tolerance: (place: number) => number,
  at: (place: number, values: Float64Array) => void,
): Piece[] {
  const pieces: Piece[] = [];
  const row = new Float64Array(columns);
  const values = new Float64Array(columns * ORDER);
  const width = (high - low) / FIRST_PIECES;
  const divide = (from: number, size: number, depth: number): void => {
    for (let j = 0; j < ORDER; j++) {
      at(from + (size * (1 + points[j]!)) / 2, row);
      for (let column = 0; column < columns; column++) values[column * ORDER + j] = row[column]!;
    }
    const chebyshev = product(values, toChebyshev);
    if (depth < LARGEST_DEPTH && lastOf(chebyshev) > tolerance(from + size / 2)) {
      divide(from, size / 2, depth + 1);
      divide(from + size / 2, size / 2, depth + 1);
    } else {
      pieces.push({ from, size, bins: 2 ** (LARGEST_DEPTH - depth), coefficients: inPowers(chebyshev) });
    }
  };
  for (let k = 0; k < FIRST_PIECES; k++) divide(low + k * width, width, 0);
  return pieces;
}

/** Each row of ORDER numbers times a square matrix, whose rows stand one behind the other. */
function product(rows: Float64Array, matrix: Float64Array): Float64Array {
  const result = new Float64Array(rows.length);
  for (let first = 0; first < rows.length; first += ORDER) {
    for (let k = 0; k < ORDER; k++) {
      let sum = 0;
      for (let j = 0; j < ORDER; j++) sum += matrix[k * ORDER + j]! * rows[first + j]!;
      result[first + k] = sum;
    }
  }
  return result;
}

/** Coefficients of powers from those of Chebyshev's polynomials. */
function inPowers(chebyshev: Float64Array): Float64Array {
  const result = new Float64Array(chebyshev.length);
  for (let first = 0; first < chebyshev.length; first += ORDER) {
    for (let k = 0; k < ORDER; k++) {
      for (let power = 0; power <= k; power++) {
        result[first + power]! += chebyshev[first + k]! * chebyshevPowers[k * ORDER + power]!;
      }
    }
  }
  return result;
}

function lastOf(chebyshev: Float64Array): number {
  let largest = 0;
  for (let end = ORDER; end <= chebyshev.length; end += ORDER) {
    for (let k = end - 3; k < end; k++) largest = Math.max(largest, Math.abs(chebyshev[k]!));
  }
  return largest;
}
