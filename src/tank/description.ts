// What a tank is told to be: by its geometry and layers, or by a measurement of what its heater used. Plain numbers in
// base SI; this file also refuses what cannot be (water above the rim, a negative layer), naming the place.

import {
  InputError,
  OutOfModelError,
  requireFinite,
  requireNonNegative,
  requirePositive,
  requireWithin,
} from '../numerics/index.ts';

/** The water and the room around it. */
export interface TankConditions {
  /** T_w [K], 273.15 to 323.15. */
  readonly waterTemperature: number;
  /** T_r [K], 233.15 to 333.15; air and surrounding surfaces. */
  readonly roomTemperature: number;
  /** RH [-], 0 to 1. */
  readonly roomRelativeHumidity: number;
  /** p [Pa], absolute, 50 to 110 kPa. */
  readonly atmosphericPressure: number;
}

/** A solid layer: conductivity k [W/(m K)] and thickness d [m]. */
export interface Layer {
  readonly conductivity: number;
  readonly thickness: number;
}

/** The sheet of a lid: a solid layer, or its conductance without surface films [W/(m² K)]; ε 0.9 where absent. */
export type LidLayer = (Layer | { readonly conductance: number }) & { readonly emissivity?: number };

/** How the water surface looks: a mirror, ripples from a filter outlet, or broken by a strong pump or air stones. */
export type Surface = 'still' | 'rippled' | 'rough';

export type Lid = 'none' | 'tight' | 'loose';

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
  /** Multiplies the evaporation that the surface's method gives, and its convection; 1 where absent. See `surfaceMethods`. */
  readonly evaporationFactor?: number;
  /** Multiplies the outer surface coefficient h_c + h_r of panes, bottom and lid; 1, the standard film, where absent. */
  readonly outerFilmFactor?: number;
  readonly lid: Lid;
  /** Required unless `lid` is none. */
  readonly lidLayer?: LidLayer;
  /** Loose lid: share of the water surface that its gaps leave open; LOOSE_LID_OPEN_SHARE where absent. */
  readonly lidOpenShare?: number;
  /** Room air blown through the water by air stones and skimmers [m³/s at room state]; 0 where absent. */
  readonly airFlow?: number;
  /** Mean heat of the pumps and of the lights that stays in the water [W]. */
  readonly pumpHeat: number;
  readonly lightHeat: number;
}

export interface MeasuredTank {
  readonly kind: 'measured';
  /** Electricity the heater used [J] in `duration` [s]. */
  readonly energy: number;
  readonly duration: number;
  /** Mean temperatures while it was measured [K]. */
  readonly roomTemperature: number;
  readonly waterTemperature: number;
  /** Water in the tank [m³]. */
  readonly volume: number;
  readonly salinity: number;
  /** Share of the whole loss that leaves as vapour, 0 to 1. */
  readonly evaporationShare: number;
  /** Mean heat of pumps and lights to the water while it was measured, and still [W]. */
  readonly pumpHeat: number;
  readonly lightHeat: number;
}

export type TankDescription = RectangularTank | MeasuredTank;

/** Where the tank model holds. */
export const tankValidity = {
  waterTemperature: { min: 273.15, max: 323.15 },
  roomTemperature: { min: 233.15, max: 333.15 },
  pressure: { min: 50e3, max: 110e3 },
} as const;

/** @throws InputError or OutOfModelError naming the first condition that cannot be used. */
export function checkConditions(conditions: TankConditions): void {
  const { waterTemperature, roomTemperature, pressure } = tankValidity;
  requireModel('tank.waterTemperature', conditions.waterTemperature, 'K', waterTemperature);
  requireModel('room.temperature', conditions.roomTemperature, 'K', roomTemperature);
  requireWithin('room.relativeHumidity', conditions.roomRelativeHumidity, 0, 1);
  requireModel('atmosphericPressure', conditions.atmosphericPressure, 'Pa', pressure);
}

