// The one reducer of the page: what each action changes, and what it must leave alone.

import { describe, expect, test } from 'vitest';
import { stationNames } from '../../src/app/pages.ts';
import { setFields } from '../../src/app/state/edits.ts';
import { fileNameFor } from '../../src/app/state/files.ts';
import { reduce, startState, type WorkbenchState } from '../../src/app/state/workbench.ts';
import { fieldsOfStation, homeOf, mostFields } from '../../src/app/stations/fields.ts';
import { fieldRecords, fieldsOf, parseDesign, setField } from '../../src/design/index.ts';
import { answerTo, exampleFiles, exampleText } from './answers.ts';

function documentOf(text: string) {
  const outcome = parseDesign(text);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.document;
}

const reef = documentOf(exampleText('reef-in-the-study.json'));
const garage = documentOf(exampleText('frag-tank-cold-garage.json'));
const answer = answerTo('reef-in-the-study.json');
const start = (): WorkbenchState => startState(reef, 'metric', 'system');

describe('answers', () => {
  test('an answer to the present design is shown', () => {
    const state = reduce(start(), { type: 'answered', document: reef, answer });
    expect(state.answer).toBe(answer);
    expect(state.answered).toBe(reef);
  });

  test('an answer to a design that is no longer open is dropped', () => {
    const edited = reduce(start(), { type: 'opened', document: garage });
    expect(reduce(edited, { type: 'answered', document: reef, answer })).toBe(edited);
  });

  test('a refusal keeps the last answer and the design', () => {
    const solved = reduce(start(), { type: 'answered', document: reef, answer });
    const edited = reduce(solved, { type: 'edited', document: garage, path: 'tank.waterTemperature' });
    const refused = reduce(edited, { type: 'refused', document: garage, problems: [] });
    expect(refused.answer).toBe(answer);
    expect(refused.designs.present).toBe(garage);
    expect(refused.answered).not.toBe(garage);
  });
});

test('a refusal of another design that was opened leaves no results of the one before', () => {
  const solved = reduce(start(), { type: 'answered', document: reef, answer });
  const opened = reduce(solved, { type: 'opened', document: garage });
  expect(opened.answer).toBe(answer);
  const refused = reduce(opened, { type: 'refused', document: garage, problems: [] });
  expect(refused.answer).toBeUndefined();
  const undone = reduce(refused, { type: 'undone' });
  expect(reduce(undone, { type: 'answered', document: reef, answer }).answer).toBe(answer);
});

describe('edits', () => {
  test('opening, editing and undoing keep one line of history', () => {
    let state = reduce(start(), { type: 'opened', document: garage });
    state = reduce(state, { type: 'undone' });
    expect(state.designs.present).toBe(reef);
    expect(reduce(state, { type: 'redone' }).designs.present).toBe(garage);
  });

  test('view and light change nothing else', () => {
    const before = start();
    const { view, ...rest } = reduce(before, { type: 'viewChosen', view: 'us' });
    expect(view).toBe('us');
    expect(rest).toEqual((({ view: _view, ...others }) => others)(before));
  });

  test('a part that is whole or not at all is set in one edit, and refused in halves', () => {
    const layer = {
      'tank.load.insulation.back.material': 'extrudedPolystyrene',
      'tank.load.insulation.back.thickness': '20 mm',
    };
    const [material] =
      fieldRecords.find((record) => record.path === 'tank.load.insulation.back.material')?.choices ?? [];
    const whole = setFields(garage, { ...layer, 'tank.load.insulation.back.material': material?.name ?? '' });
    expect(whole.ok).toBe(true);
    expect(setField(garage, 'tank.load.insulation.bottom.thickness', '20 mm').ok).toBe(false);
  });
});

describe('fields of the stations', () => {
  test('every field of the schema has a home, but for name, note and format', () => {
    const homeless = fieldRecords.filter((record) => homeOf(record.path) === undefined).map((record) => record.path);
    expect(homeless.toSorted()).toEqual(['name', 'note']);
  });

  test.each(exampleFiles)('%s: at most seven are shown, and none is lost or doubled', (file) => {
    const fields = fieldsOf(documentOf(exampleText(file)));
    const asked = stationNames.flatMap((station) => {
      const { shown, more, expert, inLists } = fieldsOfStation(station, fields);
      expect(shown.length).toBeLessThanOrEqual(mostFields);
      expect(shown.length).toBeGreaterThan(2);
      return [...new Set([...shown, ...more, ...expert, ...inLists])];
    });
    for (const field of fields) {
      if (field.path === 'name' || field.path === 'note') continue;
      expect(asked, field.path).toContain(field);
    }
  });
});

test('file names are plain whatever the design is called', () => {
  expect(fileNameFor('Reef: 2½ m / “Ärger” ')).toMatch(/^[a-z0-9-]+\.json$/);
  expect(fileNameFor('???')).toBe('design.json');
});
