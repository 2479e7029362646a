// Moist air as a mixture of ideal gases: vapour pressure, humidity ratio, the two densities, enthalpy, wet bulb, dew
// point, pressure at altitude. The saturation pressure, the wet bulb and the dew point come from the open library
// PsychroLib (ASHRAE Handbook Fundamentals 2017, chapter 1). Left out: the enhancement factor of real gases (about
// 1.0045), so a saturated humidity ratio stands 0.4 to 0.6 % below the handbook's tables.

import psychrolib from 'psychrolib';
import {
  InputError,
  OutOfModelError,
  requireNonNegative,
  requirePositive,
  requireWithin,
} from '../../numerics/index.ts';

psychrolib.SetUnitSystem(psychrolib.SI);

/** 0 °C in K. */
const ZERO_CELSIUS = 273.15;
/** Gas constant of dry air, J/(kg K); ASHRAE Handbook Fundamentals 2017, chapter 1. */
export const DRY_AIR_GAS_CONSTANT = 287.042;
/** Molar mass of water over molar mass of dry air; ASHRAE Handbook Fundamentals 2017, chapter 1. */
export const MOLAR_MASS_RATIO = 0.621945;
/** Gas constant of water vapour, J/(kg K): the two above, so that all forms agree with each other. */
export const VAPOUR_GAS_CONSTANT = DRY_AIR_GAS_CONSTANT / MOLAR_MASS_RATIO;
/** Specific heat of dry air, J/(kg K); ASHRAE Handbook Fundamentals 2017, chapter 1. */
export const DRY_AIR_HEAT_CAPACITY = 1006;
/** Specific heat of water vapour, J/(kg K); ASHRAE Handbook Fundamentals 2017, chapter 1. */
export const VAPOUR_HEAT_CAPACITY = 1860;

/** Where the saturation-pressure equations were made: −100 to 200 °C, in K. */
export const saturationValidity = { temperature: { min: 173.15, max: 473.15 } } as const;

/**
 * Saturation vapour pressure p_ws of pure water (over ice at and below the triple point).
 *     ln p_ws = C8/T + C9 + C10 T + C11 T² + C12 T³ + C13 ln T   (over water)
 * @param temperature  T [K]
 * @returns            p_ws [Pa]
 * Validity: 173.15 to 473.15 K.
 * Pitfall: multiply by the enhancement factor (about 1.0045) for air saturated at atmospheric pressure; not done here.
 * @throws OutOfModelError outside the validity.
 * Source: ASHRAE Handbook Fundamentals 2017, chapter 1, equations 5 and 6 (Hyland & Wexler 1983), by PsychroLib.
 * Worked value: 25 °C → 3169.2 Pa.
 */
export function saturationVapourPressure(temperature: number): number {
  const { min, max } = saturationValidity.temperature;
  if (!(temperature >= min && temperature <= max)) {
    throw new OutOfModelError('temperature', temperature, 'K', min, max);
  }
  return psychrolib.GetSatVapPres(temperature - ZERO_CELSIUS);
}

/**
 * Vapour pressure p_w of moist air from its relative humidity.
 *     p_w = RH p_ws(T)
 * @param temperature       T [K], dry bulb
 * @param relativeHumidity  RH [-], 0 to 1
 * @returns                 p_w [Pa]
 * @throws InputError if RH is outside 0 to 1; OutOfModelError outside 173.15 to 473.15 K.
 * Source: ASHRAE Handbook Fundamentals 2017, chapter 1.
 * Worked value: 22 °C, 0.5 → 1322.4 Pa.
 */
export function vapourPressure(temperature: number, relativeHumidity: number): number {
  return vapourPressureFromSaturation(relativeHumidity, saturationVapourPressure(temperature));
}

/**
 * Vapour pressure p_w from a saturation pressure already known; see `vapourPressure`.
 *     p_w = RH p_ws
 * @param relativeHumidity  RH [-], 0 to 1
 * @param saturation        p_ws [Pa], > 0
 * @returns                 p_w [Pa]
 * @throws InputError if RH is outside 0 to 1 or p_ws is not above 0.
 * Source: ASHRAE Handbook Fundamentals 2017, chapter 1.
 * Worked value: 0.5, 2644.8 Pa → 1322.4 Pa.
 */
export function vapourPressureFromSaturation(relativeHumidity: number, saturation: number): number {
  requireWithin('relativeHumidity', relativeHumidity, 0, 1);
  requirePositive('saturationPressure', saturation);
  return relativeHumidity * saturation;
}

