// What the tank model answers: watts by path, the net load, water lost, what the room receives, and the numbers on the way.

import type { Finding } from '../quantities/index.ts';
import type { Surface, VesselName } from './built-tank.ts';
import type { HeadspaceFlux } from './cover/headspace.ts';
import type { HoodState } from './cover/hood.ts';
import type { PipeState } from './pipes.ts';
import type { PanelState } from './stack/panel.ts';

/** Where the heat of a path ends. */
export type HeatSink = 'room' | 'outdoors' | 'ground' | 'freshWater';

/** One way by which heat leaves the water. */
export interface HeatPath {
  /**
   * Of the display tank: 'evaporation', 'surfaceConvection', 'surfaceRadiation', 'lid', 'freeboard', 'hoodAir', 'hoodVapour',
   * 'hoodWalls', 'freeboardOutdoors' or the name of a panel; of another vessel the same with its name before: 'sump.front'. Of the whole tank:
   * 'pipes.<name>', 'airStonesVapour', 'airStones', 'skimmerVapour', 'skimmer', 'makeUpWater', 'waterChange'; of a measured
   * tank 'evaporation' and 'wallsAndSurface'.
   */
  readonly path: string;
  readonly vessel?: VesselName;
  /** Name of the panel in its vessel. */
  readonly panel?: string;
  /** [W], positive out of the water. */
  readonly heat: number;
  readonly kind: 'sensible' | 'latent';
  readonly to: HeatSink;
}

/** Air and vapour at the conditions. */
export interface AirState {
  /** p_ws [Pa] of pure water at T_w and at T_r. */
  readonly saturationWater: number;
  readonly saturationRoom: number;
  /** Lowering by salt [-]. */
  readonly vapourPressureFactor: number;
  /** p_w [Pa] over the water, p_r [Pa] in the room. */
  readonly waterVapour: number;
  readonly roomVapour: number;
  /** h_fg [J/kg] at T_w. */
  readonly latentHeat: number;
}

/** The open part of a vessel's surface; absent under a tight lid. */
export interface SurfaceState {
  readonly surface: Surface;
  /** Share of the surface that is open: 1 without a lid. */
  readonly openShare: number;
  readonly area: number;
  readonly airSpeed: number;
  readonly roomDryAirDensity: number;
  readonly waterDryAirDensity: number;
  /** K_q of undisturbed water in still air, and with what faster air adds [kg/(s m² Pa)]. */
  readonly quietCoefficient: number;
  readonly movingAirCoefficient: number;
  readonly activeCoefficient: number;
  readonly activeShare: number;
  readonly factor: number;
  readonly coefficient: number;
  /** [kg/s]. */
  readonly evaporation: number;
  readonly convectionCoefficient: number;
}

/** The covered part of a vessel's surface; absent without a lid. */
export interface LidState {
  readonly coveredShare: number;
  /** Covered water surface [m²] (the lid's own area too). */
  readonly area: number;
  readonly gap: number;
  /** Inner faces of lid and panels above the water [K]. */
  readonly innerTemperature: number;
  readonly iterations: number;
  /** [W], how far what crosses the headspace is from what leaves through these faces: ~0. */
  readonly residual: number;
  /** Absent where the lid lies on the water. */
  readonly headspace: HeadspaceFlux | undefined;
  readonly lid: PanelState;
  /** Panels above the water, in the order of the vessel's panels that reach above it. */
  readonly freeboard: readonly PanelState[];
}

/** A vessel as it settles. */
export interface VesselState {
  readonly name: VesselName;
  /** What water touches. */
  readonly panels: readonly PanelState[];
  readonly surface: SurfaceState | undefined;
  readonly lid: LidState | undefined;
  readonly hood: HoodState | undefined;
  readonly paths: readonly HeatPath[];
  /** Water lost as vapour from its surface [kg/s]. */
  readonly evaporation: number;
}

/** Room air drawn through the water. */
export interface AirDrawnState {
  readonly name: 'airStones' | 'skimmer';
  readonly dryAirFlow: number;
  readonly evaporation: number;
}

export interface BuiltIntermediates {
  readonly kind: 'built';
  readonly air: AirState;
  readonly vessels: readonly VesselState[];
  /** The display tank under its cover of the night. */
  readonly night: { readonly share: number; readonly vessel: VesselState } | undefined;
  readonly pipes: readonly PipeState[];
  readonly airDrawn: readonly AirDrawnState[];
  /** c_p [J/(kg K)] of make-up water (fresh), and the temperature at which it comes [K]. */
  readonly makeUpHeatCapacity: number;
  readonly makeUpTemperature: number;
  /** On every loss; 1 unless a measurement was adopted. */
  readonly measuredOverModelled: number;
}

export interface MeasuredIntermediates {
  readonly kind: 'measured';
  readonly air: AirState;
  readonly meanPower: number;
  /** Whole loss while it was measured [W]: heater, pumps and lights. */
  readonly measuredLoss: number;
  readonly measuredLatent: number;
  readonly measuredSensible: number;
  /** T_w − T_r [K] and p_w − p_r [Pa] while it was measured. */
  readonly measuredTemperatureDifference: number;
  readonly measuredVapourDifference: number;
}

export interface TankGains {
  readonly pump: number;
  readonly light: number;
  readonly ultraviolet: number;
}

export interface TankLoad {
  readonly kind: 'built' | 'measured';
  /** Heat leaving the water by all paths [W]. */
  readonly loss: number;
  readonly gains: TankGains;
  /** Net heating needed [W] = loss − gains; negative where the tank would have to be cooled. */
  readonly load: number;
  readonly paths: readonly HeatPath[];
  /** Water lost as vapour [kg/s]. */
  readonly evaporation: number;
  /** The same at the ends of what the methods of evaporation span for each surface here [kg/s]. */
  readonly evaporationRange: { readonly low: number; readonly high: number };
  /** What the room receives as warmth and as vapour, and what ends outdoors, in the ground and in fresh water [W]. */
  readonly sensibleToRoom: number;
  readonly latentToRoom: number;
  readonly lostElsewhere: number;
  /** [m³], [kg], [J/K]. */
  readonly waterVolume: number;
  readonly waterMass: number;
  readonly heatCapacity: number;
  /** Change of the loss per kelvin of water temperature, here [W/K]. */
  readonly conductance: number;
  readonly intermediates: BuiltIntermediates | MeasuredIntermediates;
  readonly warnings: readonly Finding[];
}
