// Lists in a design: their fields by index, how items are added, removed, moved and changed, and what is refused by its path.

import { describe, expect, test } from 'vitest';
import {
  addItem,
  type DesignDocument,
  designJsonSchema,
  type EditResult,
  fieldRecord,
  fieldRecords,
  fieldsOf,
  fieldsOfItem,
  fieldsOfKind,
  getField,
  itemsOf,
  listRecord,
  listRecords,
  listsOf,
  moveItem,
  parseDesign,
  plainDesign,
  removeItem,
  resolveDesign,
  serialiseDesign,
  setField,
  setKind,
  uncertainInputs,
  withFollowers,
  withValue,
} from '../../src/design/index.ts';
import {
  cylinderDesign,
  documentOf,
  fullDesign,
  type Loose,
  panelsDesign,
  problemsOf,
  sizedDesign,
} from './examples.ts';

const full = documentOf(fullDesign());
const outside = 'tank.load.faces.0.outside';

function done(result: EditResult): DesignDocument {
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.document;
}

describe('fields of lists', () => {
  test('stand once among the records, with a star, and once for each item of a document', () => {
    expect(fieldRecords.some(({ path }) => path === 'tank.load.faces.*.outside.*.thickness')).toBe(true);
    const paths = fieldsOf(full).map(({ path }) => path);
    expect(paths).toContain(`${outside}.0.thickness`);
    expect(paths).toContain(`${outside}.2.conductivity`);
    expect(paths).toContain('tank.load.pipes.1.insulation.thickness');
    expect(paths).toContain('wrapping.measures.1.hours');
    expect(paths.some((path) => path.includes('*'))).toBe(false);
    expect(new Set(paths).size).toBe(paths.length);
    for (const path of paths) expect(fieldRecord(path, full)?.path).toBe(path);
  });

  test('of an item are those of its kind', () => {
    const paths = fieldsOf(full).map(({ path }) => path);
    expect(paths).not.toContain(`${outside}.0.material`);
    expect(paths).not.toContain(`${outside}.2.material`);
    expect(paths).toContain('tank.load.faces.1.exposure.kind');
    expect(paths).not.toContain('tank.load.faces.1.exposure.resistance');
    expect(paths).toContain('tank.load.faces.0.exposure.resistance');
  });

  test('an index that is not there, a hole in the path, a key of the list itself are no fields', () => {
    for (const path of [
      `${outside}.3.thickness`,
      'tank.load.faces.7.face',
      'tank.load.faces.length',
      'tank.load.faces.01.face',
      'tank.load.faces.-1.face',
      'tank.load.faces.0.outside',
      'tank.load.faces.constructor.face',
    ]) {
      expect(fieldRecord(path, full), path).toBeUndefined();
      expect(setField(full, path, '5 mm'), path).toMatchObject({ ok: false, problems: [{ code: 'unknownPath' }] });
    }
  });

  test('say which item they belong to', () => {
    expect(fieldRecord(`${outside}.1.thickness`, full)?.item).toBe('face 1, outer layer 2');
    const labels = uncertainInputs(resolveDesign(full)).map(({ label }) => label);
    expect(new Set(labels).size).toBe(labels.length);
    expect(labels).toContain('Emissivity of the face away from the water (face 1, outer layer 1)');
  });

  test('lists have records of their own, each with words', () => {
    expect(listRecords.length).toBeGreaterThan(8);
    for (const { label, help, itemName } of listRecords) {
      expect(label.length).toBeGreaterThan(3);
      expect(help).toMatch(/\.$/);
      expect(itemName).toMatch(/^[a-z ]+$/);
    }
    const lists = listsOf(full).map(({ path }) => path);
    expect(lists).toContain('tank.load.faces.2.inside');
    expect(lists).not.toContain('tank.load.panels');
    expect(listRecord(outside)?.itemName).toBe('outer layer');
  });

  test('what a new item needs is told by its list and kind', () => {
    const needed = (list: string, kind?: string) =>
      fieldsOfItem(list, kind)
        .filter(({ optional, type }) => !optional && type !== 'kind')
        .map(({ path }) => path);
    expect(needed(outside, 'own')).toEqual([`${outside}.*.thickness`, `${outside}.*.conductivity`]);
    expect(needed('wrapping.measures', 'cooler')).toEqual(['wrapping.measures.*.by']);
    expect(fieldsOfKind('tank.load', 'cylinder').some(({ path }) => path.includes('*'))).toBe(false);
  });
});

