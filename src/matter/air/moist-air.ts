// Moist air as a mixture of ideal gases: vapour pressure, humidity ratio and relative humidity, the two densities, specific
// volume, enthalpy, pressure at altitude. Left out: the enhancement factor of real gases (about 1.0045), so a saturated
// humidity ratio stands 0.4 to 0.6 % below the handbook's tables.

import {
  InputError,
  OutOfModelError,
  requireNonNegative,
  requirePositive,
  requireWithin,
} from '../../numerics/index.ts';
import { saturationVapourPressure } from './saturation.ts';

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
 * Vapour pressure p_w from the humidity ratio, the inverse of `humidityRatio`.
 *     p_w = p W / (0.621945 + W)
 * @param ratio     W [kg/kg dry air], ≥ 0
 * @param pressure  p [Pa], absolute
 * @returns         p_w [Pa]
 * @throws InputError unless W ≥ 0 and p > 0.
 * Source: ASHRAE Handbook Fundamentals 2017, chapter 1, equation 20.
 * Worked value: 0.009881 at 101325 Pa → 1584.6 Pa.
 */
export function vapourPressureFromRatio(ratio: number, pressure: number): number {
  requireNonNegative('humidityRatio', ratio);
  requirePositive('pressure', pressure);
  return (pressure * ratio) / (MOLAR_MASS_RATIO + ratio);
}

/**
 * Relative humidity RH from the humidity ratio.
 *     RH = p_w(W) / p_ws(T)
 * @param temperature  T [K], dry bulb
 * @param ratio        W [kg/kg dry air], ≥ 0
 * @param pressure     p [Pa], absolute
 * @returns            RH [-]; above 1 for fog or for a state that cannot last, which the caller judges
 * @throws InputError unless W ≥ 0 and p > 0; OutOfModelError outside 173.15 to 473.15 K.
 * Source: ASHRAE Handbook Fundamentals 2017, chapter 1, equations 12 and 20.
 * Worked value: 25 °C, 0.009881, 101325 Pa → 0.5.
 */
export function relativeHumidityFromRatio(temperature: number, ratio: number, pressure: number): number {
  return vapourPressureFromRatio(ratio, pressure) / saturationVapourPressure(temperature);
}

/**
 * Specific volume v of moist air: m³ of mixture per kg of *dry air*.
 *     v = 287.042 T (1 + 1.607858 W) / p = 1/ρ_da
 * @param temperature  T [K]
 * @param ratio        W [kg/kg dry air], ≥ 0
 * @param pressure     p [Pa], absolute
 * @returns            v [m³/kg dry air]
 * @throws InputError unless T > 0, W ≥ 0 and p > 0.
 * Source: ASHRAE Handbook Fundamentals 2017, chapter 1, equation 26; 1.607858 = 1/0.621945.
 * Worked value: 40 °C, 0.0064008, 101325 Pa → 0.89625 m³/kg.
 */
export function moistAirVolume(temperature: number, ratio: number, pressure: number): number {
  requirePositive('temperature', temperature);
  requireNonNegative('humidityRatio', ratio);
  requirePositive('pressure', pressure);
  return (DRY_AIR_GAS_CONSTANT * temperature * (1 + ratio / MOLAR_MASS_RATIO)) / pressure;
}

/**
 * Specific heat c_pm of moist air per kg of *dry air*.
 *     c_pm = 1006 + 1860 W
 * @param ratio  W [kg/kg dry air], ≥ 0
 * @returns      c_pm [J/(kg dry air K)]
 * @throws InputError unless W ≥ 0.
 * Source: slope of ASHRAE Handbook Fundamentals 2017, chapter 1, equation 30.
 * Worked value: 0.01 → 1024.6 J/(kg K).
 */
export function moistAirHeatCapacity(ratio: number): number {
  requireNonNegative('humidityRatio', ratio);
  return DRY_AIR_HEAT_CAPACITY + VAPOUR_HEAT_CAPACITY * ratio;
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
