// Files of format version 1 are read, written as version 2, and the person is told what became of them; the table of steps.

import { describe, expect, test } from 'vitest';
import { checkDesign, parseDesign, resolveDesign, sayNotice, serialiseDesign } from '../../src/design/index.ts';
import { type Migration, migrate } from '../../src/design/migrations/migrations.ts';
import { demoTexts } from '../designs.ts';
import { firstVersionDesign, type Loose, sizedDesign } from './examples.ts';

function read(value: Loose) {
  const result = parseDesign(JSON.stringify(value));
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result;
}

const told = { code: 'olderFormat', path: 'formatVersion', received: '1', now: '2' };

describe('a compressor of version 1', () => {
  test('by its appliance says the same in version 2', () => {
    const { document, notices } = read(
      firstVersionDesign({ kind: 'salvaged', madeFor: 'R134a', appliance: 'dehumidifier' }),
    );
    expect(document).toEqual(sizedDesign());
    expect(notices).toEqual([told]);
  });

  test('by its displacement gives the machine its level', () => {
    const compressor = { kind: 'displacement', madeFor: 'R134a', displacement: '9 cm3', application: 'high' };
    const { document, notices } = read(firstVersionDesign(compressor));
    expect(document.machine).toEqual({
      refrigerant: 'R134a',
      application: 'high',
      compressor: { madeFor: 'R134a', displacement: '9 cm3' },
    });
    expect(notices).toEqual([told]);
  });

  test('and a machine that was given another level keeps its own, which is told', () => {
    const design = firstVersionDesign({
      kind: 'displacement',
      madeFor: 'R134a',
      displacement: '9 cm3',
      application: 'high',
    });
    design.machine.application = 'low';
    const { document, notices } = read(design);
    expect(document.machine.application).toBe('low');
    expect(notices).toMatchObject([
      told,
      { code: 'leftOut', path: 'machine.compressor.application', received: 'high' },
    ]);
  });

  test('by its rating is one rating', () => {
    const compressor = { kind: 'rating', madeFor: 'R290', ratingPoint: 'ashraeLow', capacity: '400 W', power: '220 W' };
    const { document, notices } = read(firstVersionDesign(compressor));
    expect(document.machine.compressor).toEqual({
      madeFor: 'R290',
      ratings: [{ at: { kind: 'named', point: 'ashraeLow' }, capacity: '400 W', power: '220 W' }],
    });
    expect(notices).toEqual([told]);
    expect(resolveDesign(document).design.machine.application).toBe('low');
  });

  test('keeps what the present model has, and names with its text whatever it has not', () => {
    const { document, notices } = read(
      firstVersionDesign({
        kind: 'salvaged',
        madeFor: 'R134a',
        appliance: 'dehumidifier',
        displacement: '8 cm3 ± 3 %',
        clearanceRatio: '3 %',
        frictionPressure: '30 to 60 kPa',
        reexpansionExponent: '1.1',
        fillingFactor: '0.9',
        shellHeatShare: '0.3 to 0.5',
        compressionEfficiency: '0.6',
      }),
    );
    expect(document.machine.compressor).toEqual({
      madeFor: 'R134a',
      appliance: 'dehumidifier',
      displacement: '8 cm3 ± 3 %',
      clearanceRatio: '3 %',
      frictionPressure: '30 to 60 kPa',
    });
    const leftOut = notices.filter(({ code }) => code === 'leftOut');
    expect(leftOut.map(({ path, received }) => [path, received])).toEqual([
      ['machine.compressor.reexpansionExponent', '1.1'],
      ['machine.compressor.fillingFactor', '0.9'],
      ['machine.compressor.shellHeatShare', '0.3 to 0.5'],
      ['machine.compressor.compressionEfficiency', '0.6'],
    ]);
    for (const notice of notices) expect(sayNotice(notice)).toMatch(/^[^*]{20,}\.$/);
  });
});

