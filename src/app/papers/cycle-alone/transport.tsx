// Viscosity and thermal conductivity of the states, behind one step: whoever sizes a pipe or an exchanger wants them, a
// textbook cycle does not. An estimate is called one.

import type { ReactNode } from 'react';
import { type ChartTable, inOrderOfFlow, stateTitle } from '../../../charts/index.ts';
import { quantityUnit, toView, type UnitView } from '../../../quantities/index.ts';
import { DataTable } from '../../ui/data-table.tsx';
import type { CycleTransport } from '../../worker/cycle-transport.ts';

export function Transport({ transport, view }: { transport: CycleTransport; view: UnitView }): ReactNode {
  return (
    <details className="cycle-transport">
      <summary>Viscosity and conductivity of these states</summary>
      <DataTable table={transportTable(transport, view)} />
      <ul className="plain-list quiet">
        {sourceLines(transport).map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </details>
  );
}

const properties = [
  ['viscosity', 'Viscosity'],
  ['conductivity', 'Thermal conductivity'],
] as const;

export function transportTable(transport: CycleTransport, view: UnitView): ChartTable {
  return {
    caption:
      'Viscosity and thermal conductivity, of one phase only: of a mixture of liquid and vapour there is neither.',
    columns: [
      { label: 'State' },
      ...properties.map(([property, label]) => ({
        label: transport[property].isEstimate ? `${label}, estimate` : label,
        unit: quantityUnit(property, view),
        numeric: true,
      })),
    ],
    rows: inOrderOfFlow(transport.points).map((point) => [
      stateTitle(point.name),
      ...properties.map(([property]) => {
        const value = point[property];
        return value === null ? '–' : toView(value, property, view).toPrecision(4);
      }),
    ]),
  };
}

/** "Viscosity: estimate by corresponding states, …; what is known of its truth." */
export function sourceLines(transport: CycleTransport): readonly string[] {
  return properties.map(([property, label]) => {
    const { isEstimate, source, truth } = transport[property];
    const from = isEstimate ? `an estimate (${source})` : source;
    return `${label}: ${from}${truth === undefined ? '' : `. ${truth}`}`.replace(/\.?$/, '.');
  });
}
