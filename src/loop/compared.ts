// Numbers by which loops of several refrigerants are held beside one another: lift, pressure above the air, and the
// displacement that gives the same heat. All are exact for the compressor's model, in which flow, heat and power are in
// proportion to the displacement. Leaves out: that a larger machine of the same kind is usually a little better.

import { requireFinite, requirePositive } from '../numerics/index.ts';

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
 * Displacement with which a loop would give another heat at the same states.
 *     V = V_d · Q_w / Q
 * @param displacement  V_d [m³] per revolution, > 0
 * @param heat          Q [W], what the loop gives with V_d, > 0
 * @param wanted        Q_w [W], > 0
 * @returns             V [m³] per revolution
 * Validity: same speed, same efficiencies and losses per swept volume, as the compressor's model has them.
 * @throws InputError outside these ranges
 * Source: flow, heat and power of the compressor's model are in proportion to V_d. Worked value: 6.5e-6, 250, 350 → 9.1e-6.
 */
export function displacementForHeat(displacement: number, heat: number, wanted: number): number {
  requirePositive('displacement', displacement);
  requirePositive('heat', heat);
  requirePositive('wanted', wanted);
  return (displacement * wanted) / heat;
}

/**
 * Electric power of the same compressor with another displacement, at the same states.
 *     W' = W · V / V_d
 * @param power         W [W], with V_d; finite
 * @param displacement  V_d [m³] per revolution, > 0
 * @param other         V [m³] per revolution, > 0
 * @returns             W' [W]
 * Validity and source: as displacementForHeat. Worked value: 120, 6.5e-6, 9.1e-6 → 168 W.
 * @throws InputError outside these ranges
 */
export function powerAtDisplacement(power: number, displacement: number, other: number): number {
  requireFinite('power', power);
  requirePositive('displacement', displacement);
  requirePositive('other', other);
  return (power * other) / displacement;
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
