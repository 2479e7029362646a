// Laws that hold of any hermetic machine, fluid and conditions: first and second law, efficiencies below 1, order of pressures
// and powers, directions of change. Nothing here pins our own output.

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { tabulated } from '../../../../src/matter/refrigerants/index.ts';
import { KettlefinError } from '../../../../src/numerics/index.ts';
import { type HermeticCompressor, type HermeticPoint, hermeticPoint } from '../../../../src/parts/compressor/index.ts';
import { anyRun, conditions, machine, usual } from './machines.ts';

/** The point, or what refused it. */
function attempt(run: () => HermeticPoint): HermeticPoint | KettlefinError {
  try {
    return run();
  } catch (error) {
    if (error instanceof KettlefinError) return error;
    throw error;
  }
}

describe('law: any machine, fluid and conditions', () => {
  test('first and second law, efficiencies, order of pressures and powers (seed 6101)', () => {
    let points = 0;
    const refusals = new Set<string>();
    fc.assert(
      fc.property(anyRun, ({ compressor, fluid, at }) => {
        const point = attempt(() => hermeticPoint(compressor, fluid, at));
        if (point instanceof KettlefinError) {
          refusals.add(point.code);
          return;
        }
        points++;
        const { massFlow, power, shellHeat, suction, discharge, internalPower, suctionHeat, dischargeHeat } = point;
        const expected = suction.enthalpy + (power - shellHeat) / massFlow;
        expect(Math.abs(point.dischargeEnthalpy / expected - 1)).toBeLessThan(1e-9);
        expect(Math.abs(discharge.enthalpy / expected - 1)).toBeLessThan(1e-9);
        // The wall neither gains nor loses, and the gas path taken by itself leads to the same discharge.
        const wall = power - internalPower + dischargeHeat - suctionHeat - shellHeat;
        expect(Math.abs(wall)).toBeLessThan(1e-7 * power);
        // Heat leaves at the temperature of the wall: nothing within the machine destroys entropy.
        const made = massFlow * (discharge.entropy - suction.entropy) + shellHeat / point.wallTemperature;
        expect(made).toBeGreaterThanOrEqual(0);
        expect(point.overallEfficiency).toBeGreaterThan(0);
        expect(point.overallEfficiency).toBeLessThan(1);
        expect(point.volumetricEfficiency).toBeGreaterThan(0);
        if (point.wallTemperature >= suction.temperature) expect(point.volumetricEfficiency).toBeLessThanOrEqual(1);
        expect(point.fillingPressure).toBeLessThanOrEqual(suction.pressure);
        expect(point.emptyingPressure).toBeGreaterThanOrEqual(at.dischargePressure);
        expect(internalPower).toBeGreaterThan(0);
        expect(point.shaftPower).toBeGreaterThan(internalPower);
        expect(power).toBeGreaterThan(point.shaftPower);
        expect(point.current * at.supply.voltage).toBeGreaterThan(power);
        expect(point.speed).toBeLessThanOrEqual(at.supply.frequency);
        for (const value of Object.values(point)) if (typeof value === 'number') expect(value).not.toBeNaN();
      }),
      { seed: 6101, numRuns: 600 },
    );
    expect(points).toBeGreaterThan(450);
    // What is refused is refused for a reason of physics or of the equation.
    expect([...refusals].sort()).toEqual(
      [...refusals].filter((code) => code !== 'notConverged' && code !== 'badInput').sort(),
    );
  });

  test('tables lead to the point that the equations lead to (seed 6102)', () => {
    let points = 0;
    fc.assert(
      fc.property(anyRun, ({ compressor, fluid, at }) => {
        const exact = attempt(() => hermeticPoint(compressor, fluid, at));
        const fast = attempt(() => hermeticPoint(compressor, tabulated(fluid), at));
        if (exact instanceof KettlefinError || fast instanceof KettlefinError) {
          expect(exact instanceof KettlefinError && fast instanceof KettlefinError).toBe(true);
          return;
        }
        points++;
        for (const name of ['massFlow', 'power', 'wallTemperature', 'dischargeTemperature', 'current'] as const) {
          expect(Math.abs(fast[name] / exact[name] - 1), name).toBeLessThan(1e-5);
        }
      }),
      { seed: 6102, numRuns: 120 },
    );
    expect(points).toBeGreaterThan(90);
  });

  test('a point depends on nothing but its inputs: found again from itself (seed 6103)', () => {
    fc.assert(
      fc.property(anyRun, ({ compressor, fluid, at }) => {
        const first = attempt(() => hermeticPoint(compressor, fluid, at));
        const second = attempt(() => hermeticPoint({ ...compressor }, fluid, { ...at }));
        if (first instanceof KettlefinError) expect(second).toMatchObject({ code: first.code });
        else expect(second).toEqual(first);
      }),
      { seed: 6103, numRuns: 40 },
    );
  });
});

