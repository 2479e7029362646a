// Points of a pasted table as the identification reads them, each with its four temperatures: from its own columns, and from a
// stated basis where the table lacks them. A table with flow and capacity is held against itself.

import { type Refrigerant, saturationAtDewTemperature } from '../../../../matter/refrigerants/index.ts';
import { InputError, KettlefinError } from '../../../../numerics/index.ts';
import type { Band, Estimate } from '../../../../quantities/index.ts';
import type { Supply } from '../../hermetic/parameters.ts';
import type { EvidencePoint, EvidenceQuantity, EvidenceSeries } from '../../identification/evidence.ts';
import { type UsualMachine, usualPrior } from '../../plausibility/expected.ts';
import { requirePossiblePowerFactor } from '../../plausibility/power-factor.ts';
import type { RatingConditions } from '../../rating-points.ts';
import {
  conditionsWithoutCapacity,
  type GasBasis,
  type LiquidBasis,
  liquidOfEnthalpy,
  type RatingBasis,
  ratedConditions,
  type SaturationBasis,
} from '../basis.ts';
import { around } from '../coefficient-evidence.ts';
import { requireFrequency, type StatedSupply } from '../coefficient-set.ts';
import { ratedStates } from '../flow-and-capacity.ts';
import { sheetTolerance } from '../tolerance.ts';
import {
  type DegreeReading,
  type JudgedPoint,
  type JudgedTable,
  requireOtherDegrees,
  requirePlausiblePoints,
  type TableDoubt,
} from './plausibility.ts';
import type { PointRow, PointTable } from './point-table.ts';
import { withOtherDegrees } from './readings.ts';

/** How far one printed or measured value may be off apart from its whole table, relative; typical, from memory. */
const tableScatter = 0.02;
/** The same of a discharge temperature [K]. */
const dischargeScatter = 5;

export interface TableRequest {
  readonly fluid: Refrigerant;
  readonly table: PointTable;
  /** Where it stands: 'machine.compressor.tables.0'. */
  readonly path: string;
  readonly label: string;
  /** For the columns it lacks; null where nothing is stated. */
  readonly gas: GasBasis | null;
  readonly liquid: LiquidBasis | null;
  readonly saturation: SaturationBasis;
  readonly supply: StatedSupply;
  /** Air around the shell while it was measured [K]. */
  readonly surroundings: number;
  /** Factors about 1 by which the whole table may be off; absent: 5 % either way, assumed. */
  readonly flowFactor?: Estimate;
  readonly powerFactor?: Estimate;
  /** What is known of the machine without the table, which its numbers are held against; absent: nothing. */
  readonly usual?: UsualMachine;
}

/** What flow and capacity of one table say about the liquid they were stated with. */
export interface ImpliedLiquid {
  /** Liquid temperature over the points that have both [K]. */
  readonly temperature: Band;
  /** Points in which no liquid fits, by line of the table: flow and capacity contradict each other. */
  readonly contradictions: readonly number[];
  /** Largest distance from the liquid temperatures stated, by column or basis [K]; null where none is stated. */
  readonly fromStated: number | null;
}

export interface TableEvidence {
  readonly points: readonly EvidencePoint[];
  readonly series: EvidenceSeries;
  /** Null where the table does not have both flow and capacity. */
  readonly impliedLiquid: ImpliedLiquid | null;
  /** What is odd about it without being impossible; null where nothing is. */
  readonly doubt: TableDoubt | null;
}

/**
 * Points out of a table. Where flow and capacity are both given they are one measurement: the flow is taken, and the liquid
 * temperature that the two imply is told.
 * @throws InputError 'missingFrequency'; 'missingBasis' where neither column nor basis tells gas or liquid; 'contradictoryGas' and
 *         'contradictoryLiquid' where two columns differ; 'nothingGiven' for a point without any value; of a basis that makes no
 *         sense at a point, at `path.line 4`; ImplausibleUnitError with the unit that would make sense; NoSolutionError
 *         'belowIsentropic' where single lines are impossible; errors of the refrigerant's equation outside its range
 */
