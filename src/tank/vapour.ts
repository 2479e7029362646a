// Vapour over the water and in the room at the conditions: where the driving difference of evaporation comes from.

import { saturationVapourPressure, vapourPressureFromSaturation } from '../matter/air/index.ts';
import { latentHeat, vapourPressureFactor } from '../matter/water/index.ts';
import type { TankConditions } from './description.ts';
import type { AirState } from './load.ts';

/** Vapour pressures and latent heat at the conditions. */
export function airState(conditions: TankConditions, salinity: number): AirState {
  const saturationWater = saturationVapourPressure(conditions.waterTemperature);
  const saturationRoom = saturationVapourPressure(conditions.roomTemperature);
  const factor = vapourPressureFactor(salinity);
  return {
    saturationWater,
    saturationRoom,
    vapourPressureFactor: factor,
    waterVapour: factor * saturationWater,
    roomVapour: vapourPressureFromSaturation(conditions.roomRelativeHumidity, saturationRoom),
    latentHeat: latentHeat(conditions.waterTemperature),
  };
}
