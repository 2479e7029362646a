// The limits of a machine as one list, and how far a point is from each. The bounds are typical guides, from memory: the tests
// hold the list to the figures, not the figures to the truth. The suction pressure is held to published saturation tables.

import { describe, expect, test } from 'vitest';
import { refrigerant } from '../../../../src/matter/refrigerants/index.ts';
import {
  applicationLimits,
  applications,
  type EnvelopeLimit,
  envelopeOf,
  limitedQuantities,
  limitsReached,
} from '../../../../src/parts/compressor/index.ts';

const r134a = refrigerant('R134a');
const named = (limits: readonly EnvelopeLimit[]) => Object.fromEntries(limits.map((limit) => [limit.name, limit]));
const freezer = envelopeOf({ application: 'low', madeFor: r134a, ratedCurrent: 0.9, hardestLoad: 1.3 });

describe('the list', () => {
  test.each(applications)('%s: each limit once, with its source, in an order that can hold', (application) => {
    const limits = envelopeOf({ application, madeFor: r134a, ratedCurrent: 1, hardestLoad: 1.2 });
    const names = limits.map(({ name }) => name);
    expect(new Set(names).size).toBe(names.length);
    for (const { source, bound } of limits) {
      expect(source).toMatch(/memory|common practice/);
      expect(bound).toBeGreaterThan(0);
    }
    expect(new Set(limits.map(({ of }) => of))).toEqual(new Set(limitedQuantities));
    const at = named(limits);
    const rising = [
      ['evaporatingLowest', 'evaporatingHighest'],
      ['condensingContinuous', 'condensingPeak'],
      ['dischargeCaution', 'dischargeHighest'],
      ['pressureRatioLowest', 'pressureRatioCaution', 'pressureRatioHighest'],
      ['superheatLowest', 'superheatCaution'],
      ['wallCaution', 'wallHighest'],
      ['currentRated', 'currentContinuous'],
    ] as const;
    for (const group of rising) {
      const bounds = group.map((name) => at[name]!.bound);
      expect(bounds).toEqual([...bounds].sort((one, other) => one - other));
    }
    expect(at.evaporatingHighest?.bound).toBe(applicationLimits(application).evaporating.highest);
  });

  test('leaves out what is not known', () => {
    const limits = named(envelopeOf({ application: 'low', madeFor: r134a, ratedCurrent: null, hardestLoad: null }));
    expect(limits).not.toHaveProperty('currentRated');
    expect(limits).not.toHaveProperty('currentContinuous');
    expect(limits).not.toHaveProperty('motorLoadHighest');
  });

  test('a motor bears 1.56 times its rated-load current (custom of the USA, from memory)', () => {
    expect(named(freezer).currentContinuous?.bound).toBeCloseTo(1.404, 12);
  });

  // Published saturation pressures at −10, 5 and 15 °C: R134a 200.6, 349.7 and 488.4 kPa (tables after Tillner-Roth & Baehr
  // 1994, from memory, to four digits).
  test.each([
    ['low', 200.6e3],
    ['medium', 349.7e3],
    ['high', 488.4e3],
  ] as const)('reference: %s, highest suction pressure of a motor made for R134a', (application, expected) => {
    const limits = named(envelopeOf({ application, madeFor: r134a, ratedCurrent: null, hardestLoad: null }));
    expect(Math.abs(limits.suctionPressureHighest!.bound - expected)).toBeLessThan(0.1e3);
  });
});

describe('distances', () => {
  test('are what is left, negative once passed, and only of what is known', () => {
    const reaches = limitsReached(freezer, { evaporating: 270.15, current: 0.8, superheat: 4, pressureRatio: 1.5 });
    const at = Object.fromEntries(reaches.map((reach) => [reach.limit.name, reach]));
    expect(Object.keys(at).sort()).toEqual(
      [
        'currentContinuous',
        'currentRated',
        'evaporatingHighest',
        'evaporatingLowest',
        'pressureRatioCaution',
        'pressureRatioHighest',
        'pressureRatioLowest',
        'superheatCaution',
        'superheatLowest',
      ].sort(),
    );
    expect(at.evaporatingHighest).toMatchObject({ passed: true, value: 270.15 });
    expect(at.evaporatingHighest!.distance).toBeCloseTo(-7, 9);
    expect(at.evaporatingLowest!.distance).toBeCloseTo(37, 9);
    expect(at.currentRated!.distance).toBeCloseTo(0.1, 12);
    expect(at.superheatCaution).toMatchObject({ distance: -1, passed: true });
    expect(at.superheatLowest).toMatchObject({ distance: 2, passed: false });
    expect(at.pressureRatioLowest).toMatchObject({ distance: -0.5, passed: true });
  });

  test('come nearest first, in usual steps of their quantities', () => {
    const reaches = limitsReached(freezer, { evaporating: 270.15, condensing: 313.15, discharge: 350, wall: 340 });
    const nearness = reaches.map((reach) => reach.nearness);
    expect(nearness).toEqual([...nearness].sort((one, other) => one - other));
    expect(reaches[0]!.limit.name).toBe('evaporatingHighest');
  });

  test('are refused for what is no number', () => {
    expect(() => limitsReached(freezer, { current: Number.NaN })).toThrow(/value/);
  });
});
