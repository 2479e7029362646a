// The dome of a blend under one equation. The published bubble and dew pressures over temperature are part of the equation;
// the densities on both lines follow from it. Inside the dome the equation itself means nothing: neither its spinodal nor
// Maxwell's conditions are looked at, only the side of the lines.

import { findRoot } from '../../../numerics/index.ts';
import type { BubbleAndDewCurves, SaturationCurve } from '../equation/fluid-data.ts';
import { densityOnBranch } from '../flash/density.ts';
import type { Refrigerant } from '../types.ts';
import type { Equilibrium } from './equilibrium.ts';
import { requireDomePressure, requireDomeTemperature } from './range.ts';
import { curveValue, logarithmOfCurve } from './saturation-curve.ts';

/** Bubble and dew line: pressure [Pa] over temperature [K]. */
export interface BubbleAndDew {
  bubblePressure(temperature: number): number;
  dewPressure(temperature: number): number;
  /** @param start  a temperature near by [K], from which the search goes out */
  bubbleTemperature(pressure: number, start: number): number;
  dewTemperature(pressure: number, start: number): number;
  /** The published curves, for the working. */
  readonly curves: Pick<BubbleAndDewCurves, 'bubblePressure' | 'dewPressure'>;
}

/**
 * The lines of a blend from its curves.
 * @param curves   from the coefficient file
 * @param coldest  the lowest temperature of the curves [K]
 */
export function bubbleAndDewOf(curves: BubbleAndDewCurves, coldest: number): BubbleAndDew {
  const { bubblePressure, dewPressure } = curves;
  return {
    bubblePressure: (temperature) => curveValue(bubblePressure, temperature),
    dewPressure: (temperature) => curveValue(dewPressure, temperature),
    bubbleTemperature: (pressure, start) => temperatureOn(bubblePressure, pressure, start, coldest),
    dewTemperature: (pressure, start) => temperatureOn(dewPressure, pressure, start, coldest),
    curves: { bubblePressure, dewPressure },
  };
}

/** Below this relative distance from the critical temperature the curves bend too much for Newton's method and for guesses. */
export const NEAR_CRITICAL = 2e-3;
const NEWTON_STEPS = 8;

/** Temperature at which a pressure curve has a value: Newton's method in ln p over 1/T, where the curve is nearly straight. */
function temperatureOn(curve: SaturationCurve, pressure: number, start: number, coldest: number): number {
  const wanted = Math.log(pressure);
  const cold = 1 / coldest;
  const warm = 1 / (curve.reducingTemperature * (1 - NEAR_CRITICAL));
  let inverse = 1 / start;
  for (let step = 0; step < NEWTON_STEPS && inverse >= warm; step++) {
    const { logarithm, slope } = logarithmOfCurve(curve, 1 / inverse);
    const change = (wanted - logarithm) / slope;
    inverse += change;
    // One step from this distance the error is below rounding.
    if (Math.abs(change) < 1e-9 * inverse && inverse >= warm && inverse <= cold) return 1 / inverse;
  }
  return temperatureBetween(curve, wanted, cold, 1 / curve.reducingTemperature);
}

/** The same by Brent's method over the whole curve: slower, and it cannot miss. */
function temperatureBetween(curve: SaturationCurve, wanted: number, cold: number, warm: number): number {
  const gapAt = (inverse: number) => Math.log(curveValue(curve, 1 / inverse)) - wanted;
  const [valueAtLow, valueAtHigh] = [gapAt(cold), gapAt(warm)];
  // A pressure that passes an end of the curve by rounding belongs to that end.
  if (valueAtLow >= 0) return 1 / cold;
  if (valueAtHigh <= 0) return 1 / warm;
  const ends = { valueAtLow, valueAtHigh };
  return (
    1 / findRoot(gapAt, cold, warm, { ...ends, relativeTolerance: 0, what: 'temperature on a saturation curve' }).root
  );
}

/**
 * Both lines at T [K]: the pressures of the curves, the densities of the equation there.
 * Accuracy: rounding. Close to the critical temperature (R407C: the last 0.4 K) a bubble pressure may pass the critical one.
 * @throws OutOfModelError ('noSaturation') beyond the ends of the curves; ConvergenceError
 */
