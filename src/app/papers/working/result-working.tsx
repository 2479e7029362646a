// The working of one result: the answer in a sentence, what it starts from, its range, and its chain of steps.

import type { ReactNode } from 'react';
import type { Assessment } from '../../../assess/index.ts';
import {
  chainOf,
  type FormulaText,
  printedStep,
  quantityOf,
  type UnitView,
  type WorkingStep,
} from '../../../quantities/index.ts';
import { useFieldFacts } from '../../ui/field-origin.tsx';
import type { AssessAnswer, FormulaTexts } from '../../worker/messages.ts';
import { Paper } from '../paper.tsx';
import { Chain } from './chain.tsx';
import { InputsBehind } from './inputs-behind.tsx';
import { ItsRange } from './its-range.tsx';
import { isOfCycle } from './parts.ts';
import { allResults, bandOfResult, cycleResults, sayResult } from './results.ts';

export interface ResultWorkingProps {
  readonly result: string;
  readonly workings: readonly WorkingStep[];
  /** The answer for the open design; the textbook cycle stands without. */
  readonly answer: AssessAnswer | undefined;
  readonly formulas: FormulaTexts;
  readonly view: UnitView;
  readonly chooser: ReactNode;
}

export function ResultWorking(props: ResultWorkingProps): ReactNode {
  const { result, workings, answer, formulas, view, chooser } = props;
  const { steps, origins } = chainOf(workings, result);
  const factsOf = useFieldFacts();
  const ofCycle = isOfCycle(result);
  const own = steps.at(-1)!;
  const given = origins.map((path) => factsOf(path)?.given);
  const count = (kind: (typeof given)[number]) => given.filter((each) => each === kind).length;
  const about = namedAs(own, formulas[own.formula], ofCycle ? undefined : answer?.assessment, view);
  return (
    <Paper
      name="working"
      answer={`How ${about} was computed: ${startWords(steps.length, count('typed'), count('assumed') + count('model'))}.`}
    >
      <details className="another">
        <summary>Another number</summary>
        {chooser}
      </details>
      <div className="station-body">
        <InputsBehind origins={origins} />
        <div className="station-pictures">
          {!ofCycle && answer !== undefined && <ItsRange answer={answer} result={result} view={view} />}
          <section className="block" aria-labelledby="chain-title">
            <h3 id="chain-title">Step by step</h3>
            <p className="quiet">
              In the order of computing; the last step is the result itself. Formulas hold in SI, so the numbers put in
              stand in SI.
            </p>
            <Chain steps={steps} formulas={formulas} allOpen={steps.length <= shortest} />
          </section>
        </div>
      </div>
    </Paper>
  );
}

/** A chain of no more steps stands open. */
const shortest = 8;

function startWords(steps: number, typed: number, assumed: number): string {
  const of = [
    typed > 0 ? `${typed} of your inputs` : '',
    assumed > 0 ? (assumed === 1 ? '1 assumption' : `${assumed} assumptions`) : '',
  ].filter((words) => words !== '');
  const from = of.length === 0 ? '' : ` from ${of.join(' and ')}`;
  return `${steps === 1 ? '1 step' : `${steps} steps`}${from}`;
}

/** "heat the tank needs = about 450 W (380 to 520)": as its page calls it, or as its formula does. */
function namedAs(
  step: WorkingStep,
  formula: FormulaText | undefined,
  assessment: Assessment | undefined,
  view: UnitView,
): string {
  const listed =
    assessment === undefined ? [...cycleResults('cycle'), ...cycleResults('secondCycle')] : allResults(assessment);
  const named = listed.find(({ name }) => name === step.result);
  const own = named?.label ?? formula?.result.meaning ?? step.result;
  const whole = assessment === undefined ? `${own} of the textbook cycle` : own;
  // A name with a colon would cut the sentence in two.
  const label = whole.includes(':') ? `“${whole}”` : whole;
  const quantity = named?.quantity ?? (formula && quantityOf(formula.result));
  const band = assessment && bandOfResult(assessment, step.result);
  const said = quantity && sayResult(step.value, band, quantity, view, assessment?.currency ?? '');
  if (said !== undefined) return `${label} = ${said}`;
  if (formula === undefined) return label;
  const { text, unit } = printedStep(step, formula, view).value;
  return `${label} = ${text.replace('-', '−')}${unit === '1' ? '' : `\u00a0${unit}`}`;
}
