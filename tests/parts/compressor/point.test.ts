// Laws of the compressor's running point: balances, limits, monotony, refusals. Nothing here pins our own output.

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { refrigerant, saturationAtTemperature, stateAt } from '../../../src/matter/refrigerants/index.ts';
import { InputError, NoSolutionError } from '../../../src/numerics/index.ts';
import type { CompressorModel } from '../../../src/parts/compressor/index.ts';
import { compressorPoint, compressorWorking, volumetricEfficiency } from '../../../src/parts/compressor/index.ts';

const model: CompressorModel = {
  displacement: 6.5e-6,
  speed: 49,
  clearanceRatio: 0.025,
  reexpansionExponent: 1.1,
  fillingFactor: 0.89,
  compressionEfficiency: 0.55,
  frictionPressure: 60e3,
  shellHeatShare: 0.45,
};

function conditions(name: string, evaporating: number, condensing: number, superheat: number) {
  const fluid = refrigerant(name);
  const pressure = saturationAtTemperature(fluid, evaporating).vapour.pressure;
  return {
    fluid,
    suction: stateAt(fluid, { temperature: evaporating + superheat, pressure }),
    dischargePressure: saturationAtTemperature(fluid, condensing).vapour.pressure,
  };
}

const anyCase = fc.record({
  name: fc.constantFrom('R134a', 'R600a', 'R290', 'R12', 'R22'),
  evaporating: fc.double({ min: 245, max: 285, noNaN: true }),
  lift: fc.double({ min: 15, max: 55, noNaN: true }),
  superheat: fc.double({ min: 3, max: 30, noNaN: true }),
  clearanceRatio: fc.double({ min: 0.01, max: 0.05, noNaN: true }),
  fillingFactor: fc.double({ min: 0.6, max: 1, noNaN: true }),
  compressionEfficiency: fc.double({ min: 0.3, max: 1, noNaN: true }),
  frictionPressure: fc.double({ min: 0, max: 2e5, noNaN: true }),
  shellHeatShare: fc.double({ min: 0, max: 0.6, noNaN: true }),
});

describe('law: balances and directions hold for any machine', () => {
  test('first law, second law and order of the powers (seed 20110)', () => {
    fc.assert(
      fc.property(anyCase, (c) => {
        const { fluid, suction, dischargePressure } = conditions(
          c.name,
          c.evaporating,
          Math.min(c.evaporating + c.lift, 340),
          c.superheat,
        );
        const machine = { ...model, ...c };
        const point = compressorPoint(machine, fluid, { suction, dischargePressure });
        const out = point.massFlow * point.dischargeEnthalpy + point.shellHeat;
        const into = point.massFlow * suction.enthalpy + point.power;
        expect(Math.abs(out - into)).toBeLessThanOrEqual(1e-9 * point.power);
        expect(point.power).toBeGreaterThanOrEqual(point.compressionPower);
        expect(point.compressionPower + point.frictionPower).toBeCloseTo(point.power, 9);
        expect(point.overallEfficiency).toBeGreaterThan(0);
        expect(point.overallEfficiency).toBeLessThanOrEqual(1);
        expect(point.volumetricEfficiency).toBeLessThanOrEqual(machine.fillingFactor);
        // Entropy made, with the shell giving off its heat at the discharge temperature, the hottest it can be.
        const made =
          point.massFlow * (point.discharge.entropy - suction.entropy) + point.shellHeat / point.dischargeTemperature;
        expect(made).toBeGreaterThanOrEqual(-1e-9 * point.power);
      }),
      { seed: 20110, numRuns: 150 },
    );
  });

  test('flow and overall efficiency change with pressure ratio, power stays positive', () => {
    const points = [305, 315, 325, 335].map((condensing) => {
      const { fluid, suction, dischargePressure } = conditions('R134a', 260, condensing, 10);
      return compressorPoint(model, fluid, { suction, dischargePressure });
    });
    for (let i = 1; i < points.length; i++) {
      expect(points[i]!.massFlow).toBeLessThan(points[i - 1]!.massFlow);
      expect(points[i]!.volumetricEfficiency).toBeLessThan(points[i - 1]!.volumetricEfficiency);
      expect(points[i]!.dischargeTemperature).toBeGreaterThan(points[i - 1]!.dischargeTemperature);
    }
    const efficiencies = points.map((point) => point.overallEfficiency);
    expect(Math.max(...efficiencies) - Math.min(...efficiencies)).toBeGreaterThan(0.005);
  });

  test('without friction, shell heat and losses it is the isentropic machine', () => {
    const ideal = { ...model, compressionEfficiency: 1, frictionPressure: 0, shellHeatShare: 0 };
    const { fluid, suction, dischargePressure } = conditions('R290', 263.15, 318.15, 8);
    const point = compressorPoint(ideal, fluid, { suction, dischargePressure });
    expect(point.overallEfficiency).toBeCloseTo(1, 12);
    expect(point.dischargeEnthalpy).toBeCloseTo(point.isentropicDischargeEnthalpy, 6);
    expect(Math.abs(point.discharge.entropy - suction.entropy)).toBeLessThan(1e-6);
  });

  test('at pressure ratio 1 only friction is left and the whole filling factor flows', () => {
    const { fluid, suction } = conditions('R134a', 270, 310, 5);
    const point = compressorPoint(model, fluid, { suction, dischargePressure: suction.pressure });
    expect(point.power).toBeCloseTo(model.frictionPressure * model.displacement * model.speed, 12);
    expect(point.volumetricEfficiency).toBe(model.fillingFactor);
    expect(point.overallEfficiency).toBe(0);
  });

  test('saturated vapour of quality 1 is accepted as suction gas', () => {
    const fluid = refrigerant('R600a');
    const { vapour } = saturationAtTemperature(fluid, 268);
    const dischargePressure = saturationAtTemperature(fluid, 310).vapour.pressure;
    expect(compressorPoint(model, fluid, { suction: vapour, dischargePressure }).massFlow).toBeGreaterThan(0);
  });
});

