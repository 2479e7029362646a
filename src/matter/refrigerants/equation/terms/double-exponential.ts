// Terms with a decay in density and one in temperature (Lemmon & Jacobsen 2005, for R125):
//     n δ^d τ^t exp(−δ^l − τ^m), each part of the exponent dropped where its power is 0.

import type { DoubleExponentialTermData } from '../fluid-data.ts';
import { addProductTerm, type ReducedState, type ResidualSums, type ResidualTerms } from './term.ts';

export function doubleExponentialTerms(data: DoubleExponentialTermData): ResidualTerms {
  const { n, d, t, l, m } = data;
  return {
    highestPower: Math.max(...d, ...l),
    highestDecay: Math.max(...l),
    add({ lnTau, deltaPower, decay }: ReducedState, sums: ResidualSums): void {
      for (let k = 0; k < n.length; k++) {
        const fall = l[k]! > 0 ? l[k]! * deltaPower[l[k]!]! : 0;
        const tauPower = m[k]! > 0 ? Math.exp(m[k]! * lnTau) : 0;
        const shape = deltaPower[d[k]!]! * (l[k]! > 0 ? decay[l[k]!]! : 1);
        const value = n[k]! * shape * Math.exp(t[k]! * lnTau - tauPower);
        addProductTerm(sums, value, d[k]! - fall, -l[k]! * fall, t[k]! - m[k]! * tauPower, -m[k]! * m[k]! * tauPower);
      }
    },
  };
}
