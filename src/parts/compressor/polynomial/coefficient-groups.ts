// Sets of ten coefficients that hold for the same gas, levels and mains describe one machine together: flow or capacity beside
// power and current. Their common range, and the grid of points on which they are read.

import type { Refrigerant } from '../../../matter/refrigerants/index.ts';
import { InputError } from '../../../numerics/index.ts';
import type { Supply } from '../hermetic/parameters.ts';
import type { RatingConditions } from '../rating-points.ts';
import { requireSaturatedLevel } from '../saturated-level.ts';
import { conditionsWithoutCapacity, type RatingBasis, ratedConditions } from './basis.ts';
import {
  type CoefficientSet,
  dependsOnLiquid,
  requireCoefficientSet,
  requireFrequency,
  type TemperatureRange,
} from './coefficient-set.ts';
import { type RatedStates, ratedStates } from './flow-and-capacity.ts';
import type { PolynomialQuantity } from './units.ts';

export interface CoefficientGroup {
  /** Path of its first set. */
  readonly path: string;
  readonly label: string;
  readonly sets: Readonly<Partial<Record<PolynomialQuantity, CoefficientSet>>>;
  readonly basis: RatingBasis;
  readonly dependsOnLiquid: boolean;
  readonly supply: Supply;
  /** Where all of its sets hold [K]. */
  readonly evaporatingRange: TemperatureRange;
  readonly condensingRange: TemperatureRange;
}

/** A point at which a group is read. */
export interface GridPoint {
  /** As the sets are asked: dew or mid-point [K]. */
  readonly evaporating: number;
  readonly condensing: number;
  readonly conditions: RatingConditions;
  readonly states: RatedStates;
}

/**
 * Sets by what they hold for.
 * @throws InputError 'noCoefficients' for none, 'missingFrequency', 'missingLiquid' for a capacity without its liquid,
 *         'sameQuantityTwice', 'noCommonRange', and for an impossible set
 */
export function coefficientGroups(sets: readonly CoefficientSet[]): readonly CoefficientGroup[] {
  if (sets.length === 0) throw new InputError('coefficients', 'none', 'at least one set', 'noCoefficients');
  const byKey = new Map<string, CoefficientSet[]>();
  for (const set of sets) {
    requireCoefficientSet(set);
    const { frequency, voltage } = requireFrequency(set.path, set.supply);
    const { gas, saturation } = set.basis;
    const degrees = gas.kind === 'superheat' ? gas.superheat : gas.returnGas;
    const key = [gas.kind, degrees, saturation, frequency, voltage].join(' ');
    byKey.set(key, [...(byKey.get(key) ?? []), set]);
  }
  return [...byKey.values()].map(groupOf);
}

function groupOf(members: readonly CoefficientSet[]): CoefficientGroup {
  const sets: Partial<Record<PolynomialQuantity, CoefficientSet>> = {};
  for (const set of members) {
    const other = sets[set.of];
    if (other !== undefined) {
      const expected = `one set of ${set.of} for one basis and supply; ${other.path} is one already`;
      throw new InputError(`${set.path}.of`, set.of, expected, 'sameQuantityTwice');
    }
    sets[set.of] = set;
  }
  const first = members[0]!;
  if (sets.capacity !== undefined && sets.capacity.basis.liquid === null) {
    const expected = 'subcooling or liquid temperature: a capacity without it is in doubt by a fifth';
    throw new InputError(`${sets.capacity.path}.basis`, 'no liquid', expected, 'missingLiquid');
  }
  const liquidFrom = sets.capacity ?? members.find(({ basis }) => basis.liquid !== null) ?? first;
  return {
    path: first.path,
    label: first.label,
    sets,
    basis: { ...first.basis, liquid: liquidFrom.basis.liquid },
    dependsOnLiquid: members.some(dependsOnLiquid),
    supply: requireFrequency(first.path, first.supply),
    evaporatingRange: commonRange(members, 'evaporatingRange'),
    condensingRange: commonRange(members, 'condensingRange'),
  };
}

function commonRange(
  members: readonly CoefficientSet[],
  which: 'evaporatingRange' | 'condensingRange',
): TemperatureRange {
  const low = Math.max(...members.map((set) => set[which].low));
  const high = Math.min(...members.map((set) => set[which].high));
  if (low <= high) return { low, high };
  const ranges = members.map((set) => `${set.of} ${set[which].low} to ${set[which].high} K`).join(', ');
  throw new InputError(`${members[0]!.path}.${which}`, ranges, 'ranges that overlap', 'noCommonRange');
}

/** How many levels a group is read at: enough that a cubic is known, few enough that nothing is counted twice over. */
const evaporatingLevels = 6;
const condensingLevels = 5;
/** Points with less between the two levels are no running points of such machines and are left out [K]. */
export const leastLift = 5;

/**
 * Points spread evenly over the common range, its ends among them.
 * @throws InputError 'noLift' where the ranges leave no point with lift, and where the basis makes no sense at a point
 */
export function gridOf(fluid: Refrigerant, group: CoefficientGroup): readonly GridPoint[] {
  const points: GridPoint[] = [];
  const conditionsOf = group.dependsOnLiquid ? ratedConditions : conditionsWithoutCapacity;
  for (const range of ['evaporatingRange', 'condensingRange'] as const) {
    const { low, high } = group[range];
    for (const end of [low, high]) requireSaturatedLevel(fluid, `${group.path}.${range}`, end);
  }
  for (const { evaporating, condensing } of gridLevels(group)) {
    const conditions = conditionsOf(fluid, group.basis, evaporating.value, condensing.value, `${group.path}.basis`);
    const states = ratedStates(fluid, conditions);
    points.push({ evaporating: evaporating.value, condensing: condensing.value, conditions, states });
  }
  if (points.length > 0) return points;
  const expected = `condensing temperatures at least ${leastLift} K above evaporating ones`;
  throw new InputError(`${group.path}.condensingRange`, group.condensingRange.high, expected, 'noLift');
}

/** One of the temperatures at which a group is read [K]: level `index` of `steps`, from the lowest of its range. */
export interface GridLevel {
  readonly value: number;
  readonly index: number;
  readonly steps: number;
}

/** The two levels of each point of the grid, in its order. */
export function gridLevels(
  group: CoefficientGroup,
): readonly { readonly evaporating: GridLevel; readonly condensing: GridLevel }[] {
  const evaporatingOnes = levelsOf(group.evaporatingRange, evaporatingLevels);
  return levelsOf(group.condensingRange, condensingLevels).flatMap((condensing) =>
    evaporatingOnes
      .filter((evaporating) => condensing.value - evaporating.value >= leastLift)
      .map((evaporating) => ({ evaporating, condensing })),
  );
}

function levelsOf({ low, high }: TemperatureRange, count: number): readonly GridLevel[] {
  const steps = low === high ? 0 : count - 1;
  return Array.from({ length: steps + 1 }, (_, index) => ({
    value: levelOfGrid(low, high, index, steps),
    index,
    steps,
  }));
}

/** Level i of n steps from the lowest to the highest [K]; of n = 0 the lowest. */
export function levelOfGrid(low: number, high: number, index: number, steps: number): number {
  return steps === 0 ? low : low + ((high - low) * index) / steps;
}
