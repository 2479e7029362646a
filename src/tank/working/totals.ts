// The working of what a rectangular and a measured tank have in common: vapour, the sum of the paths, the net load, the
// heat capacity of the water.

import type { WorkingStep } from '../../quantities/index.ts';
import { pathSymbols } from '../formulas/totals.ts';
import type { AirState, PathName, TankLoad } from '../load.ts';
import { type ConditionInputs, type Input, step } from './steps.ts';

/** Vapour pressures and latent heat. */
export function airSteps(air: AirState, salinity: number, from: ConditionInputs): WorkingStep[] {
  return [
    step('tank.air.saturationWater', 'air.saturationVapourPressure', air.saturationWater, { T: from.water }),
    step('tank.air.vapourPressureFactor', 'water.vapourPressureFactor', air.vapourPressureFactor, {
      S: [salinity, 'tank.salinity'],
    }),
    step('tank.air.waterVapour', 'tank.waterVapour', air.waterVapour, {
      a_w: [air.vapourPressureFactor, 'tank.air.vapourPressureFactor'],
      p_ws: [air.saturationWater, 'tank.air.saturationWater'],
    }),
    step('tank.air.saturationRoom', 'air.saturationVapourPressure', air.saturationRoom, { T: from.room }),
    step('tank.air.roomVapour', 'air.vapourPressure', air.roomVapour, {
      RH: from.humidity,
      p_ws: [air.saturationRoom, 'tank.air.saturationRoom'],
    }),
    step('tank.air.latentHeat', 'water.latentHeat', air.latentHeat, { T: from.water }),
  ];
}

/** Loss and load from the paths. */
export function sumSteps(load: TankLoad): WorkingStep[] {
  const inputs = Object.entries(pathSymbols).map(([path, [symbol]]): [string, Input] => {
    const found = load.paths.find((entry) => entry.path === path);
    return [symbol, found === undefined ? [0] : [found.heat, `tank.paths.${path}`]];
  });
  return [
    step('tank.loss', 'tank.loss', load.loss, Object.fromEntries(inputs)),
    step('tank.load', 'tank.load', load.load, {
      Q_loss: [load.loss, 'tank.loss'],
      Q_pump: [load.gains.pump, 'tank.load.pumpPower'],
      Q_light: [load.gains.light, 'tank.load.lightPower'],
    }),
  ];
}

/** Density, specific heat and heat capacity of the water. */
export function heatCapacitySteps(
  load: TankLoad,
  density: number,
  specificHeat: number,
  S: Input,
  from: ConditionInputs,
  volumeFrom: string,
): WorkingStep[] {
  return [
    step('tank.waterDensity', 'water.density', density, { T: from.water, S }),
    step('tank.waterHeatCapacity', 'water.heatCapacity', specificHeat, { T: from.water, S }),
    step('tank.heatCapacity', 'tank.heatCapacity', load.heatCapacity, {
      V: [load.waterVolume, volumeFrom],
      rho: [density, 'tank.waterDensity'],
      c_p: [specificHeat, 'tank.waterHeatCapacity'],
    }),
  ];
}

/** Heat of one path, 0 where the tank has none. */
export function heatOf(load: TankLoad, path: PathName): number {
  return load.paths.find((entry) => entry.path === path)?.heat ?? 0;
}
