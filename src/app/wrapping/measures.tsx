// The list of measures, in the best order: each as a card, and behind them the ways to add one.

import '../fields/list-fields.css';
import { type ReactNode, useState } from 'react';
import type { WrappingAnswer } from '../../assess/index.ts';
import type { EditResult } from '../../design/index.ts';
import type { UnitView } from '../../quantities/index.ts';
import { AddItem, focusAdd } from '../fields/add-item.tsx';
import { refusalWords } from '../fields/design-field.tsx';
import { useWorkbench } from '../state/context.tsx';
import {
  hasOwnMeasures,
  inOrder,
  measuresPath,
  placeOf,
  withMeasure,
  withOffered,
  withoutMeasure,
  withUsual,
} from './list-edits.ts';
import { MeasureCard } from './measure-card.tsx';
import { UsualMeasures } from './usual-measures.tsx';

interface MeasuresProps {
  readonly answer: WrappingAnswer;
  readonly view: UnitView;
}

export function Measures({ answer, view }: MeasuresProps): ReactNode {
  const { document, edit } = useWorkbench();
  const [opened, setOpened] = useState<number | undefined>(undefined);
  const [problem, setProblem] = useState<string | undefined>(undefined);
  const isOwn = hasOwnMeasures(document);
  const apply = (outcome: EditResult): boolean => {
    const problems = edit(outcome, measuresPath);
    setProblem(problems.length === 0 ? undefined : refusalWords(problems, document));
    return problems.length === 0;
  };
  const change = (id: string) => {
    const place = placeOf(document, answer, id);
    if (isOwn) return setOpened(opened === place ? undefined : place);
    if (apply(withOffered(document, answer))) setOpened(place);
  };
  const remove = (id: string) => {
    const outcome = withoutMeasure(document, answer, id);
    if (outcome === undefined || !apply(outcome)) return;
    setOpened(undefined);
    focusAdd(measuresPath);
  };
  const measures = inOrder(answer);
  return (
    <section className="block">
      <h3 id="measures-title" tabIndex={-1}>
        Each measure, the next best one in turn
      </h3>
      <p className="quiet">
        {isOwn
          ? 'This is your list. Amounts are what each adds to those before it.'
          : 'These are measures that are usual and fit this tank, at assumed prices. Change one, remove one or add one, and the list is your own. Amounts are what each adds to those before it.'}
      </p>
      {measures.length > 0 && (
        <div className="bills">
          {measures.map((measure) => (
            <MeasureCard
              key={measure.id}
              measure={measure}
              answer={answer}
              view={view}
              isOpen={opened !== undefined && opened === placeOf(document, answer, measure.id)}
              change={() => change(measure.id)}
              remove={() => remove(measure.id)}
            />
          ))}
        </div>
      )}
      {problem !== undefined && (
        <p className="field-error" role="alert">
          {problem}
        </p>
      )}
      <div className="measure-adding">
        <AddItem list={measuresPath} words="Add a measure" add={(item) => withMeasure(document, answer, item)} />
        {isOwn && <UsualMeasures view={view} add={(item) => apply(withMeasure(document, answer, item))} />}
        {isOwn && (
          <p>
            <button type="button" className="plain" onClick={() => apply(withUsual(document))}>
              Take the usual measures in place of this list
            </button>
          </p>
        )}
      </div>
    </section>
  );
}
