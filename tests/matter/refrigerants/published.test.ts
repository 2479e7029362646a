// States against printed tables (tests/reference/refrigerants/published). Tolerance: one unit in the last printed digit, wider
// only where the table's reason says why.

import { describe, expect, test } from 'vitest';
import { refrigerantNames } from '../../../src/matter/refrigerants/index.ts';
import { allowed, type PublishedTable, readings, valuesOf } from '../../reference/refrigerants/published/table.ts';
import { publishedTables } from '../../reference/refrigerants/rows.ts';

const named = publishedTables.map((table): [string, PublishedTable] => [`${table.fluid}, ${table.title}`, table]);

test.each(named)('%s', (_name, table) => {
  const values = valuesOf(table);
  expect(values).toHaveLength(table.rows.length * table.columns.length);
  for (const { where, column, printed, ours, tolerance } of values) {
    const deviation = Math.abs(ours - Number(printed));
    expect(deviation, `${column} at ${where}: ${ours}, printed ${printed}`).toBeLessThanOrEqual(
      allowed(tolerance, printed),
    );
  }
});

describe('the tables themselves', () => {
  test('every fluid has a row, every column is used', () => {
    // Carbon dioxide sublimes at atmospheric pressure: it has a row of its own but no normal boiling point.
    expect([...new Set(publishedTables.map(({ fluid }) => fluid))].sort()).toEqual([...refrigerantNames].sort());
    const used = new Set<string>(publishedTables.flatMap(({ columns }) => columns));
    expect(Object.keys(readings).filter((column) => !used.has(column))).toEqual([]);
  });

  test('a tolerance wider than the printed digits has its reason', () => {
    const wide = publishedTables.filter(
      ({ tolerance, columnTolerance }) => tolerance !== undefined || columnTolerance !== undefined,
    );
    expect(wide.length).toBeGreaterThan(3);
    expect(wide.filter(({ reason }) => reason === undefined).map(({ title }) => title)).toEqual([]);
  });

  test('units of the last digit', () => {
    expect(allowed({ units: 1 }, '0.00631')).toBeCloseTo(1e-5, 8);
    expect(allowed({ units: 2 }, '753625.00')).toBeCloseTo(0.02, 5);
    expect(allowed({ units: 1 }, '200')).toBeCloseTo(1, 3);
    expect(allowed({ relative: 1e-3 }, '-50')).toBeCloseTo(0.05, 12);
    expect(allowed({ absolute: 0.5 }, '3')).toBe(0.5);
  });
});