/**
 * Humidity ratio W, kg of vapour per kg of dry air.
 *     W = 0.621945 p_w / (p − p_w)
 * @param partialPressure  p_w [Pa]
 * @param pressure         p [Pa], absolute
 * @returns                W [kg/kg dry air]
 * @throws InputError unless 0 ≤ p_w < p.
 * Source: ASHRAE Handbook Fundamentals 2017, chapter 1, equation 20. Written out rather than taken from the library,
 * which raises every value below 1e-7 to 1e-7.
 * Worked value: 1584.6 Pa at 101325 Pa → 0.009881.
 */
export function humidityRatio(partialPressure: number, pressure: number): number {
  requirePositive('pressure', pressure);
  requireNonNegative('vapourPressure', partialPressure);
  if (partialPressure >= pressure) {
    throw new InputError('vapourPressure', partialPressure, `less than the total pressure, ${pressure} Pa`);
  }
  return (MOLAR_MASS_RATIO * partialPressure) / (pressure - partialPressure);
}

/**
 * Density of moist air on the dry-air basis ρ_da: kg of *dry air* in one m³ of mixture.
 *     ρ_da = (p − p_w) / (287.042 T)
 * @param temperature      T [K]
 * @param partialPressure  p_w [Pa]
 * @param pressure         p [Pa], absolute
 * @returns                ρ_da [kg dry air/m³]
 * Pitfall: not the density of the mixture; see `moistAirDensity`.
 * @throws InputError unless T > 0 and 0 ≤ p_w < p.
 * Source: ASHRAE Handbook Fundamentals 2017, chapter 1.
 * Worked value: 28 °C saturated, 101325 Pa → 1.1285 kg/m³.
 */
export function dryAirDensity(temperature: number, partialPressure: number, pressure: number): number {
  requirePositive('temperature', temperature);
  requireNonNegative('vapourPressure', partialPressure);
  if (!(partialPressure < pressure)) {
    throw new InputError('vapourPressure', partialPressure, `less than the total pressure, ${pressure} Pa`);
  }
  return (pressure - partialPressure) / (DRY_AIR_GAS_CONSTANT * temperature);
}

/**
 * Density of moist air ρ: kg of *mixture* in one m³ of mixture.
 *     ρ = ρ_da (1 + W)
 * @param temperature      T [K]
 * @param partialPressure  p_w [Pa]
 * @param pressure         p [Pa], absolute
 * @returns                ρ [kg/m³]
 * @throws InputError unless T > 0 and 0 ≤ p_w < p.
 * Source: ASHRAE Handbook Fundamentals 2017, chapter 1.
 * Worked value: 25 °C, 50 %, 101325 Pa → 1.1769 kg/m³.
 */
export function moistAirDensity(temperature: number, partialPressure: number, pressure: number): number {
  return dryAirDensity(temperature, partialPressure, pressure) * (1 + humidityRatio(partialPressure, pressure));
}

/**
 * Density of the vapour alone ρ_v (absolute humidity).
 *     ρ_v = p_w / (R_v T),  R_v = 287.042/0.621945
 * @param temperature      T [K]
 * @param partialPressure  p_w [Pa]
 * @returns                ρ_v [kg/m³]
 * @throws InputError unless T > 0 and p_w ≥ 0.
 * Source: ideal gas.
 * Worked value: 26 °C saturated → 0.02436 kg/m³.
 */
export function vapourDensity(temperature: number, partialPressure: number): number {
  requirePositive('temperature', temperature);
  requireNonNegative('vapourPressure', partialPressure);
  return partialPressure / (VAPOUR_GAS_CONSTANT * temperature);
}

/**
 * Virtual temperature T_v: the temperature of dry air as dense as this moist air.
 *     T_v = T / (1 − (1 − 0.621945) p_w/p)
 * @param temperature      T [K]
 * @param partialPressure  p_w [Pa]
 * @param pressure         p [Pa], absolute
 * @returns                T_v [K]
 * @throws InputError unless T > 0 and 0 ≤ p_w < p.
 * Source: ideal gas mixture.
 * Worked value: 26 °C saturated, 101325 Pa → 302.95 K.
 */
export function virtualTemperature(temperature: number, partialPressure: number, pressure: number): number {
  requirePositive('temperature', temperature);
  requireNonNegative('vapourPressure', partialPressure);
  if (!(partialPressure < pressure)) {
    throw new InputError('vapourPressure', partialPressure, `less than the total pressure, ${pressure} Pa`);
  }
  return temperature / (1 - (1 - MOLAR_MASS_RATIO) * (partialPressure / pressure));
}

