// Surface tension between liquid and vapour of a pure fluid, from its fitted curve.

import type { Refrigerant } from './types.ts';

/**
 * Surface tension σ.
 *     σ = Σ aᵢ (1 − T/Tc)^nᵢ
 * @param fluid        the fluid, with aᵢ [N/m], nᵢ and Tc [K] of the fit
 * @param temperature  T [K], on the saturation line
 * @returns            σ [N/m]; 0 at and above the fit's critical temperature, where the surface vanishes, and where the
 *                     fit passes below 0 (R12 in the last 0.25 K, by at most 2e-6 N/m)
 * Validity: triple point to critical point. Accuracy: the authors state about 1 to 2 % for most refrigerants (from memory).
 * Pitfall: the fit's critical temperature can differ by some mK from that of the equation of state.
 * Source: A. Mulero, I. Cachadina, M. I. Parra (2012), J. Phys. Chem. Ref. Data 41, 043105.
 * Worked value: R290 at 300 K → 6.8 mN/m.
 */
export function surfaceTensionMulero2012(fluid: Refrigerant, temperature: number): number {
  return surfaceTensionOf(fluid.surfaceTension, temperature);
}

/** The same from the coefficients of a fit. */
export function surfaceTensionOf(fit: Refrigerant['surfaceTension'], temperature: number): number {
  const { criticalTemperature, a, n } = fit;
  const distance = 1 - temperature / criticalTemperature;
  if (distance <= 0) return 0;
  let sum = 0;
  for (let k = 0; k < a.length; k++) sum += a[k]! * distance ** n[k]!;
  return Math.max(sum, 0);
}
