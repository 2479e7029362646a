// Four ways to the evaporation of one surface: the worked example of each, their limits, and the range that their disagreement
// makes. Values of 26 °C water in a room of 22 °C and 50 % are arithmetic of the published formulas with other software.

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { saturationVapourPressure, vapourPressure } from '../../../src/matter/air/index.ts';
import { latentHeat } from '../../../src/matter/water/index.ts';
import type { TankConditions } from '../../../src/tank/index.ts';
import {
  analogyCoefficient,
  massTransferCoefficient,
  sherwoodHorizontalSurface,
  surfaceLength,
  surfaceRayleighNumber,
} from '../../../src/tank/water-surface/mass-transfer.ts';
import { surfaceMethodRange } from '../../../src/tank/water-surface/methods.ts';
import { quietCoefficientSmith1993, quietInMovingAir } from '../../../src/tank/water-surface/pools.ts';
import { activeCoefficientAshrae, surfaceMethods } from '../../../src/tank/water-surface/surface.ts';
import { deviation } from '../../reference/tank/deviation.ts';
import { anyConditions } from '../cover/places.ts';

const example: TankConditions = {
  waterTemperature: 299.15,
  roomTemperature: 295.15,
  roomRelativeHumidity: 0.5,
  atmosphericPressure: 101325,
};
const looks = ['still', 'rippled', 'rough'] as const;
const difference = saturationVapourPressure(299.15) - vapourPressure(295.15, 0.5);
/** kg/(m² h). */
const flux = (coefficient: number) => coefficient * difference * 3600;

describe('26 °C water in a room of 22 °C and 50 %, kg/(m² h)', () => {
  const { methods } = surfaceMethodRange(example, 'still', 0.6, 3.4, 0.1, 0);

  test('analogy, 1.2 x 0.5 m (length 0.17647 m): 0.166 within 2 %', () => {
    expect(surfaceLength(0.6, 3.4)).toBeCloseTo(0.17647, 5);
    expect(deviation(flux(methods.massTransfer), 0.166)).toBeLessThan(0.02);
  });

  test('Shah 0.1786, handbook 0.2916 within 0.2 %', () => {
    expect(deviation(flux(methods.shah), 0.1786)).toBeLessThan(2e-3);
    expect(deviation(flux(methods.handbook), 0.2916)).toBeLessThan(2e-3);
  });

  // Smith, Löf & Jones with constants of their own (0.0885) give 0.1972 at rest; the handbook's 0.089 stand 0.6 % above.
  test('quiet pools 0.1972 at rest within 0.8 %', () => {
    const still = activeCoefficientAshrae(0, latentHeat(299.15));
    expect(deviation(flux(quietCoefficientSmith1993(still)), 0.1972)).toBeLessThan(8e-3);
  });

  // ASHRAE short form with the activity factor of a residential pool, 0.5: 0.1469. "A lidless quiet aquarium: 0.15 to 0.25" is
  // common practice, no source; both are reported here as lying inside the range of still water.
  test('the range of still water holds the residential pool and what is said of quiet tanks', () => {
    const { likely, low, high } = surfaceMethodRange(example, 'still', 0.6, 3.4, 0.1, 0);
    expect(flux(low * likely)).toBeLessThan(0.1469);
    expect(flux(high * likely)).toBeGreaterThan(0.249);
  });
});

describe('analogy of heat and mass transfer', () => {
  // Textbook constants (from memory): 0.54 Ra^(1/4), 0.15 Ra^(1/3), 0.27 Ra^(1/4) for the stable side.
  test.each([
    [1e4, 5.4],
    [1e6, 17.0763],
    [1e9, 150],
    [-1e6, 8.53815],
    [0, 2 / Math.PI],
  ])('Sherwood number at Ra %d: %d', (rayleigh, expected) => {
    expect(sherwoodHorizontalSurface(rayleigh)).toBeCloseTo(expected, 3);
  });

  test('has no step where one law gives way to the other, nor at rest', () => {
    for (const at of [0.15 ** -12 * 0.54 ** 12, (2 / Math.PI / 0.54) ** 4, -((2 / Math.PI / 0.27) ** 4)]) {
      const [below, above] = [at * (1 - 1e-9), at * (1 + 1e-9)].map(sherwoodHorizontalSurface);
      expect(deviation(below!, above!)).toBeLessThan(1e-8);
    }
  });

  test('a smaller surface evaporates more per area', () => {
    const at = (length: number) => analogyCoefficient(299.15, 3363, 295.15, 1322, 101325, length);
    expect(at(0.05)).toBeGreaterThan(at(0.2));
  });

  test('the air of the water lighter than the room’s makes Ra positive', () => {
    expect(surfaceRayleighNumber(1.16, 1.18, 0.2, 1.84e-5, 2.5e-5)).toBeGreaterThan(0);
    expect(surfaceRayleighNumber(1.19, 1.18, 0.2, 1.84e-5, 2.5e-5)).toBeLessThan(0);
    expect(massTransferCoefficient(20, 2.5e-5, 0.2, 297)).toBeCloseTo(1.824e-8, 11);
  });
});

