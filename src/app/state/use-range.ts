// The range of one result of the answered design, asked from the worker: its band and which inputs make it.

import { useEffect, useState } from 'react';
import type { Assessment, ResultRange } from '../../assess/index.ts';
import { useWorkbench } from './context.tsx';

/**
 * Undefined until it has arrived, and for a result without a band.
 * @param result      name of the result; undefined asks nothing
 * @param assessment  the answer it belongs to: a new one is asked for anew
 */
export function useRange(result: string | undefined, assessment: Assessment): ResultRange | undefined {
  const { engine } = useWorkbench();
  const [range, setRange] = useState<ResultRange | undefined>(undefined);
  // Another answer has other ranges.
  useEffect(() => {
    if (result === undefined) return;
    let dropped = false;
    void engine.ask({ kind: 'range', result }).then((outcome) => {
      if (!dropped && outcome.outcome === 'answered') setRange(outcome.answer);
    });
    return () => {
      dropped = true;
    };
  }, [engine, result, assessment]);
  return range;
}
