// Cycle alone: the textbook cycle of a refrigerant without any tank, with its pictures, its states, its COPs and where
// its work is lost. Not electricity: no motor, fan or pump is in it.

import { type ReactNode, useEffect, useMemo, useState } from 'react';
import { type QuantityName, readQuantity, sayQuantity, type UnitView } from '../../quantities/index.ts';
import { Chart } from '../charts/chart.tsx';
import { isobarsFor, isothermsFor } from '../charts/families.ts';
import { pressureEnthalpyChart, stateTable, temperatureEntropyChart } from '../charts/property-diagrams.ts';
import { unlessAlike } from '../fields/design-field.tsx';
import { ChoiceField, TextField } from '../fields/field.tsx';
import { useWorkbench } from '../state/context.tsx';
import { refrigerantChoices } from '../state/refrigerants.ts';
import { type BarRow, Bars } from '../ui/bars.tsx';
import { DataTable } from '../ui/data-table.tsx';
import { exactly, NumberItem, Numbers } from '../ui/number.tsx';
import type { CycleAnswer, CycleForm } from '../worker/cycle.ts';
import { stationTitles } from './names.ts';

type NumberKey = 'evaporating' | 'condensing' | 'superheat' | 'subcooling' | 'isentropicEfficiency';
type CycleTexts = Readonly<Record<NumberKey, string>> & { readonly refrigerant: string };

const fields: readonly {
  readonly key: NumberKey;
  readonly label: string;
  readonly help: string;
  readonly quantity: QuantityName;
}[] = [
  { key: 'evaporating', label: 'Evaporating', help: 'Saturation temperature while boiling.', quantity: 'temperature' },
  { key: 'condensing', label: 'Condensing', help: 'Saturation temperature while condensing.', quantity: 'temperature' },
  {
    key: 'superheat',
    label: 'Superheat',
    help: 'Of the gas into the compressor, above evaporating.',
    quantity: 'temperatureDifference',
  },
  {
    key: 'subcooling',
    label: 'Subcooling',
    help: 'Of the liquid out of the condenser, below condensing.',
    quantity: 'temperatureDifference',
  },
  {
    key: 'isentropicEfficiency',
    label: 'Isentropic efficiency',
    help: 'Work of a loss-free compressor over the work done on the gas.',
    quantity: 'fraction',
  },
];

const startTexts: CycleTexts = {
  refrigerant: 'R134a',
  evaporating: '0 °C',
  condensing: '40 °C',
  superheat: '5 K',
  subcooling: '3 K',
  isentropicEfficiency: '70 %',
};

export function CycleAlone({ view }: { view: UnitView }): ReactNode {
  const [texts, setTexts] = useState<CycleTexts>(startTexts);
  const { answer, problems } = useCycle(texts, view);
  const commit = (key: keyof CycleTexts, quantity?: QuantityName) => (text: string) => {
    if (quantity !== undefined) {
      const read = readQuantity(text, quantity);
      if (!read.ok) return `“${text}” was not understood; write ${read.problem.expected}.`;
    }
    setTexts({ ...texts, [key]: text });
    return undefined;
  };
  return (
    <article className="station" aria-labelledby="station-title">
      <header className="station-head">
        <h2 id="station-title" tabIndex={-1}>
          {stationTitles['cycle-alone']}
        </h2>
        <p className="station-answer">
          {answer === undefined ? 'A loop between two temperatures, without a tank.' : answerSentence(answer, view)}
        </p>
        {problems.length > 0 && (
          <div className="notice notice-stop" role="alert">
            <ul>
              {problems.map((problem) => (
                <li key={problem}>{problem}</li>
              ))}
            </ul>
          </div>
        )}
        {answer !== undefined && <CycleNumbers answer={answer} view={view} />}
      </header>
      <div className="station-body">
        <section className="station-inputs" aria-labelledby="station-inputs-title">
          <h3 id="station-inputs-title">What it rests on</h3>
          <div className="fields">
            <ChoiceField
              label="Refrigerant"
              value={texts.refrigerant}
              options={refrigerantChoices}
              commit={commit('refrigerant')}
            />
            {fields.map(({ key, label, help, quantity }) => (
              <TextField
                key={key}
                label={label}
                help={help}
                text={texts[key]}
                understood={understood(texts[key], quantity, view)}
                commit={commit(key, quantity)}
              />
            ))}
          </div>
        </section>
        {answer !== undefined && <CyclePictures answer={answer} view={view} />}
      </div>
    </article>
  );
}

function understood(text: string, quantity: QuantityName, view: UnitView): string | undefined {
  const read = readQuantity(text, quantity);
  return read.ok ? unlessAlike(text, sayQuantity(read.estimate.likely, quantity, view)) : undefined;
}

function useCycle(texts: CycleTexts, view: UnitView) {
  const { engine } = useWorkbench();
  const [answer, setAnswer] = useState<CycleAnswer | undefined>(undefined);
  const [problems, setProblems] = useState<readonly string[]>([]);
  const form = useMemo(() => formOf(texts, view), [texts, view]);
  useEffect(() => {
    if (form === undefined) return;
    let dropped = false;
    void engine.ask({ kind: 'cycle', form }).then((outcome) => {
      if (dropped || outcome.outcome === 'superseded') return;
      if (outcome.outcome === 'answered') {
        setAnswer(outcome.answer);
        setProblems([]);
      } else {
        setProblems(outcome.problems.map((problem) => problem.message));
      }
    });
    return () => {
      dropped = true;
    };
  }, [engine, form]);
  return { answer, problems };
}

