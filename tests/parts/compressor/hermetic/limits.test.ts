// Limits of the hermetic machine against closed formulas, and an independent solution of the same relations.

import { describe, expect, test } from 'vitest';
import { refrigerant, stateInLoop } from '../../../../src/matter/refrigerants/index.ts';
import {
  leakageFlow,
  leakagePressureRatio,
  leakingExponent,
} from '../../../../src/parts/compressor/hermetic/gas-path.ts';
import {
  clearanceVolumetricEfficiency,
  type HermeticCompressor,
  hermeticPoint,
} from '../../../../src/parts/compressor/index.ts';
import worked from '../../../reference/parts/compressor-worked.json';
import independent from '../../../reference/parts/hermetic-points.json';
import { conditions, fluids, machine, tight, usual } from './machines.ts';

describe('reference: clearance', () => {
  // Source: worked.clearance.source.
  test.each(worked.clearance.rows as [number, number, number, number][])(
    'C %s, n %s, ratio %s → %s',
    (clearance, exponent, ratio, printed) => {
      expect(Math.abs(clearanceVolumetricEfficiency(clearance, exponent, ratio) - printed)).toBeLessThanOrEqual(5e-5);
    },
  );

  test.each(fluids)('%s: without openings, heating and leakage the machine is the textbook’s', (name) => {
    const { critical } = refrigerant(name);
    const evaporating = Math.min(258, 0.82 * critical.temperature);
    const levels = { evaporating, condensing: Math.min(308, 0.96 * critical.temperature), superheat: 15 };
    const { fluid, at } = conditions(name, levels);
    const point = hermeticPoint({ ...tight, clearanceRatio: 0.03 }, fluid, at);
    // n is the exponent that the gas itself follows between the two pressures.
    const exponent = Math.log(point.pressureRatio) / Math.log(point.isentropic.density / at.suction.density);
    const textbook = clearanceVolumetricEfficiency(0.03, exponent, point.pressureRatio);
    expect(Math.abs(point.volumetricEfficiency / textbook - 1)).toBeLessThan(1e-9);
    expect(Math.abs(hermeticPoint({ ...tight, clearanceRatio: 0 }, fluid, at).volumetricEfficiency - 1)).toBeLessThan(
      1e-9,
    );
  });

  test('of a nearly perfect gas that exponent is c_p/(c_p − R): 0.2 %', () => {
    // Propane at a hundredth of an atmosphere.
    const fluid = refrigerant('R290');
    const suction = stateInLoop(fluid, { temperature: 300, pressure: 1000 });
    const { at } = conditions('R290', usual);
    const point = hermeticPoint({ ...tight, clearanceRatio: 0.04 }, fluid, { ...at, suction, dischargePressure: 1500 });
    const mean = (suction.cp! + point.isentropic.cp!) / 2;
    const exponent = mean / (mean - fluid.gasConstant);
    const textbook = clearanceVolumetricEfficiency(0.04, exponent, 1.5);
    expect(Math.abs(point.volumetricEfficiency / textbook - 1)).toBeLessThan(2e-3);
    expect(Math.abs((1 - point.volumetricEfficiency) / (1 - textbook) - 1)).toBeLessThan(2e-3);
  });
});

describe('reference: leakage as a nozzle of textbooks', () => {
  // Mach relations of a perfect gas: choked flow A √(γ p ρ) (2/(γ+1))^((γ+1)/(2(γ−1))); otherwise area × density × velocity at the
  // outlet pressure; under a small difference Bernoulli’s A √(2 ρ Δp).
  const gamma = leakingExponent;
  const [ratio, displacement, pressure, density] = [1e-4, 8e-6, 1e6, 40];
  const area = ratio * displacement ** (2 / 3);
  const leak = (outlet: number) =>
    leakageFlow(ratio, displacement, pressure, density, leakagePressureRatio(outlet, pressure));

  test('choked', () => {
    const choked =
      area * Math.sqrt(gamma * pressure * density) * (2 / (gamma + 1)) ** ((gamma + 1) / (2 * (gamma - 1)));
    expect(leak(1e5) / choked).toBeCloseTo(1, 12);
    expect(leak(5e5)).toBe(leak(1e5));
  });

  test.each([0.62, 0.75, 0.9, 0.99])('not choked, ratio %s', (r) => {
    const velocity = Math.sqrt(((2 * gamma) / (gamma - 1)) * (pressure / density) * (1 - r ** ((gamma - 1) / gamma)));
    expect(leak(r * pressure) / (area * density * r ** (1 / gamma) * velocity)).toBeCloseTo(1, 12);
  });

  test('nearly no difference: Bernoulli, 0.1 %; none: nothing', () => {
    const difference = 100;
    const bernoulli = area * Math.sqrt(2 * density * difference);
    expect(Math.abs(leak(pressure - difference) / bernoulli - 1)).toBeLessThan(1e-3);
    expect(leak(pressure)).toBe(0);
  });
});

describe('reference: the same relations solved elsewhere', () => {
  // Source: independent.source.
  test.each(independent.points.map((point) => [point.fluid, point] as const))('%s', (name, given) => {
    const { frequency, voltage, surroundings, changes, expected } = given;
    const { fluid, at } = conditions(name, given, { surroundings, supply: { frequency, voltage } });
    const point = hermeticPoint({ ...independent.machine, ...changes } as HermeticCompressor, fluid, at);
    for (const [quantity, value] of Object.entries(expected)) {
      const ours = point[quantity as keyof typeof expected];
      expect(Math.abs(ours / value - 1), `${quantity}: ${ours}, elsewhere ${value}`).toBeLessThan(1e-7);
    }
  });
});

