// Dew point, wet bulb and the worked psychrometric examples of handbook and textbook, from what each gives to what it prints.

import fc from 'fast-check';
import psychrolib from 'psychrolib';
import { describe, expect, test } from 'vitest';
import {
  dewPoint,
  dewPointIfAny,
  humidityRatio,
  moistAirEnthalpy,
  moistAirVolume,
  relativeHumidityFromRatio,
  saturationVapourPressure,
  vapourPressure,
  vapourPressureFromRatio,
  wetBulb,
} from '../../../src/matter/air/index.ts';
import { InputError, OutOfModelError } from '../../../src/numerics/index.ts';
import { deviation } from '../../reference/tank/deviation.ts';
import { type PsychrometricExample, psychrometricExamples, realMoistAir } from '../../reference/tank/moist-air.ts';

const kelvin = (celsius: number) => celsius + 273.15;
const atmosphere = 101325;

/** Humidity ratio of an example: from its relative humidity, or from the wet bulb by the handbook's own equation 33. */
function ratioOf({ given, dryBulbCelsius: t, pressure }: PsychrometricExample): number {
  if ('relativeHumidity' in given) {
    return humidityRatio(vapourPressure(kelvin(t), given.relativeHumidity), pressure);
  }
  const w = given.wetBulbCelsius;
  const saturated = humidityRatio(saturationVapourPressure(kelvin(w)), pressure);
  return ((2501 - 2.326 * w) * saturated - 1.006 * (t - w)) / (2501 + 1.86 * t - 4.186 * w);
}

describe.each(psychrometricExamples)('$title ($source)', (example) => {
  const ratio = ratioOf(example);
  const dryBulb = kelvin(example.dryBulbCelsius);
  const ours = {
    humidityRatio: ratio,
    enthalpy: moistAirEnthalpy(dryBulb, ratio),
    volume: moistAirVolume(dryBulb, ratio, example.pressure),
    relativeHumidity: relativeHumidityFromRatio(dryBulb, ratio, example.pressure),
    dewPointCelsius: dewPoint(dryBulb, vapourPressureFromRatio(ratio, example.pressure)) - 273.15,
  };

  test.each(Object.entries(example.printed))('%s %d', (quantity, printed) => {
    const key = quantity as keyof typeof ours;
    expect(Math.abs(ours[key] - printed)).toBeLessThanOrEqual(example.within[key]!);
  });

  test('the wet bulb comes back', () => {
    const back = wetBulb(dryBulb, ratio, example.pressure);
    if ('wetBulbCelsius' in example.given) expect(back).toBeCloseTo(kelvin(example.given.wetBulbCelsius), 2);
    else expect(back).toBeLessThan(dryBulb);
  });
});

// Ideal gas against real: 0.6 % in W, so 0.1 K in the temperatures; only where air is saturated do they meet.
test.each(realMoistAir)(
  '%d °C, relative humidity %d: real moist air has W %d, wet bulb %d °C, dew point %d °C',
  (celsius, relativeHumidity, ratio, wet, dew, enthalpy, volume) => {
    const partial = vapourPressure(kelvin(celsius), relativeHumidity);
    const ours = humidityRatio(partial, atmosphere);
    expect(ours).toBeLessThan(ratio);
    expect(deviation(ours, ratio)).toBeLessThan(6.5e-3);
    expect(Math.abs(wetBulb(kelvin(celsius), ours, atmosphere) - kelvin(wet))).toBeLessThan(0.05);
    expect(Math.abs(dewPoint(kelvin(celsius), partial) - kelvin(dew))).toBeLessThan(0.05);
    expect(deviation(moistAirEnthalpy(kelvin(celsius), ours), enthalpy)).toBeLessThan(6e-3);
    expect(deviation(moistAirVolume(kelvin(celsius), ours, atmosphere), volume)).toBeLessThan(6e-4);
  },
);

describe('ends of the humidity scale', () => {
  test.each([-20, 0, 0.01, 20, 45])(
    'saturated air of %d °C condenses and evaporates at its own temperature',
    (celsius) => {
      const saturation = saturationVapourPressure(kelvin(celsius));
      expect(dewPoint(kelvin(celsius), saturation)).toBeCloseTo(kelvin(celsius), 3);
      expect(dewPointIfAny(kelvin(celsius), saturation)).toBeCloseTo(kelvin(celsius), 3);
      expect(wetBulb(kelvin(celsius), humidityRatio(saturation, atmosphere), atmosphere)).toBeCloseTo(
        kelvin(celsius),
        2,
      );
    },
  );

  test('dry air has no dew point, and a wet bulb far below', () => {
    expect(dewPointIfAny(295, 0)).toBeUndefined();
    expect(dewPointIfAny(295, 1e-4)).toBeUndefined();
    expect(() => dewPoint(295, 0)).toThrow(InputError);
    expect(() => dewPoint(295, 1e-4)).toThrow(OutOfModelError);
    const wet = wetBulb(kelvin(25), 0, atmosphere);
    // Reference: real dry air of 25 °C, evaluated with the open library CoolProp 8.0.0.
    expect(Math.abs(wet - kelvin(8.243))).toBeLessThan(0.1);
  });
});

test('dew point ≤ wet bulb ≤ dry bulb, and the dew point gives the vapour pressure back (seed 4713)', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 263, max: 318, noNaN: true }),
      fc.double({ min: 0.01, max: 1, noNaN: true }),
      fc.double({ min: 60e3, max: 105e3, noNaN: true }),
      (t, relativeHumidity, pressure) => {
        const partial = vapourPressure(t, relativeHumidity);
        const dew = dewPoint(t, partial);
        const wet = wetBulb(t, humidityRatio(partial, pressure), pressure);
        // Where the dry bulb is above freezing and the dew point below, both temperatures carry the library's 0.001 K.
        expect(dew).toBeLessThanOrEqual(wet + 0.002);
        expect(wet).toBeLessThanOrEqual(t);
        expect(deviation(saturationVapourPressure(dew), partial)).toBeLessThan(1e-4);
      },
    ),
    { seed: 4713, numRuns: 300 },
  );
});

test('the dew point is the library’s over the whole range (seed 4714)', () => {
  psychrolib.SetUnitSystem(psychrolib.SI);
  fc.assert(
    fc.property(
      fc.double({ min: -60, max: 150, noNaN: true }),
      fc.double({ min: 0.02, max: 1, noNaN: true }),
      (celsius, relativeHumidity) => {
        const partial = vapourPressure(kelvin(celsius), relativeHumidity);
        const library = kelvin(psychrolib.GetTDewPointFromVapPres(celsius, partial));
        // The library stops at 0.001 K.
        expect(Math.abs(dewPoint(kelvin(celsius), partial) - library)).toBeLessThan(1e-3);
      },
    ),
    { seed: 4714, numRuns: 1000 },
  );
});

test('what cannot be is refused', () => {
  expect(() => wetBulb(295, 0.5, atmosphere)).toThrow(InputError);
  expect(() => wetBulb(295, -0.001, atmosphere)).toThrow(InputError);
  expect(() => wetBulb(295, 0.005, 0)).toThrow(InputError);
  expect(() => dewPointIfAny(295, -1)).toThrow(InputError);
  expect(() => dewPoint(295, Number.NaN)).toThrow(InputError);
});
