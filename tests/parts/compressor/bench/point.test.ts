// Points measured at home: what becomes evidence, how doubtful, and what is refused. Worked values by hand or by CoolProp 8.0.0.

import { describe, expect, test } from 'vitest';
import { InputError } from '../../../../src/numerics/index.ts';
import {
  type BenchMeasurement,
  benchPoint,
  clampError,
  clampSensitivities,
  dischargeLag,
  identifyMachine,
} from '../../../../src/parts/compressor/index.ts';
import type { Estimate } from '../../../../src/quantities/index.ts';
import { described, fluid, householdRanges, kelvin } from '../identification/descriptions.ts';

function reading(value: number, half = 0): Estimate {
  return { low: value - half, likely: value, high: value + half, origin: 'measured' };
}

const base: BenchMeasurement = {
  path: 'machine.compressor.bench.0',
  label: 'measured',
  evaporating: reading(kelvin(-20)),
  condensing: reading(kelvin(40)),
  suction: reading(kelvin(15)),
  discharge: reading(kelvin(75)),
  liquid: reading(kelvin(33)),
  surroundings: reading(kelvin(21)),
  meter: { kind: 'watts', power: reading(110, 2) },
  supply: { frequency: 50, voltage: 230 },
};

describe('how a point moves with its levels', () => {
  test('reference: R600a, −20/40 °C, 15 °C gas (CoolProp 8.0.0, central differences over 1 K)', () => {
    const { power, dischargeTemperature } = clampSensitivities(fluid, kelvin(-20), kelvin(40), kelvin(15));
    expect(power.evaporating).toBeCloseTo(0.01903, 3);
    expect(power.condensing).toBeCloseTo(0.01372, 3);
    expect(dischargeTemperature.evaporating).toBeCloseTo(-1.0907, 2);
    expect(dischargeTemperature.condensing).toBeCloseTo(0.8062, 2);
  });
});

describe('a watt meter and clamps', () => {
  test('power is as doubtful as the meter and the clamps together; the gas is hotter than the pipe', () => {
    const point = benchPoint(fluid, base);
    const { power, dischargeTemperature, current } = point.given;
    const moves = clampSensitivities(fluid, kelvin(-20), kelvin(40), kelvin(15)).power;
    const clamps = clampError * Math.hypot(moves.evaporating, moves.condensing);
    expect(power!.likely).toBe(110);
    expect(Math.log(power!.high / 110)).toBeCloseTo(Math.hypot(clamps, Math.log(112 / 110)), 12);
    expect(Math.log(110 / power!.low)).toBeCloseTo(Math.hypot(clamps, Math.log(110 / 108)), 12);
    expect(dischargeTemperature!.likely).toBeCloseTo(kelvin(75) + dischargeLag.likely, 9);
    expect(dischargeTemperature!.high - dischargeTemperature!.likely).toBeGreaterThan(5);
    expect(current).toBeUndefined();
    expect(point.supply).toEqual(base.supply);
  });

  test('a worse reading of a level is a worse power', () => {
    const width = (half: number) => {
      const { low, high } = benchPoint(fluid, { ...base, evaporating: reading(kelvin(-20), half) }).given.power!;
      return high / low;
    };
    expect(width(3)).toBeGreaterThan(width(1));
    expect(width(1)).toBeGreaterThan(width(0));
  });

  test('it narrows the displacement of a machine without any flow measured', () => {
    const point = benchPoint(fluid, base);
    const { influences, compressor } = identifyMachine(described({ points: [point] }));
    const [low, , high] = householdRanges.displacement;
    const index = 0;
    const half = influences.map(({ atLow, atHigh }) => (atHigh[index]! - atLow[index]!) / 2);
    expect(Math.hypot(...half)).toBeLessThan(0.5 * Math.log(high / low));
    expect(compressor.displacement).toBeGreaterThan(low);
  });
});

describe('amps and volts', () => {
  const meter = {
    kind: 'ampsAndVolts',
    current: reading(0.8, 0.02),
    voltage: reading(228),
    powerFactor: { low: 0.6, likely: 0.7, high: 0.85, origin: 'typed' },
  } as const;

  test('power by hand: 228 V · 0.8 A · 0.7 = 127.68 W, as doubtful as the power factor at least', () => {
    const { given, supply } = benchPoint(fluid, { ...base, meter });
    expect(given.power!.likely).toBeCloseTo(127.68, 9);
    expect(given.power!.low).toBeLessThan(228 * 0.8 * 0.6);
    expect(given.power!.high).toBeGreaterThan(228 * 0.8 * 0.85);
    expect(given.current!.likely).toBe(0.8);
    expect(supply).toEqual({ frequency: 50, voltage: 228 });
  });

  test.each([
    ['above 1', { low: 0.6, likely: 0.9, high: 1.1, origin: 'typed' }],
    ['of nothing', { low: 0, likely: 0.5, high: 0.9, origin: 'typed' }],
  ] as const)('a power factor %s is refused: it is never guessed', (_, powerFactor) => {
    expect(() => benchPoint(fluid, { ...base, meter: { ...meter, powerFactor } })).toThrow(InputError);
    try {
      benchPoint(fluid, { ...base, meter: { ...meter, powerFactor } });
    } catch (error) {
      expect((error as InputError).code).toBe('powerFactorNeeded');
      expect((error as InputError).path).toBe('machine.compressor.bench.0.meter.powerFactor');
    }
  });
});

test('levels the wrong way round are refused', () => {
  expect(() => benchPoint(fluid, { ...base, condensing: reading(kelvin(-25)) })).toThrow(/below condensing/);
});
