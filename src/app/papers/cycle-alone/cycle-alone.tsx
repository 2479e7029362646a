// Cycle alone: the textbook cycle of a refrigerant without any tank, with its pictures, its states, its COPs and where
// its work is lost; a second one may be laid over it. Not electricity: no motor, fan or pump is in it.

import './cycle-alone.css';
import { type ReactNode, useEffect, useMemo, useState } from 'react';
import { cyclesChart, stateTable } from '../../../charts/index.ts';
import type { CycleWarning, TextbookCycle } from '../../../loop/index.ts';
import { listed, type UnitView } from '../../../quantities/index.ts';
import { Chart } from '../../charts/chart.tsx';
import { studyOnlyWords } from '../../fluids/fluid-groups.ts';
import { useWorkbench } from '../../state/context.tsx';
import { Choice } from '../../ui/choice.tsx';
import { DataTable } from '../../ui/data-table.tsx';
import { StateMark } from '../../ui/state-mark.tsx';
import type { CycleAnswer } from '../../worker/cycle.ts';
import type { CycleOffer } from '../../worker/cycle-offer.ts';
import { Paper, type PaperProps } from '../paper.tsx';
import { CycleInputs } from './cycle-inputs.tsx';
import { CycleFlows, CycleNumbers, cycleSentence } from './cycle-numbers.tsx';
import {
  type CyclePair,
  type CycleTexts,
  isAsStarted,
  keptText,
  readKept,
  sayOffer,
  startTexts,
  withLevels,
} from './cycle-texts.ts';
import { ExergyLost } from './exergy-lost.tsx';
import { StatesFile } from './states-file.tsx';
import { Transport } from './transport.tsx';
import { TwoCycles } from './two-cycles.tsx';
import { type CycleState, useCycle } from './use-cycle.ts';

type Which = 'first' | 'second';

export function CycleAlone({ view }: PaperProps): ReactNode {
  const { keeper, open } = useWorkbench();
  const [pair, setPair] = useState<CyclePair>(
    () => readKept(keeper.read('cycle')) ?? { first: startTexts(view), second: undefined },
  );
  const [chosen, setChosen] = useState<Which>('first');
  const states = {
    first: useCycle('cycle', pair.first, view),
    second: useCycle('secondCycle', pair.second, view),
  };
  useEffect(() => {
    keeper.write('cycle', keptText(pair));
  }, [keeper, pair]);

  const takeFor = (name: Which) => (offer: CycleOffer) =>
    setPair((before) => ({ ...before, [name]: withLevels(before[name] ?? before.first, offer) }));

  const which: Which = pair.second === undefined ? 'first' : chosen;
  const texts = pair[which] ?? pair.first;
  const { answer, offer } = states[which];
  const begins = isAsStarted(texts, view) ? offer : undefined;
  const begun = useBegun(texts, begins, (next) => setPair({ ...pair, [which]: next }));
  // What a fluid began with was nobody's choice: the next fluid begins where all begin.
  const isBegun = begun?.texts.refrigerant === texts.refrigerant && begun.texts.numbers === texts.numbers;
  const change = (next: CycleTexts) => {
    const isOther = isBegun && next.refrigerant !== texts.refrigerant;
    setPair({ ...pair, [which]: isOther ? { ...next, numbers: startTexts(view).numbers } : next });
  };
  const answers = [states.first.answer, pair.second && states.second.answer].filter((each) => each !== undefined);
  return (
    <Paper
      name="cycle-alone"
      answer={answerOf(answers, view)}
      actions={
        <>
          <button
            type="button"
            className="solid"
            onClick={() => open('working', which === 'first' ? 'cycle' : 'secondCycle')}
          >
            Every step, to hand in
          </button>
          {answer !== undefined && <StatesFile cycle={answer.cycle} texts={texts} view={view} />}
        </>
      }
    >
      {begins === undefined && <Problems label={pair.second && 'Cycle A'} {...states.first} take={takeFor('first')} />}
      {pair.second !== undefined && <Problems label="Cycle B" {...states.second} take={takeFor('second')} />}
      <div className="cycle-notes" role="status">
        {isBegun && <p className="quiet">{begunWords(texts, begun.offer)}</p>}
        <StudyOnlyFluids names={answers.map(({ cycle }) => cycle.refrigerant)} />
        <BlendNote cycles={answers.map(({ cycle }) => cycle)} />
      </div>
      {answer !== undefined && <Warnings warnings={answer.cycle.warnings} />}
      {answers.length === 2 && <TwoCycles answers={answers} view={view} />}
      {answer !== undefined && answers.length < 2 && <CycleNumbers answer={answer} view={view} />}
      <div className="station-body">
        <CycleInputs
          key={which}
          head={<WhichCycle pair={pair} which={which} choose={setChosen} change={setPair} />}
          texts={texts}
          change={change}
          cycle={answer?.cycle}
          view={view}
        />
        <div className="station-pictures">
          {answers.length > 0 && <Pictures answers={answers} view={view} />}
          {answer !== undefined && (
            <Tables answer={answer} name={answers.length === 2 ? which : undefined} view={view} />
          )}
        </div>
      </div>
    </Paper>
  );
}

