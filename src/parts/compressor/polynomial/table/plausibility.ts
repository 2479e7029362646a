// Whether the points of a table can be those of one machine: the same limits as for sets of coefficients, point by point, and the
// units of its columns in which they could be.

import { NoSolutionError } from '../../../../numerics/index.ts';
import { findUnit } from '../../../../quantities/index.ts';
import { flowOfCapacity, type RatedStates } from '../flow-and-capacity.ts';
import {
  bandOf,
  faultOfOverall,
  faultOfSwept,
  fewestChanges,
  ImplausibleUnitError,
  rounded,
  type SensibleReading,
  sensibleOverallEfficiency,
} from '../plausibility.ts';
import { type PolynomialUnit, polynomialUnits, unitFactor } from '../units.ts';
import type { PointTable, TableColumn } from './point-table.ts';

/** A point with its states. */
export interface JudgedPoint {
  readonly line: number;
  readonly massFlow?: number;
  readonly capacity?: number;
  readonly power?: number;
  readonly states: RatedStates;
}

/**
 * Holds efficiencies and size that a table's points imply against what is possible.
 * @param path       of the table, for errors
 * @param table      its columns
 * @param points     one for each row
 * @param frequency  of the mains [Hz]
 * @throws ImplausibleUnitError where the whole table is impossible; NoSolutionError 'belowIsentropic' where single lines are
 */
export function requirePlausiblePoints(
  path: string,
  table: PointTable,
  points: readonly JudgedPoint[],
  frequency: number,
): void {
  const asPasted = { flow: 1, power: 1 };
  const fault = faultOf(points, frequency, asPasted);
  if (fault === undefined) return;
  const lines = points.filter((point) => (overallOf(point, asPasted) ?? 0) > 1).map(({ line }) => line);
  const efficiencies = efficienciesOf(points, asPasted);
  const middle = efficiencies.length === 0 ? undefined : bandOf(efficiencies).likely;
  const { lowest, highest } = sensibleOverallEfficiency;
  if (lines.length > 0 && middle !== undefined && middle >= lowest && middle <= highest) {
    throw new NoSolutionError(
      `${path}: line ${lines.join(', ')}: less power than isentropic compression of the flow takes.`,
      `no machine has an efficiency above 1; the others have about ${rounded(middle)}: check these lines`,
      'belowIsentropic',
    );
  }
  throw new ImplausibleUnitError(path, fault, sensibleReadings(path, table, points, frequency));
}

/** Factors on what was pasted. */
interface Factors {
  readonly flow: number;
  readonly power: number;
}

function flowOf({ massFlow, capacity, states }: JudgedPoint, factors: Factors): number | undefined {
  if (massFlow !== undefined) return massFlow * factors.flow;
  if (capacity === undefined) return undefined;
  return flowOfCapacity(capacity * factors.flow, states.suction.enthalpy, states.liquidEnthalpy);
}

function overallOf(point: JudgedPoint, factors: Factors): number | undefined {
  const flow = flowOf(point, factors);
  if (flow === undefined || point.power === undefined) return undefined;
  return (flow * point.states.isentropicWork) / (point.power * factors.power);
}

function efficienciesOf(points: readonly JudgedPoint[], factors: Factors): readonly number[] {
  return points.map((point) => overallOf(point, factors)).filter((value) => value !== undefined);
}

function faultOf(points: readonly JudgedPoint[], frequency: number, factors: Factors): string | undefined {
  const efficiencies = efficienciesOf(points, factors);
  const swept = points.flatMap((point) => {
    const flow = flowOf(point, factors);
    return flow === undefined ? [] : [flow / (point.states.suction.density * frequency)];
  });
  const overallFault = efficiencies.length === 0 ? undefined : faultOfOverall(bandOf(efficiencies));
  return overallFault ?? (swept.length === 0 ? undefined : faultOfSwept(bandOf(swept), null));
}

/** Other units of the columns of flow (or capacity) and power. */
function sensibleReadings(
  path: string,
  table: PointTable,
  points: readonly JudgedPoint[],
  frequency: number,
): readonly SensibleReading[] {
  const column = (quantity: TableColumn['quantity']) => table.columns.find((one) => one.quantity === quantity);
  const flows = optionsOf(path, column('massFlow') ?? column('capacity'));
  const powers = optionsOf(path, column('power'));
  const found: (SensibleReading & { readonly changeCount: number })[] = [];
  for (const flow of flows) {
    for (const power of powers) {
      const factors = { flow: flow.factor, power: power.factor };
      const efficiencies = efficienciesOf(points, factors);
      const middle = efficiencies.length === 0 ? null : bandOf(efficiencies).likely;
      if (faultOf(points, frequency, factors) !== undefined) continue;
      if (middle !== null && middle > sensibleOverallEfficiency.highest) continue;
      const changes = [flow.change, power.change].filter((change) => change !== undefined);
      found.push({ changes, changeCount: changes.length, overallEfficiency: middle });
    }
  }
  return fewestChanges(found);
}

interface UnitOption {
  readonly factor: number;
  readonly change: { readonly path: string; readonly unit: PolynomialUnit } | undefined;
}

/** The column as pasted, and in each other unit. */
function optionsOf(path: string, column: TableColumn | undefined): readonly UnitOption[] {
  const asPasted: UnitOption = { factor: 1, change: undefined };
  if (column === undefined) return [asPasted];
  const { quantity, unit } = column;
  if (quantity !== 'massFlow' && quantity !== 'capacity' && quantity !== 'power') return [asPasted];
  const present = findUnit(quantity === 'massFlow' ? 'massFlow' : 'power', unit)!.factor;
  const others = polynomialUnits[quantity].filter((other) => other !== unit);
  return [
    asPasted,
    ...others.map((other: PolynomialUnit) => ({
      factor: unitFactor(other) / present,
      change: { path: `${path}.${quantity}`, unit: other },
    })),
  ];
}
