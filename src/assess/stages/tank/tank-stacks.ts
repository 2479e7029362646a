// Layers of the design as stacks of the tank model: materials looked up, their doubt as a factor, emissivities of faces, and
// what lies beyond the outermost layer.

import type { BoardOf, ExposureOf, LayerOf, SheetOf, SizedLoadOf } from '../../../design/index.ts';
import { layerConductivity, material } from '../../../matter/materials/index.ts';
import {
  type Exposure,
  OUTER_EMISSIVITY,
  type SolidLayer,
  type Stack,
  type StackLayer,
  standResistance,
} from '../../../tank/index.ts';
import type { TankFactors } from './tank-assumptions.ts';

export type PlainSheet = SheetOf<number>;
export type PlainLayer = LayerOf<number>;
export type PlainExposure = ExposureOf<number>;

/** Below this a face mirrors long waves: foil, bare metal. */
export const mirrorEmissivity = 0.5;

/** What lies beyond the faces of all vessels, as far as the design names it. */
export function exposuresIn(load: SizedLoadOf<number>): readonly PlainExposure[] {
  const parts = load.kind === 'panels' ? load.panels : load.faces;
  const vessels = [load.sump, load.refuge, load.overflow];
  const named = [...parts.map(({ exposure }) => exposure), ...vessels.map((vessel) => vessel?.exposure)];
  return [load.stand, ...named.filter((exposure) => exposure !== undefined)];
}

/** Which factor the conductivity of a layer is doubted by. */
type ConductivityFactor = Exclude<keyof TankFactors, 'outerFilmFactor' | 'foilEmissivityFactor' | 'standFactor'>;

/** A sheet or board of a known material. */
export function sheetLayer(
  { material: name, thickness }: PlainSheet,
  factors: TankFactors,
  factor: ConductivityFactor,
  origin: string,
): SolidLayer & { readonly origin: string } {
  return {
    kind: 'solid',
    thickness,
    conductivity: factors[factor] * layerConductivity(name, thickness).likely,
    emissivity: faceEmissivity(name, factors),
    origin,
  };
}

/** A board outside of a pane, over a sealed gap where it has one. */
export function boardLayers(board: BoardOf<number>, factors: TankFactors, origin: string): Stack {
  const sheet = sheetLayer(board, factors, 'insulationConductivityFactor', origin);
  if (board.gap === undefined) return [sheet];
  return [{ kind: 'sealedGap', thickness: board.gap, origin: `${origin}.gap` }, sheet];
}

/** Layers of a list, from the water outwards. */
export function listedLayers(
  layers: readonly PlainLayer[],
  factors: TankFactors,
  factor: ConductivityFactor,
  list: string,
): Stack {
  return layers.map((layer, index) => stackLayer(layer, factors, factor, `${list}.${index}`));
}

function stackLayer(layer: PlainLayer, factors: TankFactors, factor: ConductivityFactor, origin: string): StackLayer {
  switch (layer.kind) {
    case 'material': {
      const sheet = sheetLayer(layer, factors, factor, origin);
      const { joint } = layer;
      if (joint === undefined) return sheet;
      const conductivity = layerConductivity(joint.material, layer.thickness).likely;
      return { ...sheet, bridge: { share: joint.share, conductivity } };
    }
    case 'own': {
      const { conductivity, thickness, emissivity } = layer;
      return { kind: 'solid', conductivity, thickness, emissivity, origin };
    }
    case 'resistance':
      return { kind: 'resistance', resistance: layer.resistance, origin };
    case 'sealedGap':
    case 'openGap':
    case 'waterGap':
      return { ...layer, origin };
  }
}

/** ε of the outermost face. */
export function outermostEmissivity(stack: Stack): number {
  const last = stack.at(-1);
  return last !== undefined && 'emissivity' in last ? (last.emissivity ?? OUTER_EMISSIVITY) : OUTER_EMISSIVITY;
}

/** What lies beyond, with what the exposures of a tank have in common. */
export interface Beyond {
  readonly windSpeed: number;
  /** Area of all panels in the still air of a closed stand, and area of its boards where it was not given [m²]. */
  readonly areaInStand: number;
  readonly usualBoardArea: number;
  readonly factors: TankFactors;
}

/**
 * What lies beyond a panel. The boards of a closed stand are shared by all panels in its air, each by its area: exact where
 * all give the same heat per area.
 */
export function exposureOf(exposure: PlainExposure, beyond: Beyond): Exposure {
  switch (exposure.kind) {
    case 'roomAir':
    case 'openStand':
      return { kind: 'roomAir' };
    case 'againstWall':
    case 'slab':
      return exposure;
    case 'outdoors':
      return { kind: 'outdoors', windSpeed: beyond.windSpeed };
    case 'closedStand': {
      const { material: name, thickness, boardArea = beyond.usualBoardArea } = exposure;
      const boards = thickness / layerConductivity(name, thickness).likely;
      return {
        kind: 'closedStand',
        resistance: beyond.factors.standFactor * standResistance(boards, beyond.areaInStand, boardArea),
      };
    }
  }
}

function faceEmissivity(name: string, { foilEmissivityFactor }: TankFactors): number {
  const { likely } = material(name).emissivity;
  return likely < mirrorEmissivity ? foilEmissivityFactor * likely : likely;
}
