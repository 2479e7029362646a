// Power terms of the residual part, with or without exponential decay:
//     n δ^d τ^t exp(−δ^l), no exponential where l = 0.
// The commonest kind and the hottest loop of the engine: the factors n τ^t are kept from one evaluation to the next and
// made anew only when τ changes, which saves about half the time of a search for density at one temperature. A class, as
// are the other hot kinds: closures over arrays ran at half the speed once several fluids were in use.

import type { PowerTermData } from '../fluid-data.ts';
import { TauPowers } from './tau-powers.ts';
import type { ReducedState, ResidualSums, ResidualTerms } from './term.ts';

export class PowerTerms implements ResidualTerms {
  readonly highestPower: number;
  readonly highestDecay: number;
  private readonly n: Float64Array;
  private readonly d: Int32Array;
  private readonly t: Float64Array;
  private readonly l: Int32Array;
  /** τ to the distinct exponents, each taken once, and which of them a term needs. */
  private readonly powers: TauPowers;
  private readonly which: Int32Array;
  /** n τ^t, and that times t and t (t − 1). */
  private readonly factor: Float64Array;
  private readonly factorTau: Float64Array;
  private readonly factorTauTau: Float64Array;
  private factorsAt = Number.NaN;

  constructor(data: PowerTermData) {
    const count = data.n.length;
    this.highestPower = Math.max(...data.d, ...data.l);
    this.highestDecay = Math.max(...data.l);
    this.n = Float64Array.from(data.n);
    this.d = Int32Array.from(data.d);
    this.t = Float64Array.from(data.t);
    this.l = Int32Array.from(data.l);
    const distinct = [...new Set(data.t)];
    this.powers = new TauPowers(distinct);
    this.which = Int32Array.from(data.t, (exponent) => distinct.indexOf(exponent));
    this.factor = new Float64Array(count);
    this.factorTau = new Float64Array(count);
    this.factorTauTau = new Float64Array(count);
  }

  add(at: ReducedState, sums: ResidualSums): void {
    if (at.tau !== this.factorsAt) this.makeFactors(at);
    const { d, l, factor, factorTau, factorTauTau } = this;
    const { deltaPower, decay } = at;
    let s0 = 0;
    let s1 = 0;
    let s2 = 0;
    let s3 = 0;
    let s4 = 0;
    let s5 = 0;
    for (let k = 0; k < factor.length; k++) {
      const exponent = l[k]!;
      let shape = deltaPower[d[k]!]!;
      let slope = d[k]!;
      let change = 0;
      if (exponent > 0) {
        const fall = exponent * deltaPower[exponent]!;
        shape *= decay[exponent]!;
        slope -= fall;
        change = -exponent * fall;
      }
      const value = factor[k]! * shape;
      const valueTau = factorTau[k]! * shape;
      s0 += value;
      s1 += value * slope;
      s2 += valueTau;
      s3 += value * (slope * slope - slope + change);
      s4 += valueTau * slope;
      s5 += factorTauTau[k]! * shape;
    }
    sums[0]! += s0;
    sums[1]! += s1;
    sums[2]! += s2;
    sums[3]! += s3;
    sums[4]! += s4;
    sums[5]! += s5;
  }

  private makeFactors(at: ReducedState): void {
    const { n, t, which, factor, factorTau, factorTauTau } = this;
    const powers = this.powers.at(at.tau, at.lnTau);
    for (let k = 0; k < factor.length; k++) {
      const value = n[k]! * powers[which[k]!]!;
      const exponent = t[k]!;
      factor[k] = value;
      factorTau[k] = value * exponent;
      factorTauTau[k] = value * exponent * (exponent - 1);
    }
    this.factorsAt = at.tau;
  }
}
