// Partial derivatives and further properties: against the chain rule of a general-purpose library at seeded random states of
// every refrigerant; against central differences of states; limits of the ideal gas; Joule–Thomson inversion; Clapeyron.

import { describe, expect, test } from 'vitest';
import {
  derivativesAt,
  derivedAt,
  partialDerivative,
  refrigerant,
  refrigerantNames,
  type StateVariable,
  saturationAtTemperature,
  saturationPressureSlope,
  stateAt,
} from '../../../src/matter/refrigerants/index.ts';
import { findRoot } from '../../../src/numerics/index.ts';
import outside from '../../reference/refrigerants/derivatives.json';
import { relative } from './deviation.ts';

const names = outside.derivatives as unknown as readonly (readonly [StateVariable, StateVariable, StateVariable])[];

/** Names of the fields of Derivatives by (of, over, held). */
const fields = new Map(
  [
    'pressureByDensityAtTemperature',
    'pressureByTemperatureAtDensity',
    'densityByTemperatureAtPressure',
    'densityByPressureAtEnthalpy',
    'densityByEnthalpyAtPressure',
    'temperatureByPressureAtEnthalpy',
    'temperatureByEnthalpyAtPressure',
    'temperatureByPressureAtEntropy',
    'enthalpyByPressureAtTemperature',
    'enthalpyByTemperatureAtPressure',
    'entropyByPressureAtTemperature',
  ].map((field) => {
    const [of, over, held] = /^(.*)By(.*)At(.*)$/
      .exec(field)!
      .slice(1)
      .map((word) => word.toLowerCase());
    return [`${of} ${over} ${held}`, field as keyof ReturnType<typeof derivativesAt>] as const;
  }),
);

test('every refrigerant has outside derivatives', () => {
  expect(outside.fluids.map((fluid) => fluid.refrigerant).sort()).toEqual([...refrigerantNames].sort());
  expect(fields.size).toBe(11);
});

// CoolProp 8.0.0, first_partial_deriv and first_saturation_deriv (tests/reference/refrigerants/derivatives.json).
describe.each(outside.fluids)('$refrigerant, seed "$refrigerant derivatives"', (row) => {
  const fluid = refrigerant(row.refrigerant);

  test('partial derivatives', () => {
    expect(row.states.length).toBe(12);
    let compared = 0;
    for (const [temperature, density, ...values] of row.states as unknown as readonly [number, number, ...number[]][]) {
      const all = derivativesAt(fluid, temperature, density);
      names.forEach(([of, over, held], index) => {
        const where = `(∂${of}/∂${over})_${held} at ${temperature} K, ${density} kg/m³`;
        const own = partialDerivative(fluid, { temperature, density }, of, over, held);
        // Some pass through 0, as that of Joule and Thomson: they are held to the size of the terms they are made of.
        const scale =
          of === 'temperature' && held === 'enthalpy' ? 1 / (density * all.enthalpyByTemperatureAtPressure) : 0;
        const bound = 1e-9 * Math.max(Math.abs(values[index]!), scale);
        expect(Math.abs(own - values[index]!), where).toBeLessThan(bound);
        const field = fields.get(`${of} ${over} ${held}`);
        if (field === undefined) return;
        expect(Math.abs(all[field] - own), where).toBeLessThan(bound);
        compared++;
      });
    }
    expect(compared).toBe(11 * 12);
  });

  test('slope of the saturation line', () => {
    expect(row.saturation.length).toBe(fluid.bubbleAndDew === undefined ? 4 : 0);
    for (const [temperature, slope] of row.saturation as unknown as readonly (readonly [number, number])[]) {
      expect(relative(saturationPressureSlope(saturationAtTemperature(fluid, temperature)), slope)).toBeLessThan(1e-8);
    }
  });
});

