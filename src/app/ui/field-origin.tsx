// Where a number of the working began: a field of the design or of the textbook cycle, with a link that leads into that
// field; or an assumption of the models, which has none.

import type { ReactNode } from 'react';
import { fieldRecord, getField } from '../../design/index.ts';
import { assumedWords, assumptionValue } from '../fields/design-field.tsx';
import type { PageName } from '../pages.ts';
import { allCycleFields, cycleFieldPath } from '../papers/cycle-alone/cycle-fields.ts';
import { type CycleTexts, readKept, startTexts } from '../papers/cycle-alone/cycle-texts.ts';
import { useWorkbench } from '../state/context.tsx';
import { homeOf } from '../stations/fields.ts';
import { PageLink } from './page-link.tsx';
import { sentenceStart } from './say.ts';

/** A field: what it is called, where it is asked, what it holds and whether somebody gave it. */
export interface FieldFacts {
  readonly path: string;
  readonly label: string;
  /** Undefined where there is no field to go to. */
  readonly page: PageName | undefined;
  readonly value: string | undefined;
  readonly given: 'typed' | 'assumed' | 'model' | undefined;
}

/** Facts about the field at a path of the open design; undefined for a path nobody knows. */
export function useFieldFacts(): (path: string) => FieldFacts | undefined {
  const { state, document, keeper } = useWorkbench();
  return (path) => {
    const cycle = cycleFieldFacts(path, () => readKept(keeper.read('cycle'))?.first ?? startTexts(state.view));
    if (cycle !== undefined) return cycle;
    const record = fieldRecord(path, document);
    const assumption = state.answer?.assessment.assumptions.find((candidate) => candidate.path === path);
    if (record === undefined) {
      const value = assumption && assumptionValue(assumption, undefined, document, state.view);
      return assumption && { path, label: assumption.label, page: undefined, value, given: 'model' };
    }
    const assumed = assumedWords(record, assumption, document, state.view).replace(/^assumed: /, '');
    const text = getField(document, path) ?? '';
    const choice = record.choices?.find(({ name }) => name === text)?.label;
    const isTyped = text !== '';
    return {
      path,
      label: record.label,
      page: homeOf(path),
      value: isTyped ? (choice ?? text) : assumed,
      given: isTyped ? 'typed' : 'assumed',
    };
  };
}

function cycleFieldFacts(path: string, texts: () => CycleTexts): FieldFacts | undefined {
  const field = allCycleFields.find(({ key }) => cycleFieldPath(key) === path);
  if (field === undefined) return undefined;
  const text = texts().numbers[field.key];
  const given = text === undefined ? 'assumed' : 'typed';
  return { path, label: field.label, page: 'cycle-alone', value: text, given };
}

/** In the column "From" of a step. */
export function FieldOrigin({ path }: { path: string }): ReactNode {
  const facts = useFieldFacts()(path);
  if (facts === undefined) return <code className="path">{path}</code>;
  return (
    <>
      <FieldLink facts={facts} />
      {facts.given !== undefined && <span className="quiet">, {givenWords[facts.given]}</span>}
    </>
  );
}

export const givenWords = { typed: 'typed', assumed: 'assumed', model: 'assumed by the models' } as const;

/** The field's name, leading into the field where there is one. */
export function FieldLink({ facts: { path, label, page } }: { facts: FieldFacts }): ReactNode {
  if (page === undefined) return sentenceStart(label);
  return (
    <PageLink page={page} part={path}>
      {sentenceStart(label)}
    </PageLink>
  );
}
