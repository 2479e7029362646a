// The diagram data of a loop, asked from the worker; the last one stays while the next is made.

import { useLayoutEffect, useState } from 'react';
import type { Diagram, DiagramRequest } from '../../charts/index.ts';
import type { UnitView } from '../../quantities/index.ts';
import { useWorkbench } from './context.tsx';

export interface DiagramState {
  readonly diagram: Diagram | undefined;
  readonly problem: string | undefined;
}

export function useDiagram(request: DiagramRequest, view: UnitView): DiagramState {
  const { engine } = useWorkbench();
  const [state, setState] = useState<DiagramState>({ diagram: undefined, problem: undefined });
  // At once, so that the worker has it before the page is drawn.
  useLayoutEffect(() => {
    let dropped = false;
    void engine.ask({ kind: 'diagram', request, view }).then((outcome) => {
      if (dropped || outcome.outcome === 'superseded') return;
      if (outcome.outcome === 'answered') setState({ diagram: outcome.answer, problem: undefined });
      else setState({ diagram: undefined, problem: outcome.problems.map((problem) => problem.message).join(' ') });
    });
    return () => {
      dropped = true;
    };
  }, [engine, request, view]);
  return state;
}
