// Whether the sets of a group can be those of one machine. Where they cannot, every other unit and temperature unit is tried.

import type { Refrigerant } from '../../../matter/refrigerants/index.ts';
import type { Band, Estimate } from '../../../quantities/index.ts';
import type { Prior } from '../identification/priors.ts';
import type { CoefficientGroup, GridPoint } from '../polynomial/coefficient-groups.ts';
import type { CoefficientSet } from '../polynomial/coefficient-set.ts';
import { capacityOfFlow, flowOfCapacity } from '../polynomial/flow-and-capacity.ts';
import { type TenCoefficients, tenCoefficients } from '../polynomial/ten-coefficients.ts';
import {
  coefficientsInSi,
  type PolynomialQuantity,
  type PolynomialUnit,
  polynomialUnits,
  polynomialUnitsInSi,
  type TemperatureUnit,
  temperatureUnits,
  zeroCelsius,
} from '../polynomial/units.ts';
import { type Expected, expectedAt } from './expected.ts';
import { requirePossiblePowerFactor } from './power-factor.ts';
import { farSurprise, refusedGain, toldGain } from './surprise.ts';
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
  unlikelyWords,
  usualOrAll,
} from './unit-readings.ts';

/** Volumetric efficiencies of one machine vary less than this over its range, as largest over smallest. */
const sensibleVariation = 4;

/** What is odd about a group without being impossible. */
export type PlausibilityDoubt = {
  readonly path: string;
  readonly ofExpected: OfExpected;
  /** Capacity over what the flow beside it gives [-]; null without both. */
  readonly effect: number | null;
  /** Units in which it would be usual. */
  readonly readings: readonly SensibleReading[];
} & (
  | {
      readonly code: 'efficiencyUnusuallyLow' | 'efficiencyUnusuallyHigh';
      /** η_o over the range. */
      readonly efficiency: Band;
    }
  /** Flow and power far from what is known of the machine; the efficiency is null without power or without flow and capacity. */
  | { readonly code: 'notAsExpected'; readonly efficiency: Band | null }
);

/** Values of a group at its grid, SI: columns in the order of the grid. */
export type GroupValues = Readonly<Partial<Record<PolynomialQuantity, readonly number[]>>>;

export interface GroupReading {
  readonly values: GroupValues;
  /** η_o over the grid; null without power or without flow and capacity. */
  readonly overallEfficiency: Band | null;
  readonly doubts: readonly PlausibilityDoubt[];
}

/** What the sets of a group are held against beside themselves. */
export interface GroupKnowledge {
  readonly fluid: Refrigerant;
  /** Range of the swept volume per revolution [m³]; null where it is not known. */
  readonly displacement: Estimate | null;
  /** What is known of the machine without the sets; null where nothing is to be expected. */
  readonly usual: Prior | null;
  /** Air around the shell [K]. */
  readonly surroundings: number;
}

/**
 * Values of a group at its grid.
 * @param group      sets that belong together
 * @param grid       where they are read
 * @param knowledge  what else is known of the machine
 * @throws ImplausibleUnitError ('implausibleUnit') where a value is not positive, an efficiency is above 1 or its middle below what
 *         such machines have, the swept volume is none of a small machine, or flow and power are so unlikely that another unit
 *         must be meant; InputError 'powerAboveVoltAmperes', 'currentFarAbovePower'
 */
export function readGroup(
  group: CoefficientGroup,
  grid: readonly GridPoint[],
  knowledge: GroupKnowledge,
): GroupReading {
  const as: Reading = new Map(
    setsOf(group).map((set) => [set, { unit: set.unit, temperatureUnit: set.temperatureUnit }]),
  );
  const values = valuesOf(group, grid, as);
  const held: Held = { displacement: knowledge.displacement, expected: expectedOver(group, grid, knowledge) };
  const judged = judge(group, grid, values, held);
  if (judged.fault !== undefined) {
    const readings = fewestChanges(usualOrAll(sensibleReadings(group, grid, held)));
    throw new ImplausibleUnitError(placeOf(group, readings), judged.fault, readings);
  }
  const { overall, surprise, ofExpected } = judged;
  const meant = isUsual(judged) ? [] : likelierReadings(sensibleReadings(group, grid, held), surprise, refusedGain);
  if (meant.length > 0)
    throw new ImplausibleUnitError(placeOf(group, meant), unlikelyWords(overall, ofExpected), meant);
  requirePossibleCurrent(group, values);
  return {
    values,
    overallEfficiency: overall,
    doubts: doubtsOf(group, grid, held, { ...judged, effect: effectOf(grid, values) }),
  };
}

