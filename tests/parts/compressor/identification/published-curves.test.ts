// The identification against published curves of nine machines, each told in four ways by its colder half: the rest of the curve is
// looked for in the bands. The amounts of the model's deviation were set on other machines of the same data set; the ranges of
// clearance on the whole of it. A band passed one time in ten holds nine of ten; places of one curve are far from independent, so
// that eight of ten is asked of eight curves. What a sheet may be off its machine (5 %) is part of the band and not of the truth here.

import { describe, expect, test } from 'vitest';
import {
  counted,
  curves,
  distances,
  type Found,
  foundAlong,
  foundBy,
  identifiedBy,
  otherFluid,
  otherFrequency,
  placesOf,
  publishedAt,
  source,
  type Way,
  wayNames,
  ways,
} from '../../../reference/parts/curves.ts';

const percent = (share: number) => `${(100 * share).toFixed(1)} %`;

function told(name: string, found: readonly Found[]): string {
  const { count, held, bias, rootMeanSquare, halfWidth } = counted(found);
  return `${name}: ${percent(held)} of ${count} held, bias ${percent(bias)}, rms ${percent(rootMeanSquare)}, ± ${percent(halfWidth)}`;
}

test('the curves are those of machines: more capacity from warmer evaporation, less into hotter condensation', () => {
  for (const curve of curves) {
    const at = (evaporating: number, condensing: number) => publishedAt(curve, [evaporating, condensing]);
    const [cold, warm] = curve.evaporatingRangeCelsius.map((end) => Math.min(end, curve.returnGasCelsius));
    expect(at(warm! - 2, 41).massFlow).toBeGreaterThan(at(cold! + 2, 41).massFlow);
    expect(at(cold! + 5, 34).massFlow).toBeGreaterThan(at(cold! + 5, 48.9).massFlow);
  }
});

/** Largest bias and root mean square within 13 K of the given points, relative: what such a model is good for. */
const usual: Readonly<Record<Way, { readonly bias: number; readonly rootMeanSquare: number }>> = {
  'one rating': { bias: 0.08, rootMeanSquare: 0.13 },
  'three ratings at one condensing temperature': { bias: 0.03, rootMeanSquare: 0.06 },
  'a table of 15 points': { bias: 0.02, rootMeanSquare: 0.05 },
  'ten coefficients each': { bias: 0.02, rootMeanSquare: 0.05 },
};

describe(`reference: ${source}`, () => {
  test.each(wayNames)('%s', (way) => {
    const found = foundBy(way);
    for (const kind of ['flow', 'power'] as const) {
      for (const distance of distances) {
        const here = found[kind].filter((each) => each.distance === distance);
        if (here.length > 0) console.log(told(`${way}, ${kind}, ${distance}`, here));
      }
      const { held } = counted(found[kind]);
      expect(held, kind).toBeGreaterThan(0.85);
      const among = found[kind].filter(({ distance }) => distance === 'among');
      if (among.length > 0) {
        expect(counted(among).rootMeanSquare, kind).toBeLessThan(0.02);
        expect(counted(among).halfWidth, kind).toBeLessThan(0.065);
      }
      const near = counted(found[kind].filter(({ distance }) => distance === 'near'));
      expect(near.held, kind).toBeGreaterThan(0.8);
      expect(Math.abs(near.bias), kind).toBeLessThan(usual[way].bias);
      expect(near.rootMeanSquare, kind).toBeLessThan(usual[way].rootMeanSquare);
      const far = counted(found[kind].filter(({ distance }) => distance === 'far'));
      expect(far.held, kind).toBeGreaterThan(far.count < 20 ? 0.65 : 0.75);
      // Wider than nearby, and not so wide that it would say nothing.
      expect(far.halfWidth, kind).toBeGreaterThan(near.halfWidth);
      expect(far.halfWidth, kind).toBeLessThan(0.3);
    }
    expect(found.unanswered).toBeLessThan(5);
  });

  test.each([
    ['another fluid', otherFluid],
    ['another mains frequency', otherFrequency],
  ] as const)('the same machine on %s', (name, { from, to }) => {
    for (const way of ['three ratings at one condensing temperature', 'a table of 15 points'] as const) {
      const found = foundAlong(identifiedBy(from, way), ways[way](from).given, to, placesOf(to));
      const answered = found.filter((each) => each !== null);
      for (const kind of ['flow', 'power'] as const) {
        const values = answered.map((each) => each[kind]);
        console.log(told(`${name}, ${way}, ${kind}`, values));
        // One machine each: its curves are off each other as a whole.
        expect(counted(values).held, `${way}, ${kind}`).toBeGreaterThan(0.6);
        expect(Math.abs(counted(values).bias), `${way}, ${kind}`).toBeLessThan(0.12);
      }
    }
  });
});
