// The working of the tank in its place: pressure of the air, what pumps and lights give, the load, how it cools, the meter.

import { type StepInput, type WorkingStep, workingStep } from '../../quantities/index.ts';
import {
  type ConditionOrigins,
  coolingWorking,
  lightHeat,
  pumpHeat,
  type TankLoad,
  tankLoadWorking,
} from '../../tank/index.ts';
import { fallName, type TankResults } from '../answers/tank-values.ts';
import type { StagedDesign } from '../stages/engine-assumptions.ts';
import { type StageResults, tankSlice } from '../stages/index.ts';
import { carriedBy, type MeterResult, placeOfMeter } from '../stages/tank/meter.ts';
import {
  dependsOnSeasons,
  type TankPlace,
  type TankSlice,
  tankConditions,
  tankDescription,
} from '../stages/tank/tank.ts';
import { placesInDesign } from './tank-origins.ts';
import { under } from './under.ts';

/** Name of the step that gives the air's pressure. */
export const atmosphere = 'surroundings.atmosphericPressure';

/** Where what surrounds the tank came from: design paths or steps. */
export interface PlaceOrigins {
  readonly room: string;
  readonly outdoors: string;
  readonly ground: string;
  readonly mains: string;
}

const groundName = 'surroundings.groundTemperature';

export const spellOrigins: PlaceOrigins = {
  room: 'room.coldest',
  outdoors: 'place.outdoors.coldest',
  ground: groundName,
  mains: 'place.mains.winter',
};

/** Pressure of the air where the tank stands, and temperature of the ground where it reaches the tank. */
export function placeSteps(
  design: StagedDesign,
  { surroundings }: Pick<StageResults, 'surroundings'>,
): readonly WorkingStep[] {
  const { place } = design;
  const { winter, summer } = place.outdoors;
  return [
    workingStep(atmosphere, 'air.pressureAtAltitude', surroundings.atmosphericPressure, {
      z: [place.altitude, 'place.altitude'],
    }),
    ...(dependsOnSeasons(tankSlice(design))
      ? [
          workingStep(groundName, 'surroundings.yearlyMean', surroundings.spell.groundTemperature, {
            T_w: [winter, 'place.outdoors.winter'],
            T_s: [summer, 'place.outdoors.summer'],
          }),
        ]
      : []),
  ];
}

/** What pumps, lights and ultraviolet lamp of the tank itself give its water. */
export function gainSteps({ tank }: StagedDesign): readonly WorkingStep[] {
  const { load } = tank;
  const pump = pumpHeat(load.pumpPower, load.pumpShareToWater);
  const light = lightHeat(load.lightPower, load.lightHours, load.lightShareToWater);
  return [
    workingStep('tank.gains.pump', 'tank.pumpHeat', pump, {
      P: [load.pumpPower, 'tank.load.pumpPower'],
      phi: [load.pumpShareToWater, 'tank.load.pumpShareToWater'],
    }),
    workingStep('tank.gains.light', 'tank.lightHeat', light, {
      P: [load.lightPower, 'tank.load.lightPower'],
      t: [load.lightHours, 'tank.load.lightHours'],
      phi: [load.lightShareToWater, 'tank.load.lightShareToWater'],
    }),
    ...(load.kind === 'measured'
      ? []
      : [
          workingStep(
            'tank.gains.ultraviolet',
            'tank.ultravioletHeat',
            pumpHeat(load.ultravioletPower, load.ultravioletShareToWater),
            {
              P: [load.ultravioletPower, 'tank.load.ultravioletPower'],
              phi: [load.ultravioletShareToWater, 'tank.load.ultravioletShareToWater'],
            },
          ),
        ]),
  ];
}

/** The tank in a place of that kind, carried by an adopted measurement. */
export function tankSteps(
  design: StagedDesign,
  { surroundings, meter }: Pick<StageResults, 'surroundings' | 'meter'>,
  tank: TankLoad,
  place: TankPlace,
  origins: PlaceOrigins,
): readonly WorkingStep[] {
  const slice = carriedBy(tankSlice(design), meter);
  return stepsOf(design, slice, tank, place, surroundings.atmosphericPressure, originsOf(design, origins));
}

