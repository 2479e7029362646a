// A chain of steps, each folded to one line until it is opened. A long chain is folded into its parts too. On paper all of
// it stands open.

import { type ReactNode, useMemo, useState } from 'react';
import { flushSync } from 'react-dom';
import { printedResult, type WorkingStep } from '../../../quantities/index.ts';
import { SymbolEquals } from '../../formula/formula.tsx';
import { addressOf } from '../../pages.ts';
import { FieldOrigin } from '../../ui/field-origin.tsx';
import { usePaper } from '../../ui/light.tsx';
import { StepOfFormula } from '../../ui/worked-step.tsx';
import type { FormulaTexts } from '../../worker/messages.ts';
import { partsOfChain } from './parts.ts';

export interface ChainProps {
  readonly steps: readonly WorkingStep[];
  readonly formulas: FormulaTexts;
  /** Whether every step stands open to begin with; otherwise only the last. */
  readonly allOpen: boolean;
}

/** A chain longer than this is folded into its parts. */
const longest = 30;

interface NumberedStep extends WorkingStep {
  /** Place in the chain, from 1. */
  readonly place: number;
}

export function Chain({ steps, formulas, allOpen }: ChainProps): ReactNode {
  const numbered = useMemo(() => steps.map((step, index): NumberedStep => ({ ...step, place: index + 1 })), [steps]);
  const parts = useMemo(
    () => (steps.length > longest ? partsOfChain(numbered) : [{ title: '', steps: numbered }]),
    [numbered, steps.length],
  );
  const keysOf = (step: NumberedStep) => [stepKey(step), partKey(parts.find((part) => part.steps.includes(step))!)];
  const every = () => new Set(numbered.flatMap(keysOf));
  const [opened, setOpened] = useState<ReadonlySet<string>>(() =>
    allOpen ? every() : new Set(numbered.slice(-1).flatMap(keysOf)),
  );
  const isPaper = usePaper();
  const fold = (key: string): Fold => ({
    open: isPaper || opened.has(key),
    // What paper opens is not kept open.
    toggle: (open) => !isPaper && setOpened((before) => withOrWithout(before, key, open)),
  });
  const jump = (result: string) => {
    const step = numbered.find((each) => each.result === result);
    if (step === undefined) return;
    flushSync(() => setOpened((before) => new Set([...before, ...keysOf(step)])));
    const line = document.getElementById(stepId(result))?.querySelector('summary');
    line?.focus({ preventScroll: true });
    line?.scrollIntoView({ block: 'start' });
  };
  const known = new Set(steps.map((step) => step.result));
  const originOf = (from: string) =>
    known.has(from) ? <StepReference result={from} jump={jump} /> : <FieldOrigin path={from} />;
  const list = (of: readonly NumberedStep[]) => (
    <ol className="chain" start={of[0]?.place}>
      {of.map((step) => (
        <FoldedStep
          key={stepKey(step)}
          step={step}
          formulas={formulas}
          fold={fold(stepKey(step))}
          originOf={originOf}
        />
      ))}
    </ol>
  );
  return (
    <>
      <p className="chain-actions">
        <button type="button" className="solid" onClick={() => setOpened(every())}>
          Open all steps
        </button>
        <button type="button" className="solid" onClick={() => setOpened(new Set())}>
          Fold all
        </button>
      </p>
      {parts.length === 1
        ? list(numbered)
        : parts.map((part) => {
            const { open, toggle } = fold(partKey(part));
            return (
              <details
                key={partKey(part)}
                className="chain-part"
                open={open}
                onToggle={(event) => toggle(event.currentTarget.open)}
              >
                <summary>
                  <h4>{part.title}</h4> <span className="quiet">{stepCount(part.steps)}</span>
                </summary>
                {open && list(part.steps)}
              </details>
            );
          })}
    </>
  );
}

function stepCount(steps: readonly NumberedStep[]): string {
  const [first, last] = [steps[0]?.place, steps.at(-1)?.place];
  return first === last ? `step ${first}` : `steps ${first} to ${last}`;
}

interface Fold {
  readonly open: boolean;
  readonly toggle: (open: boolean) => void;
}

function withOrWithout(before: ReadonlySet<string>, key: string, open: boolean): ReadonlySet<string> {
  if (before.has(key) === open) return before;
  const after = new Set(before);
  if (open) after.add(key);
  else after.delete(key);
  return after;
}

function stepKey({ result, formula }: WorkingStep): string {
  return `${result} ${formula}`;
}

function partKey({ title, steps }: { readonly title: string; readonly steps: readonly NumberedStep[] }): string {
  return `part ${title} ${steps[0]?.place}`;
}

function stepId(result: string): string {
  return `step:${result}`;
}

interface FoldedStepProps {
  readonly step: NumberedStep;
  readonly formulas: FormulaTexts;
  readonly fold: Fold;
  readonly originOf: (from: string) => ReactNode;
}

function FoldedStep({ step, formulas, fold: { open, toggle }, originOf }: FoldedStepProps): ReactNode {
  const formula = formulas[step.formula];
  const { symbol = '', unit = '1' } = formula?.result ?? {};
  return (
    <li id={stepId(step.result)} value={step.place}>
      <details open={open} onToggle={(event) => toggle(event.currentTarget.open)}>
        <summary className="chain-line">
          <span className="chain-place">{step.place}</span>{' '}
          <span className="chain-number">
            <SymbolEquals symbol={symbol} text={printedResult(step.value)} unit={unit} />
          </span>{' '}
          <span className="chain-title">
            {formula?.title} <code className="path">{step.result}</code>
          </span>
        </summary>
        {open && <StepOfFormula step={step} formula={formula} originOf={originOf} />}
      </details>
    </li>
  );
}

interface StepReferenceProps {
  readonly result: string;
  readonly jump: (result: string) => void;
}

/** Another step of the same chain: the link goes to its place, or opens its own chain in another window. */
function StepReference({ result, jump }: StepReferenceProps): ReactNode {
  return (
    <a
      href={addressOf({ page: 'working', part: result })}
      onClick={(event) => {
        if (event.ctrlKey || event.metaKey || event.shiftKey) return;
        event.preventDefault();
        jump(result);
      }}
    >
      <code className="path">{result}</code>
    </a>
  );
}
