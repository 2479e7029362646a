// How the numbers of the answered design were computed, fetched from the worker when somebody first asks of that answer. Until
// then every number counts as having steps behind it, as indeed each has.

import { useEffect, useState } from 'react';
import { serialiseDesign } from '../../design/index.ts';
import type { WorkingStep } from '../../quantities/index.ts';
import type { AssessAnswer, BareAnswer } from '../worker/messages.ts';
import { useWorkbench } from './context.tsx';

type Workings = readonly WorkingStep[];

const toCome = new WeakSet<Workings>();

/** Whether these steps stand for those that are fetched when they are asked for. */
export function areToCome(workings: Workings): boolean {
  return toCome.has(workings);
}

/** The answer with its workings still to come. */
export function withWorkingsToCome(answer: BareAnswer): AssessAnswer {
  const workings: Workings = [];
  toCome.add(workings);
  return { ...answer, assessment: { ...answer.assessment, workings } };
}

export interface WorkingsState {
  /** Undefined while they are fetched, and where they are not to be had. */
  readonly workings: Workings | undefined;
  readonly problem: string | undefined;
}

/** The steps, fetched first where they are to come. Undefined asks for none. */
export function useWorkings(workings: Workings | undefined): WorkingsState {
  const { engine, state, dispatch } = useWorkbench();
  const { answer, answered, view } = state;
  const [problem, setProblem] = useState<string | undefined>(undefined);
  const wanted = workings !== undefined && areToCome(workings) ? workings : undefined;
  useEffect(() => {
    setProblem(undefined);
    if (wanted === undefined || answered === undefined || answer?.assessment.workings !== wanted) return;
    let dropped = false;
    void engine.ask({ kind: 'workings', text: serialiseDesign(answered), view }).then((outcome) => {
      if (outcome.outcome === 'answered') {
        dispatch({ type: 'workingsCame', inPlaceOf: wanted, workings: outcome.answer });
      } else if (!dropped && outcome.outcome === 'refused') {
        setProblem(outcome.problems.map(({ message }) => message).join(' '));
      }
    });
    return () => {
      dropped = true;
    };
  }, [engine, wanted, answered, answer, view, dispatch]);
  return { workings: wanted === undefined ? workings : undefined, problem };
}