function stepsOf(
  design: StagedDesign,
  slice: TankSlice,
  tank: TankLoad,
  place: TankPlace,
  pressure: number,
  origins: ConditionOrigins,
): readonly WorkingStep[] {
  const described = tankDescription(slice);
  return tankLoadWorking(described, tankConditions(slice, place, pressure), tank, {
    ...origins,
    ...placesInDesign(design),
  });
}

function originsOf(design: StagedDesign, { room, outdoors, ground, mains }: PlaceOrigins): ConditionOrigins {
  return {
    waterTemperature: 'tank.waterTemperature',
    roomTemperature: room,
    // Of an aired room it follows from the air that comes in and from what the tank evaporates.
    roomRelativeHumidity: design.room.moisture.kind === 'ventilated' ? 'room.moisture.kind' : 'room.relativeHumidity',
    atmosphericPressure: atmosphere,
    outdoorTemperature: outdoors,
    groundTemperature: ground,
    mainsTemperature: mains,
    pumpHeat: 'tank.gains.pump',
    lightHeat: 'tank.gains.light',
    ...(design.tank.load.kind === 'measured' ? {} : { ultravioletHeat: 'tank.gains.ultraviolet' }),
    outerFilmFactor: 'engine.outerFilmFactor',
    measuredOverModelled: 'tank.meter.ratio',
  };
}

/** How the tank cools from the coldest spell. */
export function coolingSteps(
  design: StagedDesign,
  { surroundings, meter, tank }: TankResults,
  falls: readonly number[],
): readonly WorkingStep[] {
  const slice = carriedBy(tankSlice(design), meter);
  const { spell, atmosphericPressure } = surroundings;
  const described = tankDescription(slice);
  return coolingWorking(described, tankConditions(slice, spell, atmosphericPressure), tank, falls, fallName);
}

/** The meter: what was measured, the model as the tank stood then (under 'meter'), the ratio of the two. */
export function meterSteps(design: StagedDesign, { surroundings, meter }: TankResults): readonly WorkingStep[] {
  const { load } = design.tank;
  if (meter === null || load.kind === 'measured' || load.meter === undefined) return [];
  const { energy, duration } = load.meter;
  const { pump, light, ultraviolet } = meter.modelled.gains;
  const gains: Readonly<Record<string, StepInput>> = {
    Q_1: [pump, 'tank.gains.pump'],
    Q_2: [light, 'tank.gains.light'],
    Q_3: [ultraviolet, 'tank.gains.ultraviolet'],
  };
  const rest = Object.fromEntries(
    Array.from({ length: 9 }, (_, index): [string, StepInput] => [`Q_${index + 4}`, [0]]),
  );
  const total = pump + light + ultraviolet;
  return [
    workingStep('tank.meter.meanPower', 'tank.meanPower', meter.meanPower, {
      E: [energy, 'tank.load.meter.energy'],
      t: [duration, 'tank.load.meter.duration'],
    }),
    workingStep('tank.meter.gains', 'tank.sumOfHeat', total, { ...gains, ...rest }),
    workingStep('tank.meter.measuredLoss', 'tank.heatThatLeft', meter.measuredLoss, {
      P: [meter.meanPower, 'tank.meter.meanPower'],
      Q_gains: [total, 'tank.meter.gains'],
    }),
    ...modelledSteps(design, surroundings, meter),
    workingStep('tank.meter.ratio', 'tank.measuredOverModelled', meter.ratio, {
      Q_meas: [meter.measuredLoss, 'tank.meter.measuredLoss'],
      Q_model: [meter.modelledLoss, 'meter.tank.loss'],
    }),
  ];
}

function modelledSteps(
  design: StagedDesign,
  surroundings: StageResults['surroundings'],
  { modelled, waterTemperature, roomTemperature }: MeterResult,
): readonly WorkingStep[] {
  const slice = tankSlice(design);
  const then = { ...slice, tank: { ...slice.tank, waterTemperature } };
  const place = placeOfMeter(surroundings, roomTemperature);
  const origins = {
    ...originsOf(design, {
      room: 'tank.load.meter.roomTemperature',
      outdoors: 'place.outdoors.winter',
      ground: groundName,
      mains: 'place.mains.winter',
    }),
    waterTemperature: 'tank.load.meter.waterTemperature',
  };
  const steps = stepsOf(design, then, modelled, place, surroundings.atmosphericPressure, origins);
  return under('meter', steps);
}
