// The influences against what they stand for: one input at a time to its ends, squares added, is the covariance of the most
// probable machine; and re-fits with every input drawn at random scatter as it says.

import { inv, multiply, transpose } from 'mathjs';
import { describe, expect, test } from 'vitest';
import { onScale, parameterScales } from '../../../../src/parts/compressor/identification/coordinates.ts';
import {
  deviationAmounts,
  deviationCovariance,
  deviationKind,
  middleOf,
} from '../../../../src/parts/compressor/identification/deviation/discrepancy.ts';
import {
  compressorWith,
  type EvidencePoint,
  type HermeticCompressor,
  hermeticParameters,
  type IdentifiedMachine,
  identifyMachine,
  type MachineDescription,
} from '../../../../src/parts/compressor/index.ts';
import { about, described, fluid, householdRanges, machineOf, pointAt, type Ranges } from './descriptions.ts';
import { modelAt } from './prediction.ts';
import { normal, randomFrom } from './random.ts';

const endsAt = 1.6448536269514722;

/** Ranges a tenth as wide as those of a class: in them the model is as good as straight. */
const narrow: Ranges = Object.fromEntries(
  hermeticParameters.map((name) => {
    const [low, likely, high] = householdRanges[name];
    return [name, [likely * (low / likely) ** 0.1, likely, likely * (high / likely) ** 0.1]];
  }),
) as unknown as Ranges;

const truth = machineOf(householdRanges);

function pointsOf(places: readonly (readonly [number, number])[], share: number, series?: string): EvidencePoint[] {
  return places.map(([evaporating, condensing], index) => {
    const bare = pointAt(index, evaporating, condensing, {});
    const { massFlow, power } = modelAt(truth, fluid, bare);
    const given = { massFlow: about(massFlow, share), power: about(power, share) };
    return { ...bare, given, ...(series === undefined ? {} : { series }) };
  });
}

const series = [{ path: 'table', label: 'table', flowFactor: about(1, 0.01), powerFactor: about(1, 0.015) }];

/** Numbers on their scales, in σ of their ranges. */
function scaled(compressor: HermeticCompressor, ranges: Ranges): number[] {
  return hermeticParameters.map((name) => {
    const on = (value: number) => onScale(parameterScales[name], value, name);
    const [low, likely, high] = ranges[name];
    return ((on(compressor[name]) - on(likely)) * 2 * endsAt) / (on(high) - on(low));
  });
}

/** Σ of half the distance between the ends of each input, squared: covariance in σ of the ranges. */
function fromInfluences(identified: IdentifiedMachine, ranges: Ranges): number[][] {
  const covariance = hermeticParameters.map(() => hermeticParameters.map(() => 0));
  for (const { path, estimate } of identified.influences) {
    const at = (value: number) => scaled(compressorWith(identified, { [path]: value }), ranges);
    const [low, high] = [at(estimate.low), at(estimate.high)];
    const half = high.map((value, index) => (value - low[index]!) / 2 / endsAt);
    half.forEach((a, row) => {
      half.forEach((b, column) => {
        covariance[row]![column]! += a * b;
      });
    });
  }
  return covariance;
}

/** (1 + Jᵀ Σ⁻¹ J)⁻¹ by mathjs, with J from central differences and Σ written out. */
function fromTheory(description: MachineDescription, identified: IdentifiedMachine, ranges: Ranges): number[][] {
  const { points } = description;
  const middle = middleOf(points)!;
  const data = points.flatMap((point) =>
    (['massFlow', 'power'] as const).map((quantity) => ({ point, quantity, kind: deviationKind(quantity)! })),
  );
  const values = (compressor: HermeticCompressor) =>
    data.map(({ point, quantity }) => Math.log(modelAt(compressor, fluid, point)[quantity]));
  const jacobian = hermeticParameters.map((name) => {
    const scale = parameterScales[name];
    const [low, , high] = ranges[name];
    const spread = (onScale(scale, high, name) - onScale(scale, low, name)) / (2 * endsAt);
    const moved = (by: number) => {
      const value = identified.compressor[name];
      if (scale.kind === 'logarithm') return value * Math.exp(by * spread);
      if (scale.kind === 'linear') return value + by * spread;
      const ratio = (value / (scale.top - value)) * Math.exp(by * spread);
      return (scale.top * ratio) / (1 + ratio);
    };
    const step = 1e-3 / spread;
    const up = values({ ...identified.compressor, [name]: moved(step) });
    const down = values({ ...identified.compressor, [name]: moved(-step) });
    return up.map((value, index) => (value - down[index]!) / (2 * step));
  });
  const sigma = data.map((a, row) =>
    data.map((b, column) => {
      let value = a.kind === b.kind ? deviationCovariance(a.kind, middle, a.point, b.point) : 0;
      if (a.point.series !== undefined && a.kind === b.kind) {
        const { flowFactor, powerFactor } = description.series[0]!;
        const { low, high } = a.kind === 'flow' ? flowFactor : powerFactor;
        value += (Math.log(high / low) / (2 * endsAt)) ** 2;
      }
      if (row === column) {
        const { low, high } = a.point.given[a.quantity]!;
        value += deviationAmounts[a.kind].rough ** 2 + (Math.log(high / low) / (2 * endsAt)) ** 2;
      }
      return value;
    }),
  );
  const information = multiply(multiply(jacobian, inv(sigma)), transpose(jacobian)) as number[][];
  return inv(information.map((row, a) => row.map((value, b) => value + (a === b ? 1 : 0))));
}

