// What can be done to a tank so that less heat leaves it, as plain numbers in base SI. A measure names the parts it touches by
// vessel and panel; which panels "the hidden sides" are stands in places.ts.

import type { Surface, VesselName } from '../built-tank.ts';
import type { Stack } from '../stack/layers.ts';

/** One panel of one vessel. */
export interface PanelPlace {
  readonly vessel: VesselName;
  readonly panel: string;
}

/** A sheet laid over the water: its layers from below upwards, ε [-] of its upper face, and the share it leaves open, 0 to 1. */
export interface LidSheet {
  readonly stack: Stack;
  readonly emissivity: number;
  readonly openShare: number;
}

export type Measure =
  /** A lid on a vessel, in place of what covers it now. */
  | ({ readonly kind: 'lid'; readonly vessel: VesselName } & LidSheet)
  /** Layers on the outer face of panels, from the panel outwards: a board over a sealed gap, a mat, a second pane. */
  | {
      readonly kind: 'outside';
      readonly panels: readonly PanelPlace[];
      readonly stack: Stack;
      /** ε [-] of the new outermost face. */
      readonly emissivity: number;
    }
  /** Water kept cooler by some kelvins, > 0. */
  | { readonly kind: 'cooler'; readonly by: number }
  /** A lid on the display tank for a share of the day, 0 to 1. */
  | ({ readonly kind: 'nightCover'; readonly share: number } & LidSheet)
  /** A calmer surface of the display tank. */
  | { readonly kind: 'calmerSurface'; readonly to: Surface };

/** What a measure changed: a panel, the cover by day or by night, the surface, the temperature. */
export type ChangedPart =
  | { readonly part: 'panel'; readonly vessel: VesselName; readonly panel: string }
  | { readonly part: 'cover'; readonly vessel: VesselName }
  | { readonly part: 'night' }
  | { readonly part: 'surface' }
  | { readonly part: 'waterTemperature' };

/** Why a measure, or a part of one, changes nothing on this tank. */
export type NoEffectReason =
  /** What covers the water already keeps it at least as well. */
  | 'noBetterThanPresent'
  /** The tank has no such vessel or panel. */
  | 'noSuchPart'
  /** The surface is as calm already. */
  | 'alreadyCalm'
  /** The tank is known by its meter alone: nobody knows its panels and its surface. */
  | 'sizesUnknown';

export interface NoEffect {
  readonly part: ChangedPart;
  readonly reason: NoEffectReason;
}

/** What became of one measure of the list. */
export interface MeasureOutcome {
  readonly changed: readonly ChangedPart[];
  readonly unchanged: readonly NoEffect[];
}
