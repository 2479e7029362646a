// Results of the textbook cycle, each with its working: work, heats, COPs, and the work lost in each part.

import type { ReactNode } from 'react';
import type { TextbookCycle } from '../../../loop/index.ts';
import { sayQuantity, type UnitView, type WorkingStep } from '../../../quantities/index.ts';
import { type BarRow, Bars } from '../../ui/bars.tsx';
import { HowComputed } from '../../ui/how-computed.tsx';
import { exactly, Numbers } from '../../ui/number.tsx';
import { sayFixed } from '../../ui/say.ts';
import type { CycleAnswer } from '../../worker/cycle.ts';

export function cycleSentence(cycle: TextbookCycle, view: UnitView): string {
  const lift = sayQuantity(
    cycle.condensing.temperature - cycle.evaporating.temperature,
    'temperatureDifference',
    view,
    3,
  );
  return `${cycle.refrigerant} lifted over ${lift} gives ${cycle.heatingCop.toFixed(2)} times the work put into the gas as heat. This is a textbook cycle, not electricity: no motor, fan or pump is in it.`;
}

export function CycleNumbers({ answer, view }: { answer: CycleAnswer; view: UnitView }): ReactNode {
  const { cycle, workings } = answer;
  const outlet = cycle.points[2];
  const isEfficiencyFound = cycle.compressionGiven === 'dischargeTemperature';
  const pressures = [cycle.evaporating, cycle.condensing].map(({ pressure }) =>
    sayFixed(pressure, 'pressure', view, 4),
  );
  return (
    <Numbers>
      <Result
        label="Heating COP"
        value={cycle.heatingCop.toFixed(3)}
        note="q_H / w"
        of="heatingCop"
        workings={workings}
      />
      <Result
        label="Cooling COP"
        value={cycle.coolingCop.toFixed(3)}
        note="q_L / w"
        of="coolingCop"
        workings={workings}
      />
      <Result
        label="COP of a reversible cycle"
        value={cycle.carnotHeatingCop.toFixed(2)}
        note="heating, between the two dew temperatures"
        of="carnotHeatingCop"
        workings={workings}
      />
      <Result
        label="Specific work"
        value={sayFixed(cycle.specificWork, 'enthalpy', view, 4)}
        note="w = h2 − h1"
        of="specificWork"
        workings={workings}
      />
      <Result
        label="Heat given, condenser"
        value={sayFixed(cycle.heatDelivered, 'enthalpy', view, 4)}
        note="q_H = h2 − h3"
        of="heatDelivered"
        workings={workings}
      />
      <Result
        label="Heat taken, evaporator"
        value={sayFixed(cycle.heatTaken, 'enthalpy', view, 4)}
        note="q_L = h1 − h4"
        of="heatTaken"
        workings={workings}
      />
      <Result
        label="Pressure ratio"
        value={cycle.pressureRatio.toFixed(3)}
        note={`${pressures[0]} to ${pressures[1]}`}
        of="pressureRatio"
        workings={workings}
      />
      {isEfficiencyFound ? (
        <Result
          label="Isentropic efficiency"
          value={sayFixed(cycle.isentropicEfficiency, 'fraction', view, 4)}
          note="(h2s − h1)/(h2 − h1)"
          of="isentropicEfficiency"
          workings={workings}
        />
      ) : (
        <Result
          label="Gas out of the compressor"
          value={sayQuantity(outlet.temperature, 'temperature', view, 3)}
          note="at h2 and the condensing pressure"
          of="points.compressorOutlet.enthalpy"
          workings={workings}
        />
      )}
      <Result
        label="Heat per volume drawn in"
        value={sayFixed(cycle.volumetricHeatingCapacity, 'volumetricCapacity', view, 4)}
        note="q_H · ρ1"
        of="volumetricHeatingCapacity"
        workings={workings}
      />
    </Numbers>
  );
}

interface ResultProps {
  readonly label: string;
  readonly value: string;
  readonly note: string;
  /** Name of the result among the steps of the cycle. */
  readonly of: string;
  readonly workings: readonly WorkingStep[];
}

function Result({ label, value, note, of, workings }: ResultProps): ReactNode {
  return (
    <div className="number-item">
      <dt>{label}</dt>
      <dd className="number-value">{value}</dd>
      <dd className="number-range">{note}</dd>
      <dd>
        <HowComputed workings={workings} result={`cycle.${of}`} of={label} />
      </dd>
    </div>
  );
}

export function ExergyLost({ answer, view }: { answer: CycleAnswer; view: UnitView }): ReactNode {
  return (
    <section className="block">
      <h3>Where the work is lost</h3>
      <p className="quiet">{exergySentence(answer.cycle, view)}</p>
      <Bars
        caption="Exergy (what could have been work) destroyed in each part, per mass of refrigerant, and its share of the work."
        heads={['Part', 'Lost', 'Per mass', 'Share of the work']}
        rows={exergyRows(answer.cycle, view)}
      />
      <div className="hows">
        {lossParts.map(([label, part]) => (
          <HowComputed
            key={part}
            workings={answer.workings}
            result={`cycle.exergyDestruction.${part}`}
            of={label}
            words={`${label}: how computed`}
          />
        ))}
      </div>
    </section>
  );
}

/** What is counted as heated and as cooled, in the view's units: without it the account means nothing. */
export function exergySentence({ exergyBasis: basis }: TextbookCycle, view: UnitView): string {
  const said = (kelvin: number) => sayQuantity(kelvin, 'temperature', view, 4);
  const body = (kelvin: number) =>
    kelvin === basis.deadState ? 'something at the dead state' : `something at ${said(kelvin)}`;
  const start = `The heat is counted as given to ${body(basis.sinkTemperature)} and taken from ${body(basis.sourceTemperature)}. The dead state, at which heat can do no work, is ${said(basis.deadState)}.`;
  return basis.minimumWork === 0
    ? `${start} Nothing useful is done that way, so the losses add up to all the work put in.`
    : `${start} A cycle without losses would need ${sayFixed(basis.minimumWork, 'enthalpy', view, 3)} for the same: ${sayFixed(basis.secondLawEfficiency, 'fraction', view, 3)} of the work put in.`;
}

const lossParts = [
  ['Compressor', 'compressor', 'electric'],
  ['Condenser', 'condenser', 'into'],
  ['Expansion', 'expansion', 'ink'],
  ['Evaporator', 'evaporator', 'cool'],
  ['All parts', 'total', 'ink'],
] as const;

function exergyRows({ exergyDestruction: lost, specificWork }: TextbookCycle, view: UnitView): BarRow[] {
  return lossParts.map(([label, part, look]) => ({
    key: label,
    label,
    band: exactly(lost[part]),
    likely: sayFixed(lost[part], 'enthalpy', view, 3),
    range: sayFixed(lost[part] / specificWork, 'fraction', view, 3),
    look,
    total: part === 'total',
  }));
}
