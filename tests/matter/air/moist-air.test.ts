// Moist air against the ASHRAE Handbook Fundamentals (2017, chapter 1): its tables are for real moist air, the engine is
// ideal gas, so humidity ratios may differ by 0.6 % (the enhancement factor) and vapour pressures by 0.03 %.

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  dewPoint,
  dryAirDensity,
  humidityRatio,
  moistAirDensity,
  moistAirEnthalpy,
  pressureAtAltitude,
  saturationVapourPressure,
  vapourDensity,
  vapourPressure,
  vapourPressureFromSaturation,
  virtualTemperature,
  wetBulb,
} from '../../../src/matter/air/index.ts';
import { InputError, OutOfModelError } from '../../../src/numerics/index.ts';
import { deviation } from '../../reference/tank/deviation.ts';

const kelvin = (celsius: number) => celsius + 273.15;
const atmosphere = 101325;

describe('saturation vapour pressure', () => {
  // Reference: ASHRAE Handbook Fundamentals, chapter 1, table of water at saturation (Pa).
  test.each([
    [-20, 103.24],
    [-5, 401.74],
    [5, 872.6],
    [25, 3169.7],
    [50, 12351.3],
    [100, 101418],
  ])('%d °C: %d Pa in the handbook, within 300 ppm', (celsius, printed) => {
    expect(deviation(saturationVapourPressure(kelvin(celsius)), printed)).toBeLessThan(3e-4);
  });

  test('−60 °C: 1.08 Pa in the handbook, to the printed digits', () => {
    expect(saturationVapourPressure(kelvin(-60))).toBeCloseTo(1.08, 2);
  });

  // Reference: IAPWS R6-95(2018) table 8: 275 K, 698.451167 Pa. Different equation: 0.02 %.
  test('275 K: 698.451 Pa by IAPWS R6-95, within 300 ppm', () => {
    expect(deviation(saturationVapourPressure(275), 698.451167)).toBeLessThan(3e-4);
  });

  test('outside −100 to 200 °C it names the limits', () => {
    for (const temperature of [173, 473.5, Number.NaN]) {
      expect(() => saturationVapourPressure(temperature)).toThrow(OutOfModelError);
    }
  });
});

describe('humidity ratio and enthalpy', () => {
  // Reference: handbook table of moist air at 101.325 kPa (real gas).
  test.each([
    [5, 0.005425, 18639],
    [25, 0.020173, 76504],
    [50, 0.086863, 275353],
  ])('saturated at %d °C: W %d, h %d J/kg, within 0.65 % of the real gas', (celsius, ratio, enthalpy) => {
    const ours = humidityRatio(saturationVapourPressure(kelvin(celsius)), atmosphere);
    expect(ours).toBeLessThan(ratio);
    expect(deviation(ours, ratio)).toBeLessThan(6.5e-3);
    expect(deviation(moistAirEnthalpy(kelvin(celsius), ours), enthalpy)).toBeLessThan(6.5e-3);
  });

  // Reference: handbook chapter 1, worked figures: dry air at 25 °C 25.148 kJ/kg; 30 °C with W 0.02 81.316 kJ/kg.
  test('dry air at 25 °C: 25.148 kJ/kg; 30 °C with W 0.02: 81.316 kJ/kg', () => {
    expect(deviation(moistAirEnthalpy(kelvin(25), 0), 25148)).toBeLessThan(1e-4);
    expect(deviation(moistAirEnthalpy(kelvin(30), 0.02), 81316)).toBeLessThan(1e-5);
  });

  // Reference: handbook table, dry air at 25 °C 0.8443 m³/kg (real gas, 0.04 %).
  test('dry air at 25 °C: 0.8443 m³/kg', () => {
    expect(deviation(1 / dryAirDensity(kelvin(25), 0, atmosphere), 0.8443)).toBeLessThan(5e-4);
  });

  // Reference: handbook chapter 1, chart example: 40 °C with wet bulb 20 °C: W 0.0065, h 56.7 kJ/kg, dew point 7 °C,
  // 14 % relative humidity, v 0.896 m³/kg. Chart readings: tolerances of the chart.
  test('40 °C with wet bulb 20 °C by the handbook chart', () => {
    const ratio = 0.0064008;
    expect(wetBulb(kelvin(40), ratio, atmosphere)).toBeCloseTo(kelvin(20), 1);
    const partial = (ratio * atmosphere) / (0.621945 + ratio);
    expect(deviation(ratio, 0.0065)).toBeLessThan(0.02);
    expect(deviation(moistAirEnthalpy(kelvin(40), ratio), 56700)).toBeLessThan(2e-3);
    expect(Math.abs(dewPoint(kelvin(40), partial) - kelvin(7))).toBeLessThan(0.5);
    expect(partial / saturationVapourPressure(kelvin(40))).toBeCloseTo(0.14, 2);
    expect(1 / dryAirDensity(kelvin(40), partial, atmosphere)).toBeCloseTo(0.896, 3);
  });

  test('25 °C and 50 % closes: dew point below wet bulb below dry bulb, and back to the same vapour pressure', () => {
    const partial = vapourPressure(kelvin(25), 0.5);
    const dew = dewPoint(kelvin(25), partial);
    const wet = wetBulb(kelvin(25), humidityRatio(partial, atmosphere), atmosphere);
    expect(dew).toBeLessThan(wet);
    expect(wet).toBeLessThan(kelvin(25));
    expect(deviation(saturationVapourPressure(dew), partial)).toBeLessThan(1e-4);
  });

  test('no vapour gives exactly no humidity ratio', () => {
    expect(humidityRatio(0, atmosphere)).toBe(0);
  });
});

