// Where the numbers of the conditions come from in the design.

import type { StepInput } from '../../quantities/index.ts';
import type { TankConditions } from '../description.ts';

/** For each condition, and for the heat of pumps and lights, the design path or the step that it came from. */
export interface ConditionOrigins
  extends Readonly<Record<Exclude<keyof TankConditions, 'outdoorTemperature' | 'groundTemperature'>, string>> {
  readonly outdoorTemperature?: string;
  readonly groundTemperature?: string;
  /** The design's power of the pumps where absent. */
  readonly pumpHeat?: string;
  /** The design's power of the lights where absent. */
  readonly lightHeat?: string;
  /** The design's power of the ultraviolet lamp where absent. */
  readonly ultravioletHeat?: string;
  /** The factor on the outer films is the tank's own where absent. */
  readonly outerFilmFactor?: string;
}

/** Origins when the tank is judged in its room as it usually is. */
export const usualOrigins: ConditionOrigins = {
  waterTemperature: 'tank.waterTemperature',
  roomTemperature: 'room.temperature',
  roomRelativeHumidity: 'room.relativeHumidity',
  atmosphericPressure: 'place.altitude',
};

/** The conditions as inputs. */
export interface ConditionInputs {
  readonly water: StepInput;
  readonly room: StepInput;
  readonly pressure: StepInput;
  readonly humidity: StepInput;
  /** Where the heat of pumps and lights came from. */
  readonly pumpHeat: string;
  readonly lightHeat: string;
  readonly ultravioletHeat: string;
  readonly filmFactor: string | undefined;
}

/** The conditions with their origins. */
export function conditionInputs(conditions: TankConditions, origins: ConditionOrigins): ConditionInputs {
  return {
    water: [conditions.waterTemperature, origins.waterTemperature],
    room: [conditions.roomTemperature, origins.roomTemperature],
    pressure: [conditions.atmosphericPressure, origins.atmosphericPressure],
    humidity: [conditions.roomRelativeHumidity, origins.roomRelativeHumidity],
    pumpHeat: origins.pumpHeat ?? 'tank.load.pumpPower',
    lightHeat: origins.lightHeat ?? 'tank.load.lightPower',
    ultravioletHeat: origins.ultravioletHeat ?? 'tank.load.ultravioletPower',
    filmFactor: origins.outerFilmFactor,
  };
}