describe('a speed of version 1', () => {
  const withSpeed = (speed: string) =>
    read(firstVersionDesign({ kind: 'salvaged', madeFor: 'R134a', appliance: 'dehumidifier', speed }));

  test.each([
    ['2900 rpm', '50 Hz', '3.333 %', 0.1 / 3],
    ['3480 rpm', '60 Hz', '3.333 %', 0.1 / 3],
    ['48 1/s', '50 Hz', '4 %', 0.04],
    ['2850 to 2950 rpm', '50 Hz', '3.333 % (1.667 to 5)', 0.1 / 3],
  ])('%s is the slip behind mains of %s', (speed, frequency, slip, likely) => {
    const { document, notices } = withSpeed(speed);
    expect(document.machine.compressor).toMatchObject({ slip, nameplate: { frequency } });
    expect(document.machine.supply).toEqual({ frequency });
    expect(notices).toMatchObject([told, { code: 'readAs', path: 'machine.compressor.speed', received: speed }]);
    const { machine } = resolveDesign(document).design;
    expect(machine.compressor.slip.likely).toBeCloseTo(likely, 4);
    // What turns is what turned: frequency times what the slip leaves.
    const turns = machine.supply.frequency.likely * (1 - machine.compressor.slip.likely);
    expect(turns).toBeCloseTo((frequency === '50 Hz' ? 50 : 60) * (1 - likely), 3);
  });

  test.each(['1400 rpm', '5000 rpm', '2900 to 3100 rpm'])(
    '%s is that of no such motor: left out, and told',
    (speed) => {
      const { document, notices } = withSpeed(speed);
      expect(document.machine.compressor).not.toHaveProperty('slip');
      expect(notices).toMatchObject([told, { code: 'leftOut', path: 'machine.compressor.speed', received: speed }]);
    },
  );
});

describe('saving', () => {
  test('writes version 2, of which nothing is told any more', () => {
    const { document } = read(firstVersionDesign({ kind: 'salvaged', madeFor: 'R134a', appliance: 'dehumidifier' }));
    const text = serialiseDesign(document);
    expect(JSON.parse(text).formatVersion).toBe(2);
    const again = parseDesign(text);
    expect(again).toMatchObject({ ok: true, notices: [] });
    expect(again.ok && serialiseDesign(again.document)).toBe(text);
  });

  test('demos are of version 2', () => {
    for (const text of Object.values(demoTexts)) expect(parseDesign(text)).toMatchObject({ ok: true, notices: [] });
  });
});

describe('what was no version 1 either', () => {
  test.each([
    ['no compressor', undefined],
    ['a text', 'salvaged'],
    ['a list', []],
    ['an unknown kind', { kind: 'welded', madeFor: 'R134a' }],
    ['a kind that is none', { kind: 7 }],
    ['a key of no version', { kind: 'salvaged', madeFor: 'R134a', wings: 2 }],
    ['a field of another kind', { kind: 'salvaged', madeFor: 'R134a', capacity: '100 W' }],
    ['a rating of nothing', { kind: 'rating', madeFor: 'R134a' }],
    ['values that are no texts', { kind: 'salvaged', madeFor: 4, speed: 5, fillingFactor: null }],
  ])('%s: an answer or problems by their paths, never an exception', (_, compressor) => {
    const result = checkDesign(firstVersionDesign(compressor));
    if (result.ok) expect(result.notices).toContainEqual(told);
    else for (const { path } of result.problems) expect(path).toMatch(/^machine\.compressor/);
  });

  test('the original is left as it is', () => {
    const design = firstVersionDesign({
      kind: 'rating',
      madeFor: 'R290',
      ratingPoint: 'ashraeLow',
      capacity: '400 W',
      power: '220 W',
    });
    const before = JSON.stringify(design);
    checkDesign(design);
    expect(JSON.stringify(design)).toBe(before);
  });
});

describe('the steps', () => {
  const steps = new Map<number, Migration>([
    [1, (document: Loose) => ({ document: { ...document, added: 'two' }, notices: [] })],
    [
      2,
      ({ added, ...rest }: Loose) => ({
        document: { ...rest, renamed: added },
        notices: [{ code: 'readAs', path: 'added', received: String(added), now: 'renamed' }],
      }),
    ],
  ]);

  test('run one after the other, set the version and gather what is told', () => {
    const original = Object.freeze({ formatVersion: 1, name: 'old' });
    const { document, notices } = migrate(original, 1, 3, steps);
    expect(document).toEqual({ formatVersion: 3, name: 'old', renamed: 'two' });
    expect(notices).toMatchObject([
      { code: 'olderFormat', received: '1', now: '3' },
      { code: 'readAs', path: 'added' },
    ]);
    expect(original).toEqual({ formatVersion: 1, name: 'old' });
  });

  test('a document of the present version stays the same object, and nothing is told', () => {
    const document = { formatVersion: 3 };
    expect(migrate(document, 3, 3, steps)).toEqual({ document, notices: [] });
    expect(migrate(document, 3, 3, steps).document).toBe(document);
  });

  test('a gap in the table is a broken promise', () => {
    expect(() => migrate({}, 3, 4, steps)).toThrow(RangeError);
  });
});
