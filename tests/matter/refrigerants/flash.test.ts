// States from pairs: every pair leads back to the state it was taken from, over the whole range and on its borders; phases;
// no metastable root; errors that name the limit. The dome of blends has a file of its own, blends.test.ts.

import { describe, expect, test } from 'vitest';
import {
  meltingPressure,
  meltingTemperature,
  type Refrigerant,
  refrigerant,
  refrigerantNames,
  type State,
  type StateInput,
  saturationAtPressure,
  saturationAtTemperature,
  saturationPressureSlope,
  stateAt,
} from '../../../src/matter/refrigerants/index.ts';
import { relative, scales } from './deviation.ts';
import { seeded } from './seeded.ts';

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

/** Whether a liquid of this temperature and pressure would be solid. */
function isFrozen(fluid: Refrigerant, temperature: number, pressure: number): boolean {
  return pressure > (meltingPressure(fluid, temperature) ?? Number.POSITIVE_INFINITY);
}

describe.each(refrigerantNames)('%s, one phase, round trips with seed 4711', (name) => {
  const fluid = refrigerant(name);
  const { limits, critical, triplePoint } = fluid;
  const chance = seeded(4711);

  test('whole range of the equation', () => {
    let count = 0;
    for (let k = 0; k < 250; k++) {
      const temperature = limits.temperatureMin + chance() * (limits.temperatureMax - limits.temperatureMin);
      const lowest = Math.log(triplePoint.pressure * 0.01);
      const pressure = Math.exp(lowest + chance() * (Math.log(limits.pressureMax) - lowest));
      if (isFrozen(fluid, temperature, pressure) || isColdWater(fluid, temperature)) continue;
      const state = stateAt(fluid, { temperature, pressure });
      if (state.quality !== null) continue;
      count++;
      const where = `${temperature} K, ${pressure} Pa`;
      const tolerance = isNearCritical(fluid, state) ? 1e-7 : 1e-9;
      const { enthalpy, entropy, density } = state;
      expectSame(stateAt(fluid, { pressure, enthalpy }), state, tolerance, `h ${where}`);
      expectSame(stateAt(fluid, { pressure, entropy }), state, tolerance, `s ${where}`);
      expectSame(stateAt(fluid, { density, temperature }), state, tolerance, `ρ ${where}`);
      expectSame(stateAt(fluid, { enthalpy, entropy }), state, tolerance, `hs ${where}`);
      if (!isLiquidOfNoPressure(state))
        expectSame(stateAt(fluid, { temperature, entropy }), state, tolerance, `Ts ${where}`);
      expect(state.surfaceTension).toBeNull();
    }
    expect(count).toBeGreaterThan(230);
  });

  test('around the critical point', () => {
    let count = 0;
    for (let k = 0; k < 150; k++) {
      const temperature = Math.min(critical.temperature * (0.97 + 0.06 * chance()), limits.temperatureMax);
      const pressure = critical.pressure * (0.9 + 0.2 * chance());
      const state = stateAt(fluid, { temperature, pressure });
      if (state.quality !== null) continue;
      count++;
      const where = `${temperature} K, ${pressure} Pa`;
      const { enthalpy, entropy } = state;
      expectSame(stateAt(fluid, { pressure, enthalpy }), state, 1e-7, `h ${where}`);
      expectSame(stateAt(fluid, { pressure, entropy }), state, 1e-7, `s ${where}`);
      expectSame(stateAt(fluid, { enthalpy, entropy }), state, 1e-7, `hs ${where}`);
      expectSame(stateAt(fluid, { temperature, entropy }), state, 1e-7, `Ts ${where}`);
    }
    expect(count).toBeGreaterThan(130);
  });
});

/** Water below its greatest density: some entropies there belong to several states of one temperature (see below). */
function isColdWater({ name }: Refrigerant, temperature: number): boolean {
  return name === 'R718' && temperature < 277.2;
}

