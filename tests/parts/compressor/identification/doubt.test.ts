// The doubt of the model: near the points it is what they leave, away from them it grows; another fluid, another frequency and no
// points widen it; the correction follows the machine it is asked for. Kriging is held against the textbook formula by mathjs.

import { inv, multiply } from 'mathjs';
import { describe, expect, test } from 'vitest';
import {
  deviationAmounts,
  deviationCovariance,
  middleOf,
} from '../../../../src/parts/compressor/identification/deviation/discrepancy.ts';
import { furtherDoubt } from '../../../../src/parts/compressor/identification/deviation/doubt.ts';
import {
  compressorWith,
  type EvidencePoint,
  identifyMachine,
  modelDoubt,
} from '../../../../src/parts/compressor/index.ts';
import { about, described, fluid, householdRanges, kelvin, machineOf, pointAt, supply } from './descriptions.ts';
import { modelAt } from './prediction.ts';

const endsAt = 1.6448536269514722;
const truth = machineOf(householdRanges);

/** The likely machine's own values, off by these factors. */
function points(places: readonly (readonly [number, number])[], flow = 1, power = 1): EvidencePoint[] {
  return places.map(([evaporating, condensing], index) => {
    const bare = pointAt(index, evaporating, condensing, {});
    const model = modelAt(truth, fluid, bare);
    return {
      ...bare,
      given: { massFlow: about(model.massFlow * flow, 0.01), power: about(model.power * power, 0.01) },
    };
  });
}

const map = [-35, -25, -15].flatMap((evaporating) =>
  [35, 45, 55].map((condensing) => [evaporating, condensing] as const),
);
const identified = identifyMachine(described({ points: points(map, 1.01, 0.99) }));

function at(evaporating: number, condensing: number, more: Partial<{ fluid: string; frequency: number }> = {}) {
  return {
    fluid: more.fluid ?? 'R600a',
    evaporating: kelvin(evaporating),
    condensing: kelvin(condensing),
    supply: { ...supply, frequency: more.frequency ?? 50 },
  };
}

function widths(evaporating: number, condensing: number, more = {}) {
  const { flow, power } = modelDoubt(identified, identified.compressor, at(evaporating, condensing, more));
  return [flow.halfWidth, power.halfWidth] as const;
}

describe('width', () => {
  test('grows with the distance from the points, in every direction', () => {
    for (const way of [
      [-25, -15, -5, 5, 15].map((evaporating) => widths(evaporating, 45)),
      [-35, -45, -55].map((evaporating) => widths(evaporating, 45)),
      [45, 60, 70, 80].map((condensing) => widths(-25, condensing)),
      [35, 20, 5].map((condensing) => widths(-35, condensing)),
    ]) {
      way.slice(1).forEach((each, index) => {
        each.forEach((width, kind) => {
          expect(width).toBeGreaterThan(way[index]![kind]!);
        });
      });
    }
  });

  test('among the points it is near what one value leaves, and below what is stated without points', () => {
    for (const [kind, width] of widths(-25, 45).entries()) {
      expect(width).toBeGreaterThan(0.005);
      expect(width).toBeLessThan(endsAt * furtherDoubt.noPoints[kind === 0 ? 'flow' : 'power']);
    }
  });

  test('another fluid and another frequency add their stated amounts as squares, and are named', () => {
    const own = widths(-25, 45);
    for (const [more, amounts, reason] of [
      [{ fluid: 'R290' }, furtherDoubt.otherFluid, 'otherFluid'],
      [{ frequency: 60 }, furtherDoubt.otherFrequency, 'otherFrequency'],
    ] as const) {
      const doubt = modelDoubt(identified, identified.compressor, at(-25, 45, more));
      expect(doubt.reasons).toEqual([reason]);
      const factor = 1 + doubt.flow.correction;
      expect(doubt.flow.halfWidth).toBeCloseTo(Math.hypot(own[0], factor * endsAt * amounts.flow), 12);
      expect(doubt.power.halfWidth).toBeGreaterThan(own[1]);
    }
  });

  test('without points: the stated amount, no correction, and the reason', () => {
    const bare = identifyMachine(described({}));
    const { flow, power, reasons } = modelDoubt(bare, bare.compressor, at(-10, 40));
    expect(reasons).toEqual(['noPoints']);
    expect(flow).toEqual({ correction: 0, halfWidth: endsAt * furtherDoubt.noPoints.flow });
    expect(power).toEqual({ correction: 0, halfWidth: endsAt * furtherDoubt.noPoints.power });
  });

  test('two values at one place that contradict each other: the range reaches both', () => {
    const [point] = points([[-25, 45]]);
    const likely = point!.given.massFlow!.likely;
    const both = [0.8, 1.2].map((factor, index) => ({
      ...point!,
      path: `machine.compressor.ratings.${index}`,
      given: { massFlow: about(likely * factor, 0.01) },
    }));
    const torn = identifyMachine(described({ points: both }));
    const { flow } = modelDoubt(torn, torn.compressor, at(-25, 45));
    const between = modelAt(torn.compressor, fluid, pointAt(0, -25, 45, {})).massFlow * (1 + flow.correction);
    const reach = (modelAt(torn.compressor, fluid, pointAt(0, -25, 45, {})).massFlow * flow.halfWidth) / likely;
    expect(between / likely).toBeGreaterThan(0.9);
    expect(between / likely).toBeLessThan(1.1);
    expect(reach).toBeGreaterThan(0.19);
    expect(reach).toBeLessThan(0.3);
  });

  test('points that scatter more than stated widen it', () => {
    const scattered = points(map).map((point, index) => {
      const factor = index % 2 === 0 ? 1.06 : 0.94;
      return { ...point, given: { massFlow: about(point.given.massFlow!.likely * factor, 0.01) } };
    });
    const rough = identifyMachine(described({ points: scattered }));
    const { flow } = modelDoubt(rough, rough.compressor, at(-25, 45));
    expect(flow.halfWidth).toBeGreaterThan(2 * widths(-25, 45)[0]);
  });
});

