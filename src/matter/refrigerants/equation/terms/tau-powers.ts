// Powers of τ for the distinct exponents of a row of terms. Exponents that are multiples of a quarter, as most are, come
// from repeated squaring and two square roots; the rest from the exponential of t ln τ, which takes about 1.5 times as long.

const LARGEST_WHOLE = 63;

export class TauPowers {
  private readonly powers: Float64Array;
  private readonly exponents: Float64Array;
  /** For multiples of a quarter the whole part and how many quarters more; −1 quarters for all others. */
  private readonly whole: Int32Array;
  private readonly quarters: Int32Array;
  private readonly squares = new Float64Array(6);
  private readonly roots = new Float64Array(4);

  constructor(exponents: readonly number[]) {
    const isQuarter = exponents.map((t) => Number.isInteger(4 * t) && Math.abs(t) <= LARGEST_WHOLE);
    this.powers = new Float64Array(exponents.length);
    this.exponents = Float64Array.from(exponents);
    this.whole = Int32Array.from(exponents, (t, k) => (isQuarter[k] ? Math.floor(t) : 0));
    this.quarters = Int32Array.from(exponents, (t, k) => (isQuarter[k] ? 4 * (t - Math.floor(t)) : -1));
  }

  /** τ to each exponent, in one array that the next call fills anew. */
  at(tau: number, lnTau: number): Float64Array {
    const { powers, exponents, whole, quarters, squares, roots } = this;
    let square = tau;
    for (let j = 0; j < 6; j++) {
      squares[j] = square;
      square *= square;
    }
    const half = Math.sqrt(tau);
    const quarter = Math.sqrt(half);
    roots[0] = 1;
    roots[1] = quarter;
    roots[2] = half;
    roots[3] = half * quarter;
    for (let k = 0; k < powers.length; k++) {
      if (quarters[k]! < 0) {
        powers[k] = Math.exp(exponents[k]! * lnTau);
        continue;
      }
      let rest = whole[k]!;
      const isNegative = rest < 0;
      if (isNegative) rest = -rest;
      let power = 1;
      for (let j = 0; rest > 0; j++, rest >>= 1) if ((rest & 1) === 1) power *= squares[j]!;
      powers[k] = (isNegative ? 1 / power : power) * roots[quarters[k]!]!;
    }
    return powers;
  }
}