export function evidenceFromTable(request: TableRequest): TableEvidence {
  const { table, path, label, surroundings } = request;
  const supply = requireFrequency(path, request.supply);
  const judgedTable = judgedTableOf(request, supply);
  const { conditions, judged } = readRows(request, judgedTable);
  const points = table.rows.map((row, index) => {
    return {
      path: `${path}.points.${index}`,
      label: `${label}, line ${row.line}`,
      ...conditions[index]!,
      surroundings,
      supply,
      given: givenIn(row, `${path}.line ${row.line}`),
      series: path,
    } satisfies EvidencePoint;
  });
  const doubt = requirePlausiblePoints(judgedTable, judged, () => otherDegrees(request)) ?? null;
  const impliedLiquid = impliedLiquidOf(request, points, judged);
  requirePossibleCurrent(request, supply.voltage);
  const ofTable = around(1, sheetTolerance, 'assumed');
  const { flowFactor = ofTable, powerFactor = ofTable } = request;
  return { points, series: { path, label, flowFactor, powerFactor }, impliedLiquid, doubt };
}

function judgedTableOf({ path, table, fluid, surroundings, liquid, usual }: TableRequest, supply: Supply): JudgedTable {
  const hasColumn = table.columns.some(({ quantity }) => quantity === 'liquid' || quantity === 'subcooling');
  return {
    path,
    table,
    fluid,
    supply,
    surroundings,
    isLiquidStated: liquid !== null || hasColumn,
    usual: usual === undefined ? null : usualPrior(usual),
  };
}

interface ReadRows {
  readonly conditions: readonly RatingConditions[];
  readonly judged: readonly JudgedPoint[];
}

/** @throws at the first impossible line; ImplausibleUnitError where the degrees of another scale make sense of all lines */
function readRows(request: TableRequest, judgedTable: JudgedTable): ReadRows {
  try {
    return rowsOf(request, request.table.rows);
  } catch (error) {
    if (!(error instanceof KettlefinError)) throw error;
    requireOtherDegrees(
      judgedTable,
      `temperatures that are none of this machine (${error.message})`,
      otherDegrees(request),
    );
    throw error;
  }
}

function rowsOf(request: TableRequest, rows: readonly PointRow[]): ReadRows {
  const conditions = rows.map((row) => conditionsOf(request, row));
  const judged = rows.map((row, index) => ({
    line: row.line,
    ...row.values,
    states: ratedStates(request.fluid, conditions[index]!),
  }));
  return { conditions, judged };
}

/** The points with the degrees of other scales, as far as these make sense. */
function otherDegrees(request: TableRequest): readonly DegreeReading[] {
  return withOtherDegrees(request.path, request.table).flatMap(({ rows, changes }) => {
    try {
      return [{ points: rowsOf(request, rows).judged, changes }];
    } catch (error) {
      if (error instanceof KettlefinError) return [];
      throw error;
    }
  });
}

/** @throws InputError 'powerAboveVoltAmperes', and 'currentFarAbovePower' where the current is of no motor that takes this power. */
function requirePossibleCurrent({ table, path }: TableRequest, voltage: number): void {
  for (const { line, values } of table.rows) {
    if (values.power === undefined || values.current === undefined) continue;
    const place = `${path}.line ${line}`;
    const places = { power: `${place}.power`, current: `${place}.current` };
    requirePossiblePowerFactor(places, values.power, values.current, voltage);
  }
}

function givenIn({ values, line }: PointRow, place: string): EvidencePoint['given'] {
  const { massFlow, capacity, power, current, dischargeTemperature } = values;
  const given: Partial<Record<EvidenceQuantity, Estimate>> = {};
  if (massFlow !== undefined) given.massFlow = around(massFlow, tableScatter, 'typed');
  else if (capacity !== undefined) given.capacity = around(capacity, tableScatter, 'typed');
  if (power !== undefined) given.power = around(power, tableScatter, 'typed');
  if (current !== undefined) given.current = around(current, tableScatter, 'typed');
  if (dischargeTemperature !== undefined) {
    given.dischargeTemperature = {
      low: dischargeTemperature - dischargeScatter,
      likely: dischargeTemperature,
      high: dischargeTemperature + dischargeScatter,
      origin: 'typed',
    };
  }
  if (Object.keys(given).length > 0) return given;
  const expected = 'capacity, mass flow, power, current or discharge temperature at this point';
  throw new InputError(place, `line ${line} without any of them`, expected, 'nothingGiven');
}

