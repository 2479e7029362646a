// Transport properties of air against handbook values at 25 °C: k 0.026 W/(m K), mu 1.84e-5 Pa s, Pr 0.71, diffusivity of
// vapour 2.5e-5 m²/s at 298 K, Lewis number 0.86 to 0.89.

import { expect, test } from 'vitest';
import {
  airConductivity,
  airViscosity,
  DRY_AIR_HEAT_CAPACITY,
  dryAirDensity,
  vapourDiffusivity,
} from '../../../src/matter/air/index.ts';
import { InputError } from '../../../src/numerics/index.ts';
import { deviation } from '../../reference/tank/deviation.ts';

test('at 25 °C within a printed digit of the handbook values', () => {
  expect(deviation(airConductivity(298.15), 0.026)).toBeLessThan(0.01);
  expect(deviation(airViscosity(298.15), 1.84e-5)).toBeLessThan(5e-3);
  expect(deviation(vapourDiffusivity(298.15, 101325), 2.5e-5)).toBeLessThan(0.02);
});

test('Prandtl number 0.71 and Lewis number 0.86 to 0.89 follow', () => {
  const conductivity = airConductivity(298.15);
  const prandtl = (airViscosity(298.15) * DRY_AIR_HEAT_CAPACITY) / conductivity;
  expect(prandtl).toBeCloseTo(0.71, 2);
  const thermal = conductivity / (dryAirDensity(298.15, 0, 101325) * DRY_AIR_HEAT_CAPACITY);
  const lewis = thermal / vapourDiffusivity(298.15, 101325);
  expect(lewis).toBeGreaterThan(0.85);
  expect(lewis).toBeLessThan(0.89);
});

test('diffusivity falls with pressure, all refuse what cannot be', () => {
  expect(vapourDiffusivity(298.15, 50e3)).toBeGreaterThan(vapourDiffusivity(298.15, 101325));
  expect(() => airViscosity(-1)).toThrow(InputError);
  expect(() => airConductivity(Number.NaN)).toThrow(InputError);
  expect(() => vapourDiffusivity(298, 0)).toThrow(InputError);
});
