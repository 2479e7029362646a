// Ten coefficients: hand-worked values of the standards' form, and that a converted set is the same function.

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  coefficientPowers,
  convertedCoefficients,
  requireTenCoefficients,
  type TenCoefficients,
  tenCoefficients,
} from '../../../../src/parts/compressor/polynomial/ten-coefficients.ts';
import {
  coefficientsInSi,
  type PolynomialUnit,
  temperatureUnits,
  unitFactor,
} from '../../../../src/parts/compressor/polynomial/units.ts';
import reference from '../../../reference/parts/compressor-polynomial.json';

const asSet = (values: readonly number[]) => requireTenCoefficients(values);
const coefficient = fc.double({ min: -1e3, max: 1e3, noNaN: true });
const anySet = fc
  .array(coefficient, { minLength: 10, maxLength: 10 })
  .filter((values) => values.some((one) => one !== 0));

/** Size of the terms that a value is made of: what rounding is measured by. */
function termSize(values: TenCoefficients, s: number, d: number): number {
  return coefficientPowers.reduce((sum, [i, j], index) => sum + Math.abs(values[index]! * s ** i * d ** j), 0);
}

describe('reference: hand-worked values, order of AHRI 540 and EN 12900', () => {
  test.each(reference.worked.rows as [number[], number, number, number][])(
    '%j at %d and %d gives %d',
    (values, suction, discharge, expected) => {
      expect(tenCoefficients(asSet(values), suction, discharge)).toBe(expected);
    },
  );

  test('one term over °F as a whole set over °C', () => {
    const inFahrenheit = asSet([0, 0, 0, 0, 0, 0, 0, 1, 0, 0]);
    const inCelsius = convertedCoefficients(inFahrenheit, { scale: 1.8, shift: 32, factor: 1 });
    reference.fahrenheitTerm.coefficients.forEach((expected, index) => {
      expect(Math.abs(inCelsius[index]! - expected)).toBeLessThan(1e-9);
    });
    expect(tenCoefficients(inCelsius, 5, 50)).toBeCloseTo(205082, 6);
  });
});

describe('law: a converted set is the same function', () => {
  test('between °F and °C, at random sets and temperatures (seed 11)', () => {
    const temperature = fc.double({ min: -60, max: 90, noNaN: true });
    fc.assert(
      fc.property(anySet, temperature, temperature, (values, suction, discharge) => {
        const set = asSet(values);
        const f = (celsius: number) => 1.8 * celsius + 32;
        const inCelsius = convertedCoefficients(set, { scale: 1.8, shift: 32, factor: 1 });
        const size = termSize(set, Math.abs(f(suction)) + 64, Math.abs(f(discharge)) + 64);
        const gap = tenCoefficients(inCelsius, suction, discharge) - tenCoefficients(set, f(suction), f(discharge));
        expect(Math.abs(gap)).toBeLessThan(1e-12 * size);
        const back = convertedCoefficients(inCelsius, { scale: 1 / 1.8, shift: -32 / 1.8, factor: 1 });
        const returned =
          tenCoefficients(back, f(suction), f(discharge)) - tenCoefficients(set, f(suction), f(discharge));
        expect(Math.abs(returned)).toBeLessThan(1e-10 * size);
      }),
      { seed: 11, numRuns: 500 },
    );
  });

  test('factors of units: a pound 0.45359237 kg, a BTU 1055.05585262 J', () => {
    const factors: readonly (readonly [PolynomialUnit, number])[] = [
      ['kg/h', 1 / 3600],
      ['g/s', 1e-3],
      ['kg/s', 1],
      ['lb/h', 0.45359237 / 3600],
      ['W', 1],
      ['kW', 1e3],
      ['BTU/h', 1055.05585262 / 3600],
      ['A', 1],
    ];
    for (const [unit, factor] of factors) expect(unitFactor(unit)).toBeCloseTo(factor, 15);
  });

  test('a set in lb/h over °F and the same in kg/h over °C agree', () => {
    const pounds = asSet([12, 0.4, -0.05, 0.004, 0.0006, -0.0002, 1e-5, 2e-6, -3e-6, 1e-7]);
    const kilograms = convertedCoefficients(pounds, { scale: 1.8, shift: 32, factor: 0.45359237 });
    const [fromPounds, fromKilograms] = [
      coefficientsInSi(pounds, 'fahrenheit', 'lb/h'),
      coefficientsInSi(kilograms, 'celsius', 'kg/h'),
    ];
    for (const [s, d] of [
      [-25, 40],
      [7.2, 54.4],
    ] as const) {
      const value = tenCoefficients(fromPounds, s, d);
      expect(Math.abs(tenCoefficients(fromKilograms, s, d) / value - 1)).toBeLessThan(1e-12);
      expect(value).toBeCloseTo((tenCoefficients(pounds, 1.8 * s + 32, 1.8 * d + 32) * 0.45359237) / 3600, 15);
    }
    expect(temperatureUnits).toEqual(['celsius', 'fahrenheit']);
  });
});

describe('refusals', () => {
  test.each([
    [[1, 2, 3], 'notTenCoefficients'],
    [Array(10).fill(0), 'notTenCoefficients'],
    [[1, 2, 3, 4, 5, 6, 7, 8, 9, Number.NaN], 'badInput'],
  ])('%j', (values, code) => {
    expect(() => requireTenCoefficients(values, 'x')).toThrow(expect.objectContaining({ name: 'InputError', code }));
  });

  test('a result that is not finite is an error, never NaN', () => {
    const set = asSet([1, 1, 1, 1, 1, 1, 1, 1, 1, 1]);
    expect(() => tenCoefficients(set, Number.NaN, 1)).toThrow(expect.objectContaining({ path: 'suction' }));
    expect(() => tenCoefficients(asSet(Array(10).fill(1e308)), 1e9, 1e9)).toThrow(/finite/);
  });
});
