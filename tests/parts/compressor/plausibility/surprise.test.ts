// How surprising printed numbers are: against a distance worked by hand, and how often true ratings of machines drawn from the ranges
// themselves are told or refused.

import { expect, test } from 'vitest';
import { refrigerant, tabulated } from '../../../../src/matter/refrigerants/index.ts';
import { KettlefinError } from '../../../../src/numerics/index.ts';
import { hermeticPoint } from '../../../../src/parts/compressor/hermetic/point.ts';
import { machineAt } from '../../../../src/parts/compressor/identification/priors.ts';
import {
  type EvidencePoint,
  hermeticParameters,
  machinePrior,
  ratingConditions,
} from '../../../../src/parts/compressor/index.ts';
import { type Expected, expectedAt, usualPrior } from '../../../../src/parts/compressor/plausibility/expected.ts';
import { requirePlausibleRating } from '../../../../src/parts/compressor/plausibility/rating-plausibility.ts';
import { surpriseOf } from '../../../../src/parts/compressor/plausibility/surprise.ts';
import { ImplausibleUnitError } from '../../../../src/parts/compressor/plausibility/unit-readings.ts';
import { ratedStates } from '../../../../src/parts/compressor/polynomial/flow-and-capacity.ts';
import type { Estimate } from '../../../../src/quantities/index.ts';
import { normal, randomFrom } from '../identification/random.ts';

// One range that moves flow and power alike by 0.3, one that moves power alone by 0.2; beside them 0.05 in common and 0.06 alone:
// S = [[0.0961, 0.09], [0.09, 0.1361]], det = 0.00497921; d = (ln 2, 0): D² = 0.1361 ln²2 / det = 13.1326.
test('is the distance of Mahalanobis, worked by hand for flow and power of one point', () => {
  const moves = [
    { flow: 0.3, power: 0.3 },
    { flow: 0, power: 0.2 },
  ];
  const expected: Expected = { likely: { flow: 0, power: 0 }, moves };
  expect(surpriseOf([expected], [{ flow: 2, power: 1 }])).toBeCloseTo(13.1326, 3);
  // A value given as a range of σ 0.4 adds 0.16 to its own variance: d = (ln 2), S = 0.2561.
  const wide = { flow: 2, power: undefined, spread: { flow: 0.4 } };
  expect(surpriseOf([expected], [wide])).toBeCloseTo(Math.log(2) ** 2 / 0.2561, 9);
  expect(surpriseOf([undefined], [{ flow: 2, power: 1 }])).toBeNull();
});

const supply = { frequency: 50, voltage: 230 };
const surroundings = 305.35;
const fluid = tabulated(refrigerant('R134a'));
const rated = ratingConditions('ashraeLow');
const states = ratedStates(fluid, rated);
const running = { suction: states.suction, dischargePressure: states.dischargePressure, surroundings, supply };

test('a range so wide that one σ of it leads to a machine that does not run still counts', () => {
  const numbers = machinePrior({ madeFor: 'R134a', frequency: 50, isRated: true });
  const { moves } = expectedAt(fluid, usualPrior({ numbers, ratedSupply: supply }), running)!;
  const { low, high } = numbers.displacement;
  // Flow goes with the displacement: σ of its logarithm is that of the displacement, within a tenth.
  const sigma = Math.log(high / low) / (2 * 1.6449);
  expect(moves[hermeticParameters.indexOf('displacement')]!.flow / sigma).toBeCloseTo(1, 1);
});

const origins = {
  'of a class': { appliance: 'chestFreezer', madeFor: 'R134a', frequency: 50 },
  'of nothing that is named': { madeFor: 'R134a', frequency: 50, isRated: true },
} as const;

// The machines are drawn from the ranges of a chest freezer: each is a true one, whatever is known of it.
test.each(Object.entries(origins))(
  'true ratings of 300 random machines, known to be %s, are never refused and told in less than 2 of 100 (seed 5)',
  (_, origin) => {
    const random = randomFrom(5);
    const drawn = usualPrior({ numbers: machinePrior(origins['of a class']), ratedSupply: supply });
    const usual = { numbers: machinePrior(origin), ratedSupply: supply };
    const counts = { fine: 0, told: 0, refused: 0, notRunning: 0 };
    for (let machine = 0; machine < 300; machine++) counts[outcome(machineAt(drawn, draws(random)), random, usual)]++;
    expect(counts.refused).toBe(0);
    expect(counts.told).toBeLessThanOrEqual(6);
    expect(counts.fine).toBeGreaterThan(250);
  },
);

function draws(random: () => number): readonly number[] {
  return hermeticParameters.map(() => normal(random));
}

function outcome(
  machine: Parameters<typeof hermeticPoint>[0],
  random: () => number,
  usual: Parameters<typeof requirePlausibleRating>[2],
): 'fine' | 'told' | 'refused' | 'notRunning' {
  const noise = () => 1 + 0.03 * normal(random);
  try {
    const { massFlow, power } = hermeticPoint(machine, fluid, running);
    const capacity = massFlow * (states.suction.enthalpy - states.liquidEnthalpy);
    const given = { capacity: exactly(capacity * noise()), power: exactly(power * noise()) };
    const point: EvidencePoint = { path: 'r', label: 'r', ...rated, surroundings, supply, given };
    return requirePlausibleRating(fluid, point, usual) === undefined ? 'fine' : 'told';
  } catch (error) {
    if (error instanceof ImplausibleUnitError) return 'refused';
    if (error instanceof KettlefinError) return 'notRunning';
    throw error;
  }
}

function exactly(value: number): Estimate {
  return { low: value, likely: value, high: value, origin: 'typed' };
}
