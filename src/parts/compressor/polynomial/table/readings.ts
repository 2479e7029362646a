// The same pasted numbers in other units: every combination of units of the columns of flow, capacity and power, and of degrees.

import { findUnit } from '../../../../quantities/index.ts';
import type { UnitReading } from '../../plausibility/unit-readings.ts';
import { polynomialUnits, zeroCelsius } from '../units.ts';
import type { PointRow, PointTable, TableColumn } from './point-table.ts';

/** Factors on what was pasted, in base SI. */
export interface Factors {
  readonly massFlow: number;
  readonly capacity: number;
  readonly power: number;
}

/** One way to read the columns. */
export interface FactorReading {
  readonly factors: Factors;
  readonly changes: readonly UnitReading[];
}

export const asPasted: Factors = { massFlow: 1, capacity: 1, power: 1 };

/** Every combination of units of the columns that the table has, that of its heads first. */
export function factorReadings(path: string, table: PointTable): readonly FactorReading[] {
  let readings: readonly FactorReading[] = [{ factors: asPasted, changes: [] }];
  for (const quantity of ['massFlow', 'capacity', 'power'] as const) {
    const column = table.columns.find((one) => one.quantity === quantity);
    if (column === undefined) continue;
    readings = readings.flatMap((before) => [
      before,
      ...otherUnits(quantity, column).map(({ unit, factor }) => ({
        factors: { ...before.factors, [quantity]: factor },
        changes: [...before.changes, { path: `${path}.${quantity}`, unit }],
      })),
    ]);
  }
  return readings;
}

/** Units that such columns are met in, whatever their heads say. */
const printedUnits = {
  massFlow: polynomialUnits.massFlow,
  capacity: [...polynomialUnits.capacity, 'kcal/h'],
  power: [...polynomialUnits.power, 'hp'],
} as const;

/** Each with what it makes of a number read in the unit of the head. */
function otherUnits(
  quantity: keyof typeof printedUnits,
  { unit }: TableColumn,
): readonly { readonly unit: UnitReading['unit']; readonly factor: number }[] {
  const family = quantity === 'massFlow' ? 'massFlow' : 'power';
  const present = findUnit(family, unit)!.factor;
  return printedUnits[quantity]
    .filter((other) => other !== unit)
    .map((other) => ({ unit: other, factor: findUnit(family, other)!.factor / present }));
}

/** Levels that are degrees of one scale in the whole table. */
const degreeColumns = ['evaporating', 'condensing', 'returnGas', 'liquid', 'dischargeTemperature'] as const;

/** A table with its degrees of another scale. */
export interface OtherDegrees {
  readonly rows: readonly PointRow[];
  readonly changes: readonly UnitReading[];
}

const scales = ['°C', '°F', 'K'] as const;

/** Reading of each scale [degrees of it], and back, of a temperature [K]. */
const onScale = {
  '°C': { from: (kelvin: number) => kelvin - zeroCelsius, to: (degrees: number) => degrees + zeroCelsius },
  '°F': {
    from: (kelvin: number) => (kelvin - zeroCelsius) * 1.8 + 32,
    to: (degrees: number) => (degrees - 32) / 1.8 + zeroCelsius,
  },
  K: { from: (kelvin: number) => kelvin, to: (degrees: number) => degrees },
} as const;

/** The same digits as degrees of each other scale; none where its columns are not all of one scale. */
export function withOtherDegrees(path: string, table: PointTable): readonly OtherDegrees[] {
  const columns = table.columns.filter(({ quantity }) => isDegree(quantity));
  const own = scales.find((scale) => columns.every(({ unit }) => unit === scale));
  if (columns.length === 0 || own === undefined) return [];
  return scales
    .filter((scale) => scale !== own)
    .map((unit) => ({
      rows: table.rows.map(({ line, values }) => ({
        line,
        values: Object.fromEntries(
          Object.entries(values).map(([quantity, value]) => [
            quantity,
            isDegree(quantity) ? onScale[unit].to(onScale[own].from(value)) : value,
          ]),
        ),
      })),
      changes: columns.map(({ quantity }) => ({ path: `${path}.${quantity}`, unit })),
    }));
}

function isDegree(quantity: string): boolean {
  return (degreeColumns as readonly string[]).includes(quantity);
}
