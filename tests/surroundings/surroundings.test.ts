// The year of room and source: laws (shares add up, seasons are symmetric, limits are met) and the coldest spell.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { InputError } from '../../src/numerics/index.ts';
import {
  coldestSpell,
  heatedShare,
  monthDuration,
  monthlyConditions,
  monthNames,
  monthsFromColdest,
  monthWorking,
  type RoomClimate,
  type SourceClimate,
  seasonalTemperature,
  surroundingsFormulas,
} from '../../src/surroundings/index.ts';
import { expectTraced } from '../traced-steps.ts';

const room: RoomClimate = {
  usual: 293.15,
  coldest: 290.15,
  warmest: 298.15,
  monthsHeated: 7,
  coldestMonth: 'january',
};

describe('months', () => {
  it('make a common year of 365 days', () => {
    expect(monthNames.reduce((total, month) => total + monthDuration(month), 0)).toBe(365 * 86400);
  });

  it('are counted the short way round the year', () => {
    expect(monthsFromColdest('december', 'january')).toBe(1);
    expect(monthsFromColdest('july', 'january')).toBe(6);
    expect(monthsFromColdest('january', 'july')).toBe(6);
    expect(monthsFromColdest('march', 'october')).toBe(5);
  });

  it('refuse a name that is none', () => {
    expect(() => monthDuration('winter' as 'january')).toThrow(InputError);
  });
});

describe('heated months', () => {
  it('are whole for odd numbers and split evenly for even ones', () => {
    expect([0, 1, 2, 3, 4].map((distance) => heatedShare(distance, 7))).toEqual([1, 1, 1, 1, 0]);
    expect([3, 4, 5].map((distance) => heatedShare(distance, 8))).toEqual([1, 0.5, 0]);
    expect([0, 6].map((distance) => heatedShare(distance, 12))).toEqual([1, 1]);
    expect(heatedShare(0, 0)).toBe(0);
  });

  it('add up to the number of months, whole or not', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 12, noNaN: true }),
        fc.constantFrom(...monthNames),
        (monthsHeated, coldestMonth) => {
          const shares = monthlyConditions({ ...room, monthsHeated, coldestMonth }, { kind: 'roomAir' }).map(
            (month) => month.heatedShare,
          );
          expect(shares.reduce((total, share) => total + share, 0)).toBeCloseTo(monthsHeated, 10);
        },
      ),
      { seed: 12, numRuns: 100 },
    );
  });

  it('refuse thirteen months', () => {
    expect(() => heatedShare(0, 13)).toThrow(/monthsHeated/);
  });
});

describe('temperatures', () => {
  it('follow a cosine: a quarter of the way after two months, half after three', () => {
    expect(seasonalTemperature(285, 297, 2)).toBeCloseTo(288, 12);
    expect(seasonalTemperature(285, 297, 3)).toBeCloseTo(291, 12);
    expect(seasonalTemperature(285, 297, 6)).toBeCloseTo(297, 12);
  });

  it('agree with the yearly harmonic at the ground surface (Kusuda & Achenbach 1965, depth 0)', () => {
    // T(0,t) = T_m − A cos(2π (t − t_0)/365): half a year in six steps gives the same levels.
    const mean = 283.15;
    const amplitude = 12;
    for (let distance = 0; distance <= 6; distance += 1) {
      const harmonic = mean - amplitude * Math.cos((2 * Math.PI * distance) / 12);
      expect(seasonalTemperature(mean - amplitude, mean + amplitude, distance)).toBeCloseTo(harmonic, 10);
    }
  });

  it('sit at the usual level in heated months and reach the warmest six months from the coldest', () => {
    const months = monthlyConditions(room, { kind: 'roomAir' });
    for (const month of months.filter((each) => each.heatedShare === 1)) expect(month.roomTemperature).toBe(293.15);
    expect(months[6]?.roomTemperature).toBeCloseTo(298.15, 12);
    expect(months.map((month) => month.summerShare)).toEqual([0, 0, 0, 0, 0, 1, 1, 1, 0, 0, 0, 0]);
  });

  it('are the room itself for room air, and a year of its own for another room', () => {
    for (const month of monthlyConditions(room, { kind: 'roomAir' })) {
      expect(month.sourceTemperature).toBe(month.roomTemperature);
    }
    const cellar = monthlyConditions(room, { kind: 'otherRoom', usual: 283, coldest: 280, warmest: 291 });
    expect(cellar[0]?.sourceTemperature).toBeCloseTo(283, 12);
    expect(cellar[6]?.sourceTemperature).toBeCloseTo(291, 12);
    expect(cellar[0]?.roomTemperature).toBe(293.15);
  });

  it('leave no summer where all twelve months are heated', () => {
    const months = monthlyConditions({ ...room, monthsHeated: 12 }, { kind: 'roomAir' });
    expect(months.every((month) => month.summerShare === 0 && month.roomTemperature === 293.15)).toBe(true);
  });
});

describe('coldest spell', () => {
  it('is the lowest sustained temperature of room and source', () => {
    expect(coldestSpell(room, { kind: 'roomAir' })).toEqual({ roomTemperature: 290.15, sourceTemperature: 290.15 });
    expect(coldestSpell(room, { kind: 'otherRoom', usual: 283, coldest: 279, warmest: 291 })).toEqual({
      roomTemperature: 290.15,
      sourceTemperature: 279,
    });
  });

  it('names the field that is impossible', () => {
    expect(() => coldestSpell({ ...room, coldest: Number.NaN }, { kind: 'roomAir' })).toThrow(/room\.coldest/);
  });
});

describe('working of the months', () => {
  const origins = {
    usual: 'given.usual',
    warmest: 'given.warmest',
    monthsHeated: 'given.monthsHeated',
    coldestMonth: 'given.coldestMonth',
    sourceUsual: 'given.sourceUsual',
    sourceWarmest: 'given.sourceWarmest',
  };

  it.each<[string, SourceClimate]>([
    ['room air', { kind: 'roomAir' }],
    ['another room', { kind: 'otherRoom', usual: 281.15, coldest: 277.15, warmest: 293.15 }],
  ])('repeats shares and temperatures of every month: %s', (_what, source) => {
    const climate = { ...room, monthsHeated: 8.5, coldestMonth: 'february' as const };
    for (const month of monthlyConditions(climate, source)) {
      const steps = monthWorking(climate, source, month, origins, 'm');
      const values = expectTraced(steps, surroundingsFormulas, (origin) => origin.startsWith('given.'));
      expect(values.get('m.heatedShare')).toBe(month.heatedShare);
      expect(values.get('m.summerShare')).toBe(month.summerShare);
      expect(values.get('m.roomTemperature')).toBe(month.roomTemperature);
      expect(values.get('m.sourceTemperature')).toBe(source.kind === 'roomAir' ? undefined : month.sourceTemperature);
    }
  });
});
