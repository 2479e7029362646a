// The commonest tank in a few numbers: a box of one kind of pane, wrapped here and there, open or under a lid, standing free
// in its room. Short for the vessel, panels and layers that it comes to.

import { InputError } from '../../numerics/index.ts';
import type { BuiltTank, Cover, Panel, Surface } from '../built-tank.ts';
import type { StackLayer } from '../stack/layers.ts';
import { measuresOf } from './shapes.ts';

/** A solid layer: conductivity k [W/(m K)] and thickness d [m]. */
export interface Layer {
  readonly conductivity: number;
  readonly thickness: number;
}

/** The sheet of a lid: a solid layer, or its conductance without surface films [W/(m² K)]; ε 0.9 where absent. */
export type LidLayer = (Layer | { readonly conductance: number }) & { readonly emissivity?: number };

export interface RectangularTank {
  readonly kind: 'rectangular';
  /** Inner dimensions [m]; the front and the back are `length` wide, the two ends (sides) `width`. */
  readonly length: number;
  readonly width: number;
  readonly height: number;
  /** Water level above the bottom [m], at most `height`. */
  readonly waterDepth: number;
  /** S, kg salt per kg water; 0 for fresh water. */
  readonly salinity: number;
  /** Panes and bottom; ε is that of the bare outer face. */
  readonly wall: Layer & { readonly emissivity: number };
  /** Wrapped outside of the panes, over their full height; the front stays clear. Outer face ε 0.9. */
  readonly insulation: { readonly sides?: Layer; readonly back?: Layer; readonly bottom?: Layer };
  readonly surface: Surface;
  readonly evaporationFactor?: number;
  readonly outerFilmFactor?: number;
  readonly lid: 'none' | 'tight' | 'loose';
  /** Required unless `lid` is none. */
  readonly lidLayer?: LidLayer;
  /** Loose lid: share of the water surface that its gaps leave open; LOOSE_LID_OPEN_SHARE where absent. */
  readonly lidOpenShare?: number;
  /** Room air blown through the water by air stones [m³/s at room state]; 0 where absent. */
  readonly airFlow?: number;
  /** Mean heat of the pumps and of the lights that stays in the water [W]. */
  readonly pumpHeat: number;
  readonly lightHeat: number;
}

/** Share of the surface that a loosely laid lid leaves open where nobody says better: own assumption, 0.05 to 0.3. */
export const LOOSE_LID_OPEN_SHARE = 0.15;
/** Emissivity of wrapping and of a lid whose own is not given (foam, paint, plastics 0.9, from memory). */
export const OUTER_EMISSIVITY = 0.9;

/**
 * The box as vessel, panels and layers.
 * @throws InputError naming the first dimension that cannot be, or the missing lid
 */
export function rectangularTank(tank: RectangularTank): BuiltTank {
  const { length, width, height, waterDepth } = tank;
  const shape = measuresOf({ kind: 'rectangular', length, width, height, waterDepth });
  const { waterSurface, perimeter, waterVolume, freeboard } = shape;
  const panels = shape.faces.map(({ name, facing, wetArea, dryArea }): Panel => {
    const wrap = wrapOf(tank, name);
    const wall: StackLayer = { kind: 'solid', ...tank.wall, origin: 'tank.load.wall' };
    return {
      name,
      facing,
      wetArea,
      dryArea,
      stack: wrap === undefined ? [wall] : [wall, wrap],
      layersInWater: 0,
      emissivity: wrap === undefined ? tank.wall.emissivity : OUTER_EMISSIVITY,
      exposure: { kind: 'roomAir' },
    };
  });
  return {
    kind: 'built',
    salinity: tank.salinity,
    vessels: [
      {
        name: 'tank',
        panels,
        waterSurface,
        perimeter,
        waterVolume,
        freeboard,
        surface: tank.surface,
        ...(tank.evaporationFactor === undefined ? {} : { evaporationFactor: tank.evaporationFactor }),
        cover: coverOf(tank),
      },
    ],
    pipes: [],
    ...(tank.outerFilmFactor === undefined ? {} : { outerFilmFactor: tank.outerFilmFactor }),
    airFlow: { airStones: tank.airFlow ?? 0, skimmer: 0 },
    exchange: { makeUpFrom: 'room', changeFlow: 0 },
    pumpHeat: tank.pumpHeat,
    lightHeat: tank.lightHeat,
    ultravioletHeat: 0,
  };
}

function wrapOf({ insulation }: RectangularTank, face: string): StackLayer | undefined {
  const place = face === 'left' || face === 'right' ? 'sides' : face;
  if (place !== 'sides' && place !== 'back' && place !== 'bottom') return undefined;
  const layer = insulation[place];
  return layer && { kind: 'solid', ...layer, origin: `tank.load.insulation.${place}` };
}

function coverOf({ lid, lidLayer, lidOpenShare }: RectangularTank): Cover {
  if (lid === 'none') return { kind: 'none' };
  if (lidLayer === undefined) {
    throw new InputError(
      'tank.load.lidMaterial',
      lidLayer,
      'a material and thickness, as the tank has a lid',
      'missing',
    );
  }
  const origin = 'tank.load.lidMaterial';
  const sheet: StackLayer =
    'conductance' in lidLayer
      ? { kind: 'resistance', resistance: 1 / lidLayer.conductance, origin }
      : { kind: 'solid', thickness: lidLayer.thickness, conductivity: lidLayer.conductivity, origin };
  const openShare = lid === 'tight' ? 0 : (lidOpenShare ?? LOOSE_LID_OPEN_SHARE);
  return { kind: 'lid', stack: [sheet], emissivity: lidLayer.emissivity ?? OUTER_EMISSIVITY, openShare };
}
