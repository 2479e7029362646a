// What is left behind "I know more" of stations with many fields: each field under one heading, or beside what explains it; all of them here
// where there is no answer.

import { describe, expect, test } from 'vitest';
import { fieldsOfStation } from '../../src/app/stations/fields.ts';
import { isBesideTheAnswer, subjectsOf } from '../../src/app/stations/subjects.ts';
import { fieldsOf, listsOf, parseDesign } from '../../src/design/index.ts';
import { exampleFiles, exampleText } from './answers.ts';

const station = 'what-leaves';

describe.each(['what-leaves', 'the-machine'] as const)('%s', (name) => {
  test.each(exampleFiles)('%s: nothing is lost and nothing stands twice', (file) => {
    const outcome = parseDesign(exampleText(file));
    if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
    const fields = fieldsOfStation(name, fieldsOf(outcome.document));
    const rest = [...fields.more, ...fields.expert].map(({ path }) => path);
    for (const hasAnswer of [true, false]) {
      const subjects = subjectsOf(name, fields, listsOf(outcome.document), hasAnswer);
      const asked = subjects.flatMap(({ more, expert }) => [...more, ...expert].map(({ path }) => path));
      expect(asked.toSorted()).toEqual(rest.filter((path) => !hasAnswer || !isBesideTheAnswer(name, path)).toSorted());
      for (const { title, more, expert } of subjects)
        expect(more.length + expert.length, title).toBeLessThanOrEqual(20);
    }
  });
});

test('each way to describe a machine is a list of its own, under a heading of its own', () => {
  const outcome = parseDesign(exampleText('frag-tank-cold-garage.json'));
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  const fields = fieldsOfStation('the-machine', fieldsOf(outcome.document));
  const subjects = subjectsOf('the-machine', fields, listsOf(outcome.document), true);
  const withLists = subjects.filter(({ lists }) => lists.length > 0);
  expect(withLists.map(({ lists }) => lists.map(({ path }) => path.split('.').at(-1)))).toEqual([
    ['ratings'],
    ['coefficients'],
    ['tables'],
    ['bench'],
  ]);
});

test('lists stand with their subject, layers with their panel while there is an answer', () => {
  const outcome = parseDesign(exampleText('frag-tank-cold-garage.json'));
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  const fields = fieldsOfStation(station, fieldsOf(outcome.document));
  const lists = (hasAnswer: boolean) =>
    subjectsOf(station, fields, listsOf(outcome.document), hasAnswer).flatMap((subject) =>
      subject.lists.map(({ path }) => `${subject.title}: ${path}`),
    );
  expect(lists(true)).toEqual(['Other vessels and pipes: tank.load.pipes']);
  expect(lists(false)).toContain('Faces and stand: tank.load.faces');
  expect(lists(false)).toContain('Water surface and lid: tank.load.lidLayers');
});

test('a station without headings has none', () => {
  expect(subjectsOf('two-bills', { more: [], expert: [] }, [], true)).toEqual([]);
});
