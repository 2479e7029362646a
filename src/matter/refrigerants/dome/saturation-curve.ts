// A property along the saturation line from a fitted curve: first guesses for pure fluids, bubble and dew pressures for blends.

import type { SaturationCurve } from '../equation/fluid-data.ts';

/** Value of a curve; beyond its own critical temperature the value there. */
export function curveValue(curve: SaturationCurve, temperature: number): number {
  const distance = Math.max(1 - temperature / curve.reducingTemperature, 0);
  const sum = curveExponent(curve.n, curve.t, distance);
  if (curve.form === 'sum') return curve.reducingValue * (1 + sum);
  const exponent = curve.form === 'exponentialTau' ? (sum * curve.reducingTemperature) / temperature : sum;
  return curve.reducingValue * Math.exp(exponent);
}

/** Σ n θ^t at a distance θ = 1 − T/T_r from the end of a curve. */
export function curveExponent(n: readonly number[], t: readonly number[], distance: number): number {
  // Powers by one logarithm for all of them: a third of the time. At the end of a curve it is −∞, and the powers are 0.
  const logDistance = Math.log(distance);
  let sum = 0;
  for (let k = 0; k < n.length; k++) sum += n[k]! * Math.exp(t[k]! * logDistance);
  return sum;
}

/**
 * Pressure p [Pa] of a blend's bubble or dew line.
 *     p = p_r exp(T_r/T · Σ n θ^t)
 * Source: the blend's own paper. Worked value: see the tests of the formula records.
 */
export function linePressureOf(
  reducingPressure: number,
  reducingTemperature: number,
  temperature: number,
  exponent: number,
): number {
  return reducingPressure * Math.exp((reducingTemperature / temperature) * exponent);
}

/**
 * Temperature T [K] of that line: the curve solved for it. The exponent is that at the temperature, which an iteration has
 * found.
 *     T = T_r Σ n θ^t / ln(p/p_r)
 */
export function lineTemperatureOf(
  reducingPressure: number,
  reducingTemperature: number,
  pressure: number,
  exponent: number,
): number {
  return (reducingTemperature * exponent) / Math.log(pressure / reducingPressure);
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
  const logDistance = Math.log(distance);
  let sum = 0;
  let derivative = 0;
  for (let k = 0; k < n.length; k++) {
    const term = n[k]! * Math.exp(t[k]! * logDistance);
    sum += term;
    derivative += (t[k]! * term) / distance;
  }
  return { logarithm: Math.log(reducingValue) + tau * sum, slope: reducingTemperature * (sum + derivative / tau) };
}
