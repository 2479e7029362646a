// Wet bulb of moist air, by the open library PsychroLib (ASHRAE Handbook Fundamentals 2017, chapter 1), which is wrapped here and
// nowhere else.

import psychrolib from 'psychrolib';
import { InputError, requireNonNegative, requirePositive } from '../../numerics/index.ts';
import { humidityRatio } from './moist-air.ts';
import { saturationVapourPressure } from './saturation.ts';

psychrolib.SetUnitSystem(psychrolib.SI);

/** 0 °C in K. */
const ZERO_CELSIUS = 273.15;

/**
 * Thermodynamic wet bulb T*.
 *     W = [(2501 − 2.326 t*) W_s(t*) − 1.006 (t − t*)] / (2501 + 1.86 t − 4.186 t*), solved by bisection (over water;
 *     below 0 °C the library's form over ice)
 * @param temperature  T [K], dry bulb
 * @param ratio        W [kg/kg dry air], ≥ 0; the library raises what is below 1e-7 to 1e-7, less than 0.001 K
 * @param pressure     p [Pa], absolute
 * @returns            T* [K], to 0.001 K
 * @throws InputError if W is negative or above saturation, or p not above 0; OutOfModelError outside 173.15 to 473.15 K.
 * Source: ASHRAE Handbook Fundamentals 2017, chapter 1, equations 33 and 35, by PsychroLib.
 * Worked value: 25 °C, W 0.0098810, 101325 Pa → 17.889 °C.
 */
export function wetBulb(temperature: number, ratio: number, pressure: number): number {
  requireNonNegative('humidityRatio', ratio);
  requirePositive('pressure', pressure);
  const saturated = humidityRatio(saturationVapourPressure(temperature), pressure);
  if (ratio > saturated * (1 + 1e-9)) {
    throw new InputError('humidityRatio', ratio, `at most ${saturated}, the saturated air of this temperature`);
  }
  return psychrolib.GetTWetBulbFromHumRatio(temperature - ZERO_CELSIUS, ratio, pressure) + ZERO_CELSIUS;
}
