// A tank known by its heater's electricity: laws of the scaling, and what it refuses.

import { describe, expect, test } from 'vitest';
import { type MeasuredTank, type TankConditions, tankLoad } from '../../src/tank/index.ts';

const tank: MeasuredTank = {
  kind: 'measured',
  energy: 38 * 3.6e6,
  duration: 7 * 86400,
  roomTemperature: 292.15,
  waterTemperature: 299.15,
  volume: 0.3,
  salinity: 0,
  evaporationShare: 0.35,
  pumpHeat: 9,
  lightHeat: 4,
};
const then: TankConditions = {
  waterTemperature: 299.15,
  roomTemperature: 292.15,
  roomRelativeHumidity: 0.5,
  atmosphericPressure: 101325,
};

// 38 kWh in 7 days is 38000/168 W by arithmetic.
test('at the measured conditions the load is the heater’s mean power, 226.19 W, gains or not', () => {
  expect(tankLoad(tank, then).load).toBeCloseTo(38000 / 168, 9);
  expect(tankLoad({ ...tank, pumpHeat: 0, lightHeat: 0 }, then).load).toBeCloseTo(38000 / 168, 9);
  expect(tankLoad(tank, then).loss).toBeCloseTo(38000 / 168 + 13, 9);
});

test('the share that leaves as vapour is the latent one', () => {
  const load = tankLoad(tank, then);
  expect(load.latentToRoom / load.loss).toBeCloseTo(0.35, 12);
  expect(load.sensibleToRoom + load.latentToRoom).toBeCloseTo(load.loss, 9);
  expect(load.evaporation * 86400).toBeCloseTo((0.35 * load.loss * 86400) / 2.4394e6, 3);
});

test('dry losses follow the temperature difference, pumps and lights stay', () => {
  const dry = { ...tank, evaporationShare: 0 };
  const colder = { ...then, roomTemperature: 288.65 };
  expect(tankLoad(dry, colder).loss / tankLoad(dry, then).loss).toBeCloseTo(10.5 / 7, 12);
  expect(tankLoad(dry, colder).gains).toEqual({ pump: 9, light: 4, ultraviolet: 0 });
  expect(tankLoad(dry, { ...then, roomTemperature: 299.15 }).load).toBeCloseTo(-13, 9);
});

test('a room hotter than the tank gives a negative load', () => {
  const load = tankLoad(tank, { ...then, roomTemperature: 303.15, roomRelativeHumidity: 0.3 });
  expect(load.sensibleToRoom).toBeLessThan(0);
  expect(load.load).toBeLessThan(0);
  expect(load.warnings.map((finding) => finding.code)).toContain('tankNeedsNoHeat');
});

test('vapour follows the vapour pressure difference', () => {
  const wet = { ...tank, evaporationShare: 1 };
  const ratio = tankLoad(wet, { ...then, waterTemperature: 301.15 }).loss / tankLoad(wet, then).loss;
  // p_ws 26 and 28 °C 3363.1 and 3782.1 Pa, half of p_ws 19 °C (2197.9 Pa): handbook table values.
  expect(ratio).toBeCloseTo((3782.1 - 1099) / (3363.1 - 1099), 3);
});

test('the conductance is dry loss per kelvin plus the slope of the vapour', () => {
  const dry = tankLoad({ ...tank, evaporationShare: 0 }, then);
  expect(dry.conductance).toBeCloseTo(dry.loss / 7, 6);
  expect(tankLoad(tank, then).conductance).toBeGreaterThan(dry.conductance * 0.65);
});

test('the scaling is named; a small difference is a look', () => {
  expect(tankLoad(tank, then).warnings.map((finding) => finding.code)).toEqual(['measuredLoadScaled']);
  const close = tankLoad({ ...tank, roomTemperature: 297.15 }, then).warnings;
  expect(close.find((finding) => finding.code === 'measuredDifferenceSmall')?.severity).toBe('look');
});

describe('what cannot be is refused with its place', () => {
  test.each([
    ['no time', { duration: 0 }, 'tank.load.duration', 'badInput'],
    ['energy given back', { energy: -1 }, 'tank.load.energy', 'badInput'],
    ['no water', { volume: 0 }, 'tank.load.volume', 'badInput'],
    ['more vapour than loss', { evaporationShare: 1.1 }, 'tank.load.evaporationShare', 'badInput'],
    ['a room as warm as the water', { roomTemperature: 299.15 }, 'tank.load.roomTemperature', 'measuredRoomTooWarm'],
  ])('%s', (_, change, path, code) => {
    expect(() => tankLoad({ ...tank, ...change }, then)).toThrow(
      expect.objectContaining({ name: 'InputError', path, code }),
    );
  });

  test('vapour from a tank in a room too humid for any', () => {
    const humid = { ...tank, roomTemperature: 298.9 };
    expect(() => tankLoad(humid, { ...then, roomRelativeHumidity: 1 })).not.toThrow();
    expect(() => tankLoad({ ...humid, salinity: 0.035 }, { ...then, roomRelativeHumidity: 1 })).toThrow(
      expect.objectContaining({ code: 'measuredRoomTooHumid' }),
    );
  });
});