const rating: [number, number][] = [[-23.3, 54.4]];
const map: [number, number][] = [-35, -25, -15].flatMap((evaporating) =>
  [35, 45, 55].map((condensing): [number, number] => [evaporating, condensing]),
);

describe('one input at a time, squares added, is the covariance', () => {
  test.each([
    ['single points', described({ ranges: narrow, points: pointsOf(rating, 0.01) })],
    ['a series', described({ ranges: narrow, points: pointsOf(map, 0.01, 'table'), series })],
  ] as const)('%s', (_, description) => {
    const identified = identifyMachine(description);
    const ours = fromInfluences(identified, narrow);
    const theirs = fromTheory(description, identified, narrow);
    theirs.forEach((row, a) => {
      row.forEach((value, b) => {
        // 2 % of the scatter may be gathered in the last direction; the rest is how bent the model is.
        const scale = Math.sqrt(theirs[a]![a]! * theirs[b]![b]!);
        expect(Math.abs(ours[a]![b]! - value), `${hermeticParameters[a]}, ${hermeticParameters[b]}`).toBeLessThan(
          0.03 * scale,
        );
      });
    });
  });
});

describe('re-fits with every input drawn', () => {
  test('scatter as the influences say (400 re-fits, seed 44000)', () => {
    const random = randomFrom(44000);
    const points = pointsOf(rating, 0.03);
    const description = described({ ranges: narrow, points });
    const identified = identifyMachine(description);
    const drawn = (likely: number, low: number, high: number) =>
      likely * Math.exp((normal(random) * Math.log(high / low)) / (2 * endsAt));
    const { rough } = deviationAmounts.flow;
    const model = { flow: 0, power: 0 };
    const refits: number[][] = [];
    for (let count = 0; count < 400; count++) {
      model.flow = Math.exp(normal(random) * Math.hypot(deviationAmounts.flow.smooth, rough));
      model.power = Math.exp(normal(random) * Math.hypot(deviationAmounts.power.smooth, deviationAmounts.power.rough));
      const prior = Object.fromEntries(
        Object.entries(description.prior).map(([name, range]) => {
          const { low, likely, high } = range.estimate;
          // The range moves as a whole: the drawn value is what the sheet or class would have said.
          const factor = drawn(likely, low, high) / likely;
          const top = { motorEfficiency: 0.99, powerFactor: 0.99 }[name] ?? Number.POSITIVE_INFINITY;
          const moved = { low: low * factor, likely: likely * factor, high: Math.min(high * factor, top) };
          return [name, { ...range, estimate: { ...range.estimate, ...moved } }];
        }),
      ) as MachineDescription['prior'];
      const given = points.map((point) => ({
        ...point,
        given: {
          massFlow: about(drawn(point.given.massFlow!.likely, 0.97, 1.03) * model.flow, 0.03),
          power: about(drawn(point.given.power!.likely, 0.97, 1.03) * model.power, 0.03),
        },
      }));
      refits.push(scaled(identifyMachine({ ...description, prior, points: given }).compressor, narrow));
    }
    const expected = fromInfluences(identified, narrow);
    hermeticParameters.forEach((name, index) => {
      const values = refits.map((each) => each[index]!);
      const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
      const variance = values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (values.length - 1);
      // The spread of a variance of 400 is 7 %; four of them, and what the scales bend.
      expect(Math.abs(variance / expected[index]![index]! - 1), name).toBeLessThan(0.3);
    });
  });
});
