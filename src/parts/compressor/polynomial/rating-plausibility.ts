// Whether one printed rating can be of the machine that is described: capacity and power against what its ranges let expect there.
// What physics forbids outright (more than is swept, less power than isentropic) is refused where the machine is identified.

import type { Refrigerant } from '../../../matter/refrigerants/index.ts';
import type { Band } from '../../../quantities/index.ts';
import type { EvidencePoint } from '../identification/evidence.ts';
import { expectedAt, type UsualMachine, usualPrior } from '../plausibility/expected.ts';
import { farSurprise, refusedGain, surpriseOf, toldGain } from '../plausibility/surprise.ts';
import { flowOfCapacity, ratedStates } from './flow-and-capacity.ts';
import {
  type FoundReading,
  ImplausibleUnitError,
  isUsual,
  likelierReadings,
  type OfExpected,
  ofExpectedIn,
  type SensibleReading,
  unlikelyWords,
} from './plausibility.ts';

/** What is odd about a rating without being impossible. */
export interface RatingDoubt {
  readonly path: string;
  readonly efficiency: Band | null;
  readonly ofExpected: OfExpected;
  readonly readings: readonly SensibleReading[];
}

const wattsPerBtu = 0.29307107;

/** What a number becomes where another unit was meant. */
const otherUnits = [
  { factor: wattsPerBtu, unit: 'BTU/h in place of W' },
  { factor: 1 / wattsPerBtu, unit: 'W in place of BTU/h' },
  { factor: 1000, unit: 'kW in place of W' },
  { factor: 1e-3, unit: 'W in place of kW' },
] as const;

/**
 * @param fluid  of the rating
 * @param point  the rating as the identification reads it
 * @param usual  what is known of the machine without it
 * @returns      what is odd about it; undefined where nothing is, or where no such machine runs there
 * @throws ImplausibleUnitError where it is so unlikely that another unit must be meant
 */
export function requirePlausibleRating(
  fluid: Refrigerant,
  point: EvidencePoint,
  usual: UsualMachine,
): RatingDoubt | undefined {
  const { path, surroundings, supply, given } = point;
  const { suction, dischargePressure, liquidEnthalpy, isentropicWork } = ratedStates(fluid, point);
  const expected = [expectedAt(fluid, usualPrior(usual), { suction, dischargePressure, surroundings, supply })];
  const judged = (capacity: number, power: number) => {
    const flow = given.capacity && flowOfCapacity(given.capacity.likely * capacity, suction.enthalpy, liquidEnthalpy);
    const watts = given.power && given.power.likely * power;
    const overallEfficiency = flow === undefined || watts === undefined ? null : (flow * isentropicWork) / watts;
    const printed = [{ flow, power: watts }];
    return { overallEfficiency, surprise: surpriseOf(expected, printed), ofExpected: ofExpectedIn(expected, printed) };
  };
  const own = judged(1, 1);
  if (isUsual(own) || (own.overallEfficiency ?? 0) > 1) return undefined;
  const found = otherUnits.flatMap(({ factor, unit }): readonly FoundReading[] => [
    ...(given.capacity === undefined ? [] : [{ ...judged(factor, 1), ...change(`${path}.capacity`, unit) }]),
    ...(given.power === undefined ? [] : [{ ...judged(1, factor), ...change(`${path}.power`, unit) }]),
  ]);
  const efficiency =
    own.overallEfficiency === null
      ? null
      : { low: own.overallEfficiency, likely: own.overallEfficiency, high: own.overallEfficiency };
  const meant = likelierReadings(found, own.surprise, refusedGain);
  if (meant.length > 0) {
    const paths = new Set(meant.flatMap(({ changes }) => changes.map((each) => each.path)));
    const place = paths.size === 1 ? [...paths][0]! : path;
    throw new ImplausibleUnitError(place, unlikelyWords(efficiency, own.ofExpected), meant);
  }
  const readings = likelierReadings(found, own.surprise, toldGain);
  if (readings.length === 0 && (own.surprise ?? 0) < farSurprise.onePoint) return undefined;
  return { path, efficiency, ofExpected: own.ofExpected, readings };
}

function change(path: string, unit: (typeof otherUnits)[number]['unit']) {
  return { changes: [{ path, unit }], changeCount: 1 };
}
