// Under a lid: Hollands, Raithby & Konicek 1975 and its analogy for vapour; Dunkle 1961 as an independent estimate.

import { describe, expect, test } from 'vitest';
import { saturationVapourPressure } from '../../../src/matter/air/index.ts';
import { headspaceFlux, nusseltHollands1975, rayleighNumber } from '../../../src/tank/cover/headspace.ts';
import { deviation } from '../../reference/tank/deviation.ts';

const kelvin = (celsius: number) => celsius + 273.15;
const atmosphere = 101325;

// Hollands et al. 1975, formula for air, evaluated by hand; the 5830 in it was not seen in print.
test.each([
  [500, 1],
  [1708, 1],
  [1e4, 2.39109],
  [1e5, 3.99436],
  [1e6, 6.99373],
])('Nusselt number at Ra %d: %d', (rayleigh, expected) => {
  expect(nusseltHollands1975(rayleigh)).toBeCloseTo(expected, 5);
});

describe('water 26 °C, lid 23 °C saturated', () => {
  const at = (gap: number) =>
    headspaceFlux(kelvin(26), saturationVapourPressure(kelvin(26)), kelvin(23), gap, atmosphere);

  // Worked with other software from the same formulas, within 3 % (air properties).
  test('60 mm: Ra 7.4e4, Nu 3.74, h_c 1.63 W/(m² K), 0.0213 kg/(m² h), 14.4 W/m²', () => {
    const flux = at(0.06);
    expect(deviation(flux.rayleigh, 7.4e4)).toBeLessThan(0.03);
    expect(deviation(flux.nusselt, 3.74)).toBeLessThan(0.02);
    expect(deviation(flux.convectiveFlux / 3, 1.63)).toBeLessThan(0.02);
    expect(deviation(flux.circulation * 3600, 0.0213)).toBeLessThan(0.03);
    expect(deviation(flux.vapourFlux, 14.4)).toBeLessThan(0.03);
  });

  test('100 mm: Ra 3.4e5, Nu 5.32, 12.3 W/m²', () => {
    const flux = at(0.1);
    expect(deviation(flux.rayleigh, 3.4e5)).toBeLessThan(0.03);
    expect(deviation(flux.nusselt, 5.32)).toBeLessThan(0.02);
    expect(deviation(flux.vapourFlux, 12.3)).toBeLessThan(0.03);
  });

  // Dunkle 1961 (solar stills, constants from memory): 12.21 W/m² whatever the gap; made for hotter water, hence 25 %.
  test('Dunkle’s formula for solar stills lies within 25 %', () => {
    const [water, lid] = [26, 23].map((celsius) => saturationVapourPressure(kelvin(celsius))) as [number, number];
    const drive = 3 + ((water - lid) * kelvin(26)) / (268.9e3 - water);
    const dunkle = 16.273e-3 * 0.884 * Math.cbrt(drive) * (water - lid);
    expect(dunkle).toBeCloseTo(12.21, 1);
    expect(deviation(at(0.06).vapourFlux, dunkle)).toBeLessThan(0.25);
    expect(deviation(at(0.1).vapourFlux, dunkle)).toBeLessThan(0.25);
  });
});

test('a lid warmer than the water is dry and the air beneath it still', () => {
  const flux = headspaceFlux(kelvin(25), saturationVapourPressure(kelvin(25)), kelvin(28), 0.04, atmosphere);
  expect(flux.circulation).toBe(0);
  expect(flux.nusselt).toBe(1);
  expect(flux.heatFlux).toBeLessThan(0);
});

test('a stable layer has no buoyancy', () => {
  expect(rayleighNumber(-3, 300, 0.05, 1.6e-5, 2.2e-5)).toBe(0);
});
