// The working of what a rectangular and a measured tank have in common: vapour, the sum of the paths, the net load, the
// heat capacity of the water.

import { type StepInput, type WorkingStep, workingStep } from '../../quantities/index.ts';
import { latentSymbols, pathSymbols, sensibleSymbols } from '../formulas/paths.ts';
import { type AirState, coolingTime, type PathName, type TankLoad } from '../load.ts';
import type { ConditionInputs } from './steps.ts';

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
  const inputs = Object.fromEntries(
    Object.entries(pathSymbols).map(([path, [symbol]]): [string, StepInput] => {
      const found = load.paths.find((entry) => entry.path === path);
      return [symbol, found === undefined ? [0] : [found.heat, `tank.paths.${path}`]];
    }),
  );
  const only = (symbols: readonly string[]) => Object.fromEntries(symbols.map((symbol) => [symbol, inputs[symbol]!]));
  return [
    workingStep('tank.loss', 'tank.loss', load.loss, inputs),
    workingStep('tank.sensibleToRoom', 'tank.sensibleToRoom', load.sensibleToRoom, only(sensibleSymbols)),
    workingStep('tank.latentToRoom', 'tank.latentToRoom', load.latentToRoom, only(latentSymbols)),
    workingStep('tank.load', 'tank.load', load.load, {
      Q_loss: [load.loss, 'tank.loss'],
      Q_pump: [load.gains.pump, from.pumpHeat],
      Q_light: [load.gains.light, from.lightHeat],
    }),
  ];
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
export function heatOf(load: TankLoad, path: PathName): number {
  return load.paths.find((entry) => entry.path === path)?.heat ?? 0;
}
