// What a tank is told to be: as it is built, or by a measurement of what its heater used, and the conditions around it. Plain
// numbers in base SI; this file also refuses conditions and measurements that cannot be, naming the place.

import {
  InputError,
  OutOfModelError,
  requireFinite,
  requireNonNegative,
  requirePositive,
  requireWithin,
} from '../numerics/index.ts';
import type { BuiltTank } from './built-tank.ts';

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
  /** [K], where a panel faces outdoors: 213.15 to 363.15. */
  readonly outdoorTemperature?: number;
  /** [K], where a panel lies on a slab: 213.15 to 363.15. */
  readonly groundTemperature?: number;
  /** Of the water main [K], where fresh water comes from it, 0 to 60 °C. */
  readonly mainsTemperature?: number;
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

export type TankDescription = BuiltTank | MeasuredTank;

/** Where the tank model holds. */
export const tankValidity = {
  waterTemperature: { min: 273.15, max: 323.15 },
  roomTemperature: { min: 233.15, max: 333.15 },
  /** Of outdoor air and of ground; wider than any climate, since a default may lie some 20 K from what was said. */
  weather: { min: 213.15, max: 363.15 },
  pressure: { min: 50e3, max: 110e3 },
} as const;

/** @throws InputError or OutOfModelError naming the first condition that cannot be used. */
export function checkConditions(conditions: TankConditions): void {
  const { waterTemperature, roomTemperature, pressure, weather } = tankValidity;
  requireModel('tank.waterTemperature', conditions.waterTemperature, 'K', waterTemperature);
  requireModel('room.temperature', conditions.roomTemperature, 'K', roomTemperature);
  requireWithin('room.relativeHumidity', conditions.roomRelativeHumidity, 0, 1);
  requireModel('atmosphericPressure', conditions.atmosphericPressure, 'Pa', pressure);
  const { outdoorTemperature, groundTemperature } = conditions;
  if (outdoorTemperature !== undefined) requireModel('outdoors.temperature', outdoorTemperature, 'K', weather);
  if (groundTemperature !== undefined) requireModel('ground.temperature', groundTemperature, 'K', weather);
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

function requireModel(path: string, value: number, unit: string, range: { min: number; max: number }): void {
  requireFinite(path, value);
  if (value < range.min || value > range.max) throw new OutOfModelError(path, value, unit, range.min, range.max);
}
