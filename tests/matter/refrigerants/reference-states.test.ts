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

describe.each(refrigerantNames)('%s', (name) => {
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
