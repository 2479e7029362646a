// The tank of a design beside its document, for any kind of number: what is known of its load, its vessels, the layers of
// its faces, what covers it. A value that may stay open without a default is absent.

import type { YesNo } from './plain.ts';

export type SurfaceName = 'still' | 'rippled' | 'rough';
export type LidName = 'none' | 'tight' | 'loose' | 'hood';
export type FaceName = 'front' | 'back' | 'left' | 'right' | 'side' | 'recessBack' | 'recessSide' | 'bottom';
export type PanelFacing = 'side' | 'bottom' | 'top';

/** A sheet or board of a material that is known here. */
export interface SheetOf<Q> {
  readonly material: string;
  readonly thickness: Q;
}

/** A board outside of a pane; with a sealed air space between the two where `gap` is given. */
export interface BoardOf<Q> extends SheetOf<Q> {
  readonly gap?: Q;
}

/** One layer of a face, from the water outwards. */
export type LayerOf<Q> =
  | (SheetOf<Q> & {
      readonly kind: 'material';
      /** Another material that bridges part of the area: timber, steel. */
      readonly joint?: { readonly material: string; readonly share: Q };
    })
  | { readonly kind: 'own'; readonly conductivity: Q; readonly thickness: Q; readonly emissivity: Q }
  | { readonly kind: 'resistance'; readonly resistance: Q }
  | {
      readonly kind: 'sealedGap';
      readonly thickness: Q;
      /** Of the face towards the water and of the one away from it; those of the layers beside it where absent. */
      readonly innerEmissivity?: Q;
      readonly outerEmissivity?: Q;
    }
  /** `openGap`: open to the room; it and what lies beyond count for nothing. */
  | { readonly kind: 'openGap' | 'waterGap'; readonly thickness: Q };

/** What lies beyond the outermost layer. */
export type ExposureOf<Q> =
  | { readonly kind: 'roomAir' | 'openStand' | 'outdoors' }
  /** R of the wall, to the room behind it. */
  | { readonly kind: 'againstWall'; readonly resistance: Q }
  /** Boards of the stand; their whole area where it was given. */
  | (SheetOf<Q> & { readonly kind: 'closedStand'; readonly boardArea?: Q })
  /** R of slab and ground, to the temperature of the ground. */
  | { readonly kind: 'slab'; readonly resistance: Q };

/** What one face has of its own; where `wall` is absent it is as the other faces. */
export interface FacePartsOf<Q> {
  readonly wall?: SheetOf<Q>;
  readonly inside: readonly LayerOf<Q>[];
  readonly outside: readonly LayerOf<Q>[];
  /** Room air at the sides, what the tank stands on at the bottom, where absent. */
  readonly exposure?: ExposureOf<Q>;
}

export interface FaceOf<Q> extends FacePartsOf<Q> {
  readonly face: FaceName;
}

/** A panel of a tank that is described piece by piece. */
export interface PanelOf<Q> extends FacePartsOf<Q> {
  readonly name: string;
  readonly facing: PanelFacing;
  /** Below and above the water line. */
  readonly area: Q;
  readonly areaAboveWater: Q;
}

/** Sump, refuge or overflow: a box with water. */
export interface SideVesselOf<Q> {
  readonly kind: 'rectangular';
  readonly length: Q;
  readonly width: Q;
  readonly height: Q;
  readonly waterDepth: Q;
  readonly wall: SheetOf<Q>;
  readonly insulation?: BoardOf<Q>;
  readonly surface: SurfaceName;
  readonly evaporationFactor: Q;
  readonly lid: 'none' | 'tight' | 'loose';
  readonly lidMaterial: string;
  readonly lidThickness: Q;
  readonly lidOpenShare: Q;
  /** Of all its sides and its bottom. */
  readonly exposure: ExposureOf<Q>;
}

export interface PipeOf<Q> {
  readonly name?: string;
  readonly length: Q;
  readonly outerDiameter: Q;
  readonly material: string;
  readonly wallThickness: Q;
  readonly insulation?: SheetOf<Q>;
}

export interface GainsOf<Q> {
  readonly pumpPower: Q;
  readonly pumpShareToWater: Q;
  readonly lightPower: Q;
  readonly lightHours: Q;
  readonly lightShareToWater: Q;
}

export interface MeasuredLoadOf<Q> extends GainsOf<Q> {
  readonly kind: 'measured';
  readonly energy: Q;
  readonly duration: Q;
  readonly roomTemperature: Q;
  readonly waterTemperature: Q;
  readonly volume: Q;
  readonly evaporationShare: Q;
}

