// Comma-separated values by RFC 4180, read back here by a reader of its own; the states of a cycle in both views.

import { describe, expect, test } from 'vitest';
import { caution } from '../../src/cautions/index.ts';
import { csvText, statesCsv } from '../../src/charts/index.ts';
import { textbookCycle } from '../../src/loop/index.ts';

/** Rows of a text, by the grammar of RFC 4180. */
function rowsOf(text: string): string[][] {
  const rows: string[][] = [[]];
  const pattern = /(?:"((?:[^"]|"")*)"|([^",\r\n]*))(,|\r\n)/gy;
  for (const [, inQuotes, bare, end] of text.matchAll(pattern)) {
    rows.at(-1)!.push(inQuotes === undefined ? bare! : inQuotes.replaceAll('""', '"'));
    if (end === '\r\n') rows.push([]);
  }
  rows.pop();
  return rows;
}

test('cells come back as they were, whatever stands in them', () => {
  const rows = [
    ['plain', 'with, comma', 'with "quotes"'],
    ['two\nlines', '# not a comment', ''],
    ['', '', ''],
  ];
  expect(rowsOf(csvText(rows))).toEqual(rows);
});

test('comments stand in front, each on one line', () => {
  const lines = csvText([['a', 'b']], ['first, with comma', 'in\r\ntwo']).split('\r\n');
  expect(lines).toEqual(['# first, with comma', '# in two', 'a,b', '']);
});

describe('states of a cycle', () => {
  const request = { refrigerant: 'R290', evaporating: 263.15, condensing: 318.15, superheat: 5, subcooling: 5 };
  const { points } = textbookCycle({ ...request, isentropicEfficiency: 0.6 });
  const read = (view: 'metric' | 'us') => {
    const text = statesCsv(points, view, 'iir');
    const [first, second, ...rest] = text.split('\r\n');
    const [head, ...rows] = rowsOf(rest.join('\r\n'));
    return {
      first,
      second,
      head: head!,
      rows: rows.map((row) => Object.fromEntries(head!.map((name, i) => [name, row[i]!]))),
    };
  };

  test('the caution is the first line, the reference state the second', () => {
    const { first, second } = read('metric');
    expect(first).toBe(`# ${caution}`);
    expect(second).toContain('200 kJ/kg and 1 kJ/(kg K) in boiling liquid at 0 °C');
    expect(read('us').second).toContain('32 °F');
  });

  test('every state with its numbers, in order of flow', () => {
    const { rows } = read('metric');
    expect(rows.map((row) => row.number)).toEqual(['1', '2s', '2', '3', '4']);
    for (const row of rows) {
      const point = points.find(({ name }) => name === row.state)!;
      expect(Number(row['temperature [°C]'])).toBeCloseTo(point.temperature - 273.15, 6);
      expect(Number(row['pressure [bar abs]'])).toBeCloseTo(point.pressure / 1e5, 6);
      expect(Number(row['enthalpy [kJ/kg]'])).toBeCloseTo(point.enthalpy / 1e3, 5);
      expect(Number(row['density [kg/m³]'])).toBeCloseTo(point.density, 5);
      expect(row.phase).toBe(point.phase);
    }
    expect(rows[4]!['heat capacity at constant pressure [kJ/(kg K)]']).toBe('');
    expect(rows[0]!['vapour by mass']).toBe('');
  });

  test('US units, with factors of NIST Special Publication 811 (from memory of the source)', () => {
    const { rows } = read('us');
    const [inlet] = points;
    expect(Number(rows[0]!['temperature [°F]'])).toBeCloseTo(inlet.temperature * 1.8 - 459.67, 6);
    expect(Number(rows[0]!['pressure [psia]'])).toBeCloseTo(inlet.pressure / 6894.757, 4);
    expect(Number(rows[0]!['enthalpy [BTU/lb]'])).toBeCloseTo(inlet.enthalpy / 2326, 6);
  });
});
