// A property along the saturation line from a fitted curve: first guesses for pure fluids, bubble and dew pressures for blends.

import type { SaturationCurve } from '../equation/fluid-data.ts';

/** Value of a curve; beyond its own critical temperature the value there. */
export function curveValue(curve: SaturationCurve, temperature: number): number {
  const distance = Math.max(1 - temperature / curve.reducingTemperature, 0);
  let sum = 0;
  for (let k = 0; k < curve.n.length; k++) sum += curve.n[k]! * distance ** curve.t[k]!;
  if (curve.form === 'sum') return curve.reducingValue * (1 + sum);
  const exponent = curve.form === 'exponentialTau' ? (sum * curve.reducingTemperature) / temperature : sum;
  return curve.reducingValue * Math.exp(exponent);
}

/**
 * Logarithm of a curve of the form 'exponentialTau' and its slope over 1/T, at T [K] below the curve's critical temperature.
 *     ln y = ln y_r + τ S(θ),  S = Σ n θ^t,  θ = 1 − 1/τ,  τ = T_r/T;  d ln y/d(1/T) = T_r (S + S′/τ)
 */
export function logarithmOfCurve(
  curve: SaturationCurve,
  temperature: number,
): { readonly logarithm: number; readonly slope: number } {
  const { n, t, reducingTemperature, reducingValue } = curve;
  const tau = reducingTemperature / temperature;
  const distance = 1 - 1 / tau;
  let sum = 0;
  let derivative = 0;
  for (let k = 0; k < n.length; k++) {
    const term = n[k]! * distance ** t[k]!;
    sum += term;
    derivative += (t[k]! * term) / distance;
  }
  return { logarithm: Math.log(reducingValue) + tau * sum, slope: reducingTemperature * (sum + derivative / tau) };
}
