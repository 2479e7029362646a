// Where enthalpy and entropy count from: each reference state is zero where its words say, and no difference depends on it.

import { describe, expect, test } from 'vitest';
import {
  type ReferenceStateName,
  referenceOffset,
  referenceStates,
  refrigerant,
  refrigerantNames,
  saturationAtPressure,
  saturationAtTemperature,
} from '../../../src/matter/refrigerants/index.ts';

/** Has no liquid at 1 atm: its triple point lies at 5.18 bar (Span & Wagner 1996). */
const sublimes = 'R744';
/** Has no liquid below 0.01 °C. */
const freezes = 'R718';

describe.each(refrigerantNames.filter((name) => name !== sublimes && name !== freezes))('%s', (name) => {
  const fluid = refrigerant(name);

  // Definitions: 200 kJ/kg and 1 kJ/(kg K) at 0 °C; 0 at −40 °C; 0 at 101 325 Pa, each in the saturated liquid.
  test('each zero lies where it is said to', () => {
    const { liquid } = saturationAtTemperature(fluid, 273.15);
    expect(liquid.enthalpy).toBeCloseTo(200e3, 5);
    expect(liquid.entropy).toBeCloseTo(1e3, 7);
    expect(referenceOffset(fluid, 'iir')).toEqual({ enthalpy: 0, entropy: 0 });
    const cold = saturationAtTemperature(fluid, 233.15).liquid;
    const ashrae = referenceOffset(fluid, 'ashrae');
    expect(cold.enthalpy + ashrae.enthalpy).toBe(0);
    expect(cold.entropy + ashrae.entropy).toBe(0);
    const boiling = saturationAtPressure(fluid, 101325).liquid;
    const normal = referenceOffset(fluid, 'normalBoilingPoint');
    expect(boiling.enthalpy + normal.enthalpy).toBe(0);
    expect(boiling.entropy + normal.entropy).toBe(0);
  });
});

test('carbon dioxide has no normal boiling point to count from; its other zeros lie where they are said to', () => {
  const fluid = refrigerant(sublimes);
  expect(saturationAtTemperature(fluid, 273.15).liquid.enthalpy).toBeCloseTo(200e3, 5);
  const cold = saturationAtTemperature(fluid, 233.15).liquid;
  expect(cold.enthalpy + referenceOffset(fluid, 'ashrae').enthalpy).toBe(0);
  expect(() => referenceOffset(fluid, 'normalBoilingPoint')).toThrow(
    expect.objectContaining({ name: 'OutOfModelError', quantity: 'pressure', value: 101325 }),
  );
});

// At the triple point, 0.01 K above 0 °C, cp of the liquid is 4.2199 kJ/(kg K) (IAPWS-95): 42.2 J/kg and 0.1545 J/(kg K) more
// than at 0 °C; followed there the liquid has 200 kJ/kg and 1 kJ/(kg K).
test('water counts from its liquid followed to 0 °C; it is ice at −40 °C', () => {
  const fluid = refrigerant(freezes);
  const { liquid } = saturationAtTemperature(fluid, 273.16);
  expect(Math.abs(liquid.enthalpy - 200_042.2)).toBeLessThan(0.1);
  expect(Math.abs(liquid.entropy - 1000.1545)).toBeLessThan(4e-4);
  expect(referenceOffset(fluid, 'iir')).toEqual({ enthalpy: 0, entropy: 0 });
  const boiling = saturationAtPressure(fluid, 101325).liquid;
  expect(boiling.enthalpy + referenceOffset(fluid, 'normalBoilingPoint').enthalpy).toBe(0);
  // Steam tables (IAPWS): from the triple point to 99.974 °C the liquid gains 419.06 kJ/kg.
  expect((boiling.enthalpy - liquid.enthalpy) / 1e3).toBeCloseTo(419.06, 1);
  expect(() => referenceOffset(fluid, 'ashrae')).toThrow(
    expect.objectContaining({ name: 'OutOfModelError', quantity: 'temperature', value: 233.15 }),
  );
});

test('every reference state has words and a source', () => {
  expect(referenceStates.map(({ name }) => name)).toEqual(['iir', 'ashrae', 'normalBoilingPoint']);
  for (const { words, source } of referenceStates) {
    expect(words).toMatch(/saturated liquid/);
    expect(source.length).toBeGreaterThan(10);
  }
});

test('an unknown reference state is refused', () => {
  expect(() => referenceOffset(refrigerant('R22'), 'zero' as ReferenceStateName)).toThrow(
    expect.objectContaining({ name: 'InputError', path: 'referenceState' }),
  );
});
