// A field whose text is not in the design yet: checked against its record, kept by whoever asks for it.

import type { ReactNode } from 'react';
import { type FieldRecord, quantityFieldProblem, sayProblem } from '../../design/index.ts';
import { quantityRecord, readQuantity, type UnitView } from '../../quantities/index.ts';
import { useWorkbench } from '../state/context.tsx';
import { ChoiceField, TextField } from './field.tsx';
import { understood } from './understood.ts';

/** Texts by path. */
export type LooseTexts = Readonly<Record<string, string>>;

export interface LooseFieldProps {
  readonly record: FieldRecord;
  readonly text: string;
  readonly currency: string;
  /** True where the field may stay empty. */
  readonly mayStayEmpty?: boolean;
  /** Given on leaving or Enter only. */
  readonly patient?: boolean;
  /** Takes the text; answers what is wrong with it beyond its own record. */
  readonly give: (text: string) => string | undefined;
}

export function LooseField({
  record,
  text,
  currency,
  mayStayEmpty = false,
  patient = false,
  give,
}: LooseFieldProps): ReactNode {
  const { state } = useWorkbench();
  const label = mayStayEmpty ? `${record.label} (may stay open)` : record.label;
  if (record.choices !== undefined) {
    return (
      <ChoiceField
        label={label}
        help={record.help}
        path={record.path}
        assumed={mayStayEmpty ? 'not known' : undefined}
        value={text}
        options={record.choices.map((choice) => ({ value: choice.name, label: choice.label }))}
        commit={give}
      />
    );
  }
  return (
    <TextField
      label={label}
      help={record.help}
      path={record.path}
      assumed={exampleOf(record, state.view)}
      text={text}
      understood={understood(record, text, currency === '' ? {} : { currency }, state.view)}
      problem={textProblem(record, text, currency)}
      patient={patient}
      hasLines={record.lines ?? false}
      commit={(typed) => {
        const beyond = give(typed);
        return textProblem(record, typed, currency) ?? beyond;
      }}
    />
  );
}

/** What is wrong with a text for this field, in words; undefined where it is empty or fine. */
export function textProblem(record: FieldRecord, text: string, currency: string): string | undefined {
  const { quantity, minimum, maximum } = record;
  if (text.trim() === '' || quantity === undefined || minimum === undefined || maximum === undefined) return undefined;
  const read = readQuantity(text, quantity, currency === '' ? {} : { currency });
  const problem = read.ok ? quantityFieldProblem(text, { quantity, minimum, maximum }) : read.problem;
  return problem === undefined ? undefined : sayProblem({ path: record.label, ...problem });
}

/** The example in the units of the view first. */
function exampleOf({ quantity }: FieldRecord, view: UnitView): string | undefined {
  if (quantity === undefined) return undefined;
  const { examples } = quantityRecord(quantity);
  return `such as ${(view === 'us' ? examples.toReversed() : examples).join(' or ')}`;
}
