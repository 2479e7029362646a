// Viscosity, conductivity and surface tension beside outside values: the printed ones, and of the library's seeded states the
// one furthest off for each fluid and property.

import {
  type Refrigerant,
  refrigerant,
  saturationAtTemperature,
  stateAt,
  transportAt,
  transportMethods,
} from '../../../../src/matter/refrigerants/index.ts';
import { deviationInPercent, type ValidationRow } from '../../validation.ts';
import { type PublishedTransport, printedUnits, publishedTransport } from './published.ts';
import { type TransportRow, type TransportTable, transportTables } from './states.ts';

const properties = ['viscosity', 'conductivity', 'surfaceTension'] as const;
const names = {
  viscosity: 'viscosity',
  conductivity: 'thermal conductivity',
  surfaceTension: 'surface tension',
} as const;
const methods = {
  ownCorrelation: 'correlation of its own',
  residualEntropy: 'estimate by residual entropy',
  correspondingStates: 'estimate by corresponding states',
} as const;

export function validationRows(): readonly ValidationRow[] {
  return [...publishedTransport.map(printedRow), ...transportTables().flatMap(furthestRows)];
}

/** Viscosity, conductivity and surface tension of one row's state; of a side of the dome, by its temperature. */
export function valuesOf(fluid: Refrigerant, { region, temperature, density }: TransportRow) {
  const state =
    region === 'liquid' || region === 'vapour'
      ? saturationAtTemperature(fluid, temperature)[region]
      : stateAt(fluid, { temperature, density });
  return { ...transportAt(fluid, state), surfaceTension: state.surfaceTension };
}

export function publishedOurs({ fluid: name, given, property }: PublishedTransport): number {
  const fluid = refrigerant(name);
  const state = stateAt(fluid, given);
  const value = property === 'surfaceTension' ? state.surfaceTension : transportAt(fluid, state)[property];
  return (value ?? Number.NaN) * printedUnits[property].factor;
}

function printedRow(row: PublishedTransport): ValidationRow {
  const ours = publishedOurs(row);
  return {
    subject: `${row.fluid}, ${names[row.property]}`,
    quantity: `${names[row.property]} at ${row.where} [${printedUnits[row.property].unit}]`,
    source: row.source,
    published: row.printed,
    ours,
    deviation: deviationInPercent(ours, row.printed),
    status: 'reference',
    ...(row.reason === undefined ? {} : { reason: row.reason }),
  };
}

function furthestRows({ refrigerant: name, source, rows }: TransportTable): readonly ValidationRow[] {
  const fluid = refrigerant(name);
  const { truth } = fluid.transport;
  return properties.map((property) => {
    let worst = { deviation: -1, published: Number.NaN, ours: Number.NaN, where: '' };
    let count = 0;
    for (const row of rows) {
      const published = row[property];
      if (published === undefined) continue;
      count++;
      const ours = valuesOf(fluid, row)[property] ?? Number.NaN;
      const deviation = Math.abs(ours / published - 1);
      if (deviation > worst.deviation) {
        worst = { deviation, published, ours, where: `${row.temperature} K, ${row.density.toPrecision(5)} kg/m³` };
      }
    }
    const { factor, unit } = printedUnits[property];
    const reason = truth?.[property];
    return {
      subject: `${name}, ${names[property]}`,
      quantity: `${names[property]}, ${methods[transportMethods(fluid)[property].method]}, worst of ${count} states, at ${worst.where} [${unit}]`,
      source,
      published: worst.published * factor,
      ours: worst.ours * factor,
      deviation: deviationInPercent(worst.ours, worst.published),
      status: 'reference',
      ...(reason === undefined || worst.deviation < 1e-3 ? {} : { reason }),
    };
  });
}
