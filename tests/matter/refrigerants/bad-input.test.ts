// Whatever is asked, the answer is a complete state or a typed error: never NaN, never another kind of error, never endless.
// Property-based, with a fixed seed.

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  derivedAt,
  refrigerant,
  refrigerantNames,
  type State,
  type StateInput,
  stateAt,
  supportedPairs,
  transportAt,
} from '../../../src/matter/refrigerants/index.ts';
import { KettlefinError } from '../../../src/numerics/index.ts';

const seed = 20240229;
/** A run that takes longer than this has met something that hangs [ms]. */
const endless = { interruptAfterTimeLimit: 8000, markInterruptAsFailure: true } as const;
const properties = ['temperature', 'pressure', 'density', 'enthalpy', 'entropy', 'quality'] as const;
const nullable = new Set(['cp', 'cv', 'soundSpeed', 'surfaceTension', 'quality', 'viscosity', 'conductivity']);

/** A state whose numbers are all finite and physical, or a typed error; anything else fails the test. */
function answer(name: string, given: unknown): 'state' | 'error' {
  let state: State;
  try {
    state = stateAt(refrigerant(name), given as StateInput);
  } catch (error) {
    if (!(error instanceof KettlefinError) || error.code === 'notConverged') throw error;
    // What it says holds no number that is none, unless that was what it was given.
    const isAskedWithNone = Object.values(Object(given)).some((value) => !Number.isFinite(value));
    if (!isAskedWithNone && /NaN|Infinity|undefined/.test(error.message)) throw error;
    return 'error';
  }
  requireComplete(name, state);
  return 'state';
}

function requireComplete(name: string, state: State): void {
  const fluid = refrigerant(name);
  const { viscosity, conductivity } = transportAt(fluid, state);
  for (const [key, value] of Object.entries({ ...state, viscosity, conductivity })) {
    if (key === 'phase' || key === 'glideApproximation' || (value === null && nullable.has(key))) continue;
    if (!Number.isFinite(value)) throw new Error(`${key} is ${value}`);
  }
  if (!(state.temperature > 0 && state.pressure > 0 && state.density > 0)) throw new Error('not physical');
  for (const value of [state.cp, state.cv, state.soundSpeed, viscosity, conductivity]) {
    if (value !== null && !(value > 0)) throw new Error(`${value} in ${JSON.stringify(state)}`);
  }
  const isMixture = state.quality !== null && state.quality > 0 && state.quality < 1;
  if (isMixture !== (state.cv === null)) throw new Error(`c_v ${state.cv} at quality ${state.quality}`);
  const derived = derivedAt(fluid, state);
  if (derived === null) return;
  const { derivatives, ...others } = derived;
  for (const [key, value] of Object.entries({ ...others, ...derivatives })) {
    if (!Number.isFinite(value)) throw new Error(`${key} is ${value}`);
  }
}

const anyNumber = fc.oneof(
  fc.double(),
  fc.double({ min: -1e3, max: 1e3 }),
  fc.constantFrom(0, -0, 1, Number.NaN, Number.POSITIVE_INFINITY, Number.MIN_VALUE, Number.MAX_VALUE, 1e-300, 273.15),
);
const name = fc.constantFrom(...refrigerantNames);

/** For each property what lies a share of the way from its lowest to its highest value; small ones evenly in the logarithm. */
function spansOf(own: string) {
  const fluid = refrigerant(own);
  const { limits } = fluid;
  const evenly = (low: number, high: number) => (share: number) => low + share * (high - low);
  const inLogarithm = (low: number, high: number) => (share: number) => low * (high / low) ** share;
  const cold = fluid.equation.at(limits.temperatureMin, limits.densityMax);
  const [coldEnthalpy, coldEntropy] = [cold.enthalpy, cold.entropy];
  const hot = fluid.equation.at(limits.temperatureMax, 1e-3);
  return {
    temperature: evenly(limits.temperatureMin, limits.temperatureMax),
    pressure: inLogarithm(1e-3, limits.pressureMax),
    density: inLogarithm(1e-6, limits.densityMax),
    enthalpy: evenly(Math.min(coldEnthalpy, 0), hot.enthalpy),
    entropy: evenly(coldEntropy, hot.entropy),
    quality: evenly(0, 1),
  };
}

describe(`seed ${seed}`, () => {
  test('any two properties with any numbers', () => {
    const pair = fc.tuple(fc.constantFrom(...properties), anyNumber, fc.constantFrom(...properties), anyNumber);
    fc.assert(
      fc.property(name, pair, (fluid, [first, a, second, b]) => {
        answer(fluid, { [first]: a, [second]: b });
      }),
      { seed, numRuns: 4000, ...endless },
    );
  });

  test('every pair within and somewhat beyond the range of its fluid', () => {
    // Evenly: doubles are drawn by their bits, and most of them lie close to 0.
    const share = fc.integer({ min: -50_000, max: 1_050_000 }).map((millionths) => millionths / 1e6);
    const states = new Map<string, number>();
    fc.assert(
      fc.property(name, fc.constantFrom(...supportedPairs), share, share, (own, pair, first, second) => {
        const spans = spansOf(own);
        const [a, b] = pair.split(' and ') as [keyof typeof spans, keyof typeof spans];
        const given = { [a]: spans[a](first), [b]: spans[b](second) };
        if (answer(own, given) === 'state') states.set(pair, (states.get(pair) ?? 0) + 1);
      }),
      { seed, numRuns: 8000, ...endless },
    );
    expect([...states.keys()].sort()).toEqual([...supportedPairs].sort());
    for (const [pair, count] of states) expect(count, pair).toBeGreaterThan(150);
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
        answer(fluid, { temperature, entropy: entropy * b });
        answer(fluid, { enthalpy: enthalpy * a, entropy: entropy * b });
      }),
      { seed, numRuns: 1500, ...endless },
    );
  });

  test.each([
    [undefined, 'unsupportedPair'],
    [null, 'unsupportedPair'],
    [7, 'unsupportedPair'],
    [{}, 'unsupportedPair'],
    [{ temperature: 300 }, 'unsupportedPair'],
    [{ temperature: 300, pressure: 1e5, quality: 0 }, 'unsupportedPair'],
    [{ enthalpy: 3e5, quality: 0 }, 'unsupportedPair'],
    [{ density: 4, entropy: 2e3 }, 'unsupportedPair'],
    [{ temperature: 300, enthalpy: 3e5 }, 'unsupportedPair'],
    [{ enthalpy: 3e5, entropy: Number.NaN }, 'badInput'],
    [{ temperature: -1, entropy: 2e3 }, 'badInput'],
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

  test.each(['R135a', '', 'R1233zd', 'constructor', '__proto__', '💧'])(
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
