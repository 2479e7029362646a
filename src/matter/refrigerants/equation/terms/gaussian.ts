// Gaussian bell terms of the residual part:
//     n δ^d τ^t exp(−η (δ − ε)² − β (τ − γ)²)
// What depends on τ alone is kept until τ changes, as for the power terms.

import type { GaussianTermData } from '../fluid-data.ts';
import { addProductTerm, type ReducedState, type ResidualSums, type ResidualTerms } from './term.ts';

export class GaussianTerms implements ResidualTerms {
  readonly highestPower: number;
  readonly highestDecay = 0;
  private readonly n: Float64Array;
  private readonly d: Int32Array;
  private readonly t: Float64Array;
  private readonly eta: Float64Array;
  private readonly epsilon: Float64Array;
  private readonly beta: Float64Array;
  private readonly gamma: Float64Array;
  private readonly factor: Float64Array;
  private readonly slopeTau: Float64Array;
  private readonly slopeTauChange: Float64Array;
  private factorsAt = Number.NaN;

  constructor(data: GaussianTermData) {
    const count = data.n.length;
    this.highestPower = Math.max(...data.d);
    this.n = Float64Array.from(data.n);
    this.d = Int32Array.from(data.d);
    this.t = Float64Array.from(data.t);
    this.eta = Float64Array.from(data.eta);
    this.epsilon = Float64Array.from(data.epsilon);
    this.beta = Float64Array.from(data.beta);
    this.gamma = Float64Array.from(data.gamma);
    this.factor = new Float64Array(count);
    this.slopeTau = new Float64Array(count);
    this.slopeTauChange = new Float64Array(count);
  }

  add(at: ReducedState, sums: ResidualSums): void {
    if (at.tau !== this.factorsAt) this.makeFactors(at);
    const { d, eta, epsilon, factor, slopeTau, slopeTauChange } = this;
    const { delta, deltaPower } = at;
    for (let k = 0; k < factor.length; k++) {
      const apart = delta - epsilon[k]!;
      const value = factor[k]! * deltaPower[d[k]!]! * Math.exp(-eta[k]! * apart * apart);
      const slope = d[k]! - 2 * eta[k]! * delta * apart;
      const change = -2 * eta[k]! * delta * (delta + apart);
      addProductTerm(sums, value, slope, change, slopeTau[k]!, slopeTauChange[k]!);
    }
  }

  private makeFactors({ tau, lnTau }: ReducedState): void {
    const { n, t, beta, gamma, factor, slopeTau, slopeTauChange } = this;
    for (let k = 0; k < factor.length; k++) {
      const apart = tau - gamma[k]!;
      factor[k] = n[k]! * Math.exp(t[k]! * lnTau - beta[k]! * apart * apart);
      slopeTau[k] = t[k]! - 2 * beta[k]! * tau * apart;
      slopeTauChange[k] = -2 * beta[k]! * tau * (tau + apart);
    }
    this.factorsAt = tau;
  }
}