test('reasons name where it lies beyond the points', () => {
  const reasons = (evaporating: number, condensing: number) =>
    modelDoubt(identified, identified.compressor, at(evaporating, condensing)).reasons;
  expect(reasons(-20, 50)).toEqual([]);
  expect(reasons(5, 50)).toEqual(['beyondEvaporating']);
  expect(reasons(-20, 62)).toEqual(['beyondCondensing']);
  expect(reasons(5, 62)).toEqual(['beyondEvaporating', 'beyondCondensing']);
});

describe('correction', () => {
  test('reference: simple kriging, mean k Σ⁻¹ r and variance k(x,x) − k Σ⁻¹ k (Rasmussen & Williams 2006, 2.23 and 2.24)', () => {
    const given = points(map, 1.03, 1.03);
    const known = identifyMachine(described({ points: given }));
    const middle = middleOf(given)!;
    const { rough } = deviationAmounts.flow;
    const own = Math.log(1.01 / 0.99) / (2 * endsAt);
    const sigma = given.map((a, row) =>
      given.map((b, column) => {
        const scatter = row === column ? rough ** 2 + own ** 2 + 1e-6 : 0;
        return deviationCovariance('flow', middle, a, b) + scatter;
      }),
    );
    const misses = known.known.map(({ flow }) => flow!);
    for (const place of [at(-22, 48), at(0, 40)]) {
      const covariance = given.map((point) => deviationCovariance('flow', middle, place, point));
      const weights = multiply(inv(sigma), covariance) as number[];
      const mean = weights.reduce((sum, weight, index) => sum + weight * misses[index]!, 0);
      const told = weights.reduce((sum, weight, index) => sum + weight * covariance[index]!, 0);
      const variance = deviationCovariance('flow', middle, place, place) - told + rough ** 2;
      const { flow } = modelDoubt(known, known.compressor, place);
      expect(flow.correction).toBeCloseTo(Math.expm1(mean), 9);
      expect(flow.halfWidth).toBeCloseTo(Math.exp(mean) * endsAt * Math.sqrt(variance), 9);
    }
  });

  test('follows the machine it is asked for: among the points all ranges together move flow less with it than without', () => {
    const place = pointAt(0, -25, 45, {});
    const total = (path: string, value: number) => {
      const machine = compressorWith(identified, { [path]: value });
      const bare = modelAt(machine, fluid, place).massFlow;
      return { bare, corrected: bare * (1 + modelDoubt(identified, machine, at(-25, 45)).flow.correction) };
    };
    const moves = identified.influences.map(({ path, estimate }) => {
      const [low, high] = [total(path, estimate.low), total(path, estimate.high)];
      return { bare: Math.log(high.bare / low.bare), corrected: Math.log(high.corrected / low.corrected) };
    });
    const whole = (name: 'bare' | 'corrected') => Math.hypot(...moves.map((move) => move[name]));
    expect(whole('bare')).toBeGreaterThan(0.005);
    expect(whole('corrected')).toBeLessThan(0.8 * whole('bare'));
  });
});
