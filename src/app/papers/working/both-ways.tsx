// The design reckoned twice, with states of the refrigerant from its equation and from tables of it: for whoever wants to see
// that the fast way is the same, or how fast it is.

import { type ReactNode, useState } from 'react';
import { serialiseDesign } from '../../../design/index.ts';
import type { UnitView } from '../../../quantities/index.ts';
import { useWorkbench } from '../../state/context.tsx';
import type { AssessAnswer } from '../../worker/messages.ts';
import { bothWaysWords } from './both-ways-words.ts';

export interface BothWaysProps {
  readonly answer: AssessAnswer;
  readonly view: UnitView;
}

type Told = { readonly of: AssessAnswer; readonly words: readonly string[] };

export function BothWays({ answer, view }: BothWaysProps): ReactNode {
  const { engine, state } = useWorkbench();
  const { answered } = state;
  const [isAsking, setAsking] = useState(false);
  const [told, setTold] = useState<Told | undefined>(undefined);
  if (answered === undefined) return null;
  const ask = async () => {
    setAsking(true);
    const outcome = await engine.ask({ kind: 'bothWays', text: serialiseDesign(answered), view });
    setAsking(false);
    if (outcome.outcome === 'answered') setTold({ of: answer, words: bothWaysWords(outcome.answer) });
    if (outcome.outcome === 'refused') setTold({ of: answer, words: outcome.problems.map(({ message }) => message) });
  };
  // Words about another design, or the one before the last edit, are not shown.
  const words = told?.of === answer ? told.words : [];
  return (
    <section className="block" aria-labelledby="both-ways-title">
      <h3 id="both-ways-title">The same from tables</h3>
      <p className="quiet">
        Every state of the refrigerant is solved from its equation. Reading the states from a table made of that
        equation is a little less exact, and faster where there are many; this reckons the design both ways and
        compares.
      </p>
      <p>
        <button type="button" className="plain" disabled={isAsking} onClick={() => void ask()}>
          Reckon it both ways
        </button>
      </p>
      <div role="status">
        {words.map((sentence) => (
          <p key={sentence}>{sentence}</p>
        ))}
      </div>
    </section>
  );
}
