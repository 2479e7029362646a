// Blends under one equation: their bubble and dew lines, the mixtures between, and what lies beside, against an outside
// library and printed values; the laws of the glide; the ends of the lines.

import { describe, expect, test } from 'vitest';
import {
  refrigerant,
  type StateInput,
  saturationAtPressure,
  saturationAtTemperature,
  stateAt,
} from '../../../src/matter/refrigerants/index.ts';
import outside from '../../reference/refrigerants/blends/states.json' with { type: 'json' };
import { relative, scales } from './deviation.ts';
import { seeded } from './seeded.ts';

const blends = ['R404A', 'R407C', 'R410A', 'R507A'] as const;

describe.each(blends)('%s against CoolProp 8.0.0', (name) => {
  const fluid = refrigerant(name);
  const { critical } = fluid;
  const { lines, beside, mixtures } = outside.blends[name];

  test('both lines, up to a hundred thousandth below the critical temperature', () => {
    expect(lines.length).toBeGreaterThan(60);
    for (const row of lines) {
      const [quality, temperature, pressure, density, enthalpy, entropy, cp, soundSpeed] = row as number[];
      const state = stateAt(fluid, { temperature: temperature!, quality: quality! });
      const where = `${temperature} K, x ${quality}`;
      // Where the isotherm is nearly flat a density is worth fewer digits: (∂p/∂ρ)_T falls below a hundredth of R T.
      const tolerance = temperature! > 0.995 * critical.temperature ? 1e-7 : 1e-9;
      expect(relative(state.pressure, pressure!), `p ${where}`).toBeLessThan(1e-12);
      expect(relative(state.density, density!), `ρ ${where}`).toBeLessThan(tolerance);
      expect(Math.abs(state.enthalpy - enthalpy!) / scales.enthalpy, `h ${where}`).toBeLessThan(tolerance);
      expect(Math.abs(state.entropy - entropy!) / scales.entropy, `s ${where}`).toBeLessThan(tolerance);
      expect(relative(state.cp!, cp!), `cp ${where}`).toBeLessThan(10 * tolerance);
      expect(relative(state.soundSpeed!, soundSpeed!), `w ${where}`).toBeLessThan(10 * tolerance);
      expect(state.phase).toBe('twoPhase');
      expect(state.quality).toBe(quality);
      expect(state.surfaceTension).toBeGreaterThanOrEqual(0);
      expect(state).not.toHaveProperty('glideApproximation');
    }
  });

  test('mixtures at a pressure: h, s, 1/ρ and T between the lines', () => {
    for (const row of mixtures) {
      const [quality, temperature, pressure, density, enthalpy, entropy] = row as number[];
      const pairs: readonly StateInput[] = [
        { pressure: pressure!, quality: quality! },
        { pressure: pressure!, enthalpy: enthalpy! },
        { pressure: pressure!, entropy: entropy! },
      ];
      for (const given of pairs) {
        const state = stateAt(fluid, given);
        const where = JSON.stringify(given);
        // The outside library finds the temperatures of its lines to about 1e-10.
        expect(relative(state.temperature, temperature!), `T ${where}`).toBeLessThan(1e-9);
        expect(relative(state.density, density!), `ρ ${where}`).toBeLessThan(1e-8);
        expect(Math.abs(state.enthalpy - enthalpy!) / scales.enthalpy, `h ${where}`).toBeLessThan(1e-8);
        expect(Math.abs(state.entropy - entropy!) / scales.entropy, `s ${where}`).toBeLessThan(1e-8);
        expect(Math.abs(state.quality! - quality!), `x ${where}`).toBeLessThan(1e-8);
        expect(state.glideApproximation).toBe(true);
        expect([state.cp, state.cv, state.soundSpeed]).toEqual([null, null, null]);
      }
    }
  });

  test('a per mille of the density beside a line: one phase, named by the side', () => {
    for (const row of beside) {
      const [side, temperature, pressure, density, enthalpy, entropy] = row as number[];
      const expected = { temperature: temperature!, pressure: pressure!, enthalpy: enthalpy!, entropy: entropy! };
      const given: StateInput = { density: density!, temperature: temperature! };
      const state = stateAt(fluid, given);
      const where = JSON.stringify(given);
      expect(relative(state.pressure, expected.pressure), `p ${where}`).toBeLessThan(1e-10);
      expect(Math.abs(state.enthalpy - expected.enthalpy) / scales.enthalpy, `h ${where}`).toBeLessThan(1e-10);
      expect(Math.abs(state.entropy - expected.entropy) / scales.entropy, `s ${where}`).toBeLessThan(1e-10);
      expect(state.phase).toBe(side === 0 ? 'liquid' : 'vapour');
      expect(state.quality).toBeNull();
    }
  });
});

