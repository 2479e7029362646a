// A field of the design, made from its record: what it is called, what it takes, what is assumed while it is empty.

import { lazy, type ReactNode, Suspense } from 'react';
import type { AssumptionLeft } from '../../assess/index.ts';
import {
  type DesignDocument,
  type DesignProblem,
  type FieldRecord,
  fieldRecord,
  getField,
  sayProblem,
  setField,
} from '../../design/index.ts';
import { isQuantityName, type QuantityContext, sayRange, type UnitView } from '../../quantities/index.ts';
import { useWorkbench } from '../state/context.tsx';
import { insideSentence } from '../ui/say.ts';
import { ChoiceField, TextField } from './field.tsx';
import { understood } from './understood.ts';

// The first page asks for no refrigerant; the station that does brings the field along, so that it is there at once.
const RefrigerantField = lazy(() =>
  import('../fluids/refrigerant-field.tsx').then((part) => ({ default: part.RefrigerantField })),
);

export function DesignField({ record }: { record: FieldRecord }): ReactNode {
  const { state, dispatch, document, edit } = useWorkbench();
  const text = getField(document, record.path) ?? '';
  const assumption = state.answer?.assessment.assumptions.find((candidate) => candidate.path === record.path);
  const assumed = record.optional
    ? assumedWords(record, assumption, document, state.view)
    : isLayer(record)
      ? 'none'
      : undefined;
  const commit = (typed: string): string | undefined => {
    const problems = edit(setField(document, record.path, typed), record.path);
    return problems.length === 0 ? undefined : refusalWords(problems, document);
  };
  if (record.path === 'machine.refrigerant' || record.path === 'machine.compressor.madeFor') {
    return (
      <Suspense>
        <RefrigerantField
          label={record.label}
          help={record.help}
          path={record.path}
          value={text}
          assumed={assumed}
          offered={(record.choices ?? []).map(({ name }) => name)}
          commit={commit}
        />
      </Suspense>
    );
  }
  if (record.choices !== undefined) {
    return (
      <ChoiceField
        label={record.label}
        help={record.help}
        assumed={assumed}
        path={record.path}
        value={text}
        options={record.choices.map(({ name, label }) => ({ value: name, label }))}
        commit={commit}
      />
    );
  }
  return (
    <TextField
      label={record.label}
      help={record.help}
      assumed={assumed}
      path={record.path}
      text={text}
      hasLines={record.lines ?? false}
      understood={understood(record, text, contextOf(document), state.view)}
      commit={commit}
      left={() => dispatch({ type: 'editEnded' })}
    />
  );
}

/** What is wrong, each field by the name it has on the page. */
export function refusalWords(problems: readonly DesignProblem[], document: DesignDocument): string {
  const named = problems.map((problem) => {
    const label = nameOnPage(problem.path, document);
    return sayProblem(label === undefined ? problem : { ...problem, path: label });
  });
  return `${named.join(' ')} The design is unchanged.`;
}

/** A refused item is not in the document, yet its fields have names; a part of several kinds has that of its choice. */
function nameOnPage(path: string, document: DesignDocument): string | undefined {
  const record = fieldRecord(path, document) ?? fieldRecord(path) ?? fieldRecord(`${path}.kind`);
  return record?.label;
}

/** A layer of insulation goes out whole when either of its two fields is emptied. */
function isLayer({ path }: FieldRecord): boolean {
  return path.includes('.insulation.');
}

function contextOf(document: DesignDocument): QuantityContext {
  return { currency: document.prices.currency };
}

export function assumedWords(
  record: FieldRecord,
  assumption: AssumptionLeft | undefined,
  document: DesignDocument,
  view: UnitView,
): string {
  if (assumption !== undefined) return `assumed: ${assumptionValue(assumption, record, document, view)}`;
  if (record.default === undefined || isLeftOpen(record.default)) return 'not given';
  return `assumed: ${'text' in record.default ? choiceLabel(record, record.default.text) : record.default.rule}`;
}

/** Nothing stands in for it while it is not given. */
function isLeftOpen(standIn: NonNullable<FieldRecord['default']>): boolean {
  return 'rule' in standIn && standIn.rule === 'nothing';
}

export function assumptionValue(
  { value, quantity }: AssumptionLeft,
  record: FieldRecord | undefined,
  document: DesignDocument,
  view: UnitView,
): string {
  if (typeof value === 'string') return choiceLabel(record, value);
  if (!isQuantityName(quantity)) return `${value.low} to ${value.high}`;
  return sayRange(value, quantity, view, contextOf(document));
}

function choiceLabel(record: FieldRecord | undefined, name: string): string {
  const label = record?.choices?.find((choice) => choice.name === name)?.label ?? name;
  return record?.path === 'room.coldestMonth' ? label : insideSentence(label);
}