describe('law: doubts are carried as warnings', () => {
  test('a shell that loses more than compression brings makes wet discharge', () => {
    const cold = { ...model, compressionEfficiency: 1, frictionPressure: 0, shellHeatShare: 0.6 };
    const { fluid, suction, dischargePressure } = conditions('R600a', 268, 310, 1);
    expect(compressorPoint(cold, fluid, { suction, dischargePressure }).warnings).toContain('wetDischarge');
  });

  test('little flow is named', () => {
    const { fluid, suction, dischargePressure } = conditions('R134a', 240, 335, 10);
    const worn = { ...model, clearanceRatio: 0.04, fillingFactor: 0.7 };
    expect(compressorPoint(worn, fluid, { suction, dischargePressure }).warnings).toContain('littleFlow');
    const usual = conditions('R134a', 263, 313, 10);
    expect(compressorPoint(model, usual.fluid, usual).warnings).toEqual([]);
  });
});

describe('refusals', () => {
  const { fluid, suction, dischargePressure } = conditions('R134a', 263.15, 318.15, 10);

  test('discharge below suction', () => {
    const attempt = () => compressorPoint(model, fluid, { suction, dischargePressure: suction.pressure * 0.99 });
    expect(attempt).toThrow(InputError);
    expect(caught(attempt)).toMatchObject({ code: 'dischargeBelowSuction', path: 'dischargePressure' });
  });

  test('wet suction', () => {
    const wet = stateAt(fluid, { pressure: suction.pressure, quality: 0.9 });
    expect(caught(() => compressorPoint(model, fluid, { suction: wet, dischargePressure }))).toMatchObject({
      code: 'wetSuction',
    });
  });

  test('re-expansion that fills the stroke, with the pressure ratio where the flow ends', () => {
    const attempt = () => volumetricEfficiency(0.9, 0.1, 1.05, 20);
    expect(attempt).toThrow(NoSolutionError);
    expect(caught(attempt)).toMatchObject({
      code: 'noFlow',
      limit: 'pressure ratio below 12.40 with a clearance ratio of 0.1',
    });
    // At the limit named the flow ends: just below it there is some.
    expect(volumetricEfficiency(0.9, 0.1, 1.05, 11 ** 1.05 - 1e-3)).toBeGreaterThan(0);
  });

  test.each([
    ['displacement', 0],
    ['displacement', Number.NaN],
    ['speed', -1],
    ['clearanceRatio', 0.6],
    ['reexpansionExponent', 0.9],
    ['fillingFactor', 0],
    ['fillingFactor', 1.01],
    ['compressionEfficiency', 1.2],
    ['compressionEfficiency', 0],
    ['frictionPressure', -1],
    ['shellHeatShare', 1],
    ['shellHeatShare', Number.POSITIVE_INFINITY],
  ] as const)('%s of %d', (field, value) => {
    const attempt = () => compressorPoint({ ...model, [field]: value }, fluid, { suction, dischargePressure });
    expect(caught(attempt)).toMatchObject({ name: 'InputError', path: `compressor.${field}` });
  });

  test('discharge pressure that is not a number', () => {
    expect(() => compressorPoint(model, fluid, { suction, dischargePressure: Number.NaN })).toThrow(InputError);
  });
});

test('law: the working repeats every number of the point and names an origin for each symbol', () => {
  const { fluid, suction, dischargePressure } = conditions('R134a', 263.15, 318.15, 10);
  const point = compressorPoint(model, fluid, { suction, dischargePressure });
  const paths = Object.fromEntries(Object.keys(model).map((key) => [key, `machine.compressor.${key}`]));
  const steps = compressorWorking(model, point, {
    model: paths as Record<keyof CompressorModel, string>,
    suctionPressure: 'loop.evaporatingPressure',
    suctionDensity: 'loop.suction',
    suctionEnthalpy: 'loop.suction',
    dischargePressure: 'loop.condensingPressure',
    isentropicDischargeEnthalpy: 'loop.isentropicDischarge',
  });
  const values = Object.fromEntries(steps.map((step) => [step.result, step.value]));
  expect(values).toMatchObject({
    'compressor.massFlow': point.massFlow,
    'compressor.power': point.power,
    'compressor.shellHeat': point.shellHeat,
    'compressor.dischargeEnthalpy': point.dischargeEnthalpy,
  });
  for (const step of steps) expect(Object.keys(step.from).sort()).toEqual(Object.keys(step.inputs).sort());
});

function caught(attempt: () => unknown): unknown {
  try {
    attempt();
  } catch (error) {
    return error;
  }
  throw new Error('expected an error');
}
