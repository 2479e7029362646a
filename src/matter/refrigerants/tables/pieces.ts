// Several functions of one coordinate, each by a polynomial on every one of equal pieces: saturated values along the
// pressure, and the borders of a table. Fitted at the Chebyshev–Lobatto points of each piece, whose ends belong to both
// neighbours, so that the functions have no jump.

import { chebyshevInPowers } from '../../../numerics/index.ts';

/** Degree on a piece (`value` is written out for it); with the piece widths in use the fit is as good as the values it is made from. */
const DEGREE = 9;
const COUNT = DEGREE + 1;

/** From values at the Lobatto points t = cos(πj/DEGREE), to coefficients of 1, t, t² … */
const coefficientsFromValues = inverseFit();

export class Pieces {
  readonly from: number;
  readonly to: number;
  private readonly count: number;
  private readonly functions: number;
  private readonly perUnit: number;
  private readonly coefficients: Float64Array;
  /** Where `locate` left off: first coefficient of the piece, and t from −1 to 1 inside it. */
  private first = 0;
  private t = 0;

  /**
   * @param from    lower end of the coordinate
   * @param to      upper end
   * @param count   number of pieces
   * @param values  the functions' values at a coordinate, in the order they are asked for afterwards
   */
  constructor(from: number, to: number, count: number, values: (x: number) => readonly number[]) {
    this.from = from;
    this.to = to;
    this.count = count;
    this.perUnit = count / (to - from);
    let right = values(from);
    this.functions = right.length;
    this.coefficients = new Float64Array(count * this.functions * COUNT);
    for (let piece = 0; piece < count; piece++) {
      const left = right;
      const end = piece + 1 === count ? to : from + (piece + 1) / this.perUnit;
      right = values(end);
      const middle = from + (piece + 0.5) / this.perUnit;
      const points = [right];
      for (let j = 1; j < DEGREE; j++)
        points.push(values(middle + (0.5 * Math.cos((Math.PI * j) / DEGREE)) / this.perUnit));
      points.push(left);
      this.fit(piece, points);
    }
  }

  get bytes(): number {
    return this.coefficients.byteLength;
  }

  /** Goes to a coordinate between both ends, for `value` and `slope`. */
  locate(x: number): void {
    const place = (x - this.from) * this.perUnit;
    let piece = Math.floor(place);
    if (piece < 0) piece = 0;
    else if (piece >= this.count) piece = this.count - 1;
    this.first = piece * this.functions * COUNT;
    this.t = 2 * (place - piece) - 1;
  }

  /** Value of a function where `locate` went. */
  value(which: number): number {
    const { coefficients, t } = this;
    const first = this.first + which * COUNT;
    // Written out for DEGREE: even and odd powers apart make two short chains that run side by side (170 → 140 ns a look-up).
    const square = t * t;
    const c = coefficients;
    const even =
      c[first]! +
      square * (c[first + 2]! + square * (c[first + 4]! + square * (c[first + 6]! + square * c[first + 8]!)));
    const odd =
      c[first + 1]! +
      square * (c[first + 3]! + square * (c[first + 5]! + square * (c[first + 7]! + square * c[first + 9]!)));
    return even + t * odd;
  }

  /** Derivative of a function with respect to the coordinate, where `locate` went. */
  slope(which: number): number {
    const { coefficients, t } = this;
    const first = this.first + which * COUNT;
    let sum = DEGREE * coefficients[first + DEGREE]!;
    for (let k = DEGREE - 1; k >= 1; k--) sum = sum * t + k * coefficients[first + k]!;
    return 2 * this.perUnit * sum;
  }

  /** Coordinate at which a function that falls with it has a value between those at both ends. */
  inverseOfFalling(which: number, value: number): number {
    let low = 0;
    let high = this.count;
    while (high - low > 1) {
      const middle = (low + high) >> 1;
      if (this.atStart(middle, which) >= value) low = middle;
      else high = middle;
    }
    const start = this.atStart(low, which);
    const end = high === this.count ? this.atEnd(which) : this.atStart(high, which);
    let x = this.from + (low + (value - start) / (end - start)) / this.perUnit;
    // Newton's method on a nearly straight piece: the error squares, four steps are more than rounding needs.
    for (let step = 0; step < 4; step++) {
      this.locate(x);
      x -= (this.value(which) - value) / this.slope(which);
    }
    return Math.min(Math.max(x, this.from), this.to);
  }

  private atStart(piece: number, which: number): number {
    this.first = piece * this.functions * COUNT;
    this.t = -1;
    return this.value(which);
  }

  private atEnd(which: number): number {
    this.first = (this.count - 1) * this.functions * COUNT;
    this.t = 1;
    return this.value(which);
  }

  private fit(piece: number, points: readonly (readonly number[])[]): void {
    const { coefficients, functions } = this;
    for (let which = 0; which < functions; which++) {
      const first = (piece * functions + which) * COUNT;
      for (let k = 0; k < COUNT; k++) {
        let sum = 0;
        for (let j = 0; j < COUNT; j++) sum += coefficientsFromValues[k * COUNT + j]! * points[j]![which]!;
        coefficients[first + k] = sum;
      }
    }
  }
}

/** Interpolation at the Lobatto points as a matrix: discrete cosine sum to Chebyshev form, then its recurrence to powers. */
function inverseFit(): Float64Array {
  const powers = chebyshevInPowers(COUNT);
  const matrix = new Float64Array(COUNT * COUNT);
  for (let j = 0; j < COUNT; j++) {
    for (let n = 0; n < COUNT; n++) {
      const halves = (j === 0 || j === DEGREE ? 0.5 : 1) * (n === 0 || n === DEGREE ? 0.5 : 1);
      const share = ((2 * halves) / DEGREE) * Math.cos((Math.PI * j * n) / DEGREE);
      for (let k = 0; k <= n; k++) matrix[k * COUNT + j]! += share * powers[n * COUNT + k]!;
    }
  }
  return matrix;
}
