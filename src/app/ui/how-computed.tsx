// "How computed": the formula of a number shown, the numbers put in, where each came from, the source it was read in and
// the file that holds it. Where a number came from another step, that step opens in turn.

import { type ReactNode, useState } from 'react';
import type { FormulaText, WorkingStep } from '../../quantities/index.ts';
import { useFormulas } from '../state/formulas.ts';
import type { FormulaTexts } from '../worker/messages.ts';

export interface HowComputedProps {
  /** The steps behind everything shown, in which this result is one. */
  readonly workings: readonly WorkingStep[];
  /** Name of the result in the workings: 'tank.load'. */
  readonly result: string;
  /** What the number is called on the page, for the button's name. */
  readonly of: string;
  /** What the button says where it stands apart from its number. */
  readonly words?: string;
}

export function HowComputed({ workings, result, of, words = 'how computed' }: HowComputedProps): ReactNode {
  const steps = stepsOf(workings, result);
  const [open, setOpen] = useState(false);
  const { formulas, problem } = useFormulas(open);
  if (steps.length === 0) return null;
  return (
    <div className="how">
      <button
        type="button"
        className="linkish how-button"
        aria-expanded={open}
        aria-label={words === 'how computed' ? `how computed: ${of}` : undefined}
        onClick={() => setOpen(!open)}
      >
        {words}
      </button>
      {open && problem !== undefined && <p className="quiet">{problem}</p>}
      {open &&
        formulas !== undefined &&
        steps.map((step) => (
          <Step key={`${step.result} ${step.formula}`} step={step} known={{ workings, formulas }} depth={0} />
        ))}
    </div>
  );
}

/** Deeper than this, a step is named but not opened: no chain of the engine is longer. */
const deepest = 12;

interface Known {
  readonly workings: readonly WorkingStep[];
  readonly formulas: FormulaTexts;
}

function Step({ step, known, depth }: { step: WorkingStep; known: Known; depth: number }): ReactNode {
  const [opened, setOpened] = useState<readonly string[]>([]);
  const formula = known.formulas[step.formula];
  if (formula === undefined) return null;
  const { symbol, unit } = formula.result;
  const toggle = (from: string) =>
    setOpened(opened.includes(from) ? opened.filter((other) => other !== from) : [...opened, from]);
  return (
    <div className="working">
      <p className="working-title">{formula.title}</p>
      <p className="working-line">
        <code>
          {symbol} = {inPrint(formula.expression)}
        </code>
      </p>
      <p className="working-line">
        <code>
          {symbol} = {inPrint(withNumbers(formula.expression, step.inputs))} = {withUnit(step.value, unit)}
        </code>
      </p>
      <div className="table-scroll">
        <table className="data working-table">
          <caption>
            <span className="for-reader">{formula.title}: </span>Numbers put in; physical ones in base SI units,
            whatever the view.
          </caption>
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
            {Object.entries(step.inputs).map(([name, value]) => (
              <tr key={name}>
                <th scope="row">
                  <code>{name}</code>
                </th>
                <td>{formula.symbols[name]?.meaning}</td>
                <td className="number">{withUnit(value, formula.symbols[name]?.unit)}</td>
                <td>
                  <Origin
                    from={step.from[name]}
                    workings={known.workings}
                    depth={depth}
                    opened={opened}
                    toggle={toggle}
                  />
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      <FormulaSource formula={formula} />
      {opened.map((from) =>
        stepsOf(known.workings, from).map((inner) => (
          <Step key={`${inner.result} ${inner.formula}`} step={inner} known={known} depth={depth + 1} />
        )),
      )}
    </div>
  );
}

function stepsOf(workings: readonly WorkingStep[], result: string): readonly WorkingStep[] {
  return workings.filter((step) => step.result === result);
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

interface OriginProps {
  readonly from: string | undefined;
  readonly workings: readonly WorkingStep[];
  readonly depth: number;
  readonly opened: readonly string[];
  readonly toggle: (from: string) => void;
}

/** Where a number came from: a field of the design, or another step, which opens below. */
function Origin({ from, workings, depth, opened, toggle }: OriginProps): ReactNode {
  if (from === undefined) return <span className="quiet">constant</span>;
  if (depth >= deepest || stepsOf(workings, from).length === 0) return <code className="path">{from}</code>;
  return (
    <button type="button" className="linkish" aria-expanded={opened.includes(from)} onClick={() => toggle(from)}>
      <code className="path">{from}</code>
    </button>
  );
}

/** The expression with every symbol replaced by its number. */
function withNumbers(expression: string, inputs: Readonly<Record<string, number>>): string {
  return expression.replaceAll(/[A-Za-z_][A-Za-z0-9_]*/g, (name) => {
    const value = inputs[name];
    if (value === undefined) return name;
    const said = inDigits(value);
    return value < 0 ? `(${said})` : said;
  });
}

/** Signs of multiplication and comparison as printed. */
function inPrint(expression: string): string {
  return expression.replaceAll('*', '·').replaceAll('<=', '≤').replaceAll('>=', '≥').replaceAll(' - ', ' − ');
}

function inDigits(value: number): string {
  const size = Math.abs(value);
  const digits =
    size !== 0 && (size >= 1e6 || size < 1e-3) ? value.toExponential(4) : String(Number(value.toPrecision(5)));
  return digits.replaceAll('-', '−');
}

/** Numbers of the working stand in base SI, as they were put in. */
function withUnit(value: number, unit: string | undefined): string {
  return unit === undefined || unit === '1' ? inDigits(value) : `${inDigits(value)} ${unit}`;
}
