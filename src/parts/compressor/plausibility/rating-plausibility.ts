// Whether one printed rating can be of the machine that is described: capacity and power against what its ranges let expect there.
// What physics forbids outright (more than is swept, less power than isentropic) is refused where the machine is identified.

import type { Refrigerant } from '../../../matter/refrigerants/index.ts';
import { type Band, findUnit } from '../../../quantities/index.ts';
import type { EvidencePoint } from '../identification/evidence.ts';
import { spreadOf } from '../identification/priors.ts';
import { flowOfCapacity, ratedStates } from '../polynomial/flow-and-capacity.ts';
import { sheetTolerance } from '../polynomial/tolerance.ts';
import { expectedAt, type UsualMachine, usualPrior } from './expected.ts';
import { farSurprise, refusedGain, toldGain } from './surprise.ts';
import {
  type FoundReading,
  fewestChanges,
  heldAgainst,
  ImplausibleUnitError,
  isUsual,
  likelierReadings,
  type OfExpected,
  onePlaceOf,
  type SensibleReading,
  sensibleOverallEfficiency,
  unlikelyWords,
  usualOrAll,
} from './unit-readings.ts';

/** What is odd about a rating without being impossible. */
export interface RatingDoubt {
  readonly path: string;
  readonly efficiency: Band | null;
  readonly ofExpected: OfExpected;
  readonly readings: readonly SensibleReading[];
}

/** Watts in one BTU/h. */
const wattsPerBtu = findUnit('power', 'BTU/h')!.factor;

const thousands = [
  { factor: 1000, unit: 'kW in place of W' },
  { factor: 1e-3, unit: 'W in place of kW' },
] as const;

/** What a number becomes where another unit was meant. Electricity is not printed in BTU/h. */
const otherUnits = {
  capacity: [
    { factor: wattsPerBtu, unit: 'BTU/h in place of W' },
    { factor: 1 / wattsPerBtu, unit: 'W in place of BTU/h' },
    ...thousands,
  ],
  power: thousands,
} as const;

/**
 * @param fluid  of the rating
 * @param point  the rating as the identification reads it
 * @param usual  what is known of the machine without it
 * @returns      what is odd about it; undefined where nothing is, or where no such machine runs there
 * @throws ImplausibleUnitError where it is so unlikely that another unit must be meant. Less power than isentropic that no single
 *         unit explains is left to the identification, which knows what ranges allow.
 */
export function requirePlausibleRating(
  fluid: Refrigerant,
  point: EvidencePoint,
  usual: UsualMachine,
): RatingDoubt | undefined {
  const judge = judgeOf(fluid, point, usual);
  const own = judge({ capacity: 1, power: 1 });
  const isImpossible = leastEfficiency(fluid, point) > 1;
  if (isUsual(own) && !isImpossible) return undefined;
  const found = otherReadings(point, judge);
  const { path } = point;
  const efficiency = bandOfOne(own.overallEfficiency);
  const meant = isImpossible
    ? fewestChanges(usualOrAll(found.filter(hasSensibleEfficiency)))
    : likelierReadings(found, own.surprise, refusedGain);
  if (meant.length > 0) {
    throw new ImplausibleUnitError(onePlaceOf(meant) ?? path, unlikelyWords(efficiency, own.ofExpected), meant);
  }
  if (isImpossible) return undefined;
  const readings = likelierReadings(found, own.surprise, toldGain);
  if (readings.length === 0 && (own.surprise ?? 0) < farSurprise.onePoint) return undefined;
  return { path, efficiency, ofExpected: own.ofExpected, readings };
}

/** Factors on what was printed. */
interface RatingFactors {
  readonly capacity: number;
  readonly power: number;
}

interface Judgement {
  readonly overallEfficiency: number | null;
  readonly surprise: number | null;
  readonly ofExpected: OfExpected;
}

type Judge = (factors: RatingFactors) => Judgement;

function judgeOf(fluid: Refrigerant, point: EvidencePoint, usual: UsualMachine): Judge {
  const { surroundings, supply, given } = point;
  const { suction, dischargePressure, liquidEnthalpy, isentropicWork } = ratedStates(fluid, point);
  const expected = [expectedAt(fluid, usualPrior(usual), { suction, dischargePressure, surroundings, supply })];
  const spread = {
    ...(given.capacity && { flow: spreadOf(given.capacity, { kind: 'logarithm' }, `${point.path}.capacity`) }),
    ...(given.power && { power: spreadOf(given.power, { kind: 'logarithm' }, `${point.path}.power`) }),
  };
  return ({ capacity, power }) => {
    const flow = given.capacity && flowOfCapacity(given.capacity.likely * capacity, suction.enthalpy, liquidEnthalpy);
    const watts = given.power && given.power.likely * power;
    const overallEfficiency = flow === undefined || watts === undefined ? null : (flow * isentropicWork) / watts;
    const printed = [{ flow, power: watts, spread }];
    return { overallEfficiency, ...heldAgainst(expected, printed) };
  };
}

/** The same rating with one number in another unit. */
function otherReadings({ path, given }: EvidencePoint, judge: Judge): readonly FoundReading[] {
  return (['capacity', 'power'] as const)
    .filter((name) => given[name] !== undefined)
    .flatMap((name) =>
      otherUnits[name].map(({ factor, unit }) => ({
        ...judge({ capacity: 1, power: 1, [name]: factor }),
        changes: [{ path: `${path}.${name}`, unit }],
        changeCount: 1,
      })),
    );
}

function hasSensibleEfficiency({ overallEfficiency }: FoundReading): boolean {
  const { lowest, highest } = sensibleOverallEfficiency;
  return overallEfficiency !== null && overallEfficiency >= lowest && overallEfficiency <= highest;
}

/** Overall efficiency that the ranges of capacity and power, and the tolerance of a sheet, leave at least; 0 without both. */
function leastEfficiency(fluid: Refrigerant, point: EvidencePoint): number {
  const { capacity, power } = point.given;
  if (capacity === undefined || power === undefined) return 0;
  const { suction, liquidEnthalpy, isentropicWork } = ratedStates(fluid, point);
  const tolerance = point.series === undefined ? 0 : sheetTolerance;
  const flow = flowOfCapacity(capacity.low * (1 - tolerance), suction.enthalpy, liquidEnthalpy);
  return (flow * isentropicWork) / (power.high * (1 + tolerance));
}

function bandOfOne(value: number | null): Band | null {
  return value === null ? null : { low: value, likely: value, high: value };
}
