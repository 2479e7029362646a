// Transport properties of air near room temperature: viscosity, thermal conductivity, diffusivity of water vapour.
// Dry-air formulas; at 30 °C saturated the vapour changes them by about 1 %, which is left out.

import { requirePositive } from '../../numerics/index.ts';

/**
 * Dynamic viscosity μ of dry air (Sutherland's formula).
 *     μ = 1.458e-6 T^1.5 / (T + 110.4)
 * @param temperature  T [K]
 * @returns            μ [Pa s]
 * Validity: 200 to 600 K, low pressure.
 * @throws InputError unless T > 0.
 * Source: U.S. Standard Atmosphere 1976, equation 51 (constants from memory of the source).
 * Worked value: 25 °C → 1.837e-5 Pa s.
 */
export function airViscosity(temperature: number): number {
  requirePositive('temperature', temperature);
  return (1.458e-6 * temperature * Math.sqrt(temperature)) / (temperature + 110.4);
}

/**
 * Thermal conductivity k of dry air.
 *     k = 2.64638e-3 T^1.5 / (T + 245.4 · 10^(−12/T))
 * @param temperature  T [K]
 * @returns            k [W/(m K)]
 * Validity: 200 to 600 K, low pressure.
 * @throws InputError unless T > 0.
 * Source: U.S. Standard Atmosphere 1976, equation 53 (constants from memory of the source).
 * Worked value: 25 °C → 0.02611 W/(m K).
 */
export function airConductivity(temperature: number): number {
  requirePositive('temperature', temperature);
  return (2.64638e-3 * temperature * Math.sqrt(temperature)) / (temperature + 245.4 * 10 ** (-12 / temperature));
}

/**
 * Diffusivity D of water vapour in air.
 *     D = 1.87e-10 T^2.072 / (p/101325)
 * @param temperature  T [K]
 * @param pressure     p [Pa], absolute
 * @returns            D [m²/s]
 * Validity: 282 to 450 K.
 * @throws InputError unless T > 0 and p > 0.
 * Source: Marrero & Mason, J. Phys. Chem. Ref. Data 1 (1972) 3 (constants from memory of the source).
 * Worked value: 298 K, 101325 Pa → 2.5e-5 m²/s.
 */
export function vapourDiffusivity(temperature: number, pressure: number): number {
  requirePositive('temperature', temperature);
  requirePositive('pressure', pressure);
  return (1.87e-10 * temperature ** 2.072) / (pressure / 101325);
}