/** So little pressure that the entropy of the liquid is that on the line, to all digits there are. */
function isLiquidOfNoPressure({ phase, pressure }: State): boolean {
  return phase === 'liquid' && pressure < 1;
}

const pureNames = refrigerantNames.filter((name) => refrigerant(name).bubbleAndDew === undefined);

describe.each(pureNames)('%s, dome, round trips with seed 4711', (name) => {
  const fluid = refrigerant(name);
  const { limits, critical } = fluid;
  const chance = seeded(4711);

  test('inside the dome', () => {
    for (let k = 0; k < 120; k++) {
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
        { enthalpy, entropy },
        { temperature, entropy },
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
          ...(isColdWater(fluid, temperature) ? [] : [{ temperature, entropy }]),
        ];
        for (const given of pairs) {
          const state = stateAt(fluid, given);
          expectSame(state, side, 1e-9, JSON.stringify(given));
          expect(state.quality).toBe(quality);
          expect(relative(state.cp!, side.cp!)).toBeLessThan(1e-8);
          expect(relative(state.soundSpeed!, side.soundSpeed!)).toBeLessThan(1e-8);
        }
        // Enthalpy and entropy do not name the line: the state is found on it or within rounding beside it. In a liquid
        // dh − T ds = dp/ρ alone tells the pressure: at a low one the rounding of the enthalpy, some 16 units in the last place
        // of 200 kJ/kg, is many times the pressure, and by Clapeyron's slope a part of the temperature.
        const beside = stateAt(fluid, { enthalpy, entropy });
        const slope = saturationPressureSlope({ liquid, vapour });
        const rounding = (16 * Number.EPSILON * 200e3 * density) / (slope * temperature);
        expect(relative(beside.temperature, temperature)).toBeLessThan(1e-8 + rounding);
        expect(Math.abs(1 / beside.density - 1 / density) * vapour.density).toBeLessThan(1e-8 + rounding);
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
    for (const share of [0, 0.3, 0.7, 0.999]) {
      const temperature = limits.temperatureMin + share * (critical.temperature - limits.temperatureMin);
      const { pressure } = saturationAtTemperature(fluid, temperature).liquid;
      for (const close of [pressure, pressure * (1 + 1e-12), pressure * (1 - 1e-9)]) {
        expect(() => stateAt(fluid, { temperature, pressure: close })).toThrow(
          expect.objectContaining({ name: 'InputError', code: 'saturatedPair' }),
        );
      }
    }
  });
});

