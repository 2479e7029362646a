// The textbook cycle as a student hands it in: what is given, what is taken as true, the states, every step, the results.

import type { ReactNode } from 'react';
import { type ChartTable, sayReferenceState, stateTable } from '../../../charts/index.ts';
import type { TextbookCycle } from '../../../loop/index.ts';
import { formatNumber, quantityRecord, type UnitView } from '../../../quantities/index.ts';
import { DataTable } from '../../ui/data-table.tsx';
import { PageLink } from '../../ui/page-link.tsx';
import { sentenceStart } from '../../ui/say.ts';
import type { CycleAnswer, CycleName } from '../../worker/cycle.ts';
import type { FormulaTexts } from '../../worker/messages.ts';
import { allCycleFields, cycleFieldPath } from '../cycle-alone/cycle-fields.ts';
import { type CyclePair, type CycleTexts, readOne } from '../cycle-alone/cycle-texts.ts';
import type { CycleState } from '../cycle-alone/use-cycle.ts';
import { Paper } from '../paper.tsx';
import { Chain } from './chain.tsx';
import { cycleResults, sayResult } from './results.ts';

export interface CycleHandInProps {
  readonly name: CycleName;
  readonly state: CycleState;
  readonly pair: CyclePair;
  readonly formulas: FormulaTexts;
  readonly view: UnitView;
}

export function CycleHandIn({ name, state, pair, formulas, view }: CycleHandInProps): ReactNode {
  const { answer, problems } = state;
  const isFirst = name === 'cycle';
  const texts = isFirst ? pair.first : (pair.second ?? pair.first);
  const letter = pair.second === undefined ? '' : isFirst ? ' A' : ' B';
  const actions = (
    <>
      <PageLink page="cycle-alone">Back to the fields</PageLink>
      {pair.second !== undefined && (
        <PageLink page="working" part={isFirst ? 'secondCycle' : 'cycle'}>
          The other cycle, {isFirst ? 'B' : 'A'}
        </PageLink>
      )}
    </>
  );
  return (
    <Paper name="working" answer={handInWords(answer, problems, letter)} actions={actions}>
      <div className="hand-in">
        <section className="block" aria-labelledby="given-title">
          <h3 id="given-title">Given</h3>
          <Given texts={texts} view={view} />
        </section>
        {answer !== undefined && <Solution answer={answer} formulas={formulas} view={view} />}
      </div>
    </Paper>
  );
}

function handInWords(answer: CycleAnswer | undefined, problems: readonly string[], letter: string): string {
  if (problems.length > 0) return `There is no cycle for what is given. ${problems.join(' ')}`;
  if (answer === undefined) return 'The textbook cycle is being computed.';
  const { cycle, workings } = answer;
  return `The textbook cycle${letter} of ${cycle.refrigerant}, ${workings.length} steps: heating COP ${cycle.heatingCop.toFixed(3)}, cooling COP ${cycle.coolingCop.toFixed(3)}. Not electricity: no motor, fan or pump is in it.`;
}

function Given({ texts, view }: { texts: CycleTexts; view: UnitView }): ReactNode {
  const given = allCycleFields.filter(({ key }) => texts.numbers[key] !== undefined);
  return (
    <div className="table-scroll">
      <table className="data">
        <caption className="for-reader">What is given of the cycle</caption>
        <thead>
          <tr>
            <th scope="col">Given</th>
            <th scope="col" className="number">
              As typed
            </th>
            <th scope="col" className="number">
              SI
            </th>
          </tr>
        </thead>
        <tbody>
          <tr>
            <th scope="row">
              <PageLink page="cycle-alone" part={cycleFieldPath('refrigerant')}>
                Refrigerant
              </PageLink>
            </th>
            <td className="number">{texts.refrigerant}</td>
            <td />
          </tr>
          {given.map(({ key, label, quantity }) => (
            <tr key={key}>
              <th scope="row">
                <PageLink page="cycle-alone" part={cycleFieldPath(key)}>
                  {label}
                </PageLink>
              </th>
              <td className="number">{texts.numbers[key]}</td>
              <td className="number">{inSi(texts.numbers[key] ?? '', quantity)}</td>
            </tr>
          ))}
          <tr>
            <th scope="row">
              <PageLink page="cycle-alone" part={cycleFieldPath('referenceState')}>
                Zero of enthalpy and entropy
              </PageLink>
            </th>
            <td className="number">{sentenceStart(sayReferenceState(texts.referenceState, view))}</td>
            <td />
          </tr>
        </tbody>
      </table>
    </div>
  );
}

function inSi(text: string, quantity: Parameters<typeof readOne>[1]): string {
  const read = readOne(text, quantity);
  if (!read.ok) return '';
  const { unit } = quantityRecord(quantity);
  return `${formatNumber(read.value, 7)}${unit === '1' ? '' : `\u00a0${unit}`}`;
}

interface SolutionProps {
  readonly answer: CycleAnswer;
  readonly formulas: FormulaTexts;
  readonly view: UnitView;
}

function Solution({ answer, formulas, view }: SolutionProps): ReactNode {
  const { cycle, workings, diagram } = answer;
  return (
    <>
      <section className="block" aria-labelledby="taken-title">
        <h3 id="taken-title">Taken as true</h3>
        <ul className="plain-list">
          {assumptionsOf(cycle).map((sentence) => (
            <li key={sentence}>{sentence}</li>
          ))}
        </ul>
      </section>
      <section className="block" aria-labelledby="states-title">
        <h3 id="states-title">States</h3>
        <DataTable table={stateTable(cycle.points, view, diagram.referenceState, answer.name)} workings={workings} />
      </section>
      <section className="block" aria-labelledby="chain-title">
        <h3 id="chain-title">Step by step</h3>
        <p className="quiet">Formulas hold in SI, so the numbers put in stand in SI.</p>
        <Chain key={cycle.refrigerant} steps={workings} formulas={formulas} allOpen />
      </section>
      <section className="block" aria-labelledby="results-title">
        <h3 id="results-title">Results</h3>
        <DataTable table={resultTable(answer, view)} workings={workings} />
      </section>
    </>
  );
}

function assumptionsOf(cycle: TextbookCycle): readonly string[] {
  const { exergyBasis: basis, heatExchanger } = cycle;
  return [
    'Steady flow; speed and height of the refrigerant count for nothing.',
    'The compressor gives no heat away; its isentropic efficiency says how much more work it takes than a reversible one.',
    'The valve neither takes nor gives heat: enthalpy before and after it is the same.',
    heatExchanger === undefined
      ? 'All superheat is gained in the evaporator.'
      : 'The heat exchanger loses nothing to the room: what the liquid gives, the gas takes.',
    'There is no motor, fan or pump: the COPs are of the work on the gas, not of electricity.',
    `Properties by the published equation of state of ${cycle.refrigerant}. Exergy: ${basis.words}`,
  ];
}

function resultTable({ name, cycle, workings }: CycleAnswer, view: UnitView): ChartTable {
  const rows = cycleResults(name).flatMap(({ name: result, label, quantity }) => {
    const step = workings.find((each) => each.result === result);
    const said = step && sayResult(step.value, undefined, quantity, view, '', 4);
    return said === undefined ? [] : [{ cells: [sentenceStart(label), said], results: [undefined, result] }];
  });
  return {
    caption: `Results of the textbook cycle of ${cycle.refrigerant}`,
    columns: [{ label: 'Result' }, { label: 'Value', numeric: true }],
    rows: rows.map(({ cells }) => cells),
    results: rows.map(({ results }) => results),
  };
}
