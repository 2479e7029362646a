// Films, layers and panes against ISO 6946 (2007 annexes A and B, 2017 annexes C and D; constants read in a public copy,
// the air-layer table from memory of the source).

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  airLayerResistance,
  INTERNAL_CONVECTION,
  innerResistance,
  layerResistance,
  outerFilmRange,
  outerSurface,
  paneHeat,
  radiativeCoefficient,
  surfaceResistance,
  WATER_FILM_COEFFICIENT,
} from '../../../src/tank/stack/films.ts';
import { deviation } from '../../reference/tank/deviation.ts';
import { airLayerTable, blackBodyTable, conventionalSurfaceResistance } from '../../reference/tank/published.ts';

const kelvin = (celsius: number) => celsius + 273.15;

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
  expect((4 + 4 * 0.1 + radiative) / standard).toBeCloseTo(outerFilmRange.high, 2);
});

test('a factor on the film divides its resistance', () => {
  expect(surfaceResistance(2.5, 5.2, 1.25)).toBeCloseTo(surfaceResistance(2.5, 5.2) / 1.25, 12);
  const surface = outerSurface(kelvin(26), kelvin(19), 0.0133, 'horizontal', 0.87, 0.8);
  expect(surface.factor).toBe(0.8);
  expect(deviation(surface.resistance * 0.8 * (2.5 + surface.radiativeCoefficient), 1)).toBeLessThan(1e-12);
});

test.each(airLayerTable)('sealed layer of %d mm, heat flow %s: %d m² K/W in the table', (thickness, flow, printed) => {
  const ours = airLayerResistance(thickness / 1000, flow, 0.9, 0.9, kelvin(10));
  expect(Math.abs(ours - printed)).toBeLessThanOrEqual(0.0051);
});

// Arithmetic of the same standard with a foil (0.05) on one face, 10 °C; follows from the formulas, not printed there.
test.each([
  [10, 'up', 0.363],
  [15, 'up', 0.453],
  [15, 'horizontal', 0.52],
  [25, 'horizontal', 0.664],
  [25, 'down', 0.796],
  [50, 'down', 1.323],
] as const)('foil-faced layer of %d mm, heat flow %s: %d m² K/W', (thickness, flow, expected) => {
  expect(airLayerResistance(thickness / 1000, flow, 0.05, 0.9, kelvin(10))).toBeCloseTo(expected, 3);
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
    const inner = innerResistance(1 / WATER_FILM_COEFFICIENT, layerResistance(thickness, conductivity), insulation);
    expect(deviation(paneHeat(1, 1, 0, inner, outer), expected)).toBeLessThan(1e-3);
  });
});

describe('the outer surface as it settles', () => {
  const inside = fc.double({ min: 275, max: 320, noNaN: true });
  const room = fc.double({ min: 250, max: 320, noNaN: true });
  const inner = fc.double({ min: 1e-4, max: 3, noNaN: true });

  test('what reaches it leaves it, and it lies between inside and room (seed 20261)', () => {
    fc.assert(
      fc.property(inside, room, inner, fc.constantFrom('up', 'horizontal', 'down' as const), (i, r, ri, flow) => {
        const surface = outerSurface(i, r, ri, flow, 0.9);
        const arriving = (i - surface.temperature) / ri;
        const leaving = (surface.temperature - r) / surface.resistance;
        expect(Math.abs(arriving - leaving)).toBeLessThan(1e-6 * Math.max(1, Math.abs(leaving)));
        expect(surface.temperature).toBeGreaterThanOrEqual(Math.min(i, r) - 1e-9);
        expect(surface.temperature).toBeLessThanOrEqual(Math.max(i, r) + 1e-9);
      }),
      { seed: 20261, numRuns: 300 },
    );
  });

  test('the linear radiation is within 0.1 % of the difference of fourth powers up to 20 K', () => {
    for (const surface of [296, 300, 312]) {
      const linear = radiativeCoefficient(0.9, (surface + 292) / 2) * (surface - 292);
      expect(deviation(linear, 0.9 * 5.670374419e-8 * (surface ** 4 - 292 ** 4))).toBeLessThan(1.3e-3);
    }
  });
});
