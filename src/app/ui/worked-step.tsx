// One step of a working as a person reads it: what is computed, the formula, the formula with the numbers put in, the
// result with its unit, where each number came from, and where the formula was read. Every number stands in SI, in which
// the formula holds, and beside it as this page shows it.

import './worked-step.css';
import { type ReactNode, useMemo } from 'react';
import {
  type FormulaText,
  type PrintedInput,
  type PrintedNumber,
  type PrintedStep,
  printedStep,
  type UnitView,
  type WorkingStep,
} from '../../quantities/index.ts';
import { Formula, PrintedDigits, SymbolName } from '../formula/formula.tsx';
import { useWorkbench } from '../state/context.tsx';
import { sentenceStart } from './say.ts';
import { ScrollBox } from './scroll-box.tsx';

export interface StepOfFormulaProps {
  readonly step: WorkingStep;
  readonly formula: FormulaText | undefined;
  /** Where a number came from: a field of the design, or another step. */
  readonly originOf: (from: string) => ReactNode;
  /** Whether the title of the formula stands above it; false where the fold around it has it. */
  readonly titled?: boolean;
}

export function StepOfFormula({ step, formula, originOf, titled = false }: StepOfFormulaProps): ReactNode {
  const { view } = useWorkbench().state;
  const printed = useMemo(() => printedOrReason(step, formula, view), [step, formula, view]);
  if (typeof printed === 'string') return <p className="quiet">{printed}</p>;
  return (
    <div className="step" data-result={printed.result} data-formula={printed.formula}>
      {titled && <p className="working-title">{printed.title}</p>}
      <StepFormulas printed={printed} />
      <StepTable printed={printed} originOf={originOf} />
      <StepSource printed={printed} />
    </div>
  );
}

/** A step that does not hold is told, not shown. */
function printedOrReason(step: WorkingStep, formula: FormulaText | undefined, view: UnitView): PrintedStep | string {
  if (formula === undefined) return `No formula is called ${step.formula}.`;
  try {
    return printedStep(step, formula, view);
  } catch (error) {
    return `This step cannot be shown: ${error instanceof Error ? error.message : String(error)}`;
  }
}

function StepFormulas({ printed }: { printed: PrintedStep }): ReactNode {
  const { symbol, expression, inputs, value, meaning } = printed;
  const numbers = useMemo(() => Object.fromEntries(inputs.map((input) => [input.symbol, input.value.text])), [inputs]);
  return (
    <>
      <Formula symbol={symbol} expression={expression} />
      <Formula symbol={symbol} expression={expression} numbers={numbers} result={value} />
      <p className="step-result">
        {sentenceStart(meaning)}: <strong>{<NumberWithUnit number={value} />}</strong>
        {value.inView !== undefined && <>, as shown: {value.inView}</>}
      </p>
    </>
  );
}

function NumberWithUnit({ number: { text, unit } }: { number: PrintedNumber }): ReactNode {
  return (
    <>
      <PrintedDigits text={text} />
      {unit !== '1' && `\u00a0${unit.replaceAll(' ', '\u00a0')}`}
    </>
  );
}

interface StepTableProps {
  readonly printed: PrintedStep;
  readonly originOf: (from: string) => ReactNode;
}

function StepTable({ printed, originOf }: StepTableProps): ReactNode {
  const { inputs, title } = printed;
  if (inputs.length === 0) return null;
  const hasView = inputs.some(({ value }) => value.inView !== undefined);
  return (
    <ScrollBox className="table-scroll" label={`Numbers put in: ${title}`}>
      <table className="data step-table">
        <caption className="for-reader">{title}: the numbers put in</caption>
        <thead>
          <tr>
            <th scope="col">Symbol</th>
            <th scope="col">What it is</th>
            <th scope="col" className="number">
              Value, SI
            </th>
            {hasView && (
              <th scope="col" className="number">
                As shown
              </th>
            )}
            <th scope="col">From</th>
          </tr>
        </thead>
        <tbody>
          {inputs.map((input) => (
            <InputRow key={input.symbol} input={input} hasView={hasView} originOf={originOf} />
          ))}
        </tbody>
      </table>
    </ScrollBox>
  );
}

interface InputRowProps {
  readonly input: PrintedInput;
  readonly hasView: boolean;
  readonly originOf: (from: string) => ReactNode;
}

function InputRow({ input: { symbol, meaning, value, from }, hasView, originOf }: InputRowProps): ReactNode {
  return (
    <tr data-symbol={symbol}>
      <td>
        <SymbolName name={symbol} />
      </td>
      <th scope="row">{meaning}</th>
      <td className="number">
        <NumberWithUnit number={value} />
      </td>
      {hasView && <td className="number">{value.inView}</td>}
      <td className="step-from">
        {from === undefined ? <span className="quiet">the model itself</span> : originOf(from)}
      </td>
    </tr>
  );
}

function StepSource({ printed: { source, validity, file } }: { printed: PrintedStep }): ReactNode {
  return (
    <dl className="working-source">
      <div>
        <dt>Source</dt>
        <dd>{source}</dd>
      </div>
      <div>
        <dt>Holds for</dt>
        <dd>{validity}</dd>
      </div>
      <div>
        <dt>In the code</dt>
        <dd>
          <code>{file}</code>
        </dd>
      </div>
    </dl>
  );
}
