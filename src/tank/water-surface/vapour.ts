// Vapour over the water and in the room at the conditions: where the driving difference of evaporation comes from.

import { saturationVapourPressure, vapourPressureFromSaturation } from '../../matter/air/index.ts';
import { latentHeat, vapourPressureFactor } from '../../matter/water/index.ts';
import type { TankConditions } from '../description.ts';
import type { AirState } from '../load.ts';

/**
 * Vapour pressure p_w over fresh or salt water.
 *     p_w = a_w p_ws
 * @param factor      a_w [-], lowering by salt
 * @param saturation  p_ws [Pa], of pure water at the water temperature
 * @returns           p_w [Pa]
 * Source: definition of the activity of water. Worked value: 0.97962, 3363.13 → 3294.6 Pa.
 */
export function waterVapourPressure(factor: number, saturation: number): number {
  return factor * saturation;
}

/** Vapour pressures and latent heat at the conditions. */
export function airState(conditions: TankConditions, salinity: number): AirState {
  const saturationWater = saturationVapourPressure(conditions.waterTemperature);
  const saturationRoom = saturationVapourPressure(conditions.roomTemperature);
  const factor = vapourPressureFactor(salinity);
  return {
    saturationWater,
    saturationRoom,
    vapourPressureFactor: factor,
    waterVapour: waterVapourPressure(factor, saturationWater),
    roomVapour: vapourPressureFromSaturation(conditions.roomRelativeHumidity, saturationRoom),
    latentHeat: latentHeat(conditions.waterTemperature),
  };
}
