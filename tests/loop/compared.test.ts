// Numbers by which refrigerants are compared: hand-made values.

import { expect, test } from 'vitest';
import { gaugePressureOf, relativeVolumeDrawn, temperatureLift } from '../../src/loop/index.ts';
import { InputError } from '../../src/numerics/index.ts';

test('worked values', () => {
  expect(temperatureLift(318.15, 263.15)).toBeCloseTo(55, 12);
  expect(gaugePressureOf(60_000, 101_325)).toBe(-41_325);
  expect(relativeVolumeDrawn(2e6, 1.25e6)).toBe(1.6);
});

test.each([
  () => temperatureLift(Number.NaN, 263),
  () => gaugePressureOf(1e5, 0),
  () => relativeVolumeDrawn(1e6, Number.POSITIVE_INFINITY),
])('what cannot be is refused', (ask) => {
  expect(ask).toThrow(InputError);
});
