// Results of the textbook cycle, each with its working: work, heats and COPs; the exchanger and the flows where asked.

import type { ReactNode } from 'react';
import type { MassFlowKey, TextbookCycle } from '../../../loop/index.ts';
import { sayQuantity, type UnitView } from '../../../quantities/index.ts';
import { HowComputed } from '../../ui/how-computed.tsx';
import { Numbers } from '../../ui/number.tsx';
import { say, sayFixed } from '../../ui/say.ts';
import type { CycleAnswer } from '../../worker/cycle.ts';

export function cycleSentence(cycle: TextbookCycle, view: UnitView): string {
  const lift = sayQuantity(
    cycle.condensing.temperature - cycle.evaporating.temperature,
    'temperatureDifference',
    view,
    3,
  );
  return `With ${cycle.refrigerant} and a lift of ${lift}, each unit of work put into the gas gives ${cycle.heatingCop.toFixed(2)} units of heat. This is a textbook cycle, not electricity: no motor, fan or pump is in it.`;
}

export function CycleNumbers({ answer, view }: { answer: CycleAnswer; view: UnitView }): ReactNode {
  const { cycle } = answer;
  const outlet = cycle.points[2];
  const isEfficiencyFound = cycle.compressionGiven === 'dischargeTemperature';
  const pressures = [cycle.evaporating, cycle.condensing].map(({ pressure }) =>
    sayFixed(pressure, 'pressure', view, 4),
  );
  return (
    <Numbers>
      <Result label="Heating COP" value={cycle.heatingCop.toFixed(3)} note="q_H / w" of="heatingCop" answer={answer} />
      <Result label="Cooling COP" value={cycle.coolingCop.toFixed(3)} note="q_L / w" of="coolingCop" answer={answer} />
      <Result
        label="COP of a reversible cycle"
        value={cycle.carnotHeatingCop.toFixed(2)}
        note="heating, between the two dew temperatures"
        of="carnotHeatingCop"
        answer={answer}
      />
      <Result
        label="Specific work"
        value={sayFixed(cycle.specificWork, 'enthalpy', view, 4)}
        note="w = h2 − h1"
        of="specificWork"
        answer={answer}
      />
      <Result
        label="Heat given, condenser"
        value={sayFixed(cycle.heatDelivered, 'enthalpy', view, 4)}
        note="q_H = h2 − h3"
        of="heatDelivered"
        answer={answer}
      />
      <Result
        label="Heat taken, evaporator"
        value={sayFixed(cycle.heatTaken, 'enthalpy', view, 4)}
        note="q_L = h1 − h4"
        of="heatTaken"
        answer={answer}
      />
      <Result
        label="Pressure ratio"
        value={cycle.pressureRatio.toFixed(3)}
        note={`${pressures[0]} to ${pressures[1]}`}
        of="pressureRatio"
        answer={answer}
      />
      {isEfficiencyFound ? (
        <Result
          label="Isentropic efficiency"
          value={sayFixed(cycle.isentropicEfficiency, 'fraction', view, 4)}
          note="(h2s − h1)/(h2 − h1)"
          of="isentropicEfficiency"
          answer={answer}
        />
      ) : (
        <Result
          label="Gas out of the compressor"
          value={sayQuantity(outlet.temperature, 'temperature', view, 3)}
          note="at h2 and the condensing pressure"
          of="points.compressorOutlet.enthalpy"
          answer={answer}
        />
      )}
      <Result
        label="Heat per volume drawn in"
        value={sayFixed(cycle.volumetricHeatingCapacity, 'volumetricCapacity', view, 4)}
        note="q_H · ρ1"
        of="volumetricHeatingCapacity"
        answer={answer}
      />
      {cycle.heatExchanger !== undefined && (
        <Result
          label="Heat in the exchanger"
          value={sayFixed(cycle.heatExchanger.heat, 'enthalpy', view, 4)}
          note={`effectiveness ${sayFixed(cycle.heatExchanger.effectiveness, 'fraction', view, 3)}, on enthalpy`}
          of="heatExchanger.heat"
          answer={answer}
        />
      )}
    </Numbers>
  );
}

/** The same loop per second, where a flow was given. */
export function CycleFlows({ answer, view }: { answer: CycleAnswer; view: UnitView }): ReactNode {
  const { perSecond } = answer.cycle;
  if (perSecond === undefined) return null;
  const result = (label: string, of: string, value: string, note: string) => (
    <Result label={label} value={value} note={note} of={`perSecond.${of}`} answer={answer} />
  );
  return (
    <section className="block">
      <h3>With this much flowing</h3>
      <p className="quiet">
        {flowSentences[perSecond.given]}
        {perSecond.volumetricEfficiencyAssumed === true &&
          ' The cylinder is taken to fill completely: volumetric efficiency 100 %.'}
      </p>
      <Numbers>
        {result('Mass flow', 'massFlow', say(perSecond.massFlow, 'massFlow', view, 4), 'of the refrigerant')}
        {result(
          'Heating capacity',
          'heatingCapacity',
          say(perSecond.heatingCapacity, 'power', view, 4),
          'mass flow · q_H',
        )}
        {result(
          'Cooling capacity',
          'coolingCapacity',
          say(perSecond.coolingCapacity, 'power', view, 4),
          'mass flow · q_L',
        )}
        {result(
          'Power on the gas',
          'compressorPower',
          say(perSecond.compressorPower, 'electricPower', view, 4),
          'mass flow · w; not electricity',
        )}
        {result(
          'Gas drawn in',
          'inletVolumeFlow',
          say(perSecond.inletVolumeFlow, 'volumeFlow', view, 4),
          'mass flow / density at 1',
        )}
      </Numbers>
    </section>
  );
}

const flowSentences: Readonly<Record<MassFlowKey, string>> = {
  massFlow: 'The mass flow is given.',
  coolingCapacity: 'The mass flow follows from the cooling capacity.',
  heatingCapacity: 'The mass flow follows from the heating capacity.',
  compressorPower: 'The mass flow follows from the power of the shaft into the gas.',
  displacement: 'The mass flow follows from the swept volume and the density of the gas drawn in.',
};

interface ResultProps {
  readonly label: string;
  readonly value: string;
  readonly note: string;
  /** Name of the result among the steps of the cycle. */
  readonly of: string;
  readonly answer: CycleAnswer;
}

function Result({ label, value, note, of, answer }: ResultProps): ReactNode {
  return (
    <div className="number-item">
      <dt>{label}</dt>
      <dd className="number-value">{value}</dd>
      <dd className="number-range">{note}</dd>
      <dd>
        <HowComputed workings={answer.workings} result={`${answer.name}.${of}`} of={label} />
      </dd>
    </div>
  );
}
