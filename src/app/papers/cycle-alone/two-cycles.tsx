// Two textbook cycles beside one another: every result of A and of B, and the one by the other.

import type { ReactNode } from 'react';
import type { ChartTable } from '../../../charts/index.ts';
import type { TextbookCycle } from '../../../loop/index.ts';
import type { QuantityName, UnitView } from '../../../quantities/index.ts';
import { DataTable } from '../../ui/data-table.tsx';
import { sayFixed } from '../../ui/say.ts';
import type { CycleAnswer } from '../../worker/cycle.ts';

type Row = readonly [label: string, quantity: QuantityName, read: (cycle: TextbookCycle) => number | undefined];

const rows: readonly Row[] = [
  ['Heating COP', 'ratio', (cycle) => cycle.heatingCop],
  ['Cooling COP', 'ratio', (cycle) => cycle.coolingCop],
  ['COP of a reversible cycle', 'ratio', (cycle) => cycle.carnotHeatingCop],
  ['Second-law efficiency', 'fraction', (cycle) => cycle.exergyBasis.secondLawEfficiency],
  ['Specific work', 'enthalpy', (cycle) => cycle.specificWork],
  ['Heat given, condenser', 'enthalpy', (cycle) => cycle.heatDelivered],
  ['Heat taken, evaporator', 'enthalpy', (cycle) => cycle.heatTaken],
  ['Heat in the exchanger', 'enthalpy', (cycle) => cycle.heatExchanger?.heat],
  ['Evaporating pressure', 'pressure', (cycle) => cycle.evaporating.pressure],
  ['Condensing pressure', 'pressure', (cycle) => cycle.condensing.pressure],
  ['Pressure ratio', 'ratio', (cycle) => cycle.pressureRatio],
  ['Gas out of the compressor', 'temperature', (cycle) => cycle.points[2].temperature],
  ['Heat per volume drawn in', 'volumetricCapacity', (cycle) => cycle.volumetricHeatingCapacity],
  ['Work lost in all parts', 'enthalpy', (cycle) => cycle.exergyDestruction.total],
  ['Mass flow', 'massFlow', (cycle) => cycle.perSecond?.massFlow],
  ['Heating capacity', 'power', (cycle) => cycle.perSecond?.heatingCapacity],
  ['Power on the gas', 'electricPower', (cycle) => cycle.perSecond?.compressorPower],
];

export function TwoCycles({
  answers,
  view,
}: {
  readonly answers: readonly CycleAnswer[];
  readonly view: UnitView;
}): ReactNode {
  const [first, second] = answers;
  if (first === undefined || second === undefined) return null;
  return <DataTable table={comparison(first.cycle, second.cycle, view)} />;
}

/** Rows that neither cycle has are left out; a temperature has no meaning as "times". */
export function comparison(first: TextbookCycle, second: TextbookCycle, view: UnitView): ChartTable {
  return {
    caption: 'Both cycles side by side. Each number opens step by step where the fields of its cycle are shown.',
    columns: [
      { label: 'Result' },
      { label: `A, ${first.refrigerant}`, numeric: true },
      { label: `B, ${second.refrigerant}`, numeric: true },
      { label: 'B by A', numeric: true },
    ],
    rows: rows.flatMap(([label, quantity, read]) => {
      const [a, b] = [read(first), read(second)];
      if (a === undefined && b === undefined) return [];
      const say = (value: number | undefined) => (value === undefined ? '–' : sayFixed(value, quantity, view, 4));
      const isLevel = quantity === 'temperature';
      const share = a === undefined || b === undefined || a === 0 || isLevel ? '–' : (b / a).toFixed(3);
      return [[label, say(a), say(b), share]];
    }),
  };
}