// Law: what the chain rule gives is what states a little apart differ by.
describe.each(refrigerantNames)('%s, central differences', (name) => {
  const fluid = refrigerant(name);
  const { critical } = fluid;

  test.each([
    ['gas', 0.85, 0.05],
    ['liquid', 0.75, 1.5],
    ['dense fluid', 1.004, 2],
  ] as const)('%s', (_, warmth, compression) => {
    const state = stateAt(fluid, {
      temperature: warmth * critical.temperature,
      pressure: compression * critical.pressure,
    });
    const { temperature, pressure, enthalpy, entropy } = state;
    const { derivatives } = derivedAt(fluid, state)!;
    const step = 1e-4;
    const byPressure = (pair: (pressure: number) => Parameters<typeof stateAt>[1], of: 'temperature' | 'density') => {
      const [low, high] = [stateAt(fluid, pair(pressure * (1 - step))), stateAt(fluid, pair(pressure * (1 + step)))];
      return (high[of] - low[of]) / (2 * step * pressure);
    };
    const throttled = byPressure((p) => ({ pressure: p, enthalpy }), 'temperature');
    const scale = 1 / (state.density * state.cp!);
    expect(Math.abs(throttled - derivatives.temperatureByPressureAtEnthalpy)).toBeLessThan(1e-5 * scale);
    const compressed = byPressure((p) => ({ pressure: p, entropy }), 'temperature');
    expect(relative(compressed, derivatives.temperatureByPressureAtEntropy)).toBeLessThan(1e-5);
    const denser = byPressure((p) => ({ pressure: p, enthalpy }), 'density');
    expect(relative(denser, derivatives.densityByPressureAtEnthalpy)).toBeLessThan(1e-4);
    const [cold, warm] = [0.9999, 1.0001].map((share) =>
      stateAt(fluid, { temperature: share * temperature, pressure }),
    );
    const width = warm!.temperature - cold!.temperature;
    expect(relative((warm!.density - cold!.density) / width, derivatives.densityByTemperatureAtPressure)).toBeLessThan(
      1e-3,
    );
    expect(relative((warm!.enthalpy - cold!.enthalpy) / width, state.cp!)).toBeLessThan(1e-3);
  });

  // Law: a gas becomes ideal as it becomes thin.
  test('a thin gas is an ideal one', () => {
    const temperature = 0.95 * fluid.limits.temperatureMax;
    const state = stateAt(fluid, { temperature, pressure: 1 });
    const derived = derivedAt(fluid, state)!;
    expect(relative(derived.isobaricExpansion * temperature, 1)).toBeLessThan(1e-6);
    expect(relative(derived.isothermalCompressibility * state.pressure, 1)).toBeLessThan(1e-6);
    expect(relative(derived.isentropicExponent, state.cp! / state.cv!)).toBeLessThan(1e-6);
    // The Joule–Thomson coefficient keeps a value there, the same at a tenth of the pressure.
    const thinner = derivedAt(fluid, stateAt(fluid, { temperature, pressure: 0.1 }))!;
    expect(relative(thinner.jouleThomsonCoefficient, derived.jouleThomsonCoefficient)).toBeLessThan(1e-5);
  });

  test('on both sides of the dome the values of that side, inside nothing', () => {
    const pressure = 0.4 * critical.pressure;
    const [liquid, mixture, vapour] = [0, 0.5, 1].map((quality) => stateAt(fluid, { pressure, quality }));
    expect(derivedAt(fluid, mixture!)).toBeNull();
    expect(derivedAt(fluid, liquid!)!.isentropicExponent).toBeGreaterThan(
      derivedAt(fluid, vapour!)!.isentropicExponent,
    );
    for (const side of [liquid!, vapour!]) {
      expect(derivedAt(fluid, side)!.derivatives).toEqual(derivativesAt(fluid, side.temperature, side.density));
    }
  });
});

