// Fresh and sea water at tank temperatures and atmospheric pressure: density and thermal expansion, specific heat, latent
// heat, viscosity, conductivity, and the lowering of the vapour pressure by salt. Fits of Sharqawy, Lienhard & Zubair (Desalination and
// Water Treatment 16 (2010) 354); salinity is kg of salt per kg of sea water, 0 for fresh water. Equation numbers are from memory.

import { OutOfModelError } from '../../numerics/index.ts';

/** 0 °C in K. */
const ZERO_CELSIUS = 273.15;

/** Where the fits are used here: 0 to 100 °C (of 0 to 180), salinity 0 to 0.12 (of 0 to 0.16). */
export const waterValidity = { temperature: { min: 273.15, max: 373.15 }, salinity: { min: 0, max: 0.12 } } as const;

function requireValid(temperature: number, salinity: number): void {
  const { temperature: t, salinity: s } = waterValidity;
  if (!(temperature >= t.min && temperature <= t.max)) {
    throw new OutOfModelError('waterTemperature', temperature, 'K', t.min, t.max);
  }
  if (!(salinity >= s.min && salinity <= s.max)) throw new OutOfModelError('salinity', salinity, '1', s.min, s.max);
}

/**
 * Density ρ of fresh or sea water.
 *     ρ = (999.9 + 2.034e-2 t − 6.162e-3 t² + 2.261e-5 t³ − 4.657e-8 t⁴)
 *       + (802.0 S − 2.001 S t + 1.677e-2 S t² − 3.060e-5 S t³ − 1.613e-5 S² t²),  t in °C
 * @param temperature  T [K]
 * @param salinity     S [kg/kg]
 * @returns            ρ [kg/m³]
 * Validity: 0 to 100 °C, S 0 to 0.12. Accuracy: 0.1 % as the source states; 0.04 % from IAPWS R13-08 at 25 °C.
 * @throws OutOfModelError outside the validity.
 * Source: Sharqawy et al. 2010, equation 8.
 * Worked value: 25 °C, 0.035 → 1023.56 kg/m³.
 */
export function waterDensity(temperature: number, salinity: number): number {
  requireValid(temperature, salinity);
  const t = temperature - ZERO_CELSIUS;
  const s = salinity;
  const fresh = 999.9 + 2.034e-2 * t - 6.162e-3 * t ** 2 + 2.261e-5 * t ** 3 - 4.657e-8 * t ** 4;
  const salt = 802.0 * s - 2.001 * s * t + 1.677e-2 * s * t ** 2 - 3.06e-5 * s * t ** 3 - 1.613e-5 * s ** 2 * t ** 2;
  return fresh + salt;
}

/**
 * Specific heat c_p of fresh or sea water.
 *     c_p = 1000 (A + B T + C T² + D T³), T in K, S in g/kg:
 *     A = 5.328 − 9.76e-2 S + 4.04e-4 S²,        B = −6.913e-3 + 7.351e-4 S − 3.15e-6 S²,
 *     C = 9.6e-6 − 1.927e-6 S + 8.23e-9 S²,      D = 2.5e-9 + 1.666e-9 S − 7.125e-12 S²
 * @param temperature  T [K]
 * @param salinity     S [kg/kg] (turned into g/kg inside)
 * @returns            c_p [J/(kg K)]
 * Validity: 0 to 100 °C, S 0 to 0.12. Accuracy: 0.28 % as the source states.
 * @throws OutOfModelError outside the validity.
 * Source: Jamieson et al. 1969 as given by Sharqawy et al. 2010, equation 9 (constants from memory of the source;
 * agrees with IAPWS R13-08 to 0.03 % at 25 °C, 35 g/kg and with IAPWS-95 to 0.13 % for fresh water).
 * Worked value: 25 °C, 0.035 → 4001 J/(kg K).
 */
export function waterHeatCapacity(temperature: number, salinity: number): number {
  requireValid(temperature, salinity);
  const T = temperature;
  const s = salinity * 1000;
  const a = 5.328 - 9.76e-2 * s + 4.04e-4 * s ** 2;
  const b = -6.913e-3 + 7.351e-4 * s - 3.15e-6 * s ** 2;
  const c = 9.6e-6 - 1.927e-6 * s + 8.23e-9 * s ** 2;
  const d = 2.5e-9 + 1.666e-9 * s - 7.125e-12 * s ** 2;
  return 1000 * (a + b * T + c * T ** 2 + d * T ** 3);
}

/**
 * Latent heat of evaporation h_fg of pure water, per kg evaporated; over salt water the same value is used.
 *     h_fg = 2.501e6 − 2.369e3 t + 2.678e-1 t² − 8.103e-3 t³ − 2.079e-5 t⁴,  t in °C
 * @param temperature  T [K]
 * @returns            h_fg [J/kg]
 * Validity: 0 to 100 °C. Accuracy: 0.01 % from IAPWS-95.
 * Pitfall: do not multiply by (1 − S): that converts to "per kg of brine fed", which nobody wants here.
 * @throws OutOfModelError outside the validity.
 * Source: Sharqawy et al. 2010, equation 54 (constants from memory of the source; agree with IAPWS R6-95(2018) table 8).
 * Worked value: 26 °C → 2.4394e6 J/kg.
 */
