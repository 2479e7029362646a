// The field that chooses one refrigerant: a short list of those that people meet, and all of them one step away. One that is
// for study only says so beside it.

import { lazy, type ReactNode, Suspense, useId, useRef, useState } from 'react';
import { StateMark, StateShape } from '../ui/state-mark.tsx';
import { shortGroups, studyOnlyWords } from './fluid-groups.ts';

// Loaded when somebody first looks for another fluid than the usual ones.
const FluidFinder = lazy(() => import('./fluid-finder.tsx').then((part) => ({ default: part.FluidFinder })));

export interface RefrigerantFieldProps {
  readonly label: string;
  readonly help?: string | undefined;
  /** Path of what it holds, by which a link from elsewhere finds it. */
  readonly path: string;
  /** Empty where the design holds none. */
  readonly value: string;
  /** What is taken while it holds none; absent where it cannot stay empty. */
  readonly assumed?: string | undefined;
  /** Names that may be chosen. */
  readonly offered: readonly string[];
  /** Uses the name, or says why it cannot be used. */
  readonly commit: (name: string) => string | undefined;
}

export function RefrigerantField(props: RefrigerantFieldProps): ReactNode {
  const { label, help, path, value, assumed, offered, commit } = props;
  const id = useId();
  const [error, setError] = useState<string | undefined>(undefined);
  const [isOpen, setOpen] = useState(false);
  const select = useRef<HTMLSelectElement>(null);
  const opener = useRef<HTMLButtonElement>(null);
  const groups = shortGroups(offered, [value]);
  const isShort = groups.flatMap(({ fluids }) => fluids).length === offered.length;
  const study = studyOnlyWords(value);
  const take = (name: string) => {
    setError(commit(name));
    setOpen(false);
    select.current?.focus();
  };
  const describedBy = [help && `${id}-help`, study && `${id}-study`, error && `${id}-error`].filter(Boolean).join(' ');
  return (
    <div className="field">
      <div className="field-names">
        <label htmlFor={id}>{label}</label>
        {!isShort && (
          <button
            ref={opener}
            type="button"
            className="linkish field-instead"
            aria-expanded={isOpen}
            aria-controls={isOpen ? `${id}-all` : undefined}
            onClick={() => setOpen(!isOpen)}
          >
            {isOpen ? 'only the usual ones' : `all ${offered.length} fluids`}
          </button>
        )}
      </div>
      {help && (
        <p className="field-help" id={`${id}-help`}>
          {help}
        </p>
      )}
      <select
        ref={select}
        id={id}
        data-field={path}
        value={value}
        aria-invalid={error !== undefined}
        aria-describedby={describedBy === '' ? undefined : describedBy}
        onChange={(event) => setError(commit(event.target.value))}
      >
        {assumed !== undefined && <option value="">{assumed}</option>}
        {!offered.includes(value) && !(value === '' && assumed !== undefined) && (
          <option value={value}>{value === '' ? 'choose' : value}</option>
        )}
        {groups.map(({ title, fluids }) => (
          <optgroup key={title} label={title}>
            {fluids.map((fluid) => (
              <option key={fluid.name} value={fluid.name}>
                {fluid.label}
              </option>
            ))}
          </optgroup>
        ))}
      </select>
      {study !== undefined && (
        <p className="fluid-study" id={`${id}-study`}>
          <StateMark kind="look" word={study} />
        </p>
      )}
      {error !== undefined && (
        <p className="field-error" id={`${id}-error`} role="alert">
          <StateShape kind="stop" />
          <span>{error}</span>
        </p>
      )}
      {isOpen && (
        // biome-ignore lint/a11y/noStaticElementInteractions: Escape leaves what the button opened, wherever the focus is in it
        <div
          id={`${id}-all`}
          onKeyDown={(event) => {
            if (event.key !== 'Escape') return;
            setOpen(false);
            opener.current?.focus();
          }}
        >
          <Suspense>
            <FluidFinder
              offered={offered}
              pick={take}
              item={({ name, label: words, usedIn }) => (
                <button
                  type="button"
                  className="fluid-item"
                  aria-current={name === value ? 'true' : undefined}
                  onClick={() => take(name)}
                >
                  <span>{words}</span>
                  <span className="quiet">{usedIn}</span>
                </button>
              )}
            />
          </Suspense>
        </div>
      )}
    </div>
  );
}
