// Whatever is asked, the answer is a complete state or a typed error: never NaN, never another kind of error, never endless.
// Property-based, with a fixed seed.

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { refrigerant, refrigerantNames, type StateInput, stateAt } from '../../../src/matter/refrigerants/index.ts';
import { KettlefinError } from '../../../src/numerics/index.ts';

const seed = 20240229;
const properties = ['temperature', 'pressure', 'density', 'enthalpy', 'entropy', 'quality'] as const;
const nullable = new Set(['cp', 'cv', 'soundSpeed', 'viscosity', 'conductivity', 'surfaceTension', 'quality']);

/** A state whose numbers are all finite and physical, or a typed error; anything else fails the test. */
function answer(name: string, given: unknown): 'state' | 'error' {
  try {
    const state = stateAt(refrigerant(name), given as StateInput);
    for (const [key, value] of Object.entries(state)) {
      if (key === 'phase' || (value === null && nullable.has(key))) continue;
      if (!Number.isFinite(value)) throw new Error(`${key} is ${value}`);
    }
    if (!(state.temperature > 0 && state.pressure > 0 && state.density > 0)) throw new Error('not physical');
    if (state.cp !== null && !(state.cp > 0)) throw new Error(`cp is ${state.cp}`);
    if (state.soundSpeed !== null && !(state.soundSpeed > 0)) throw new Error(`w is ${state.soundSpeed}`);
    return 'state';
  } catch (error) {
    if (error instanceof KettlefinError && error.code !== 'notConverged') return 'error';
    throw error;
  }
}

const anyNumber = fc.oneof(
  fc.double(),
  fc.double({ min: -1e3, max: 1e3 }),
  fc.constantFrom(0, -0, 1, Number.NaN, Number.POSITIVE_INFINITY, Number.MIN_VALUE, Number.MAX_VALUE, 1e-300, 273.15),
);
const name = fc.constantFrom(...refrigerantNames);

describe(`seed ${seed}`, () => {
  test('any two properties with any numbers', () => {
    const pair = fc.tuple(fc.constantFrom(...properties), anyNumber, fc.constantFrom(...properties), anyNumber);
    fc.assert(
      fc.property(name, pair, (fluid, [first, a, second, b]) => {
        answer(fluid, { [first]: a, [second]: b });
      }),
      { seed, numRuns: 4000 },
    );
  });

  test('plausible numbers, inside and outside the range', () => {
    const plausible = {
      temperature: fc.double({ min: 50, max: 800, noNaN: true }),
      pressure: fc.double({ min: -9, max: 10, noNaN: true }).map((power) => 10 ** power),
      density: fc.double({ min: -9, max: 3.5, noNaN: true }).map((power) => 10 ** power),
      enthalpy: fc.double({ min: -4e5, max: 2e6, noNaN: true }),
      entropy: fc.double({ min: -3e3, max: 8e3, noNaN: true }),
      quality: fc.double({ min: -0.1, max: 1.1, noNaN: true }),
    };
    const { temperature, pressure, density, enthalpy, entropy, quality } = plausible;
    const given = fc.oneof(
      fc.record({ temperature, pressure }),
      fc.record({ pressure, enthalpy }),
      fc.record({ pressure, entropy }),
      fc.record({ temperature, quality }),
      fc.record({ pressure, quality }),
      fc.record({ density, temperature }),
    );
    let states = 0;
    fc.assert(
      fc.property(name, given, (fluid, request) => {
        if (answer(fluid, request) === 'state') states++;
      }),
      { seed, numRuns: 5000 },
    );
    expect(states).toBeGreaterThan(1500);
  });

  test('close to the critical point, from every side', () => {
    const close = fc
      .tuple(fc.constantFrom(1, -1), fc.double({ min: -13, max: -2, noNaN: true }))
      .map(([sign, power]) => 1 + sign * 10 ** power);
    fc.assert(
      fc.property(name, close, close, fc.double({ min: 0, max: 1, noNaN: true }), (fluid, a, b, quality) => {
        const { critical, equation } = refrigerant(fluid);
        const temperature = a * critical.temperature;
        const pressure = b * critical.pressure;
        answer(fluid, { temperature, pressure });
        answer(fluid, { temperature, quality });
        answer(fluid, { pressure, quality });
        answer(fluid, { density: b * critical.density, temperature });
        equation.at(critical.temperature, critical.density);
        const { enthalpy, entropy } = equation;
        answer(fluid, { pressure, enthalpy: enthalpy * a });
        answer(fluid, { pressure, entropy: entropy * a });
      }),
      { seed, numRuns: 1500 },
    );
  });

  test.each([
    [undefined, 'unsupportedPair'],
    [null, 'unsupportedPair'],
    [7, 'unsupportedPair'],
    [{}, 'unsupportedPair'],
    [{ temperature: 300 }, 'unsupportedPair'],
    [{ temperature: 300, pressure: 1e5, quality: 0 }, 'unsupportedPair'],
    [{ enthalpy: 3e5, entropy: 1.5e3 }, 'unsupportedPair'],
    [{ pressure: 1e5, density: 4 }, 'unsupportedPair'],
    [{ temperature: '300', pressure: 1e5 }, 'badInput'],
    [{ temperature: Number.NaN, pressure: 1e5 }, 'badInput'],
    [{ temperature: 300, pressure: -1 }, 'badInput'],
    [{ temperature: 300, pressure: 0 }, 'badInput'],
    [{ density: 0, temperature: 300 }, 'badInput'],
    [{ temperature: 300, quality: 1.01 }, 'badInput'],
    [{ temperature: 300, quality: -0.01 }, 'badInput'],
    [{ pressure: Number.POSITIVE_INFINITY, enthalpy: 2e5 }, 'badInput'],
  ])('%j is refused with code %s', (given, code) => {
    expect(() => stateAt(refrigerant('R290'), given as unknown as StateInput)).toThrow(
      expect.objectContaining({ name: 'InputError', code }),
    );
  });
});

describe('names', () => {
  test.each([
    ['r134A', 'R134a'],
    ['R-600a', 'R600a'],
    ['propane', 'R290'],
    ['Isobutane', 'R600a'],
    ['HFC-134a', 'R134a'],
    [' r 22 ', 'R22'],
  ])('%s is %s', (written, expected) => {
    expect(refrigerant(written)).toBe(refrigerant(expected));
  });

  test.each(['R135a', '', 'R1234yf', 'constructor', '__proto__', '💧'])(
    '%s is refused, the nearest named',
    (written) => {
      expect(() => refrigerant(written)).toThrow(
        expect.objectContaining({
          name: 'InputError',
          code: 'unknownRefrigerant',
          expected: expect.stringMatching(/the nearest is R/),
        }),
      );
      if (written === 'R135a') expect(() => refrigerant(written)).toThrow(/nearest is R134a/);
    },
  );
});
