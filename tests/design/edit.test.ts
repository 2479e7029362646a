// Editing a document by path, and making a new one from the seven questions.

import { describe, expect, test } from 'vitest';
import {
  askedFields,
  fieldRecord,
  fluidsOf,
  getField,
  newDesign,
  resolveDesign,
  setField,
  setKind,
  startQuestions,
  startRecord,
} from '../../src/design/index.ts';
import { documentOf, fullDesign, measuredDesign, sizedDesign } from './examples.ts';

describe('setField', () => {
  const document = documentOf(sizedDesign());

  test('changes one text, keeps it as written, shares the rest and leaves the old document alone', () => {
    const edited = setField(document, 'tank.load.length', ' 4 ft 1/2 in ');
    if (!edited.ok) throw new Error('refused');
    expect(getField(edited.document, 'tank.load.length')).toBe('4 ft 1/2 in');
    expect(getField(document, 'tank.load.length')).toBe('120 cm');
    expect(edited.document.machine).toBe(document.machine);
  });

  test('makes the parts that a first value needs, and takes them away with the last', () => {
    const added = setField(document, 'exchangers.superheat', '5 K');
    if (!added.ok) throw new Error('refused');
    expect(added.document.exchangers).toEqual({ superheat: '5 K' });
    const removed = setField(added.document, 'exchangers.superheat', '');
    if (!removed.ok) throw new Error('refused');
    expect(removed.document).toEqual(document);
    expect('exchangers' in removed.document).toBe(false);
  });

  test.each([
    ['tank.load.length', '12 furlong', 'unknownUnit'],
    ['tank.load.length', '', 'notOptional'],
    ['tank.load.energy', '38 kWh', 'unknownKey'],
    ['tank.load.waterDepth', '60 cm', 'waterAboveRim'],
    ['tank.wings', '2', 'unknownPath'],
    ['__proto__.polluted', '2', 'unknownPath'],
    ['tank.load.lid', 'glass', 'unknownChoice'],
    ['prices.currency', 'USD', 'otherCurrency'],
  ])('%s = "%s" is refused: %s', (path, text, code) => {
    expect(setField(document, path, text)).toMatchObject({ ok: false, problems: [expect.objectContaining({ code })] });
  });

  test('an insulation layer goes as a whole', () => {
    const design = sizedDesign();
    design.tank.load.insulation = { back: { material: 'corkMat', thickness: '10 mm' } };
    const cleared = setField(documentOf(design), 'tank.load.insulation.back.thickness', '');
    expect(cleared).toMatchObject({ ok: true, document: sizedDesign() });
  });
});

test('a text of several lines keeps its tabs and loses only empty lines around it', () => {
  const document = documentOf(fullDesign());
  const path = 'machine.compressor.tables.0.table';
  const table = 'Te [°C]\tTc [°C]\tP [W]\tnote\n-20\t45\t130\t\n';
  const edited = setField(document, path, `\n \r\n${table}\n\n`);
  expect(edited.ok && getField(edited.document, path)).toBe(table.trimEnd());
});

describe('setKind', () => {
  test('keeps fields that both kinds have and takes the others from the texts given', () => {
    const design = sizedDesign();
    design.tank.load.waterDepth = '45 cm';
    const changed = setKind(documentOf(design), 'tank.load', 'cylinder', { 'tank.load.diameter': '80 cm' });
    if (!changed.ok) throw new Error(JSON.stringify(changed.problems));
    expect(changed.document.tank.load).toEqual({
      kind: 'cylinder',
      diameter: '80 cm',
      height: '50 cm',
      waterDepth: '45 cm',
      wall: { material: 'glass', thickness: '10 mm' },
      lid: 'tight',
    });
  });

  test('names the fields that are missing', () => {
    const changed = setKind(documentOf(sizedDesign()), 'tank.load', 'measured', {});
    expect(changed).toMatchObject({
      ok: false,
      problems: [
        { path: 'tank.load.energy', code: 'missing' },
        { path: 'tank.load.duration', code: 'missing' },
      ],
    });
  });

  test('an optional part goes back to its default', () => {
    const document = documentOf({ ...sizedDesign(), source: { kind: 'otherRoom', temperature: '12 °C' } });
    const cleared = setField(document, 'source.kind', '');
    expect(cleared.ok && 'source' in cleared.document).toBe(false);
    expect(cleared.ok && resolveDesign(cleared.document).design.source).toEqual({ kind: 'roomAir' });
  });

  test('an unknown kind is refused with the kinds there are', () => {
    const changed = setField(documentOf(measuredDesign()), 'tank.load.kind', 'round');
    expect(changed).toMatchObject({ ok: false, problems: [{ path: 'tank.load.kind', code: 'unknownChoice' }] });
  });
});

