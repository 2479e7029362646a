// "How computed": the formula of a number shown, the numbers put in, where each came from, the source it was read in and
// the file that holds it. Where a number came from another step, that step opens in turn.

import { type ReactNode, useState } from 'react';
import type { WorkingStep } from '../../quantities/index.ts';
import type { AssessAnswer, FormulaText } from '../worker/messages.ts';

export interface HowComputedProps {
  readonly answer: AssessAnswer;
  /** Name of the result in the workings: 'tank.load'. */
  readonly result: string;
  /** What the number is called on the page, for the button's name. */
  readonly of: string;
}

export function HowComputed({ answer, result, of }: HowComputedProps): ReactNode {
  const steps = answer.assessment.workings.filter((step) => step.result === result);
  const [open, setOpen] = useState(false);
  if (steps.length === 0) return null;
  return (
    <div className="how">
      <button type="button" className="linkish how-button" aria-expanded={open} onClick={() => setOpen(!open)}>
        how computed<span className="for-reader">: {of}</span>
      </button>
      {open &&
        steps.map((step) => <Step key={`${step.result} ${step.formula}`} step={step} answer={answer} depth={0} />)}
    </div>
  );
}

/** Deeper than this, a step is named but not opened: no chain of the engine is longer. */
const deepest = 8;

export function Step({ step, answer, depth }: { step: WorkingStep; answer: AssessAnswer; depth: number }): ReactNode {
  const formula = answer.formulas[step.formula];
  if (formula === undefined) return null;
  return (
    <div className="working">
      <p className="working-title">{formula.title}</p>
      <p className="working-line">
        <code>
          {formula.result.symbol} = {formula.expression}
        </code>
      </p>
      <table className="data working-table">
        <caption className="for-reader">Numbers put into “{formula.title}”</caption>
        <thead>
          <tr>
            <th scope="col">Symbol</th>
            <th scope="col">What it is</th>
            <th scope="col" className="number">
              Value
            </th>
            <th scope="col">From</th>
          </tr>
        </thead>
        <tbody>
          {Object.entries(step.inputs).map(([symbol, value]) => (
            <tr key={symbol}>
              <th scope="row">
                <code>{symbol}</code>
              </th>
              <td>{formula.symbols[symbol]?.meaning}</td>
              <td className="number">{withUnit(value, formula.symbols[symbol]?.unit)}</td>
              <td>
                <Origin from={step.from[symbol]} answer={answer} depth={depth} />
              </td>
            </tr>
          ))}
          <tr className="total">
            <th scope="row">
              <code>{formula.result.symbol}</code>
            </th>
            <td>{formula.result.meaning}</td>
            <td className="number">{withUnit(step.value, formula.result.unit)}</td>
            <td />
          </tr>
        </tbody>
      </table>
      <FormulaSource formula={formula} />
    </div>
  );
}

function FormulaSource({ formula }: { formula: FormulaText }): ReactNode {
  return (
    <dl className="working-source">
      <div>
        <dt>Source</dt>
        <dd>{formula.source}</dd>
      </div>
      <div>
        <dt>Holds for</dt>
        <dd>{formula.validity}</dd>
      </div>
      <div>
        <dt>In the code</dt>
        <dd>
          <code>{formula.file}</code>
        </dd>
      </div>
    </dl>
  );
}

function Origin({ from, answer, depth }: { from: string | undefined; answer: AssessAnswer; depth: number }): ReactNode {
  if (from === undefined) return <span className="quiet">constant</span>;
  const step = answer.assessment.workings.find((candidate) => candidate.result === from);
  if (step === undefined || depth >= deepest) return <code className="path">{from}</code>;
  return (
    <details className="working-origin">
      <summary>
        <code className="path">{from}</code>
      </summary>
      <Step step={step} answer={answer} depth={depth + 1} />
    </details>
  );
}

/** Numbers of the working stand in base SI, as they were put in. */
function withUnit(value: number, unit: string | undefined): string {
  const size = Math.abs(value);
  const digits =
    size !== 0 && (size >= 1e6 || size < 1e-3) ? value.toExponential(4) : String(Number(value.toPrecision(5)));
  const words = digits.replace('-', '−');
  return unit === undefined || unit === '1' ? words : `${words} ${unit}`;
}
