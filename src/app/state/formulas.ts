// The formula records of the engine, fetched from the worker once, when somebody first asks how a number was computed.

import { useEffect, useState } from 'react';
import type { EngineClient } from '../worker/client.ts';
import type { FormulaTexts } from '../worker/messages.ts';
import { useWorkbench } from './context.tsx';

const fetched = new WeakMap<EngineClient, Promise<FormulaTexts>>();
const arrived = new WeakMap<EngineClient, FormulaTexts>();

/** A failed or given up fetch may be tried again. */
function fetchFormulas(engine: EngineClient): Promise<FormulaTexts> {
  const known = fetched.get(engine);
  if (known !== undefined) return known;
  const asked = engine.ask({ kind: 'formulas' }).then((outcome) => {
    if (outcome.outcome === 'answered') {
      arrived.set(engine, outcome.answer);
      return outcome.answer;
    }
    fetched.delete(engine);
    throw new Error(
      outcome.outcome === 'refused' ? outcome.problems.map(({ message }) => message).join(' ') : 'stopped',
    );
  });
  fetched.set(engine, asked);
  return asked;
}

export interface FormulasState {
  readonly formulas: FormulaTexts | undefined;
  readonly problem: string | undefined;
}

/** Asks as soon as they are wanted; those that have arrived before are there at once. */
export function useFormulas(wanted: boolean): FormulasState {
  const { engine } = useWorkbench();
  const [state, setState] = useState<FormulasState>(() => ({
    formulas: wanted ? arrived.get(engine) : undefined,
    problem: undefined,
  }));
  useEffect(() => {
    if (!wanted) return;
    let dropped = false;
    fetchFormulas(engine).then(
      (formulas) => !dropped && setState({ formulas, problem: undefined }),
      (error: Error) => !dropped && setState({ formulas: undefined, problem: error.message }),
    );
    return () => {
      dropped = true;
    };
  }, [engine, wanted]);
  return state;
}