describe('items', () => {
  test('are added at the end or at a place, removed and moved; the old document stays', () => {
    const layer = { kind: 'resistance', resistance: 'R-4' };
    const added = done(addItem(full, outside, layer, 1));
    expect(itemsOf(added, outside).map(({ kind }) => kind)).toEqual(['sealedGap', 'resistance', 'material', 'own']);
    expect(done(removeItem(added, outside, 1))).toEqual(full);
    const last = done(addItem(full, outside, layer));
    expect(done(moveItem(last, outside, 3, 1))).toEqual(added);
    expect(done(moveItem(added, outside, 1, 3))).toEqual(last);
    expect(itemsOf(full, outside).length).toBe(3);
    expect(added.machine).toBe(full.machine);
  });

  test('begin a list, and an optional list goes with its last', () => {
    const bare = documentOf(sizedDesign());
    const begun = done(
      addItem(bare, 'tank.load.pipes', { length: '1 m', outerDiameter: '20 mm', material: 'rigidPvc' }),
    );
    expect(itemsOf(begun, 'tank.load.pipes').length).toBe(1);
    const gone = done(removeItem(begun, 'tank.load.pipes', 0));
    expect(serialiseDesign(gone)).toBe(serialiseDesign(bare));
  });

  test('an empty list of measures says that nothing is to be done, so it stays', () => {
    const one = done(addItem(documentOf(sizedDesign()), 'wrapping.measures', { kind: 'cooler', by: '1 K' }));
    const none = done(removeItem(one, 'wrapping.measures', 0));
    expect(none.wrapping).toEqual({ measures: [] });
    expect(resolveDesign(none).design.wrapping.measures).toEqual([]);
    expect(resolveDesign(documentOf(sizedDesign())).design.wrapping.measures).toBeUndefined();
  });

  test.each([
    ['an index beyond the end', () => removeItem(full, outside, 3), `${outside}.3`, 'unknownPath'],
    ['a place beyond the end', () => moveItem(full, outside, 0, 3), `${outside}.3`, 'unknownPath'],
    ['a place that is no whole number', () => addItem(full, outside, {}, 0.5), `${outside}.0.5`, 'unknownPath'],
    ['no list', () => addItem(full, 'tank.load.wall', {}), 'tank.load.wall', 'unknownPath'],
    [
      'a list of an item that is not there',
      () => addItem(full, 'tank.load.faces.9.outside', {}),
      'tank.load.faces.9.outside',
      'unknownPath',
    ],
    [
      'an item without its fields',
      () => addItem(full, outside, { kind: 'own' }),
      `${outside}.3.conductivity`,
      'missing',
    ],
    ['an item of no kind', () => addItem(full, outside, { thickness: '1 mm' }), `${outside}.3.kind`, 'missing'],
    [
      'a misspelt field',
      () => addItem(full, 'tank.load.faces', { face: 'front', outsides: [] }),
      'tank.load.faces.3.outsides',
      'unknownKey',
    ],
    ['the last panel', () => removePanels(), 'tank.load.panels', 'missing'],
  ] as const)('%s is refused by its path', (_, edit, path, code) => {
    expect(edit()).toMatchObject({
      ok: false,
      problems: expect.arrayContaining([expect.objectContaining({ path, code })]),
    });
  });

  test('change their kind, keep what both kinds have, and clear what is optional', () => {
    const path = `${outside}.1`;
    const changed = done(setKind(full, path, 'own', { [`${path}.conductivity`]: '0.03 W/(m K)' }));
    expect(itemsOf(changed, outside)[1]).toEqual({ kind: 'own', conductivity: '0.03 W/(m K)', thickness: '30 mm' });
    expect(setKind(full, path, 'own', {})).toMatchObject({ ok: false, problems: [{ path: `${path}.conductivity` }] });
    const bare = done(setField(full, `${outside}.0.outerEmissivity`, ''));
    expect(itemsOf(bare, outside)[0]).toEqual({ kind: 'sealedGap', thickness: '20 mm' });
    const free = done(setField(full, 'tank.load.faces.0.exposure.kind', ''));
    expect('exposure' in itemsOf(free, 'tank.load.faces')[0]!).toBe(false);
    expect(setField(full, `${outside}.0.thickness`, '')).toMatchObject({
      ok: false,
      problems: [{ code: 'notOptional' }],
    });
  });

  test('a part that is given whole goes with any of its required fields', () => {
    const bare = done(setField(full, `${outside}.1.joint.share`, ''));
    expect('joint' in itemsOf(bare, outside)[1]!).toBe(false);
    const calm = done(setField(full, 'tank.load.waterChange.every', ' '));
    expect(getField(calm, 'tank.load.waterChange.volume')).toBeUndefined();
  });

  test('stay when the tank gets another shape that has them', () => {
    const square = sizedDesign();
    square.tank.load.faces = [{ face: 'front', outside: [{ kind: 'resistance', resistance: 'R-2' }] }];
    const changed = done(
      setKind(documentOf(square), 'tank.load', 'lShape', {
        'tank.load.recessLength': '30 cm',
        'tank.load.recessWidth': '20 cm',
      }),
    );
    expect(itemsOf(changed, 'tank.load.faces')).toEqual(square.tank.load.faces);
    const measured = done(
      setKind(changed, 'tank.load', 'measured', { 'tank.load.energy': '30 kWh', 'tank.load.duration': '7 days' }),
    );
    expect(measured.tank.load).toEqual({ kind: 'measured', energy: '30 kWh', duration: '7 days' });
  });
});

