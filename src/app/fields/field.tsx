// The one field of the workbench. A text field takes any unit and a range, says what it understood, and keeps what was
// typed when it could not be used; a choice field is a native select. Both are named, helped and corrected in words.
// Text that can be used is used almost at once; text that cannot is told only when typing has stopped, because most
// texts are unusable half-way ("26" on the way to "26 °C").

import { type ReactNode, useEffect, useId, useLayoutEffect, useRef, useState } from 'react';
import { StateShape } from '../ui/state-mark.tsx';

interface FieldWords {
  readonly label: string;
  readonly help?: string | undefined;
  /** What is taken while the field is empty: "assumed 10 K (7 to 15)". */
  readonly assumed?: string | undefined;
  /** Path of what it holds, by which a link from elsewhere finds it (see find-field.ts). */
  readonly path?: string | undefined;
}

export interface TextFieldProps extends FieldWords {
  /** What the design holds now; empty where it holds nothing. */
  readonly text: string;
  /** The held text in the units of the view. */
  readonly understood?: string | undefined;
  /** Uses the text, or says why it cannot be used. */
  readonly commit: (text: string) => string | undefined;
  /** What is wrong with the held text itself, where it may be wrong. */
  readonly problem?: string | undefined;
  /** Called when the person leaves the field. */
  readonly left?: (() => void) | undefined;
  /** Used on leaving or Enter only: where the last text given makes the field itself go away. */
  readonly patient?: boolean;
  /** Stands beside the label: what the field is given as. */
  readonly beside?: ReactNode;
  /** Takes several lines, such as a table pasted from a spreadsheet. */
  readonly hasLines?: boolean;
}

/** A pause in typing after which a text that can be used is used [ms]. */
const pause = 30;

/** A pause after which a text that cannot be used is told [ms]. */
const longPause = 700;

export function TextField(props: TextFieldProps): ReactNode {
  const {
    label,
    help,
    assumed,
    path,
    text,
    understood,
    commit,
    left,
    patient = false,
    beside,
    hasLines = false,
  } = props;
  const id = useId();
  const [draft, setDraft] = useState<string | undefined>(undefined);
  const [refusal, setRefusal] = useState<string | undefined>(undefined);
  const timer = useRef<ReturnType<typeof setTimeout>>(undefined);
  const shown = draft ?? text;
  const error = refusal ?? (draft === undefined ? props.problem : undefined);

  // A change of the design from outside replaces what was typed.
  useLayoutEffect(() => {
    if (document.activeElement?.id !== id) {
      setDraft(undefined);
      setRefusal(undefined);
    }
  }, [text]);
  useEffect(() => () => clearTimeout(timer.current), []);

  const attempt = (typed: string) => (typed.trim() === text.trim() ? props.problem : commit(typed));
  const type = (typed: string) => {
    setDraft(typed);
    clearTimeout(timer.current);
    if (patient) return;
    timer.current = setTimeout(() => {
      const problem = attempt(typed);
      if (problem === undefined) return setRefusal(undefined);
      timer.current = setTimeout(() => setRefusal(problem), longPause);
    }, pause);
  };
  const use = (typed: string) => {
    clearTimeout(timer.current);
    setRefusal(attempt(typed));
  };
  const leave = () => {
    if (draft !== undefined) {
      clearTimeout(timer.current);
      const problem = attempt(draft);
      setRefusal(problem);
      if (problem === undefined) setDraft(undefined);
    }
    left?.();
  };
  const Input = hasLines ? 'textarea' : 'input';
  const describedBy = [help && `${id}-help`, `${id}-said`, error && `${id}-error`].filter(Boolean).join(' ');
  return (
    <div className="field">
      {beside === undefined ? (
        <label htmlFor={id}>{label}</label>
      ) : (
        <div className="field-names">
          <label htmlFor={id}>{label}</label>
          {beside}
        </div>
      )}
      {help && (
        <p className="field-help" id={`${id}-help`}>
          {help}
        </p>
      )}
      <Input
        id={id}
        data-field={path}
        {...(hasLines ? { rows: 6, wrap: 'off' } : { type: 'text' })}
        autoComplete="off"
        spellCheck={false}
        value={shown}
        placeholder={assumed}
        aria-invalid={error !== undefined}
        aria-describedby={describedBy}
        onChange={(event) => type(event.target.value)}
        onKeyDown={(event) => event.key === 'Enter' && !hasLines && use(shown)}
        onBlur={leave}
      />
      <p className="field-understood" id={`${id}-said`}>
        {error === undefined && understood !== undefined && (
          <>
            understood: <strong>{understood}</strong>
          </>
        )}
      </p>
      {error !== undefined && (
        <p className="field-error" id={`${id}-error`} role="alert">
          <StateShape kind="stop" />
          <span>{error}</span>
        </p>
      )}
    </div>
  );
}

export interface ChoiceFieldProps extends FieldWords {
  /** Empty where the design holds nothing. */
  readonly value: string;
  readonly options: readonly { readonly value: string; readonly label: string }[];
  readonly commit: (value: string) => string | undefined;
}

export function ChoiceField({ label, help, assumed, path, value, options, commit }: ChoiceFieldProps): ReactNode {
  const id = useId();
  const [error, setError] = useState<string | undefined>(undefined);
  const describedBy = [help && `${id}-help`, error && `${id}-error`].filter(Boolean).join(' ');
  return (
    <div className="field">
      <label htmlFor={id}>{label}</label>
      {help && (
        <p className="field-help" id={`${id}-help`}>
          {help}
        </p>
      )}
      <select
        id={id}
        data-field={path}
        value={value}
        aria-invalid={error !== undefined}
        aria-describedby={describedBy === '' ? undefined : describedBy}
        onChange={(event) => setError(commit(event.target.value))}
      >
        {(assumed !== undefined || value === '') && <option value="">{assumed ?? 'choose'}</option>}
        {options.map((option) => (
          <option key={option.value} value={option.value}>
            {option.label}
          </option>
        ))}
      </select>
      {error !== undefined && (
        <p className="field-error" id={`${id}-error`} role="alert">
          <StateShape kind="stop" />
          <span>{error}</span>
        </p>
      )}
    </div>
  );
}
