// Second kind of Gaussian terms (Gao and others 2023, for ammonia):
//     n δ^d τ^t exp(η (δ − ε)² + 1 / (β (τ − γ)² + b))
// Sign: η stands in these files as a negative number and enters as it is, unlike in the first kind.

import type { SecondGaussianTermData } from '../fluid-data.ts';
import { addProductTerm, type ReducedState, type ResidualSums, type ResidualTerms } from './term.ts';

export function secondGaussianTerms(data: SecondGaussianTermData): ResidualTerms {
  const { n, d, t, eta, epsilon, beta, gamma, b } = data;
  return {
    highestPower: Math.max(...d),
    highestDecay: 0,
    add({ tau, lnTau, delta, deltaPower }: ReducedState, sums: ResidualSums): void {
      for (let k = 0; k < n.length; k++) {
        const apart = delta - epsilon[k]!;
        const away = tau - gamma[k]!;
        const width = beta[k]! * away * away + b[k]!;
        const value = n[k]! * deltaPower[d[k]!]! * Math.exp(t[k]! * lnTau + eta[k]! * apart * apart + 1 / width);
        const slope = d[k]! + 2 * eta[k]! * delta * apart;
        const change = 2 * eta[k]! * delta * (delta + apart);
        const pull = (2 * beta[k]! * tau) / (width * width);
        const slopeTau = t[k]! - pull * away;
        const slopeTauChange = -pull * (tau + away) + (4 * beta[k]! * tau * away * away * pull) / width;
        addProductTerm(sums, value, slope, change, slopeTau, slopeTauChange);
      }
    },
  };
}
