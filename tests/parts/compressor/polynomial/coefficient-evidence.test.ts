// Sets of ten coefficients as evidence: values inside the ranges only, sets combined, wrong units recognised and named.

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { refrigerant, refrigerantFormulas } from '../../../../src/matter/refrigerants/index.ts';
import { KettlefinError } from '../../../../src/numerics/index.ts';
import { compressorFormulas } from '../../../../src/parts/compressor/index.ts';
import { ImplausibleUnitError } from '../../../../src/parts/compressor/plausibility/unit-readings.ts';
import { coefficientAt } from '../../../../src/parts/compressor/polynomial/coefficient-at.ts';
import {
  type CoefficientEvidence,
  evidenceFromCoefficients,
} from '../../../../src/parts/compressor/polynomial/coefficient-evidence.ts';
import { type CoefficientSet, coefficientValue } from '../../../../src/parts/compressor/polynomial/coefficient-set.ts';
import {
  convertedCoefficients,
  requireTenCoefficients,
} from '../../../../src/parts/compressor/polynomial/ten-coefficients.ts';
import { coefficientScatter } from '../../../../src/parts/compressor/polynomial/tolerance.ts';
import { polynomialUnits, temperatureUnits } from '../../../../src/parts/compressor/polynomial/units.ts';
import { coefficientWorking } from '../../../../src/parts/compressor/polynomial/working.ts';
import type { Estimate } from '../../../../src/quantities/index.ts';
import { expectTraced } from '../../../traced-steps.ts';
import {
  condensingRange,
  displacement,
  evaporatingRange,
  fluid,
  frequency,
  kelvin,
  printedSet,
  truth,
  warmGas,
} from './invented-machine.ts';

const surroundings = kelvin(32.2);

function evidence(sets: readonly CoefficientSet[], size: Estimate | null = null): CoefficientEvidence {
  return evidenceFromCoefficients({ fluid, sets, surroundings, displacement: size });
}

/** What the units of a set were told as, wrongly. */
function misread(
  set: CoefficientSet,
  units: Partial<Pick<CoefficientSet, 'unit' | 'temperatureUnit'>>,
): CoefficientSet {
  return { ...set, ...units };
}

function refusal(work: () => unknown): ImplausibleUnitError {
  try {
    work();
  } catch (error) {
    if (error instanceof ImplausibleUnitError) return error;
    throw error;
  }
  throw new Error('nothing was refused');
}

