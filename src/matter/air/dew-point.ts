// Dew point of moist air: the saturation pressure turned round.

import { findRoot, OutOfModelError, requireNonNegative, requirePositive } from '../../numerics/index.ts';
import { saturationValidity, saturationVapourPressure } from './saturation.ts';

const { min: lowest, max: highest } = saturationValidity.temperature;
/** Vapour pressures between which there is a dew point: those of −100 and 200 °C [Pa]. */
const lowestPressure = saturationVapourPressure(lowest);
const highestPressure = saturationVapourPressure(highest);

/** How near a dew point is found [K]. */
const tolerance = 1e-6;

/**
 * Dew point T_d: where air of this vapour pressure begins to condense (frost point below 0 °C).
 *     p_ws(T_d) = p_w, solved by Brent's method
 * Written out rather than taken from the library, which is loaded with the wet bulb only; the tests hold the two against each
 * other over the whole range.
 * @param temperature      T [K], dry bulb (the result never exceeds it)
 * @param partialPressure  p_w [Pa], > 0
 * @returns                T_d [K], to 1e-6 K; saturated air has its own temperature
 * Pitfall: dry air has none; see `dewPointIfAny`.
 * @throws InputError if p_w is not above 0; OutOfModelError if the dew point is below −100 °C.
 * Source: ASHRAE Handbook Fundamentals 2017, chapter 1, equations 5 and 6.
 * Worked value: 25 °C, 50 % → 13.864 °C.
 */
export function dewPoint(temperature: number, partialPressure: number): number {
  requirePositive('vapourPressure', partialPressure);
  if (!(partialPressure >= lowestPressure && partialPressure <= highestPressure)) {
    throw new OutOfModelError('vapourPressure', partialPressure, 'Pa', lowestPressure, highestPressure);
  }
  // In logarithms both lines are nearly straight.
  const excess = (T: number): number => Math.log(saturationVapourPressure(T) / partialPressure);
  const { root } = findRoot(excess, lowest, highest, { absoluteTolerance: tolerance, what: 'dew point' });
  return Math.min(temperature, root);
}

/**
 * Dew point T_d, or none where the air is so dry that nothing condenses above −100 °C; see `dewPoint`.
 * @param temperature      T [K], dry bulb
 * @param partialPressure  p_w [Pa], ≥ 0
 * @returns                T_d [K], or undefined
 * @throws InputError if p_w is negative; OutOfModelError if the dew point is above 200 °C.
 * Worked value: 25 °C, 0 Pa → undefined.
 */
export function dewPointIfAny(temperature: number, partialPressure: number): number | undefined {
  requireNonNegative('vapourPressure', partialPressure);
  return partialPressure < lowestPressure ? undefined : dewPoint(temperature, partialPressure);
}