describe('law: directions of change', () => {
  const run = (change: Partial<HermeticCompressor>, name = 'R134a') => {
    const { fluid, at } = conditions(name, usual);
    return hermeticPoint({ ...machine, ...change }, fluid, at);
  };
  /** Values of a result as one number of the machine grows. */
  function along<T extends keyof HermeticCompressor>(
    number: T,
    values: readonly HermeticCompressor[T][],
    result: (point: HermeticPoint) => number,
  ): readonly number[] {
    return values.map((value) => result(run({ [number]: value })));
  }
  const falls = (values: readonly number[]) => values.every((value, i) => i === 0 || value < values[i - 1]!);
  const rises = (values: readonly number[]) => values.every((value, i) => i === 0 || value > values[i - 1]!);
  const flow = (point: HermeticPoint) => point.massFlow;

  test('clearance, leakage, heating and narrow openings take flow', () => {
    expect(falls(along('clearanceRatio', [0, 0.01, 0.03, 0.06], flow))).toBe(true);
    expect(falls(along('leakageRatio', [0, 2e-5, 1e-4, 4e-4], flow))).toBe(true);
    expect(falls(along('suctionHeatingUnits', [0, 0.3, 0.8, 2], flow))).toBe(true);
    expect(falls(along('suctionVelocity', [0, 15, 30, 60], flow))).toBe(true);
    expect(falls(along('dischargeVelocity', [0, 60, 150, 400], flow))).toBe(true);
    expect(rises(along('displacement', [4e-6, 8e-6, 12e-6], flow))).toBe(true);
  });

  test('losses take power and warm the discharge; a shell that conducts cools it', () => {
    const discharge = (point: HermeticPoint) => point.dischargeTemperature;
    for (const number of ['proportionalLoss', 'leakageRatio'] as const) {
      const values = number === 'leakageRatio' ? [0, 5e-5, 2e-4] : [0, 0.1, 0.3];
      expect(rises(along(number, values, discharge)), number).toBe(true);
      expect(falls(along(number, values, (point) => point.overallEfficiency)), number).toBe(true);
    }
    expect(rises(along('frictionPressure', [1e4, 3e4, 6e4], (point) => point.power))).toBe(true);
    expect(falls(along('motorEfficiency', [0.55, 0.7, 0.85], (point) => point.power))).toBe(true);
    expect(falls(along('shellConductance', [0.5, 1, 3, 9], discharge))).toBe(true);
    expect(rises(along('shellConductance', [0.5, 1, 3, 9], (point) => point.shellHeat))).toBe(true);
  });

  test('warmer surroundings take less of the shell; more voltage makes less slip; more frequency more flow', () => {
    const at = (further: object) => {
      const { fluid, at: own } = conditions('R600a', usual, further);
      return hermeticPoint({ ...machine, motorPressure: 1.5e5 }, fluid, own);
    };
    const warmer = [270, 285, 300, 312].map((surroundings) => at({ surroundings }));
    expect(falls(warmer.map((point) => point.shellHeat))).toBe(true);
    expect(falls(warmer.map((point) => point.massFlow))).toBe(true);
    expect(rises(warmer.map((point) => point.wallTemperature))).toBe(true);
    const fed = [190, 210, 230, 250].map((voltage) => at({ supply: { frequency: 50, voltage } }));
    expect(rises(fed.map((point) => point.speed))).toBe(true);
    const faster = [45, 50, 55, 60].map((frequency) => at({ supply: { frequency, voltage: 230 } }));
    expect(rises(faster.map((point) => point.massFlow))).toBe(true);
  });

  test('suction and discharge: a warmer source gives more flow and load, more condensing less flow', () => {
    const between = (evaporating: number, condensing: number) => {
      const { fluid, at } = conditions('R134a', { evaporating, condensing, superheat: 8 });
      return hermeticPoint(machine, fluid, at);
    };
    const bySource = [250, 260, 270, 280].map((evaporating) => between(evaporating, 313));
    expect(rises(bySource.map((point) => point.massFlow))).toBe(true);
    expect(rises(bySource.map((point) => point.volumetricEfficiency))).toBe(true);
    const bySink = [303, 313, 323, 333].map((condensing) => between(263, condensing));
    expect(falls(bySink.map((point) => point.massFlow))).toBe(true);
    expect(rises(bySink.map((point) => point.dischargeTemperature))).toBe(true);
  });
});
