// Stage: the tank as the tank model wants it told, and what it needs under given conditions.

import type { PlainDesign } from '../../design/index.ts';
import { layerConductivity, material } from '../../matter/materials/index.ts';
import { type Layer, type TankConditions, type TankDescription, type TankLoad, tankLoad } from '../../tank/index.ts';

/** What the tank's heat balance needs of the design. */
export type PlainTank = Pick<PlainDesign['tank'], 'waterTemperature' | 'salinity' | 'load'>;
type PlainRectangular = Extract<PlainTank['load'], { kind: 'rectangular' }>;

/** Seconds in a day, to spread a light’s hours over it. */
const secondsPerDay = 86_400;

/** The design's tank in the words of the tank model. */
export function tankDescription(tank: PlainTank): TankDescription {
  const { load } = tank;
  const gains = {
    pumpHeat: load.pumpPower * load.pumpShareToWater,
    lightHeat: (load.lightPower * load.lightHours * load.lightShareToWater) / secondsPerDay,
  };
  if (load.kind === 'measured') return { ...load, ...gains, salinity: tank.salinity };
  return {
    kind: 'rectangular',
    length: load.length,
    width: load.width,
    height: load.height,
    waterDepth: load.waterDepth,
    salinity: tank.salinity,
    wall: sheetOf(load.wall),
    insulation: insulationOf(load),
    surface: load.surface,
    evaporationFactor: load.evaporationFactor,
    lid: load.lid,
    ...(load.lid === 'none' ? {} : { lidLayer: sheetOf({ material: load.lidMaterial, thickness: load.lidThickness }) }),
    ...(load.lid === 'loose' ? { lidOpenShare: load.lidOpenShare } : {}),
    ...gains,
  };
}

/** The tank's heat balance in its room. */
export function tankLoadAt(
  tank: PlainTank,
  roomRelativeHumidity: number,
  roomTemperature: number,
  atmosphericPressure: number,
): TankLoad {
  const conditions: TankConditions = {
    waterTemperature: tank.waterTemperature,
    roomTemperature,
    roomRelativeHumidity,
    atmosphericPressure,
  };
  return tankLoad(tankDescription(tank), conditions);
}

function insulationOf(load: PlainRectangular): { sides?: Layer; back?: Layer; bottom?: Layer } {
  const { sides, back, bottom } = load.insulation;
  return {
    ...(sides === undefined ? {} : { sides: layerOf(sides) }),
    ...(back === undefined ? {} : { back: layerOf(back) }),
    ...(bottom === undefined ? {} : { bottom: layerOf(bottom) }),
  };
}

/** A pane or lid: a layer whose own surface faces the room. */
function sheetOf(layer: { readonly material: string; readonly thickness: number }): Layer & { emissivity: number } {
  return { ...layerOf(layer), emissivity: material(layer.material).emissivity.likely };
}

function layerOf(layer: { readonly material: string; readonly thickness: number }): Layer {
  const { likely } = layerConductivity(layer.material, layer.thickness);
  return { conductivity: likely, thickness: layer.thickness };
}
