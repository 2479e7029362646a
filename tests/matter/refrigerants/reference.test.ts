// Every pair of properties of every refrigerant against reference states of a general-purpose library, CoolProp 8.0.0, at
// seeded random states over the whole range of each equation (tests/reference/refrigerants/states, written by
// data/refrigerants/export.py): one phase, both sides of the dome to 0.9999 of the critical temperature, inside the dome.
// Bounds: 1e-9 of a pure fluid, 1e-8 of a blend, 1e-6 near the critical point (accuracy.ts says how near); 1e-10 for a
// temperature through (T,p) -> h -> (p,h). What lies above its bound is listed with its cause in exceptions.ts.

import { describe, expect, test } from 'vitest';
import { refrigerantNames } from '../../../src/matter/refrigerants/index.ts';
import { type Check, checksOf, regions, subjects } from '../../reference/refrigerants/accuracy.ts';
import { exceptionFor, exceptions } from '../../reference/refrigerants/exceptions.ts';
import { referenceTables } from '../../reference/refrigerants/states.ts';

const tables = referenceTables();

test('every refrigerant has a reference', () => {
  expect(tables.map((table) => table.refrigerant).sort()).toEqual([...refrigerantNames].sort());
});

describe.each(tables)('$refrigerant, seed "$seed"', (table) => {
  const name = table.refrigerant;
  const checks = checksOf(table);

  test('the reference was made with the coefficients the program uses', async () => {
    const file = await import(`../../../data/refrigerants/${name}.json`);
    expect(file.default.source.sha256).toBe(table.coefficients);
  });

  test('all kinds of states and all pairs are there', () => {
    const states = table.single.length + 2 * table.saturation.length + table.twoPhase.length;
    expect(states).toBeGreaterThan(2000);
    for (const region of regions) expect(checks.filter((check) => check.region === region).length).toBeGreaterThan(100);
    for (const subject of subjects)
      expect(checks.filter((check) => check.subject === subject).length).toBeGreaterThan(200);
  });

  test('states agree', () => {
    const misses = checks.filter(
      (check) => !(check.deviation <= check.bound) && exceptionFor(name, check) === undefined,
    );
    expect(misses.map(inWords)).toEqual([]);
  });

  test.each(exceptions.filter((entry) => entry.fluid === name))('$subject, $region, $where: still needed', (entry) => {
    const above = checks.filter((check) => !(check.deviation <= check.bound) && exceptionFor(name, check) === entry);
    expect(above.length).toBeGreaterThan(0);
    // As narrow as it is said to be: a fifth leaves room for another order of the same roundings.
    expect(Math.max(...above.map(({ deviation }) => deviation))).toBeGreaterThanOrEqual(entry.reached / 5);
  });
});

function inWords({ region, subject, deviation, row, failure }: Check): string {
  return (
    failure ?? `${region}, ${subject}: ${deviation.toExponential(1)} at ${row.temperature} K, ${row.density} kg/m³`
  );
}
