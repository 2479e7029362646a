// Power terms of the residual part, with or without exponential decay:
//     n δ^d τ^t exp(−δ^l), no exponential where l = 0.
// The commonest kind and the hottest loop of the engine: the factors n τ^t are kept from one evaluation to the next and
// made anew only when τ changes, which saves about half the time of a search for density at one temperature.

import type { PowerTermData } from '../fluid-data.ts';
import { tauPowers } from './tau-powers.ts';
import type { ReducedState, ResidualSums, ResidualTerms } from './term.ts';

export function powerTerms(data: PowerTermData): ResidualTerms {
  const count = data.n.length;
  const n = Float64Array.from(data.n);
  const d = Int32Array.from(data.d);
  const l = Int32Array.from(data.l);
  const t = Float64Array.from(data.t);
  // Distinct exponents of τ, so that each exponential is taken once.
  const distinct = [...new Set(data.t)];
  const fillPowers = tauPowers(distinct);
  const which = Int32Array.from(data.t, (exponent) => distinct.indexOf(exponent));
  const tauPower = new Float64Array(distinct.length);
  const factor = new Float64Array(count);
  const factorTau = new Float64Array(count);
  const factorTauTau = new Float64Array(count);
  let factorsAt = Number.NaN;

  function makeFactors(at: ReducedState): void {
    fillPowers(at.tau, at.lnTau, tauPower);
    for (let k = 0; k < count; k++) {
      const value = n[k]! * tauPower[which[k]!]!;
      factor[k] = value;
      factorTau[k] = value * t[k]!;
      factorTauTau[k] = value * t[k]! * (t[k]! - 1);
    }
    factorsAt = at.tau;
  }

  return {
    highestPower: Math.max(...data.d, ...data.l),
    highestDecay: Math.max(...data.l),
    add(at: ReducedState, sums: ResidualSums): void {
      if (at.tau !== factorsAt) makeFactors(at);
      const { deltaPower, decay } = at;
      let s0 = 0;
      let s1 = 0;
      let s2 = 0;
      let s3 = 0;
      let s4 = 0;
      let s5 = 0;
      for (let k = 0; k < count; k++) {
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
    },
  };
}
