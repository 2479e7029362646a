// First guesses for the phase equilibrium from a fluid's ancillary curves: saturation pressure and both densities at a
// temperature, and the temperature at a pressure. Good to about a per cent; every value used is solved for afterwards.

import type { FluidData, GuessCurve } from './fluid-data.ts';

export interface GuessTable {
  saturationPressure(temperature: number): number;
  saturationTemperature(pressure: number): number;
  liquidDensity(temperature: number): number;
  vapourDensity(temperature: number): number;
}

const NODES = 256;

/** Value of an ancillary curve; outside its range the nearest end's value. */
function curveValue(curve: GuessCurve, temperature: number): number {
  const distance = Math.max(1 - temperature / curve.reducingTemperature, 0);
  let sum = 0;
  for (let k = 0; k < curve.n.length; k++) sum += curve.n[k]! * distance ** curve.t[k]!;
  if (curve.form === 'sum') return curve.reducingValue * (1 + sum);
  const exponent = curve.form === 'exponentialTau' ? (sum * curve.reducingTemperature) / temperature : sum;
  return curve.reducingValue * Math.exp(exponent);
}

export function guessTable(data: FluidData): GuessTable {
  const { pressure, liquidMolarDensity, vapourMolarDensity, nearCritical } = data.firstGuess;
  const { critical, limits, molarMass } = data;
  // Inverse temperature is nearly linear in the logarithm of pressure: a short table inverts the curve.
  const inverseTemperature = new Float64Array(NODES);
  const logPressure = new Float64Array(NODES);
  const coldest = 1 / limits.temperatureMin;
  const warmest = 1 / critical.temperature;
  for (let k = 0; k < NODES; k++) {
    inverseTemperature[k] = coldest + ((warmest - coldest) * k) / (NODES - 1);
    logPressure[k] = Math.log(curveValue(pressure, 1 / inverseTemperature[k]!));
  }

  /** |ρ − ρc| close to the critical point [mol/m³]; undefined where the far curves serve. */
  function nearCriticalDistance(coefficients: readonly number[], temperature: number): number | undefined {
    const distance = 1 - temperature / critical.temperature;
    if (distance > nearCritical.distanceMax) return undefined;
    const logDistance = Math.log(Math.max(distance, 1e-12));
    let sum = 0;
    for (let k = coefficients.length - 1; k >= 0; k--) sum = sum * logDistance + coefficients[k]!;
    return Math.exp(sum);
  }

  return {
    saturationPressure: (temperature) => curveValue(pressure, temperature),
    saturationTemperature(target) {
      const wanted = Math.log(target);
      let low = 0;
      let high = NODES - 1;
      while (high - low > 1) {
        const middle = (low + high) >> 1;
        if (logPressure[middle]! <= wanted) low = middle;
        else high = middle;
      }
      const share = (wanted - logPressure[low]!) / (logPressure[high]! - logPressure[low]!);
      const bounded = Math.min(Math.max(share, 0), 1);
      return 1 / (inverseTemperature[low]! + bounded * (inverseTemperature[high]! - inverseTemperature[low]!));
    },
    liquidDensity(temperature) {
      const near = nearCriticalDistance(nearCritical.liquid, temperature);
      if (near !== undefined) return (critical.molarDensity + near) * molarMass;
      return curveValue(liquidMolarDensity, temperature) * molarMass;
    },
    vapourDensity(temperature) {
      const near = nearCriticalDistance(nearCritical.vapour, temperature);
      if (near !== undefined) return (critical.molarDensity - near) * molarMass;
      return curveValue(vapourMolarDensity, temperature) * molarMass;
    },
  };
}
