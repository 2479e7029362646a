// The identification's laws and refusals: without points the likely machine of the ranges; with points one that meets them within
// their doubt; known numbers found again; what cannot be is refused with what could; what contradicts is pointed at.

import { describe, expect, test } from 'vitest';
import { saturationAtDewTemperature, stateInLoop } from '../../../../src/matter/refrigerants/index.ts';
import { InputError, type KettlefinError, NoSolutionError, OutOfModelError } from '../../../../src/numerics/index.ts';
import {
  compressorWith,
  type EvidencePoint,
  hermeticParameters,
  identifyMachine,
  type MachineDescription,
} from '../../../../src/parts/compressor/index.ts';
import { about, described, fluid, householdRanges, kelvin, machineOf, pointAt } from './descriptions.ts';
import { modelAt } from './prediction.ts';

const truth = machineOf(householdRanges);
const places = [-35, -25, -15].flatMap((evaporating) =>
  [35, 45, 55].map((condensing) => [evaporating, condensing] as const),
);

function measured(scale: { readonly flow: number; readonly power: number }): EvidencePoint[] {
  return places.map(([evaporating, condensing], index) => {
    const bare = pointAt(index, evaporating, condensing, {});
    const { massFlow, power } = modelAt(truth, fluid, bare);
    return {
      ...bare,
      given: { massFlow: about(massFlow * scale.flow, 0.02), power: about(power * scale.power, 0.02) },
    };
  });
}

function refused(description: MachineDescription): KettlefinError {
  try {
    identifyMachine(description);
  } catch (error) {
    return error as KettlefinError;
  }
  throw new Error('was not refused');
}

describe('likely machine', () => {
  test('without points it is that of the ranges, and each range alone moves it to its ends', () => {
    const description = described({});
    const identified = identifyMachine(description);
    for (const name of hermeticParameters) {
      const [low, likely, high] = householdRanges[name];
      expect(identified.compressor[name] / likely).toBeCloseTo(1, 6);
      const { path } = description.prior[name];
      expect(compressorWith(identified, { [path]: low })[name] / low).toBeCloseTo(1, 6);
      expect(compressorWith(identified, { [path]: high })[name] / high).toBeCloseTo(1, 6);
    }
    expect(identified.residuals).toEqual([]);
    expect(identified.kriged).toEqual({ flow: null, power: null });
  });

  test('points of the likely machine itself leave it where it is', () => {
    const { compressor, residuals } = identifyMachine(described({ points: measured({ flow: 1, power: 1 }) }));
    for (const name of hermeticParameters) expect(compressor[name] / truth[name]).toBeCloseTo(1, 3);
    for (const { deviation, disagrees } of residuals) {
      expect(Math.abs(deviation)).toBeLessThan(1e-4);
      expect(disagrees).toBe(false);
    }
  });

  test('a rating is met within its doubt, and what it does not tell stays as the ranges have it', () => {
    const points = [pointAt(0, -23.3, 54.4, { capacity: about(250, 0.03), power: about(190, 0.03) })];
    const identified = identifyMachine(described({ points }));
    const { massFlow, power } = modelAt(identified.compressor, fluid, points[0]!);
    const suction = stateInLoop(fluid, {
      pressure: saturationAtDewTemperature(fluid, kelvin(-23.3)).vapour.pressure,
      temperature: kelvin(32.2),
    });
    const liquid = saturationAtDewTemperature(fluid, kelvin(32.2)).liquid;
    expect(Math.abs((massFlow * (suction.enthalpy - liquid.enthalpy)) / 250 - 1)).toBeLessThan(0.03);
    expect(Math.abs(power / 190 - 1)).toBeLessThan(0.03);
    const [, likely] = householdRanges.powerFactor;
    expect(identified.compressor.powerFactor).toBeCloseTo(likely, 9);
  });

  test('a displacement known exactly stays what it is', () => {
    const ranges = { displacement: [9e-6, 9e-6, 9e-6] as const };
    const identified = identifyMachine(described({ ranges, points: measured({ flow: 0.9, power: 1 }) }));
    expect(identified.compressor.displacement).toBe(9e-6);
    expect(identified.influences.map(({ path }) => path)).not.toContain('machine.compressor.displacement');
  });
});