interface Begun {
  readonly texts: CycleTexts;
  readonly offer: CycleOffer;
}

/**
 * The fields that a fluid begins with where those of the start lie outside its dome and nobody has typed there yet.
 * @param begins  what it offers in their place, until it is taken
 */
function useBegun(
  texts: CycleTexts,
  begins: CycleOffer | undefined,
  take: (texts: CycleTexts) => void,
): Begun | undefined {
  const [begun, setBegun] = useState<Begun | undefined>(undefined);
  // Taken once, when it comes.
  useEffect(() => {
    if (begins === undefined) return;
    const next = withLevels(texts, begins);
    setBegun({ texts: next, offer: begins });
    take(next);
  }, [begins]);
  return begun;
}

function begunWords({ refrigerant }: CycleTexts, offer: CycleOffer): string {
  return `${refrigerant} begins with ${sayOffer(offer)}: where the others begin it does not both boil and condense.`;
}

function BlendNote({ cycles }: { cycles: readonly TextbookCycle[] }): ReactNode {
  const gliding = cycles.filter(({ condensing }) => condensing.glide !== undefined);
  const names = [...new Set(gliding.map(({ refrigerant }) => refrigerant))];
  if (names.length === 0) return null;
  const are = names.length === 1 ? 'is a blend: its' : 'are blends: their';
  return (
    <p className="quiet">
      {listed(names)} {are} evaporating and condensing temperatures are dew temperatures; superheat counts from dew,
      subcooling from bubble. Between bubble and dew, temperature, enthalpy and entropy are taken as linear in the
      vapour share (glide approximation); what error that makes lies in the work lost in expansion and evaporator.
    </p>
  );
}

function StudyOnlyFluids({ names }: { names: readonly string[] }): ReactNode {
  return [...new Set(names)].map((name) => {
    const words = studyOnlyWords(name);
    return (
      words !== undefined && (
        <p key={name} className="study-only">
          <StateMark kind="look" word={words} />
        </p>
      )
    );
  });
}

function answerOf(answers: readonly CycleAnswer[], view: UnitView): string {
  const [first, second] = answers;
  if (first === undefined) return 'A loop between two temperatures, without a tank.';
  if (second === undefined) return cycleSentence(first.cycle, view);
  const [a, b] = [first.cycle.heatingCop, second.cycle.heatingCop];
  const [more, less] = a >= b ? ['A', 'B'] : ['B', 'A'];
  const times = (Math.max(a, b) / Math.min(a, b)).toFixed(2);
  const compared = times === '1.00' ? 'both give the same heat' : `${more} gives ${times} times the heat of ${less}`;
  return `For the same work ${compared}: heating COP ${a.toFixed(2)} for A, ${b.toFixed(2)} for B. Textbook cycles, not electricity: no motor, fan or pump is in them.`;
}