function formOf(texts: CycleTexts, view: UnitView): CycleForm | undefined {
  const numbers: Partial<Record<NumberKey, number>> = {};
  for (const { key, quantity } of fields) {
    const read = readQuantity(texts[key], quantity);
    if (!read.ok) return undefined;
    numbers[key] = read.estimate.likely;
  }
  return {
    refrigerant: texts.refrigerant,
    ...(numbers as Readonly<Record<NumberKey, number>>),
    isotherms: isothermsFor(view),
    isobars: isobarsFor(view),
  };
}

function answerSentence({ cycle }: CycleAnswer, view: UnitView): string {
  const lift = sayQuantity(
    cycle.condensing.temperature - cycle.evaporating.temperature,
    'temperatureDifference',
    view,
    3,
  );
  return `${cycle.refrigerant} lifted over ${lift} gives ${cycle.heatingCop.toFixed(2)} times the work put into the gas as heat. This is a textbook cycle, not electricity: no motor, fan or pump is in it.`;
}

function CycleNumbers({ answer, view }: { answer: CycleAnswer; view: UnitView }): ReactNode {
  const { cycle } = answer;
  const outlet = cycle.points[2];
  const digits = (value: number, decimals: number) => value.toFixed(decimals);
  return (
    <Numbers>
      <Plain
        label="Heating COP"
        value={digits(cycle.heatingCop, 3)}
        note={`q_H / w; reversible: ${digits(cycle.carnotHeatingCop, 2)}`}
      />
      <Plain label="Cooling COP" value={digits(cycle.coolingCop, 3)} note="q_L / w" />
      <Plain label="Specific work" value={sayQuantity(cycle.specificWork, 'enthalpy', view, 4)} note="w = h2 − h1" />
      <Plain
        label="Heat given, condenser"
        value={sayQuantity(cycle.heatDelivered, 'enthalpy', view, 4)}
        note="q_H = h2 − h3"
      />
      <Plain
        label="Heat taken, evaporator"
        value={sayQuantity(cycle.heatTaken, 'enthalpy', view, 4)}
        note="q_L = h1 − h4"
      />
      <Plain
        label="Pressure ratio"
        value={digits(cycle.pressureRatio, 2)}
        note={`${sayQuantity(cycle.evaporating.pressure, 'pressure', view)} to ${sayQuantity(cycle.condensing.pressure, 'pressure', view)}`}
      />
      <NumberItem
        label="Gas out of the compressor"
        band={exactly(outlet.temperature)}
        quantity="temperature"
        view={view}
      />
      <Plain
        label="Heat per volume drawn in"
        value={sayQuantity(cycle.volumetricHeatingCapacity, 'volumetricCapacity', view, 4)}
        note="q_H ρ1"
      />
    </Numbers>
  );
}

function Plain({ label, value, note }: { label: string; value: string; note: string }): ReactNode {
  return (
    <div className="number-item">
      <dt>{label}</dt>
      <dd className="number-value">{value}</dd>
      <dd className="number-range">{note}</dd>
    </div>
  );
}

function CyclePictures({ answer, view }: { answer: CycleAnswer; view: UnitView }): ReactNode {
  const { cycle, diagram } = answer;
  const pressureEnthalpy = useMemo(() => pressureEnthalpyChart(diagram, view), [diagram, view]);
  const temperatureEntropy = useMemo(() => temperatureEntropyChart(diagram, view), [diagram, view]);
  return (
    <div className="station-pictures">
      <Chart chart={pressureEnthalpy} />
      <Chart chart={temperatureEntropy} />
      <section className="block">
        <h3>States</h3>
        <DataTable table={stateTable(cycle.points, view)} />
      </section>
      <section className="block">
        <h3>Where the work is lost</h3>
        <p className="quiet">{cycle.exergyBasis.words}</p>
        <Bars
          caption="Exergy destroyed in each part, per mass of refrigerant, and its share of the work."
          heads={['Part', 'Lost', 'Per mass', 'Share of the work']}
          rows={exergyRows(answer, view)}
        />
      </section>
    </div>
  );
}

function exergyRows({ cycle }: CycleAnswer, view: UnitView): BarRow[] {
  const { exergyDestruction: lost, specificWork } = cycle;
  const parts = [
    ['Compressor', lost.compressor, 'electric'],
    ['Condenser', lost.condenser, 'into'],
    ['Expansion', lost.expansion, 'ink'],
    ['Evaporator', lost.evaporator, 'cool'],
  ] as const;
  const row = (label: string, value: number, look: BarRow['look'], total = false): BarRow => ({
    key: label,
    label,
    band: exactly(value),
    likely: sayQuantity(value, 'enthalpy', view, 3),
    range: sayQuantity(value / specificWork, 'fraction', view, 3),
    look,
    total,
  });
  return [...parts.map(([label, value, look]) => row(label, value, look)), row('All parts', lost.total, 'ink', true)];
}
