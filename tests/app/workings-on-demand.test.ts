// How numbers were computed comes apart from the numbers: the same steps as in a whole assessment, from a worker that has
// answered this design, another one or none; the page takes them in the place of those that were to come, and no other.

import { describe, expect, test } from 'vitest';
import { reduce, startState } from '../../src/app/state/workbench.ts';
import { areToCome, withWorkingsToCome } from '../../src/app/state/workings.ts';
import { hasStep } from '../../src/app/ui/result-link.tsx';
import { createAnswering } from '../../src/app/worker/answering.ts';
import type { EngineRequest } from '../../src/app/worker/messages.ts';
import { assessDesign } from '../../src/assess/index.ts';
import { parseDesign } from '../../src/design/index.ts';
import { exampleFiles, exampleText, replyTo } from './answers.ts';

const reef = exampleText('reef-in-the-study.json');
const frag = exampleText('frag-tank-cold-garage.json');

function workingsIn(text: string) {
  const outcome = assessDesign(text, 'metric');
  if (!outcome.ok) throw new Error('no answer');
  return outcome.assessment.workings;
}

const asked = (text: string): EngineRequest => ({ kind: 'workings', text, view: 'metric' });

describe('the worker', () => {
  test.each([
    ['the same design', reef],
    ['another', frag],
  ])('after %s was answered', async (_what, before) => {
    const answer = createAnswering(() => 0);
    const first = await answer({ id: 1, body: { kind: 'assess', text: before, view: 'us' } });
    expect(first.ok && 'workings' in (first.answer as object as { assessment: object }).assessment).toBe(false);
    const reply = await answer({ id: 2, body: asked(reef) });
    expect(reply).toMatchObject({ kind: 'workings', id: 2, ok: true });
    expect(reply.ok && reply.answer).toEqual(workingsIn(reef));
  });

  test('with nothing answered before', async () => {
    const reply = await createAnswering(() => 0)({ id: 1, body: asked(frag) });
    expect(reply.ok && reply.answer).toEqual(workingsIn(frag));
  });

  test('a text that is no design is refused with its problems', async () => {
    const reply = await createAnswering(() => 0)({ id: 1, body: asked('{}') });
    expect(reply).toMatchObject({ kind: 'workings', ok: false });
    expect(reply.ok ? [] : reply.problems).not.toEqual([]);
  });
});

describe('every number with a name has its step', () => {
  test.each(exampleFiles)('%s', (file) => {
    const outcome = assessDesign(exampleText(file), 'metric');
    if (!outcome.ok) throw new Error('no answer');
    const { workings, ...rest } = outcome.assessment;
    const named = namesIn(rest);
    expect(named.length).toBeGreaterThan(50);
    expect(named.filter((name) => !hasStep(workings, name))).toEqual([]);
  });

  function namesIn(value: unknown): readonly string[] {
    if (typeof value !== 'object' || value === null) return [];
    const own = 'result' in value && typeof value.result === 'string' ? [value.result] : [];
    return [...own, ...Object.values(value).flatMap(namesIn)];
  }
});

describe('the page', () => {
  const parsed = parseDesign(reef);
  if (!parsed.ok) throw new Error('no design');
  const { document } = parsed;
  const reply = replyTo(reef);
  if (reply.kind !== 'assess' || !reply.ok) throw new Error('no answer');
  const answer = withWorkingsToCome(reply.answer);
  const waiting = reduce(startState(document, 'metric', 'light'), { type: 'answered', document, answer });
  const workings = workingsIn(reef);

  test('until they come, every number counts as having steps', () => {
    expect(areToCome(answer.assessment.workings)).toBe(true);
    expect(hasStep(answer.assessment.workings, 'tank.load')).toBe(true);
    expect(areToCome(workings)).toBe(false);
    expect(hasStep([], 'tank.load')).toBe(false);
  });

  test('they take the place of those to come', () => {
    const inPlaceOf = answer.assessment.workings;
    const state = reduce(waiting, { type: 'workingsCame', inPlaceOf, workings });
    expect(state.answer?.assessment).toEqual({ ...answer.assessment, workings });
    expect(hasStep(state.answer?.assessment.workings ?? [], 'tank.load')).toBe(true);
    expect(hasStep(state.answer?.assessment.workings ?? [], 'no.such')).toBe(false);
  });

  test('those of an answer that has been replaced are left out', () => {
    const newer = withWorkingsToCome(reply.answer);
    const replaced = reduce(waiting, { type: 'answered', document, answer: newer });
    const inPlaceOf = answer.assessment.workings;
    expect(reduce(replaced, { type: 'workingsCame', inPlaceOf, workings })).toBe(replaced);
  });
});