interface Held {
  readonly displacement: Estimate | null;
  readonly expected: ExpectedOver;
}

type ExpectedOver = readonly { readonly index: number; readonly expected: Expected | undefined }[];

function expectedOver(
  { supply }: CoefficientGroup,
  grid: readonly GridPoint[],
  { fluid, usual, surroundings }: GroupKnowledge,
): ExpectedOver {
  if (usual === null) return [];
  const indices = grid.map((_, index) => index);
  return comparedOf(indices, (index) => grid[index]!.states.suction.pressure).map((index) => {
    const { suction, dischargePressure } = grid[index]!.states;
    return { index, expected: expectedAt(fluid, usual, { suction, dischargePressure, surroundings, supply }) };
  });
}

/** Units of one set. */
interface SetUnits {
  readonly unit: PolynomialUnit;
  readonly temperatureUnit: TemperatureUnit;
}

type Reading = ReadonlyMap<CoefficientSet, SetUnits>;

function setsOf(group: CoefficientGroup): readonly CoefficientSet[] {
  return Object.values(group.sets);
}

function valuesOf(group: CoefficientGroup, grid: readonly GridPoint[], as: Reading): GroupValues {
  const values: Partial<Record<PolynomialQuantity, readonly number[]>> = {};
  for (const set of setsOf(group)) {
    const { unit, temperatureUnit } = as.get(set)!;
    values[set.of] = columnOf(coefficientsInSi(set.coefficients, temperatureUnit, unit), grid);
  }
  return values;
}

function columnOf(inSi: TenCoefficients, grid: readonly GridPoint[]): readonly number[] {
  return grid.map(({ evaporating, condensing }) =>
    tenCoefficients(inSi, evaporating - zeroCelsius, condensing - zeroCelsius),
  );
}

interface Judgement {
  readonly fault: string | undefined;
  readonly overall: Band | null;
  readonly surprise: number | null;
  readonly ofExpected: OfExpected;
  /** Largest over smallest volumetric efficiency, which one machine has nearly constant. */
  readonly variation: number;
}

/** What is impossible about values, if anything. */
function judge(group: CoefficientGroup, grid: readonly GridPoint[], values: GroupValues, held: Held): Judgement {
  const unknown = { overall: null, surprise: null, ofExpected: { flow: null, power: null } };
  const nothing = { ...unknown, variation: Number.POSITIVE_INFINITY };
  for (const [of, column] of Object.entries(values)) {
    const worst = column.findIndex((value) => !(value > 0));
    if (worst >= 0) {
      const value = `${rounded(column[worst]!)} ${polynomialUnitsInSi[of as PolynomialQuantity]}`;
      return { fault: `${of} of ${value} at ${placeIn(grid, worst)}`, ...nothing };
    }
  }
  const flows = flowsOf(grid, values);
  const { power } = values;
  const against = againstExpected(held.expected, flows, power);
  if (flows === undefined) return { fault: undefined, overall: null, ...against, variation: 1 };
  const swept = bandOf(
    flows.map((flow, index) => flow / (grid[index]!.states.suction.density * group.supply.frequency)),
  );
  const sweptFault =
    faultOfSwept(swept, held.displacement) ?? faultOfEffect(effectOf(grid, values)) ?? faultOfTrend(grid, flows);
  const variation = swept.high / swept.low;
  if (power === undefined) return { fault: sweptFault, overall: null, ...against, variation };
  const efficiencies = flows.map((flow, index) => (flow * grid[index]!.states.isentropicWork) / power[index]!);
  const overall = bandOf(efficiencies);
  const highest = placeIn(grid, efficiencies.indexOf(overall.high));
  const overallFault = faultOfOverall(overall);
  const fault = overallFault === undefined ? sweptFault : `${overallFault}, highest at ${highest}`;
  return { fault, overall, ...against, variation };
}

