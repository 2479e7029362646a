// Non-analytic terms near the critical point (Span & Wagner 1996; Wagner & Pruss 2002, for carbon dioxide and water):
//     n Δ^b δ ψ,  Δ = θ² + B ((δ − 1)²)^a,  θ = (1 − τ) + A ((δ − 1)²)^(1/(2β)),  ψ = exp(−C (δ − 1)² − D (τ − 1)²)
// The second derivatives have no limit at δ = 1, τ = 1; there the terms count as nothing, as their own value does.

import type { NonAnalyticTermData } from '../fluid-data.ts';
import type { ReducedState, ResidualSums, ResidualTerms } from './term.ts';

/** Smallest (δ − 1)² that is used: below it the derivatives of the powers overflow although the terms stay finite. */
const SMALLEST_SQUARE = 1e-30;

export function nonAnalyticTerms(data: NonAnalyticTermData): ResidualTerms {
  const { n, a, b, beta, A, B, C, D } = data;
  return {
    highestPower: 1,
    highestDecay: 0,
    add({ tau, delta }: ReducedState, sums: ResidualSums): void {
      const off = delta - 1;
      const square = Math.max(off * off, SMALLEST_SQUARE);
      const side = off < 0 ? -Math.sqrt(square) : Math.sqrt(square);
      const late = tau - 1;
      for (let k = 0; k < n.length; k++) {
        const half = 1 / (2 * beta[k]!);
        const bend = A[k]! * square ** half;
        const theta = -late + bend;
        const wall = B[k]! * square ** a[k]!;
        const distance = theta * theta + wall;
        // First and second derivative of Δ in δ: d/dδ of square^m is 2 m square^m / side.
        const thetaDelta = (2 * half * bend) / side;
        const thetaDeltaDelta = (2 * half * (2 * half - 1) * bend) / square;
        const distanceDelta = 2 * theta * thetaDelta + (2 * a[k]! * wall) / side;
        const distanceDeltaDelta =
          2 * thetaDelta * thetaDelta + 2 * theta * thetaDeltaDelta + (2 * a[k]! * (2 * a[k]! - 1) * wall) / square;
        const power = distance ** b[k]!;
        const first = (b[k]! * power) / distance;
        const second = ((b[k]! - 1) * first) / distance;
        const powerDelta = first * distanceDelta;
        const powerDeltaDelta = first * distanceDeltaDelta + second * distanceDelta * distanceDelta;
        const powerTau = -2 * theta * first;
        const powerTauTau = 2 * first + 4 * theta * theta * second;
        const powerDeltaTau = -2 * thetaDelta * first - 2 * theta * second * distanceDelta;
        const bell = n[k]! * Math.exp(-C[k]! * square - D[k]! * late * late);
        const bellDelta = -2 * C[k]! * side * bell;
        const bellDeltaDelta = (4 * C[k]! * C[k]! * square - 2 * C[k]!) * bell;
        const bellTau = -2 * D[k]! * late * bell;
        const bellTauTau = (4 * D[k]! * D[k]! * late * late - 2 * D[k]!) * bell;
        const bellDeltaTau = 4 * C[k]! * D[k]! * side * late * bell;
        // With f = Δ^b ψ the term is δ f: (δf)_δ = f + δ f_δ, (δf)_δδ = 2 f_δ + δ f_δδ.
        const f = power * bell;
        const fDelta = powerDelta * bell + power * bellDelta;
        const fDeltaDelta = powerDeltaDelta * bell + 2 * powerDelta * bellDelta + power * bellDeltaDelta;
        const fTau = powerTau * bell + power * bellTau;
        const fTauTau = powerTauTau * bell + 2 * powerTau * bellTau + power * bellTauTau;
        const fDeltaTau = powerDeltaTau * bell + powerDelta * bellTau + powerTau * bellDelta + power * bellDeltaTau;
        sums[0]! += delta * f;
        sums[1]! += delta * (f + delta * fDelta);
        sums[2]! += tau * delta * fTau;
        sums[3]! += delta * delta * (2 * fDelta + delta * fDeltaDelta);
        sums[4]! += delta * tau * (fTau + delta * fDeltaTau);
        sums[5]! += tau * tau * delta * fTauTau;
      }
    },
  };
}
