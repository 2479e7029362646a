// The working of the tank in its room: pressure of the air, what pumps and lights give, and the load.

import { type WorkingStep, workingStep } from '../../quantities/index.ts';
import { lightHeat, pumpHeat, type TankLoad, tankLoadWorking } from '../../tank/index.ts';
import type { StagedDesign } from '../stages/engine-assumptions.ts';
import { type StageResults, tankSlice } from '../stages/index.ts';
import { tankDescription } from '../stages/tank.ts';

/** Name of the step that gives the air's pressure. */
export const atmosphere = 'surroundings.atmosphericPressure';

/** Pressure of the air where the tank stands. */
export function placeSteps(
  { place }: StagedDesign,
  { surroundings }: Pick<StageResults, 'surroundings'>,
): readonly WorkingStep[] {
  return [
    workingStep(atmosphere, 'air.pressureAtAltitude', surroundings.atmosphericPressure, {
      z: [place.altitude, 'place.altitude'],
    }),
  ];
}

/** What pumps and lights of the tank itself give its water. */
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
  ];
}

/** The tank in a room of that temperature. */
export function tankSteps(
  design: StagedDesign,
  { surroundings }: Pick<StageResults, 'surroundings'>,
  tank: TankLoad,
  roomTemperature: number,
  roomFrom: string,
): readonly WorkingStep[] {
  const conditions = {
    waterTemperature: design.tank.waterTemperature,
    roomTemperature,
    roomRelativeHumidity: design.room.relativeHumidity,
    atmosphericPressure: surroundings.atmosphericPressure,
  };
  return tankLoadWorking(tankDescription(tankSlice(design), surroundings.spell.mainsTemperature), conditions, tank, {
    waterTemperature: 'tank.waterTemperature',
    roomTemperature: roomFrom,
    roomRelativeHumidity: 'room.relativeHumidity',
    atmosphericPressure: atmosphere,
    pumpHeat: 'tank.gains.pump',
    lightHeat: 'tank.gains.light',
    outerFilmFactor: 'engine.outerFilmFactor',
  });
}