describe('Joule–Thomson', () => {
  // Law: on the inversion curve enthalpy has an extremum over pressure at one temperature.
  test.each([
    ['R744', 400],
    ['R290', 450],
    ['R718', 900],
  ] as const)('inversion of %s at %d K', (name, temperature) => {
    const fluid = refrigerant(name);
    const coefficient = (pressure: number) =>
      derivedAt(fluid, stateAt(fluid, { temperature, pressure }))!.jouleThomsonCoefficient;
    const { root: inversion } = findRoot(coefficient, 5 * fluid.critical.pressure, 0.95 * fluid.limits.pressureMax);
    const enthalpyAt = (pressure: number) => stateAt(fluid, { temperature, pressure }).enthalpy;
    expect(enthalpyAt(inversion)).toBeLessThan(enthalpyAt(0.9 * inversion));
    expect(enthalpyAt(inversion)).toBeLessThan(enthalpyAt(1.1 * inversion));
    expect(coefficient(0.9 * inversion)).toBeGreaterThan(0);
    expect(coefficient(1.1 * inversion)).toBeLessThan(0);
  });

  // P. W. Atkins, J. de Paula, Physical Chemistry, table of Joule–Thomson coefficients at 1 atm and 298 K: carbon dioxide
  // 1.11 K/atm (from memory of the table; one unit in the last digit).
  test('carbon dioxide at 298 K and 1 atm', () => {
    const fluid = refrigerant('R744');
    const state = stateAt(fluid, { temperature: 298.15, pressure: 101325 });
    expect(Math.abs(derivedAt(fluid, state)!.jouleThomsonCoefficient * 101325 - 1.11)).toBeLessThan(0.03);
  });
});

// Water at 20 °C and 1 atm: expansion 2.07e-4 /K, compressibility 4.59e-10 /Pa (G. S. Kell (1975), J. Chem. Eng. Data 20, 97;
// from memory of the tables, last digit).
test('expansion and compressibility of water', () => {
  const water = refrigerant('R718');
  const derived = derivedAt(water, stateAt(water, { temperature: 293.15, pressure: 101325 }))!;
  expect(Math.abs(derived.isobaricExpansion - 2.07e-4)).toBeLessThan(0.01e-4);
  expect(Math.abs(derived.isothermalCompressibility - 4.59e-10)).toBeLessThan(0.01e-10);
});

describe('refused', () => {
  const fluid = refrigerant('R134a');
  const { critical } = fluid;

  test('the critical point, and densities of no stable phase', () => {
    const noDerivative = expect.objectContaining({ name: 'InputError', code: 'noDerivative' });
    expect(() => derivativesAt(fluid, critical.temperature, critical.density)).toThrow(noDerivative);
    expect(() => derivativesAt(fluid, 300, critical.density)).toThrow(noDerivative);
    expect(() =>
      partialDerivative(fluid, { temperature: 300, density: critical.density }, 'density', 'pressure', 'entropy'),
    ).toThrow(noDerivative);
  });

  test.each([
    ['density', 'density', 'pressure'],
    ['density', 'pressure', 'pressure'],
    ['colour', 'pressure', 'enthalpy'],
  ])('(∂%s/∂%s)_%s', (of, over, held) => {
    const point = { temperature: 300, density: 4 };
    const ask = () =>
      partialDerivative(fluid, point, of as StateVariable, over as StateVariable, held as StateVariable);
    expect(ask).toThrow(expect.objectContaining({ name: 'InputError' }));
  });

  test.each([Number.NaN, 0, -1, Number.POSITIVE_INFINITY])('a temperature or density of %d', (wrong) => {
    const inputError = expect.objectContaining({ name: 'InputError', code: 'badInput' });
    expect(() => derivativesAt(fluid, wrong, 4)).toThrow(inputError);
    expect(() => derivativesAt(fluid, 300, wrong)).toThrow(inputError);
  });

  test('the lines of a blend have no slope by Clapeyron', () => {
    const sides = saturationAtTemperature(refrigerant('R407C'), 300);
    expect(() => saturationPressureSlope(sides)).toThrow(expect.objectContaining({ code: 'noDerivative' }));
  });
});
