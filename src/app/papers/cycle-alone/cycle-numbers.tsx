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

/** A result of the cycle: its label, what is said of it, how it comes about, and its name among the steps. */
type ResultRow = readonly [label: string, value: string, note: string, of: string];

export function CycleNumbers({ answer, view }: { answer: CycleAnswer; view: UnitView }): ReactNode {
  return <ResultRows rows={[...rowsOf(answer.cycle, view), ...blendRows(answer, view)]} answer={answer} />;
}

function rowsOf(cycle: TextbookCycle, view: UnitView): readonly ResultRow[] {
  const perMass = (value: number) => sayFixed(value, 'enthalpy', view, 4);
  const [low, high] = [cycle.evaporating, cycle.condensing].map(({ pressure }) =>
    sayFixed(pressure, 'pressure', view, 4),
  );
  return [
    ['Heating COP', cycle.heatingCop.toFixed(3), 'q_H / w', 'heatingCop'],
    ['Cooling COP', cycle.coolingCop.toFixed(3), 'q_L / w', 'coolingCop'],
    [
      'COP of a reversible cycle',
      cycle.carnotHeatingCop.toFixed(2),
      'heating, between the two dew temperatures',
      'carnotHeatingCop',
    ],
    ['Specific work', perMass(cycle.specificWork), 'w = h2 − h1', 'specificWork'],
    ['Heat given, condenser', perMass(cycle.heatDelivered), 'q_H = h2 − h3', 'heatDelivered'],
    ['Heat taken, evaporator', perMass(cycle.heatTaken), 'q_L = h1 − h4', 'heatTaken'],
    ['Pressure ratio', cycle.pressureRatio.toFixed(3), `${low} to ${high}`, 'pressureRatio'],
    compressionRow(cycle, view),
    [
      'Heat per volume drawn in',
      sayFixed(cycle.volumetricHeatingCapacity, 'volumetricCapacity', view, 4),
      'q_H · ρ1',
      'volumetricHeatingCapacity',
    ],
    ...exchangerRows(cycle, view),
  ];
}

/** At one pressure a blend boils and condenses over a span of temperatures. */
function blendRows({ cycle }: CycleAnswer, view: UnitView): readonly ResultRow[] {
  return (['evaporating', 'condensing'] as const).flatMap((level) => {
    const { temperature, bubbleTemperature, glide } = cycle[level];
    if (glide === undefined || bubbleTemperature === undefined) return [];
    const [bubble, dew] = [bubbleTemperature, temperature].map((value) => say(value, 'temperature', view, 3));
    const said = say(glide, 'temperatureDifference', view, 2);
    return [[`Glide, ${level}`, said, `bubble ${bubble}, dew ${dew}`, `${level}.glide`] as const];
  });
}

/** Of efficiency and outlet temperature the one that was not given. */
function compressionRow(cycle: TextbookCycle, view: UnitView): ResultRow {
  if (cycle.compressionGiven === 'dischargeTemperature') {
    const efficiency = sayFixed(cycle.isentropicEfficiency, 'fraction', view, 4);
    return ['Isentropic efficiency', efficiency, '(h2s − h1)/(h2 − h1)', 'isentropicEfficiency'];
  }
  const outlet = sayQuantity(cycle.points[2].temperature, 'temperature', view, 3);
  const note = 'at h2 and the condensing pressure';
  return ['Gas out of the compressor', outlet, note, 'points.compressorOutlet.enthalpy'];
}

function exchangerRows({ heatExchanger }: TextbookCycle, view: UnitView): readonly ResultRow[] {
  if (heatExchanger === undefined) return [];
  const note = `effectiveness ${sayFixed(heatExchanger.effectiveness, 'fraction', view, 3)}, on enthalpy`;
  return [['Heat in the exchanger', sayFixed(heatExchanger.heat, 'enthalpy', view, 4), note, 'heatExchanger.heat']];
}

/** The same loop per second, where a flow was given. */
export function CycleFlows({ answer, view }: { answer: CycleAnswer; view: UnitView }): ReactNode {
  const { perSecond } = answer.cycle;
  if (perSecond === undefined) return null;
  const watts = (value: number) => say(value, 'power', view, 4);
  const rows: readonly ResultRow[] = [
    ['Mass flow', say(perSecond.massFlow, 'massFlow', view, 4), 'of the refrigerant', 'perSecond.massFlow'],
    ['Heating capacity', watts(perSecond.heatingCapacity), 'mass flow · q_H', 'perSecond.heatingCapacity'],
    ['Cooling capacity', watts(perSecond.coolingCapacity), 'mass flow · q_L', 'perSecond.coolingCapacity'],
    [
      'Power on the gas',
      say(perSecond.compressorPower, 'electricPower', view, 4),
      'mass flow · w; not electricity',
      'perSecond.compressorPower',
    ],
    [
      'Gas drawn in',
      say(perSecond.inletVolumeFlow, 'volumeFlow', view, 4),
      'mass flow / density at 1',
      'perSecond.inletVolumeFlow',
    ],
  ];
  return (
    <section className="block">
      <h3>With this much flowing</h3>
      <p className="quiet">
        {flowSentences[perSecond.given]}
        {perSecond.volumetricEfficiencyAssumed === true &&
          ' The cylinder is taken to fill completely: volumetric efficiency 100 %.'}
      </p>
      <ResultRows rows={rows} answer={answer} />
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

function ResultRows({ rows, answer }: { rows: readonly ResultRow[]; answer: CycleAnswer }): ReactNode {
  return (
    <Numbers>
      {rows.map(([label, value, note, of]) => (
        <div key={label} className="number-item">
          <dt>{label}</dt>
          <dd className="number-value">{value}</dd>
          <dd className="number-range">{note}</dd>
          <dd>
            <HowComputed workings={answer.workings} result={`${answer.name}.${of}`} of={label} />
          </dd>
        </div>
      ))}
    </Numbers>
  );
}