/** @throws InputError naming the first field that cannot be. */
export function checkRectangular(tank: RectangularTank): void {
  for (const side of ['length', 'width', 'height', 'waterDepth'] as const) {
    requirePositive(`tank.load.${side}`, tank[side]);
  }
  if (tank.waterDepth > tank.height) {
    throw new InputError(
      'tank.load.waterDepth',
      tank.waterDepth,
      `at most the height, ${tank.height} m`,
      'waterAboveRim',
    );
  }
  requireWithin('tank.salinity', tank.salinity, 0, 0.12);
  checkLayer('tank.load.wall', tank.wall);
  checkEmissivity('tank.load.wall.emissivity', tank.wall.emissivity);
  for (const face of ['sides', 'back', 'bottom'] as const) {
    const layer = tank.insulation[face];
    if (layer !== undefined) checkLayer(`tank.load.insulation.${face}`, layer);
  }
  requireNonNegative('tank.load.pumpPower', tank.pumpHeat);
  requireNonNegative('tank.load.lightPower', tank.lightHeat);
  if (tank.evaporationFactor !== undefined) requirePositive('tank.load.evaporationFactor', tank.evaporationFactor);
  if (tank.outerFilmFactor !== undefined) requirePositive('outerFilmFactor', tank.outerFilmFactor);
  if (tank.airFlow !== undefined) requireNonNegative('tank.load.airFlow', tank.airFlow);
  checkLid(tank);
}

/** @throws InputError naming the first field that cannot be. */
export function checkMeasured(tank: MeasuredTank): void {
  requireNonNegative('tank.load.energy', tank.energy);
  requirePositive('tank.load.duration', tank.duration);
  requirePositive('tank.load.volume', tank.volume);
  requireWithin('tank.salinity', tank.salinity, 0, 0.12);
  requireWithin('tank.load.evaporationShare', tank.evaporationShare, 0, 1);
  requireNonNegative('tank.load.pumpPower', tank.pumpHeat);
  requireNonNegative('tank.load.lightPower', tank.lightHeat);
  const { waterTemperature, roomTemperature } = tankValidity;
  requireModel('tank.load.waterTemperature', tank.waterTemperature, 'K', waterTemperature);
  requireModel('tank.load.roomTemperature', tank.roomTemperature, 'K', roomTemperature);
  if (!(tank.waterTemperature > tank.roomTemperature)) {
    throw new InputError(
      'tank.load.roomTemperature',
      tank.roomTemperature,
      `below the water's ${tank.waterTemperature} K: a heater that ran in a warmer room says nothing about losses`,
      'measuredRoomTooWarm',
    );
  }
}

function checkLid(tank: RectangularTank): void {
  if (tank.lid === 'none') return;
  const layer = tank.lidLayer;
  if (layer === undefined) {
    throw new InputError('tank.load.lidMaterial', layer, 'a material and thickness, as the tank has a lid', 'missing');
  }
  if ('conductance' in layer) requirePositive('tank.load.lidMaterial', layer.conductance);
  else checkLayer('tank.load.lid', layer);
  if (layer.emissivity !== undefined) checkEmissivity('tank.load.lidMaterial', layer.emissivity);
  if (tank.lidOpenShare !== undefined) requireWithin('tank.load.lidOpenShare', tank.lidOpenShare, 0, 1);
}

function checkLayer(path: string, layer: Layer): void {
  requirePositive(`${path}.thickness`, layer.thickness);
  requireWithin(`${path}.conductivity`, layer.conductivity, 0.01, 450);
}

function checkEmissivity(path: string, emissivity: number): void {
  requireWithin(path, emissivity, 0.01, 1);
}

function requireModel(path: string, value: number, unit: string, range: { min: number; max: number }): void {
  requireFinite(path, value);
  if (value < range.min || value > range.max) throw new OutOfModelError(path, value, unit, range.min, range.max);
}
