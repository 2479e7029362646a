// The open water surface: evaporation by two published methods that disagree, blended by how the surface looks, and the
// convection and long-wave radiation that go with it. The water at the surface is taken as warm as the bulk (mixed by
// the pump) and the room's walls as warm as its air. Positive is out of the tank; a humid room can condense on cold water.

import { DRY_AIR_HEAT_CAPACITY, dryAirDensity, MOLAR_MASS_RATIO } from '../../matter/air/index.ts';
import type { Surface } from '../built-tank.ts';
import { STEFAN_BOLTZMANN } from '../stack/films.ts';

/** Long-wave emissivity of water (handbooks 0.95 to 0.96, from memory). */
export const WATER_EMISSIVITY = 0.95;
/** Air speed over an indoor surface, m/s: what the handbook takes for natatoriums. */
export const INDOOR_AIR_SPEED = 0.1;

/**
 * How each look of the surface chooses between the methods: `activeShare` 0 is Shah's undisturbed water, 1 the handbook's
 * active water. `factor` is the range of `evaporationFactor` that the methods and their data support: for still water from
 * Shah's mean deviation (18 %) to 1.4, the upper end seen on quiet tanks; for rippled the two methods themselves;
 * for rough from quiet pools (Smith, Loef & Jones: 0.74 of a like figure) to their +40 %. The ends are a judgement.
 */
export const surfaceMethods: Readonly<
  Record<Surface, { activeShare: number; factor: { low: number; likely: number; high: number } }>
> = {
  still: { activeShare: 0, factor: { low: 0.82, likely: 1, high: 1.4 } },
  rippled: { activeShare: 0.5, factor: { low: 0.75, likely: 1, high: 1.25 } },
  rough: { activeShare: 1, factor: { low: 0.75, likely: 1, high: 1.4 } },
};

/**
 * Mass-transfer coefficient K_q of undisturbed water: evaporation per area and vapour pressure difference.
 *     E = max(35 ρ_w (ρ_r − ρ_w)^(1/3) (W_w − W_r), 5e-5 (p_w − p_r)) / 3600,  K_q = E / (p_w − p_r)
 *     W_w − W_r = 0.621945 p (p_w − p_r) / ((p − p_w)(p − p_r)), so K_q stays finite where p_w = p_r
 * @param waterTemperature  T_w [K], at the surface
 * @param waterVapour       p_w [Pa], over the water
 * @param roomTemperature   T_r [K]
 * @param roomVapour        p_r [Pa]
 * @param pressure          p [Pa]
 * @returns                 K_q [kg/(s m² Pa)]
 * Validity: water 7 to 94 °C, air 6 to 35 °C, 0.07 to 425 m². Accuracy: mean deviation 18 % as the source states.
 * Pitfall: ρ is kg of dry air per m³ of mixture; with the density of the mixture the result is 18 to 100 % off.
 * The second term serves air that is heavier at the surface than in the room; its 5e-5 is not confirmed.
 * Source: Shah, HVAC&R Research 8 (2002) 125; ASHRAE Transactions 120(2) (2014), SE-14-001.
 * Worked value: water 26, air 22 °C 50 %, 101325 Pa → E 0.1786 kg/(m² h).
 */
export function quietCoefficientShah2014(
  waterTemperature: number,
  waterVapour: number,
  roomTemperature: number,
  roomVapour: number,
  pressure: number,
): number {
  const waterDensity = dryAirDensity(waterTemperature, waterVapour, pressure);
  const roomDensity = dryAirDensity(roomTemperature, roomVapour, pressure);
  const lift = Math.max(0, roomDensity - waterDensity);
  const ratioPerPressure = (MOLAR_MASS_RATIO * pressure) / ((pressure - waterVapour) * (pressure - roomVapour));
  return Math.max(35 * waterDensity * Math.cbrt(lift) * ratioPerPressure, 5e-5) / 3600;
}

