// Melting lines: published pressures, the inverse, and states on both of their sides, from every pair.

import { describe, expect, test } from 'vitest';
import { MELTING_TOLERANCE } from '../../../src/matter/refrigerants/flash/melting-line.ts';
import {
  meltingPressure,
  meltingTemperature,
  refrigerant,
  refrigerantNames,
  saturationAtTemperature,
  stateAt,
} from '../../../src/matter/refrigerants/index.ts';
import { relative } from './deviation.ts';

const freezing = refrigerantNames.filter((name) => refrigerant(name).meltingLine !== undefined);

// IAPWS R14-08(2011), Table 3: check values of ice III, V and VI (from memory of the release).
test.each([
  [254, 268.685],
  [265, 479.64],
  [320, 1356.76],
])('water melts at %d K and %d MPa', (temperature, megapascal) => {
  expect(meltingPressure(refrigerant('R718'), temperature)! / 1e6).toBeCloseTo(megapascal, 2);
});

// CoolProp 8.0.0, melting_line at a pressure. Its ice VI begins at 623.4 in place of 632.4 MPa, so water stands apart.
test.each([
  ['R744', 1e8, 236.0313510298942],
  ['R744', 7e8, 317.1231793102055],
  ['R290', 1e7, 86.45199657228991],
  ['R290', 9.9e8, 168.05037107219584],
  ['R1270', 3e8, 111.21580674842208],
  ['R1270', 7e8, 128.1585042968649],
  ['R600a', 3e7, 124.04509092850547],
  ['R600', 1e7, 136.55912999492259],
])('%s at %d Pa melts at %d K', (name, pressure, temperature) => {
  expect(relative(meltingTemperature(refrigerant(name), pressure)!, temperature)).toBeLessThan(1e-12);
});

test('six refrigerants have a melting line', () => {
  expect(freezing.sort()).toEqual(['R1270', 'R290', 'R600', 'R600a', 'R718', 'R744']);
  expect(meltingPressure(refrigerant('R134a'), 200)).toBeUndefined();
  expect(meltingTemperature(refrigerant('R134a'), 1e7)).toBeUndefined();
});

// Ice is lighter than water up to 209 MPa and melts below the triple point, which is the lowest temperature of the range.
test('water has no melting temperature within its range below 632 MPa', () => {
  const water = refrigerant('R718');
  expect(meltingTemperature(water, 1e8)).toBeUndefined();
  expect(stateAt(water, { temperature: 273.16, pressure: 6e8 }).phase).toBe('liquid');
  expect(() => stateAt(water, { temperature: 273.16, pressure: 6.4e8 })).toThrow(
    expect.objectContaining({ code: 'frozen' }),
  );
});

describe.each(freezing)('%s', (name) => {
  const fluid = refrigerant(name);
  const { limits } = fluid;
  const pressures = [0.02, 0.1, 0.3, 0.7, 0.95]
    .map((share) => share * limits.pressureMax)
    .filter((pressure) => (meltingTemperature(fluid, pressure) ?? 0) > limits.temperatureMin);

  test('the line is its own inverse', () => {
    expect(pressures.length).toBeGreaterThan(1);
    for (const pressure of pressures) {
      const temperature = meltingTemperature(fluid, pressure)!;
      // Between two of R1270's parts the line jumps: the second serves there from a lower temperature than it is published for.
      if (name === 'R1270' && pressure > 6e8 && pressure < 7.2e8) continue;
      expect(relative(meltingPressure(fluid, temperature)!, pressure)).toBeLessThan(1e-10);
    }
  });

  test('liquid to a thousandth of a kelvin below the line, solid beyond, from every pair', () => {
    for (const pressure of pressures) {
      const melting = meltingTemperature(fluid, pressure)!;
      for (const above of [-0.9 * MELTING_TOLERANCE, 0, 1e-3, 1]) {
        expect(stateAt(fluid, { temperature: melting + above, pressure }).quality).toBeNull();
      }
      const temperature = Math.max(melting - 0.5, limits.temperatureMin);
      const density = frozenDensity(temperature, pressure);
      const { enthalpy, entropy } = fluid.equation.at(temperature, density);
      for (const given of [
        { temperature, pressure },
        { density, temperature },
        { pressure, enthalpy },
        { pressure, entropy },
        { enthalpy, entropy },
        { temperature, entropy },
      ]) {
        let thrown: unknown;
        try {
          stateAt(fluid, given);
        } catch (error) {
          thrown = error;
        }
        const where = `${Object.keys(given)} at ${temperature} K, ${pressure} Pa`;
        expect(thrown, where).toMatchObject({ name: 'OutOfModelError', code: 'frozen', quantity: 'temperature' });
        const { low, high, message } = thrown as { low: number; high: number; message: string };
        expect(relative(low, melting), where).toBeLessThan(1e-8);
        expect(high, where).toBe(limits.temperatureMax);
        expect(message).toMatch(/the fluid is solid$/);
      }
    }
  });

  /** Density of the liquid that the equation would go on describing beyond the line. */
  function frozenDensity(temperature: number, pressure: number): number {
    const { equation } = fluid;
    let { density } = stateAt(fluid, { temperature: meltingTemperature(fluid, pressure)!, pressure });
    for (let step = 0; step < 60; step++) {
      equation.residualAt(temperature, density);
      density += (pressure - equation.pressure) / equation.pressureByDensity;
    }
    return density;
  }

  test('both sides of the dome are liquid and vapour down to the lowest temperature', () => {
    const { liquid } = saturationAtTemperature(fluid, limits.temperatureMin);
    expect(stateAt(fluid, { temperature: limits.temperatureMin, quality: 0 })).toEqual(liquid);
    const vapour = { temperature: limits.temperatureMin, pressure: 0.5 * liquid.pressure };
    expect(stateAt(fluid, vapour).phase).toBe('vapour');
  });

  test('an isobar begins where the liquid freezes', () => {
    const pressure = pressures.at(-1)!;
    const start = stateAt(fluid, { temperature: meltingTemperature(fluid, pressure)!, pressure });
    const far = { pressure, enthalpy: start.enthalpy - 1e7 };
    expect(() => stateAt(fluid, far)).toThrow(expect.objectContaining({ code: 'outOfModel', quantity: 'enthalpy' }));
    try {
      stateAt(fluid, far);
    } catch (error) {
      expect(Math.abs((error as { low: number }).low - start.enthalpy)).toBeLessThan(1e-6 * Math.abs(start.enthalpy));
    }
  });
});
