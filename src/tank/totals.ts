// Sums and simple relations of a tank's load: net heat, heat capacity, what reaches the room.

import { tankValidity } from './description.ts';
import type { HeatPath } from './load.ts';

/**
 * Net heating needed.
 *     load = loss − pump − light − ultraviolet
 * @param loss         heat leaving by all paths [W]
 * @param pump         heat of the pumps that stays in the water [W]
 * @param light        heat of the lights that stays in the water [W]
 * @param ultraviolet  heat of the ultraviolet lamp that stays in the water [W]
 * @returns            [W], negative where the tank would have to be cooled
 * Source: energy balance. Worked value: 334 − 9 − 0 − 0 → 325 W.
 */
export function netLoad(loss: number, pump: number, light: number, ultraviolet: number): number {
  return loss - pump - light - ultraviolet;
}

/**
 * Heat capacity of the water.
 *     C = V ρ c_p
 * @param volume        V [m³]
 * @param density       ρ [kg/m³]
 * @param specificHeat  c_p [J/(kg K)]
 * @returns             C [J/K], of the water alone
 * Source: definition. Worked value: 0.2 m³ fresh at 26 °C → 8.34e5 J/K.
 */
export function heatCapacity(volume: number, density: number, specificHeat: number): number {
  return volume * density * specificHeat;
}

/**
 * Time in which the water cools by some kelvins while nothing heats it.
 *     t = C ΔT / Q̇
 * @param capacity    C [J/K]
 * @param difference  ΔT [K], small against the temperature difference to the room
 * @param load        Q̇ [W], heat the tank needs, > 0
 * @returns           t [s]
 * Validity: the load does not fall noticeably over so small a change. Source: definition of heat capacity.
 * Worked value: 8.34e5 J/K, 1 K, 120 W → 6950 s.
 */
export function coolingTime(capacity: number, difference: number, load: number): number {
  return (capacity * difference) / load;
}

/** Sum of several parts of one quantity: heat [W], vapour [kg/s], conductance [W/K]. */
export function sumOfParts(parts: readonly number[]): number {
  return parts.reduce((sum, part) => sum + part, 0);
}

/** Sum of the paths' heat [W]. */
export function sumOfPaths(paths: readonly HeatPath[]): number {
  return paths.reduce((sum, path) => sum + path.heat, 0);
}

/** Sensible heat that reaches the room [W]. */
export function sensibleToRoom(paths: readonly HeatPath[]): number {
  return sumOfPaths(paths.filter(({ kind, to }) => kind === 'sensible' && to === 'room'));
}

/** Heat that reaches the room as vapour [W]. */
export function latentToRoom(paths: readonly HeatPath[]): number {
  return sumOfPaths(paths.filter(({ kind, to }) => kind === 'latent' && to === 'room'));
}

/** Heat that ends outdoors, in the ground and in fresh water [W]. */
export function lostElsewhere(paths: readonly HeatPath[]): number {
  return sumOfPaths(paths.filter(({ to }) => to !== 'room'));
}

/**
 * Water lost as vapour.
 *     m_e = m_s + m_b
 * @param surface  m_s [kg/s], from the open surface; negative where the room's vapour condenses on it
 * @param bubbles  m_b [kg/s], into air blown through the water
 * @returns        m_e [kg/s]
 * Source: mass balance. Worked value: 5e-5 + 2.6e-6 → 5.26e-5 kg/s.
 */
export function waterLost(surface: number, bubbles: number): number {
  return surface + bubbles;
}

/**
 * Conductance of a panel.
 *     H = A U
 * @param area           A [m²]
 * @param transmittance  U [W/(m² K)]
 * @returns              H [W/K]
 * Source: definition. Worked value: 0.045, 6 → 0.27 W/K.
 */
export function conductance(area: number, transmittance: number): number {
  return area * transmittance;
}

/** Conductance of several panels together [W/K]. */
export function sumOfConductances(
  panels: readonly { readonly area: number; readonly transmittance: number }[],
): number {
  return sumOfParts(panels.map(({ area, transmittance }) => conductance(area, transmittance)));
}

/**
 * Change of the loss per kelvin of water temperature, from two waters a little apart.
 *     UA = (Q_2 − Q_1) / ΔT
 * @param warmer      Q_2 [W], loss with the warmer water
 * @param cooler      Q_1 [W], loss with the cooler water
 * @param difference  ΔT [K] between the two
 * @returns           UA [W/K]
 * Source: definition of a derivative. Worked value: 340, 320 W, 0.5 K → 40 W/K.
 */
export function lossPerKelvin(warmer: number, cooler: number, difference: number): number {
  return (warmer - cooler) / difference;
}

/** Step of water temperature over which the change of the loss is taken, K: evaporation bends the loss by 0.3 % over it. */
const CONDUCTANCE_STEP = 0.1;

/** Two waters between which the change of the loss at T_w [K] is taken: T_w itself, and one beside it inside the model. */
export function watersBeside(waterTemperature: number): { readonly cooler: number; readonly warmer: number } {
  const warmer = waterTemperature + CONDUCTANCE_STEP;
  return warmer <= tankValidity.waterTemperature.max
    ? { cooler: waterTemperature, warmer }
    : { cooler: waterTemperature - CONDUCTANCE_STEP, warmer: waterTemperature };
}
