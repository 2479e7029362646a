// Two textbook cycles beside one another: every result of A and of B, and the one by the other.

import { type ReactNode, useMemo } from 'react';
import type { ChartTable } from '../../../charts/index.ts';
import type { TextbookCycle } from '../../../loop/index.ts';
import type { QuantityName, UnitView } from '../../../quantities/index.ts';
import { DataTable } from '../../ui/data-table.tsx';
import { sayFixed } from '../../ui/say.ts';
import type { CycleAnswer } from '../../worker/cycle.ts';

type Row = readonly [
  label: string,
  quantity: QuantityName,
  read: (cycle: TextbookCycle) => number | undefined,
  /** Name of the result among the steps of its cycle. */
  name: string,
];

const rows: readonly Row[] = [
  ['Heating COP', 'ratio', (cycle) => cycle.heatingCop, 'heatingCop'],
  ['Cooling COP', 'ratio', (cycle) => cycle.coolingCop, 'coolingCop'],
  ['COP of a reversible cycle', 'ratio', (cycle) => cycle.carnotHeatingCop, 'carnotHeatingCop'],
  [
    'Second-law efficiency',
    'fraction',
    // Nothing useful is done where both bodies are at the dead state: then it would be nought whatever the cycle.
    ({ exergyBasis }) => (exergyBasis.minimumWork === 0 ? undefined : exergyBasis.secondLawEfficiency),
    'exergyBasis.secondLawEfficiency',
  ],
  ['Specific work', 'enthalpy', (cycle) => cycle.specificWork, 'specificWork'],
  ['Heat given, condenser', 'enthalpy', (cycle) => cycle.heatDelivered, 'heatDelivered'],
  ['Heat taken, evaporator', 'enthalpy', (cycle) => cycle.heatTaken, 'heatTaken'],
  ['Heat in the exchanger', 'enthalpy', (cycle) => cycle.heatExchanger?.heat, 'heatExchanger.heat'],
  ['Evaporating pressure', 'pressure', (cycle) => cycle.evaporating.pressure, 'evaporating.pressure'],
  ['Condensing pressure', 'pressure', (cycle) => cycle.condensing.pressure, 'condensing.pressure'],
  ['Glide, evaporating', 'temperatureDifference', (cycle) => cycle.evaporating.glide, 'evaporating.glide'],
  ['Glide, condensing', 'temperatureDifference', (cycle) => cycle.condensing.glide, 'condensing.glide'],
  ['Pressure ratio', 'ratio', (cycle) => cycle.pressureRatio, 'pressureRatio'],
  [
    'Gas out of the compressor',
    'temperature',
    (cycle) => cycle.points[2].temperature,
    'points.compressorOutlet.temperature',
  ],
  [
    'Heat per volume drawn in',
    'volumetricCapacity',
    (cycle) => cycle.volumetricHeatingCapacity,
    'volumetricHeatingCapacity',
  ],
  ['Work lost in all parts', 'enthalpy', (cycle) => cycle.exergyDestruction.total, 'exergyDestruction.total'],
  ['Mass flow', 'massFlow', (cycle) => cycle.perSecond?.massFlow, 'perSecond.massFlow'],
  ['Heating capacity', 'power', (cycle) => cycle.perSecond?.heatingCapacity, 'perSecond.heatingCapacity'],
  ['Power on the gas', 'electricPower', (cycle) => cycle.perSecond?.compressorPower, 'perSecond.compressorPower'],
];

export function TwoCycles({
  answers,
  view,
}: {
  readonly answers: readonly CycleAnswer[];
  readonly view: UnitView;
}): ReactNode {
  const [first, second] = answers;
  const workings = useMemo(() => answers.flatMap((answer) => answer.workings), [answers]);
  if (first === undefined || second === undefined) return null;
  return <DataTable table={comparison(first.cycle, second.cycle, view)} workings={workings} />;
}

/** Rows that neither cycle has are left out; a temperature has no meaning as "times". */
export function comparison(first: TextbookCycle, second: TextbookCycle, view: UnitView): ChartTable {
  const present = rows.filter(([, , read]) => read(first) !== undefined || read(second) !== undefined);
  return {
    caption: 'Both cycles side by side. Each number leads to its working, step by step.',
    columns: [
      { label: 'Result' },
      { label: `A, ${first.refrigerant}`, numeric: true },
      { label: `B, ${second.refrigerant}`, numeric: true },
      { label: 'B by A', numeric: true },
    ],
    rows: present.map(([label, quantity, read]) => {
      const [a, b] = [read(first), read(second)];
      const say = (value: number | undefined) => (value === undefined ? '–' : sayFixed(value, quantity, view, 4));
      const isLevel = quantity === 'temperature';
      const share = a === undefined || b === undefined || a === 0 || isLevel ? '–' : (b / a).toFixed(3);
      return [label, say(a), say(b), share];
    }),
    results: present.map(([, , , name]) => [undefined, `cycle.${name}`, `secondCycle.${name}`]),
  };
}
