// Reading a design file: valid ones come back as the same text; every kind of fault is a problem with its path, what was
// received and what is accepted, all of them gathered.

import { describe, expect, test } from 'vitest';
import {
  type DesignProblem,
  longestDesignText,
  parseDesign,
  sayProblem,
  serialiseDesign,
} from '../../src/design/index.ts';
import { readJson } from '../../src/design/json-text.ts';
import { demoTexts } from '../designs.ts';
import { documentOf, type Loose, measuredDesign, problemsOf, sizedDesign } from './examples.ts';

describe('valid designs', () => {
  test.each(Object.entries(demoTexts))('%s: read and written gives the same text', (_, text) => {
    const result = parseDesign(text);
    expect(result).toMatchObject({ ok: true });
    if (result.ok) expect(serialiseDesign(result.document)).toBe(text);
  });

  test('key order, units and ranges stay as written', () => {
    const text = serialiseDesign(documentOf({ ...measuredDesign(), place: { altitude: '1 200 ft'.replace(' ', '') } }));
    const result = parseDesign(text);
    expect(result.ok && serialiseDesign(result.document)).toBe(text);
  });

  test('a byte order mark and other line ends do no harm', () => {
    const text = serialiseDesign(documentOf(sizedDesign()));
    expect(parseDesign(`\uFEFF${text.replaceAll('\n', '\r\n')}`).ok).toBe(true);
  });
});

type Break = (design: Loose) => void;

/** A break that writes something else at a path. */
function set(path: string, value: unknown): Break {
  return (design) => {
    const keys = path.split('.');
    const last = keys.pop()!;
    keys.reduce((part, key) => part[key], design)[last] = value;
  };
}

function without(path: string): Break {
  return (design) => {
    const keys = path.split('.');
    const last = keys.pop()!;
    delete keys.reduce((part, key) => part[key], design)[last];
  };
}

type Fault = readonly [what: string, spoil: Break, expected: Partial<DesignProblem>];

const faults: readonly Fault[] = [
  ['unknown unit', set('tank.load.length', '12 furlong'), { path: 'tank.load.length', code: 'unknownUnit' }],
  ['misspelt unit', set('tank.load.length', '12 feets'), { code: 'unknownUnit', nearest: 'feet' }],
  ['unit of another quantity', set('tank.waterTemperature', '26 W'), { code: 'wrongUnit' }],
  ['no unit', set('tank.waterTemperature', '26'), { path: 'tank.waterTemperature', code: 'unitMissing' }],
  [
    'negative length',
    set('tank.load.wall.thickness', '-10 mm'),
    { path: 'tank.load.wall.thickness', code: 'negative' },
  ],
  ['low above high', set('room.temperature', '22 to 19 °C'), { path: 'room.temperature', code: 'lowAboveHigh' }],
  ['beyond the limits', set('tank.waterTemperature', '90 °C'), { code: 'outOfRange' }],
  ['one end beyond the limits', set('room.monthsHeated', '7 to 13'), { path: 'room.monthsHeated', code: 'outOfRange' }],
  [
    'number instead of text',
    set('tank.load.length', 1.2),
    { path: 'tank.load.length', code: 'wrongType', received: '1.2' },
  ],
  ['null', set('tank.load.length', null), { path: 'tank.load.length', code: 'wrongType' }],
  ['list instead of a part', set('room', []), { path: 'room', code: 'wrongType', received: 'a list' }],
  ['text instead of a part', set('tank.load', '38 kWh'), { path: 'tank.load', code: 'wrongType' }],
  ['missing field', without('tank.load.lid'), { path: 'tank.load.lid', code: 'missing' }],
  ['missing part', without('machine'), { path: 'machine', code: 'missing' }],
  ['missing kind', without('tank.load.kind'), { path: 'tank.load.kind', code: 'missing' }],
  [
    'unknown kind',
    set('tank.load.kind', 'measurd'),
    { path: 'tank.load.kind', code: 'unknownChoice', nearest: 'measured' },
  ],
  ['unknown choice', set('tank.load.lid', 'tigt'), { path: 'tank.load.lid', code: 'unknownChoice', nearest: 'tight' }],
  ['unknown refrigerant', set('machine.refrigerant', 'R134'), { path: 'machine.refrigerant', nearest: 'R134a' }],
  ['unknown key', set('tank.load.lenght', '1 m'), { path: 'tank.load.lenght', code: 'unknownKey', nearest: 'length' }],
  ['unknown key at the top', set('rooms', {}), { path: 'rooms', code: 'unknownKey', nearest: 'room' }],
  ['key of the other kind', set('tank.load.energy', '38 kWh'), { path: 'tank.load.energy', code: 'unknownKey' }],
  ['inherited key', set('constructor', 'x'), { path: 'constructor', code: 'unknownKey' }],
  ['empty name', set('name', ''), { path: 'name', code: 'badText' }],
  ['long note', set('note', 'x'.repeat(6000)), { path: 'note', code: 'badText' }],
  ['currency in words', set('prices.currency', 'euro'), { path: 'prices.currency', code: 'badText' }],
  [
    'price in another currency',
    set('prices.electricity', '0.3 USD/kWh'),
    { path: 'prices.electricity', code: 'otherCurrency' },
  ],
  ['no format version', without('formatVersion'), { path: 'formatVersion', code: 'missing' }],
  ['format version as text', set('formatVersion', '1'), { path: 'formatVersion', code: 'badFormatVersion' }],
  ['format version 0', set('formatVersion', 0), { path: 'formatVersion', code: 'badFormatVersion' }],
  ['format version of the future', set('formatVersion', 3), { path: 'formatVersion', code: 'newerFormat' }],
  [
    'water above the rim',
    set('tank.load.waterDepth', '51 cm'),
    { path: 'tank.load.waterDepth', code: 'waterAboveRim' },
  ],
  ['coldest above usual', set('room.coldest', '21 °C'), { path: 'room.coldest', code: 'coldestAboveUsual' }],
  ['warmest below usual', set('room.warmest', '66 °F'), { path: 'room.warmest', code: 'warmestBelowUsual' }],
  [
    'coldest of the source above its usual',
    set('source', { kind: 'otherRoom', temperature: '8 °C', coldest: '50 °F' }),
    { path: 'source.coldest', code: 'coldestAboveUsual' },
  ],
  [
    'twin-wall sheet of unknown thickness',
    (d) => Object.assign(d.tank.load, { lidMaterial: 'polycarbonateTwinWall', lidThickness: '100 mm' }),
    { path: 'tank.load.lidThickness', code: 'sheetThicknessUnknown' },
  ],
];

