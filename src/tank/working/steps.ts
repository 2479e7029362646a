// One step of a working, and where the numbers of the conditions come from in the design.

import type { WorkingStep } from '../../quantities/index.ts';
import type { RectangularTank, TankConditions } from '../description.ts';

/** For each condition, and for the heat of pumps and lights, the design path or the step that it came from. */
export interface ConditionOrigins extends Readonly<Record<keyof TankConditions, string>> {
  /** The design's power of the pumps where absent. */
  readonly pumpHeat?: string;
  /** The design's power of the lights where absent. */
  readonly lightHeat?: string;
}

/** Origins when the tank is judged in its room as it usually is. */
export const usualOrigins: ConditionOrigins = {
  waterTemperature: 'tank.waterTemperature',
  roomTemperature: 'room.temperature',
  roomRelativeHumidity: 'room.relativeHumidity',
  atmosphericPressure: 'place.altitude',
};

/** One input of a step: its number and, unless it is a constant of the model, where it came from. */
export type Input = readonly [value: number, from?: string];

/** The conditions as inputs. */
export interface ConditionInputs {
  readonly water: Input;
  readonly room: Input;
  readonly pressure: Input;
  readonly humidity: Input;
  /** Where the heat of pumps and lights came from. */
  readonly pumpHeat: string;
  readonly lightHeat: string;
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
  };
}

/** Where the open and the covered share of the surface came from: the gaps of a loose lid, or the kind of lid alone. */
export function openShareOrigin({ lid }: RectangularTank): string {
  return lid === 'loose' ? 'tank.load.lidOpenShare' : 'tank.load.lid';
}

/** A step from inputs by symbol. */
export function step(
  result: string,
  formula: string,
  value: number,
  inputs: Readonly<Record<string, Input>>,
): WorkingStep {
  const entries = Object.entries(inputs);
  return {
    result,
    formula,
    inputs: Object.fromEntries(entries.map(([symbol, [number]]) => [symbol, number])),
    from: Object.fromEntries(entries.flatMap(([symbol, [, from]]) => (from === undefined ? [] : [[symbol, from]]))),
    value,
  };
}
