// The map of a machine as a table: a row for each evaporating temperature, a column for each condensing one.

import type { MapPoint } from '../../assess/index.ts';
import { sayBandParts, sayQuantity, type UnitView } from '../../quantities/index.ts';
import type { ChartTable } from '../specification.ts';
import { type Drawn, drawnQuantities, type MachineMap } from './map-points.ts';

export function mapTable({ map, basis }: MachineMap, of: Drawn, view: UnitView): ChartTable {
  const level = (value: number) => sayQuantity(value, 'temperature', view);
  const { label } = drawnQuantities[of];
  const isKnown = map.some(({ points }) => points.some(({ insideData }) => insideData));
  const caption = `One machine on ${basis.refrigerant}: ${label} by evaporating temperature, for each condensing temperature; likely value and range. Where nothing stands, it has no running point.${isKnown ? '' : ' None of it lies among what was printed or measured of the machine.'}`;
  return {
    caption,
    columns: [
      { label: 'Evaporating' },
      ...map.map(({ condensing }) => ({ label: `Condensing ${level(condensing)}`, numeric: true })),
    ],
    rows: (map[0]?.points ?? []).map(({ evaporating }, index) => [
      level(evaporating),
      ...map.map(({ points }) => cell(points[index]!, of, isKnown, view)),
    ]),
  };
}

function cell({ values, passed, insideData }: MapPoint, of: Drawn, isKnown: boolean, view: UnitView): string {
  const band = values?.[of];
  if (band == null) return '';
  const { likely, range } = sayBandParts(band, drawnQuantities[of].quantity, view);
  const said = range === undefined ? likely : `${likely} (${range})`;
  const doubt = [
    ...(passed.length > 0 ? ['past a limit'] : []),
    ...(isKnown && !insideData ? ['beyond its data'] : []),
  ];
  return [said, ...doubt].join(', ');
}
