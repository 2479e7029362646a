// States from pairs: every pair leads back to the state it was taken from, over the whole range and on its borders; phases;
// no metastable root; errors that name the limit.

import { describe, expect, test } from 'vitest';
import {
  type Refrigerant,
  refrigerant,
  refrigerantNames,
  type State,
  type StateInput,
  saturationAtPressure,
  saturationAtTemperature,
  stateAt,
} from '../../../src/matter/refrigerants/index.ts';
import { relative, scales } from './deviation.ts';

/** Numbers between 0 and 1 that are the same in each run (Park & Miller 1988, multiplier 48271). */
function seeded(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 48271) % 2147483647;
    return state / 2147483647;
  };
}

function expectSame(state: State, original: State, tolerance: number, where: string): void {
  expect(relative(state.temperature, original.temperature), `${where} T`).toBeLessThan(tolerance);
  expect(relative(state.density, original.density), `${where} ρ`).toBeLessThan(tolerance);
  for (const key of ['enthalpy', 'entropy', 'internalEnergy'] as const) {
    expect(Math.abs(state[key] - original[key]) / scales[key], `${where} ${key}`).toBeLessThan(tolerance);
  }
  expect(state.phase, where).toBe(original.phase);
}

function isNearCritical({ critical }: Refrigerant, state: State): boolean {
  return (
    Math.abs(state.temperature / critical.temperature - 1) < 0.01 &&
    Math.abs(state.density / critical.density - 1) < 0.5
  );
}