// E. W. Lemmon (2003), Int. J. Thermophys. 24, 991, as computed by CoolProp 8.0.0 with the zero at 0 °C: bubble and dew
// pressure [Pa], ρ′ [kg/m³], v″ [m³/kg], h′, h″ [J/kg], s″ [J/(kg K)] at 0 °C; bubble and dew temperature at 101,325 Pa [°C].
const atZeroCelsius = [
  ['R404A', 0.61018e6, 0.60027e6, 1149.98, 0.03283, 365.82e3, 1607.76, -46.22, -45.47],
  ['R407C', 0.56789e6, 0.46072e6, 1236.18, 0.05078, 409.38e3, 1775.98, -43.63, -36.63],
  ['R410A', 0.80071e6, 0.79808e6, 1169.95, 0.03271, 421.39e3, 1810.58, -51.44, -51.36],
  ['R507A', 0.62439e6, 0.62397e6, 1156.26, 0.03101, 362.06e3, 1593.33, -46.74, -46.74],
] as const;

test.each(atZeroCelsius)('%s at 0 °C and at one atmosphere, to the digits of the table', (name, ...row) => {
  const fluid = refrigerant(name);
  const [bubble, dew, liquidDensity, vapourVolume, vapourEnthalpy, vapourEntropy, boils, condenses] = row;
  const { liquid, vapour } = saturationAtTemperature(fluid, 273.15);
  expect(Math.abs(liquid.pressure - bubble)).toBeLessThanOrEqual(5.1);
  expect(Math.abs(vapour.pressure - dew)).toBeLessThanOrEqual(5.1);
  expect(Math.abs(liquid.density - liquidDensity)).toBeLessThanOrEqual(0.0051);
  expect(Math.abs(1 / vapour.density - vapourVolume)).toBeLessThanOrEqual(0.0000051);
  expect(Math.abs(liquid.enthalpy - 200e3)).toBeLessThan(1e-6);
  expect(Math.abs(liquid.entropy - 1e3)).toBeLessThan(1e-8);
  expect(Math.abs(vapour.enthalpy - vapourEnthalpy)).toBeLessThanOrEqual(5.1);
  expect(Math.abs(vapour.entropy - vapourEntropy)).toBeLessThanOrEqual(0.0051);
  const atmosphere = saturationAtPressure(fluid, 101_325);
  expect(Math.abs(atmosphere.liquid.temperature - 273.15 - boils)).toBeLessThanOrEqual(0.0051);
  expect(Math.abs(atmosphere.vapour.temperature - 273.15 - condenses)).toBeLessThanOrEqual(0.0051);
});

