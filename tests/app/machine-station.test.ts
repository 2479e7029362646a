// The station of the machine: its first sentence, where a value that does not fit was given, and what a new item of a list asks.

import { describe, expect, test } from 'vitest';
import { askedOfItem, missedInItem } from '../../src/app/fields/asked-of-item.ts';
import { understood } from '../../src/app/fields/understood.ts';
import { fieldOfResidual, offBy } from '../../src/app/machine/residual-words.ts';
import { machineSentence } from '../../src/app/machine/sentence.ts';
import type { MachineAnswer } from '../../src/assess/index.ts';
import { fieldRecord } from '../../src/design/index.ts';

const celsius = (value: number) => value + 273.15;
const watts = (low: number, likely: number, high: number) => ({ low, likely, high, unit: 'W' });

/** Invented round numbers. */
const machine: MachineAnswer = {
  count: 1,
  madeFor: 'R134a',
  appliance: null,
  application: 'low',
  builtFor: { lowest: celsius(-40), highest: celsius(-10) },
  wouldRunAt: {
    evaporating: { lowest: celsius(8), highest: celsius(12) },
    condensing: { lowest: celsius(36), highest: celsius(37) },
  },
  heat: watts(300, 350, 420),
  power: watts(100, 120, 150),
  current: { low: 0.9, likely: 1, high: 1.2, unit: 'A' },
  ratedCurrent: { low: 1, likely: 1, high: 1 },
  currentShare: { low: 0.9, likely: 1, high: 1.2, unit: '1' },
  motorLoad: { low: 1, likely: 1.1, high: 1.3, unit: '1' },
  wallTemperature: { low: 340, likely: 350, high: 360, unit: 'K' },
  firstLimit: {
    limit: 'evaporatingHighest',
    label: 'highest evaporating temperature',
    quantity: 'temperature',
    value: celsius(8),
    bound: celsius(-10),
    margin: -18,
    passed: true,
  },
  displacement: { low: 5e-6, likely: 6e-6, high: 8e-6, unit: 'm3' },
  residuals: [],
  doubt: { flow: { correction: 0, halfWidth: 0.1 }, power: { correction: 0, halfWidth: 0.08 }, reasons: ['noPoints'] },
};

describe('the first sentence', () => {
  const said = (other: Partial<MachineAnswer> = {}, refrigerant = 'R134a', view: 'metric' | 'us' = 'metric') =>
    machineSentence({ ...machine, ...other }, refrigerant, view).replaceAll('\u00a0', ' ');

  test('says what it was built for, where it would run, heat, electricity, current and the first limit', () => {
    expect(said()).toBe(
      'Built for R134a evaporating at −40 to −10 °C, you would run it at 8 to 12 °C: expect between 300 and 420 W of heat from 100 to 150 W of electricity, 90 to 120 % of its rated current. First limit: highest evaporating temperature, passed by 18 K.',
    );
  });

  test('in the other units', () => {
    const words = said({}, 'R134a', 'us');
    expect(words).toContain('evaporating at −40 to 14 °F');
    expect(words).toContain('BTU/h of heat');
    // 18 K are 32.4 °F of difference.
    expect(words).toContain('passed by 32 °F');
  });

  test('names the other fluid, each of several machines, and a rated current that nobody knows', () => {
    const words = said({ count: 2, currentShare: null, ratedCurrent: null }, 'R600a');
    expect(words).toContain('you would run it on R600a at');
    expect(words).toContain('of heat each from');
    expect(words).toContain('rated current');
    expect(words).not.toContain('%');
  });

  test('a limit that is not met is so far away', () => {
    const firstLimit = {
      ...machine.firstLimit,
      limit: 'pressureRatioHighest',
      quantity: 'ratio',
      margin: 3,
      passed: false,
    };
    expect(said({ firstLimit })).toContain('3 away');
  });
});

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
  const residual = {
    path: 'machine.compressor.ratings.0',
    label: 'rating 1',
    of: 'power',
    quantity: 'electricPower',
    given: 100,
    modelled: 104,
    deviation: 0.04,
    disagrees: false,
  } as const;
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
