// The dome of a blend under one equation. The published bubble and dew pressures over temperature are part of the equation;
// the densities on both lines follow from it. Inside the dome the equation itself means nothing.

import { ConvergenceError, OutOfModelError } from '../../../numerics/index.ts';
import { densityOnBranch } from '../density.ts';
import type { BubbleAndDewCurves } from '../equation/fluid-data.ts';
import type { Refrigerant } from '../types.ts';
import type { Equilibrium } from './equilibrium.ts';
import { curveValue } from './saturation-curve.ts';

/** Bubble and dew line [K, Pa], and first guesses of the densities on them [kg/m³]. */
export interface BubbleAndDew {
  bubblePressure(temperature: number): number;
  dewPressure(temperature: number): number;
  bubbleTemperature(pressure: number): number;
  dewTemperature(pressure: number): number;
  liquidDensity(temperature: number): number;
  vapourDensity(temperature: number): number;
}

/**
 * The lines of a blend from its curves.
 * @param curves     from the coefficient file
 * @param molarMass  M [kg/mol]
 * @param coldest    the lowest temperature of the curves [K]
 */
export function bubbleAndDewOf(curves: BubbleAndDewCurves, molarMass: number, coldest: number): BubbleAndDew {
  const { bubblePressure, dewPressure, liquidMolarDensity, vapourMolarDensity } = curves;
  return {
    bubblePressure: (temperature) => curveValue(bubblePressure, temperature),
    dewPressure: (temperature) => curveValue(dewPressure, temperature),
    bubbleTemperature: (pressure) => temperatureOn(bubblePressure, pressure, coldest),
    dewTemperature: (pressure) => temperatureOn(dewPressure, pressure, coldest),
    liquidDensity: (temperature) => curveValue(liquidMolarDensity, temperature) * molarMass,
    vapourDensity: (temperature) => curveValue(vapourMolarDensity, temperature) * molarMass,
  };
}

/** Temperature at which a pressure curve has a value: regula falsi (Illinois) in ln p over 1/T, where it is nearly straight. */
function temperatureOn(curve: BubbleAndDewCurves['bubblePressure'], pressure: number, coldest: number): number {
  const wanted = Math.log(pressure);
  const gapAt = (inverse: number) => Math.log(curveValue(curve, 1 / inverse)) - wanted;
  let cold = 1 / coldest;
  let warm = 1 / curve.reducingTemperature;
  let coldGap = gapAt(cold);
  let warmGap = gapAt(warm);
  for (let step = 0; step < 100; step++) {
    const inverse = cold - (coldGap * (warm - cold)) / (warmGap - coldGap);
    const gap = gapAt(inverse);
    if (Math.abs(gap) < 4e-16 || inverse === cold || inverse === warm) return 1 / inverse;
    if (gap > 0) {
      warm = inverse;
      warmGap = gap;
      coldGap /= 2;
    } else {
      cold = inverse;
      coldGap = gap;
      warmGap /= 2;
    }
    if (Math.abs(1 - warm / cold) < 4e-16) return 1 / inverse;
  }
  throw new ConvergenceError('temperature on a saturation curve', 100, [pressure], coldGap, [1 / cold, 1 / warm]);
}

export function bubbleAndDewAtTemperature(fluid: Refrigerant, lines: BubbleAndDew, temperature: number): Equilibrium {
  const { critical, limits } = fluid;
  if (!(temperature >= limits.temperatureMin && temperature < critical.temperature)) {
    const { temperatureMin } = limits;
    throw new OutOfModelError('temperature', temperature, 'K', temperatureMin, critical.temperature, 'noSaturation');
  }
  return sides(
    fluid,
    lines,
    temperature,
    temperature,
    lines.bubblePressure(temperature),
    lines.dewPressure(temperature),
  );
}

export function bubbleAndDewAtPressure(fluid: Refrigerant, lines: BubbleAndDew, pressure: number): Equilibrium {
  const { critical, triplePoint } = fluid;
  if (!(pressure >= triplePoint.pressure && pressure < critical.pressure)) {
    throw new OutOfModelError('pressure', pressure, 'Pa', triplePoint.pressure, critical.pressure, 'noSaturation');
  }
  return sides(fluid, lines, lines.bubbleTemperature(pressure), lines.dewTemperature(pressure), pressure, pressure);
}

function sides(
  fluid: Refrigerant,
  lines: BubbleAndDew,
  bubbleTemperature: number,
  dewTemperature: number,
  bubblePressure: number,
  dewPressure: number,
): Equilibrium {
  const liquidGuess = lines.liquidDensity(bubbleTemperature);
  const vapourGuess = lines.vapourDensity(dewTemperature);
  const { density: middle } = fluid.critical;
  return {
    bubbleTemperature,
    dewTemperature,
    bubblePressure,
    dewPressure,
    liquidDensity: densityOnBranch(fluid, bubbleTemperature, bubblePressure, middle, 1.5 * liquidGuess, liquidGuess),
    vapourDensity: densityOnBranch(fluid, dewTemperature, dewPressure, 0, middle, vapourGuess),
  };
}
