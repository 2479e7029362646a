// Charges against the figures of product standards.
// R32: a published table that cites clause GG.2:2018 of IEC 60335-2-40, height of release 0.6 m, LFL 0.307 kg/m³; to its
// printed digits. R290 and R600a: the same formula on the limits of EN 378-1:2016 Annex E, worked by hand; 26 m³ held
// against the 0.988 kg of R290 that an industry association named for the edition of 2022. The other volumes are from
// memory: those rows hold the code to the figure, not the figure to the truth.

import { describe, expect, it } from 'vitest';
import {
  chargeFactors,
  floorReleaseHeight,
  largestChargeOnFloorArea,
  smallestFloorArea,
  smallestRoomVolume,
  wallReleaseHeight,
} from '../../src/cautions/index.ts';
import { InputError } from '../../src/numerics/index.ts';

const r32 = 0.307;
const r290 = 0.038;
const r600a = 0.043;

describe('charge by floor area', () => {
  it.each([
    [1, 0.138],
    [6, 0.829],
    [10, 1.084],
    [20, 1.533],
    [30, 1.877],
  ])('of R32 on %d m² is as the published table prints it', (area, printed) => {
    expect(largestChargeOnFloorArea(r32, floorReleaseHeight, area, 'A2L')).toBeCloseTo(printed, 3);
  });

  it.each([
    [1.84, 28.81],
    [2.0, 34.04],
  ])('%d kg of R32 need the floor the published table prints', (charge, printed) => {
    expect(smallestFloorArea(charge, r32, floorReleaseHeight)).toBeCloseTo(printed, 2);
  });

  it('of R290 and R600a on the floor and on the wall', () => {
    expect(largestChargeOnFloorArea(r290, floorReleaseHeight, 10, 'A3')).toBeCloseTo(0.0796, 4);
    expect(smallestFloorArea(0.15, r290, floorReleaseHeight)).toBeCloseTo(35.53, 2);
    expect(smallestFloorArea(0.15, r290, wallReleaseHeight)).toBeCloseTo(3.95, 2);
    expect(largestChargeOnFloorArea(r600a, floorReleaseHeight, 10, 'A3')).toBeCloseTo(0.0929, 4);
    expect(smallestFloorArea(0.15, r600a, floorReleaseHeight)).toBeCloseTo(26.08, 2);
    expect(smallestFloorArea(0.15, r600a, wallReleaseHeight)).toBeCloseTo(2.9, 2);
  });

  it('is undone by the smallest floor area, where the second bound does not count', () => {
    for (const area of [2, 9.5, 40]) {
      const charge = largestChargeOnFloorArea(r290, floorReleaseHeight, area, 'A3');
      expect(smallestFloorArea(charge, r290, floorReleaseHeight)).toBeCloseTo(area, 10);
    }
  });

  it('grows with the root of the area and, for class 2L on small floors, in proportion to it', () => {
    const at = (area: number, safetyClass: string) =>
      largestChargeOnFloorArea(r32, floorReleaseHeight, area, safetyClass);
    expect(at(40, 'A2L') / at(10, 'A2L')).toBeCloseTo(2, 10);
    expect(at(4, 'A2L') / at(2, 'A2L')).toBeCloseTo(2, 10);
    expect(at(4, 'A3') / at(1, 'A3')).toBeCloseTo(2, 10);
  });
});

describe('fixed amounts', () => {
  it.each([
    ['R290', r290, 'A3', 0.152, 0.988, 4.94],
    ['R600a', r600a, 'A3', 0.172, 1.118, 5.59],
    ['R1270', 0.046, 'A3', 0.184, 1.196, 5.98],
    ['R32', r32, 'A2L', 1.842, 15.96, 79.8],
  ])('of %s', (_name, limit, safetyClass, m1, m2, m3) => {
    const factors = chargeFactors(limit, safetyClass);
    expect(factors.m1).toBeCloseTo(m1, 3);
    expect(factors.m2).toBeCloseTo(m2, 2);
    expect(factors.m3).toBeCloseTo(m3, 1);
  });
});

describe('room for a charge', () => {
  it('of 150 g at a fifth of the flammability limit', () => {
    expect(smallestRoomVolume(0.15, 0.2 * r290)).toBeCloseTo(19.7, 1);
    expect(smallestRoomVolume(0.15, 0.2 * r600a)).toBeCloseTo(17.4, 1);
  });
});

describe('bad input', () => {
  it('is named', () => {
    expect(() => chargeFactors(r290, 'A1')).toThrow(/safetyClass/);
    expect(() => chargeFactors(0, 'A3')).toThrow(/lowerFlammabilityLimit/);
    expect(() => largestChargeOnFloorArea(r32, floorReleaseHeight, 0, 'A2L')).toThrow(/area/);
    expect(() => largestChargeOnFloorArea(r32, floorReleaseHeight, 5, 'B1')).toThrow(InputError);
    expect(() => smallestFloorArea(Number.NaN, r32, floorReleaseHeight)).toThrow(/charge/);
    expect(() => smallestRoomVolume(0.1, 0)).toThrow(/limit/);
  });
});