describe.each(blends)('%s, laws of the lines with seed 2003', (name) => {
  const fluid = refrigerant(name);
  const { critical, limits, triplePoint } = fluid;
  const chance = seeded(2003);
  /** The lowest dew temperature at which the bubble line has begun. */
  const coldest = saturationAtPressure(fluid, triplePoint.pressure).vapour.temperature;
  const temperature = () => coldest + chance() * (0.995 * critical.temperature - coldest);

  test('the lines never cross: at a temperature the bubble pressure is higher, at a pressure the dew temperature', () => {
    for (let k = 1; k <= 400; k++) {
      const share = 1 - (1 - limits.temperatureMin / critical.temperature) * (k / 400) ** 3;
      const { liquid, vapour } = saturationAtTemperature(fluid, share * critical.temperature);
      expect(liquid.pressure).toBeGreaterThan(vapour.pressure);
      expect(liquid.density).toBeGreaterThan(vapour.density);
      expect(liquid.enthalpy).toBeLessThan(vapour.enthalpy);
    }
    for (let k = 0; k < 200; k++) {
      const pressure = triplePoint.pressure * ((0.999 * critical.pressure) / triplePoint.pressure) ** (k / 199);
      const { liquid, vapour } = saturationAtPressure(fluid, pressure);
      expect(vapour.temperature).toBeGreaterThan(liquid.temperature);
      // Law: the curve gives the pressure back. (Closer to the critical point R404A's dew curve is too steep for doubles.)
      expect(relative(saturationAtTemperature(fluid, liquid.temperature).liquid.pressure, pressure)).toBeLessThan(
        1e-13,
      );
      expect(relative(saturationAtTemperature(fluid, vapour.temperature).vapour.pressure, pressure)).toBeLessThan(
        1e-13,
      );
    }
  });

  test('inside the dome: every pair gives the same state', () => {
    for (let k = 0; k < 300; k++) {
      const pressure = triplePoint.pressure * ((0.98 * critical.pressure) / triplePoint.pressure) ** chance();
      const quality = chance();
      const state = stateAt(fluid, { pressure, quality });
      const { enthalpy, entropy, density } = state;
      const { liquid, vapour } = saturationAtPressure(fluid, pressure);
      const glide = vapour.temperature - liquid.temperature;
      // Rounding of the temperatures as a share of the glide, which is 4 mK for R507A.
      const known = 1e-10 + 1e-13 * (state.temperature / glide);
      for (const given of [
        { pressure, enthalpy },
        { pressure, entropy },
        { density, temperature: state.temperature },
        { temperature: state.temperature, pressure },
      ]) {
        const back = stateAt(fluid, given);
        const where = JSON.stringify(given);
        expect(Math.abs(back.quality! - quality), where).toBeLessThan(known);
        expect(relative(back.temperature, state.temperature), where).toBeLessThan(1e-10);
        expect(relative(back.pressure, pressure), where).toBeLessThan(1e-10);
        expect(back.phase).toBe('twoPhase');
        expect(back.glideApproximation).toBe(true);
        expect(Object.keys(back)).toEqual(Object.keys(state));
      }
    }
  });

  test('on either line temperature and pressure are no pair; temperature and quality are one on the lines only', () => {
    for (let k = 0; k < 20; k++) {
      const at = temperature();
      const { liquid, vapour } = saturationAtTemperature(fluid, at);
      for (const pressure of [liquid.pressure, vapour.pressure]) {
        expect(() => stateAt(fluid, { temperature: at, pressure })).toThrow(
          expect.objectContaining({ name: 'InputError', code: 'saturatedPair' }),
        );
      }
      for (const quality of [1e-9, 0.5, 1 - 1e-9]) {
        expect(() => stateAt(fluid, { temperature: at, quality })).toThrow(
          expect.objectContaining({ name: 'InputError', code: 'unsupportedPair', path: 'given.quality' }),
        );
      }
    }
  });

  test('beside the dome: one phase by the side of the lines, every pair the same state', () => {
    for (let k = 0; k < 100; k++) {
      const at = temperature();
      const { liquid, vapour } = saturationAtTemperature(fluid, at);
      const states = [
        [stateAt(fluid, { temperature: at, pressure: liquid.pressure * 1.001 }), 'liquid'],
        [stateAt(fluid, { temperature: at, pressure: vapour.pressure * 0.999 }), 'vapour'],
      ] as const;
      for (const [state, phase] of states) {
        const { pressure, enthalpy, entropy, density } = state;
        expect(state.phase).toBe(pressure > critical.pressure ? 'liquid' : phase);
        for (const given of [
          { pressure, enthalpy },
          { pressure, entropy },
          { density, temperature: at },
        ]) {
          const back = stateAt(fluid, given);
          expect(relative(back.temperature, at), JSON.stringify(given)).toBeLessThan(1e-10);
          expect(relative(back.density, density), JSON.stringify(given)).toBeLessThan(2e-9);
          expect(back.phase).toBe(state.phase);
        }
      }
    }
  });

  test('the cold end: the dew line begins at a lower pressure than the bubble line', () => {
    const { liquid, vapour } = saturationAtTemperature(fluid, limits.temperatureMin);
    expect(triplePoint.pressure).toBe(liquid.pressure);
    const pressure = Math.sqrt(liquid.pressure * vapour.pressure);
    const dew = stateAt(fluid, { pressure, quality: 1 });
    expect(dew.temperature).toBeGreaterThan(limits.temperatureMin);
    expect(relative(saturationAtTemperature(fluid, dew.temperature).vapour.pressure, pressure)).toBeLessThan(1e-12);
    for (const key of ['enthalpy', 'entropy'] as const) {
      const warm = stateAt(fluid, { temperature: 300, pressure });
      const back = stateAt(fluid, { pressure, [key]: warm[key] } as unknown as StateInput);
      expect(relative(back.temperature, 300)).toBeLessThan(1e-12);
      const colder = { pressure, [key]: dew[key] - 1 } as unknown as StateInput;
      expect(() => stateAt(fluid, colder)).toThrow(expect.objectContaining({ code: 'outOfModel', quantity: key }));
    }
    for (const quality of [0, 0.5]) {
      expect(() => stateAt(fluid, { pressure, quality })).toThrow(expect.objectContaining({ code: 'noSaturation' }));
    }
  });
});

// R407C's bubble pressure passes the critical one 0.4 K below the critical temperature and comes back: from the critical
// pressure on there is no mixture, and the equation itself, whose isotherms rise there, gives the states.
test('R407C within 0.4 K of the critical temperature: one phase from the critical pressure on', () => {
  const fluid = refrigerant('R407C');
  const { critical } = fluid;
  const temperature = critical.temperature - 0.1;
  const { liquid, vapour } = saturationAtTemperature(fluid, temperature);
  expect(liquid.pressure).toBeGreaterThan(critical.pressure);
  const above = stateAt(fluid, { temperature, pressure: 1.0005 * critical.pressure });
  expect(above.pressure).toBeLessThan(liquid.pressure);
  expect(above.phase).toBe('liquid');
  expect(above.density).toBeGreaterThan(vapour.density);
  expect(above.density).toBeLessThan(liquid.density);
  const { density, enthalpy, pressure } = above;
  expect(relative(stateAt(fluid, { density, temperature }).pressure, pressure)).toBeLessThan(1e-12);
  expect(relative(stateAt(fluid, { pressure, enthalpy }).temperature, temperature)).toBeLessThan(1e-12);
  const below = stateAt(fluid, { temperature, pressure: 0.9995 * critical.pressure });
  expect(below.phase).toBe('twoPhase');
});