describe('points', () => {
  const flow = printedSet('massFlow', 'lb/h', 'fahrenheit');
  const power = printedSet('power', 'W');
  const current = printedSet('current', 'A');

  test('flow, power and current of one machine stand together, in SI, inside the ranges', () => {
    const { points, series, doubts, coverage } = evidence([flow, power, current]);
    expect(points).toHaveLength(30);
    expect(series.map(({ path }) => path)).toEqual([flow.path]);
    expect(doubts).toEqual([]);
    expect(coverage[0]!.overallEfficiency!.low).toBeGreaterThan(0.3);
    for (const point of points) {
      const { evaporating, condensing, given } = point;
      expect(evaporating).toBeGreaterThanOrEqual(evaporatingRange.low);
      expect(evaporating).toBeLessThanOrEqual(evaporatingRange.high);
      expect(condensing).toBeGreaterThanOrEqual(condensingRange.low);
      expect(condensing).toBeLessThanOrEqual(condensingRange.high);
      expect([point.returnGas, point.liquid, point.series]).toEqual([kelvin(32.2), kelvin(32.2), flow.path]);
      const real = truth(evaporating, condensing);
      for (const of of ['massFlow', 'power', 'current'] as const) {
        expect(Math.abs(given[of]!.likely / real[of] - 1)).toBeLessThan(0.005);
        expect(given[of]!.high / given[of]!.likely - 1).toBeCloseTo(coefficientScatter, 12);
      }
      expect(given.capacity).toBeUndefined();
    }
  });

  test('a capacity alone is evidence of capacity; beside a flow it is the same measurement and counts once', () => {
    const capacity = printedSet('capacity', 'BTU/h', 'fahrenheit');
    const [point] = evidence([capacity, power]).points;
    expect(Object.keys(point!.given)).toEqual(['capacity', 'power']);
    expect(point!.liquid).toBe(kelvin(32.2));
    expect(Object.keys(evidence([capacity, flow, power]).points[0]!.given)).toEqual(['massFlow', 'power']);
  });

  test('sets of different ranges meet in their common part', () => {
    const narrow = { ...power, evaporatingRange: { low: kelvin(-25), high: kelvin(0) } };
    const { coverage, points } = evidence([flow, narrow]);
    expect(coverage[0]!.evaporatingRange).toEqual({ low: kelvin(-25), high: kelvin(-5) });
    expect(Math.min(...points.map(({ evaporating }) => evaporating))).toBe(kelvin(-25));
  });

  test('sets for another gas or other mains stay apart', () => {
    const other = { ...power, basis: { ...warmGas, gas: { kind: 'superheat', superheat: 11.1 } as const } };
    expect(evidence([flow, other]).series).toHaveLength(2);
    const american = { ...power, supply: { frequency: 60, voltage: 115 } };
    expect(evidence([flow, american]).points.map(({ supply }) => supply.frequency)).toContain(60);
  });

  test('a blend over mid-points: ranges stay mid-points, points are dew, and the set finds its own value again', () => {
    const blend = refrigerant('R407C');
    const basis = { ...warmGas, gas: { kind: 'superheat', superheat: 10 }, saturation: 'midPoint' } as const;
    const set = { ...power, basis };
    const request = { fluid: blend, sets: [set], surroundings, displacement: null };
    const { points, coverage } = evidenceFromCoefficients(request);
    expect(coverage[0]!.condensingRange).toEqual(condensingRange);
    for (const point of points) {
      const at = coefficientAt(blend, set, point);
      expect(at.own / point.given.power!.likely).toBeCloseTo(1, 7);
      expect(at.isOtherGas).toBe(false);
    }
    // The glide of R407C is 5 to 7 K; half of it lies between mid-point and dew.
    expect(points.at(-1)!.condensing - condensingRange.high).toBeGreaterThan(1);
    expect(points.at(-1)!.condensing - condensingRange.high).toBeLessThan(4);
  });

  test('points without lift are left out', () => {
    const low = { low: kelvin(-10), high: kelvin(30) };
    const { points } = evidence([
      { ...power, condensingRange: low, evaporatingRange: { low: kelvin(-35), high: kelvin(15) } },
    ]);
    expect(points.length).toBeGreaterThan(10);
    for (const { condensing, evaporating, liquid } of points) {
      expect(condensing - evaporating).toBeGreaterThanOrEqual(5);
      // No value depends on it: the stated 32.2 °C where it can be, saturated below.
      expect(liquid).toBeCloseTo(Math.min(kelvin(32.2), condensing), 9);
    }
    const capacity = { ...printedSet('capacity', 'W'), condensingRange: low };
    expect(() => evidence([capacity])).toThrow(expect.objectContaining({ code: 'liquidAboveCondensing' }));
  });
});

function withMilliamperes(set: CoefficientSet): CoefficientSet {
  const { coefficients } = set;
  return { ...set, coefficients: convertedCoefficients(coefficients, { scale: 1, shift: 0, factor: 1000 }) };
}

