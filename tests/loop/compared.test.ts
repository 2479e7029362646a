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

describe('law: a loop with the displacement found gives the heat wanted', () => {
  test.each(['R134a', 'R600a', 'R290'])('%s', (name) => {
    const model = {
      displacement: 6.5e-6,
      speed: 49,
      clearanceRatio: 0.025,
      reexpansionExponent: 1.1,
      fillingFactor: 0.89,
      compressionEfficiency: 0.55,
      frictionPressure: 6e4,
      shellHeatShare: 0.45,
    };
    const loop = (displacement: number) =>
      operatingPoint({
        fluid: refrigerant(name),
        compressor: { ...model, displacement },
        sourceTemperature: 285,
        waterTemperature: 298.65,
        evaporatorApproach: 9,
        condenserApproach: 10,
        superheat: 6,
        subcooling: 3,
      });
    const present = loop(model.displacement);
    const needed = displacementForHeat(model.displacement, present.heatDelivered, 350);
    const other = loop(needed);
    expect(other.heatDelivered).toBeCloseTo(350, 9);
    const power = powerAtDisplacement(present.compressorPower, model.displacement, needed);
    expect(power).toBeCloseTo(other.compressorPower, 9);
    expect(other.dischargeTemperature).toBeCloseTo(present.dischargeTemperature, 9);
  });
});