export function latentHeat(temperature: number): number {
  requireValid(temperature, 0);
  const t = temperature - ZERO_CELSIUS;
  return 2.501e6 - 2.369e3 * t + 2.678e-1 * t ** 2 - 8.103e-3 * t ** 3 - 2.079e-5 * t ** 4;
}

/**
 * Vapour pressure over salt water relative to pure water p_sw/p_w (Raoult's law).
 *     p_sw/p_w = 1 / (1 + 0.57357 S/(1 − S))
 * @param salinity  S [kg/kg]
 * @returns         ratio [-]
 * Validity: S 0 to 0.12. Accuracy: measured activity at 35 g/kg is 0.981 to 0.982 (from memory), the formula 0.9796.
 * @throws OutOfModelError outside the validity.
 * Source: Sharqawy et al. 2010, section on vapour pressure (constant follows from the molar masses of water and sea salt).
 * Worked value: 0.035 → 0.97962.
 */
export function vapourPressureFactor(salinity: number): number {
  requireValid(waterValidity.temperature.min, salinity);
  return 1 / (1 + (0.57357 * salinity) / (1 - salinity));
}

/**
 * Dynamic viscosity μ of fresh or sea water.
 *     μ = μ_w (1 + A S + B S²),  μ_w = 4.2844e-5 + 1/(0.157 (t + 64.993)² − 91.296),
 *     A = 1.541 + 1.998e-2 t − 9.52e-5 t²,  B = 7.974 − 7.561e-2 t + 4.724e-4 t²,  t in °C
 * @param temperature  T [K]
 * @param salinity     S [kg/kg]
 * @returns            μ [Pa s]
 * Validity: 0 to 100 °C, S 0 to 0.12. Accuracy: 1.5 % as the source states.
 * @throws OutOfModelError outside the validity.
 * Source: Sharqawy et al. 2010, equations 22 and 23.
 * Worked value: 25 °C, 0.035 → 0.9588e-3 Pa s.
 */
export function waterViscosity(temperature: number, salinity: number): number {
  requireValid(temperature, salinity);
  const t = temperature - ZERO_CELSIUS;
  const s = salinity;
  const fresh = 4.2844e-5 + 1 / (0.157 * (t + 64.993) ** 2 - 91.296);
  const a = 1.541 + 1.998e-2 * t - 9.52e-5 * t ** 2;
  const b = 7.974 - 7.561e-2 * t + 4.724e-4 * t ** 2;
  return fresh * (1 + a * s + b * s ** 2);
}

/**
 * Thermal conductivity k of fresh or sea water.
 *     log10(1000 k) = log10(240 + 0.0002 s) + 0.434 (2.3 − (343.5 + 0.037 s)/T) (1 − T/(647 + 0.03 s))^0.333,  s in g/kg
 * @param temperature  T [K]
 * @param salinity     S [kg/kg] (turned into g/kg inside)
 * @returns            k [W/(m K)]
 * Validity: 0 to 100 °C, S 0 to 0.12. Accuracy: 3 % as the source states.
 * @throws OutOfModelError outside the validity.
 * Source: Jamieson & Tudhope 1970 as given by Sharqawy et al. 2010, equation 13 (constants from memory of the source).
 * Worked value: 25 °C, 0.035 → 0.609 W/(m K).
 */
export function waterConductivity(temperature: number, salinity: number): number {
  requireValid(temperature, salinity);
  const T = temperature;
  const s = salinity * 1000;
  // biome-ignore lint/suspicious/noApproximativeNumericConstant: the fit's own constant, not log10(e)
  const exponent = 0.434 * (2.3 - (343.5 + 0.037 * s) / T) * (1 - T / (647 + 0.03 * s)) ** 0.333;
  return ((240 + 0.0002 * s) * 10 ** exponent) / 1000;
}

/**
 * Thermal expansion β of fresh or sea water, the derivative of the density fit above.
 *     β = −(1/ρ) dρ/dT
 * @param temperature  T [K]
 * @param salinity     S [kg/kg]
 * @returns            β [1/K]; negative near freezing in fresh water
 * Validity: 0 to 100 °C, S 0 to 0.12. Accuracy: 4 % from IAPWS-95 at 15 to 40 °C in fresh water, 8 % from the international
 * equation of state of sea water EOS-80 at 15 to 30 °C and S 0.035; a film coefficient goes with its fourth root.
 * Pitfall: a fit of the density within 0.02 % is a poor guide to its slope below 10 °C, where β is small.
 * @throws OutOfModelError outside the validity.
 * Source: differentiated from Sharqawy et al. 2010, equation 8.
 * Worked value: 25 °C fresh → 2.6e-4 1/K.
 */
export function waterExpansion(temperature: number, salinity: number): number {
  const density = waterDensity(temperature, salinity);
  const t = temperature - ZERO_CELSIUS;
  const s = salinity;
  const fresh = 2.034e-2 - 2 * 6.162e-3 * t + 3 * 2.261e-5 * t ** 2 - 4 * 4.657e-8 * t ** 3;
  const salt = -2.001 * s + 2 * 1.677e-2 * s * t - 3 * 3.06e-5 * s * t ** 2 - 2 * 1.613e-5 * s ** 2 * t;
  return -(fresh + salt) / density;
}