describe('law: edges', () => {
  test('without lift the machine still runs, and takes its losses', () => {
    const { fluid, at } = conditions('R134a', usual);
    const point = hermeticPoint(machine, fluid, { ...at, dischargePressure: at.suction.pressure });
    expect(point.overallEfficiency).toBe(0);
    expect(point.pressureRatio).toBe(1);
    expect(point.power).toBeGreaterThan(point.internalPower);
    expect(point.internalPower).toBeGreaterThan(0);
  });

  test.each(fluids)('%s: saturated suction is gas', (name) => {
    const { critical } = refrigerant(name);
    const evaporating = Math.min(263, 0.85 * critical.temperature);
    const levels = { evaporating, condensing: Math.min(303, 0.96 * critical.temperature), superheat: 0 };
    const { fluid, at } = conditions(name, levels);
    const strong = { ...machine, motorPressure: 0.5 * at.dischargePressure };
    const point = hermeticPoint(strong, fluid, at);
    const nearly = conditions(name, { ...levels, superheat: 1e-3 });
    const beside = hermeticPoint(strong, fluid, nearly.at);
    expect(Math.abs(point.massFlow / beside.massFlow - 1)).toBeLessThan(1e-3);
    expect(Math.abs(point.power / beside.power - 1)).toBeLessThan(1e-3);
  });

  test('a shell colder than the gas takes heat from it', () => {
    const { fluid, at } = conditions(
      'R290',
      { evaporating: 278, condensing: 308, superheat: 30 },
      { surroundings: 255 },
    );
    const point = hermeticPoint({ ...machine, shellConductance: 30, motorPressure: 5e5 }, fluid, at);
    expect(point.wallTemperature).toBeLessThan(at.suction.temperature);
    expect(point.suctionHeat).toBeLessThan(0);
    expect(point.cylinderGas.temperature).toBeLessThan(at.suction.temperature);
  });

  test('a shell that loses nearly everything leaves the discharge wet, and says so', () => {
    const { fluid, at } = conditions(
      'R600a',
      { evaporating: 268, condensing: 318, superheat: 0 },
      { surroundings: 270 },
    );
    const cold = { ...machine, shellConductance: 60, dischargeCoolingUnits: 4, motorPressure: 2e5 };
    const point = hermeticPoint(cold, fluid, at);
    expect(point.discharge.phase).toBe('twoPhase');
    expect(point.warnings).toContain('wetDischarge');
  });
});

describe('refused', () => {
  const { fluid, at } = conditions('R134a', usual);
  const refused = (change: Partial<HermeticCompressor>, other: Partial<typeof at> = {}) => {
    try {
      hermeticPoint({ ...machine, ...change }, fluid, { ...at, ...other });
    } catch (error) {
      return error;
    }
    throw new Error('expected an error');
  };

  test.each([
    [{ displacement: 0 }, 'compressor.displacement'],
    [{ clearanceRatio: 0.6 }, 'compressor.clearanceRatio'],
    [{ suctionVelocity: -1 }, 'compressor.suctionVelocity'],
    [{ motorEfficiency: 1.01 }, 'compressor.motorEfficiency'],
    [{ powerFactor: 0 }, 'compressor.powerFactor'],
    [{ slip: 0.5 }, 'compressor.slip'],
    [{ leakageRatio: Number.NaN }, 'compressor.leakageRatio'],
    [{ shellConductance: 0 }, 'compressor.shellConductance'],
    [{ ratedSupply: { frequency: 50, voltage: 0 } }, 'compressor.ratedSupply.voltage'],
  ])('%o names %s', (change, path) => {
    expect(refused(change)).toMatchObject({ name: 'InputError', path });
  });

  test('conditions', () => {
    const wet = stateInLoop(fluid, { temperature: 263, quality: 0.9 });
    expect(refused({}, { suction: wet })).toMatchObject({ code: 'wetSuction' });
    expect(refused({}, { dischargePressure: 1e5 })).toMatchObject({ code: 'dischargeBelowSuction' });
    expect(refused({}, { surroundings: 0 })).toMatchObject({ path: 'surroundings' });
    expect(refused({}, { supply: { frequency: Number.NaN, voltage: 230 } })).toMatchObject({
      path: 'supply.frequency',
    });
  });

  test('what physics forbids, with the limit', () => {
    expect(refused({ clearanceRatio: 0.5 })).toMatchObject({ code: 'noFlow' });
    expect(refused({ leakageRatio: 0.02 })).toMatchObject({ code: 'noFlow' });
    expect(refused({ motorPressure: 3e4 })).toMatchObject({
      code: 'motorStalls',
      limit: expect.stringMatching(/load below/),
    });
    expect(refused({ suctionVelocity: 900 })).toMatchObject({ code: 'chokedSuction' });
    expect(refused({ motorEfficiency: 0.3, shellConductance: 0.5, suctionHeatingUnits: 0.05 })).toMatchObject({
      code: 'wallTooHot',
      high: 500,
    });
  });

  test('just below the limits it runs', () => {
    expect(hermeticPoint({ ...machine, clearanceRatio: 0.15 }, fluid, at).warnings).toContain('littleFlow');
  });
});