/**
 * Mass-transfer coefficient K_a of active water: evaporation per area and vapour pressure difference.
 *     K_a = (0.089 + 0.0782 v) / h_fg
 * @param airSpeed    v [m/s], over the surface
 * @param latentHeat  h_fg [J/kg]
 * @returns           K_a [kg/(s m² Pa)]
 * Validity: sea level, v 0 to 0.3. Pitfall: describes disturbed water (Carrier 1918): high for a quiet tank.
 * Source: ASHRAE Handbook HVAC Applications, natatoriums (kPa and kJ/kg there; the factors of 1000 cancel).
 * Worked value: water 26, air 22 °C 50 %, v 0.1 → E 0.2916 kg/(m² h).
 */
export function activeCoefficientAshrae(airSpeed: number, latentHeat: number): number {
  return (0.089 + 0.0782 * airSpeed) / latentHeat;
}

/**
 * Mass-transfer coefficient K of a surface between quiet and active.
 *     K = f (K_q + a (K_a − K_q))
 * @param quiet        K_q [kg/(s m² Pa)]
 * @param active       K_a [kg/(s m² Pa)]
 * @param activeShare  a [-], 0 still, 0.5 rippled, 1 rough
 * @param factor       f [-], the doubt of the method
 * @returns            K [kg/(s m² Pa)]
 * Source: own blend of the two methods. Worked value: E 0.1786 and 0.2916 at a 0.5 → 0.2351 kg/(m² h).
 */
export function surfaceCoefficient(quiet: number, active: number, activeShare: number, factor: number): number {
  return factor * (quiet + activeShare * (active - quiet));
}

/**
 * Evaporation m_e of a surface.
 *     m_e = K A (p_w − p_r)
 * @param coefficient  K [kg/(s m² Pa)]
 * @param area         A [m²]
 * @param waterVapour  p_w [Pa]
 * @param roomVapour   p_r [Pa]
 * @returns            m_e [kg/s]; negative where room air condenses on the water
 * Source: Dalton's law of evaporation. Worked value: 3.2e-8, 0.75 m², 3363, 1322 Pa → 4.9e-5 kg/s.
 */
export function evaporationRate(coefficient: number, area: number, waterVapour: number, roomVapour: number): number {
  return coefficient * area * (waterVapour - roomVapour);
}

/**
 * Convective coefficient h_c of a surface that evaporates with K (Bowen's ratio).
 *     h_c = K c_p p / 0.622
 * @param coefficient  K [kg/(s m² Pa)]
 * @param pressure     p [Pa]
 * @returns            h_c [W/(m² K)]
 * Accuracy: takes the Lewis number as 1 (0.86 to 0.89 in truth, about 10 % on h_c).
 * Source: Bowen 1926; γ = c_p p/(0.622 h_fg) = 67.18 Pa/K at 26 °C. Worked value: 3.2e-8, 101325 Pa → 5.24.
 */
export function surfaceConvectionCoefficient(coefficient: number, pressure: number): number {
  return (coefficient * DRY_AIR_HEAT_CAPACITY * pressure) / 0.622;
}

/**
 * Convection Q_c from the open surface.
 *     Q_c = h_c A (T_w − T_r)
 * @param coefficient       h_c [W/(m² K)]
 * @param area              A [m²]
 * @param waterTemperature  T_w [K]
 * @param roomTemperature   T_r [K]
 * @returns                 Q_c [W]
 * Source: definition of h_c. Worked value: 5.24, 0.75 m², 4 K → 15.7 W.
 */
export function surfaceConvection(
  coefficient: number,
  area: number,
  waterTemperature: number,
  roomTemperature: number,
): number {
  return coefficient * area * (waterTemperature - roomTemperature);
}

/**
 * Net long-wave radiation Q_r from the water to the room.
 *     Q_r = ε σ A (T_w⁴ − T_r⁴)
 * @param area              A [m²]
 * @param waterTemperature  T_w [K]
 * @param roomTemperature   T_r [K], of the surroundings
 * @returns                 Q_r [W]
 * Source: Stefan-Boltzmann law. Worked value: 1 m², 26 and 22 °C → 22.61 W.
 */
export function surfaceRadiation(area: number, waterTemperature: number, roomTemperature: number): number {
  return WATER_EMISSIVITY * STEFAN_BOLTZMANN * area * (waterTemperature ** 4 - roomTemperature ** 4);
}
