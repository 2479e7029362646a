// How the numbers of the comparison were computed, fluid by fluid.

import type { ReactNode } from 'react';
import { HowComputed } from '../../ui/how-computed.tsx';
import { sentenceStart } from '../../ui/say.ts';
import type { CompareAnswer } from '../../worker/compare.ts';

export function ComparisonWorkings({ answer }: { answer: CompareAnswer }): ReactNode {
  const { rows, columns } = answer.comparison;
  return (
    <section className="block comparison-workings">
      <h3>How the numbers were computed</h3>
      {columns.map(({ fluid, cycle, workings }) =>
        cycle.ok ? (
          <details key={fluid}>
            <summary>{fluid}</summary>
            <div className="hows">
              {rows.map(({ name, label }) => (
                <HowComputed
                  key={name}
                  workings={workings}
                  result={cycle.values[name]?.result ?? name}
                  of={`${label} of ${fluid}`}
                  words={sentenceStart(label)}
                  isElsewhere
                />
              ))}
            </div>
          </details>
        ) : null,
      )}
    </section>
  );
}
