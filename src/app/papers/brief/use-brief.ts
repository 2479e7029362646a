// The brief of the design that has an answer, asked from the worker; the last one stays while the next is made.

import { useEffect, useMemo, useState } from 'react';
import { serialiseDesign } from '../../../design/index.ts';
import type { UnitView } from '../../../quantities/index.ts';
import { useWorkbench } from '../../state/context.tsx';
import { drawBeforePrinting } from '../../ui/print-page.ts';
import type { BriefAnswer } from '../../worker/brief.ts';
import type { AssessAnswer } from '../../worker/messages.ts';

export interface BriefState {
  readonly brief: BriefAnswer | undefined;
  readonly problem: string | undefined;
  /** Whether other pages than these are being made, of the design, the units or the person that were asked for since. */
  readonly isOld: boolean;
}

interface Asked {
  readonly answer: AssessAnswer | undefined;
  readonly view: UnitView;
  readonly contact: string;
}

interface Made {
  readonly brief: BriefAnswer | undefined;
  readonly problem: string | undefined;
  readonly for: Asked | undefined;
}

export function useBrief(answer: AssessAnswer | undefined, view: UnitView, contact: string): BriefState {
  const { engine, state, document } = useWorkbench();
  const { answered } = state;
  const asked = useMemo((): Asked => ({ answer, view, contact }), [answer, view, contact]);
  const [made, setMade] = useState<Made>({ brief: undefined, problem: undefined, for: undefined });
  useEffect(() => {
    if (asked.answer === undefined || answered === undefined) return;
    let dropped = false;
    const { assessment } = asked.answer;
    const form = { assessment, text: serialiseDesign(answered), date: today(), contact: asked.contact };
    void engine.ask({ kind: 'brief', form, view: asked.view }).then((outcome) => {
      if (dropped || outcome.outcome === 'superseded') return;
      if (outcome.outcome === 'answered') setMade({ brief: outcome.answer, problem: undefined, for: asked });
      else {
        const problem = outcome.problems.map(({ message }) => message).join(' ');
        setMade({ brief: undefined, problem, for: asked });
      }
    });
    return () => {
      dropped = true;
    };
  }, [engine, asked, answered]);
  const isOld = made.for !== asked || answered !== document;
  // Pages of an earlier state are not printed for those of this one.
  useEffect(() => (isOld ? drawBeforePrinting(() => undefined) : undefined), [isOld]);
  return { brief: made.brief, problem: made.problem, isOld };
}

/** Year, month and day where the person is. */
function today(): string {
  const now = new Date();
  const two = (number: number) => String(number).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}
