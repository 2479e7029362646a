// A study of a design, asked from the worker once the verdict on that design is there, so that the verdict never waits for it;
// the last answer stays while the next is made.

import { useEffect, useRef, useState } from 'react';
import { type DesignDocument, serialiseDesign } from '../../design/index.ts';
import type { UnitView } from '../../quantities/index.ts';
import type { EngineAnswers, EngineRequest } from '../worker/messages.ts';
import { useWorkbench } from './context.tsx';

/** What is asked with no more than the text of a design and the view. */
export type StudyKind = 'wrapping' | 'machine';

export interface StudyState<Reply> {
  readonly reply: Reply | undefined;
  readonly problems: readonly string[];
  /** Whether the reply is not of the design as it stands, or not in the units of the view. */
  readonly isOld: boolean;
}

interface Known<Reply> {
  readonly reply: Reply | undefined;
  readonly problems: readonly string[];
  readonly of: DesignDocument | undefined;
  readonly in: UnitView;
}

/** A pause between edits after which the study is made anew: until then the next edit's verdict comes first [ms]. */
const pause = 300;

/** The study of a document; without a document nothing is asked. */
export function useStudy<Kind extends StudyKind>(
  kind: Kind,
  document: DesignDocument | undefined,
  view: UnitView,
): StudyState<EngineAnswers[Kind]> {
  const { engine, state } = useWorkbench();
  const [known, setKnown] = useState<Known<EngineAnswers[Kind]>>({
    reply: undefined,
    problems: [],
    of: undefined,
    in: view,
  });
  const isFirst = useRef(true);
  const isVerdictIn = state.answered === state.designs.present || state.refusal !== undefined;
  useEffect(() => {
    if (document === undefined || !isVerdictIn) return;
    let dropped = false;
    const request = { kind, text: serialiseDesign(document), view } as Extract<EngineRequest, { kind: Kind }>;
    const ask = () =>
      void engine.ask<Kind>(request).then((outcome) => {
        if (dropped || outcome.outcome === 'superseded') return;
        if (outcome.outcome === 'answered') setKnown({ reply: outcome.answer, problems: [], of: document, in: view });
        else {
          const problems = outcome.problems.map(({ message }) => message);
          setKnown(({ reply }) => ({ reply, problems, of: document, in: view }));
        }
      });
    const wait = setTimeout(ask, isFirst.current ? 0 : pause);
    isFirst.current = false;
    return () => {
      dropped = true;
      clearTimeout(wait);
    };
  }, [kind, engine, document, view, isVerdictIn]);
  const { reply, problems } = known;
  return { reply, problems, isOld: known.of !== document || known.in !== view || problems.length > 0 };
}
