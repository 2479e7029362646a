// Pieces that several answers are made of, as plain data: a band under the name of its step, the states of a loop.

import type { CyclePoint } from '../../loop/index.ts';
import { type Band, type QuantityName, quantityRecord } from '../../quantities/index.ts';
import type { BandWithUnit, LoopPoint } from '../assessment/assessment.ts';

/** A band under the name of its step, with its SI unit. */
export function bandWithUnit(result: string, quantity: QuantityName, { low, likely, high }: Band): BandWithUnit {
  return { low, likely, high, unit: quantityRecord(quantity).unit, result };
}

/** Bands by result name, as the variation of the inputs found them. */
export interface Bands {
  readonly bands: Readonly<Record<string, Band>>;
  readonly quantities: Readonly<Record<string, QuantityName>>;
}

/** The band of a named result with its SI unit. */
export function bandOf({ bands, quantities }: Bands, name: string): BandWithUnit {
  const band = bands[name];
  const quantity = quantities[name];
  if (band === undefined || quantity === undefined) throw new Error(`no result is named ${name}`);
  return bandWithUnit(name, quantity, band);
}

/** The band of a named result alone. */
export function bareBand({ bands }: Bands, name: string): Band {
  return bands[name]!;
}

/** The states of a loop, without what only the engine needs. */
export function loopPoints(points: readonly CyclePoint[]): readonly LoopPoint[] {
  return points.map(({ name, temperature, pressure, enthalpy, entropy, density, quality }) => ({
    name,
    temperature,
    pressure,
    enthalpy,
    entropy,
    density,
    quality,
  }));
}
