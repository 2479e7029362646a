// Cycle alone: the textbook cycle of a refrigerant without any tank, with its pictures, its states, its COPs and where
// its work is lost. Not electricity: no motor, fan or pump is in it.

import { type ReactNode, useEffect, useMemo, useState } from 'react';
import {
  isobarsFor,
  isothermsFor,
  pressureEnthalpyChart,
  stateTable,
  temperatureEntropyChart,
} from '../../../charts/index.ts';
import type { CycleWarning, TextbookCycle } from '../../../loop/index.ts';
import type { UnitView } from '../../../quantities/index.ts';
import { Chart } from '../../charts/chart.tsx';
import { pageTitles } from '../../pages.ts';
import { useWorkbench } from '../../state/context.tsx';
import { DataTable } from '../../ui/data-table.tsx';
import { StateMark } from '../../ui/state-mark.tsx';
import type { CycleAnswer, CycleForm } from '../../worker/cycle.ts';
import type { PaperProps } from '../paper.tsx';
import { type CycleTexts, cycleRequest, keptText, readKept, startTexts } from './cycle-fields.ts';
import { CycleInputs } from './cycle-inputs.tsx';
import { CycleNumbers, cycleSentence, ExergyLost } from './cycle-numbers.tsx';

export function CycleAlone({ view }: PaperProps): ReactNode {
  const { keeper } = useWorkbench();
  const [texts, setTexts] = useState<CycleTexts>(() => readKept(keeper.read('cycle')) ?? startTexts(view));
  const { answer, problems } = useCycle(texts, view);
  useEffect(() => {
    keeper.write('cycle', keptText(texts));
  }, [keeper, texts]);
  return (
    <article className="station" aria-labelledby="page-title">
      <header className="station-head">
        <h2 id="page-title" tabIndex={-1}>
          {pageTitles['cycle-alone']}
        </h2>
        <p className="station-answer">
          {answer === undefined
            ? 'A loop between two temperatures, without a tank.'
            : cycleSentence(answer.cycle, view)}
        </p>
        {problems.length > 0 && (
          <div className="notice notice-stop" role="alert">
            <div>
              {answer !== undefined && (
                <p>
                  <strong>
                    No cycle for the fields as they stand. What is shown belongs to the last that had one.
                  </strong>
                </p>
              )}
              <ul>
                {problems.map((problem) => (
                  <li key={problem}>{problem}</li>
                ))}
              </ul>
            </div>
          </div>
        )}
        {answer !== undefined && <Warnings warnings={answer.cycle.warnings} />}
        {answer !== undefined && <CycleNumbers answer={answer} view={view} />}
      </header>
      <div className="station-body">
        <CycleInputs texts={texts} change={setTexts} cycle={answer?.cycle} view={view} />
        {answer !== undefined && <CyclePictures answer={answer} view={view} />}
      </div>
    </article>
  );
}

function useCycle(texts: CycleTexts, view: UnitView) {
  const { engine } = useWorkbench();
  const [answer, setAnswer] = useState<CycleAnswer | undefined>(undefined);
  const [problems, setProblems] = useState<readonly string[]>([]);
  const form = useMemo(() => formOf(texts, view), [texts, view]);
  useEffect(() => {
    if (form === undefined) return;
    let dropped = false;
    void engine.ask({ kind: 'cycle', form, view }).then((outcome) => {
      if (dropped || outcome.outcome === 'superseded') return;
      if (outcome.outcome === 'answered') {
        setAnswer(outcome.answer);
        setProblems([]);
      } else {
        setProblems(outcome.problems.map((problem) => problem.message));
      }
    });
    return () => {
      dropped = true;
    };
  }, [engine, form, view]);
  return { answer, problems };
}

function formOf(texts: CycleTexts, view: UnitView): CycleForm | undefined {
  const request = cycleRequest(texts);
  return request && { request, isotherms: isothermsFor(view), isobars: isobarsFor(view) };
}

/** What a textbook would not warn of, and a machine would suffer from. */
function Warnings({ warnings }: { warnings: TextbookCycle['warnings'] }): ReactNode {
  return warnings.map((warning) => (
    <p key={`${warning.code} ${warning.part}`} className="study-only">
      <StateMark kind="look" word={warningWords(warning)} />
    </p>
  ));
}

function warningWords({ code, part }: CycleWarning): string {
  switch (code) {
    case 'wetCompression':
      return 'The gas would leave the compressor wet, or would without losses: liquid in a compressor breaks it.';
    case 'wetSuction':
      return 'Liquid enters the compressor with the gas. Textbooks allow it; it breaks a real one.';
    case 'negativeExergyDestruction':
      return `The loss of the ${part} comes out negative: heat would flow from cold to warm. Say what is ${part === 'condenser' ? 'heated' : 'cooled'} (under “I know more”).`;
  }
}

function CyclePictures({ answer, view }: { answer: CycleAnswer; view: UnitView }): ReactNode {
  const { cycle, diagram } = answer;
  const pressureEnthalpy = useMemo(() => pressureEnthalpyChart(diagram, view), [diagram, view]);
  const temperatureEntropy = useMemo(() => temperatureEntropyChart(diagram, view), [diagram, view]);
  return (
    <div className="station-pictures">
      <Chart chart={pressureEnthalpy} />
      <Chart chart={temperatureEntropy} />
      <section className="block">
        <h3>States</h3>
        <DataTable table={stateTable(cycle.points, view, diagram.referenceState)} />
      </section>
      <ExergyLost answer={answer} view={view} />
    </div>
  );
}
