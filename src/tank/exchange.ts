// What passes in and out with vapour, air and water: latent heat, air drawn through the water, make-up water, water changes.
// All signed.

import { DRY_AIR_HEAT_CAPACITY, VAPOUR_HEAT_CAPACITY } from '../matter/air/index.ts';

/**
 * Heat Q_e that vapour takes from the water.
 *     Q_e = m_e h_fg
 * @param evaporation  m_e [kg/s]
 * @param latentHeat   h_fg [J/kg], at the water temperature
 * @returns            Q_e [W]
 * Source: definition. Worked value: 5e-5 kg/s, 2.4394e6 J/kg → 122 W.
 */
export function evaporationHeat(evaporation: number, latentHeat: number): number {
  return evaporation * latentHeat;
}

/**
 * Vapour m_e that a latent heat belongs to.
 *     m_e = Q_e / h_fg
 * @param heat        Q_e [W]
 * @param latentHeat  h_fg [J/kg], at the water temperature
 * @returns           m_e [kg/s]
 * Source: definition, inverse of the heat of evaporation. Worked value: 122 W, 2.4394e6 J/kg → 5e-5 kg/s.
 */
export function evaporationFromHeat(heat: number, latentHeat: number): number {
  return heat / latentHeat;
}

/**
 * Dry air m_da blown through the water.
 *     m_da = V ρ_da
 * @param flow     V [m³/s], at room state
 * @param density  ρ_da [kg dry air/m³] of the room
 * @returns        m_da [kg/s]
 * Source: definition. Worked value: 10 L/min of 22 °C 50 % → 1.968e-4 kg/s.
 */
export function blownDryAir(flow: number, density: number): number {
  return flow * density;
}

/**
 * Evaporation m_b into air blown through the water, which leaves saturated.
 *     m_b = m_da (W_s − W_r)
 * @param dryAirFlow  m_da [kg/s]
 * @param saturated   W_s [kg/kg], at the water's vapour pressure
 * @param room        W_r [kg/kg]
 * @returns           m_b [kg/s]
 * Source: mass balance. Worked value: 10 L/min of 22 °C 50 % through 26 °C → 0.223 kg/day.
 */
export function airStoneEvaporation(dryAirFlow: number, saturated: number, room: number): number {
  return dryAirFlow * (saturated - room);
}

/**
 * Sensible heat Q_b of air blown through the water, which leaves as warm as the water.
 *     Q_b = m_da (1006 + 1860 W_r) (T_w − T_r)
 * @param dryAirFlow  m_da [kg/s]
 * @param room        W_r [kg/kg]
 * @param water       T_w [K]
 * @param air         T_r [K]
 * @returns           Q_b [W]
 * Source: energy balance. Worked value: 10 L/min, 4 K → 0.80 W.
 */
export function airStoneHeat(dryAirFlow: number, room: number, water: number, air: number): number {
  const heatCapacity = DRY_AIR_HEAT_CAPACITY + VAPOUR_HEAT_CAPACITY * room;
  return dryAirFlow * heatCapacity * (water - air);
}

/**
 * Heat Q_m that warms the make-up water.
 *     Q_m = m_e c_p (T_w − T_m)
 * @param evaporation    m_e [kg/s]
 * @param heatCapacity   c_p [J/(kg K)]
 * @param water          T_w [K]
 * @param makeUp         T_m [K], at which the make-up water comes: from the room or from the main
 * @returns              Q_m [W]
 * Source: energy balance. Worked value: 5e-5 kg/s, 4181, 7 K → 1.46 W.
 */
export function makeUpHeat(evaporation: number, heatCapacity: number, water: number, makeUp: number): number {
  return evaporation * heatCapacity * (water - makeUp);
}

/**
 * Heat Q_x that warms the fresh water of water changes, as a mean over time.
 *     Q_x = V ρ c_p (T_w − T_f)
 * @param flow          V [m³/s], water changed over the time between two changes
 * @param density       ρ [kg/m³]
 * @param heatCapacity  c_p [J/(kg K)]
 * @param water         T_w [K], at which the outgoing water leaves
 * @param fresh         T_f [K], at which the new water comes
 * @returns             Q_x [W]
 * Pitfall: a mean. On the day of a change the heater needs all of it at once, or the tank cools by V t/V_tank of the difference.
 * Source: energy balance. Worked value: 40 L a week of sea water at 25 over 10 °C → 4.1 W.
 */
export function waterChangeHeat(
  flow: number,
  density: number,
  heatCapacity: number,
  water: number,
  fresh: number,
): number {
  return flow * density * heatCapacity * (water - fresh);
}
