// Films and panes against ISO 6946 (2007 annex A, 2017 annex C; constants read in a public copy).

import { describe, expect, test } from 'vitest';
import {
  INTERNAL_CONVECTION,
  innerResistance,
  layerResistance,
  outerFilmRange,
  outerTemperature,
  paneHeat,
  radiativeCoefficient,
  surfaceResistance,
  WATER_FILM_COEFFICIENT,
  windConvection,
} from '../../../src/tank/stack/films.ts';
import { deviation } from '../../reference/tank/deviation.ts';
import { blackBodyTable, conventionalSurfaceResistance } from '../../reference/tank/published.ts';
import { kelvin } from './stacks.ts';

test.each(blackBodyTable)('black body at %d °C: %d W/(m² K) as printed', (celsius, printed) => {
  expect(Math.abs(radiativeCoefficient(1, kelvin(celsius)) - printed)).toBeLessThanOrEqual(0.05);
});

test.each(Object.entries(conventionalSurfaceResistance))(
  'emissivity 0.9 at 20 °C gives the conventional resistance for heat flow %s, %d m² K/W',
  (flow, printed) => {
    const convective = INTERNAL_CONVECTION[flow as keyof typeof INTERNAL_CONVECTION];
    const ours = surfaceResistance(convective, radiativeCoefficient(0.9, kelvin(20)));
    expect(Math.abs(ours - printed)).toBeLessThanOrEqual(0.005);
  },
);

test('wind of 4 m/s at 0 °C gives the conventional outdoor resistance, 0.04 m² K/W', () => {
  const ours = surfaceResistance(windConvection(4), radiativeCoefficient(0.9, kelvin(0)));
  expect(Math.abs(ours - 0.04)).toBeLessThanOrEqual(0.005);
});

// Churchill & Chu, Int. J. Heat Mass Transfer 18 (1975) 1323, laminar vertical plate:
//     Nu = 0.68 + 0.670 Ra^(1/4) / (1 + (0.492/Pr)^(9/16))^(4/9); the constants are from memory of the source.
// Air at 22 °C: ν 1.53e-5 m²/s, α 2.16e-5 m²/s, k 0.0259 W/(m K), Pr 0.71. Panes 0.3 to 0.7 m high, 2 to 10 K above the room.
test('the range of the outer film holds what a vertical plate in still air has, whatever pane', () => {
  const radiative = radiativeCoefficient(0.87, kelvin(22));
  const standard = 1 / surfaceResistance(INTERNAL_CONVECTION.horizontal, radiative);
  const factors = [0.3, 0.5, 0.7].flatMap((height) =>
    [2, 4, 6, 8, 10].map((warmer) => {
      const rayleigh = (9.81 * warmer * height ** 3) / (295 * 1.53e-5 * 2.16e-5);
      const nusselt = 0.68 + (0.67 * rayleigh ** 0.25) / (1 + (0.492 / 0.71) ** (9 / 16)) ** (4 / 9);
      return ((nusselt * 0.0259) / height + radiative) / standard;
    }),
  );
  expect(Math.min(...factors)).toBeCloseTo(0.9, 2);
  expect(Math.max(...factors)).toBeCloseTo(1.1, 2);
  expect(Math.min(...factors)).toBeGreaterThan(outerFilmRange.low);
  expect(Math.max(...factors)).toBeLessThan(outerFilmRange.high);
  // Room air at 0.1 m/s, with 4 + 4 v of ISO 6946:2017 Annex C for moving air (from memory of the source).
  expect((windConvection(0.1) + radiative) / standard).toBeCloseTo(outerFilmRange.high, 2);
});

test('a factor on the film divides its resistance', () => {
  expect(surfaceResistance(2.5, 5.2, 1.25)).toBeCloseTo(surfaceResistance(2.5, 5.2) / 1.25, 12);
});

test('the linear radiation is within 0.1 % of the difference of fourth powers up to 20 K', () => {
  for (const surface of [296, 300, 312]) {
    const linear = radiativeCoefficient(0.9, (surface + 292) / 2) * (surface - 292);
    expect(deviation(linear, 0.9 * 5.670374419e-8 * (surface ** 4 - 292 ** 4))).toBeLessThan(1.3e-3);
  }
});

describe('a tank pane with conventional surface resistance', () => {
  // Worked by hand from ISO 6946 with a water film of 300 W/(m² K): 1/(1/300 + 0.010 + R_s), and so on.
  test.each([
    ['10 mm glass upright', 0.01, 1.0, 0, 0.13, 6.977],
    ['10 mm glass as a top', 0.01, 1.0, 0, 0.1, 8.824],
    ['10 mm glass as a bottom', 0.01, 1.0, 0, 0.17, 5.455],
    ['10 mm acrylic upright', 0.01, 0.18, 0, 0.13, 5.294],
    ['10 mm glass with 25 mm XPS of 0.029', 0.01, 1.0, 0.025 / 0.029, 0.13, 0.9946],
  ])('%s: U as worked by hand', (_, thickness, conductivity, insulation, outer, expected) => {
    const pane = innerResistance(1 / WATER_FILM_COEFFICIENT, layerResistance(thickness, conductivity));
    const inner = innerResistance(pane, insulation);
    expect(deviation(paneHeat(1, 1, 0, inner, outer), expected)).toBeLessThan(1e-3);
    // What reaches the surface leaves it.
    const surface = outerTemperature(1, 0, inner, outer);
    expect(deviation(surface / outer, (1 - surface) / inner)).toBeLessThan(1e-12);
  });
});
