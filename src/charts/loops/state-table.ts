// The table of the states of a loop beside its pictures, and what its states are called: numbered in order of flow.

import type { ReferenceStateName } from '../../matter/refrigerants/index.ts';
import { fixedDecimals, quantityUnit, toView, type UnitView } from '../../quantities/index.ts';
import type { ChartTable } from '../specification.ts';
import type { DiagramState } from './loop-diagram.ts';
import { sayReferenceState } from './reference-state.ts';

const pointWords: Readonly<Record<string, string>> = {
  compressorInlet: 'into the compressor',
  compressorOutletIsentropic: 'out of a loss-free compressor',
  compressorOutlet: 'out of the compressor',
  condenserOutlet: 'out of the condenser',
  expansionInlet: 'into the expansion',
  evaporatorInlet: 'into the evaporator',
  evaporatorOutlet: 'out of the evaporator',
};

/** States in order of flow, numbered as in the picture: 2s without losses, 3′ and 4′ at the far ends of a heat exchanger. */
export const pointNumbers: Readonly<Record<string, string>> = {
  compressorInlet: '1',
  compressorOutletIsentropic: '2s',
  compressorOutlet: '2',
  condenserOutlet: '3',
  expansionInlet: '3′',
  evaporatorInlet: '4',
  evaporatorOutlet: '4′',
};

export function stateTitle(name: string): string {
  return `${pointNumbers[name] ?? ''} ${pointWords[name] ?? name}`.trim();
}

/** Properties of a state behind the columns of its table, as the steps of the working name them. */
const columnResults: readonly (string | undefined)[] = [
  undefined,
  'temperature',
  'pressure',
  'enthalpy',
  'entropy',
  'density',
  'quality',
];

/**
 * States with their properties, in the view's units.
 * @param points     states of one loop
 * @param view       units of the table
 * @param reference  from which state enthalpy and entropy are counted
 * @param loop       name of the loop in the workings, by which each number leads to its own: 'operating', 'cycle'
 */
export function stateTable(
  points: readonly (DiagramState & { readonly density?: number; readonly quality?: number | null })[],
  view: UnitView,
  reference: ReferenceStateName = 'iir',
  loop = 'operating',
): ChartTable {
  const hasMore = points.every((point) => point.density !== undefined);
  const inOrder = inOrderOfFlow(points);
  return {
    caption: `States of the refrigerant, in order of flow. Enthalpy and entropy are counted from ${sayReferenceState(reference, view)}.`,
    columns: [
      { label: 'State' },
      { label: 'Temperature', unit: quantityUnit('temperature', view), numeric: true },
      { label: 'Pressure', unit: quantityUnit('pressure', view), numeric: true },
      { label: 'Enthalpy', unit: quantityUnit('enthalpy', view), numeric: true },
      { label: 'Entropy', unit: quantityUnit('entropy', view), numeric: true },
      ...(hasMore
        ? [
            { label: 'Density', unit: quantityUnit('density', view), numeric: true },
            { label: 'Vapour share', numeric: true },
          ]
        : []),
    ],
    rows: inOrder.map((point) => [
      stateTitle(point.name),
      fixedDecimals(toView(point.temperature, 'temperature', view), 1),
      toView(point.pressure, 'pressure', view).toPrecision(4),
      fixedDecimals(toView(point.enthalpy, 'enthalpy', view), 1),
      fixedDecimals(toView(point.entropy, 'entropy', view), 4),
      ...(hasMore
        ? [
            toView(point.density ?? 0, 'density', view).toPrecision(4),
            point.quality === null || point.quality === undefined ? '–' : fixedDecimals(point.quality, 3),
          ]
        : []),
    ]),
    results: inOrder.map(({ name }) =>
      columnResults.map((property) => property && `${loop}.points.${name}.${property}`),
    ),
  };
}

/** By their numbers; states of other names last. */
export function inOrderOfFlow<Point extends { readonly name: string }>(points: readonly Point[]): readonly Point[] {
  const order = Object.keys(pointWords);
  const place = ({ name }: Point) => (order.includes(name) ? order.indexOf(name) : order.length);
  return [...points].sort((a, b) => place(a) - place(b));
}
