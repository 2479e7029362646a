// The working of a measured tank: mean power, the shares of the loss then, the same carried to the conditions asked for.

import { waterDensity, waterHeatCapacity } from '../../matter/water/index.ts';
import { type StepInput, type WorkingStep, workingStep } from '../../quantities/index.ts';
import type { MeasuredTank, TankConditions } from '../description.ts';
import type { MeasuredIntermediates, TankLoad } from '../load.ts';
import { difference } from '../measured.ts';
import { airState } from '../water-surface/vapour.ts';
import { type ConditionInputs, type ConditionOrigins, conditionInputs } from './steps.ts';
import { airSteps, heatCapacitySteps, heatOf, sumSteps } from './totals.ts';

/** Steps of a measured tank, in the order of computation. */
export function measuredWorking(
  tank: MeasuredTank,
  conditions: TankConditions,
  load: TankLoad,
  known: MeasuredIntermediates,
  origins: ConditionOrigins,
): readonly WorkingStep[] {
  const from = conditionInputs(conditions, origins);
  const specificHeat = waterHeatCapacity(conditions.waterTemperature, tank.salinity);
  const density = waterDensity(conditions.waterTemperature, tank.salinity);
  return [
    workingStep('tank.meanPower', 'tank.meanPower', known.meanPower, {
      E: [tank.energy, 'tank.load.energy'],
      t: [tank.duration, 'tank.load.duration'],
    }),
    ...airSteps(known.air, tank.salinity, from),
    ...vapourThenSteps(tank, conditions, known, from.humidity),
    ...scalingSteps(tank, conditions, load, known, from),
    ...sumSteps(load, from),
    workingStep('tank.evaporation', 'tank.evaporationFromHeat', load.evaporation, {
      Q_latent: [load.latentToRoom, 'tank.latentToRoom'],
      h_fg: [known.air.latentHeat, 'tank.air.latentHeat'],
    }),
    ...heatCapacitySteps(load, density, specificHeat, [tank.salinity, 'tank.salinity'], from, 'tank.load.volume'),
  ];
}

/** Vapour pressures while it was measured. */
function vapourThenSteps(
  tank: MeasuredTank,
  conditions: TankConditions,
  known: MeasuredIntermediates,
  humidity: StepInput,
): WorkingStep[] {
  const { waterTemperature, roomTemperature } = tank;
  const then = airState({ ...conditions, waterTemperature, roomTemperature }, tank.salinity);
  const now = known.air;
  return [
    workingStep('tank.then.saturationWater', 'air.saturationVapourPressure', then.saturationWater, {
      T: [waterTemperature, 'tank.load.waterTemperature'],
    }),
    workingStep('tank.then.waterVapour', 'tank.waterVapour', then.waterVapour, {
      a_w: [then.vapourPressureFactor, 'tank.air.vapourPressureFactor'],
      p_ws: [then.saturationWater, 'tank.then.saturationWater'],
    }),
    workingStep('tank.then.saturationRoom', 'air.saturationVapourPressure', then.saturationRoom, {
      T: [roomTemperature, 'tank.load.roomTemperature'],
    }),
    workingStep('tank.then.roomVapour', 'air.vapourPressure', then.roomVapour, {
      RH: humidity,
      p_ws: [then.saturationRoom, 'tank.then.saturationRoom'],
    }),
    workingStep('tank.then.vapourDifference', 'tank.vapourPressureDifference', known.measuredVapourDifference, {
      inside: [then.waterVapour, 'tank.then.waterVapour'],
      outside: [then.roomVapour, 'tank.then.roomVapour'],
    }),
    workingStep('tank.then.temperatureDifference', 'tank.temperatureDifference', known.measuredTemperatureDifference, {
      inside: [waterTemperature, 'tank.load.waterTemperature'],
      outside: [roomTemperature, 'tank.load.roomTemperature'],
    }),
    workingStep('tank.vapourDifference', 'tank.vapourPressureDifference', difference(now.waterVapour, now.roomVapour), {
      inside: [now.waterVapour, 'tank.air.waterVapour'],
      outside: [now.roomVapour, 'tank.air.roomVapour'],
    }),
  ];
}

function scalingSteps(
  tank: MeasuredTank,
  conditions: TankConditions,
  load: TankLoad,
  known: MeasuredIntermediates,
  from: ConditionInputs,
): WorkingStep[] {
  const vapour = difference(known.air.waterVapour, known.air.roomVapour);
  const warmth = difference(conditions.waterTemperature, conditions.roomTemperature);
  const power: Readonly<Record<string, StepInput>> = {
    P: [known.meanPower, 'tank.meanPower'],
    Q_pump: [tank.pumpHeat, from.pumpHeat],
    Q_light: [tank.lightHeat, from.lightHeat],
  };
  const share = tank.evaporationShare;
  return [
    workingStep('tank.temperatureDifference', 'tank.temperatureDifference', warmth, {
      inside: from.water,
      outside: from.room,
    }),
    workingStep('tank.then.latent', 'tank.measuredShare', known.measuredLatent, {
      s: [share, 'tank.load.evaporationShare'],
      ...power,
    }),
    workingStep('tank.then.sensible', 'tank.measuredShare', known.measuredSensible, {
      s: [1 - share, 'tank.load.evaporationShare'],
      ...power,
    }),
    ...(share === 0 ? [] : [latentStep(load, known, vapour)]),
    workingStep('tank.paths.wallsAndSurface', 'tank.scaledDryHeat', heatOf(load, 'wallsAndSurface'), {
      Q_then: [known.measuredSensible, 'tank.then.sensible'],
      difference: [warmth, 'tank.temperatureDifference'],
      difference_then: [known.measuredTemperatureDifference, 'tank.then.temperatureDifference'],
    }),
  ];
}

function latentStep(load: TankLoad, known: MeasuredIntermediates, vapour: number): WorkingStep {
  return workingStep('tank.paths.evaporation', 'tank.scaledVapourHeat', heatOf(load, 'evaporation'), {
    Q_then: [known.measuredLatent, 'tank.then.latent'],
    difference: [vapour, 'tank.vapourDifference'],
    difference_then: [known.measuredVapourDifference, 'tank.then.vapourDifference'],
  });
}