function conditionsOf(request: TableRequest, row: PointRow): RatingConditions {
  const { fluid, path, saturation } = request;
  const place = `${path}.line ${row.line}`;
  const basis: RatingBasis = { gas: gasOf(request, row, place), liquid: liquidOf(request, row, place), saturation };
  const { evaporating, condensing } = row.values;
  if (evaporating === undefined || condensing === undefined) {
    throw new InputError(
      place,
      'one level alone',
      'evaporating and condensing temperature of each point',
      'missingLevel',
    );
  }
  const { capacity, massFlow, liquid } = row.values;
  // A liquid that stands in its own column is a statement of this line, and must be possible.
  const isStated = liquid !== undefined || (capacity !== undefined && massFlow === undefined);
  const conditionsFrom = isStated || saturation === 'midPoint' ? ratedConditions : conditionsWithoutCapacity;
  const conditions = conditionsFrom(fluid, basis, evaporating, condensing, place);
  const { superheat, subcooling } = row.values;
  if (row.values.returnGas !== undefined && superheat !== undefined) {
    requireSame(`${place}.superheat`, superheat, conditions.returnGas - conditions.evaporating, 'contradictoryGas');
  }
  if (row.values.liquid !== undefined && subcooling !== undefined) {
    const bubble = saturationAtDewTemperature(fluid, conditions.condensing).liquid.temperature;
    requireSame(`${place}.subcooling`, subcooling, bubble - conditions.liquid, 'contradictoryLiquid');
  }
  return conditions;
}

/** Two columns that say the same may differ by rounding [K]. */
const columnTolerance = 1;

/** @throws InputError where two columns of one line do not say the same. */
function requireSame(place: string, given: number, fromOther: number, code: string): void {
  if (Math.abs(given - fromOther) <= columnTolerance) return;
  const expected = `${fromOther.toFixed(1)} K, which the temperature in another column of this line gives`;
  throw new InputError(place, given, expected, code);
}

function gasOf({ gas }: TableRequest, { values }: PointRow, place: string): GasBasis {
  if (values.returnGas !== undefined) return { kind: 'returnGas', returnGas: values.returnGas };
  if (values.superheat !== undefined) return { kind: 'superheat', superheat: values.superheat };
  if (gas !== null) return gas;
  const expected = 'a column of return gas or superheat, or one of them stated for the whole table';
  throw new InputError(`${place}.returnGas`, 'nothing', expected, 'missingBasis');
}

/** Null where no value of the point depends on it. */
function liquidOf({ liquid }: TableRequest, { values }: PointRow, place: string): LiquidBasis | null {
  if (values.liquid !== undefined) return { kind: 'liquid', liquid: values.liquid };
  if (values.subcooling !== undefined) return { kind: 'subcooling', subcooling: values.subcooling };
  if (liquid !== null) return liquid;
  if (values.capacity === undefined || values.massFlow !== undefined) return null;
  const expected =
    'a column of liquid temperature or subcooling, or one of them stated for the whole table: a capacity without it is in doubt by a fifth';
  throw new InputError(`${place}.liquid`, 'nothing', expected, 'missingBasis');
}

function impliedLiquidOf(
  request: TableRequest,
  points: readonly EvidencePoint[],
  judged: readonly JudgedPoint[],
): ImpliedLiquid | null {
  const temperatures: number[] = [];
  const contradictions: number[] = [];
  const distances: number[] = [];
  request.table.rows.forEach((row, index) => {
    const { massFlow, capacity } = row.values;
    if (massFlow === undefined || capacity === undefined) return;
    const enthalpy = judged[index]!.states.suction.enthalpy - capacity / massFlow;
    const temperature = liquidOfEnthalpy(request.fluid, enthalpy);
    if (temperature === undefined) contradictions.push(row.line);
    else {
      temperatures.push(temperature);
      const isStated =
        request.liquid !== null || row.values.liquid !== undefined || row.values.subcooling !== undefined;
      if (isStated) distances.push(Math.abs(temperature - points[index]!.liquid));
    }
  });
  if (temperatures.length === 0 && contradictions.length === 0) return null;
  if (temperatures.length === 0) {
    const expected = 'a flow and a capacity of the same machine: no liquid temperature fits any line, check both units';
    throw new InputError(`${request.path}.massFlow`, 'capacity over flow', expected, 'flowAgainstCapacity');
  }
  const sorted = [...temperatures].sort((a, b) => a - b);
  return {
    temperature: { low: sorted[0]!, likely: sorted[Math.floor(sorted.length / 2)]!, high: sorted.at(-1)! },
    contradictions,
    fromStated: distances.length === 0 ? null : Math.max(...distances),
  };
}
