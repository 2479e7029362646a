// The working: every step names a formula that exists, puts in exactly that formula's symbols, gives the step's value again
// when the engine's function is called with them, and says where each number came from.

import { describe, expect, test } from 'vitest';
import { airFormulas } from '../../src/matter/air/index.ts';
import { waterFormulas } from '../../src/matter/water/index.ts';
import {
  type MeasuredTank,
  type RectangularTank,
  type TankConditions,
  type TankDescription,
  tankFormulas,
  tankLoad,
  tankLoadWorking,
} from '../../src/tank/index.ts';

const formulas = new Map([...airFormulas, ...waterFormulas, ...tankFormulas].map((formula) => [formula.id, formula]));
const room: TankConditions = {
  waterTemperature: 299.15,
  roomTemperature: 292.15,
  roomRelativeHumidity: 0.5,
  atmosphericPressure: 99800,
};
const foam = { conductivity: 0.03, thickness: 0.025 };
const open: RectangularTank = {
  kind: 'rectangular',
  length: 1.5,
  width: 0.5,
  height: 0.6,
  waterDepth: 0.57,
  salinity: 0.035,
  wall: { conductivity: 1, thickness: 0.012, emissivity: 0.87 },
  insulation: { back: foam, bottom: foam },
  surface: 'rippled',
  lid: 'none',
  lidLayer: { conductivity: 0.18, thickness: 0.004 },
  airFlow: 1e-4,
  pumpHeat: 9,
  lightHeat: 4,
};
const measured: MeasuredTank = {
  kind: 'measured',
  energy: 38 * 3.6e6,
  duration: 7 * 86400,
  roomTemperature: 291.15,
  waterTemperature: 298.65,
  volume: 0.3,
  salinity: 0,
  evaporationShare: 0.35,
  pumpHeat: 9,
  lightHeat: 4,
};

/** Design fields that a step may name. */
const designFields =
  /^(place\.altitude|room\.(temperature|relativeHumidity)|tank\.(waterTemperature|salinity)|tank\.load\.[\w.]+)$/;

const tanks: readonly (readonly [string, TankDescription])[] = [
  ['open', open],
  ['tight lid', { ...open, lid: 'tight' }],
  ['loose lid', { ...open, lid: 'loose' }],
  ['lid on the water', { ...open, lid: 'tight', waterDepth: 0.6 }],
  ['lid by its conductance, no air stones', { ...open, lid: 'tight', lidLayer: { conductance: 9 }, airFlow: 0 }],
  ['measured', measured],
  ['measured, no vapour', { ...measured, evaporationShare: 0 }],
];

describe.each(tanks)('%s', (_, tank) => {
  const load = tankLoad(tank, room);
  const steps = tankLoadWorking(tank, room, load);
  const results = new Set(steps.map((one) => one.result));

  test('each step is its formula with the numbers put in', () => {
    expect(steps.length).toBeGreaterThan(10);
    for (const { result, formula, inputs, value } of steps) {
      const record = formulas.get(formula);
      expect(record, `${result}: ${formula}`).toBeDefined();
      expect(Object.keys(inputs).sort(), result).toEqual(Object.keys(record!.symbols).sort());
      const again = record!.compute(inputs);
      expect(Math.abs(again - value), `${result}: ${again}, ${value}`).toBeLessThanOrEqual(
        1e-8 * Math.abs(value) + 1e-300,
      );
    }
  });

  test('each origin is a design field or another step, and no result stands twice', () => {
    expect(results.size).toBe(steps.length);
    for (const { result, from, inputs } of steps) {
      for (const [symbol, origin] of Object.entries(from)) {
        expect(Object.keys(inputs), result).toContain(symbol);
        expect(results.has(origin) || designFields.test(origin), `${result}: ${symbol} from ${origin}`).toBe(true);
      }
    }
  });

  test('a number that comes from another step is that step’s value', () => {
    const byResult = new Map(steps.map((one) => [one.result, one.value]));
    for (const { result, from, inputs } of steps) {
      for (const [symbol, origin] of Object.entries(from)) {
        const value = byResult.get(origin);
        if (value === undefined) continue;
        const used = inputs[symbol]!;
        expect(Math.abs(used - value), `${result}: ${symbol} from ${origin}`).toBeLessThanOrEqual(
          1e-12 * Math.abs(value),
        );
      }
    }
  });

  test('every path, the loss and the load have a step with the value of the result', () => {
    const byResult = new Map(steps.map((one) => [one.result, one.value]));
    for (const { path, heat } of load.paths) {
      expect(byResult.get(`tank.paths.${path}`), path).toBe(heat);
    }
    expect(byResult.get('tank.loss')).toBe(load.loss);
    expect(byResult.get('tank.load')).toBe(load.load);
    expect(byResult.get('tank.evaporation')).toBe(load.evaporation);
    expect(byResult.get('tank.sensibleToRoom')).toBe(load.sensibleToRoom);
    expect(byResult.get('tank.latentToRoom')).toBe(load.latentToRoom);
  });
});

test('origins of the conditions can be named', () => {
  const origins = {
    waterTemperature: 'tank.waterTemperature',
    roomTemperature: 'room.coldest',
    roomRelativeHumidity: 'room.relativeHumidity',
    atmosphericPressure: 'place.pressure',
  };
  const steps = tankLoadWorking(open, room, tankLoad(open, room), origins);
  expect(steps.find((one) => one.result === 'tank.paths.front')?.from.T_r).toBe('room.coldest');
});

test('a load of another kind of tank is refused', () => {
  expect(() => tankLoadWorking(open, room, tankLoad(measured, room))).toThrow(
    expect.objectContaining({ path: 'load.kind' }),
  );
});