function removePanels(): EditResult {
  let result: EditResult = { ok: true, document: documentOf(panelsDesign()), notices: [] };
  while (result.ok) result = removeItem(result.document, 'tank.load.panels', 0);
  return result;
}

type Fault = readonly [what: string, spoil: (design: Loose) => void, path: string, code: string];

const faults: readonly Fault[] = [
  [
    '25 items',
    (d: Loose): void => {
      d.tank.load.pipes = Array(25).fill(d.tank.load.pipes[0]);
    },
    'tank.load.pipes',
    'tooManyItems',
  ],
  ['an object in place of a list', (d: Loose) => (d.tank.load.pipes = {}), 'tank.load.pipes', 'wrongType'],
  ['a text in place of an item', (d: Loose) => (d.tank.load.faces[1] = 'back'), 'tank.load.faces.1', 'wrongType'],
  ['null in place of an item', (d: Loose) => (d.tank.load.faces[1] = null), 'tank.load.faces.1', 'wrongType'],
  ['a list in place of an item', (d: Loose) => (d.tank.load.faces[0].outside[1] = []), `${outside}.1`, 'wrongType'],
  [
    'a key that is not known',
    (d: Loose): void => {
      d.tank.load.faces[0].outside[1].thicknes = '1 mm';
    },
    `${outside}.1.thicknes`,
    'unknownKey',
  ],
  [
    'a key of another kind',
    (d: Loose): void => {
      d.tank.load.faces[0].outside[0].material = 'glass';
    },
    `${outside}.0.material`,
    'unknownKey',
  ],
  [
    'an unknown kind',
    (d: Loose): void => {
      d.tank.load.faces[0].outside[0].kind = 'sealdGap';
    },
    `${outside}.0.kind`,
    'unknownChoice',
  ],
  [
    'an unknown material',
    (d: Loose): void => {
      d.tank.load.faces[0].outside[1].material = 'glas';
    },
    `${outside}.1.material`,
    'unknownChoice',
  ],
  [
    'a negative layer',
    (d: Loose): void => {
      d.tank.load.faces[0].outside[1].thickness = '-5 mm';
    },
    `${outside}.1.thickness`,
    'negative',
  ],
  [
    'a layer of nothing',
    (d: Loose): void => {
      d.tank.load.faces[0].outside[1].thickness = '0 mm';
    },
    `${outside}.1.thickness`,
    'outOfRange',
  ],
  [
    'an emissivity above 1',
    (d: Loose): void => {
      d.tank.load.faces[0].outside[0].outerEmissivity = '1.1';
    },
    `${outside}.0.outerEmissivity`,
    'outOfRange',
  ],
  [
    'an emissivity below 0.01',
    (d: Loose): void => {
      d.tank.load.faces[0].outside[0].outerEmissivity = '0.005';
    },
    `${outside}.0.outerEmissivity`,
    'outOfRange',
  ],
  [
    'a night of 25 hours',
    (d: Loose): void => {
      d.wrapping.measures[1].hours = '25 h';
    },
    'wrapping.measures.1.hours',
    'outOfRange',
  ],
  [
    'a cost in another currency',
    (d: Loose): void => {
      d.wrapping.measures[0].cost = '80 USD';
    },
    'wrapping.measures.0.cost',
    'otherCurrency',
  ],
];

