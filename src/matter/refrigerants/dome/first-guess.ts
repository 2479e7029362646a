// First guesses for the phase equilibrium. The ancillary curves of the coefficient file are good to about a per cent; at
// loading time the equilibrium is solved from them, and the expansions through those solutions (saturation-line.ts) give the
// guesses from then on. Every value that leaves the engine is solved for from such a guess, never taken from it.

import type { PureFluidData } from '../equation/fluid-data.ts';
import { curveValue } from './saturation-curve.ts';
import type { SaturationOverPressure, SaturationOverTemperature } from './saturation-line.ts';

/** Guesses of saturation pressure [Pa] and densities [kg/m³] at T [K], and of the temperature at p; of a blend, bubble values. */
export interface Guess {
  saturationPressure(temperature: number): number;
  saturationTemperature(pressure: number): number;
  liquidDensity(temperature: number): number;
  vapourDensity(temperature: number): number;
}

/** Guesses from the ancillary curves alone. */
export function ancillaryGuess(data: PureFluidData): Guess {
  const { pressure, liquidMolarDensity, vapourMolarDensity, nearCritical } = data.firstGuess;
  const { critical, limits, molarMass } = data;

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
      // The logarithm of pressure is nearly linear in 1/T: a few steps of bisection are close enough.
      let cold = 1 / limits.temperatureMin;
      let warm = 1 / critical.temperature;
      for (let step = 0; step < 24; step++) {
        const middle = (cold + warm) / 2;
        if (curveValue(pressure, 1 / middle) < target) cold = middle;
        else warm = middle;
      }
      return 2 / (cold + warm);
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

/**
 * Guesses from the expansions of the line; beyond their ends, next to the critical point, from what served before.
 * @param overTemperature  the line over temperature
 * @param overPressure     the line over pressure; undefined until it is made
 * @param rough            what serves beyond
 */
export function lineGuess(
  overTemperature: SaturationOverTemperature,
  overPressure: SaturationOverPressure | undefined,
  rough: Guess,
): Guess {
  return {
    saturationPressure: (temperature) =>
      overTemperature.holds(temperature)
        ? overTemperature.at(temperature).bubblePressure
        : rough.saturationPressure(temperature),
    saturationTemperature(pressure) {
      if (overPressure?.holds(pressure)) return overPressure.at(pressure).bubbleTemperature;
      const { coldest, warmest } = overTemperature;
      const lowest = overTemperature.at(coldest).bubblePressure;
      const highest = overTemperature.at(warmest).bubblePressure;
      return pressure >= lowest && pressure <= highest
        ? overTemperature.temperatureAt(pressure)
        : rough.saturationTemperature(pressure);
    },
    liquidDensity: (temperature) =>
      overTemperature.holds(temperature)
        ? overTemperature.at(temperature).liquidDensity
        : rough.liquidDensity(temperature),
    vapourDensity: (temperature) =>
      overTemperature.holds(temperature)
        ? overTemperature.at(temperature).vapourDensity
        : rough.vapourDensity(temperature),
  };
}
