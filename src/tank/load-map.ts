// The heat a tank needs as a table over room temperature, relative humidity and water temperature, read by interpolation: for
// whoever needs many thousands of loads of one tank. Linear between the points along each axis, so that what rises with an axis in
// the points rises everywhere, and nothing overshoots. Held fixed: air pressure, outdoors, ground, water main, all of the tank.
// Nothing in the program computes with it yet but the command line's `load --map` and the benchmark: the year still
// computes its twelve months exactly.

import { InputError, OutOfModelError } from '../numerics/index.ts';
import type { TankConditions, TankDescription } from './description.ts';
import { tankHeatOf } from './tank-heat.ts';

/** Equally spaced points from `low` to `high`, both among them; at least two. */
export interface MapAxis {
  readonly low: number;
  readonly high: number;
  readonly count: number;
}

export const mapAxisNames = ['roomTemperature', 'relativeHumidity', 'waterTemperature'] as const;
export type MapAxisName = (typeof mapAxisNames)[number];
export type MapAxes = Readonly<Record<MapAxisName, MapAxis>>;

export const mapColumns = ['load', 'sensibleToRoom', 'latentToRoom', 'evaporation'] as const;
/** load, sensibleToRoom, latentToRoom [W], evaporation [kg/s]. */
export type MapColumn = (typeof mapColumns)[number];

export interface LoadMap {
  readonly axes: MapAxes;
  /** By room temperature, then humidity, then water temperature, the last one fastest. */
  readonly columns: Readonly<Record<MapColumn, Float64Array>>;
  /** Largest difference between table and model in the middle of a cell, over all cells. */
  readonly largestError: Readonly<Record<MapColumn, number>>;
}

/** What stays as it is over the whole map. */
export type MapSurroundings = Omit<TankConditions, 'roomTemperature' | 'waterTemperature' | 'roomRelativeHumidity'>;

/**
 * The table of one tank, and how far it is from the model.
 * @param tank          as it is built, or by measurement
 * @param surroundings  p [Pa], and the temperatures outdoors and in the ground where a panel needs them
 * @param axes          T_r [K], RH [-], T_w [K]
 * @throws InputError for an axis that cannot be; whatever the load throws at a point
 * Accuracy: `largestError`, found in the middle of every cell, where a straight line through the corners is farthest off a curve.
 */
export function loadMap(tank: TankDescription, surroundings: MapSurroundings, axes: MapAxes): LoadMap {
  for (const name of mapAxisNames) checkAxis(name, axes[name]);
  const { roomTemperature: rooms, relativeHumidity: humidities, waterTemperature: waters } = axes;
  const heatAt = tankHeatOf(tank);
  const at = (room: number, humidity: number, water: number) =>
    heatAt({ ...surroundings, roomTemperature: room, roomRelativeHumidity: humidity, waterTemperature: water });
  const size = rooms.count * humidities.count * waters.count;
  const columns = {
    load: new Float64Array(size),
    sensibleToRoom: new Float64Array(size),
    latentToRoom: new Float64Array(size),
    evaporation: new Float64Array(size),
  };
  let place = 0;
  for (let i = 0; i < rooms.count; i++) {
    for (let j = 0; j < humidities.count; j++) {
      for (let k = 0; k < waters.count; k++) {
        const heat = at(pointOf(rooms, i), pointOf(humidities, j), pointOf(waters, k));
        for (const name of mapColumns) columns[name][place] = heat[name];
        place += 1;
      }
    }
  }
  const map = { axes, columns, largestError: { load: 0, sensibleToRoom: 0, latentToRoom: 0, evaporation: 0 } };
  const largestError: Record<MapColumn, number> = map.largestError;
  for (let i = 0.5; i < rooms.count - 1; i++) {
    for (let j = 0.5; j < humidities.count - 1; j++) {
      for (let k = 0.5; k < waters.count - 1; k++) {
        const point = [pointOf(rooms, i), pointOf(humidities, j), pointOf(waters, k)] as const;
        const heat = at(...point);
        for (const name of mapColumns) {
          largestError[name] = Math.max(largestError[name], Math.abs(heat[name] - fromLoadMap(map, name, ...point)));
        }
      }
    }
  }
  return { axes, columns, largestError };
}

/**
 * One number of the table.
 * @param map               from `loadMap`
 * @param column            which number
 * @param roomTemperature   T_r [K]
 * @param relativeHumidity  RH [-]
 * @param waterTemperature  T_w [K]
 * @returns                 by linear interpolation along the three axes
 * @throws OutOfModelError outside the axes: the table is never carried on
 */
export function fromLoadMap(
  map: Pick<LoadMap, 'axes' | 'columns'>,
  column: MapColumn,
  roomTemperature: number,
  relativeHumidity: number,
  waterTemperature: number,
): number {
  const { axes, columns } = map;
  const values = columns[column];
  const [i, x] = cellOf('roomTemperature', axes.roomTemperature, roomTemperature);
  const [j, y] = cellOf('relativeHumidity', axes.relativeHumidity, relativeHumidity);
  const [k, z] = cellOf('waterTemperature', axes.waterTemperature, waterTemperature);
  const row = axes.waterTemperature.count;
  const sheet = axes.relativeHumidity.count * row;
  const corner = i * sheet + j * row + k;
  const along = (place: number) => values[place]! * (1 - z) + values[place + 1]! * z;
  const near = along(corner) * (1 - y) + along(corner + row) * y;
  const far = along(corner + sheet) * (1 - y) + along(corner + sheet + row) * y;
  return near * (1 - x) + far * x;
}

/** A point of an axis; halves lie between two. */
export function pointOf({ low, high, count }: MapAxis, index: number): number {
  return low + ((high - low) * index) / (count - 1);
}

/** Cell of the axis in which a value lies, and how far along it, 0 to 1. */
function cellOf(name: MapAxisName, { low, high, count }: MapAxis, value: number): readonly [number, number] {
  if (!(value >= low && value <= high)) {
    const unit = name === 'relativeHumidity' ? '1' : 'K';
    throw new OutOfModelError(name, value, unit, low, high, 'outsideMap', 'the axis of the load map');
  }
  const along = ((value - low) / (high - low)) * (count - 1);
  const cell = Math.min(count - 2, Math.floor(along));
  return [cell, along - cell];
}

function checkAxis(name: MapAxisName, { low, high, count }: MapAxis): void {
  if (!(Number.isFinite(low) && Number.isFinite(high) && low < high)) {
    throw new InputError(`axes.${name}`, `${low} to ${high}`, 'two finite ends, the lower one first');
  }
  if (!(Number.isInteger(count) && count >= 2 && count <= 200)) {
    throw new InputError(`axes.${name}.count`, count, 'a whole number from 2 to 200');
  }
}
