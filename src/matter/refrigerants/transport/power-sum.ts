// Sums of powers, the form of most terms of viscosity and conductivity, made ready for fast evaluation: whole powers by
// repeated multiplication, terms of one power of τ gathered into a polynomial in δ.

import type { PowerSumData } from './transport-data.ts';

/** Σ c_k x^k. */
export function polynomial(c: readonly number[], x: number): number {
  let sum = 0;
  for (let k = c.length - 1; k >= 0; k--) sum = sum * x + c[k]!;
  return sum;
}

/** Σ n x^t for few terms of any power. */
export function sumOfPowers(n: readonly number[], t: readonly number[], x: number): number {
  let sum = 0;
  for (let k = 0; k < n.length; k++) sum += n[k]! * power(x, t[k]!);
  return sum;
}

/** x^t, x above 0; the powers that occur most without the general function. */
function power(x: number, t: number): number {
  if (t === 0) return 1;
  if (t === 1) return x;
  if (t === 2) return x * x;
  if (t === -1) return 1 / x;
  return t === -0.5 ? 1 / Math.sqrt(x) : x ** t;
}

/** Σ a δ^d τ^t as Σ_t τ^t P_t(δ). */
export class PowerSum {
  private readonly t: readonly number[];
  private readonly polynomials: readonly (readonly number[])[];

  constructor({ a, d, t }: PowerSumData) {
    this.t = [...new Set(t)];
    this.polynomials = this.t.map((wanted) => {
      const mine = a.flatMap((factor, k) => (t[k] === wanted ? [[d[k]!, factor] as const] : []));
      const c = new Array<number>(Math.max(...mine.map(([degree]) => degree)) + 1).fill(0);
      for (const [degree, factor] of mine) c[degree]! += factor;
      return c;
    });
  }

  at(delta: number, tau: number): number {
    let sum = 0;
    for (let k = 0; k < this.t.length; k++) sum += power(tau, this.t[k]!) * polynomial(this.polynomials[k]!, delta);
    return sum;
  }
}