describe('moving air', () => {
  test('adds nothing up to 0.1 m/s, then three quarters of what the handbook adds', () => {
    const h_fg = latentHeat(299.15);
    expect(quietInMovingAir(2.4e-8, 0.02, h_fg)).toBe(2.4e-8);
    expect(quietInMovingAir(2.4e-8, 0.1, h_fg)).toBe(2.4e-8);
    const added = quietInMovingAir(2.4e-8, 0.6, h_fg) - 2.4e-8;
    expect(deviation(added, (0.74 * 0.0782 * 0.5) / h_fg)).toBeLessThan(1e-9);
  });
});

describe('range of the methods (seed 20274)', () => {
  test('holds 1 and the fixed factors; likely is K at a factor of 1', () => {
    fc.assert(
      fc.property(
        anyConditions,
        fc.constantFrom(...looks),
        fc.double({ min: 0.02, max: 4, noNaN: true }),
        fc.double({ min: 0, max: 1.5, noNaN: true }),
        (conditions, look, area, airSpeed) => {
          const range = surfaceMethodRange(conditions, look, area, 4 * Math.sqrt(area), airSpeed, 0.035);
          const { factor } = surfaceMethods[look];
          expect(range.low).toBeLessThanOrEqual(factor.low);
          expect(range.high).toBeGreaterThanOrEqual(factor.high);
          expect(range.low).toBeGreaterThan(0);
          expect(range.low * range.likely).toBeLessThanOrEqual(range.methodsLow * range.likely);
          for (const value of Object.values(range.methods)) expect(value).toBeGreaterThan(0);
        },
      ),
      { seed: 20274, numRuns: 300 },
    );
  });

  test('is continuous through equal vapour pressures and equal temperatures', () => {
    const at = (roomTemperature: number, roomRelativeHumidity: number) =>
      surfaceMethodRange({ ...example, roomTemperature, roomRelativeHumidity }, 'rippled', 0.6, 3.4, 0.1, 0);
    const equal = saturationVapourPressure(299.15) / saturationVapourPressure(303.15);
    for (const [one, other] of [
      [at(299.15 - 1e-7, 0.5), at(299.15 + 1e-7, 0.5)],
      [at(303.15, equal - 1e-9), at(303.15, equal + 1e-9)],
    ] as const) {
      expect(deviation(one.low, other.low)).toBeLessThan(1e-4);
      expect(deviation(one.high, other.high)).toBeLessThan(1e-4);
      expect(deviation(one.likely, other.likely)).toBeLessThan(1e-4);
    }
  });

  // Where the fixed factors were judged, a heated living room, the methods stay within them but for the small end of rippled.
  test('at the example the methods span less than the fixed factors, but for quiet methods on a rippled surface', () => {
    const [still, rippled, rough] = looks.map((look) => surfaceMethodRange(example, look, 0.6, 3.4, 0.1, 0));
    expect(still!.methodsHigh).toBeLessThan(surfaceMethods.still.factor.high);
    expect(still!.low).toBeCloseTo(0.82, 2);
    expect(rippled!.methodsLow).toBeCloseTo(0.72, 2);
    expect(rippled!.methodsHigh).toBeCloseTo(1.24, 2);
    expect(rough!.methodsLow).toBeCloseTo(0.74, 6);
    expect(rough!.methodsHigh).toBeCloseTo(1.258, 6);
  });
});
