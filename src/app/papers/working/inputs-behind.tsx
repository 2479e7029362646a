// The inputs a chain begins with: each with what it holds, whether somebody gave it, and the way back into its field.

import { type ReactNode, useState } from 'react';
import { pageTitles } from '../../pages.ts';
import { type FieldFacts, FieldLink, givenWords, useFieldFacts } from '../../ui/field-origin.tsx';
import { usePaper } from '../../ui/light.tsx';

export interface InputsBehindProps {
  /** Paths of the design at the beginning of the chain. */
  readonly origins: readonly string[];
}

export function InputsBehind({ origins }: InputsBehindProps): ReactNode {
  const factsOf = useFieldFacts();
  const facts = origins.map(factsOf).filter((each) => each !== undefined);
  const [open, setOpen] = useState(() => matchMedia('(min-width: 62rem)').matches);
  const isPaper = usePaper();
  if (facts.length === 0) return null;
  return (
    <section className="station-inputs" aria-labelledby="station-inputs-title">
      <details open={isPaper || open} onToggle={(event) => !isPaper && setOpen(event.currentTarget.open)}>
        <summary>
          <h3 id="station-inputs-title">What it starts from</h3> <span className="quiet">{facts.length} inputs</span>
        </summary>
        <ul className="inputs-behind">
          {facts.map((each) => (
            <InputBehind key={each.path} facts={each} />
          ))}
        </ul>
      </details>
    </section>
  );
}

function InputBehind({ facts }: { facts: FieldFacts }): ReactNode {
  const { value, given, page } = facts;
  return (
    <li data-path={facts.path}>
      <span>
        <FieldLink facts={facts} />
        {page !== undefined && <span className="quiet">, {pageTitles[page]}</span>}
      </span>
      {value !== undefined && <span className="input-value">{value}</span>}
      {given !== undefined && <span className={`quiet input-${given}`}>{givenWords[given]}</span>}
    </li>
  );
}