describe('refused with what would be possible', () => {
  const small = { displacement: [5e-6, 5e-6, 5e-6] as const };

  test('more capacity than the displacement can pump: the largest is named', () => {
    const points = [pointAt(0, -23.3, 54.4, { capacity: about(400, 0.02) })];
    const error = refused(described({ ranges: small, points }));
    expect(error).toBeInstanceOf(NoSolutionError);
    expect(error.code).toBe('moreThanSwept');
    expect(error.message).toContain('machine.compressor.ratings.0.capacity');
    // 5 cm³ · 50 Hz · ρ · (h_1 − h_l), all strokes filled.
    const named = Number(/at most ([\d.]+) W/.exec((error as NoSolutionError).limit)![1]);
    const { pressure } = saturationAtDewTemperature(fluid, kelvin(-23.3)).vapour;
    const gas = stateInLoop(fluid, { pressure, temperature: kelvin(32.2) });
    const effect = gas.enthalpy - saturationAtDewTemperature(fluid, kelvin(32.2)).liquid.enthalpy;
    expect(named / (5e-6 * 50 * gas.density * effect)).toBeCloseTo(1, 2);
    const possible = [pointAt(0, -23.3, 54.4, { capacity: about(0.7 * named, 0.02) })];
    expect(() => identifyMachine(described({ ranges: small, points: possible }))).not.toThrow();
  });

  test('less power than isentropic compression: the least is named', () => {
    const points = [pointAt(0, -23.3, 54.4, { capacity: about(200, 0.02), power: about(40, 0.02) })];
    const error = refused(described({ points }));
    expect(error.code).toBe('belowIsentropic');
    expect((error as NoSolutionError).limit).toMatch(/at least [\d.]+ W/);
  });

  const given = { capacity: about(200, 0.05) };
  test.each([
    ['condensing above the critical point', pointAt(0, -20, 140, given), OutOfModelError, 'outsideFluid', 'condensing'],
    ['evaporating below the triple point', pointAt(0, -200, 40, given), OutOfModelError, 'outsideFluid', 'evaporating'],
    ['no lift', pointAt(0, 40, 40, given), InputError, 'noLift', 'evaporating'],
    [
      'return gas colder than dew',
      pointAt(0, -20, 45, given, { returnGas: kelvin(-25) }),
      InputError,
      'returnGasBelowDew',
      'returnGas',
    ],
    [
      'liquid hotter than condensing',
      pointAt(0, -20, 45, given, { liquid: kelvin(50) }),
      InputError,
      'liquidAboveBubble',
      'liquid',
    ],
    [
      'liquid colder than evaporating',
      pointAt(0, -20, 45, given, { liquid: kelvin(-30) }),
      InputError,
      'liquidBelowEvaporating',
      'liquid',
    ],
    ['a capacity of nothing', pointAt(0, -20, 45, { capacity: about(0, 0) }), InputError, 'badInput', 'capacity'],
    ['an unknown series', pointAt(0, -20, 45, given, { series: 'none' }), InputError, 'badInput', 'series'],
  ])('%s', (_, point, kind, code, name) => {
    const error = refused(described({ points: [point] }));
    expect(error).toBeInstanceOf(kind);
    expect(error.code).toBe(code);
    expect(error.message).toContain(`machine.compressor.ratings.0.${name}`);
  });

  test('a range that is none of its number, at its path', () => {
    for (const [name, range] of [
      ['motorEfficiency', [0.6, 0.8, 1.2]],
      ['clearanceRatio', [0, 0.02, 0.05]],
      ['displacement', [2e-5, 1e-5, 3e-5]],
    ] as const) {
      const error = refused(described({ ranges: { [name]: range } }));
      expect(error).toBeInstanceOf(InputError);
      expect((error as InputError).path).toBe(`machine.compressor.${name}`);
    }
  });
});

describe('contradictions are pointed at', () => {
  test('one wrong value among nine points, and only that', () => {
    const points = measured({ flow: 1, power: 1 });
    const wrong = points.map((point, index) =>
      index === 4
        ? { ...point, given: { ...point.given, power: about(point.given.power!.likely * 1.3, 0.02) } }
        : point,
    );
    const { residuals } = identifyMachine(described({ points: wrong }));
    const pointed = residuals.filter(({ disagrees }) => disagrees);
    expect(pointed.map(({ path }) => path)).toEqual(['machine.compressor.ratings.4.power']);
    expect(pointed[0]!.score).toBeGreaterThan(3);
  });

  test('a typed displacement and a rating that need each other to be wrong', () => {
    const ranges = { displacement: [11.9e-6, 12e-6, 12.1e-6], clearanceRatio: [0.02, 0.022, 0.024] } as const;
    const rating = (capacity: number) => [pointAt(0, -23.3, 54.4, { capacity: about(capacity, 0.02) })];
    const likely = identifyMachine(described({ ranges, points: rating(200) })).residuals[0]!;
    const doubtful = identifyMachine(described({ ranges, points: rating(90) })).residuals[0]!;
    expect(likely.disagrees).toBe(false);
    expect(doubtful.disagrees).toBe(true);
  });

  test('in kelvins for a discharge temperature', () => {
    const point = pointAt(0, -23.3, 54.4, {
      dischargeTemperature: { low: 518, likely: 520, high: 522, origin: 'measured' },
    });
    const { residuals } = identifyMachine(described({ points: [point] }));
    expect(residuals[0]!.deviation).toBeCloseTo(residuals[0]!.modelled - 520, 9);
    expect(residuals[0]!.disagrees).toBe(true);
  });
});
