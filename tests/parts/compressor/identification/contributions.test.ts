// The correction of the model point by point: weights times misses add up to what modelDoubt corrects by, the weights are those of
// the textbook formula evaluated by mathjs, and each miss is the residual's.

import { inv, multiply } from 'mathjs';
import { describe, expect, test } from 'vitest';
import {
  deviationAmounts,
  deviationCovariance,
  middleOf,
} from '../../../../src/parts/compressor/identification/deviation/discrepancy.ts';
import {
  compressorWith,
  contributionsOf,
  type EvidencePoint,
  identifyMachine,
  modelDoubt,
} from '../../../../src/parts/compressor/index.ts';
import { about, described, fluid, householdRanges, kelvin, machineOf, pointAt, supply } from './descriptions.ts';
import { modelAt } from './prediction.ts';

const truth = machineOf(householdRanges);
const ownDoubt = 0.01;
const map = [-35, -25, -15].flatMap((evaporating) =>
  [35, 45, 55].map((condensing) => [evaporating, condensing] as const),
);

/** Values that no machine of the model meets: they wander about it. */
function points(): EvidencePoint[] {
  return map.map(([evaporating, condensing], index) => {
    const bare = pointAt(index, evaporating, condensing, {});
    const model = modelAt(truth, fluid, bare);
    const off = 1 + 0.02 * Math.sin(3 * index);
    return {
      ...bare,
      given: { massFlow: about(model.massFlow * off, ownDoubt), power: about(model.power / off, ownDoubt) },
    };
  });
}

const identified = identifyMachine(described({ points: points() }));
const places = [
  [-25, 45],
  [-20, 40],
  [-35, 55],
  [-5, 62],
  [10, 30],
].map(([evaporating, condensing]) => ({ evaporating: kelvin(evaporating!), condensing: kelvin(condensing!) }));
const kinds = ['flow', 'power'] as const;
const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);

describe.each(kinds)('%s', (kind) => {
  test.each(places)('adds up to the correction at $evaporating/$condensing K', (place) => {
    const doubt = modelDoubt(identified, identified.compressor, { ...place, fluid: fluid.name, supply });
    const parts = contributionsOf(identified, identified.compressor, kind, place);
    expect(parts.length).toBe(map.length);
    expect(
      Math.abs(Math.expm1(sum(parts.map(({ contribution }) => contribution))) - doubt[kind].correction),
    ).toBeLessThan(1e-12);
  });

  test('each weight is that of the textbook formula', () => {
    const given = map.map(([evaporating, condensing]) => ({
      evaporating: kelvin(evaporating),
      condensing: kelvin(condensing),
    }));
    const middle = middleOf(given)!;
    // σ of a value within ± 1 % passed one time in ten, with the last printed digit.
    const own = (Math.log(1 + ownDoubt) - Math.log(1 - ownDoubt)) / (2 * 1.6448536269514722);
    const covariance = given.map((a, row) =>
      given.map((b, column) => {
        const shared = deviationCovariance(kind, middle, a, b);
        return row === column ? shared + deviationAmounts[kind].rough ** 2 + own ** 2 + 1e-3 ** 2 : shared;
      }),
    );
    const inverse = inv(covariance);
    for (const place of places) {
      const near = given.map((point) => deviationCovariance(kind, middle, place, point));
      const expected = multiply(inverse, near) as number[];
      contributionsOf(identified, identified.compressor, kind, place).forEach(({ weight }, index) => {
        expect(Math.abs(weight - expected[index]!)).toBeLessThan(1e-6);
      });
    }
  });

  test('each miss is the logarithm of given over modelled of its residual', () => {
    const quantity = kind === 'flow' ? 'massFlow' : 'power';
    for (const { residual, miss } of contributionsOf(identified, identified.compressor, kind, places[0]!)) {
      const of = identified.residuals[residual]!;
      expect(of.quantity).toBe(quantity);
      expect(Math.abs(miss - Math.log(of.given / of.modelled))).toBeLessThan(1e-12);
    }
  });

  test('of a machine that its inputs moved, what it misses itself', () => {
    const influence = identified.influences.find(({ path }) => path.endsWith('.open.0'))!;
    const compressor = compressorWith(identified, { [influence.path]: influence.estimate.high });
    expect(compressor).not.toBe(identified.compressor);
    for (const place of places) {
      const doubt = modelDoubt(identified, compressor, { ...place, fluid: fluid.name, supply });
      const parts = contributionsOf(identified, compressor, kind, place);
      const likely = contributionsOf(identified, identified.compressor, kind, place);
      expect(parts.some(({ miss }, index) => Math.abs(miss - likely[index]!.miss) > 1e-5)).toBe(true);
      expect(
        Math.abs(Math.expm1(sum(parts.map(({ contribution }) => contribution))) - doubt[kind].correction),
      ).toBeLessThan(1e-11);
    }
  });
});

test('without values of a kind there is nothing to add up, and no correction', () => {
  const bare = identifyMachine(described({ points: [] }));
  for (const kind of kinds) expect(contributionsOf(bare, bare.compressor, kind, places[0]!)).toEqual([]);
});
