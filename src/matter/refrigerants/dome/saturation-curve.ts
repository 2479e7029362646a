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
