// The field that chooses between the kinds of a part. Another kind may need texts the design does not have yet: they are
// asked here, and the design changes only when all of them are there. A part that is there or not has buttons instead.

import { type ReactNode, useEffect, useRef, useState } from 'react';
import { type FieldRecord, fieldsOfKind, getField, setKind } from '../../design/index.ts';
import { useWorkbench } from '../state/context.tsx';
import { parentOf } from '../state/edits.ts';
import { insideSentence } from '../ui/say.ts';
import { begunKind, firstItemFields, withFirstItem } from './begun-kind.ts';
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
        if (document.activeElement === document.body) {
          element?.querySelector<HTMLElement>('[data-field]')?.focus();
        }
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
    const begun = begunKind(design, part, kind, state.answer?.assessment.tank);
    const outcome = setKind(design, part, kind, { ...begun, ...withFirstItem(part, kind, given) });
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

  const added = addedKind(record);
  return (
    <div className="field-part" ref={whole}>
      {added === undefined ? (
        <ChoiceField
          label={record.label}
          help={record.help}
          path={record.path}
          assumed={record.optional ? assumedWords(record, assumption, design, state.view) : undefined}
          value={pending ?? present}
          options={(record.choices ?? []).map(({ name, label }) => ({ value: name, label }))}
          commit={(kind) => choose(kind, texts)}
        />
      ) : (
        <PartButton
          record={record}
          isThere={present === added}
          isPending={pending !== undefined}
          add={() => choose(added, texts)}
          remove={() => choose('', texts)}
        />
      )}
      {pending !== undefined && (
        <Pending
          kind={pending}
          part={part}
          texts={texts}
          give={(given) => {
            setTexts(given);
            return choose(pending, given);
          }}
          leave={() => setPending(undefined)}
        />
      )}
    </div>
  );
}

/** The kind that adds the part, where the only other one is that there is none. */
function addedKind({ optional, choices = [] }: FieldRecord): string | undefined {
  const isOptionalPart = optional && choices.length === 2 && choices.some(({ name }) => name === 'none');
  return isOptionalPart ? choices.find(({ name }) => name !== 'none')?.name : undefined;
}

interface PartButtonProps {
  readonly record: FieldRecord;
  readonly isThere: boolean;
  readonly isPending: boolean;
  readonly add: () => void;
  readonly remove: () => void;
}

function PartButton({ record, isThere, isPending, add, remove }: PartButtonProps): ReactNode {
  const name = insideSentence(record.label);
  return (
    <>
      {!isThere && <p className="field-help">{record.help}</p>}
      <button
        type="button"
        className="plain"
        data-field={record.path}
        disabled={isPending}
        onClick={isThere ? remove : add}
      >
        {isThere ? `Remove the ${name}` : `Add ${/^[aeiou]/.test(name) ? 'an' : 'a'} ${name}`}
      </button>
    </>
  );
}

interface PendingProps {
  readonly kind: string;
  readonly part: string;
  readonly texts: LooseTexts;
  readonly give: (texts: LooseTexts) => string | undefined;
  readonly leave: () => void;
}

/** What another kind needs and the design does not have. */
function Pending({ kind, part, texts, give, leave }: PendingProps): ReactNode {
  const { document: design } = useWorkbench();
  const needed = [...fieldsOfKind(part, kind), ...firstItemFields(part, kind)].filter(
    (field) => !field.optional && field.part === undefined && getField(design, field.path) === undefined,
  );
  return (
    <div className="field-pending">
      <p className="quiet">The design stays as it is until these are given:</p>
      {needed.map((field) => (
        <LooseField
          key={field.path}
          record={field}
          text={texts[field.path] ?? ''}
          currency={design.prices.currency}
          patient
          give={(text) => give({ ...texts, [field.path]: text })}
        />
      ))}
      <button type="button" className="plain" onClick={leave}>
        Leave it as it was
      </button>
    </div>
  );
}