describe('refusals', () => {
  const flow = printedSet('massFlow', 'kg/h');
  const power = printedSet('power', 'W');

  test.each([
    [
      'missing frequency',
      [{ ...flow, supply: { frequency: null, voltage: 230 } }],
      'missingFrequency',
      'coefficients.massFlow.frequency',
    ],
    [
      'a capacity without liquid',
      [{ ...printedSet('capacity', 'W'), basis: { ...warmGas, liquid: null } }],
      'missingLiquid',
      'coefficients.capacity.basis',
    ],
    ['one quantity twice', [flow, { ...flow, path: 'coefficients.9' }], 'sameQuantityTwice', 'coefficients.9.of'],
    [
      'no common range',
      [flow, { ...power, condensingRange: { low: kelvin(61), high: kelvin(70) } }],
      'noCommonRange',
      'coefficients.massFlow.condensingRange',
    ],
    ['no set', [], 'noCoefficients', 'coefficients'],
    [
      'gas colder than the range evaporates',
      [{ ...flow, basis: { ...warmGas, gas: { kind: 'returnGas', returnGas: kelvin(-20) } as const } }],
      'returnGasBelowEvaporating',
      'coefficients.massFlow.basis.returnGas',
    ],
    ['a unit of another quantity', [{ ...flow, unit: 'W' as const }], 'badInput', 'coefficients.massFlow.unit'],
    [
      'more watts than volts times amperes',
      [
        power,
        { ...printedSet('current', 'A'), supply: { frequency: 50, voltage: 110 } },
        { ...power, path: 'x', supply: { frequency: 50, voltage: 110 } },
      ],
      'powerAboveVoltAmperes',
      'x.values',
    ],
    [
      'a current in mA',
      [power, withMilliamperes(printedSet('current', 'A'))],
      'currentFarAbovePower',
      'coefficients.current.values',
    ],
  ] as const)('%s', (_, sets, code, path) => {
    expect(() => evidence(sets)).toThrow(expect.objectContaining({ name: 'InputError', code, path }));
  });

  test('outside its ranges a set has no value', () => {
    expect(() => coefficientValue(flow, kelvin(-4), kelvin(45))).toThrow(
      expect.objectContaining({
        name: 'OutOfModelError',
        code: 'outsideItsData',
        value: kelvin(-4),
        low: kelvin(-35),
        high: kelvin(-5),
      }),
    );
    expect(() => coefficientValue(flow, kelvin(-10), kelvin(34))).toThrow(
      expect.objectContaining({ code: 'outsideItsData' }),
    );
    expect(coefficientValue(flow, kelvin(-5), kelvin(60))).toBeGreaterThan(0);
  });

  test('a range beyond the fluid is told by the fluid', () => {
    const hot = { ...flow, condensingRange: { low: kelvin(35), high: kelvin(120) } };
    expect(() => evidence([hot])).toThrow(expect.objectContaining({ name: 'OutOfModelError' }));
  });
});

