// Surface tension between liquid and vapour: a sum of powers of the distance from the critical temperature, fitted for each
// fluid; water's is the international formula, which has the same form.

import type { Refrigerant } from './types.ts';

/**
 * Surface tension σ.
 *     σ = Σ aᵢ (1 − T/Tc)^nᵢ
 * @param fluid        the fluid, with aᵢ [N/m], nᵢ and Tc [K] of the fit
 * @param temperature  T [K], on the saturation line; inside a blend's dome the state's own temperature, which lies between
 *                     those of the bubble and the dew line (the blends' fits are one curve over temperature, R407C's over 7 K
 *                     of glide)
 * @returns            σ [N/m]; 0 from the critical temperature of the fluid on, where the surface vanishes, and from where the
 *                     fit passes 0 (R12 in the last 0.25 K and R227ea in the last 0.02 K, by at most 2e-6 N/m; R717 in the
 *                     last 0.16 K, R404A and R407C in the last 0.1 K)
 * Validity: triple point to critical point. Accuracy: the authors state about 1 to 2 % for most refrigerants (from memory);
 * water 0.2 to 1 %.
 * Pitfall: a fit keeps the critical temperature of its own paper. R245fa's lies 0.15 K and R410A's 0.07 K above that of the
 * equation of state; there they still give 0.017 and 0.0015 mN/m, and the value ends with that step.
 * Source: A. Mulero, I. Cachadina, M. I. Parra (2012), J. Phys. Chem. Ref. Data 41, 043105; A. Mulero, I. Cachadina (2014), J.
 * Phys. Chem. Ref. Data 43, 023104; blends M. Okada and others (1999), Int. J. Thermophys. 20, 119; water IAPWS R1-76(2014).
 * Which of them: fluid.citations.surfaceTension.
 * Worked value: R290 at 300 K → 6.8 mN/m; water at 20 °C → 72.74 mN/m (IAPWS R1-76, Table 1).
 */
export function surfaceTensionAt(fluid: Refrigerant, temperature: number): number {
  return temperature < fluid.critical.temperature ? surfaceTensionOf(fluid.surfaceTension, temperature) : 0;
}

/** The same from the coefficients of a fit, which knows no critical temperature but its own. */
export function surfaceTensionOf(fit: Refrigerant['surfaceTension'], temperature: number): number {
  const { criticalTemperature, a, n } = fit;
  const distance = 1 - temperature / criticalTemperature;
  if (distance <= 0) return 0;
  let sum = 0;
  for (let k = 0; k < a.length; k++) sum += a[k]! * distance ** n[k]!;
  return Math.max(sum, 0);
}