describe('faults of a value', () => {
  test.each(faults)('%s', (_, spoil, expected) => {
    const design = sizedDesign();
    spoil(design);
    const problems = problemsOf(design);
    expect(problems).toContainEqual(expect.objectContaining(expected));
    for (const problem of problems) {
      expect(problem.expected).not.toBe('');
      expect(sayProblem(problem)).not.toMatch(/undefined|\[object|\.\./);
    }
  });

  test('measured in a room as warm as the water', () => {
    const design = measuredDesign();
    design.tank.load.roomTemperature = '26 °C';
    expect(problemsOf(design)).toMatchObject([{ path: 'tank.load.roomTemperature', code: 'measuredRoomTooWarm' }]);
    const usual = measuredDesign();
    usual.room.temperature = '27 °C';
    expect(problemsOf(usual)).toMatchObject([{ path: 'room.temperature', code: 'measuredRoomTooWarm' }]);
  });

  test('a key that JavaScript treats specially is refused by its path', () => {
    const text = JSON.stringify(sizedDesign()).replace('"room":{', '"room":{"__proto__":{"temperature":"1 K"},');
    expect(problemsOf(text)).toContainEqual(expect.objectContaining({ path: 'room.__proto__', code: 'unknownKey' }));
  });

  test('all problems are gathered, each with its path', () => {
    const design = sizedDesign();
    design.room.temperature = 'warm';
    design.tank.load.lid = 'glass';
    design.machine.compressor.extra = 1;
    delete design.prices.electricity;
    expect(problemsOf(design).map(({ path }) => path)).toEqual([
      'room.temperature',
      'tank.load.lid',
      'machine.compressor.extra',
      'prices.electricity',
    ]);
  });

  test('an unknown name of a compressor lists what is accepted', () => {
    const design = sizedDesign();
    design.machine.compressor.appliance = 'toaster';
    const [problem] = problemsOf(design);
    expect(problem).toMatchObject({ path: 'machine.compressor.appliance', code: 'unknownChoice', received: 'toaster' });
    expect(problem!.expected).toContain('chestFreezer');
  });
});

describe('faults of a text', () => {
  const text = serialiseDesign(documentOf(sizedDesign()));

  test('50 MB are refused without being read', () => {
    const start = 'x'.repeat(50e6);
    expect(problemsOf(start)).toMatchObject([{ path: '', code: 'tooLarge' }]);
    expect(longestDesignText).toBeLessThanOrEqual(5e6);
  });

  test.each(['', '   \n'])('an empty text', (empty) => {
    expect(problemsOf(empty)).toMatchObject([{ code: 'empty' }]);
  });

  test.each(['[]', '12', '"design"', 'null', 'true'])('%s is JSON, but not a design', (value) => {
    expect(problemsOf(value)).toMatchObject([{ path: '', code: 'notADesign' }]);
  });

  test('cut off anywhere, it is said to be cut off', () => {
    const body = text.trimEnd();
    for (let length = 1; length < body.length; length++) {
      const [problem] = problemsOf(body.slice(0, length));
      expect(problem!.code, `after ${length} characters`).toBe('truncated');
      expect(problem!.line).toBeGreaterThan(0);
    }
  });

  test.each([
    ['{"a": 1,}', 1, 9],
    ['{\n  a: 1 }', 2, 3],
    ['{"a": .5}', 1, 7],
    ['{"a": 1} x', 1, 10],
    ["{'a': 1}", 1, 2],
    ['{"a": "x\ny"}', 1, 7],
    ['{"a": nul}', 1, 7],
  ])('%j: the place of the fault is line %d, column %d', (broken, line, column) => {
    expect(problemsOf(broken)).toMatchObject([{ code: 'notJson', line, column }]);
  });

  test('a key given twice is refused: which one was meant is not clear', () => {
    const twice = text.replace('"name": "Sized"', '"name": "Sized", "name": "Other"');
    expect(problemsOf(twice)).toMatchObject([{ path: 'name', code: 'duplicateKey' }]);
  });

  test('deep nesting is refused, not followed', () => {
    expect(problemsOf('['.repeat(100000))).toMatchObject([{ code: 'tooDeep' }]);
  });

  test('the reader accepts and refuses what JSON.parse does (duplicate keys and depth aside)', () => {
    const samples = [
      '{}',
      '[1,2]',
      '-0.5e3',
      '01',
      '1.',
      '-',
      '"\\u00e9"',
      '"\\x"',
      '"\t"',
      'tru',
      '{"a":}',
      '[1 2]',
      ' {} ',
    ];
    for (const sample of samples) {
      let accepted = true;
      try {
        JSON.parse(sample);
      } catch {
        accepted = false;
      }
      expect(readJson(sample).ok, sample).toBe(accepted);
    }
  });
});
