// Gaussian bell terms of the residual part:
//     n δ^d τ^t exp(−η (δ − ε)² − β (τ − γ)²)
// What depends on τ alone is kept until τ changes, as for the power terms.

import type { GaussianTermData } from '../fluid-data.ts';
import { addProductTerm, type ReducedState, type ResidualSums, type ResidualTerms } from './term.ts';

export function gaussianTerms(data: GaussianTermData): ResidualTerms {
  const { n, d, t, eta, epsilon, beta, gamma } = data;
  const count = n.length;
  const factor = new Float64Array(count);
  const slopeTau = new Float64Array(count);
  const slopeTauChange = new Float64Array(count);
  let factorsAt = Number.NaN;

  function makeFactors({ tau, lnTau }: ReducedState): void {
    for (let k = 0; k < count; k++) {
      const apart = tau - gamma[k]!;
      factor[k] = n[k]! * Math.exp(t[k]! * lnTau - beta[k]! * apart * apart);
      slopeTau[k] = t[k]! - 2 * beta[k]! * tau * apart;
      slopeTauChange[k] = -2 * beta[k]! * tau * (tau + apart);
    }
    factorsAt = tau;
  }

  return {
    highestPower: Math.max(...d),
    highestDecay: 0,
    add(at: ReducedState, sums: ResidualSums): void {
      if (at.tau !== factorsAt) makeFactors(at);
      const { delta, deltaPower } = at;
      for (let k = 0; k < count; k++) {
        const apart = delta - epsilon[k]!;
        const value = factor[k]! * deltaPower[d[k]!]! * Math.exp(-eta[k]! * apart * apart);
        const slope = d[k]! - 2 * eta[k]! * delta * apart;
        const change = -2 * eta[k]! * delta * (delta + apart);
        addProductTerm(sums, value, slope, change, slopeTau[k]!, slopeTauChange[k]!);
      }
    },
  };
}
