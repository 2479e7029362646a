// Chebyshev's polynomials of the first kind in powers of their argument, for fits that are evaluated by Horner's rule.

/**
 * Coefficients of T₀ … T_(count−1) in powers of u: T_(n+1) = 2 u Tₙ − T_(n−1).
 * @param count  how many polynomials, 2 or more; beyond about 20 their coefficients are too large for sums in double precision
 * @returns      row by row, `count` numbers each: that of u^k in Tₙ stands at n · count + k
 * Source: M. Abramowitz, I. A. Stegun (1964), Handbook of Mathematical Functions, chapter 22.
 * Worked value: T₂ = 2u² − 1.
 */
export function chebyshevInPowers(count: number): Float64Array {
  const rows = new Float64Array(count * count);
  rows[0] = 1;
  rows[count + 1] = 1;
  for (let n = 2; n < count; n++) {
    for (let k = 0; k < count; k++) {
      const raised = k === 0 ? 0 : 2 * rows[(n - 1) * count + k - 1]!;
      rows[n * count + k] = raised - rows[(n - 2) * count + k]!;
    }
  }
  return rows;
}