describe('a file with lists', () => {
  test.each([
    ['L', fullDesign],
    ['pieces', panelsDesign],
    ['cylinder', cylinderDesign],
  ])('%s: read and written gives the same text, edited there and back as well', (_, make) => {
    const text = serialiseDesign(documentOf(make()));
    const read = parseDesign(text);
    expect(read.ok && serialiseDesign(read.document)).toBe(text);
    const document = documentOf(make());
    for (const { path } of fieldsOf(document)) {
      const written = getField(document, path);
      if (written === undefined || fieldRecord(path, document)!.type === 'kind') continue;
      expect(done(setField(document, path, written)), path).toEqual(document);
    }
  });

  test.each(faults)('%s is refused by its path', (_, spoil, path, code) => {
    const design = fullDesign();
    spoil(design);
    const problems = problemsOf(design);
    expect(problems).toContainEqual(expect.objectContaining({ path, code }));
    for (const problem of problems) expect(problem.expected).not.toMatch(/undefined|\*/);
  });

  test('the nearest name is offered inside an item', () => {
    const design = fullDesign();
    design.tank.load.faces[0].outside[1].thicknes = '1 mm';
    expect(problemsOf(design)).toContainEqual(expect.objectContaining({ nearest: 'thickness' }));
  });

  test('a hole and a key that JavaScript treats specially are refused', () => {
    const text = JSON.stringify(fullDesign());
    const spoilt = text.replace('{"face":"bottom",', '{"__proto__":{"face":"front"},"face":"bottom",');
    expect(problemsOf(spoilt)).toContainEqual(
      expect.objectContaining({ path: 'tank.load.faces.2.__proto__', code: 'unknownKey' }),
    );
    expect(addItem(full, outside, undefined)).toMatchObject({ ok: false, problems: [{ path: `${outside}.3` }] });
    expect(problemsOf(text.replace('"faces":[', '"faces":[,'))).toMatchObject([{ code: 'notJson' }]);
  });

  test('its JSON Schema says how many items there may be', () => {
    const text = JSON.stringify(designJsonSchema());
    expect(text).toContain('"maxItems":24');
    expect(text).not.toContain('"list":');
  });
});

describe('numbers in lists', () => {
  const resolution = resolveDesign(full);
  const plain = plainDesign(resolution.design);
  const path = 'tank.load.pipes.1.length';

  test('keep lists as lists, one number changed, all beside it shared', () => {
    expect(Array.isArray(plain.tank.load.kind === 'lShape' && plain.tank.load.faces)).toBe(true);
    const changed = withValue(plain, path, 3);
    if (changed.tank.load.kind !== 'lShape' || plain.tank.load.kind !== 'lShape') throw new Error('expected an L');
    expect(changed.tank.load.pipes[1]!.length).toBe(3);
    expect(changed.tank.load.pipes[0]).toBe(plain.tank.load.pipes[0]);
    expect(changed.tank.load.faces).toBe(plain.tank.load.faces);
    expect(Array.isArray(changed.tank.load.pipes)).toBe(true);
    expect(plain.tank.load.pipes[1]!.length).toBe(1.5);
  });

  test('follow what they follow by index: the wall of a pipe its own diameter', () => {
    const follower = resolution.followers.find((each) => each.path === 'tank.load.pipes.1.wallThickness');
    expect(follower?.follows).toBe('tank.load.pipes.1.outerDiameter');
    const moved = withFollowers(plain, resolution.followers, 'tank.load.pipes.1.outerDiameter', 0.1);
    if (moved.tank.load.kind !== 'lShape') throw new Error('expected an L');
    expect(moved.tank.load.pipes[1]!.wallThickness).toBeCloseTo(0.007, 12);
    expect(moved.tank.load.pipes[0]!.wallThickness).toBeCloseTo(0.032 * 0.07, 12);
  });

  test('are varied where their ends differ, by index path', () => {
    const paths = uncertainInputs(resolution).map((input) => input.path);
    expect(paths).toContain(path);
    expect(paths).toContain('tank.load.faces.2.outside.0.resistance');
    expect(paths).toContain('wrapping.measures.1.cost');
    expect(paths).not.toContain('tank.load.pipes.0.length');
  });
});
