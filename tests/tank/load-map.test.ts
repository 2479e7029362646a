// The load map against the load itself: exact at its points, within its stated error everywhere, monotone, and refused outside.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  fromLoadMap,
  type LoadMap,
  loadMap,
  type MapAxes,
  mapColumns,
  pointOf,
  rectangularTank,
  tankLoad,
} from '../../src/tank/index.ts';

const atmosphericPressure = 101325;
const axes: MapAxes = {
  roomTemperature: { low: 283.15, high: 303.15, count: 11 },
  relativeHumidity: { low: 0.3, high: 0.9, count: 5 },
  waterTemperature: { low: 295.15, high: 301.15, count: 4 },
};
const described = {
  kind: 'rectangular',
  length: 1.2,
  width: 0.5,
  height: 0.5,
  waterDepth: 0.45,
  salinity: 0,
  wall: { conductivity: 1, thickness: 0.01, emissivity: 0.87 },
  insulation: {},
  surface: 'rippled',
  lidLayer: { conductivity: 0.18, thickness: 0.004 },
  pumpHeat: 8,
  lightHeat: 4,
} as const;
const tanks = (['none', 'tight', 'loose'] as const).map(
  (lid) => [lid, rectangularTank({ ...described, lid })] as const,
);

const within = (axis: { low: number; high: number }) => fc.double({ min: axis.low, max: axis.high, noNaN: true });

describe.each(tanks)('load map of a tank with lid: %s', (_lid, tank) => {
  const map: LoadMap = loadMap(tank, { atmosphericPressure }, axes);
  const loadAt = (roomTemperature: number, roomRelativeHumidity: number, waterTemperature: number) =>
    tankLoad(tank, { roomTemperature, roomRelativeHumidity, waterTemperature, atmosphericPressure });

  it('is exact at its points', () => {
    const point = [
      pointOf(axes.roomTemperature, 3),
      pointOf(axes.relativeHumidity, 2),
      pointOf(axes.waterTemperature, 1),
    ] as const;
    const load = loadAt(...point);
    for (const column of mapColumns) expect(fromLoadMap(map, column, ...point)).toBeCloseTo(load[column], 9);
  });

  it('keeps to its stated error (law, any point; a tenth is allowed for the middle not being quite the worst place)', () => {
    fc.assert(
      fc.property(
        within(axes.roomTemperature),
        within(axes.relativeHumidity),
        within(axes.waterTemperature),
        (room, humidity, water) => {
          const load = loadAt(room, humidity, water);
          for (const column of mapColumns) {
            const off = Math.abs(fromLoadMap(map, column, room, humidity, water) - load[column]);
            expect(off).toBeLessThanOrEqual(1.1 * map.largestError[column] + 1e-12);
          }
        },
      ),
      { seed: 41, numRuns: 150 },
    );
  });

  it('is within 2 % of the largest load', () => {
    const largest = Math.max(...map.columns.load);
    expect(map.largestError.load).toBeGreaterThan(0);
    expect(map.largestError.load / largest).toBeLessThan(0.02);
  });

  it('falls with a warmer room and rises with warmer water (law, any two points)', () => {
    fc.assert(
      fc.property(
        within(axes.roomTemperature),
        within(axes.roomTemperature),
        within(axes.relativeHumidity),
        within(axes.waterTemperature),
        (one, other, humidity, water) => {
          const [cold, warm] = [Math.min(one, other), Math.max(one, other)];
          const at = (room: number) => fromLoadMap(map, 'load', room, humidity, water);
          expect(at(cold)).toBeGreaterThanOrEqual(at(warm) - 1e-9);
          expect(fromLoadMap(map, 'load', one, humidity, axes.waterTemperature.high)).toBeGreaterThanOrEqual(
            fromLoadMap(map, 'load', one, humidity, water) - 1e-9,
          );
        },
      ),
      { seed: 42, numRuns: 100 },
    );
  });
});

describe('a load map', () => {
  const map = loadMap(tanks[0]![1], { atmosphericPressure }, axes);

  it('is never carried beyond its axes', () => {
    expect(() => fromLoadMap(map, 'load', 282, 0.5, 298)).toThrow(/roomTemperature/);
    expect(() => fromLoadMap(map, 'load', 290, 0.95, 298)).toThrow(/relativeHumidity/);
    expect(() => fromLoadMap(map, 'load', 290, 0.5, Number.NaN)).toThrow(/waterTemperature/);
  });

  it('refuses axes that cannot be', () => {
    const withRooms = (rooms: object) => () =>
      loadMap(
        tanks[0]![1],
        { atmosphericPressure },
        { ...axes, roomTemperature: { ...axes.roomTemperature, ...rooms } },
      );
    expect(withRooms({ count: 1 })).toThrow(/count/);
    expect(withRooms({ low: 310 })).toThrow(/lower one first/);
  });

  it('halves its error to a quarter with twice the points (law: linear interpolation of a smooth curve)', () => {
    const only = (count: number): MapAxes => ({
      roomTemperature: { low: 283.15, high: 291.15, count },
      relativeHumidity: { low: 0.5, high: 0.5001, count: 2 },
      waterTemperature: { low: 298.15, high: 298.1501, count: 2 },
    });
    const errorOf = (count: number) => loadMap(tanks[0]![1], { atmosphericPressure }, only(count)).largestError.load;
    const ratio = errorOf(5) / errorOf(9);
    expect(ratio).toBeGreaterThan(3);
    expect(ratio).toBeLessThan(5);
  });
});
