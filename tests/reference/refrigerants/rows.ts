// Our refrigerant states against the reference exported from CoolProp 8.0.0: the largest deviation of each property over
// all exported points of a fluid, away from the critical point and near it.

import { refrigerant, stateAt } from '../../../src/matter/refrigerants/index.ts';
import type { ValidationRow } from '../validation.ts';
import r12 from './R12.json';
import r22 from './R22.json';
import r134a from './R134a.json';
import r290 from './R290.json';
import r600a from './R600a.json';

interface ReferencePoint {
  readonly kind: string;
  readonly nearCritical: boolean;
  readonly temperature: number;
  readonly pressure: number;
  readonly density: number;
  readonly quality?: number;
  readonly [property: string]: unknown;
}

const properties = ['pressure', 'enthalpy', 'entropy', 'cp', 'cv', 'soundSpeed'] as const;
/** Enthalpy and entropy have no natural zero: their deviations are shares of these [J/kg, J/(kg K)]. */
const scales: Readonly<Record<string, number>> = { enthalpy: 200e3, entropy: 1e3 };

export function validationRows(): readonly ValidationRow[] {
  return [r134a, r600a, r290, r12, r22].flatMap(({ refrigerant: name, source, rows }) =>
    [false, true].flatMap((nearCritical) => {
      const points = (rows as readonly ReferencePoint[]).filter((point) => point.nearCritical === nearCritical);
      return properties.map((property) => largestDeviation(name, source, property, points, nearCritical));
    }),
  );
}

function largestDeviation(
  name: string,
  source: string,
  property: (typeof properties)[number],
  points: readonly ReferencePoint[],
  nearCritical: boolean,
): ValidationRow {
  const fluid = refrigerant(name);
  let largest = { deviation: -1, published: Number.NaN, ours: Number.NaN, where: '' };
  for (const point of points) {
    const published = point[property];
    if (typeof published !== 'number') continue;
    const { temperature, density, quality } = point;
    const state =
      quality === undefined ? stateAt(fluid, { density, temperature }) : stateAt(fluid, { temperature, quality });
    const ours = state[property];
    if (ours === null) continue;
    const deviation = Math.abs(ours - published) / (scales[property] ?? Math.abs(published));
    if (deviation > largest.deviation) {
      const where = `${temperature.toFixed(2)} K, ${density.toPrecision(5)} kg/m³`;
      largest = { deviation, published, ours, where };
    }
  }
  return {
    subject: `${name}, ${nearCritical ? 'near the critical point' : 'away from the critical point'}`,
    quantity: `${property}, worst of ${points.length} points, at ${largest.where}`,
    source,
    published: largest.published,
    ours: largest.ours,
    deviation: largest.deviation.toExponential(1),
    status: 'reference',
  };
}
