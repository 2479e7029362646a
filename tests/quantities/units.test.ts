// Units against the outside: NIST Special Publication 811 (2008), appendix B.8, factors as printed there (from memory of the
// source), and the units of the general-purpose mathematics library mathjs. Law: every unit reads back to its own factor.

import { unit as reference } from 'mathjs';
import { describe, expect, test } from 'vitest';
import { type QuantityName, readQuantity } from '../../src/quantities/index.ts';
import { quantityRecords } from '../../src/quantities/records.ts';
import { findUnit, type Unit, type UnitFamily, unitFamilies } from '../../src/quantities/units.ts';

function likely(text: string, quantity: QuantityName): number {
  const read = readQuantity(text, quantity);
  if (!read.ok) throw new Error(`${text}: ${read.problem.code}`);
  return read.estimate.likely;
}

/** Printed factors have seven digits. */
const printed: readonly (readonly [string, QuantityName, number])[] = [
  ['1 BTU', 'energy', 1.055056e3],
  ['1 BTU/h', 'power', 2.930711e-1],
  ['1 ton of refrigeration', 'power', 3.516853e3],
  ['1 BTU/(h ft2 °F)', 'heatTransferCoefficient', 5.678263],
  ['1 BTU in/(h ft2 °F)', 'conductivity', 1.442279e-1],
  ['1 BTU/(h ft °F)', 'conductivity', 1.730735],
  ['R-1', 'thermalResistance', 1.761102e-1],
  ['1 BTU/lb', 'enthalpy', 2.326e3],
  ['1 BTU/(lb °F)', 'entropy', 4.1868e3],
  ['1 BTU/ft3', 'volumetricCapacity', 3.725895e4],
  ['1 BTU/(h ft2)', 'heatFlux', 3.154591],
  ['1 psia', 'pressure', 6.894757e3],
  ['1 psi', 'pressureDifference', 6.894757e3],
  ['1 gal', 'volume', 3.785412e-3],
  ['1 in3', 'displacement', 1.638706e-5],
  ['1 ft3', 'volume', 2.831685e-2],
  ['1 lb/ft3', 'density', 1.601846e1],
  ['1 cfm', 'volumeFlow', 4.719474e-4],
  ['1 gpm', 'waterFlow', 6.30902e-5],
  ['1 oz', 'mass', 2.834952e-2],
  ['1 ft/min', 'speed', 5.08e-3],
  ['1 rpm', 'frequency', 1 / 60],
];

test.each(printed)('%s of %s agrees with the printed factor (NIST SP 811, B.8)', (text, quantity, factor) => {
  expect(Math.abs(likely(text, quantity) / factor - 1)).toBeLessThan(4e-7);
});

const inLibrary: readonly (readonly [string, QuantityName, string, string])[] = [
  ['79 °F', 'temperature', '79 degF', 'K'],
  ['26.5 °C', 'temperature', '26.5 degC', 'K'],
  ['5/8 in', 'length', '0.625 in', 'm'],
  ['6 ft 2 in', 'length', '74 in', 'm'],
  ['120 gal', 'volume', '120 gal', 'm^3'],
  ['13 psi', 'pressureDifference', '13 psi', 'Pa'],
  ['38 kWh', 'energy', '38 kWh', 'J'],
  ['1/6 hp', 'power', '0.16666666666666667 hp', 'W'],
  ['3 oz', 'mass', '3 oz', 'kg'],
  ['2.5 lb', 'mass', '2.5 lbm', 'kg'],
  ['1 week', 'duration', '1 week', 's'],
  ['6 ft2', 'area', '6 sqft', 'm^2'],
];

test.each(inLibrary)('%s as %s agrees with mathjs', (text, quantity, expression, si) => {
  const expected = reference(expression).toNumber(si);
  expect(Math.abs(likely(text, quantity) / expected - 1)).toBeLessThan(1e-9);
});

test('a difference of 10 °F is 5.56 K and a level of 10 °F is 260.93 K', () => {
  expect(likely('10 °F', 'temperatureDifference')).toBeCloseTo(50 / 9, 12);
  expect(likely('10 °F', 'temperature')).toBeCloseTo(260.928, 3);
});

describe('every unit of every family', () => {
  const families = Object.keys(unitFamilies) as UnitFamily[];

  test.each(families)('%s: no two units share a spelling', (family) => {
    const units: readonly Unit[] = unitFamilies[family];
    expect(units.length).toBeGreaterThan(0);
    for (const unit of units) {
      for (const spelling of [unit.label, ...unit.spellings]) {
        expect(findUnit(family, spelling)?.factor, `${family}: ${spelling}`).toBe(unit.factor);
      }
    }
  });

  test.each(Object.values(quantityRecords).map((record) => [record.name, record] as const))(
    '%s: its examples read, and its units of both views exist',
    (name, record) => {
      for (const example of record.examples) {
        const read = readQuantity(example, name, { atmosphericPressure: 101325, currency: 'EUR' });
        expect(read.ok, example).toBe(true);
      }
      for (const view of ['metric', 'us'] as const) {
        const labels: readonly string[] = unitFamilies[record.family].map((entry: Unit) => entry.label);
        for (const { unit } of record.view[view].steps) expect(labels).toContain(unit);
        expect(labels).toContain(record.view[view].chart);
        expect(record.view[view].steps.at(-1)?.below).toBe(Number.POSITIVE_INFINITY);
      }
    },
  );
});
