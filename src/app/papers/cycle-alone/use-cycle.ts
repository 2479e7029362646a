// A textbook cycle asked from the worker as its fields change; the last one stays while the next is made or refused.

import { useEffect, useMemo, useState } from 'react';
import { isobarsFor, isothermsFor } from '../../../charts/index.ts';
import type { UnitView } from '../../../quantities/index.ts';
import { useWorkbench } from '../../state/context.tsx';
import type { CycleAnswer, CycleForm } from '../../worker/cycle.ts';
import type { CycleOffer } from '../../worker/cycle-offer.ts';
import { type CycleTexts, cycleRequest } from './cycle-texts.ts';

export interface CycleState {
  readonly answer: CycleAnswer | undefined;
  /** Why there is no cycle for the fields as they stand. */
  readonly problems: readonly string[];
  /** Temperatures that the fluid could boil and condense at, where those of the fields are not. */
  readonly offer: CycleOffer | undefined;
}

const nothing: CycleState = { answer: undefined, problems: [], offer: undefined };

/** The cycle of the texts; none where there are no texts, because this cycle is not wanted. */
export function useCycle(kind: 'cycle' | 'secondCycle', texts: CycleTexts | undefined, view: UnitView): CycleState {
  const { engine } = useWorkbench();
  const [state, setState] = useState<CycleState>(nothing);
  const form = useMemo(() => texts && formOf(texts, view), [texts, view]);
  useEffect(() => {
    if (form === undefined) return setState(nothing);
    let dropped = false;
    void engine.ask({ kind, form, view } as { kind: 'cycle'; form: CycleForm; view: UnitView }).then((outcome) => {
      if (dropped || outcome.outcome === 'superseded') return;
      if (outcome.outcome === 'answered') return setState({ ...nothing, answer: outcome.answer });
      const problems = outcome.problems.map(({ message }) => message);
      const offer = outcome.problems.find((problem) => problem.offer !== undefined)?.offer;
      setState(({ answer }) => ({ answer, problems, offer }));
    });
    return () => {
      dropped = true;
    };
  }, [engine, form, kind, view]);
  return state;
}

function formOf(texts: CycleTexts, view: UnitView): CycleForm | undefined {
  const request = cycleRequest(texts);
  return request && { request, isotherms: isothermsFor(view), isobars: isobarsFor(view) };
}
