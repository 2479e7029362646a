// The station of the machine: where a value that does not fit was given, what a new item of a list asks, what is said back of a
// pasted table.

import { describe, expect, test } from 'vitest';
import { askedOfItem, missedInItem } from '../../src/app/fields/asked-of-item.ts';
import { refusalWords } from '../../src/app/fields/design-field.tsx';
import { understood } from '../../src/app/fields/understood.ts';
import { fieldOfResidual, offBy } from '../../src/app/machine/residual-words.ts';
import { addItem, fieldRecord, newDesign } from '../../src/design/index.ts';

test('every kind of residual leads to a field that exists', () => {
  const paths = [
    ['machine.compressor.ratings.0.capacity', 'capacity', 'machine.compressor.ratings.0.capacity'],
    ['machine.compressor.ratings.1', 'power', 'machine.compressor.ratings.1.power'],
    ['machine.compressor.tables.0.points.3', 'massFlow', 'machine.compressor.tables.0.table'],
    ['machine.compressor.coefficients.2.points.0', 'power', 'machine.compressor.coefficients.2.values'],
    ['machine.compressor.bench.0', 'power', 'machine.compressor.bench.0.evaporating'],
  ] as const;
  for (const [path, of, field] of paths) {
    expect(fieldOfResidual({ path, of })).toBe(field);
    expect(fieldRecord(field), field).toBeDefined();
  }
});

test('what a point is off by has its sign, and that of a temperature is a difference', () => {
  const residual = { of: 'power', deviation: 0.04 } as const;
  expect(offBy(residual, 'metric')).toMatch(/^\+4\s%$/);
  expect(offBy({ ...residual, deviation: -0.04 }, 'metric')).toMatch(/^−4\s%$/);
  expect(offBy({ ...residual, of: 'dischargeTemperature', deviation: 5 }, 'us')).toMatch(/^\+9\s°F$/);
});

describe('a new item of a list', () => {
  const list = 'machine.compressor.ratings';
  const asked = (texts: Record<string, string>, wanted: readonly string[] = []) =>
    askedOfItem(list, undefined, texts, wanted).map(({ path }) => path.slice(list.length + 3));

  test('asks the kind of a part first, then what that kind needs', () => {
    const numbers = ['capacity', 'power', 'current'];
    expect(asked({})).toEqual(['at.kind', ...numbers]);
    expect(asked({ [`${list}.*.at.kind`]: 'named' })).toEqual(['at.kind', 'at.point', ...numbers]);
    expect(asked({ [`${list}.*.at.kind`]: 'conditions' })).toEqual(
      expect.arrayContaining(['at.evaporating', 'at.condensing', 'at.returnGas']),
    );
  });

  test('asks what a refusal says is missing, although it may be left out as a rule', () => {
    const bench = 'machine.compressor.bench';
    const missed = missedInItem(bench, 0, [
      { path: `${bench}.0.discharge`, code: 'missing' },
      { path: `${bench}.1.voltage`, code: 'missing' },
      { path: `${bench}.0.voltage`, code: 'outOfRange' },
    ]);
    const paths = askedOfItem(bench, undefined, {}, missed).map(({ path }) => path);
    expect(paths).toContain(`${bench}.*.discharge`);
    expect(paths).not.toContain(`${bench}.*.voltage`);
  });
});

test('a refusal names the fields of an item that did not get in, and a missing part by its choice', () => {
  const answers = {
    'room.temperature': '20 °C',
    'tank.waterTemperature': '25 °C',
    'tank.water': 'fresh',
    'tank.load.kind': 'measured',
    'tank.load.energy': '20 kWh',
    'tank.load.duration': '7 d',
    'tank.load.roomTemperature': '20 °C',
    'tank.load.waterTemperature': '25 °C',
    'prices.currency': 'EUR',
    'prices.electricity': '0.3 EUR/kWh',
  };
  const made = newDesign(answers);
  if (!made.ok) throw new Error(JSON.stringify(made.problems));
  const said = (list: string, item: unknown) => {
    const result = addItem(made.document, `machine.compressor.${list}`, item, 0);
    if (result.ok) throw new Error('was taken');
    return refusalWords(result.problems, made.document);
  };
  const rating = said('ratings', { at: { kind: 'named', point: 'ashraeLow' } });
  expect(rating).toMatch(/^Capacity is missing/);
  const table = said('tables', { table: 'Te [°C]\tTc [°C]\tQ [W]\tP [W]\n-25\t40\t282\t160', frequency: '50 Hz' });
  expect(table).toMatch(/^Return gas they hold for is missing/);
  expect(rating + table).not.toContain('machine.');
});

test('a pasted table says back its points and columns, and nothing while it cannot be read', () => {
  const record = fieldRecord('machine.compressor.tables.0.table')!;
  const said = (text: string) => understood(record, text, {}, 'metric');
  expect(said('Te [°C]\tTc [°C]\tQ [W]\tP [W]\n-25\t40\t282\t160\n-20\t40\t362\t177')).toMatch(
    /^2 points with .*Te \[°C\].* and .*P \[W\]/,
  );
  expect(said('Te\tTc\n-25\t40')).toBeUndefined();
  expect(said('')).toBeUndefined();
});
