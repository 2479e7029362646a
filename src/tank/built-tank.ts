// A tank as it stands in the room: vessels of water, each with panels of layers, an open or covered surface, and what passes
// in and out with air and water. Plain numbers in base SI. Where a shape becomes panels: geometry/.

import type { Stack } from './stack/layers.ts';

/** How the water surface looks: a mirror, ripples from a filter outlet, or broken by a strong pump or air stones. */
export type Surface = 'still' | 'rippled' | 'rough';

/** Which way a panel faces: a side that stands upright, the bottom, or a top that water or damp air touches from below. */
export type Facing = 'side' | 'bottom' | 'top';

/** What lies beyond the outermost layer of a panel. */
export type Exposure =
  /** The air of the room, also below an open stand. */
  | { readonly kind: 'roomAir' }
  /** A wall of the house close by, with the gap open at its edges; R [m² K/W] from its face to air as warm as the room beyond it. */
  | { readonly kind: 'againstWall'; readonly resistance: number }
  /** The still air of a closed stand; R [m² K/W] from that air to the room, per area of the panel: standResistance. */
  | { readonly kind: 'closedStand'; readonly resistance: number }
  /** A slab on the ground; R [m² K/W] of slab and ground together, to the temperature of the ground. */
  | { readonly kind: 'slab'; readonly resistance: number }
  /** Outdoor air; wind v [m/s]. */
  | { readonly kind: 'outdoors'; readonly windSpeed: number };

/** One flat or curved piece of a vessel's shell. */
export interface Panel {
  /** 'front', 'left', 'bottom', 'recessBack', …; unique in its vessel. */
  readonly name: string;
  readonly facing: Facing;
  /** Area that water touches, and area above the water line [m²]. */
  readonly wetArea: number;
  readonly dryArea: number;
  /** From the water outwards. */
  readonly stack: Stack;
  /** How many layers at the beginning of the stack lie in the water (sand bed, background) and end at the water line. */
  readonly layersInWater: number;
  /** ε [-] of the outermost face. */
  readonly emissivity: number;
  readonly exposure: Exposure;
}

/** What lies over the water of a vessel. */
export type Cover =
  | { readonly kind: 'none' }
  /** A lid that closes the headspace but for a share of the surface that its gaps leave open to the room, 0 to 1. */
  | { readonly kind: 'lid'; readonly stack: Stack; readonly emissivity: number; readonly openShare: number }
  /** A hood over the water whose fan draws room air through it. */
  | {
      readonly kind: 'hood';
      readonly stack: Stack;
      readonly emissivity: number;
      /** Surface of its sides and top [m²]. */
      readonly area: number;
      /** Room air drawn through [m³/s]. */
      readonly airFlow: number;
    };

export const vesselNames = ['tank', 'sump', 'refuge', 'overflow'] as const;
export type VesselName = (typeof vesselNames)[number];

export interface Vessel {
  readonly name: VesselName;
  readonly panels: readonly Panel[];
  /** Open area of the water [m²] and its perimeter [m]. */
  readonly waterSurface: number;
  readonly perimeter: number;
  /** Water in it [m³]. */
  readonly waterVolume: number;
  /** Air between the water and the rim [m]. */
  readonly freeboard: number;
  readonly surface: Surface;
  /** Multiplies the evaporation that the surface's method gives, and its convection; 1 where absent. */
  readonly evaporationFactor?: number;
  /** Room air over the surface [m/s]; that of the handbook where absent. */
  readonly airSpeed?: number;
  readonly cover: Cover;
}

/** A pipe or hose with tank water in it, bare or wrapped, in room air. */
export interface Pipe {
  readonly name: string;
  readonly length: number;
  readonly outerDiameter: number;
  readonly wallThickness: number;
  readonly wallConductivity: number;
  readonly insulation?: { readonly thickness: number; readonly conductivity: number };
  /** ε [-] of its outer face. */
  readonly emissivity: number;
}

/** Fresh water that has to be warmed. */
export interface WaterExchange {
  /** Whether make-up water comes as warm as the room or as the water main. */
  readonly makeUpFrom: 'room' | 'mains';
  /** Water changed [m³/s, mean]: it comes from the main, and the outgoing leaves as warm as the tank. */
  readonly changeFlow: number;
}

export interface BuiltTank {
  readonly kind: 'built';
  /** S, kg salt per kg water; 0 for fresh water. */
  readonly salinity: number;
  /** The display tank first. */
  readonly vessels: readonly Vessel[];
  readonly pipes: readonly Pipe[];
  /** Multiplies the outer surface coefficient h_c + h_r of panels, lids and pipes; 1, the standard film, where absent. */
  readonly outerFilmFactor?: number;
  /** Room air drawn through the water by air stones and by skimmers [m³/s at room state]. */
  readonly airFlow: { readonly airStones: number; readonly skimmer: number };
  readonly exchange: WaterExchange;
  /** Another cover of the display tank for a share of the day, 0 to 1. */
  readonly night?: { readonly share: number; readonly cover: Cover };
  /** Multiplies every loss: the measured loss over the modelled one, where a measurement was adopted; 1 where absent. */
  readonly measuredOverModelled?: number;
  /** Mean heat that stays in the water [W]. */
  readonly pumpHeat: number;
  readonly lightHeat: number;
  readonly ultravioletHeat: number;
}