/** What a meter on the heater of a tank that is known by its sizes showed. */
export interface MeterOf<Q> {
  readonly kind: 'heater';
  readonly energy: Q;
  readonly duration: Q;
  readonly roomTemperature: Q;
  readonly waterTemperature: Q;
  /** Whether the measured loss replaces the computed one. */
  readonly adopt: YesNo;
}

/** The cover of the display tank; only what `lid` calls for has a meaning. */
export interface CoverPartsOf<Q> {
  readonly lid: LidName;
  readonly lidMaterial: string;
  readonly lidThickness: Q;
  readonly lidPanes: 'one' | 'two';
  readonly lidPaneGap: Q;
  /** Instead of material, thickness and panes; from the water upwards. Absent where there is none. */
  readonly lidLayers?: readonly LayerOf<Q>[];
  readonly lidOpenShare: Q;
  readonly hood: SheetOf<Q> & { readonly airFlow: Q; readonly height: Q };
}

interface SizedPartsOf<Q> extends GainsOf<Q>, CoverPartsOf<Q> {
  readonly wall: SheetOf<Q>;
  readonly surface: SurfaceName;
  /** Room air over the surface; that of the evaporation method where absent. */
  readonly airSpeed?: Q;
  readonly evaporationFactor: Q;
  readonly stand: ExposureOf<Q>;
  readonly sump?: SideVesselOf<Q>;
  readonly refuge?: SideVesselOf<Q>;
  readonly overflow?: SideVesselOf<Q>;
  readonly pipes: readonly PipeOf<Q>[];
  readonly airStones: Q;
  readonly skimmerAir: Q;
  readonly makeUpFrom: 'room' | 'mains';
  readonly waterChange?: { readonly volume: Q; readonly every: Q };
  readonly ultravioletPower: Q;
  readonly ultravioletShareToWater: Q;
  readonly meter?: MeterOf<Q>;
}

interface ShapedPartsOf<Q> extends SizedPartsOf<Q> {
  readonly height: Q;
  readonly waterDepth: Q;
  /** The short form: one board on a face. A cylinder has sides and a bottom only. */
  readonly insulation: {
    readonly front?: BoardOf<Q>;
    readonly sides?: BoardOf<Q>;
    readonly back?: BoardOf<Q>;
    readonly bottom?: BoardOf<Q>;
  };
  readonly faces: readonly FaceOf<Q>[];
}

export interface RectangularLoadOf<Q> extends ShapedPartsOf<Q> {
  readonly kind: 'rectangular';
  readonly length: Q;
  readonly width: Q;
}

export interface CylinderLoadOf<Q> extends ShapedPartsOf<Q> {
  readonly kind: 'cylinder';
  readonly diameter: Q;
}

/** A rectangle without its back right corner. */
export interface LShapeLoadOf<Q> extends ShapedPartsOf<Q> {
  readonly kind: 'lShape';
  readonly length: Q;
  readonly width: Q;
  readonly recessLength: Q;
  readonly recessWidth: Q;
}

export interface PanelsLoadOf<Q> extends SizedPartsOf<Q> {
  readonly kind: 'panels';
  readonly waterSurface: Q;
  readonly waterVolume: Q;
  readonly freeboard: Q;
  readonly panels: readonly PanelOf<Q>[];
}

export type ShapedLoadOf<Q> = RectangularLoadOf<Q> | CylinderLoadOf<Q> | LShapeLoadOf<Q>;
export type SizedLoadOf<Q> = ShapedLoadOf<Q> | PanelsLoadOf<Q>;
export type LoadOf<Q> = MeasuredLoadOf<Q> | SizedLoadOf<Q>;

/** A change to the design that costs money and saves heat. */
export type WrappingMeasureOf<Q> = { readonly name?: string; readonly cost: Q } & (
  | (SheetOf<Q> & {
      readonly kind: 'lid';
      readonly vessel: 'tank' | 'sump' | 'refuge' | 'overflow';
      readonly panes: 'one' | 'two';
    })
  | (BoardOf<Q> & {
      readonly kind: 'board';
      readonly where: 'hidden' | 'back' | 'sides' | 'bottom' | 'front' | 'sideVessels';
    })
  | (SheetOf<Q> & { readonly kind: 'mat' })
  | { readonly kind: 'doubleGlazing'; readonly where: 'front' | 'sides' | 'frontAndSides'; readonly gap: Q }
  | { readonly kind: 'cooler'; readonly by: Q }
  | (SheetOf<Q> & { readonly kind: 'nightCover'; readonly hours: Q })
  | { readonly kind: 'calmerSurface'; readonly to: 'still' | 'rippled' }
);
