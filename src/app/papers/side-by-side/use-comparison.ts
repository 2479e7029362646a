// The comparison of the chosen fluids, asked from the worker; the last answer stays while the next is made.

import { useEffect, useState } from 'react';
import { type DesignDocument, serialiseDesign } from '../../../design/index.ts';
import type { UnitView } from '../../../quantities/index.ts';
import { useWorkbench } from '../../state/context.tsx';
import type { CompareAnswer } from '../../worker/compare.ts';
import { type FluidChoice, fewestFluids } from './fluid-choice.ts';

export interface ComparisonState {
  readonly answer: CompareAnswer | undefined;
  readonly problems: readonly string[];
  /** Whether the answer is not of the choice as it stands, and none is on its way. */
  readonly isOld: boolean;
}

export function useComparison(document: DesignDocument, choice: FluidChoice, view: UnitView): ComparisonState {
  const { engine } = useWorkbench();
  const [state, setState] = useState<Omit<ComparisonState, 'isOld'>>({ answer: undefined, problems: [] });
  const { basis } = choice;
  const names = choice.fluids.join(',');
  const isEnough = choice.fluids.length >= fewestFluids;
  useEffect(() => {
    if (!isEnough) return;
    let dropped = false;
    const form = { text: serialiseDesign(document), fluids: names.split(','), basis };
    void engine.ask({ kind: 'compare', form, view }).then((outcome) => {
      if (dropped || outcome.outcome === 'superseded') return;
      if (outcome.outcome === 'answered') setState({ answer: outcome.answer, problems: [] });
      else setState(({ answer }) => ({ answer, problems: outcome.problems.map(({ message }) => message) }));
    });
    return () => {
      dropped = true;
    };
  }, [engine, document, names, basis, view, isEnough]);
  return { ...state, isOld: !isEnough || state.problems.length > 0 };
}
