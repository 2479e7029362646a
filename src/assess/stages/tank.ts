// Stage: the tank as the tank model wants it told, and what it needs under given conditions.

import type { PlainDesign } from '../../design/index.ts';
import { layerConductivity, material } from '../../matter/materials/index.ts';
import { InputError } from '../../numerics/index.ts';
import {
  type Layer,
  lightHeat,
  pumpHeat,
  type TankConditions,
  type TankDescription,
  type TankLoad,
  tankLoad,
} from '../../tank/index.ts';
import { standardTankFactors, type TankFactors } from './tank-assumptions.ts';

/** The tank as the design describes it. */
export type PlainTank = Pick<PlainDesign['tank'], 'waterTemperature' | 'salinity' | 'load'>;
type PlainRectangular = Extract<PlainTank['load'], { kind: 'rectangular' }>;
type PlainLayer = PlainRectangular['wall'];

/** What the tank's heat balance needs of the design. */
export interface TankSlice {
  readonly tank: PlainTank;
  readonly factors: TankFactors;
  readonly relativeHumidity: number;
}

/**
 * The design's tank in the words of the tank model.
 * @param tank     its part of the design
 * @param factors  on the outer film and on tabulated conductivities; all 1 where absent
 */
export function tankDescription(tank: PlainTank, factors: TankFactors = standardTankFactors): TankDescription {
  const { load } = tank;
  const gains = {
    pumpHeat: pumpHeat(load.pumpPower, load.pumpShareToWater),
    lightHeat: lightHeat(load.lightPower, load.lightHours, load.lightShareToWater),
  };
  if (load.kind === 'measured') return { ...load, ...gains, salinity: tank.salinity };
  if (load.kind !== 'rectangular' || load.lid === 'hood') {
    throw new InputError('tank.load.kind', load.kind, 'a rectangular tank without a hood');
  }
  return {
    kind: 'rectangular',
    length: load.length,
    width: load.width,
    height: load.height,
    waterDepth: load.waterDepth,
    salinity: tank.salinity,
    wall: sheetOf(load.wall, factors.wallConductivityFactor),
    insulation: insulationOf(load, factors.insulationConductivityFactor),
    surface: load.surface,
    evaporationFactor: load.evaporationFactor,
    outerFilmFactor: factors.outerFilmFactor,
    lid: load.lid,
    ...(load.lid === 'none' ? {} : { lidLayer: sheetOf(lidOf(load), factors.lidConductivityFactor) }),
    ...(load.lid === 'loose' ? { lidOpenShare: load.lidOpenShare } : {}),
    ...gains,
  };
}

/** The tank's heat balance in its room. */
export function tankLoadAt(
  { tank, factors, relativeHumidity }: TankSlice,
  roomTemperature: number,
  atmosphericPressure: number,
): TankLoad {
  const conditions: TankConditions = {
    waterTemperature: tank.waterTemperature,
    roomTemperature,
    roomRelativeHumidity: relativeHumidity,
    atmosphericPressure,
  };
  return tankLoad(tankDescription(tank, factors), conditions);
}

function insulationOf(load: PlainRectangular, factor: number): { sides?: Layer; back?: Layer; bottom?: Layer } {
  const { sides, back, bottom } = load.insulation;
  return {
    ...(sides === undefined ? {} : { sides: layerOf(sides, factor) }),
    ...(back === undefined ? {} : { back: layerOf(back, factor) }),
    ...(bottom === undefined ? {} : { bottom: layerOf(bottom, factor) }),
  };
}

function lidOf({ lidMaterial, lidThickness }: PlainRectangular): PlainLayer {
  return { material: lidMaterial, thickness: lidThickness };
}

/** A pane or lid: a layer whose own surface faces the room. */
function sheetOf(layer: PlainLayer, factor: number): Layer & { emissivity: number } {
  return { ...layerOf(layer, factor), emissivity: material(layer.material).emissivity.likely };
}

/** @param factor  on the tabulated conductivity */
function layerOf(layer: PlainLayer, factor: number): Layer {
  const { likely } = layerConductivity(layer.material, layer.thickness);
  return { conductivity: factor * likely, thickness: layer.thickness };
}
