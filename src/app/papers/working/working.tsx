// How every number was computed: a chooser, the whole chain behind one result, or the textbook cycle to hand in.

import './working.css';
import { type ReactNode, useMemo } from 'react';
import { nearestWord, type UnitView, type WorkingStep } from '../../../quantities/index.ts';
import { useWorkbench } from '../../state/context.tsx';
import { useFormulas } from '../../state/formulas.ts';
import { useWorkings } from '../../state/workings.ts';
import { type CyclePair, readKept, startTexts } from '../cycle-alone/cycle-texts.ts';
import { useCycle } from '../cycle-alone/use-cycle.ts';
import { Paper, type PaperProps } from '../paper.tsx';
import { BothWays } from './both-ways.tsx';
import { Chooser } from './chooser.tsx';
import { CycleHandIn } from './cycle-hand-in.tsx';
import { isOfCycle } from './parts.ts';
import { ResultWorking } from './result-working.tsx';
import { resultMeant } from './results.ts';

export function Working({ answer, view, part = '' }: PaperProps): ReactNode {
  const { formulas, problem } = useFormulas(true);
  const steps = useWorkings(answer?.assessment.workings);
  const pair = useKeptCycles(view);
  const first = useCycle('cycle', pair.first, view);
  const second = useCycle('secondCycle', pair.second, view);
  if (problem !== undefined) return <Message words={`The formulas could not be loaded: ${problem}`} />;
  if (formulas === undefined) return <Message words="The formulas are being loaded." />;
  if (part === 'cycle') {
    return <CycleHandIn name="cycle" state={first} pair={pair} formulas={formulas} view={view} />;
  }
  if (part === 'secondCycle' && pair.second !== undefined) {
    return <CycleHandIn name="secondCycle" state={second} pair={pair} formulas={formulas} view={view} />;
  }
  if (steps.problem !== undefined) return <Message words={steps.problem} />;
  if (answer !== undefined && steps.workings === undefined) return <Message words="The steps are being computed." />;
  const chooser = (
    <Chooser
      assessment={answer?.assessment}
      cycleWorkings={first.answer?.workings ?? []}
      formulas={formulas}
      view={view}
    />
  );
  const cycle = isOfCycle(part) ? (part.startsWith('second') ? second : first) : undefined;
  const workings = cycle === undefined ? steps.workings : cycle.answer?.workings;
  const result = answer === undefined ? part : resultMeant(part, answer.assessment);
  if (workings?.some((step) => step.result === result)) {
    return (
      <ResultWorking
        key={result}
        result={result}
        workings={workings}
        answer={answer}
        formulas={formulas}
        view={view}
        chooser={chooser}
      />
    );
  }
  return (
    <Paper name="working" answer={openingWords(part, workings, cycle?.problems)}>
      {chooser}
      {part === '' && answer !== undefined && <BothWays answer={answer} view={view} />}
    </Paper>
  );
}

/** What the browser keeps of Cycle alone, or what that paper would begin with. */
function useKeptCycles(view: UnitView): CyclePair {
  const { keeper } = useWorkbench();
  return useMemo(
    () => readKept(keeper.read('cycle')) ?? { first: startTexts(view), second: undefined },
    [keeper, view],
  );
}

/**
 * Why there is a chooser and no working.
 * @param workings       the steps among which the part was looked for; undefined where there is no answer
 * @param cycleProblems  why there is no textbook cycle; undefined where none was asked for
 */
function openingWords(
  part: string,
  workings: readonly WorkingStep[] | undefined,
  cycleProblems: readonly string[] | undefined,
): string {
  if (workings === undefined) {
    if (cycleProblems === undefined) {
      return 'There is no answer for the design as it stands, so there is no working of it either. The textbook cycle can be followed step by step.';
    }
    return cycleProblems.length === 0 ? 'The textbook cycle is being computed.' : cycleProblems.join(' ');
  }
  if (part === '') {
    return `Each of the ${workings.length} steps behind this design can be followed: formula, numbers put in, source, and the inputs it began with.`;
  }
  const near = nearestWord(
    part,
    workings.map((step) => step.result),
  );
  const guess = near === undefined ? '' : ` Perhaps “${near}” is meant.`;
  return `No number of this design is called “${part}”. A link goes stale when its design changes, or another is opened.${guess} Choose a number below.`;
}

function Message({ words }: { words: string }): ReactNode {
  return (
    <Paper name="working" answer={words}>
      {null}
    </Paper>
  );
}
