// "How much of a board does the last inch earn": one curve at a time where the list has several boards.

import { type ReactNode, useMemo, useState } from 'react';
import type { LastInchCurve, WrappingAnswer } from '../../assess/index.ts';
import { lastInchChart } from '../../charts/index.ts';
import type { UnitView } from '../../quantities/index.ts';
import { Chart } from '../charts/chart.tsx';
import { Choice } from '../ui/choice.tsx';
import { sentenceStart } from '../ui/say.ts';

interface LastInchProps {
  readonly answer: WrappingAnswer;
  /** A sentence for each curve. */
  readonly words: readonly string[];
  readonly view: UnitView;
}

export function LastInch({ answer, words, view }: LastInchProps): ReactNode {
  const [chosen, setChosen] = useState<string | undefined>(undefined);
  const { lastInch: curves } = answer;
  const index = Math.max(
    0,
    curves.findIndex(({ id }) => id === chosen),
  );
  const curve = curves[index];
  if (curve === undefined) return null;
  return (
    <section className="block">
      <h3>How much of a board the last inch earns</h3>
      <p>{words[index]}</p>
      {curves.length > 1 && (
        <Choice
          legend="Board"
          options={curves.map(({ id, name }) => [id, sentenceStart(name)] as const)}
          value={curve.id}
          choose={setChosen}
        />
      )}
      <CurveChart curve={curve} answer={answer} view={view} />
    </section>
  );
}

function CurveChart({
  curve,
  answer: { basis, currency },
  view,
}: {
  readonly curve: LastInchCurve;
  readonly answer: WrappingAnswer;
  readonly view: UnitView;
}): ReactNode {
  const { years } = basis;
  const chart = useMemo(() => lastInchChart(curve, years, currency, view), [curve, years, currency, view]);
  return <Chart chart={chart} />;
}