describe.each(refrigerantNames)('%s, round trips with seed 4711', (name) => {
  const fluid = refrigerant(name);
  const { limits, critical, triplePoint } = fluid;
  const chance = seeded(4711);

  test('single phase, whole range of the equation', () => {
    for (let k = 0; k < 400; k++) {
      const temperature = limits.temperatureMin + chance() * (limits.temperatureMax - limits.temperatureMin);
      const lowest = Math.log(triplePoint.pressure * 0.01);
      const pressure = Math.exp(lowest + chance() * (Math.log(limits.pressureMax) - lowest));
      const state = stateAt(fluid, { temperature, pressure });
      const where = `${temperature} K, ${pressure} Pa`;
      const tolerance = isNearCritical(fluid, state) ? 1e-7 : 1e-9;
      const { enthalpy, entropy, density } = state;
      expectSame(stateAt(fluid, { pressure, enthalpy }), state, tolerance, `h ${where}`);
      expectSame(stateAt(fluid, { pressure, entropy }), state, tolerance, `s ${where}`);
      const back = stateAt(fluid, { density, temperature });
      expectSame(back, state, tolerance, `ρ ${where}`);
      expect(state.quality).toBeNull();
      expect(state.surfaceTension).toBeNull();
    }
  });

  test('around the critical point', () => {
    for (let k = 0; k < 300; k++) {
      const temperature = critical.temperature * (0.97 + 0.06 * chance());
      const pressure = critical.pressure * (0.9 + 0.2 * chance());
      const state = stateAt(fluid, { temperature, pressure });
      const where = `${temperature} K, ${pressure} Pa`;
      expectSame(stateAt(fluid, { pressure, enthalpy: state.enthalpy }), state, 1e-7, `h ${where}`);
      expectSame(stateAt(fluid, { pressure, entropy: state.entropy }), state, 1e-7, `s ${where}`);
    }
  });

  test('inside the dome', () => {
    for (let k = 0; k < 200; k++) {
      const temperature = limits.temperatureMin + chance() * (0.9995 * critical.temperature - limits.temperatureMin);
      const quality = chance();
      const state = stateAt(fluid, { temperature, quality });
      const where = `${temperature} K, x ${quality}`;
      const { pressure, enthalpy, entropy, density } = state;
      const pairs: readonly StateInput[] = [
        { pressure, quality },
        { pressure, enthalpy },
        { pressure, entropy },
        { density, temperature },
      ];
      for (const given of pairs) {
        const back = stateAt(fluid, given);
        expectSame(back, state, 1e-8, `${JSON.stringify(given)} for ${where}`);
        expect(Math.abs(back.quality! - quality)).toBeLessThan(1e-8);
        expect([back.cp, back.cv, back.soundSpeed]).toEqual([null, null, null]);
        expect(back.surfaceTension).toBeGreaterThanOrEqual(0);
      }
    }
  });

  test('on the line: two-phase, with the values of that side', () => {
    for (const share of [0.05, 0.3, 0.6, 0.9, 0.99]) {
      const temperature = limits.temperatureMin + share * (critical.temperature - limits.temperatureMin);
      const { liquid, vapour } = saturationAtTemperature(fluid, temperature);
      const { pressure } = liquid;
      for (const side of [liquid, vapour]) {
        const { enthalpy, entropy, density, quality } = side;
        expect(side.phase).toBe('twoPhase');
        expect(side.cp).toBeGreaterThan(0);
        const pairs: readonly StateInput[] = [
          { temperature, quality: quality! },
          { pressure, quality: quality! },
          { pressure, enthalpy },
          { pressure, entropy },
          { density, temperature },
        ];
        for (const given of pairs) {
          const state = stateAt(fluid, given);
          expectSame(state, side, 1e-9, JSON.stringify(given));
          expect(state.quality).toBe(quality);
          expect(relative(state.cp!, side.cp!)).toBeLessThan(1e-8);
          expect(relative(state.soundSpeed!, side.soundSpeed!)).toBeLessThan(1e-8);
        }
      }
    }
  });

  test('never a metastable root: liquid above the saturation pressure, vapour below it', () => {
    for (const share of [0.02, 0.2, 0.5, 0.8, 0.95, 0.995]) {
      const temperature = limits.temperatureMin + share * (critical.temperature - limits.temperatureMin);
      const { liquid, vapour } = saturationAtTemperature(fluid, temperature);
      const { pressure } = liquid;
      for (const distance of [1e-6, 1e-4, 1e-2, 0.3]) {
        const above = stateAt(fluid, { temperature, pressure: pressure * (1 + distance) });
        const below = stateAt(fluid, { temperature, pressure: pressure * (1 - distance) });
        expect(above.density).toBeGreaterThan(liquid.density);
        expect(below.density).toBeLessThan(vapour.density);
        expect(above.phase).toBe('liquid');
        expect(below.phase).toBe('vapour');
        if (above.pressure < critical.pressure) {
          expect(saturationAtPressure(fluid, above.pressure).vapour.temperature).toBeGreaterThan(temperature);
        }
      }
    }
  });

  test('temperature and pressure on the line are no pair', () => {
    for (const temperature of [limits.temperatureMin, 250, 300, 0.999 * critical.temperature]) {
      const { pressure } = saturationAtTemperature(fluid, temperature).liquid;
      for (const close of [pressure, pressure * (1 + 1e-12), pressure * (1 - 1e-9)]) {
        expect(() => stateAt(fluid, { temperature, pressure: close })).toThrow(
          expect.objectContaining({ name: 'InputError', code: 'saturatedPair' }),
        );
      }
    }
  });

  test('names of the phases', () => {
    const { temperature: Tc, pressure: pc } = critical;
    expect(stateAt(fluid, { temperature: 1.01 * Tc, pressure: 1.01 * pc }).phase).toBe('supercritical');
    expect(stateAt(fluid, { temperature: 0.9 * Tc, pressure: 1.01 * pc }).phase).toBe('liquid');
    expect(stateAt(fluid, { temperature: 1.01 * Tc, pressure: 0.9 * pc }).phase).toBe('vapour');
    expect(stateAt(fluid, { temperature: 0.9 * Tc, pressure: 0.1 * pc }).phase).toBe('vapour');
    expect(stateAt(fluid, { temperature: 0.9 * Tc, pressure: 0.9 * pc }).phase).toBe('liquid');
    expect(stateAt(fluid, { pressure: 0.5 * pc, quality: 0 }).phase).toBe('twoPhase');
  });

  test('the borders of the equation are still inside', () => {
    const { temperatureMin, temperatureMax, pressureMax } = limits;
    for (const temperature of [temperatureMin, temperatureMax]) {
      for (const pressure of [1e-3 * triplePoint.pressure, pressureMax]) {
        const state = stateAt(fluid, { temperature, pressure });
        const { enthalpy, entropy, density } = state;
        expectSame(stateAt(fluid, { density, temperature }), state, 1e-9, 'ρ,T');
        expectSame(stateAt(fluid, { pressure, enthalpy }), state, 1e-9, 'p,h');
        expectSame(stateAt(fluid, { pressure, entropy }), state, 1e-9, 'p,s');
      }
    }
  });

  test('beyond the borders: the limit is named', () => {
    const { temperatureMin, temperatureMax, pressureMax, densityMax } = limits;
    const hot = stateAt(fluid, { temperature: temperatureMax, pressure: 1e5 });
    const cold = stateAt(fluid, { temperature: temperatureMin, pressure: 1e5 });
    const cases: readonly (readonly [StateInput, string, number, number])[] = [
      [{ temperature: temperatureMax + 1, pressure: 1e5 }, 'temperature', temperatureMin, temperatureMax],
      [{ temperature: temperatureMin - 1, pressure: 1e5 }, 'temperature', temperatureMin, temperatureMax],
      [{ temperature: 300, pressure: pressureMax * 1.01 }, 'pressure', 1e-30, pressureMax],
      [{ pressure: pressureMax * 1.01, enthalpy: 2e5 }, 'pressure', 1e-30, pressureMax],
      [{ density: densityMax * 1.01, temperature: 300 }, 'density', 1e-30, densityMax],
      [{ temperature: critical.temperature, quality: 0.5 }, 'temperature', temperatureMin, critical.temperature],
      [{ pressure: critical.pressure, quality: 0.5 }, 'pressure', triplePoint.pressure, critical.pressure],
      [{ pressure: 1e5, enthalpy: hot.enthalpy + 10 }, 'enthalpy', cold.enthalpy, hot.enthalpy],
      [{ pressure: 1e5, entropy: cold.entropy - 10 }, 'entropy', cold.entropy, hot.entropy],
    ];
    for (const [given, quantity, low, high] of cases) {
      let thrown: unknown;
      try {
        stateAt(fluid, given);
      } catch (error) {
        thrown = error;
      }
      expect(thrown, JSON.stringify(given)).toMatchObject({ name: 'OutOfModelError', quantity });
      const { low: foundLow, high: foundHigh } = thrown as { low: number; high: number };
      expect(Math.abs(foundLow - low)).toBeLessThanOrEqual(1e-9 * Math.abs(low));
      expect(Math.abs(foundHigh - high)).toBeLessThanOrEqual(1e-9 * Math.abs(high));
    }
    // Dense and hot together: within both limits, but the pressure there is not.
    expect(() => stateAt(fluid, { density: 0.999 * densityMax, temperature: temperatureMax })).toThrow(
      expect.objectContaining({ name: 'OutOfModelError', quantity: 'pressure' }),
    );
  });

  // Law: along an isobar and an isotherm everything rises or falls one way, through the dome as well.
  test('isobars rise in temperature, enthalpy and entropy together', () => {
    for (const pressure of [0.02, 0.3, 0.95, 1.05, 2].map((share) => share * critical.pressure)) {
      let before: State | undefined;
      const low = stateAt(fluid, { temperature: limits.temperatureMin, pressure }).enthalpy;
      const high = stateAt(fluid, { temperature: limits.temperatureMax, pressure }).enthalpy;
      for (let k = 0; k <= 200; k++) {
        const state = stateAt(fluid, { pressure, enthalpy: low + ((high - low) * k) / 200 });
        if (before !== undefined) {
          expect(state.entropy).toBeGreaterThan(before.entropy);
          expect(state.density).toBeLessThan(before.density);
          expect(state.temperature).toBeGreaterThanOrEqual(before.temperature * (1 - 1e-12));
        }
        before = state;
      }
    }
  });
});
