// What the tank model answers: watts by path, the net load, water lost, what the room receives, and the numbers on the way.

import type { Finding } from '../quantities/index.ts';
import type { HeadspaceFlux } from './cover/headspace.ts';
import type { RectangularTank } from './description.ts';
import type { OuterSurface } from './stack/films.ts';

export type PathName =
  | 'evaporation'
  | 'surfaceConvection'
  | 'surfaceRadiation'
  | 'lid'
  | 'freeboard'
  | 'front'
  | 'back'
  | 'sides'
  | 'bottom'
  | 'makeUpWater'
  | 'airStonesVapour'
  | 'airStones'
  | 'wallsAndSurface';

/** One way by which heat leaves the water. */
export interface HeatPath {
  readonly path: PathName;
  /** [W], positive out of the water. */
  readonly heat: number;
  readonly kind: 'sensible' | 'latent';
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

/** One face of the tank: from the water (or the inner face above it) through pane and wrapping to the room. */
export interface PaneState {
  readonly area: number;
  /** Temperature on the inside [K]: water, or the damp inner face above the water. */
  readonly inside: number;
  /** 0 where no water touches the face. */
  readonly waterFilmResistance: number;
  readonly paneResistance: number;
  readonly insulationResistance: number;
  /** All three. */
  readonly innerResistance: number;
  readonly outer: OuterSurface;
  /** U = 1/(R_inner + R_s) [W/(m² K)]. */
  readonly transmittance: number;
  readonly heat: number;
}

export type WetFace = 'front' | 'back' | 'sides' | 'bottom';
export type DryFace = 'front' | 'back' | 'sides';

/** The open part of the water surface; absent under a tight lid. */
export interface SurfaceState {
  /** Share of the surface that is open: 1 without a lid. */
  readonly openShare: number;
  readonly area: number;
  readonly roomDryAirDensity: number;
  readonly waterDryAirDensity: number;
  readonly quietCoefficient: number;
  readonly activeCoefficient: number;
  readonly activeShare: number;
  readonly factor: number;
  readonly coefficient: number;
  readonly evaporation: number;
  readonly convectionCoefficient: number;
}

/** The covered part of the surface; absent without a lid. */
export interface LidState {
  readonly coveredShare: number;
  /** Covered water surface [m²] (the lid's own area too). */
  readonly area: number;
  readonly gap: number;
  /** Inner faces of lid and panes above the water [K]. */
  readonly innerTemperature: number;
  readonly iterations: number;
  /** [K], how far the inner temperature is from balancing what crosses the headspace: ~0. */
  readonly residual: number;
  /** Absent where the lid lies on the water. */
  readonly headspace: HeadspaceFlux | undefined;
  readonly lid: PaneState;
  readonly freeboard: Readonly<Record<DryFace, PaneState>> | undefined;
}

export interface RectangularIntermediates {
  readonly kind: 'rectangular';
  readonly air: AirState;
  readonly panes: Readonly<Record<WetFace, PaneState>>;
  readonly surface: SurfaceState | undefined;
  readonly lid: LidState | undefined;
  readonly airStones: { readonly dryAirFlow: number; readonly evaporation: number } | undefined;
  /** c_p [J/(kg K)] of the make-up water (fresh), which comes at room temperature. */
  readonly makeUpHeatCapacity: number;
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

export interface TankAreas {
  readonly waterSurface: number;
  readonly front: number;
  readonly back: number;
  /** Both ends together. */
  readonly sides: number;
  readonly bottom: number;
  /** Panes above the water line, all four. */
  readonly freeboard: number;
}

export interface TankLoad {
  readonly kind: 'rectangular' | 'measured';
  /** Heat leaving the water by all paths [W]. */
  readonly loss: number;
  readonly gains: { readonly pump: number; readonly light: number };
  /** Net heating needed [W] = loss − gains; negative where the tank would have to be cooled. */
  readonly load: number;
  readonly paths: readonly HeatPath[];
  /** Water lost as vapour [kg/s]. */
  readonly evaporation: number;
  /** The same with the evaporation factor at the ends of its surface's range [kg/s]. */
  readonly evaporationRange: { readonly low: number; readonly high: number };
  /** What the room receives as warmth and as vapour [W]. */
  readonly sensibleToRoom: number;
  readonly latentToRoom: number;
  /** [m²]; absent for a measured tank. */
  readonly areas: TankAreas | undefined;
  /** [m³], [kg], [J/K]. */
  readonly waterVolume: number;
  readonly waterMass: number;
  readonly heatCapacity: number;
  /** Change of the loss per kelvin of water temperature, here [W/K]. */
  readonly conductance: number;
  readonly intermediates: RectangularIntermediates | MeasuredIntermediates;
  readonly warnings: readonly Finding[];
}

/**
 * Net heating needed.
 *     load = loss − pump − light
 * @param loss   heat leaving by all paths [W]
 * @param pump   heat of the pumps that stays in the water [W]
 * @param light  heat of the lights that stays in the water [W]
 * @returns      [W], negative where the tank would have to be cooled
 * Source: energy balance. Worked value: 334 − 9 − 0 → 325 W.
 */
export function netLoad(loss: number, pump: number, light: number): number {
  return loss - pump - light;
}

/**
 * Water in a rectangular tank.
 *     V = L B D
 * @param length  L [m], inner
 * @param width   B [m], inner
 * @param depth   D [m], of the water
 * @returns       V [m³]; gravel and rock are not taken off
 * Source: geometry. Worked value: 1.5, 0.5, 0.57 → 0.4275 m³.
 */
export function waterVolume(length: number, width: number, depth: number): number {
  return length * width * depth;
}

/**
 * Heat capacity of the water.
 *     C = V ρ c_p
 * @param volume        V [m³]
 * @param density       ρ [kg/m³]
 * @param specificHeat  c_p [J/(kg K)]
 * @returns             C [J/K], of the water alone
 * Source: definition. Worked value: 0.2 m³ fresh at 26 °C → 8.34e5 J/K.
 */
export function heatCapacity(volume: number, density: number, specificHeat: number): number {
  return volume * density * specificHeat;
}

/**
 * Time in which the water cools by some kelvins while nothing heats it.
 *     t = C ΔT / Q̇
 * @param capacity    C [J/K]
 * @param difference  ΔT [K], small against the temperature difference to the room
 * @param load        Q̇ [W], heat the tank needs, > 0
 * @returns           t [s]
 * Validity: the load does not fall noticeably over so small a change. Source: definition of heat capacity.
 * Worked value: 8.34e5 J/K, 1 K, 120 W → 6950 s.
 */
export function coolingTime(capacity: number, difference: number, load: number): number {
  return (capacity * difference) / load;
}

/** Sum of the paths' heat [W]. */
export function sumOfPaths(paths: readonly HeatPath[]): number {
  return paths.reduce((sum, path) => sum + path.heat, 0);
}

/** Sensible heat that reaches the room [W]: the paths of warmth; what warms make-up water stays in the tank. */
export function sensibleToRoom(paths: readonly HeatPath[]): number {
  return sumOfPaths(paths.filter(({ path, kind }) => kind === 'sensible' && path !== 'makeUpWater'));
}

/** Heat that reaches the room as vapour [W]. */
export function latentToRoom(paths: readonly HeatPath[]): number {
  return sumOfPaths(paths.filter(({ kind }) => kind === 'latent'));
}

/**
 * Water lost as vapour.
 *     m_e = m_s + m_b
 * @param surface  m_s [kg/s], from the open surface; negative where the room's vapour condenses on it
 * @param bubbles  m_b [kg/s], into air blown through the water
 * @returns        m_e [kg/s]
 * Source: mass balance. Worked value: 5e-5 + 2.6e-6 → 5.26e-5 kg/s.
 */
export function waterLost(surface: number, bubbles: number): number {
  return surface + bubbles;
}

/** The range of the evaporation of the surface alone, for a factor range, signed. */
export function scaledRange(value: number, low: number, high: number): { low: number; high: number } {
  const ends = [value * low, value * high];
  return { low: Math.min(...ends), high: Math.max(...ends) };
}

/**
 * Area A of n like faces, or of a share of one.
 *     A = n b h
 * @param count    n [-], number of faces or share of one
 * @param breadth  b [m]
 * @param height   h [m]
 * @returns        A [m²]
 * Source: geometry. Worked value: 2, 0.5, 0.57 → 0.57 m².
 */
export function faceArea(count: number, breadth: number, height: number): number {
  return count * breadth * height;
}

/**
 * Height d of the air between the water and the rim.
 *     d = H − D
 * @param height  H [m], inner
 * @param depth   D [m], of the water
 * @returns       d [m]
 * Source: geometry. Worked value: 0.60, 0.57 → 0.03 m.
 */
export function headspaceGap(height: number, depth: number): number {
  return height - depth;
}

/** Sum of the heat through the panes above the water [W]. */
export function freeboardHeat(front: number, back: number, sides: number): number {
  return front + back + sides;
}

/**
 * Conductance of the panes above the water, under a lid.
 *     H_dry = A_front U_front + A_back U_back + A_sides U_sides
 * @param faces  area A [m²] and transmittance U [W/(m² K)] of front, back and both ends
 * @returns      H_dry [W/K]
 * Source: definition. Worked value: 0.045, 6; 0.045, 2; 0.03, 6 → 0.54 W/K.
 */
export function freeboardConductance(
  faces: Readonly<Record<DryFace, Pick<PaneState, 'area' | 'transmittance'>>>,
): number {
  const { front, back, sides } = faces;
  return front.area * front.transmittance + back.area * back.transmittance + sides.area * sides.transmittance;
}

/** Geometry of a rectangular tank; inner dimensions, corners counted once. */
export function tankAreas(tank: RectangularTank): TankAreas {
  const { length, width, height, waterDepth } = tank;
  return {
    waterSurface: faceArea(1, length, width),
    front: faceArea(1, length, waterDepth),
    back: faceArea(1, length, waterDepth),
    sides: faceArea(2, width, waterDepth),
    bottom: faceArea(1, length, width),
    freeboard: 2 * (length + width) * headspaceGap(height, waterDepth),
  };
}