describe('pressure at altitude', () => {
  // Reference: handbook chapter 1, table of the standard atmosphere (kPa).
  test.each([
    [500, 95.461],
    [1000, 89.875],
    [4000, 61.64],
    [10000, 26.436],
  ])('%d m: %d kPa', (altitude, printed) => {
    expect(deviation(pressureAtAltitude(altitude), printed * 1000)).toBeLessThan(2e-5);
  });

  test('beyond 11000 m it names the limits', () => {
    expect(() => pressureAtAltitude(11001)).toThrow(OutOfModelError);
  });
});

describe('laws', () => {
  test('damp air is lighter than dry air of the same temperature, by its virtual temperature (seed 4711)', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 263, max: 313, noNaN: true }),
        fc.double({ min: 0.01, max: 1, noNaN: true }),
        (t, rh) => {
          const partial = vapourPressure(t, rh);
          const density = moistAirDensity(t, partial, atmosphere);
          expect(density).toBeLessThan(dryAirDensity(t, 0, atmosphere));
          expect(
            deviation(density, dryAirDensity(virtualTemperature(t, partial, atmosphere), 0, atmosphere)),
          ).toBeLessThan(1e-12);
          expect(deviation(density, dryAirDensity(t, partial, atmosphere) + vapourDensity(t, partial))).toBeLessThan(
            1e-12,
          );
        },
      ),
      { seed: 4711, numRuns: 200 },
    );
  });

  test('saturation pressure rises with temperature, also across the freezing point (seed 4712)', () => {
    fc.assert(
      fc.property(fc.double({ min: 174, max: 472, noNaN: true }), (t) => {
        expect(saturationVapourPressure(t + 0.1)).toBeGreaterThan(saturationVapourPressure(t));
      }),
      { seed: 4712, numRuns: 300 },
    );
  });
});

describe('bad input', () => {
  test.each([
    ['relative humidity above 1', () => vapourPressure(295, 1.01)],
    ['relative humidity not a number', () => vapourPressureFromSaturation(Number.NaN, 2000)],
    ['vapour pressure above the total', () => humidityRatio(2e5, atmosphere)],
    ['negative vapour pressure', () => vapourDensity(295, -1)],
    ['temperature of zero', () => moistAirDensity(0, 1000, atmosphere)],
    ['dew point of dry air', () => dewPoint(295, 0)],
    ['wet bulb above saturation', () => wetBulb(295, 0.5, atmosphere)],
  ])('%s is refused', (_, call) => {
    expect(call).toThrow(InputError);
  });
});
