// Fresh and sea water against IAPWS: R6-95(2018) for fresh water, R13-08 (2008) for sea water, and the values that the
// fits' own paper implies.

import { describe, expect, test } from 'vitest';
import {
  latentHeat,
  vapourPressureFactor,
  waterConductivity,
  waterDensity,
  waterExpansion,
  waterHeatCapacity,
  waterViscosity,
} from '../../../src/matter/water/index.ts';
import { OutOfModelError } from '../../../src/numerics/index.ts';
import { deviation } from '../../reference/tank/deviation.ts';
import { fittedSeaWater, freshWater, iapwsSeaWater, unescoSeaWater } from '../../reference/tank/water.ts';

const kelvin = (celsius: number) => celsius + 273.15;

describe('IAPWS values', () => {
  test.each(freshWater)('fresh water at $celsius °C, within what the fits and their papers allow', (row) => {
    const T = kelvin(row.celsius);
    expect(deviation(waterDensity(T, 0), row.density)).toBeLessThan(3e-4);
    expect(deviation(waterHeatCapacity(T, 0), row.heatCapacity)).toBeLessThan(1.5e-3);
    expect(deviation(waterViscosity(T, 0), row.viscosity)).toBeLessThan(1e-3);
    expect(deviation(waterConductivity(T, 0), row.conductivity)).toBeLessThan(2.5e-2);
    const prandtl = (waterViscosity(T, 0) * waterHeatCapacity(T, 0)) / waterConductivity(T, 0);
    expect(deviation(prandtl, row.prandtl)).toBeLessThan(2.5e-2);
    // Density is fitted, not its slope: below 10 °C the slope is small and badly known.
    if (row.celsius >= 15) expect(deviation(waterExpansion(T, 0), row.expansion)).toBeLessThan(0.04);
  });

  // Fit: 0.1 % in density, 0.28 % in specific heat as its paper states.
  test.each(iapwsSeaWater)(
    'sea water at %d °C, S %d: %d kg/m³, %d J/(kg K)',
    (celsius, salinity, density, heatCapacity) => {
      expect(deviation(waterDensity(kelvin(celsius), salinity), density)).toBeLessThan(1e-3);
      expect(deviation(waterHeatCapacity(kelvin(celsius), salinity), heatCapacity)).toBeLessThan(2.8e-3);
    },
  );

  // R6-95(2018) table 8: h'' − h' at 275 K and (beyond the use here, checking constants) saturation at 26 °C 2.4393e6.
  test('latent heat at 275 K (2504.28995 − 7.75972201 kJ/kg) and 26 °C (2439.3 kJ/kg)', () => {
    expect(deviation(latentHeat(275), 2504289.95 - 7759.72201)).toBeLessThan(1e-4);
    expect(deviation(latentHeat(kelvin(26)), 2.4393e6)).toBeLessThan(1e-4);
  });
});

// Recomputed from the printed coefficients with other software, not read in the paper.
test('Sharqawy et al. 2010 at 25 °C, 35 g/kg: 1023.562 kg/m³, 0.95883e-3 Pa s, 4001 J/(kg K), 0.609 W/(m K)', () => {
  expect(waterDensity(kelvin(25), 0.035)).toBeCloseTo(1023.562, 3);
  expect(waterViscosity(kelvin(25), 0.035)).toBeCloseTo(0.95883e-3, 8);
  expect(waterHeatCapacity(kelvin(25), 0.035)).toBeCloseTo(4001, -0.5);
  expect(waterConductivity(kelvin(25), 0.035)).toBeCloseTo(0.609, 3);
});

describe('sea water by others', () => {
  test.each(unescoSeaWater)(
    'EOS-80 at %d °C, salinity 35: %d kg/m³, expansion %d 1/K',
    (celsius, density, expansion) => {
      expect(deviation(waterDensity(kelvin(celsius), 0.03516504), density)).toBeLessThan(5e-4);
      expect(deviation(waterExpansion(kelvin(celsius), 0.03516504), expansion)).toBeLessThan(
        celsius < 10 ? 0.12 : 0.08,
      );
    },
  );

  test.each(fittedSeaWater)(
    '%d °C, 35 g/kg: %d J/(kg K), %d Pa s, %d W/(m K) within the 0.28, 1.5 and 3 % of their papers',
    (celsius, heatCapacity, viscosity, conductivity) => {
      expect(deviation(waterHeatCapacity(kelvin(celsius), 0.035), heatCapacity)).toBeLessThan(2.8e-3);
      expect(deviation(waterViscosity(kelvin(celsius), 0.035), viscosity)).toBeLessThan(1.5e-2);
      expect(deviation(waterConductivity(kelvin(celsius), 0.035), conductivity)).toBeLessThan(1e-3);
    },
  );

  test('salt makes water denser, thicker, and worse at holding and carrying heat', () => {
    expect(waterDensity(kelvin(25), 0.035)).toBeGreaterThan(waterDensity(kelvin(25), 0));
    expect(waterViscosity(kelvin(25), 0.035)).toBeGreaterThan(waterViscosity(kelvin(25), 0));
    expect(waterHeatCapacity(kelvin(25), 0.035)).toBeLessThan(waterHeatCapacity(kelvin(25), 0));
    expect(waterConductivity(kelvin(25), 0.035)).toBeLessThan(waterConductivity(kelvin(25), 0));
  });
});

test("vapour pressure over sea water: 0.97962 by Raoult's law, 0.2 % below the measured activity 0.981 to 0.982", () => {
  expect(vapourPressureFactor(0.035)).toBeCloseTo(0.97962, 5);
  expect(deviation(vapourPressureFactor(0.035), 0.9815)).toBeLessThan(3e-3);
  expect(vapourPressureFactor(0)).toBe(1);
});

test('expansion is the slope of the density, and water is densest near 4 °C when fresh', () => {
  for (const [celsius, salinity] of [
    [5, 0],
    [26, 0],
    [26, 0.035],
  ] as const) {
    const step = 0.01;
    const slope =
      (waterDensity(kelvin(celsius + step), salinity) - waterDensity(kelvin(celsius - step), salinity)) / (2 * step);
    const expected = -slope / waterDensity(kelvin(celsius), salinity);
    expect(waterExpansion(kelvin(celsius), salinity)).toBeCloseTo(expected, 8);
  }
  expect(waterExpansion(kelvin(1), 0)).toBeLessThan(0);
  expect(waterExpansion(kelvin(6), 0)).toBeGreaterThan(0);
});

test('outside 0 to 100 °C and S 0 to 0.12 each names its limits', () => {
  const calls = [waterDensity, waterHeatCapacity, waterViscosity, waterConductivity, waterExpansion];
  for (const call of calls) {
    expect(() => call(272, 0)).toThrow(OutOfModelError);
    expect(() => call(300, 0.2)).toThrow(OutOfModelError);
    expect(() => call(Number.NaN, 0)).toThrow(OutOfModelError);
  }
  expect(() => latentHeat(380)).toThrow(OutOfModelError);
  expect(() => vapourPressureFactor(-0.01)).toThrow(OutOfModelError);
});
