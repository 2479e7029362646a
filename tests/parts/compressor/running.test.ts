// A running point moved by what is known of the machine: no correction makes or loses energy, none takes an efficiency past 1.

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { KettlefinError } from '../../../src/numerics/index.ts';
import {
  type HermeticPoint,
  hermeticPoint,
  identifyMachine,
  type RunningMachine,
  runningPoint,
} from '../../../src/parts/compressor/index.ts';
import { factorWithin, movedCurrent, movedPoint, wallAtShellHeat } from '../../../src/parts/compressor/running.ts';
import { anyRun, conditions, machine, usual } from './hermetic/machines.ts';
import { about, described, fluid as household, supply as householdSupply } from './identification/descriptions.ts';

test('worked values', () => {
  expect(movedCurrent(1.087, 200, 220, 230)).toBeCloseTo(1.158, 3);
  expect(wallAtShellHeat(295, 60, 2)).toBe(325);
  expect(factorWithin(0.02, 0.06, -0.5)).toBeCloseTo(0.99, 12);
});

describe('law: a moved point', () => {
  test('keeps the first law, the balance of the wall and the current’s parts; flow and power are as asked (seed 6201)', () => {
    let points = 0;
    const factors = fc.record({
      flow: fc.double({ min: 0.85, max: 1.1, noNaN: true }),
      power: fc.double({ min: 0.9, max: 1.2, noNaN: true }),
    });
    fc.assert(
      fc.property(anyRun, factors, ({ compressor, fluid, at }, asked) => {
        let modelled: HermeticPoint;
        try {
          modelled = hermeticPoint(compressor, fluid, at);
        } catch (error) {
          if (error instanceof KettlefinError) return;
          throw error;
        }
        const here = { compressor, surroundings: at.surroundings, supply: at.supply };
        try {
          const point = movedPoint(modelled, fluid, here, asked, null);
          points++;
          const { massFlow, power, shellHeat, discharge } = point;
          expect(massFlow / modelled.massFlow).toBeCloseTo(asked.flow, 12);
          expect(power / modelled.power).toBeCloseTo(asked.power, 12);
          const expected = at.suction.enthalpy + (power - shellHeat) / massFlow;
          expect(Math.abs(point.dischargeEnthalpy / expected - 1)).toBeLessThan(1e-9);
          expect(Math.abs(discharge.enthalpy / expected - 1)).toBeLessThan(1e-9);
          const conducted = compressor.shellConductance * (point.wallTemperature - at.surroundings);
          expect(Math.abs(conducted - shellHeat)).toBeLessThan(1e-9 * power);
          expect(point.overallEfficiency).toBeLessThan(1);
          const idle = (one: HermeticPoint) => one.current ** 2 - (one.power / at.supply.voltage) ** 2;
          expect(Math.abs(idle(point) - idle(modelled))).toBeLessThan(1e-9 * point.current ** 2);
        } catch (error) {
          if (!(error instanceof KettlefinError)) throw error;
        }
      }),
      { seed: 6201, numRuns: 200 },
    );
    expect(points).toBeGreaterThan(140);
  });

  test('that would need less than isentropic work, pump more than it sweeps, or is unknown, is refused', () => {
    const { fluid, at } = conditions('R134a', usual);
    const modelled = hermeticPoint(machine, fluid, at);
    const here = { compressor: machine, surroundings: at.surroundings, supply: at.supply };
    const refused = (flow: number, power: number) => () => movedPoint(modelled, fluid, here, { flow, power }, null);
    expect(refused(1, 0.9 * modelled.overallEfficiency)).toThrow(expect.objectContaining({ code: 'belowIsentropic' }));
    expect(refused(1.05 / modelled.volumetricEfficiency, 2)).toThrow(
      expect.objectContaining({ code: 'moreThanSwept' }),
    );
    expect(refused(0, 1)).toThrow(expect.objectContaining({ code: 'beyondKnowledge' }));
    expect(refused(1, Number.NaN)).toThrow(expect.objectContaining({ code: 'beyondKnowledge' }));
  });
});

describe('law: a running point', () => {
  const { fluid, at } = conditions('R600a', { evaporating: 253, condensing: 313, superheat: 20 });
  const ends = { suction: at.suction, dischargePressure: at.dischargePressure };

  test('of the bare model is the model’s', () => {
    const bare: RunningMachine = { compressor: machine, surroundings: 295, supply: at.supply, known: null };
    const point = runningPoint(bare, fluid, ends);
    const modelled = hermeticPoint(machine, fluid, { ...at, surroundings: 295 });
    expect(point).toMatchObject({ flowFactor: 1, powerFactor: 1, doubt: null, modelled });
    for (const [name, value] of Object.entries(modelled)) {
      const ours = point[name as keyof HermeticPoint];
      if (typeof value === 'number') expect(Math.abs((ours as number) / value - 1), name).toBeLessThan(1e-14);
      else if (name !== 'motor') expect(ours, name).toEqual(value);
    }
  });

  test('meets a point that is known of it, and moves within its doubt as it is taken to stand', () => {
    const ranges = described({});
    const free = identifyMachine(ranges).compressor;
    const measured = hermeticPoint(free, household, { ...at, supply: householdSupply }).power * 1.08;
    const identified = identifyMachine({
      ...ranges,
      points: [
        {
          path: 'machine.compressor.bench.0',
          label: 'bench',
          evaporating: 253,
          condensing: 313,
          returnGas: 273,
          liquid: 308,
          surroundings: at.surroundings,
          supply: householdSupply,
          given: { power: about(measured, 0.005) },
        },
      ],
    });
    const here = (flow: number, power: number): RunningMachine => ({
      compressor: identified.compressor,
      surroundings: at.surroundings,
      supply: householdSupply,
      known: { identified, flow, power },
    });
    const point = runningPoint(here(0, 0), household, ends);
    expect(Math.abs(point.power / measured - 1)).toBeLessThan(0.01);
    const { doubt } = point;
    expect(doubt).not.toBeNull();
    const high = runningPoint(here(1, -1), household, ends);
    expect(high.massFlow / high.modelled.massFlow).toBeCloseTo(1 + doubt!.flow.correction + doubt!.flow.halfWidth, 12);
    expect(high.power / high.modelled.power).toBeCloseTo(1 + doubt!.power.correction - doubt!.power.halfWidth, 12);
    expect(doubt!.flow.halfWidth).toBeGreaterThan(doubt!.power.halfWidth);
  });
});
