// Saturation vapour pressure over water and over ice. Left out: the enhancement factor of real gases (about 1.0045).

import { OutOfModelError } from '../../numerics/index.ts';

/** Triple point of water: ice below, water above [K]. */
const TRIPLE_POINT = 273.16;

/** Where the saturation-pressure equations were made: −100 to 200 °C, in K. */
export const saturationValidity = { temperature: { min: 173.15, max: 473.15 } } as const;

/**
 * Saturation vapour pressure p_ws of pure water (over ice at and below the triple point).
 *     ln p_ws = C8/T + C9 + C10 T + C11 T² + C12 T³ + C13 ln T           (over water)
 *     ln p_ws = C1/T + C2 + C3 T + C4 T² + C5 T³ + C6 T⁴ + C7 ln T       (over ice)
 * Written out rather than taken from the library, whose own form takes six times as long in the loops of a load; the tests
 * hold the two against each other over the whole range.
 * @param temperature  T [K]
 * @returns            p_ws [Pa]
 * Validity: 173.15 to 473.15 K.
 * Pitfall: multiply by the enhancement factor (about 1.0045) for air saturated at atmospheric pressure; not done here.
 * @throws OutOfModelError outside the validity.
 * Source: ASHRAE Handbook Fundamentals 2017, chapter 1, equations 5 and 6 (Hyland & Wexler 1983).
 * Worked value: 25 °C → 3169.2 Pa.
 */
export function saturationVapourPressure(temperature: number): number {
  const T = temperature;
  if (!(T >= saturationValidity.temperature.min && T <= saturationValidity.temperature.max)) {
    const { min, max } = saturationValidity.temperature;
    throw new OutOfModelError('temperature', temperature, 'K', min, max);
  }
  if (T <= TRIPLE_POINT) {
    const powers = -9.677843e-3 + T * (6.2215701e-7 + T * (2.0747825e-9 - T * 9.484024e-13));
    return Math.exp(-5.6745359e3 / T + 6.3925247 + T * powers + 4.1635019 * Math.log(T));
  }
  const powers = -4.8640239e-2 + T * (4.1764768e-5 - T * 1.4452093e-8);
  return Math.exp(-5.8002206e3 / T + 1.3914993 + T * powers + 6.5459673 * Math.log(T));
}
