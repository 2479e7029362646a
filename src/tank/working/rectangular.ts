// The working of a rectangular tank: for each number of its load the formula, the numbers put in, and their origin.

import { waterDensity, waterHeatCapacity } from '../../matter/water/index.ts';
import { type StepInput, type WorkingStep, workingStep } from '../../quantities/index.ts';
import type { RectangularTank, TankConditions } from '../description.ts';
import type { RectangularIntermediates, TankLoad } from '../load.ts';
import { lidSteps } from './lid.ts';
import { wetPaneSteps } from './panes.ts';
import { type ConditionInputs, type ConditionOrigins, conditionInputs } from './steps.ts';
import { airStoneSteps, lostStep, makeUpSteps, surfaceSteps } from './surface.ts';
import { airSteps, heatCapacitySteps, sumSteps } from './totals.ts';

/** Steps of a rectangular tank, in the order of computation. */
export function rectangularWorking(
  tank: RectangularTank,
  conditions: TankConditions,
  load: TankLoad,
  known: RectangularIntermediates,
  origins: ConditionOrigins,
): readonly WorkingStep[] {
  const from = conditionInputs(conditions, origins);
  return [
    ...airSteps(known.air, tank.salinity, from),
    ...(known.surface === undefined ? [] : surfaceSteps(tank, known.surface, known.air, load, from)),
    ...(known.lid === undefined ? [] : lidSteps(tank, known.lid, known.air, load, from)),
    ...wetPaneSteps(tank, known, from),
    ...(known.airStones === undefined ? [] : airStoneSteps(tank, conditions, known, load, from)),
    lostStep(known, load),
    ...makeUpSteps(load, known, from),
    ...totalSteps(tank, conditions, load, from),
  ];
}

function totalSteps(
  tank: RectangularTank,
  conditions: TankConditions,
  load: TankLoad,
  from: ConditionInputs,
): WorkingStep[] {
  const S: StepInput = [tank.salinity, 'tank.salinity'];
  const specificHeat = waterHeatCapacity(conditions.waterTemperature, tank.salinity);
  const density = waterDensity(conditions.waterTemperature, tank.salinity);
  return [
    ...sumSteps(load, from),
    workingStep('tank.waterVolume', 'tank.waterVolume', load.waterVolume, {
      L: [tank.length, 'tank.load.length'],
      B: [tank.width, 'tank.load.width'],
      D: [tank.waterDepth, 'tank.load.waterDepth'],
    }),
    ...heatCapacitySteps(load, density, specificHeat, S, from, 'tank.waterVolume'),
  ];
}
