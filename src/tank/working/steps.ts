// Where the numbers of the conditions and of the tank come from in the design.

import type { StepInput } from '../../quantities/index.ts';
import type { VesselName } from '../built-tank.ts';
import type { TankConditions } from '../description.ts';
import type { Shape } from '../geometry/index.ts';

/** What a layer has in the design. */
export type LayerPart = 'thickness' | 'conductivity' | 'resistance' | 'joint' | 'emissivity';

/** For each condition, and for what the tank is told to be, the design path or the step that it came from. */
export interface ConditionOrigins
  extends Readonly<
    Record<Exclude<keyof TankConditions, 'outdoorTemperature' | 'groundTemperature' | 'mainsTemperature'>, string>
  > {
  readonly outdoorTemperature?: string;
  readonly groundTemperature?: string;
  /** Of the water main. */
  readonly mainsTemperature?: string;
  /** The design's power of the pumps where absent. */
  readonly pumpHeat?: string;
  /** The design's power of the lights where absent. */
  readonly lightHeat?: string;
  /** The design's power of the ultraviolet lamp where absent. */
  readonly ultravioletHeat?: string;
  /** The factor on the outer films is the tank's own where absent. */
  readonly outerFilmFactor?: string;
  /** Of the ratio that an adopted measurement puts on every loss. */
  readonly measuredOverModelled?: string;
  /** Inner sizes of the vessels, from which their areas are reckoned; without them areas come from nowhere. */
  readonly shapes?: Readonly<Partial<Record<VesselName, Shape>>>;
  /** Where a part of a layer stands, whose own place is `layer`; below that place where absent. */
  readonly layerPart?: (layer: string, part: LayerPart) => string;
  /** Where what lies beyond a panel stands. */
  readonly exposure?: (vessel: VesselName, panel: string) => string;
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
  readonly outdoors: string | undefined;
  readonly ground: string | undefined;
  readonly mains: string | undefined;
  readonly layerPart: (layer: string, part: LayerPart) => string;
  readonly exposure: (vessel: VesselName, panel: string) => string;
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
    outdoors: origins.outdoorTemperature,
    ground: origins.groundTemperature,
    mains: origins.mainsTemperature,
    layerPart: origins.layerPart ?? ((layer, part) => `${layer}.${part}`),
    exposure: origins.exposure ?? ((vessel) => `${placeOf(vessel)}.stand`),
  };
}

/** Where a vessel stands in the design. */
export function placeOf(vessel: VesselName): string {
  return vessel === 'tank' ? 'tank.load' : `tank.load.${vessel}`;
}

/** What the steps of a vessel begin with. */
export function stepsOf(vessel: VesselName): string {
  return vessel === 'tank' ? 'tank' : `tank.${vessel}`;
}
