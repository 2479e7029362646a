// What was measured on pools: undisturbed water evaporates three quarters of the handbook's figure, used water more than that;
// and how much the moving air of a fan or a draft adds to quiet water.

import { activeCoefficientAshrae, INDOOR_AIR_SPEED } from './surface.ts';

/** Undisturbed pools over the handbook's figure: Smith, Löf & Jones, ASHRAE Transactions 1993 (read in summaries). */
export const QUIET_POOL_SHARE = 0.74;
/** Used pools over undisturbed ones, the upper end of their +40 to 70 %: the same authors, 1998 (read in summaries). */
export const USED_POOL_RATIO = 1.7;

/**
 * Mass-transfer coefficient K_s of undisturbed pools: evaporation per area and vapour pressure difference.
 *     K_s = 0.74 K_a
 * @param active  K_a [kg/(s m² Pa)], the handbook's at the same air speed
 * @returns       K_s [kg/(s m² Pa)]
 * Validity: indoor and outdoor pools. Their own constants, 0.0885 + 0.0779 v in SI, are the handbook's within 0.6 %, which is used.
 * Source: Smith, Löf & Jones, ASHRAE Transactions 99 (1993) (read in summaries). Worked value: 26 °C over 22 °C 50 %, v 0 → E 0.198.
 */
export function quietCoefficientSmith1993(active: number): number {
  return QUIET_POOL_SHARE * active;
}

/**
 * Mass-transfer coefficient K_v of quiet water under air that moves faster than in a still room.
 *     K_v = K_q + 0.74 · 0.0782 max(0, v − 0.1) / h_fg
 * @param quiet       K_q [kg/(s m² Pa)], in still room air
 * @param airSpeed    v [m/s], over the surface
 * @param latentHeat  h_fg [J/kg]
 * @returns           K_v [kg/(s m² Pa)]; K_q up to 0.1 m/s
 * Validity: v up to about 2 m/s. Own simplification: the wind's term as Smith, Löf & Jones measured it on undisturbed pools, on top
 * of natural convection.
 * Source: Smith, Löf & Jones, ASHRAE Transactions 99 (1993) (read in summaries). Worked value: 2.43e-8, 0.3 m/s, 2.4394e6 → 2.90e-8.
 */
export function quietInMovingAir(quiet: number, airSpeed: number, latentHeat: number): number {
  const still = activeCoefficientAshrae(INDOOR_AIR_SPEED, latentHeat);
  const moving = activeCoefficientAshrae(Math.max(INDOOR_AIR_SPEED, airSpeed), latentHeat);
  return quiet + QUIET_POOL_SHARE * (moving - still);
}
