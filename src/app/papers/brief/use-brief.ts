// The brief of the design that has an answer, asked from the worker; the last one stays while the next is made.

import { useEffect, useState } from 'react';
import { serialiseDesign } from '../../../design/index.ts';
import type { UnitView } from '../../../quantities/index.ts';
import { useWorkbench } from '../../state/context.tsx';
import type { BriefAnswer } from '../../worker/brief.ts';
import type { AssessAnswer } from '../../worker/messages.ts';

export interface BriefState {
  readonly brief: BriefAnswer | undefined;
  readonly problem: string | undefined;
}

export function useBrief(answer: AssessAnswer | undefined, view: UnitView, contact: string): BriefState {
  const { engine, state } = useWorkbench();
  const { answered } = state;
  const [made, setMade] = useState<BriefState>({ brief: undefined, problem: undefined });
  useEffect(() => {
    if (answer === undefined || answered === undefined) return;
    let dropped = false;
    const form = { assessment: answer.assessment, text: serialiseDesign(answered), date: today(), contact };
    void engine.ask({ kind: 'brief', form, view }).then((outcome) => {
      if (dropped || outcome.outcome === 'superseded') return;
      if (outcome.outcome === 'answered') setMade({ brief: outcome.answer, problem: undefined });
      else setMade({ brief: undefined, problem: outcome.problems.map(({ message }) => message).join(' ') });
    });
    return () => {
      dropped = true;
    };
  }, [engine, answer, answered, view, contact]);
  return made;
}

/** Year, month and day where the person is. */
function today(): string {
  const now = new Date();
  const two = (number: number) => String(number).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}
