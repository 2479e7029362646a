// The working of a tank as it is built: for each number of its load the formula, the numbers put in, and their origin. Where a
// measurement was adopted, each path first as the model has it ('tank.modelled.front'), then carried by the measurement.

import { waterDensity, waterHeatCapacity } from '../../matter/water/index.ts';
import { InputError } from '../../numerics/index.ts';
import { type StepInput, type WorkingStep, workingStep } from '../../quantities/index.ts';
import type { BuiltTank, Vessel } from '../built-tank.ts';
import type { TankConditions } from '../description.ts';
import type { BuiltIntermediates, TankLoad, VesselState } from '../load.ts';
import { carriedHeat } from '../meter.ts';
import { drawnSteps, freshWaterSteps, lostSteps, type PathNames, pipeSteps, roomAirSteps } from './exchange.ts';
import { type VesselSizes, vesselSizes } from './geometry.ts';
import { hoodSteps } from './hood.ts';
import { lidSteps } from './lid.ts';
import { panelSteps } from './panels.ts';
import { type ConditionInputs, type ConditionOrigins, conditionInputs, placeOf, stepsOf } from './steps.ts';
import { sumOf } from './sums.ts';
import { heatIn, surfaceSteps, type VesselSteps } from './surface.ts';
import { airSteps, heatCapacitySteps, sumSteps } from './totals.ts';

/** Steps of a built tank, in the order of computation. */
export function builtWorking(
  tank: BuiltTank,
  conditions: TankConditions,
  load: TankLoad,
  known: BuiltIntermediates,
  origins: ConditionOrigins,
): readonly WorkingStep[] {
  if (known.night !== undefined) {
    throw new InputError(
      'night',
      known.night.share,
      'no other cover at night: day and night have workings of their own',
    );
  }
  const from = conditionInputs(conditions, origins);
  const names = pathNames(load, known);
  const sizes = tank.vessels.map((vessel) => vesselSizes(vessel.name, origins.shapes?.[vessel.name], vessel));
  const isCarried = known.measuredOverModelled !== 1;
  const evaporation: StepInput = [
    load.evaporation / known.measuredOverModelled,
    isCarried ? 'tank.modelledEvaporation' : 'tank.evaporation',
  ];
  const drawsAir = known.airDrawn.length > 0 || known.vessels.some(({ hood }) => hood !== undefined);
  return [
    ...airSteps(known.air, tank.salinity, from),
    ...(drawsAir ? roomAirSteps(known.air, conditions, from) : []),
    ...sizes.flatMap(({ steps }) => steps),
    ...known.vessels.flatMap((state, index) =>
      vesselSteps(tank.vessels[index]!, state, sizes[index]!, conditions, known, names, from),
    ),
    ...tank.pipes.flatMap((pipe, index) => pipeSteps(pipe, known.pipes[index]!, index, names, from)),
    ...drawnSteps(known.airDrawn, tank, conditions, known.air, names, from),
    ...lostSteps(known, load.evaporation, evaporation[1]!, (vessel) => stepsOf(vessel as Vessel['name'])),
    ...freshWaterSteps(tank, conditions, known, evaporation, names, from),
    ...(isCarried ? carriedSteps(load, known, evaporation, origins) : []),
    ...sumSteps(load, from),
    ...vesselSums(tank, load),
    ...volumeSteps(tank, conditions, load, sizes, from),
  ];
}

/** The model's own paths, where a measurement carries them. */
function pathNames({ paths }: TankLoad, { measuredOverModelled }: BuiltIntermediates): PathNames {
  const at = measuredOverModelled === 1 ? 'tank.paths' : 'tank.modelled';
  return { path: (name) => `${at}.${name}`, heat: (name) => heatIn(paths, name) / measuredOverModelled };
}

function vesselSteps(
  vessel: Vessel,
  state: VesselState,
  sizes: VesselSizes,
  conditions: TankConditions,
  { air }: BuiltIntermediates,
  names: PathNames,
  from: ConditionInputs,
): readonly WorkingStep[] {
  const own = (name: string) => (vessel.name === 'tank' ? name : `${vessel.name}.${name}`);
  const shown: VesselSteps = {
    at: stepsOf(vessel.name),
    place: placeOf(vessel.name),
    air,
    from,
    waterSurface: sizes.waterSurface,
    path: (name) => names.path(own(name)),
    heat: (name) => names.heat(own(name)),
  };
  const panels = state.panels.map((panel) => {
    return { state: panel, area: sizes.wetArea(panel.name, panel.area), heat: shown.path(panel.name) };
  });
  return [
    ...(state.surface === undefined ? [] : surfaceSteps(state.surface, vessel, shown)),
    ...(state.lid === undefined ? [] : lidSteps(state.lid, vessel, sizes, shown)),
    ...(state.hood === undefined ? [] : hoodSteps(state.hood, vessel, conditions, sizes, shown)),
    ...panelSteps(panels, { vessel: vessel.name, at: `${shown.at}.panels`, inside: from.water, from }).steps,
  ];
}

function carriedSteps(
  load: TankLoad,
  { measuredOverModelled: factor }: BuiltIntermediates,
  evaporation: StepInput,
  { measuredOverModelled }: ConditionOrigins,
): readonly WorkingStep[] {
  const f: StepInput = [factor, measuredOverModelled];
  return [
    ...load.paths.map(({ path, heat }) =>
      workingStep(`tank.paths.${path}`, 'tank.carriedHeat', heat, {
        f,
        Q_model: [heat / factor, `tank.modelled.${path}`],
      }),
    ),
    workingStep('tank.evaporation', 'tank.carriedVapour', carriedHeat(factor, evaporation[0]), {
      f,
      m_model: evaporation,
    }),
  ];
}

/** What leaves by each vessel. */
function vesselSums({ vessels }: BuiltTank, { paths }: TankLoad): readonly WorkingStep[] {
  return vessels.flatMap(({ name }) => {
    const own = paths.filter(({ vessel }) => vessel === name);
    const parts = own.map(({ path, heat }): StepInput => [heat, `tank.paths.${path}`]);
    return sumOf(`tank.vessels.${name}.loss`, 'heat', parts).steps;
  });
}

function volumeSteps(
  tank: BuiltTank,
  conditions: TankConditions,
  load: TankLoad,
  sizes: readonly VesselSizes[],
  from: ConditionInputs,
): readonly WorkingStep[] {
  const S: StepInput = [tank.salinity, 'tank.salinity'];
  const specificHeat = waterHeatCapacity(conditions.waterTemperature, tank.salinity);
  const density = waterDensity(conditions.waterTemperature, tank.salinity);
  const volumes = sizes.map(({ waterVolume }) => waterVolume);
  return [
    ...sumOf('tank.waterVolume', 'volume', volumes, load.waterVolume).steps,
    ...heatCapacitySteps(load, density, specificHeat, S, from, 'tank.waterVolume'),
  ];
}
