// Sets of ten coefficients as points the identification reads: values on a grid inside the ranges all of them hold in, and never
// outside.

import type { Refrigerant } from '../../../matter/refrigerants/index.ts';
import type { Band, Estimate, Origin } from '../../../quantities/index.ts';
import type { EvidencePoint, EvidenceQuantity, EvidenceSeries } from '../identification/evidence.ts';
import { type UsualMachine, usualPrior } from '../plausibility/expected.ts';
import { type GroupValues, type PlausibilityDoubt, readGroup } from '../plausibility/group-plausibility.ts';
import { type CoefficientGroup, coefficientGroups, type GridPoint, gridOf } from './coefficient-groups.ts';
import type { CoefficientSet, TemperatureRange } from './coefficient-set.ts';
import { coefficientScatter, sheetTolerance } from './tolerance.ts';

export interface CoefficientRequest {
  readonly fluid: Refrigerant;
  readonly sets: readonly CoefficientSet[];
  /** Air around the shell while the sets were measured [K]. */
  readonly surroundings: number;
  /** Range of the swept volume per revolution [m³]; null where nothing is known of it. */
  readonly displacement: Estimate | null;
  /** What is known of the machine without the sets, which they are held against; absent: nothing. */
  readonly usual?: UsualMachine;
}

/** Where a group of sets holds, and how efficient it says the machine is. */
export interface CoefficientCoverage {
  readonly path: string;
  readonly evaporatingRange: TemperatureRange;
  readonly condensingRange: TemperatureRange;
  readonly overallEfficiency: Band | null;
}

export interface CoefficientEvidence {
  readonly points: readonly EvidencePoint[];
  readonly series: readonly EvidenceSeries[];
  readonly coverage: readonly CoefficientCoverage[];
  readonly doubts: readonly PlausibilityDoubt[];
}

/**
 * Points out of sets of ten coefficients. Sets with the same gas basis, levels and mains are read together where all of them
 * hold; up to 30 points each. Where flow and capacity are both given they are one measurement: the flow is taken, the capacity
 * only held against it.
 * @throws InputError 'missingFrequency', 'missingLiquid', 'sameQuantityTwice', 'noCommonRange', 'noLift', 'noCoefficients', of an
 *         impossible basis, 'powerAboveVoltAmperes'; ImplausibleUnitError with the units that would make sense; errors of the
 *         refrigerant's equation where a range leaves it
 */
export function evidenceFromCoefficients(request: CoefficientRequest): CoefficientEvidence {
  const points: EvidencePoint[] = [];
  const series: EvidenceSeries[] = [];
  const coverage: CoefficientCoverage[] = [];
  const doubts: PlausibilityDoubt[] = [];
  const { fluid, displacement, surroundings, usual } = request;
  const knowledge = { fluid, displacement, surroundings, usual: usual === undefined ? null : usualPrior(usual) };
  for (const group of coefficientGroups(request.sets)) {
    const { path, label, evaporatingRange, condensingRange } = group;
    const grid = gridOf(request.fluid, group);
    const { values, overallEfficiency, doubts: own } = readGroup(group, grid, knowledge);
    const ofSheet = around(1, sheetTolerance, 'assumed');
    points.push(...pointsOf(group, grid, values, request.surroundings));
    series.push({ path, label, flowFactor: ofSheet, powerFactor: ofSheet });
    coverage.push({ path, evaporatingRange, condensingRange, overallEfficiency });
    doubts.push(...own);
  }
  return { points, series, coverage, doubts };
}

function pointsOf(
  group: CoefficientGroup,
  grid: readonly GridPoint[],
  values: GroupValues,
  surroundings: number,
): readonly EvidencePoint[] {
  const { massFlow, capacity, power, current } = values;
  const flow = massFlow === undefined ? { capacity } : { massFlow };
  return grid.map(({ conditions }, index) => {
    const given: Partial<Record<EvidenceQuantity, Estimate>> = {};
    for (const [of, column] of Object.entries({ ...flow, power, current }) as [
      EvidenceQuantity,
      number[] | undefined,
    ][]) {
      if (column !== undefined) given[of] = around(column[index]!, coefficientScatter, 'inferred');
    }
    return {
      path: `${group.path}.points.${index}`,
      label: `${group.label}, point ${index + 1}`,
      ...conditions,
      surroundings,
      supply: group.supply,
      given,
      series: group.path,
    };
  });
}

/** A value within a relative doubt. */
export function around(likely: number, share: number, origin: Origin): Estimate {
  return { low: likely * (1 - share), likely, high: likely * (1 + share), origin };
}
