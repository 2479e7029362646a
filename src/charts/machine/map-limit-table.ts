// Where each limit of a machine lies over the map, as a table: what the hatching of the pictures says for one condensing
// temperature, for all of them, with the source of each bound.

import type { MapLimit } from '../../assess/index.ts';
import { isQuantityName, sayQuantity, sentenceStart, type UnitView } from '../../quantities/index.ts';
import type { ChartTable } from '../specification.ts';
import type { MachineMap } from './map-points.ts';

export function mapLimitTable({ limits, map }: MachineMap, view: UnitView): ChartTable {
  const level = (value: number) => sayQuantity(value, 'temperature', view);
  return {
    caption:
      'Evaporating temperatures beyond which each limit is passed, for each condensing temperature; likely values',
    columns: [
      { label: 'Limit' },
      { label: 'Its bound', numeric: true },
      ...map.map(({ condensing }) => ({ label: `Condensing ${level(condensing)}`, numeric: true })),
      { label: 'Source of the bound' },
    ],
    rows: limits.map((limit) => [
      sentenceStart(limit.label),
      sayQuantity(limit.bound, isQuantityName(limit.quantity) ? limit.quantity : 'ratio', view),
      ...map.map(({ condensing }) => edgeWords(limit, condensing, level)),
      limit.source,
    ]),
  };
}

function edgeWords({ edges }: MapLimit, condensing: number, level: (value: number) => string): string {
  const words = edges.flatMap((edge) => {
    if (edge.condensing !== condensing || edge.at === null) return [];
    return [edge.at === 'all' ? 'everywhere' : `${edge.beyond} ${level(edge.at)}`];
  });
  return words.length === 0 ? 'nowhere here' : words.join(', ');
}
