// How every number was computed: a chooser, the whole chain behind one result, or the textbook cycle to hand in.

import './working.css';
import { type ReactNode, useMemo } from 'react';
import { nearestWord, type UnitView, type WorkingStep } from '../../../quantities/index.ts';
import { useWorkbench } from '../../state/context.tsx';
import { useFormulas } from '../../state/formulas.ts';
import type { AssessAnswer } from '../../worker/messages.ts';
import { type CyclePair, readKept, startTexts } from '../cycle-alone/cycle-texts.ts';
import { useCycle } from '../cycle-alone/use-cycle.ts';
import { Paper, type PaperProps } from '../paper.tsx';
import { Chooser } from './chooser.tsx';
import { CycleHandIn } from './cycle-hand-in.tsx';
import { ResultWorking } from './result-working.tsx';
import { resultMeant } from './results.ts';

export function Working({ answer, view, part }: PaperProps): ReactNode {
  const { formulas, problem } = useFormulas(true);
  const pair = useKeptCycles(view);
  const isSecond = part === 'secondCycle' && pair.second !== undefined;
  const texts = isSecond ? pair.second : pair.first;
  const cycle = useCycle(isSecond ? 'secondCycle' : 'cycle', texts, view);
  if (problem !== undefined) return <Message words={`The formulas could not be loaded: ${problem}`} />;
  if (formulas === undefined) return <Message words="The formulas are being loaded." />;
  const cycleWorkings = cycle.answer?.workings ?? [];
  const chooser = (
    <Chooser assessment={answer?.assessment} cycleWorkings={cycleWorkings} formulas={formulas} view={view} />
  );
  if (part === 'cycle' || isSecond) {
    return (
      <CycleHandIn
        state={cycle}
        texts={texts}
        which={isSecond ? 'second' : 'first'}
        pair={pair}
        formulas={formulas}
        view={view}
      />
    );
  }
  const meant = meantBy(part, answer, cycleWorkings);
  if (meant !== undefined) {
    return (
      <ResultWorking key={meant.result} {...meant} answer={answer} formulas={formulas} view={view} chooser={chooser} />
    );
  }
  return (
    <Paper name="working" answer={openingWords(part, answer, cycleWorkings, cycle.problems)}>
      {chooser}
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

interface Meant {
  readonly result: string;
  readonly workings: readonly WorkingStep[];
}

/** The result an address names, and the steps it is one of; undefined where there is none of that name. */
function meantBy(
  part: string | undefined,
  answer: AssessAnswer | undefined,
  cycleWorkings: readonly WorkingStep[],
): Meant | undefined {
  if (part === undefined) return undefined;
  const workings = part.startsWith('cycle.') ? cycleWorkings : (answer?.assessment.workings ?? []);
  const result = answer === undefined ? part : resultMeant(part, answer.assessment);
  return workings.some((step) => step.result === result) ? { result, workings } : undefined;
}

function openingWords(
  part: string | undefined,
  answer: AssessAnswer | undefined,
  cycleWorkings: readonly WorkingStep[],
  cycleProblems: readonly string[],
): string {
  if (part === undefined) {
    return answer === undefined
      ? 'There is no answer for the design as it stands. The textbook cycle can be followed step by step.'
      : `Each of the ${answer.assessment.workings.length} steps behind this design can be followed: formula, numbers put in, source, and the inputs it began with.`;
  }
  if (part.startsWith('cycle.') && cycleWorkings.length === 0) {
    return cycleProblems.length === 0 ? 'The textbook cycle is being computed.' : cycleProblems.join(' ');
  }
  if (answer === undefined && !part.startsWith('cycle.')) {
    return 'There is no answer for the design as it stands, so there is no working of it either.';
  }
  const workings = part.startsWith('cycle.') ? cycleWorkings : (answer?.assessment.workings ?? []);
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
