// What lies between the water and the surroundings, layer by layer from the water outwards. Plain numbers in base SI.

/** A solid sheet, board or bed. */
export interface SolidLayer {
  readonly kind: 'solid';
  /** d [m]. */
  readonly thickness: number;
  /** k [W/(m K)]. */
  readonly conductivity: number;
  /** Part of the area that another material bridges: timber in a board, steel in a frame. */
  readonly bridge?: { readonly share: number; readonly conductivity: number };
  /** Long-wave emissivity ε [-] of its faces, where a gap or the room lies beside it; 0.9 where absent. */
  readonly emissivity?: number;
}

/** A layer known by its thermal resistance R [m² K/W] alone. */
export interface ResistanceLayer {
  readonly kind: 'resistance';
  readonly resistance: number;
  readonly emissivity?: number;
}

/** A sealed air space. One that is open to the room is an open gap. */
export interface SealedGap {
  readonly kind: 'sealedGap';
  readonly thickness: number;
  /** ε [-] of the face towards the water and of the face away from it; those of the layers beside it where absent. */
  readonly innerEmissivity?: number;
  readonly outerEmissivity?: number;
  /** Smaller dimension of the gap's face [m], where it is less than ten thicknesses wide. */
  readonly breadth?: number;
}

/**
 * An air space open to the room, behind a board that hangs before a pane: it and all beyond it count for nothing, the face before
 * it looks at still room air (ISO 6946, well-ventilated air layer).
 */
export interface OpenGap {
  readonly kind: 'openGap';
  readonly thickness: number;
}

/** Standing water, behind a decorative background or between two panes. */
export interface WaterGap {
  readonly kind: 'waterGap';
  readonly thickness: number;
}

/** `origin`: where in the design the layer stands, for its working and its errors: 'tank.load.wall'. */
export type StackLayer = (SolidLayer | ResistanceLayer | SealedGap | OpenGap | WaterGap) & { readonly origin?: string };

/** Layers from the water outwards; may be empty. */
export type Stack = readonly StackLayer[];
