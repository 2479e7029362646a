// The range of a result: what each uncertain input alone does to it, the most telling first.

import { type ReactNode, useEffect, useState } from 'react';
import type { ResultRange } from '../../../assess/index.ts';
import { type Band, isQuantityName, sayBand, sayRange, type UnitView } from '../../../quantities/index.ts';
import { useWorkbench } from '../../state/context.tsx';
import { type BarRow, Bars } from '../../ui/bars.tsx';
import { say, sentenceStart } from '../../ui/say.ts';
import type { AssessAnswer } from '../../worker/messages.ts';

export interface ItsRangeProps {
  readonly answer: AssessAnswer;
  readonly result: string;
  readonly view: UnitView;
}

/** Inputs that explain less than this share of the range, and more inputs than this, are not listed. */
const smallest = 0.005;
const most = 6;

export function ItsRange({ answer, result, view }: ItsRangeProps): ReactNode {
  const range = useRange(answer, result);
  if (range === undefined || !isQuantityName(range.quantity) || range.band.low === range.band.high) return null;
  const { band, quantity, moves } = range;
  const context = quantity === 'money' ? { currency: answer.assessment.currency } : {};
  const told = moves.filter(({ share }) => share >= smallest).slice(0, most);
  const rows = told.map(({ path, label, atLow, atHigh, share, measure }): BarRow => {
    const ends: Band = {
      low: Math.min(atLow, atHigh),
      likely: (atLow + atHigh) / 2,
      high: Math.max(atLow, atHigh),
    };
    return {
      key: path,
      label: sentenceStart(label),
      note: measure,
      band: { low: share, likely: share, high: share },
      likely: say(share, 'fraction', view),
      range: sayRange(ends, quantity, view, context),
      look: 'ink',
    };
  });
  return (
    <section className="block" aria-labelledby="its-range-title">
      <h3 id="its-range-title">Its range</h3>
      <p className="quiet">
        {sentenceStart(sayBand(band, quantity, view, context))}. The steps are of the likely value; each uncertain
        input, varied alone between its ends, moves the result as below, and the moves together make the range.
      </p>
      {rows.length > 0 && (
        <Bars
          caption="The result with this input alone at its ends."
          heads={['Input, and how to find out', 'Share of the range', 'Share', 'Result runs from']}
          rows={rows}
        />
      )}
    </section>
  );
}

function useRange(answer: AssessAnswer, result: string): ResultRange | undefined {
  const { engine } = useWorkbench();
  const [range, setRange] = useState<ResultRange | undefined>(undefined);
  // A new answer has new ranges.
  useEffect(() => {
    let dropped = false;
    setRange(undefined);
    void engine.ask({ kind: 'range', result }).then((outcome) => {
      if (!dropped && outcome.outcome === 'answered') setRange(outcome.answer);
    });
    return () => {
      dropped = true;
    };
  }, [engine, result, answer]);
  return range;
}