function againstExpected(
  expected: ExpectedOver,
  flows: readonly number[] | undefined,
  powers: readonly number[] | undefined,
): Pick<Judgement, 'surprise' | 'ofExpected'> {
  const printed = expected.map(({ index }) => ({ flow: flows?.[index], power: powers?.[index] }));
  return heldAgainst(
    expected.map((each) => each.expected),
    printed,
  );
}

/** Where a person looks first. Each level has its own unit, which is what the edges turn into the reader's. */
function placeIn(grid: readonly GridPoint[], index: number): string {
  const { evaporating, condensing } = grid[index]!;
  return `${roundedLevel(evaporating)} K evaporating and ${roundedLevel(condensing)} K condensing`;
}

/** Hundredths of a kelvin: whole degrees Celsius stay whole. */
function roundedLevel(kelvin: number): number {
  return Math.round(kelvin * 100) / 100;
}

/** Flow at each point, from the set of flow or else from that of capacity. */
function flowsOf(grid: readonly GridPoint[], { massFlow, capacity }: GroupValues): readonly number[] | undefined {
  if (massFlow !== undefined) return massFlow;
  return capacity?.map((value, index) => {
    const { suction, liquidEnthalpy } = grid[index]!.states;
    return flowOfCapacity(value, suction.enthalpy, liquidEnthalpy);
  });
}

/** Capacity over what the flow beside it gives with its gas and liquid [-]; null without both. */
function effectOf(grid: readonly GridPoint[], { massFlow, capacity }: GroupValues): number | null {
  if (massFlow === undefined || capacity === undefined) return null;
  const ratio = bandOf(
    capacity.map((value, index) => {
      const { suction, liquidEnthalpy } = grid[index]!.states;
      return value / capacityOfFlow(massFlow[index]!, suction.enthalpy, liquidEnthalpy);
    }),
  );
  return ratio.likely;
}

/** Volumetric efficiency at the highest evaporating temperature over that at the lowest is above this. */
const leastRise = 0.8;

/**
 * Volumetric efficiency rises with the evaporating temperature, as the pressure ratio falls; with degrees of the wrong scale it
 * falls. A small fall is no fault: the motor slows down and the openings lose more.
 */
function faultOfTrend(grid: readonly GridPoint[], flows: readonly number[]): string | undefined {
  const swept = (index: number) => flows[index]! / grid[index]!.states.suction.density;
  const rises: number[] = [];
  grid.forEach(({ condensing }, first) => {
    if (first > 0 && grid[first - 1]!.condensing === condensing) return;
    const last = grid.findLastIndex((point) => point.condensing === condensing);
    rises.push(swept(last) / swept(first));
  });
  const rise = bandOf(rises).likely;
  if (rise >= leastRise) return undefined;
  return `volumetric efficiency that falls to ${rounded(rise)} times as the evaporating temperature rises`;
}

/** Other units in which the sets could be those of one machine whose overall efficiency is at least `least`. */
function sensibleReadings(
  group: CoefficientGroup,
  grid: readonly GridPoint[],
  held: Held,
  least: number = sensibleOverallEfficiency.lowest,
): readonly FoundReading[] {
  const found: FoundReading[] = [];
  for (const as of allReadings(setsOf(group))) {
    const { fault, overall, surprise, variation } = judge(group, grid, valuesOf(group, grid, as), held);
    const isSensible =
      overall === null || (overall.likely >= least && overall.likely <= sensibleOverallEfficiency.highest);
    if (fault === undefined && isSensible && variation <= sensibleVariation) {
      found.push({ ...changesOf(as), overallEfficiency: overall?.likely ?? null, surprise });
    }
  }
  return found.filter(({ changeCount }) => changeCount > 0);
}

