// The working of what a built and a measured tank have in common: vapour, the sum of the paths, the net load, the
// heat capacity of the water.

import { type StepInput, type WorkingStep, workingStep } from '../../quantities/index.ts';
import type { AirState, HeatPath, TankLoad } from '../load.ts';
import { coolingTime, sumOfPaths } from '../totals.ts';
import type { ConditionInputs } from './steps.ts';
import { sumOf } from './sums.ts';

/** Vapour pressures and latent heat. */
export function airSteps(air: AirState, salinity: number, from: ConditionInputs): WorkingStep[] {
  return [
    workingStep('tank.air.saturationWater', 'air.saturationVapourPressure', air.saturationWater, { T: from.water }),
    workingStep('tank.air.vapourPressureFactor', 'water.vapourPressureFactor', air.vapourPressureFactor, {
      S: [salinity, 'tank.salinity'],
    }),
    workingStep('tank.air.waterVapour', 'tank.waterVapour', air.waterVapour, {
      a_w: [air.vapourPressureFactor, 'tank.air.vapourPressureFactor'],
      p_ws: [air.saturationWater, 'tank.air.saturationWater'],
    }),
    workingStep('tank.air.saturationRoom', 'air.saturationVapourPressure', air.saturationRoom, { T: from.room }),
    workingStep('tank.air.roomVapour', 'air.vapourPressure', air.roomVapour, {
      RH: from.humidity,
      p_ws: [air.saturationRoom, 'tank.air.saturationRoom'],
    }),
    workingStep('tank.air.latentHeat', 'water.latentHeat', air.latentHeat, { T: from.water }),
  ];
}

/** Loss, what of it the room receives, and load from the paths. */
export function sumSteps(load: TankLoad, from: ConditionInputs): WorkingStep[] {
  const toRoom = (kind: HeatPath['kind']) => load.paths.filter((path) => path.kind === kind && path.to === 'room');
  return [
    ...heatSum('tank.loss', load.paths),
    ...heatSum('tank.sensibleToRoom', toRoom('sensible')),
    ...heatSum('tank.latentToRoom', toRoom('latent')),
    workingStep('tank.load', 'tank.load', load.load, {
      Q_loss: [load.loss, 'tank.loss'],
      Q_pump: [load.gains.pump, from.pumpHeat],
      Q_light: [load.gains.light, from.lightHeat],
      Q_ultraviolet: [load.gains.ultraviolet, from.ultravioletHeat],
    }),
  ];
}

/** The sum of these paths. */
function heatSum(result: string, paths: readonly HeatPath[]): readonly WorkingStep[] {
  const parts = paths.map(({ path, heat }): StepInput => [heat, `tank.paths.${path}`]);
  return sumOf(result, 'heat', parts, sumOfPaths(paths)).steps;
}

/** [K] */
const oneKelvin = 1;

/** Density, specific heat, heat capacity of the water, and how fast it cools. */
export function heatCapacitySteps(
  load: TankLoad,
  density: number,
  specificHeat: number,
  S: StepInput,
  from: ConditionInputs,
  volumeFrom: string,
): WorkingStep[] {
  return [
    workingStep('tank.waterDensity', 'water.density', density, { T: from.water, S }),
    workingStep('tank.waterHeatCapacity', 'water.heatCapacity', specificHeat, { T: from.water, S }),
    workingStep('tank.heatCapacity', 'tank.heatCapacity', load.heatCapacity, {
      V: [load.waterVolume, volumeFrom],
      rho: [density, 'tank.waterDensity'],
      c_p: [specificHeat, 'tank.waterHeatCapacity'],
    }),
    ...(load.load > 0 ? [coolingStep(load)] : []),
  ];
}

/** How long the water takes to cool by one kelvin; without an end where it needs no heat. */
function coolingStep({ heatCapacity, load }: TankLoad): WorkingStep {
  return workingStep('tank.timePerKelvin', 'tank.coolingTime', coolingTime(heatCapacity, oneKelvin, load), {
    C: [heatCapacity, 'tank.heatCapacity'],
    dT: [oneKelvin],
    Q_load: [load, 'tank.load'],
  });
}

/** Heat of one path, 0 where the tank has none. */
export function heatOf(load: TankLoad, path: string): number {
  return load.paths.find((entry) => entry.path === path)?.heat ?? 0;
}