interface WhichCycleProps {
  readonly pair: CyclePair;
  readonly which: Which;
  readonly choose: (which: Which) => void;
  readonly change: (pair: CyclePair) => void;
}

/** Lays a second cycle over the first, beginning as its copy; says whose fields are shown; takes it away again. */
function WhichCycle({ pair, which, choose, change }: WhichCycleProps): ReactNode {
  if (pair.second === undefined) {
    return (
      <button
        type="button"
        className="linkish"
        onClick={() => {
          change({ ...pair, second: pair.first });
          choose('second');
        }}
      >
        lay a second cycle over it
      </button>
    );
  }
  return (
    <div className="which-cycle">
      <Choice
        legend="Fields of"
        value={which}
        options={[
          ['first', 'Cycle A'],
          ['second', 'Cycle B'],
        ]}
        choose={choose}
      />
      <button
        type="button"
        className="linkish"
        onClick={() => {
          change({ first: pair[which === 'first' ? 'second' : 'first'] ?? pair.first, second: undefined });
          choose('first');
        }}
      >
        take cycle {which === 'first' ? 'A' : 'B'} away
      </button>
    </div>
  );
}

interface ProblemsProps extends CycleState {
  readonly label: string | undefined;
  readonly take: (offer: CycleOffer) => void;
}

function Problems({ label, answer, problems, offer, take }: ProblemsProps): ReactNode {
  if (problems.length === 0) return null;
  const of = label === undefined ? '' : `${label}: `;
  return (
    <div className="notice notice-stop" role="alert">
      <div>
        {answer !== undefined && (
          <p>
            <strong>
              {of === '' ? 'No' : `${of}no`} cycle for the fields as they stand. What is shown belongs to the last that
              had one.
            </strong>
          </p>
        )}
        <ul>
          {problems.map((problem) => (
            <li key={problem}>
              {answer === undefined && of}
              {problem}
            </li>
          ))}
        </ul>
        {offer !== undefined && (
          <button type="button" className="plain" onClick={() => take(offer)}>
            Take {sayOffer(offer)}
          </button>
        )}
      </div>
    </div>
  );
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
    case 'wetSuction':
      return 'The compressor draws in wet gas: liquid in a compressor breaks it.';
    case 'wetCompression':
      return 'The gas would leave the compressor wet, or would without losses: liquid in a compressor breaks it.';
    case 'negativeExergyDestruction':
      return `The loss of the ${part} comes out negative: heat would flow from cold to warm. Say what is ${part === 'condenser' ? 'heated' : 'cooled'} (under “I know more”).`;
  }
}

function Pictures({ answers, view }: { answers: readonly CycleAnswer[]; view: UnitView }): ReactNode {
  const [first, second] = answers;
  const charts = useMemo(() => {
    if (first === undefined) return [];
    const cycles = second === undefined ? ([first.diagram] as const) : ([first.diagram, second.diagram] as const);
    return (['pressureEnthalpy', 'temperatureEntropy'] as const).map((plane) => cyclesChart(cycles, plane, view));
  }, [first, second, view]);
  return charts.map((chart) => <Chart key={chart.y.label} chart={chart} />);
}

interface TablesProps {
  readonly answer: CycleAnswer;
  readonly name: Which | undefined;
  readonly view: UnitView;
}

/** Tables of the one cycle whose fields are shown. */
function Tables({ answer, name, view }: TablesProps): ReactNode {
  const of = name === undefined ? '' : ` of cycle ${name === 'first' ? 'A' : 'B'}`;
  return (
    <>
      <CycleFlows answer={answer} view={view} />
      <section className="block">
        <h3>States{of}</h3>
        <DataTable
          table={stateTable(answer.cycle.points, view, answer.diagram.referenceState, answer.name)}
          workings={answer.workings}
        />
        <Transport transport={answer.transport} view={view} />
      </section>
      <ExergyLost answer={answer} view={view} />
    </>
  );
}