describe('seven questions', () => {
  const sized = {
    'tank.load.kind': 'rectangular',
    'tank.load.length': '48 in',
    'tank.load.width': '18 in',
    'tank.load.height': '20 in',
    'tank.load.wall.material': 'glass',
    'tank.load.wall.thickness': '3/8 in',
    'tank.waterTemperature': '78 °F',
    'tank.water': 'fresh',
    'room.temperature': '68 °F',
    'tank.load.lid': 'tight',
    'machine.compressor.appliance': 'dehumidifier',
    'machine.compressor.madeFor': 'R134a',
    'prices.currency': 'USD',
    'prices.electricity': '$0.17/kWh',
  };
  const measured = {
    ...Object.fromEntries(Object.entries(sized).filter(([path]) => !path.startsWith('tank.load.'))),
    'tank.load.kind': 'measured',
    'tank.load.energy': '38 kWh',
    'tank.load.duration': '7 days',
  };

  test('are seven, and every field they ask is a field of the document', () => {
    expect(startQuestions.length).toBe(7);
    for (const { fields, question, help } of startQuestions) {
      expect(question).toMatch(/\?$/);
      expect(help).toMatch(/\.$/);
      for (const { path, optional } of fields) {
        const record = fieldRecord(path);
        expect(record, path).toBeDefined();
        if (!record!.optional) expect(optional).toBe(false);
      }
    }
  });

  test('ask for a measurement or a box, the commonest tank; other shapes wait in the workbench', () => {
    const [kind] = startQuestions[0]!.fields;
    expect(startRecord(kind!).choices?.map(({ name }) => name)).toEqual(['measured', 'rectangular']);
    expect(startRecord(kind!).path).toBe('tank.load.kind');
  });

  test.each([
    ['sizes', sized],
    ['a measurement', measured],
  ])('%s alone make a complete design', (_, answers) => {
    const made = newDesign(answers, 'Ours');
    if (!made.ok) throw new Error(JSON.stringify(made.problems));
    expect(made.document.name).toBe('Ours');
    expect(fluidsOf(made.document)).toEqual({ refrigerant: 'R134a', madeFor: 'R134a' });
    const { assumptions } = resolveDesign(made.document);
    expect(assumptions.map(({ path }) => path)).toContain('source.kind');
    const required = startQuestions
      .flatMap((question) => askedFields(question, answers))
      .filter(({ optional }) => !optional);
    expect(required.every(({ path }) => path in answers)).toBe(true);
  });

  test('each required answer left out is named by its path', () => {
    const required = Object.keys(sized).filter((path) => fieldRecord(path)?.optional === false);
    expect(required.length).toBeGreaterThan(9);
    for (const path of required.filter((each) => each !== 'tank.load.kind')) {
      const { [path]: _, ...rest } = sized as Record<string, string>;
      const made = newDesign(rest);
      expect(made.ok, path).toBe(false);
      if (!made.ok) expect(made.problems.map((problem) => problem.path)).toContain(path);
    }
    expect(newDesign({})).toMatchObject({ ok: false });
  });

  test('nothing need be known of the compressor: its fluid is then the one most likely for what is', () => {
    const { 'machine.compressor.madeFor': _, 'machine.compressor.appliance': __, ...rest } = sized;
    const made = newDesign(rest);
    if (!made.ok) throw new Error(JSON.stringify(made.problems));
    expect(made.document.machine).toEqual({});
    const { assumptions, design } = resolveDesign(made.document);
    expect(design.machine.refrigerant).toBe(design.machine.compressor.madeFor);
    const paths = assumptions.map(({ path }) => path);
    expect(paths).toEqual(expect.arrayContaining(['machine.refrigerant', 'machine.compressor.madeFor']));
    const old = newDesign({
      ...rest,
      'machine.compressor.appliance': 'chestFreezer',
      'machine.compressor.year': '1985',
    });
    // Before 1994 household appliances held R12: Montreal Protocol, phase-out in developed countries from 1996.
    expect(old.ok && fluidsOf(old.document)).toEqual({ refrigerant: 'R12', madeFor: 'R12' });
  });

  test('answers that belong to the other way of knowing the tank are left out', () => {
    const made = newDesign({ ...sized, 'tank.load.energy': '38 kWh', 'tank.load.duration': '7 days' });
    expect(made.ok && getField(made.document, 'tank.load.energy')).toBe(undefined);
  });

  test('more answers may be given; unknown ones are refused', () => {
    const made = newDesign({
      ...sized,
      'machine.refrigerant': 'R600a',
      'room.monthsHeated': '6',
      'tank.load.surface': ' ',
    });
    expect(made).toMatchObject({
      ok: true,
      document: { machine: { refrigerant: 'R600a' }, room: { monthsHeated: '6' } },
    });
    expect(newDesign({ ...sized, 'tank.load.pipes.0.length': '1 m' })).toMatchObject({
      ok: false,
      problems: [{ path: 'tank.load.pipes.0.length', code: 'unknownPath' }],
    });
    expect(newDesign({ ...sized, 'tank.colour': 'blue' })).toMatchObject({
      ok: false,
      problems: [{ path: 'tank.colour', code: 'unknownPath' }],
    });
  });
});