export function bubbleAndDewAtTemperature(fluid: Refrigerant, lines: BubbleAndDew, temperature: number): Equilibrium {
  requireDomeTemperature(fluid, temperature);
  const bubblePressure = lines.bubblePressure(temperature);
  const dewPressure = lines.dewPressure(temperature);
  return {
    bubbleTemperature: temperature,
    dewTemperature: temperature,
    bubblePressure,
    dewPressure,
    liquidDensity: bubbleDensity(fluid, temperature, bubblePressure),
    vapourDensity: dewDensity(fluid, temperature, dewPressure),
  };
}

/**
 * Both lines at p [Pa]: the temperatures at which the curves have it, the densities of the equation there.
 * @throws OutOfModelError ('noSaturation') below the bubble pressure at the lowest temperature, or from the critical
 *         pressure on; ConvergenceError
 */
export function bubbleAndDewAtPressure(fluid: Refrigerant, lines: BubbleAndDew, pressure: number): Equilibrium {
  requireDomePressure(fluid, pressure);
  const bubbleTemperature = lines.bubbleTemperature(pressure, fluid.guess.saturationTemperature(pressure));
  const { overPressure } = fluid;
  const dewStart = overPressure?.holds(pressure) ? overPressure.at(pressure).dewTemperature : bubbleTemperature;
  const dewTemperature = lines.dewTemperature(pressure, dewStart);
  return {
    bubbleTemperature,
    dewTemperature,
    bubblePressure: pressure,
    dewPressure: pressure,
    liquidDensity: bubbleDensity(fluid, bubbleTemperature, pressure),
    vapourDensity: dewDensity(fluid, dewTemperature, pressure),
  };
}

/** One point of the dew line. */
export interface DewPoint {
  readonly temperature: number;
  readonly density: number;
}

/**
 * The dew line alone at p [Pa], where the bubble line has not begun yet: between dew and bubble pressure at the lowest
 * temperature. Undefined at any other pressure.
 */
export function dewPointBelowBubbleLine(fluid: Refrigerant, pressure: number): DewPoint | undefined {
  const { bubbleAndDew, triplePoint, limits } = fluid;
  if (bubbleAndDew === undefined || pressure >= triplePoint.pressure) return undefined;
  if (pressure < bubbleAndDew.dewPressure(limits.temperatureMin)) return undefined;
  const temperature = bubbleAndDew.dewTemperature(pressure, limits.temperatureMin);
  return { temperature, density: dewDensity(fluid, temperature, pressure) };
}

/** The largest density with this pressure on the isotherm: the liquid's. */
function bubbleDensity(fluid: Refrigerant, temperature: number, pressure: number): number {
  const { critical, guess } = fluid;
  if (isNearCritical(fluid, temperature)) {
    // From the dense side, where the isotherm is hollow: Newton's steps come down to the largest root. It may lie below the
    // critical density: the equation's own critical point is not where the curves meet.
    return densityOnBranch(
      fluid,
      temperature,
      pressure,
      0.5 * critical.density,
      2 * critical.density,
      1.5 * critical.density,
    );
  }
  const start = guess.liquidDensity(temperature);
  return densityOnBranch(fluid, temperature, pressure, critical.density, 1.5 * start, start);
}

/** The smallest density with this pressure on the isotherm: the vapour's. */
function dewDensity(fluid: Refrigerant, temperature: number, pressure: number): number {
  const { critical, guess, gasConstant } = fluid;
  if (isNearCritical(fluid, temperature)) {
    // From the thin side, where the isotherm is arched: the ideal gas is thinner than the vapour, and Newton's steps go up.
    const start = pressure / (gasConstant * temperature);
    return densityOnBranch(fluid, temperature, pressure, 0, 1.5 * critical.density, start);
  }
  return densityOnBranch(fluid, temperature, pressure, 0, critical.density, guess.vapourDensity(temperature));
}

function isNearCritical({ critical }: Refrigerant, temperature: number): boolean {
  return temperature > critical.temperature * (1 - NEAR_CRITICAL);
}