/**
 * Enthalpy h of moist air per kg of *dry air*; zero for dry air at 0 °C and liquid water at 0 °C.
 *     h = 1006 t + W (2501000 + 1860 t),  t = T − 273.15
 * @param temperature  T [K], dry bulb
 * @param ratio        W [kg/kg dry air]
 * @returns            h [J/kg dry air]
 * @throws InputError unless T > 0 and W ≥ 0.
 * Source: ASHRAE Handbook Fundamentals 2017, chapter 1, equation 30.
 * Worked value: 30 °C, W 0.02 → 81316 J/kg.
 */
export function moistAirEnthalpy(temperature: number, ratio: number): number {
  requirePositive('temperature', temperature);
  requireNonNegative('humidityRatio', ratio);
  const celsius = temperature - ZERO_CELSIUS;
  return DRY_AIR_HEAT_CAPACITY * celsius + ratio * (2.501e6 + VAPOUR_HEAT_CAPACITY * celsius);
}

/**
 * Dew point T_d: where air of this vapour pressure begins to condense (frost point below 0 °C).
 *     p_ws(T_d) = p_w, solved by the library's Newton iteration
 * @param temperature      T [K], dry bulb (the result never exceeds it)
 * @param partialPressure  p_w [Pa], > 0
 * @returns                T_d [K], to 0.001 K
 * @throws InputError if p_w is not above 0; OutOfModelError if the dew point is below −100 °C.
 * Source: ASHRAE Handbook Fundamentals 2017, chapter 1, by PsychroLib.
 * Worked value: 25 °C, 50 % → 13.864 °C.
 */
export function dewPoint(temperature: number, partialPressure: number): number {
  requirePositive('vapourPressure', partialPressure);
  const lowest = saturationVapourPressure(saturationValidity.temperature.min);
  const highest = saturationVapourPressure(saturationValidity.temperature.max);
  if (partialPressure < lowest || partialPressure > highest) {
    throw new OutOfModelError('vapourPressure', partialPressure, 'Pa', lowest, highest);
  }
  return psychrolib.GetTDewPointFromVapPres(temperature - ZERO_CELSIUS, partialPressure) + ZERO_CELSIUS;
}

/**
 * Thermodynamic wet bulb T*.
 *     W = [(2501 − 2.326 t*) W_s(t*) − 1.006 (t − t*)] / (2501 + 1.86 t − 4.186 t*), solved by bisection (over water)
 * @param temperature  T [K], dry bulb
 * @param ratio        W [kg/kg dry air], > 0
 * @param pressure     p [Pa], absolute
 * @returns            T* [K], to 0.001 K
 * @throws InputError if W or p is not above 0; OutOfModelError outside 173.15 to 473.15 K.
 * Source: ASHRAE Handbook Fundamentals 2017, chapter 1, equations 33 and 35, by PsychroLib.
 * Worked value: 25 °C, W 0.0098810, 101325 Pa → 17.889 °C.
 */
export function wetBulb(temperature: number, ratio: number, pressure: number): number {
  requirePositive('humidityRatio', ratio);
  requirePositive('pressure', pressure);
  const saturated = humidityRatio(saturationVapourPressure(temperature), pressure);
  if (ratio > saturated * (1 + 1e-9)) {
    throw new InputError('humidityRatio', ratio, `at most ${saturated}, the saturated air of this temperature`);
  }
  return psychrolib.GetTWetBulbFromHumRatio(temperature - ZERO_CELSIUS, ratio, pressure) + ZERO_CELSIUS;
}

/** Where the standard atmosphere's formula holds, in m. */
export const altitudeValidity = { altitude: { min: -5000, max: 11000 } } as const;

/**
 * Pressure p of the standard atmosphere at an altitude.
 *     p = 101325 (1 − 2.25577e-5 z)^5.2559
 * @param altitude  z [m] above sea level
 * @returns         p [Pa]
 * Validity: −5000 to 11000 m. Weather moves the real pressure by ±3 %.
 * @throws OutOfModelError outside the validity.
 * Source: ASHRAE Handbook Fundamentals 2017, chapter 1, equation 3.
 * Worked value: 1000 m → 89874.5 Pa.
 */
export function pressureAtAltitude(altitude: number): number {
  const { min, max } = altitudeValidity.altitude;
  if (!(altitude >= min && altitude <= max)) throw new OutOfModelError('altitude', altitude, 'm', min, max);
  return 101325 * (1 - 2.25577e-5 * altitude) ** 5.2559;
}
