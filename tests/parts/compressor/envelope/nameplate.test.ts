// Nameplates against themselves, with numbers worked by hand.

import { describe, expect, test } from 'vitest';
import { nameplateContradictions } from '../../../../src/parts/compressor/index.ts';
import type { Band } from '../../../../src/quantities/index.ts';

const exactly = (value: number): Band => ({ low: value, likely: value, high: value });

describe('locked-rotor over rated current', () => {
  test.each([
    [1, 3.9, 'lockedRotorRatio'],
    [1, 4.1, null],
    [1, 7.9, null],
    [1, 8.1, 'lockedRotorRatio'],
  ] as const)('%d A rated, %d A locked: %s', (rated, locked, expected) => {
    const found = nameplateContradictions({ ratedCurrent: exactly(rated), lockedRotorCurrent: exactly(locked) });
    expect(found.map(({ of }) => of)).toEqual(expected === null ? [] : [expected]);
    for (const { value, usual, source } of found) {
      expect(value.likely).toBe(locked);
      expect([usual.low, usual.high]).toEqual([4, 8]);
      expect(source).toContain('memory');
    }
  });

  test('only what no reading of the plate allows is a contradiction', () => {
    const ratedCurrent = { low: 0.9, likely: 1, high: 1.1 };
    const lockedRotorCurrent = { low: 8, likely: 8.5, high: 9 };
    // 8 / 1.1 = 7.3: it may be right.
    expect(nameplateContradictions({ ratedCurrent, lockedRotorCurrent })).toEqual([]);
  });
});

describe('watts over volts times amps', () => {
  const plate = (power: number) =>
    nameplateContradictions({ voltage: exactly(230), ratedCurrent: exactly(1), power: exactly(power) });

  test('more watts than volts times amps are impossible at one point', () => {
    expect(plate(231)).toMatchObject([{ of: 'powerFactor', value: { likely: 231 / 230 } }]);
    expect(plate(229)).toEqual([]);
  });

  test('fewer than 0.4 of them are no running motor', () => {
    expect(plate(91)).toMatchObject([{ of: 'powerFactor' }]);
    expect(plate(93)).toEqual([]);
  });

  test('a range of voltage counts', () => {
    const found = nameplateContradictions({
      voltage: { low: 220, likely: 230, high: 240 },
      ratedCurrent: exactly(1),
      power: exactly(235),
    });
    expect(found).toEqual([]);
  });
});

test('a plate that does not name both of a pair says nothing against itself', () => {
  expect(nameplateContradictions({ ratedCurrent: exactly(1) })).toEqual([]);
  expect(nameplateContradictions({ power: exactly(900), ratedCurrent: exactly(1) })).toEqual([]);
  expect(nameplateContradictions({})).toEqual([]);
});