describe.each(refrigerantNames)('%s, phases and borders', (name) => {
  const fluid = refrigerant(name);
  const { limits, critical, triplePoint } = fluid;

  test('names of the phases', () => {
    const { temperature: Tc, pressure: pc } = critical;
    expect(stateAt(fluid, { temperature: 1.004 * Tc, pressure: 1.01 * pc }).phase).toBe('supercritical');
    expect(stateAt(fluid, { temperature: 0.9 * Tc, pressure: 1.01 * pc }).phase).toBe('liquid');
    expect(stateAt(fluid, { temperature: 1.004 * Tc, pressure: 0.9 * pc }).phase).toBe('vapour');
    expect(stateAt(fluid, { temperature: 0.9 * Tc, pressure: 0.1 * pc }).phase).toBe('vapour');
    expect(stateAt(fluid, { temperature: 0.9 * Tc, pressure: 0.9 * pc }).phase).toBe('liquid');
    expect(stateAt(fluid, { pressure: 0.5 * pc, quality: 0 }).phase).toBe('twoPhase');
  });

  test('the borders of the equation are still inside', () => {
    const { temperatureMin, temperatureMax, pressureMax } = limits;
    const coldest = Math.max(temperatureMin, meltingTemperature(fluid, pressureMax) ?? 0);
    const corners = [
      [temperatureMin, 1e-3 * triplePoint.pressure],
      [coldest, pressureMax],
      [temperatureMax, 1e-3 * triplePoint.pressure],
      [temperatureMax, pressureMax],
    ] as const;
    for (const [temperature, pressure] of corners) {
      const state = stateAt(fluid, { temperature, pressure });
      const { enthalpy, entropy, density } = state;
      expectSame(stateAt(fluid, { density, temperature }), state, 1e-9, 'ρ,T');
      expectSame(stateAt(fluid, { pressure, enthalpy }), state, 1e-9, 'p,h');
      expectSame(stateAt(fluid, { pressure, entropy }), state, 1e-9, 'p,s');
      expectSame(stateAt(fluid, { enthalpy, entropy }), state, 1e-9, 'h,s');
      expectSame(stateAt(fluid, { temperature, entropy }), state, 1e-9, 'T,s');
    }
  });

  test('beyond the borders: the limit is named', () => {
    const { temperatureMin, temperatureMax, pressureMax, densityMax } = limits;
    const pressure = 0.3 * critical.pressure;
    const middle = 0.9 * critical.temperature;
    const coldest = Math.max(temperatureMin, meltingTemperature(fluid, pressure) ?? 0);
    const hot = stateAt(fluid, { temperature: temperatureMax, pressure });
    const cold = stateAt(fluid, { temperature: coldest, pressure });
    const largest = Math.min(pressureMax, meltingPressure(fluid, middle) ?? pressureMax);
    const dense = stateAt(fluid, { temperature: middle, pressure: largest });
    const hotDense = stateAt(fluid, { temperature: temperatureMax, pressure: pressureMax });
    const thin = stateAt(fluid, { temperature: middle, pressure: 1e-30 });
    const { entropy } = stateAt(fluid, { temperature: middle, pressure });
    const end =
      entropy < hotDense.entropy
        ? stateAt(fluid, { pressure: pressureMax, entropy })
        : stateAt(fluid, { temperature: temperatureMax, entropy });
    const cases: readonly (readonly [StateInput, string, number | undefined, number])[] = [
      [{ temperature: temperatureMax + 1, pressure }, 'temperature', temperatureMin, temperatureMax],
      [{ temperature: temperatureMin - 1, pressure }, 'temperature', temperatureMin, temperatureMax],
      [{ temperature: middle, pressure: pressureMax * 1.01 }, 'pressure', 1e-30, pressureMax],
      [{ pressure: pressureMax * 1.01, enthalpy: 2e5 }, 'pressure', 1e-30, pressureMax],
      [{ density: densityMax * 1.01, temperature: middle }, 'density', 1e-30, densityMax],
      [{ temperature: critical.temperature, quality: 0 }, 'temperature', temperatureMin, critical.temperature],
      [{ pressure: critical.pressure, quality: 0.5 }, 'pressure', triplePoint.pressure, critical.pressure],
      [{ pressure, enthalpy: hot.enthalpy + 10 }, 'enthalpy', cold.enthalpy, hot.enthalpy],
      [{ pressure, entropy: cold.entropy - 100 }, 'entropy', cold.entropy, hot.entropy],
      [{ temperature: temperatureMax + 1, entropy: 2e3 }, 'temperature', temperatureMin, temperatureMax],
      largest < pressureMax
        ? [{ temperature: middle, entropy: dense.entropy - 10 }, 'temperature', undefined, temperatureMax]
        : [{ temperature: middle, entropy: dense.entropy - 10 }, 'entropy', dense.entropy, thin.entropy],
      [{ temperature: middle, entropy: thin.entropy + 10 }, 'entropy', dense.entropy, thin.entropy],
      [{ enthalpy: end.enthalpy + 100, entropy }, 'enthalpy', undefined, end.enthalpy],
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
      if (low !== undefined) expect(Math.abs(foundLow - low)).toBeLessThanOrEqual(1e-9 * Math.abs(low));
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
      const coldest = Math.max(limits.temperatureMin, meltingTemperature(fluid, pressure) ?? 0);
      const low = stateAt(fluid, { temperature: coldest, pressure }).enthalpy;
      const high = stateAt(fluid, { temperature: limits.temperatureMax, pressure }).enthalpy;
      for (let k = 0; k <= 100; k++) {
        const state = stateAt(fluid, { pressure, enthalpy: low + ((high - low) * k) / 100 });
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

// Law: along an isotherm the entropy falls with pressure, unless the liquid expands when cooled: water below its greatest
// density, 277.13 K at 1 bar (IAPWS R6-95). There up to three states have one temperature and one entropy.
describe('water below its greatest density', () => {
  const water = refrigerant('R718');
  const { liquid } = saturationAtTemperature(water, 274.15);

  test.each([1e5, 2e6, 2e7])(
    'an entropy of a liquid at 274.15 K and %d Pa belongs to several states, all named',
    (pressure) => {
      const { entropy } = stateAt(water, { temperature: 274.15, pressure });
      expect(entropy).toBeGreaterThan(liquid.entropy);
      let thrown: unknown;
      try {
        stateAt(water, { temperature: 274.15, entropy });
      } catch (error) {
        thrown = error;
      }
      expect(thrown).toMatchObject({ name: 'InputError', code: 'severalStates' });
      const named = (thrown as { expected: string }).expected;
      const pressures = [...named.matchAll(/ ([\d.]+) Pa/g)].map((match) => Number(match[1]));
      expect(pressures.length).toBe(3);
      expect(pressures[0]).toBe(liquid.pressure);
      expect(Math.min(...pressures.map((each) => Math.abs(each / pressure - 1)))).toBeLessThan(1e-6);
      for (const each of pressures.slice(1)) {
        const named = stateAt(water, { temperature: 274.15, pressure: each });
        expect(Math.abs(named.entropy - entropy)).toBeLessThan(1e-9);
      }
    },
  );

  test('beyond the top a mixture only, below the line one liquid only', () => {
    expect(stateAt(water, { temperature: 274.15, entropy: 2e3 }).quality).toBeGreaterThan(0.1);
    const dense = stateAt(water, { temperature: 274.15, pressure: 9e7 });
    expect(dense.entropy).toBeLessThan(liquid.entropy);
    expect(relative(stateAt(water, { temperature: 274.15, entropy: dense.entropy }).pressure, 9e7)).toBeLessThan(1e-9);
  });

  test('enthalpy and entropy still name one state', () => {
    for (const pressure of [1e5, 1e7, 9e7]) {
      const { enthalpy, entropy } = stateAt(water, { temperature: 274.15, pressure });
      expect(relative(stateAt(water, { enthalpy, entropy }).pressure, pressure)).toBeLessThan(1e-8);
    }
  });
});

test('of a blend, a liquid comes before a mixture of the same enthalpy and entropy', () => {
  const blend = refrigerant('R407C');
  const mixture = stateAt(blend, { pressure: 128e3, quality: 0.017 });
  const { enthalpy, entropy } = mixture;
  const liquid = stateAt(blend, { enthalpy, entropy });
  expect(liquid.phase).toBe('liquid');
  expect(liquid.pressure).toBeGreaterThan(mixture.pressure);
  expect(Math.abs(liquid.enthalpy - enthalpy)).toBeLessThan(1e-6);
  expect(Math.abs(liquid.entropy - entropy)).toBeLessThan(1e-9);
});

// Found by random requests: the liquid of R410A's equation ends at 364.3 kJ/kg here, its bubble line begins at 371.7.
test('an enthalpy that the equation of a blend jumps over is refused', () => {
  const blend = refrigerant('R410A');
  const given = { pressure: 4893061.427312651, enthalpy: 368706.7870186231 };
  expect(() => stateAt(blend, given)).toThrow(
    expect.objectContaining({ name: 'NoSolutionError', code: 'noStableState' }),
  );
});
