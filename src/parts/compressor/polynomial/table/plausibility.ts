// Whether the points of a table can be those of one machine: efficiencies point by point, flow against capacity, and all of them
// against what a machine of these ranges lets expect. Where they cannot, the units of the columns in which they could are named;
// where they hardly can, they are told as unusual. Nothing is corrected.

import type { Refrigerant } from '../../../../matter/refrigerants/index.ts';
import { NoSolutionError } from '../../../../numerics/index.ts';
import type { Band } from '../../../../quantities/index.ts';
import type { Supply } from '../../hermetic/parameters.ts';
import type { Prior } from '../../identification/priors.ts';
import { type Expected, expectedAt } from '../../plausibility/expected.ts';
import { farSurprise, refusedGain, toldGain } from '../../plausibility/surprise.ts';
import {
  bandOf,
  comparedOf,
  type FoundReading,
  faultOfEffect,
  faultOfOverall,
  faultOfSwept,
  fewestChanges,
  heldAgainst,
  ImplausibleUnitError,
  isEffectUsual,
  isUsual,
  likelierReadings,
  type OfExpected,
  onePlaceOf,
  remarkableOverallEfficiency,
  rounded,
  type SensibleReading,
  sensibleOverallEfficiency,
  type UnitReading,
  unlikelyWords,
  usualOrAll,
} from '../../plausibility/unit-readings.ts';
import { flowOfCapacity, type RatedStates } from '../flow-and-capacity.ts';
import type { PointTable } from './point-table.ts';
import { asPasted, type Factors, factorReadings } from './readings.ts';

/** A point with its states. */
export interface JudgedPoint {
  readonly line: number;
  readonly massFlow?: number;
  readonly capacity?: number;
  readonly power?: number;
  readonly states: RatedStates;
}

/** What a table holds for beside its points. */
export interface JudgedTable {
  /** Of the table, for errors. */
  readonly path: string;
  readonly table: PointTable;
  readonly fluid: Refrigerant;
  readonly supply: Supply;
  readonly surroundings: number;
  /** Whether its liquid is stated, so that flow and capacity can be held against each other. */
  readonly isLiquidStated: boolean;
  /** What is known of the machine without the table; null where nothing is to be expected. */
  readonly usual: Prior | null;
}

/** Its points with the degrees of its heads or, with what that changes, of the other scale. */
export interface DegreeReading {
  readonly points: readonly JudgedPoint[];
  readonly changes: readonly UnitReading[];
}

/** What is odd about a table without being impossible. */
export interface TableDoubt {
  readonly path: string;
  /** Overall efficiency over its points; null without power or without flow. */
  readonly efficiency: Band | null;
  /** Flow and power of the median point over what is expected there; null where they are not given or not expected. */
  readonly ofExpected: OfExpected;
  /** Capacity over what the flow beside it gives [-]; null where it cannot be told. */
  readonly effect: number | null;
  /** Units in which it would be usual. */
  readonly readings: readonly SensibleReading[];
}

/**
 * Holds efficiencies, size, flow against capacity and what such machines do against the points of a table.
 * @returns  what is odd about it; undefined where nothing is
 * @throws ImplausibleUnitError ('implausibleUnit', 'flowAgainstCapacity') where the whole table is impossible, or so unlikely that
 *         another unit must be meant; NoSolutionError 'belowIsentropic' where single lines are impossible
 */
export function requirePlausiblePoints(
  judged: JudgedTable,
  points: readonly JudgedPoint[],
  otherDegrees: () => readonly DegreeReading[],
): TableDoubt | undefined {
  const { path } = judged;
  const pasted: DegreeReading = { points, changes: [] };
  const own = judge(judged, pasted, expectedOver(judged, points), asPasted);
  const { fault, overall, surprise, effect } = own;
  if (fault !== undefined) {
    requirePossibleLines(path, points, overall);
    const readings = fewestChanges(sensibleReadings(judged, pasted, otherDegrees()));
    throw new ImplausibleUnitError(onePlaceOf(readings) ?? path, fault.words, readings, fault.code);
  }
  const isEfficiencyUsual =
    overall === null ||
    (overall.likely >= remarkableOverallEfficiency && overall.likely <= sensibleOverallEfficiency.highest);
  const isExpected = isUsual(own);
  if (isEfficiencyUsual && isExpected && isEffectUsual(effect)) return undefined;
  const readings = sensibleReadings(judged, pasted, otherDegrees());
  const meant = isExpected ? [] : likelierReadings(readings, surprise, refusedGain);
  if (meant.length > 0) {
    throw new ImplausibleUnitError(onePlaceOf(meant) ?? path, unlikelyWords(overall, own.ofExpected), meant);
  }
  const told = isExpected ? fewestChanges(readings) : likelierReadings(readings, surprise, toldGain);
  const isFarOff = surprise !== null && surprise >= farSurprise.severalPoints;
  if (told.length === 0 && isEffectUsual(effect) && isEfficiencyUsual && !isFarOff) return undefined;
  return { path, efficiency: overall, ofExpected: own.ofExpected, effect, readings: told };
}

/**
 * Where the degrees of the heads are impossible: another scale, if it makes sense of the numbers.
 * @throws ImplausibleUnitError
 */
export function requireOtherDegrees(judged: JudgedTable, fault: string, others: readonly DegreeReading[]): void {
  const readings = others.flatMap((other) => {
    const judgement = judge(judged, other, expectedOver(judged, other.points), asPasted);
    if (!isSensible(judgement)) return [];
    return [{ changes: other.changes, overallEfficiency: judgement.overall?.likely ?? null }];
  });
  if (readings.length > 0) throw new ImplausibleUnitError(`${judged.path}.evaporating`, fault, readings);
}

