// A machine alike of another size: what stays, what grows, the size that gives a wanted heat, and that what was measured of a machine
// holds for one of another size as well.

import { describe, expect, test } from 'vitest';
import { stateInLoop } from '../../../src/matter/refrigerants/index.ts';
import { ConvergenceError, InputError, type NoSolutionError } from '../../../src/numerics/index.ts';
import {
  identifyMachine,
  ofAnotherSize,
  type RunningMachine,
  runningPoint,
  sizeForHeat,
} from '../../../src/parts/compressor/index.ts';
import { conditions, machine, usual } from './hermetic/machines.ts';
import {
  about,
  described,
  fluid as household,
  supply as householdSupply,
  pointAt,
} from './identification/descriptions.ts';

const surroundings = 298.15;
const { fluid, at: between } = conditions('R134a', usual);
const sizes = [0.4, 0.8, 1.5, 3];

function bare(): RunningMachine {
  return { compressor: machine, surroundings, supply: between.supply, known: null };
}

describe('law', () => {
  test.each(sizes)('%s times as large, tight and with a shell in proportion, gives that much of everything', (size) => {
    const tight = { ...machine, leakageRatio: 0 };
    const there = { ...bare(), compressor: { ...tight, shellConductance: size ** (1 / 3) * 1.8 } };
    const sized = ofAnotherSize(there, size);
    // The shell of the reference grows in proportion, so that only proportion is left.
    const reference = {
      ...there,
      compressor: { ...there.compressor, shellConductance: sized.compressor.shellConductance / size },
    };
    const [small, large] = [reference, sized].map((each) => runningPoint(each, fluid, between));
    for (const name of ['massFlow', 'power', 'shellHeat', 'shaftPower'] as const) {
      expect(Math.abs(large![name] / small![name] / size - 1), name).toBeLessThan(1e-9);
    }
    for (const name of ['dischargeTemperature', 'volumetricEfficiency', 'overallEfficiency'] as const) {
      expect(Math.abs(large![name] / small![name] - 1), name).toBeLessThan(1e-9);
    }
    expect(Math.abs(large!.motor.load / small!.motor.load - 1)).toBeLessThan(1e-9);
  });

  test('the shell of one twice as large has 1.587 times the conductance', () => {
    const sized = ofAnotherSize(bare(), 2).compressor;
    expect(sized.shellConductance / machine.shellConductance).toBeCloseTo(1.587401052, 9);
    expect(sized.displacement).toBe(2 * machine.displacement);
  });
});

describe('what was measured', () => {
  const points = [
    [-30, 40],
    [-20, 50],
  ].map(([evaporating, condensing], index) => ({
    ...pointAt(index, evaporating!, condensing!, {}),
    given: { massFlow: about(4e-4 * (1 + index), 0.02), power: about(95 * (1 + 0.4 * index), 0.02) },
  }));
  const identified = identifyMachine(described({ points }));
  const there: RunningMachine = {
    compressor: identified.compressor,
    surroundings,
    supply: householdSupply,
    known: { identified, flow: 0, power: 0 },
  };
  const at = { suction: stateInLoop(household, { temperature: 288.15, pressure: 7.2e4 }), dischargePressure: 5.3e5 };

  test.each(sizes)('corrects one %s times as large as it corrects the measured one', (size) => {
    const own = runningPoint(there, household, at);
    const sized = runningPoint(ofAnotherSize(there, size), household, at);
    expect(Math.abs(own.flowFactor - 1)).toBeGreaterThan(1e-4);
    expect(sized.flowFactor).toBeCloseTo(own.flowFactor, 12);
    expect(sized.powerFactor).toBeCloseTo(own.powerFactor, 12);
    // Leakage and shell leave a few percent.
    expect(Math.abs(sized.massFlow / own.massFlow / size - 1)).toBeLessThan(0.05);
  });

  test('one resized twice is still corrected by the machine that was measured', () => {
    const twice = ofAnotherSize(ofAnotherSize(there, 2), 0.5);
    expect(twice.known!.measured).toBe(identified.compressor);
  });
});

describe('size for a heat', () => {
  test('worked value', () => {
    expect(sizeForHeat((size) => 300 * size ** 0.97, 450, 300)).toBeCloseTo(1.5 ** (1 / 0.97), 10);
    expect(sizeForHeat(() => Number.NaN, 300, 300)).toBe(1);
  });

  test('of a curve that is not a power', () => {
    const heatAt = (size: number) => 280 * size - 6 * size ** (2 / 3);
    for (const wanted of [60, 200, 500, 1400]) {
      expect(heatAt(sizeForHeat(heatAt, wanted, heatAt(1))) / wanted).toBeCloseTo(1, 9);
    }
  });

  test('another kind of machine, a heat that is none, a curve that leads nowhere', () => {
    const codeOf = (run: () => unknown) => {
      try {
        return run();
      } catch (error) {
        return (error as NoSolutionError).code;
      }
    };
    expect(codeOf(() => sizeForHeat((size) => 300 * size, 3000, 300))).toBe('noSuchSize');
    expect(codeOf(() => sizeForHeat((size) => 300 * size, 30, 300))).toBe('noSuchSize');
    expect(() => sizeForHeat((size) => 300 * size, 0, 300)).toThrow(InputError);
    expect(() => sizeForHeat((size) => 300 * size * (1 + 0.01 * Math.sin(1e9 * size)), 400, 300)).toThrow(
      ConvergenceError,
    );
    expect(() => ofAnotherSize(bare(), 0)).toThrow(InputError);
  });
});
