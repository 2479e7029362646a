// Powers of τ for the distinct exponents of a row of terms. Exponents that are multiples of a quarter, as most are, come
// from repeated squaring and two square roots; the rest from the exponential of t ln τ. Squaring takes about a third of
// the time of an exponential.

const LARGEST_WHOLE = 63;

/** Fills `powers[k]` with τ^exponents[k]. */
export type TauPowers = (tau: number, lnTau: number, powers: Float64Array) => void;

export function tauPowers(exponents: readonly number[]): TauPowers {
  const isQuarter = exponents.map((t) => Number.isInteger(4 * t) && Math.abs(t) <= LARGEST_WHOLE);
  const whole = Int32Array.from(exponents, (t, k) => (isQuarter[k] ? Math.floor(t) : 0));
  const quarters = Int32Array.from(exponents, (t, k) => (isQuarter[k] ? 4 * (t - Math.floor(t)) : -1));
  const others = Float64Array.from(exponents);
  const squares = new Float64Array(6);
  const roots = new Float64Array(4);
  return (tau, lnTau, powers) => {
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
        powers[k] = Math.exp(others[k]! * lnTau);
        continue;
      }
      let rest = whole[k]!;
      const isNegative = rest < 0;
      if (isNegative) rest = -rest;
      let power = 1;
      for (let j = 0; rest > 0; j++, rest >>= 1) if ((rest & 1) === 1) power *= squares[j]!;
      powers[k] = (isNegative ? 1 / power : power) * roots[quarters[k]!]!;
    }
  };
}
