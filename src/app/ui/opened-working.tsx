// The working of one number, opened in place: its step, and below it each step that one of its numbers came from, opened
// in turn. A step never opens among those it is itself part of, so a chain of any length ends.

import { type ReactNode, useState } from 'react';
import type { WorkingStep } from '../../quantities/index.ts';
import { useFormulas } from '../state/formulas.ts';
import { useWorkings } from '../state/workings.ts';
import type { FormulaTexts } from '../worker/messages.ts';
import { FieldOrigin } from './field-origin.tsx';
import { PageLink } from './page-link.tsx';
import { hasStep } from './result-link.tsx';
import { StepOfFormula } from './worked-step.tsx';

export interface OpenedWorkingProps {
  readonly workings: readonly WorkingStep[];
  readonly result: string;
  /** Steps of something else than the open design have no place in Working. */
  readonly isElsewhere?: boolean;
}

export function OpenedWorking({ workings: given, result, isElsewhere = false }: OpenedWorkingProps): ReactNode {
  const { formulas, problem: formulasProblem } = useFormulas(true);
  const { workings, problem: workingsProblem } = useWorkings(given);
  const problem = formulasProblem ?? workingsProblem;
  if (problem !== undefined) return <p className="quiet">{problem}</p>;
  if (formulas === undefined || workings === undefined) return null;
  return (
    <>
      <OpenedSteps result={result} known={{ workings, formulas }} above={[]} />
      {!isElsewhere && (
        <p className="working-more">
          <PageLink page="working" part={result}>
            Open in Working
          </PageLink>
          <span className="quiet"> with every step before it</span>
        </p>
      )}
    </>
  );
}

interface Known {
  readonly workings: readonly WorkingStep[];
  readonly formulas: FormulaTexts;
}

interface OpenedStepsProps {
  readonly result: string;
  readonly known: Known;
  /** Results that this one was opened from. */
  readonly above: readonly string[];
}

function OpenedSteps({ result, known, above }: OpenedStepsProps): ReactNode {
  const [opened, setOpened] = useState<readonly string[]>([]);
  const line = [...above, result];
  const toggle = (from: string) =>
    setOpened(opened.includes(from) ? opened.filter((other) => other !== from) : [...opened, from]);
  const originOf = (from: string) => {
    if (!hasStep(known.workings, from)) return <FieldOrigin path={from} />;
    if (line.includes(from)) return <span className="path">{from}, above</span>;
    return (
      <button type="button" className="linkish" aria-expanded={opened.includes(from)} onClick={() => toggle(from)}>
        <code className="path">{from}</code>
      </button>
    );
  };
  return known.workings
    .filter((step) => step.result === result)
    .map((step) => (
      <div key={step.formula} className="working">
        <StepOfFormula step={step} formula={known.formulas[step.formula]} originOf={originOf} titled />
        {opened.map((from) => (
          <OpenedSteps key={from} result={from} known={known} above={line} />
        ))}
      </div>
    ));
}
