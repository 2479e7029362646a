// States at the very ends of a range, where rounding decides whether they are still inside: each is found again from every
// pair of its own properties. Law: the inverse returns the input.

import { describe, expect, test } from 'vitest';
import { meltingPressure } from '../../../src/matter/refrigerants/flash/melting-line.ts';
import { refrigerant, refrigerantNames, type State, stateAt } from '../../../src/matter/refrigerants/index.ts';
import { relative } from './deviation.ts';

describe.each(refrigerantNames)('%s', (name) => {
  const fluid = refrigerant(name);
  const { limits, critical } = fluid;
  const shares = Array.from({ length: 41 }, (_, k) => k / 40);

  function expectFoundAgain({ temperature, density, pressure, enthalpy, entropy, phase }: State): void {
    for (const given of [
      { temperature, pressure },
      { density, temperature },
      { pressure, enthalpy },
      { pressure, entropy },
      { enthalpy, entropy },
      { temperature, entropy },
    ]) {
      const state = stateAt(fluid, given);
      const where = `${Object.keys(given)} at ${temperature} K, ${pressure} Pa`;
      expect(state.phase, where).toBe(phase);
      expect(relative(state.temperature, temperature), where).toBeLessThan(1e-9);
      expect(relative(state.density, density), where).toBeLessThan(1e-8);
    }
  }

  test('at the largest pressure', () => {
    let count = 0;
    for (const share of shares) {
      const temperature = limits.temperatureMin + share * (limits.temperatureMax - limits.temperatureMin);
      if ((meltingPressure(fluid, temperature) ?? Number.POSITIVE_INFINITY) < limits.pressureMax) continue;
      expectFoundAgain(stateAt(fluid, { temperature, pressure: limits.pressureMax }));
      count++;
    }
    expect(count).toBeGreaterThan(10);
  });

  test('at the highest temperature', () => {
    for (const share of shares) {
      const pressure = limits.pressureMax * 1e-9 ** (1 - share);
      expectFoundAgain(stateAt(fluid, { temperature: limits.temperatureMax, pressure }));
    }
  });

  test('at the lowest temperature, vapour', () => {
    const lowest = fluid.bubbleAndDew?.dewPressure(limits.temperatureMin) ?? fluid.triplePoint.pressure;
    for (const share of shares.slice(0, -1)) {
      expectFoundAgain(stateAt(fluid, { temperature: limits.temperatureMin, pressure: lowest * 1e-6 ** (1 - share) }));
    }
  });

  test('mixtures at both ends of the dome', () => {
    for (const pressure of [fluid.triplePoint.pressure, 0.9999 * critical.pressure]) {
      for (const quality of [0.1, 0.5, 0.9]) {
        const mixture = stateAt(fluid, { pressure, quality });
        const { enthalpy, entropy, temperature } = mixture;
        const again = stateAt(fluid, { enthalpy, entropy });
        expect(relative(again.temperature, temperature), `${pressure} Pa, ${quality}`).toBeLessThan(1e-9);
        // Close to the critical point the sides differ little and the quality follows with fewer digits.
        expect(Math.abs(again.quality! - quality), `${pressure} Pa, ${quality}`).toBeLessThan(1e-5);
      }
    }
  });
});