/** Only single lines are wrong: @throws NoSolutionError 'belowIsentropic' */
function requirePossibleLines(path: string, points: readonly JudgedPoint[], overall: Band | null): void {
  const lines = points.filter((point) => (overallOf(point, asPasted) ?? 0) > 1).map(({ line }) => line);
  const { lowest, highest } = sensibleOverallEfficiency;
  if (lines.length === 0 || overall === null || overall.likely < lowest || overall.likely > highest) return;
  throw new NoSolutionError(
    `${path}: line ${lines.join(', ')}: less power than isentropic compression of the flow takes.`,
    `no machine has an efficiency above 1; the others have about ${rounded(overall.likely)}: check these lines`,
    'belowIsentropic',
  );
}

interface Judgement {
  readonly fault: { readonly words: string; readonly code: string } | undefined;
  readonly overall: Band | null;
  readonly surprise: number | null;
  readonly ofExpected: OfExpected;
  readonly effect: number | null;
}

type ExpectedOver = readonly { readonly point: JudgedPoint; readonly expected: Expected | undefined }[];

function expectedOver(
  { fluid, supply, surroundings, usual }: JudgedTable,
  points: readonly JudgedPoint[],
): ExpectedOver {
  if (usual === null) return [];
  const given = points.filter(({ massFlow, capacity, power }) => (massFlow ?? capacity ?? power) !== undefined);
  return comparedOf(given, ({ states }) => states.suction.pressure).map((point) => {
    const { suction, dischargePressure } = point.states;
    return { point, expected: expectedAt(fluid, usual, { suction, dischargePressure, surroundings, supply }) };
  });
}

function judge(
  { supply, isLiquidStated }: JudgedTable,
  { points }: DegreeReading,
  expected: ExpectedOver,
  factors: Factors,
): Judgement {
  const efficiencies = points.map((point) => overallOf(point, factors)).filter((value) => value !== undefined);
  const overall = efficiencies.length === 0 ? null : bandOf(efficiencies);
  const effect = isLiquidStated ? effectOf(points, factors) : null;
  const printed = expected.map(({ point }) => ({ flow: flowOf(point, factors), power: powerOf(point, factors) }));
  return {
    fault: faultOf(points, supply.frequency, factors, overall, effect),
    overall,
    ...heldAgainst(
      expected.map((each) => each.expected),
      printed,
    ),
    effect,
  };
}

function faultOf(
  points: readonly JudgedPoint[],
  frequency: number,
  factors: Factors,
  overall: Band | null,
  effect: number | null,
): Judgement['fault'] {
  const overallFault = overall === null ? undefined : faultOfOverall(overall);
  if (overallFault !== undefined) return { words: overallFault, code: 'implausibleUnit' };
  const swept = points.flatMap((point) => {
    const flow = flowOf(point, factors);
    return flow === undefined ? [] : [flow / (point.states.suction.density * frequency)];
  });
  const sweptFault = swept.length === 0 ? undefined : faultOfSwept(bandOf(swept), null);
  if (sweptFault !== undefined) return { words: sweptFault, code: 'implausibleUnit' };
  const effectFault = faultOfEffect(effect);
  return effectFault === undefined ? undefined : { words: effectFault, code: 'flowAgainstCapacity' };
}

function flowOf({ massFlow, capacity, states }: JudgedPoint, factors: Factors): number | undefined {
  if (massFlow !== undefined) return massFlow * factors.massFlow;
  if (capacity === undefined) return undefined;
  return flowOfCapacity(capacity * factors.capacity, states.suction.enthalpy, states.liquidEnthalpy);
}

function powerOf({ power }: JudgedPoint, factors: Factors): number | undefined {
  return power === undefined ? undefined : power * factors.power;
}

function overallOf(point: JudgedPoint, factors: Factors): number | undefined {
  const [flow, power] = [flowOf(point, factors), powerOf(point, factors)];
  return flow === undefined || power === undefined ? undefined : (flow * point.states.isentropicWork) / power;
}

/** Median capacity over what the flow beside it gives; null where no point has both. */
function effectOf(points: readonly JudgedPoint[], factors: Factors): number | null {
  const ratios = points.flatMap(({ massFlow, capacity, states }) => {
    if (massFlow === undefined || capacity === undefined) return [];
    const flow = flowOfCapacity(capacity * factors.capacity, states.suction.enthalpy, states.liquidEnthalpy);
    return [flow / (massFlow * factors.massFlow)];
  });
  return ratios.length === 0 ? null : bandOf(ratios).likely;
}

function isSensible({ fault, overall, effect }: Judgement): boolean {
  if (fault !== undefined) return false;
  if (overall !== null && overall.likely > sensibleOverallEfficiency.highest) return false;
  return isEffectUsual(effect);
}

/** Other readings that are sensible: those that such a machine would have, or if there is none, all that are possible. */
function sensibleReadings(
  judged: JudgedTable,
  pasted: DegreeReading,
  others: readonly DegreeReading[],
): readonly FoundReading[] {
  const found: FoundReading[] = [];
  for (const degrees of [pasted, ...others]) {
    const expected = expectedOver(judged, degrees.points);
    const isWhole = expected.every((each) => each.expected !== undefined);
    for (const { factors, changes } of factorReadings(judged.path, judged.table)) {
      const all = [...degrees.changes, ...changes];
      if (all.length === 0) continue;
      const judgement = judge(judged, degrees, expected, factors);
      if (!isSensible(judgement)) continue;
      const changeCount = changes.length + (degrees === pasted ? 0 : 1);
      // Fewer points would be less surprising by their number alone.
      const surprise = isWhole ? judgement.surprise : null;
      found.push({ changes: all, changeCount, overallEfficiency: judgement.overall?.likely ?? null, surprise });
    }
  }
  return usualOrAll(found);
}
