// Saturation vapour pressure against the handbook's table, IAPWS over water and ice, and the library whose equations it shares.

import fc from 'fast-check';
import psychrolib from 'psychrolib';
import { describe, expect, test } from 'vitest';
import { saturationVapourPressure } from '../../../src/matter/air/index.ts';
import { OutOfModelError } from '../../../src/numerics/index.ts';
import { deviation } from '../../reference/tank/deviation.ts';
import { handbookSaturation, iapwsSaturation, iapwsSublimation } from '../../reference/tank/moist-air.ts';

const kelvin = (celsius: number) => celsius + 273.15;

describe('published values', () => {
  test.each(handbookSaturation)('%d °C: %d Pa in the handbook, within %d', (celsius, printed, within) => {
    expect(deviation(saturationVapourPressure(kelvin(celsius)), printed)).toBeLessThan(within);
  });
  test.each(iapwsSaturation)('%d °C: %d Pa over water by IAPWS R6-95, within %d', (celsius, published, within) => {
    expect(deviation(saturationVapourPressure(kelvin(celsius)), published)).toBeLessThan(within);
  });
  test.each(iapwsSublimation)('%d °C: %d Pa over ice by IAPWS R14-08, within %d', (celsius, published, within) => {
    expect(deviation(saturationVapourPressure(kelvin(celsius)), published)).toBeLessThan(within);
  });

  // Reference: IAPWS R6-95(2018) table 8.
  test('275 K: 698.451 Pa, within 300 ppm', () => {
    expect(deviation(saturationVapourPressure(275), 698.451167)).toBeLessThan(3e-4);
  });
});

test('is the library’s function over its whole range (seed 4710)', () => {
  psychrolib.SetUnitSystem(psychrolib.SI);
  fc.assert(
    fc.property(fc.double({ min: -99.99, max: 199.99, noNaN: true }), (celsius) => {
      fc.pre(Math.abs(celsius - 0.01) > 1e-9);
      expect(deviation(saturationVapourPressure(kelvin(celsius)), psychrolib.GetSatVapPres(celsius))).toBeLessThan(
        1e-12,
      );
    }),
    { seed: 4710, numRuns: 1000 },
  );
});

test('over ice and over water meet at the triple point, 611.657 Pa', () => {
  const [ice, water] = [saturationVapourPressure(273.16), saturationVapourPressure(273.160001)];
  expect(deviation(ice, water)).toBeLessThan(1e-5);
  expect(deviation(ice, 611.657)).toBeLessThan(2e-4);
});

test('rises with temperature, also across the freezing point (seed 4712)', () => {
  fc.assert(
    fc.property(fc.double({ min: 174, max: 472, noNaN: true }), (t) => {
      expect(saturationVapourPressure(t + 0.1)).toBeGreaterThan(saturationVapourPressure(t));
    }),
    { seed: 4712, numRuns: 300 },
  );
});

test('outside −100 to 200 °C it names the limits', () => {
  for (const temperature of [173, 473.5, Number.NaN]) {
    expect(() => saturationVapourPressure(temperature)).toThrow(OutOfModelError);
  }
});
