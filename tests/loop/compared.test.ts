// Numbers by which refrigerants are compared: hand-made values, and the law that a loop with the displacement found for
// another heat gives that heat and takes that power.

import { describe, expect, test } from 'vitest';
import {
  displacementForHeat,
  gaugePressureOf,
  operatingPoint,
  powerAtDisplacement,
  relativeVolumeDrawn,
  temperatureLift,
} from '../../src/loop/index.ts';
import { refrigerant } from '../../src/matter/refrigerants/index.ts';
import { InputError } from '../../src/numerics/index.ts';
import { machineFor } from './running-machine.ts';

test('worked values', () => {
  expect(temperatureLift(318.15, 263.15)).toBeCloseTo(55, 12);
  expect(gaugePressureOf(60_000, 101_325)).toBe(-41_325);
  expect(displacementForHeat(6.5e-6, 250, 350)).toBeCloseTo(9.1e-6, 18);
  expect(powerAtDisplacement(120, 6.5e-6, 9.1e-6)).toBeCloseTo(168, 9);
  expect(relativeVolumeDrawn(2e6, 1.25e6)).toBe(1.6);
});

test.each([
  () => temperatureLift(Number.NaN, 263),
  () => gaugePressureOf(1e5, 0),
  () => displacementForHeat(6e-6, 0, 300),
  () => powerAtDisplacement(100, 6e-6, -1),
  () => relativeVolumeDrawn(1e6, Number.POSITIVE_INFINITY),
])('what cannot be is refused', (ask) => {
  expect(ask).toThrow(InputError);
});

describe('law: a loop with the displacement found gives the heat wanted, of a machine grown alike', () => {
  test.each(['R134a', 'R600a', 'R290'])('%s', (name) => {
    const displacement = 6.5e-6;
    // All of it grown alike, its shell too, and tight: a leak would grow with the surface alone.
    const loop = (swept: number) =>
      operatingPoint({
        fluid: refrigerant(name),
        machine: machineFor(name, {
          displacement: swept,
          shellConductance: (1.8 * swept) / displacement,
          leakageRatio: 0,
        }),
        sourceTemperature: 285,
        waterTemperature: 298.65,
        evaporatorApproach: 9,
        condenserApproach: 10,
        superheat: 6,
        subcooling: 3,
      });
    const present = loop(displacement);
    const needed = displacementForHeat(displacement, present.heatDelivered, 350);
    const other = loop(needed);
    expect(other.heatDelivered).toBeCloseTo(350, 9);
    const power = powerAtDisplacement(present.compressorPower, displacement, needed);
    expect(power).toBeCloseTo(other.compressorPower, 9);
    expect(other.dischargeTemperature).toBeCloseTo(present.dischargeTemperature, 9);
  });
});
