// Points of the map of a machine in the units of the view.

import type { MachineStudy, MapFamily, MapPoint } from '../../assess/index.ts';
import { type Band, type QuantityName, toView, type UnitView } from '../../quantities/index.ts';
import type { InkRole } from '../specification.ts';

/** What of a study the pictures of its map are made from. */
export type MachineMap = Pick<MachineStudy, 'basis' | 'map' | 'limits' | 'marks'>;

/** What is drawn of a machine over the evaporating temperature. */
export type Drawn = 'heat' | 'power' | 'cop';

interface DrawnQuantity {
  readonly quantity: QuantityName;
  readonly title: string;
  /** Of the axis. */
  readonly label: string;
  readonly short: string;
  readonly ink: InkRole;
}

export const drawnQuantities: Readonly<Record<Drawn, DrawnQuantity>> = {
  heat: {
    quantity: 'power',
    title: 'Heat of one machine',
    label: 'heat out of the condenser',
    short: 'heat',
    ink: 'intoWater',
  },
  power: {
    quantity: 'electricPower',
    title: 'Electricity of one machine',
    label: 'electricity of the compressor',
    short: 'electricity',
    ink: 'electricity',
  },
  cop: {
    quantity: 'ratio',
    title: 'COP of one machine',
    label: 'COP of the compressor alone',
    short: 'COP of the compressor',
    ink: 'fromSource',
  },
};

export interface PlacedPoint {
  readonly of: MapPoint;
  readonly band: Band;
  /** In the units of the view. */
  readonly x: number;
  readonly y: number;
  readonly low: number;
  readonly high: number;
}

/** The points of a family that the machine has. */
export function placedPoints({ points }: MapFamily, of: Drawn, view: UnitView): readonly PlacedPoint[] {
  const { quantity } = drawnQuantities[of];
  const amount = (value: number) => toView(value, quantity, view);
  return points.flatMap((point) => {
    const band = point.values?.[of];
    if (band == null) return [];
    const x = toView(point.evaporating, 'temperature', view);
    return [{ of: point, band, x, y: amount(band.likely), low: amount(band.low), high: amount(band.high) }];
  });
}

/** Neighbours that all answer to something, in pieces of two and more. */
export function runs<T>(all: readonly T[], has: (one: T) => boolean): readonly (readonly T[])[] {
  const found: T[][] = [[]];
  for (const one of all) {
    if (has(one)) found.at(-1)!.push(one);
    else if (found.at(-1)!.length > 0) found.push([]);
  }
  return found.filter(({ length }) => length > 1);
}