/** Degrees of the other scale in all sets are one change: one sheet has one scale. */
function changesOf(as: Reading) {
  const changes = [...as].filter(([set, units]) => hasOtherUnit(set, units) || hasOtherDegrees(set, units));
  const otherUnits = changes.filter(([set, units]) => hasOtherUnit(set, units)).length;
  const otherDegrees = changes.filter(([set, units]) => hasOtherDegrees(set, units)).length;
  return {
    changes: changes.map(([{ path }, units]) => ({ path, ...units })),
    changeCount: otherUnits + (otherDegrees === as.size ? 1 : otherDegrees),
  };
}

function hasOtherUnit(set: CoefficientSet, { unit }: SetUnits): boolean {
  return unit !== set.unit;
}

function hasOtherDegrees(set: CoefficientSet, { temperatureUnit }: SetUnits): boolean {
  return temperatureUnit !== set.temperatureUnit;
}

/** Every combination of units of the sets. */
function allReadings(sets: readonly CoefficientSet[]): readonly Reading[] {
  let readings: [CoefficientSet, SetUnits][][] = [[]];
  for (const set of sets) {
    const own = polynomialUnits[set.of].flatMap((unit: PolynomialUnit) =>
      temperatureUnits.map((temperatureUnit): [CoefficientSet, SetUnits] => [set, { unit, temperatureUnit }]),
    );
    readings = readings.flatMap((before) => own.map((one) => [...before, one]));
  }
  return readings.map((reading) => new Map(reading));
}

/** Where the only change is, or else the first set. */
function placeOf(group: CoefficientGroup, readings: readonly SensibleReading[]): string {
  const path = onePlaceOf(readings) ?? group.path;
  const set = setsOf(group).find((one) => one.path === path);
  const areDegrees =
    readings.length > 0 && readings.every(({ changes }) => changes.every(({ unit }) => unit === set?.unit));
  return `${path}.${areDegrees ? 'temperatureUnit' : 'unit'}`;
}

/** @throws InputError 'powerAboveVoltAmperes', 'currentFarAbovePower' at the first point of the grid that no motor has. */
function requirePossibleCurrent({ sets, supply }: CoefficientGroup, { power, current }: GroupValues): void {
  if (power === undefined || current === undefined) return;
  const places = { power: `${sets.power!.path}.values`, current: `${sets.current!.path}.values` };
  for (const [index, watts] of power.entries()) {
    requirePossiblePowerFactor(places, watts, current[index]!, supply.voltage);
  }
}

function doubtsOf(
  group: CoefficientGroup,
  grid: readonly GridPoint[],
  held: Held,
  { overall, surprise, ofExpected, effect }: Judgement & { readonly effect: number | null },
): readonly PlausibilityDoubt[] {
  const isLow = overall !== null && overall.likely < remarkableOverallEfficiency;
  const isHigh = overall !== null && overall.likely > sensibleOverallEfficiency.highest;
  const found = isLow || isHigh ? sensibleReadings(group, grid, held, remarkableOverallEfficiency) : [];
  const { path } = group;
  if (isLow || isHigh) {
    const code = isLow ? 'efficiencyUnusuallyLow' : 'efficiencyUnusuallyHigh';
    return [{ code, path, efficiency: overall, ofExpected, effect, readings: fewestChanges(usualOrAll(found)) }];
  }
  if (isUsual({ surprise }) && isEffectUsual(effect)) return [];
  const readings = likelierReadings(sensibleReadings(group, grid, held), surprise, toldGain);
  const isFarOff = surprise !== null && surprise >= farSurprise.severalPoints;
  if (readings.length === 0 && isEffectUsual(effect) && !isFarOff) return [];
  return [{ code: 'notAsExpected', path, efficiency: overall, ofExpected, effect, readings }];
}
