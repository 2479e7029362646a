// Side by side: two to five refrigerants in the machine of the open design, on a basis that is said: law and safety first,
// then pressures, lift, heat and electricity with their ranges, and the loops over one another. Nothing is ranked.

import './side-by-side.css';
import { type ReactNode, useMemo } from 'react';
import { reducedLoopsChart } from '../../../charts/index.ts';
import type { UnitView } from '../../../quantities/index.ts';
import { Chart } from '../../charts/chart.tsx';
import { useWorkbench } from '../../state/context.tsx';
import { Termed } from '../../terms/termed.tsx';
import type { CompareAnswer } from '../../worker/compare.ts';
import { Paper, type PaperProps } from '../paper.tsx';
import { ComparisonChoices } from './comparison-choices.tsx';
import { ComparisonTable } from './comparison-table.tsx';
import { ComparisonWorkings } from './comparison-workings.tsx';
import { fewestFluids } from './fluid-choice.ts';
import { useComparison } from './use-comparison.ts';
import { useFluidChoice } from './use-fluid-choice.ts';
import { useLandscape } from './use-landscape.ts';

export function SideBySide({ view }: PaperProps): ReactNode {
  const { document } = useWorkbench();
  const [choice, choose] = useFluidChoice(document);
  const { answer, problems, isOld } = useComparison(document, choice, view);
  useLandscape();
  return (
    <Paper name="side-by-side" answer={answer?.said.answer ?? 'Refrigerants in the same machine, side by side.'}>
      <div className="side-by-side">
        <ComparisonChoices choice={choice} choose={choose} />
        <div className="comparison-state" role="status">
          {choice.fluids.length < fewestFluids && <p>Choose at least two fluids.</p>}
          {problems.length > 0 && (
            <div className="notice notice-stop">
              <ul>
                {problems.map((problem) => (
                  <li key={problem}>{problem}</li>
                ))}
              </ul>
            </div>
          )}
          {isOld && answer !== undefined && <p className="quiet">What is shown belongs to the choice before.</p>}
        </div>
        {answer !== undefined && <Answered answer={answer} view={view} isOld={isOld} />}
      </div>
    </Paper>
  );
}

function Answered({ answer, view, isOld }: { answer: CompareAnswer; view: UnitView; isOld: boolean }): ReactNode {
  const { said, loops } = answer;
  const chart = useMemo(() => reducedLoopsChart(loops, view), [loops, view]);
  return (
    <div className={isOld ? 'stale' : undefined}>
      <section className="block">
        <h3>{said.basisTitle}</h3>
        <p>
          <Termed>{said.basisWords}</Termed>
        </p>
      </section>
      <ComparisonTable said={said} />
      <section className="block">
        <h3>What differs beyond its range</h3>
        <ul className="comparison-lines">
          {said.differences.map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
      </section>
      {loops.length > 0 && <Chart chart={chart} />}
      <ComparisonWorkings answer={answer} />
      <section className="block">
        <h3>To bear in mind</h3>
        <ul className="comparison-lines">
          {said.notes.map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
      </section>
      <section className="block comparison-sources">
        <h3>Sources</h3>
        <ul className="comparison-lines">
          {said.sources.map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
      </section>
    </div>
  );
}
