// Numbers by which loops of several refrigerants are held beside one another: lift, pressure above the air, volume drawn in.

import { requirePositive } from '../numerics/index.ts';

/**
 * Temperature lift between the two dew temperatures.
 *     ΔT = T_c − T_e
 * @param condensing   T_c [K], > 0
 * @param evaporating  T_e [K], > 0
 * @returns            ΔT [K]; negative where condensing is the colder one
 * @throws InputError outside these ranges
 * Source: definition. Worked value: 318.15, 263.15 → 55 K.
 */
export function temperatureLift(condensing: number, evaporating: number): number {
  requirePositive('condensing', condensing);
  requirePositive('evaporating', evaporating);
  return condensing - evaporating;
}

/**
 * Pressure above the air of the place.
 *     p_g = p − p_atm
 * @param pressure     p [Pa], absolute, > 0
 * @param atmospheric  p_atm [Pa], > 0
 * @returns            p_g [Pa]; negative where air would be drawn in at a leak
 * @throws InputError outside these ranges
 * Source: definition. Worked value: 60 000, 101 325 → −41 325 Pa.
 */
export function gaugePressureOf(pressure: number, atmospheric: number): number {
  requirePositive('pressure', pressure);
  requirePositive('atmospheric', atmospheric);
  return pressure - atmospheric;
}

/**
 * Volume of gas to be drawn in for the same heat, over that of another refrigerant.
 *     v = q_v0 / q_v
 * @param first  q_v0 [J/m³], volumetric heating capacity of the refrigerant held beside, > 0
 * @param own    q_v [J/m³], > 0
 * @returns      v [-]
 * Pitfall: what is drawn in is displacement times volumetric efficiency, and that differs too.
 * @throws InputError outside these ranges
 * Source: definition. Worked value: 2.0e6, 1.25e6 → 1.6.
 */
export function relativeVolumeDrawn(first: number, own: number): number {
  requirePositive('first', first);
  requirePositive('own', own);
  return first / own;
}
