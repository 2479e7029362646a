// Whatever is described: a machine with finite numbers and ranges, or a typed refusal. Never NaN, never a hang.

import fc from 'fast-check';
import { expect, test } from 'vitest';
import { refrigerant, tabulated } from '../../../../src/matter/refrigerants/index.ts';
import { KettlefinError } from '../../../../src/numerics/index.ts';
import {
  compressorWith,
  type EvidencePoint,
  type HermeticParameter,
  hermeticParameters,
  identifyMachine,
  type MachineDescription,
  modelDoubt,
} from '../../../../src/parts/compressor/index.ts';
import type { Estimate } from '../../../../src/quantities/index.ts';
import { described, householdRanges, kelvin } from './descriptions.ts';

const share = fc.double({ min: 0, max: 1, noNaN: true });

/** From far below to far above what is usual, from exact to very wide; now and then nonsense. */
function anyEstimate(from: number, to: number): fc.Arbitrary<Estimate> {
  const sensible = fc.tuple(share, fc.double({ min: 0, max: 1.2, noNaN: true })).map(([at, width]): Estimate => {
    const likely = from * (to / from) ** at;
    return { low: likely * Math.exp(-width), likely, high: likely * Math.exp(width), origin: 'typed' };
  });
  const exact = share.map((at): Estimate => {
    const likely = from * (to / from) ** at;
    return { low: likely, likely, high: likely, origin: 'typed' };
  });
  const nonsense = fc
    .constantFrom(0, -1, 1e9, Number.NaN, Number.POSITIVE_INFINITY)
    .map((value): Estimate => ({ low: value, likely: value, high: value, origin: 'typed' }));
  return fc.oneof(
    { weight: 30, arbitrary: sensible },
    { weight: 10, arbitrary: exact },
    { weight: 1, arbitrary: nonsense },
  );
}

const anyGiven = fc.record(
  {
    massFlow: anyEstimate(1e-4, 5e-3),
    capacity: anyEstimate(30, 1500),
    power: anyEstimate(30, 900),
    current: anyEstimate(0.2, 8),
    dischargeTemperature: anyEstimate(310, 420),
  },
  { requiredKeys: [] },
);

function celsius(min: number, max: number) {
  return fc.oneof(
    { weight: 20, arbitrary: fc.double({ min, max, noNaN: true }) },
    { weight: 1, arbitrary: fc.double({ min: -300, max: 400, noNaN: true }) },
  );
}

const anyPoint = fc.record({
  evaporating: celsius(-40, 15),
  lift: celsius(10, 80),
  superheat: celsius(0, 60),
  subcooling: celsius(0, 20),
  given: anyGiven,
  inSeries: fc.boolean(),
});

const anyDescription = fc
  .record({
    name: fc.constantFrom('R134a', 'R600a', 'R290', 'R404A'),
    typed: fc.dictionary(fc.constantFrom(...hermeticParameters), anyEstimate(0.3, 3), { maxKeys: 4 }),
    points: fc.array(anyPoint, { maxLength: 4 }),
    frequency: fc.constantFrom(50, 60),
  })
  .map(({ name, typed, points, frequency }): MachineDescription => {
    const supply = { frequency, voltage: 230 };
    const bare = described({ fluid: tabulated(refrigerant(name)), ratedSupply: supply });
    const prior = Object.fromEntries(
      hermeticParameters.map((parameter) => [parameter, typedRange(bare, parameter, typed[parameter])]),
    ) as MachineDescription['prior'];
    const series = 'machine.compressor.tables.0';
    const factor: Estimate = { low: 0.97, likely: 1, high: 1.03, origin: 'assumed' };
    return {
      ...bare,
      prior,
      series: [{ path: series, label: 'table', flowFactor: factor, powerFactor: factor }],
      points: points.map(({ evaporating, lift, superheat, subcooling, given, inSeries }, index): EvidencePoint => {
        const condensing = evaporating + lift;
        return {
          path: `machine.compressor.points.${index}`,
          label: `point ${index + 1}`,
          evaporating: kelvin(evaporating),
          condensing: kelvin(condensing),
          returnGas: kelvin(evaporating + superheat),
          liquid: kelvin(condensing - subcooling),
          surroundings: kelvin(25),
          supply,
          given: withoutAbsent(given),
          ...(inSeries ? { series } : {}),
        };
      }),
    };
  });

function withoutAbsent(given: EvidencePoint['given']): EvidencePoint['given'] {
  return Object.fromEntries(Object.entries(given).filter(([, value]) => value !== undefined));
}

/** A typed range is a multiple of the usual one. */
function typedRange({ prior }: MachineDescription, parameter: HermeticParameter, factor: Estimate | undefined) {
  const usual = prior[parameter];
  if (factor === undefined) return usual;
  const [, likely] = householdRanges[parameter];
  const times = (end: number) => likely * end;
  const { low, likely: middle, high } = factor;
  return { ...usual, estimate: { ...factor, low: times(low), likely: times(middle), high: times(high) } };
}

test('a machine with finite numbers and ranges, or a typed refusal (100 descriptions, seed 45000)', () => {
  const told = new Map<string, number>();
  let slowest = 0;
  fc.assert(
    fc.property(anyDescription, (description) => {
      const start = performance.now();
      let outcome = 'answered';
      try {
        requireFiniteAnswer(description);
      } catch (error) {
        if (!(error instanceof KettlefinError)) throw error;
        expect(error.message.length).toBeGreaterThan(10);
        expect(JSON.stringify(error.facts())).toBeDefined();
        outcome = error.code;
      }
      told.set(outcome, (told.get(outcome) ?? 0) + 1);
      slowest = Math.max(slowest, performance.now() - start);
    }),
    { seed: 45000, numRuns: 100 },
  );
  console.log('random descriptions:', Object.fromEntries(told), `slowest ${slowest.toFixed(0)} ms`);
  expect(told.get('answered') ?? 0).toBeGreaterThan(30);
  expect(told.get('notConverged') ?? 0).toBeLessThan(4);
  // No hang; a machine under load may be slow.
  expect(slowest).toBeLessThan(30_000);
});

function requireFiniteAnswer(description: MachineDescription): void {
  const identified = identifyMachine(description);
  const numbers = (compressor: typeof identified.compressor) => hermeticParameters.map((name) => compressor[name]);
  for (const value of numbers(identified.compressor)) expect(value).toSatisfy(Number.isFinite);
  for (const { path, estimate } of identified.influences) {
    for (const end of [estimate.low, estimate.high]) {
      for (const value of numbers(compressorWith(identified, { [path]: end })))
        expect(value).toSatisfy(Number.isFinite);
    }
  }
  for (const { modelled, deviation, score } of identified.residuals) {
    for (const value of [modelled, deviation, score]) expect(value).toSatisfy(Number.isFinite);
  }
  for (const condensing of [300, 330]) {
    const at = { fluid: description.fluid.name, evaporating: 265, condensing, supply: description.ratedSupply };
    const { flow, power } = modelDoubt(identified, identified.compressor, at);
    for (const { correction, halfWidth } of [flow, power]) {
      expect(correction).toSatisfy(Number.isFinite);
      expect(halfWidth).toSatisfy(Number.isFinite);
      expect(halfWidth).toBeGreaterThan(0);
    }
  }
}
