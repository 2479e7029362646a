// The field that chooses between the kinds of a part. Another kind may need texts the design does not have yet: they are
// asked here, and the design changes only when all of them are there.

import { type ReactNode, useEffect, useRef, useState } from 'react';
import { type FieldRecord, fieldsOfKind, getField, setKind } from '../../design/index.ts';
import { useWorkbench } from '../state/context.tsx';
import { parentOf } from '../state/edits.ts';
import { assumedWords, refusalWords } from './design-field.tsx';
import { ChoiceField } from './field.tsx';
import { LooseField, type LooseTexts } from './loose-field.tsx';

export function KindField({ record }: { record: FieldRecord }): ReactNode {
  const { document: design, edit, state } = useWorkbench();
  const [pending, setPending] = useState<string | undefined>(undefined);
  const [texts, setTexts] = useState<LooseTexts>({});
  const part = parentOf(record.path);
  const whole = useRef<HTMLDivElement>(null);
  // When the fields asked for go away, the focus must not go with them.
  useEffect(() => {
    if (pending === undefined) return;
    const element = whole.current;
    return () => {
      requestAnimationFrame(() => {
        if (document.activeElement === document.body) element?.querySelector('select')?.focus();
      });
    };
  }, [pending]);
  const present = getField(design, record.path) ?? '';
  const assumption = state.answer?.assessment.assumptions.find((candidate) => candidate.path === record.path);

  const choose = (kind: string, given: LooseTexts): string | undefined => {
    if (kind === present) {
      setPending(undefined);
      return undefined;
    }
    const outcome = setKind(design, part, kind, given);
    const missing = outcome.ok ? [] : outcome.problems.filter((problem) => problem.code === 'missing');
    if (!outcome.ok && missing.length > 0) {
      setPending(kind);
      return undefined;
    }
    const problems = edit(outcome, record.path);
    if (problems.length > 0) return refusalWords(problems, design);
    setPending(undefined);
    setTexts({});
    return undefined;
  };

  const needed =
    pending === undefined
      ? []
      : fieldsOfKind(part, pending).filter(
          (field) => !field.optional && field.part === undefined && getField(design, field.path) === undefined,
        );
  return (
    <div className="field-part" ref={whole}>
      <ChoiceField
        label={record.label}
        help={record.help}
        path={record.path}
        assumed={record.optional ? assumedWords(record, assumption, design, state.view) : undefined}
        value={pending ?? present}
        options={(record.choices ?? []).map(({ name, label }) => ({ value: name, label }))}
        commit={(kind) => choose(kind, texts)}
      />
      {pending !== undefined && (
        <div className="field-pending">
          <p className="quiet">The design stays as it is until these are given:</p>
          {needed.map((field) => (
            <LooseField
              key={field.path}
              record={field}
              text={texts[field.path] ?? ''}
              currency={design.prices.currency}
              patient
              give={(text) => {
                const given = { ...texts, [field.path]: text };
                setTexts(given);
                return choose(pending, given);
              }}
            />
          ))}
          <button type="button" className="plain" onClick={() => setPending(undefined)}>
            Leave it as it was
          </button>
        </div>
      )}
    </div>
  );
}
