// Moist air against the ASHRAE Handbook Fundamentals (2017, chapter 1): its tables are for real moist air, the engine is
// ideal gas, so humidity ratios may differ by 0.6 % (the enhancement factor) and vapour pressures by 0.03 %.

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  dryAirDensity,
  humidityRatio,
  moistAirDensity,
  moistAirEnthalpy,
  moistAirHeatCapacity,
  moistAirVolume,
  pressureAtAltitude,
  relativeHumidityFromRatio,
  saturationVapourPressure,
  vapourDensity,
  vapourPressure,
  vapourPressureFromRatio,
  vapourPressureFromSaturation,
  virtualTemperature,
} from '../../../src/matter/air/index.ts';
import { InputError, OutOfModelError } from '../../../src/numerics/index.ts';
import { deviation } from '../../reference/tank/deviation.ts';
import { handbookSaturatedAir, standardAtmosphere } from '../../reference/tank/moist-air.ts';

const kelvin = (celsius: number) => celsius + 273.15;
const atmosphere = 101325;

describe('humidity ratio and enthalpy', () => {
  // Reference: handbook table of moist air at 101.325 kPa (real gas).
  test.each(handbookSaturatedAir)(
    'saturated at %d °C: W %d, h %d J/kg, within 0.65 % of the real gas',
    (celsius, ratio, enthalpy) => {
      const ours = humidityRatio(saturationVapourPressure(kelvin(celsius)), atmosphere);
      expect(ours).toBeLessThan(ratio);
      expect(deviation(ours, ratio)).toBeLessThan(6.5e-3);
      expect(deviation(moistAirEnthalpy(kelvin(celsius), ours), enthalpy)).toBeLessThan(6.5e-3);
    },
  );

  // Reference: handbook chapter 1, worked figures: dry air at 25 °C 25.148 kJ/kg; 30 °C with W 0.02 81.316 kJ/kg.
  test('dry air at 25 °C: 25.148 kJ/kg; 30 °C with W 0.02: 81.316 kJ/kg', () => {
    expect(deviation(moistAirEnthalpy(kelvin(25), 0), 25148)).toBeLessThan(1e-4);
    expect(deviation(moistAirEnthalpy(kelvin(30), 0.02), 81316)).toBeLessThan(1e-5);
  });

  // Reference: handbook table, dry air at 25 °C 0.8443 m³/kg (real gas, 0.04 %).
  test('dry air at 25 °C: 0.8443 m³/kg', () => {
    expect(deviation(1 / dryAirDensity(kelvin(25), 0, atmosphere), 0.8443)).toBeLessThan(5e-4);
  });

  test('vapour pressure and relative humidity come back from the humidity ratio', () => {
    const partial = vapourPressure(kelvin(25), 0.5);
    const ratio = humidityRatio(partial, atmosphere);
    expect(deviation(vapourPressureFromRatio(ratio, atmosphere), partial)).toBeLessThan(1e-14);
    expect(relativeHumidityFromRatio(kelvin(25), ratio, atmosphere)).toBeCloseTo(0.5, 14);
    expect(vapourPressureFromRatio(0, atmosphere)).toBe(0);
    expect(relativeHumidityFromRatio(kelvin(25), 0, atmosphere)).toBe(0);
    expect(relativeHumidityFromRatio(kelvin(10), ratio, atmosphere)).toBeGreaterThan(1);
  });

  test('specific volume is the inverse of the density on the dry-air basis', () => {
    const partial = vapourPressure(kelvin(25), 0.5);
    const volume = moistAirVolume(kelvin(25), humidityRatio(partial, 89874), 89874);
    expect(deviation(volume, 1 / dryAirDensity(kelvin(25), partial, 89874))).toBeLessThan(1e-14);
  });

  test('specific heat is the slope of the enthalpy', () => {
    const slope = moistAirEnthalpy(kelvin(21), 0.01) - moistAirEnthalpy(kelvin(20), 0.01);
    expect(deviation(moistAirHeatCapacity(0.01), slope)).toBeLessThan(1e-11);
  });

  test('no vapour gives exactly no humidity ratio', () => {
    expect(humidityRatio(0, atmosphere)).toBe(0);
  });
});

describe('pressure at altitude', () => {
  // Reference: handbook chapter 1, table of the standard atmosphere (kPa).
  test.each(standardAtmosphere)('%d m: %d kPa', (altitude, printed) => {
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
});

describe('bad input', () => {
  test.each([
    ['relative humidity above 1', () => vapourPressure(295, 1.01)],
    ['relative humidity not a number', () => vapourPressureFromSaturation(Number.NaN, 2000)],
    ['vapour pressure above the total', () => humidityRatio(2e5, atmosphere)],
    ['negative vapour pressure', () => vapourDensity(295, -1)],
    ['temperature of zero', () => moistAirDensity(0, 1000, atmosphere)],
    ['negative humidity ratio', () => vapourPressureFromRatio(-0.001, atmosphere)],
    ['pressure of zero', () => moistAirVolume(295, 0.01, 0)],
    ['humidity ratio not a number', () => moistAirHeatCapacity(Number.NaN)],
  ])('%s is refused', (_, call) => {
    expect(call).toThrow(InputError);
  });
});
