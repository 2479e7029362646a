// The station of the machine: where a value that does not fit was given, what a new item of a list asks, what is said back of a
// pasted table.

import { describe, expect, test } from 'vitest';
import { askedOfItem, missedInItem } from '../../src/app/fields/asked-of-item.ts';
import { understood } from '../../src/app/fields/understood.ts';
import { fieldOfResidual, offBy } from '../../src/app/machine/residual-words.ts';
import { fieldRecord } from '../../src/design/index.ts';

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
    expect(asked({})).toEqual(['at.kind']);
    expect(asked({ [`${list}.*.at.kind`]: 'named' })).toEqual(['at.kind', 'at.point']);
    expect(asked({ [`${list}.*.at.kind`]: 'conditions' })).toEqual(
      expect.arrayContaining(['at.evaporating', 'at.condensing', 'at.returnGas']),
    );
  });

  test('asks what a refusal says is missing, although it may be left out as a rule', () => {
    const missed = missedInItem(list, 0, [
      { path: `${list}.0.capacity`, code: 'missing' },
      { path: `${list}.1.power`, code: 'missing' },
      { path: `${list}.0.power`, code: 'outOfRange' },
    ]);
    expect(asked({}, missed)).toContain('capacity');
    expect(asked({}, missed)).not.toContain('power');
  });
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