describe('a wrong unit is recognised, and the one that makes sense is named', () => {
  const flow = printedSet('massFlow', 'lb/h', 'fahrenheit');
  const kilograms = printedSet('massFlow', 'kg/h');
  const power = printedSet('power', 'W');
  const capacity = printedSet('capacity', 'BTU/h', 'fahrenheit');
  const inWatts = printedSet('capacity', 'W');
  const known: Estimate = { low: 6e-6, likely: 6.5e-6, high: 7e-6, origin: 'typed' };

  test.each([
    ['lb/h told as kg/h', [misread(flow, { unit: 'kg/h' }), power], 'lb/h', 'fahrenheit'],
    ['lb/h told as g/s', [misread(flow, { unit: 'g/s' }), power], 'lb/h', 'fahrenheit'],
    ['kg/h told as kg/s', [misread(kilograms, { unit: 'kg/s' }), power], 'kg/h', 'celsius'],
    ['BTU/h told as W', [misread(capacity, { unit: 'W' }), power], 'BTU/h', 'fahrenheit'],
    ['W told as BTU/h', [misread(inWatts, { unit: 'BTU/h' }), power], 'W', 'celsius'],
    ['W told as kW', [misread(inWatts, { unit: 'kW' }), power], 'W', 'celsius'],
  ] as const)('%s', (_, sets, unit, temperatureUnit) => {
    const error = refusal(() => evidence(sets));
    expect(error.code).toBe('implausibleUnit');
    const named = error.readings.flatMap(({ changes }) => changes);
    expect(named).toContainEqual({ path: sets[0].path, unit, temperatureUnit });
    expect(error.expected).toContain(`${sets[0].path} in ${unit}`);
    for (const { overallEfficiency } of error.readings) {
      expect(overallEfficiency).toBeGreaterThanOrEqual(0.2);
      expect(overallEfficiency).toBeLessThanOrEqual(0.75);
    }
  });

  test('kg/h told as lb/h, an efficiency that is low but not impossible, is refused where the displacement is known', () => {
    const sets = [misread(kilograms, { unit: 'lb/h' }), power];
    const [doubt] = evidence(sets).doubts;
    expect(doubt).toMatchObject({ code: 'efficiencyUnusuallyLow' });
    expect(doubt!.readings[0]!.changes).toContainEqual({
      path: kilograms.path,
      unit: 'kg/h',
      temperatureUnit: 'celsius',
    });
    const small: Estimate = { low: 1.2e-5, likely: 1.3e-5, high: 1.4e-5, origin: 'typed' };
    expect(evidence([kilograms, power], small).points).toHaveLength(30);
    const error = refusal(() => evidence(sets, small));
    expect(error.received).toMatch(/volumetric efficiency/);
    expect(error.readings[0]!.changes).toContainEqual({
      path: kilograms.path,
      unit: 'kg/h',
      temperatureUnit: 'celsius',
    });
  });

  test.each([
    ['°F told as °C', misread(flow, { temperatureUnit: 'celsius' }), 'lb/h', 'fahrenheit'],
    ['°C told as °F', misread(kilograms, { temperatureUnit: 'fahrenheit' }), 'kg/h', 'celsius'],
    [
      'BTU/h over °F told as W over °C',
      misread(capacity, { unit: 'W', temperatureUnit: 'celsius' }),
      'BTU/h',
      'fahrenheit',
    ],
  ] as const)('%s', (_, set, unit, temperatureUnit) => {
    const { readings } = refusal(() => evidence([set, power]));
    expect(readings.flatMap(({ changes }) => changes)).toContainEqual({ path: set.path, unit, temperatureUnit });
    expect(refusal(() => evidence([set, power], known)).readings[0]!.changes).toEqual([
      { path: set.path, unit, temperatureUnit },
    ]);
  });

  test('flow against capacity', () => {
    const error = refusal(() => evidence([kilograms, misread(capacity, { unit: 'W' })]));
    expect(error.received).toMatch(/capacity 3\.41 times/);
    expect(error.readings[0]!.changes).toContainEqual({
      path: capacity.path,
      unit: 'BTU/h',
      temperatureUnit: 'fahrenheit',
    });
  });

  test('a flow too large for the displacement that is known', () => {
    const tiny: Estimate = { low: 1e-6, likely: 1.2e-6, high: 1.5e-6, origin: 'typed' };
    expect(refusal(() => evidence([kilograms], tiny)).received).toMatch(/volumetric efficiency/);
    expect(evidence([kilograms], known).points[0]!.given.massFlow!.likely).toBeLessThan(displacement * frequency * 10);
  });

  test('an efficiency above 1 in a corner alone says where', () => {
    const [c1, ...others] = power.coefficients;
    const low = { ...power, coefficients: requireTenCoefficients([c1 - 72, ...others]) };
    const error = refusal(() => evidence([kilograms, low]));
    expect(error.received).toMatch(/highest at 238\.15 K evaporating and 333\.15 K condensing/);
    expect(error.message).not.toMatch(/is not accepted/);
    expect(error.expected).toMatch(/narrow the ranges/);
  });

  test('signs mixed up: no unit would make sense, and the message says so', () => {
    const negative = requireTenCoefficients(power.coefficients.map((value) => -value));
    const error = refusal(() => evidence([kilograms, { ...power, coefficients: negative }]));
    expect(error.readings).toEqual([]);
    expect(error.expected).toMatch(/no other unit/);
    expect(error.received).toMatch(/^power of -\d+(\.\d+)? W at \d+\.15 K evaporating/);
  });
});

/** What the fluid's equation gives at the states. */
const ofTheEquation = [
  ...['R', 'phi_d', 'phi_t', 'phi_s', 'rho_c', 'h_zero', 's_zero'],
  ...['phi_liquid', 'phi_vapour', 'rho_liquid', 'rho_vapour'],
];

describe('the own value of a set at another gas', () => {
  const asked = { evaporating: kelvin(-20), condensing: kelvin(45), returnGas: kelvin(4.4), liquid: kelvin(32.2) };

  test('flow and power after Dabiri & Rice; the same gas leaves the value', () => {
    const flow = printedSet('massFlow', 'kg/h');
    const power = printedSet('power', 'W');
    const same = coefficientAt(fluid, flow, { ...asked, returnGas: kelvin(32.2) });
    expect(same.isOtherGas).toBe(false);
    expect(same.corrected! / same.own).toBeCloseTo(1, 12);
    const ratio = (set: CoefficientSet) => {
      const { own, corrected } = coefficientAt(fluid, set, asked);
      return corrected! / own;
    };
    expect(ratio(flow)).toBeGreaterThan(1.07);
    expect(ratio(flow)).toBeLessThan(1.09);
    expect(ratio(power)).toBeLessThan(1);
    expect(ratio(power)).toBeGreaterThan(0.95);
  });

  test('a capacity also goes with the liquid, in full', () => {
    const capacity = printedSet('capacity', 'W');
    const warm = coefficientAt(fluid, capacity, { ...asked, returnGas: kelvin(32.2), liquid: kelvin(45) });
    const effect = (liquid: number) =>
      truth(asked.evaporating, asked.condensing, { ...warmGas, liquid: { kind: 'liquid', liquid } }).capacity;
    expect(warm.corrected! / warm.own).toBeCloseTo(effect(kelvin(45)) / effect(kelvin(32.2)), 9);
  });

  test.each(['massFlow', 'power', 'capacity', 'current'] as const)('the working of a %s leads to it', (of) => {
    const set = printedSet(of, polynomialUnits[of][0]);
    const result = coefficientAt(fluid, set, asked);
    const steps = coefficientWorking(fluid, set, asked, result, 'at', 'polynomial');
    const isGiven = (origin: string) => ['at', `${set.path}.values`, `${set.path}.basis`].includes(origin);
    const values = expectTraced(steps, [...compressorFormulas, ...refrigerantFormulas], isGiven, [
      ...['F', 'a', 'b', 'k_unit'],
      ...ofTheEquation,
    ]);
    expect(values.get('polynomial.own')).toBe(result.own);
    expect(values.get('polynomial.corrected') ?? null).toBe(result.corrected);
  });

  test('no correction of a current is known: null', () => {
    expect(coefficientAt(fluid, printedSet('current', 'A'), asked).corrected).toBeNull();
  });
});

describe('property', () => {
  test('random sets give finite points or a typed error (seed 3)', () => {
    const finite = (size: number) => fc.double({ min: -size, max: size, noNaN: true });
    const temperature = fc.double({ min: 150, max: 420, noNaN: true });
    const range = fc.record({ low: temperature, high: temperature });
    const set = fc.constantFrom('massFlow', 'capacity', 'power', 'current' as const).chain((of) =>
      fc.record({
        path: fc.constant(`set.${of}`),
        label: fc.constant(of),
        of: fc.constant(of),
        coefficients: fc.oneof(
          fc
            .array(finite(1e5), { minLength: 10, maxLength: 10 })
            .map((values) => values as unknown as CoefficientSet['coefficients']),
          fc.constant(printedSet(of, polynomialUnits[of][0]).coefficients),
        ),
        temperatureUnit: fc.constantFrom(...temperatureUnits),
        unit: fc.constantFrom(...polynomialUnits[of]),
        basis: fc.record({
          gas: fc.oneof(
            fc.record({ kind: fc.constant('superheat' as const), superheat: finite(60) }),
            fc.record({ kind: fc.constant('returnGas' as const), returnGas: temperature }),
          ),
          liquid: fc.oneof(
            fc.constant(null),
            fc.record({ kind: fc.constant('subcooling' as const), subcooling: finite(60) }),
            fc.record({ kind: fc.constant('liquid' as const), liquid: temperature }),
          ),
          saturation: fc.constantFrom('dew' as const, 'midPoint' as const),
        }),
        evaporatingRange: fc.oneof(range, fc.constant(evaporatingRange)),
        condensingRange: fc.oneof(range, fc.constant(condensingRange)),
        supply: fc.record({ frequency: fc.constantFrom(null, 50, 60), voltage: fc.constantFrom(115, 230) }),
      }),
    );
    let answered = 0;
    fc.assert(
      fc.property(fc.array(set, { minLength: 1, maxLength: 3 }), (sets) => {
        try {
          for (const { given } of evidence(sets).points) {
            for (const { low, high } of Object.values(given))
              expect(Number.isFinite(low) && high >= low && low > 0).toBe(true);
          }
          answered += 1;
        } catch (error) {
          expect(error).toBeInstanceOf(KettlefinError);
        }
      }),
      { seed: 3, numRuns: 300 },
    );
    expect(answered).toBeGreaterThan(0);
  });
});
