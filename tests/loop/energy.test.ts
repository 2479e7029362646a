// First- and second-law functions: worked values that follow by hand, published reversible limits, and what is refused.

import { describe, expect, it } from 'vitest';
import {
  carnotHeatingCop,
  coefficientOfPerformance,
  energyAccountResidual,
  exergyAccount,
  exergyDestroyedWithHeat,
  isentropicEfficiency,
  meanTemperatureLorenz,
  minimumWork,
  outletEnthalpyFromEfficiency,
  pressureRatio,
  secondLawEfficiency,
  volumetricHeatingCapacity,
} from '../../src/loop/index.ts';

describe('worked values (by hand)', () => {
  it.each([
    ['outlet of a compressor, η 0.85', outletEnthalpyFromEfficiency(239160, 275390, 0.85), 281783.529],
    ['isentropic efficiency', isentropicEfficiency(246360, 284210, 286690), 0.938507],
    ['volumetric capacity', volumetricHeatingCapacity(180e3, 7), 1.26e6],
    ['COP', coefficientOfPerformance(7180, 1810), 3.966851],
    ['pressure ratio', pressureRatio(8e5, 1.4e5), 5.714286],
    ['energy account', energyAccountResidual(205, 100, 260, 40), 5 / 260],
    ['exergy with heat', exergyDestroyedWithHeat(300, 1700, 1100, 190e3, 310), 3870.9677],
    ['minimum work', minimumWork(190e3, 150e3, 320, 280, 300), 22589.2857],
    ['second-law efficiency', secondLawEfficiency(1016, 2919), 0.3480644],
  ])('%s', (_what, computed, expected) => {
    expect(Math.abs(computed / expected - 1)).toBeLessThan(1e-6);
  });
});

describe('reversible limits', () => {
  it('Carnot: 5 to 28 °C gives 13.0935, 5 to 30 °C gives 12.126 (by definition)', () => {
    expect(carnotHeatingCop(301.15, 278.15)).toBeCloseTo(13.0935, 4);
    expect(carnotHeatingCop(303.15, 278.15)).toBeCloseTo(12.126, 4);
  });

  it('Lorenz: source 10 to 5 °C, sink 25 to 30 °C gives 15.0318 between the means', () => {
    const cold = meanTemperatureLorenz(283.15, 278.15);
    const warm = meanTemperatureLorenz(298.15, 303.15);
    expect(cold).toBeCloseTo(280.6426, 4);
    expect(warm).toBeCloseTo(300.6431, 4);
    expect(carnotHeatingCop(warm, cold)).toBeCloseTo(15.0318, 3);
  });

  it('the mean temperature lies between its ends, does not depend on their order and is smooth where they meet', () => {
    expect(meanTemperatureLorenz(278.15, 283.15)).toBeCloseTo(meanTemperatureLorenz(283.15, 278.15), 10);
    expect(meanTemperatureLorenz(300, 300)).toBe(300);
    expect(meanTemperatureLorenz(300, 300 + 1e-9)).toBeCloseTo(300, 8);
    expect(meanTemperatureLorenz(300, 300.001)).toBeCloseTo(300.0005, 9);
  });

  it('minimum work of a reversible heat pump is its Carnot work, whatever the dead state', () => {
    // Reversible: q_H/T_H = q_L/T_L. Then w_min = q_H − q_L for every T0.
    const [sink, source, delivered] = [320, 280, 1000];
    const taken = (delivered * source) / sink;
    for (const deadState of [250, 280, 300, 350]) {
      const work = minimumWork(delivered, taken, sink, source, deadState);
      expect(work).toBeCloseTo(delivered / carnotHeatingCop(sink, source), 9);
    }
  });
});

describe('refused', () => {
  const refused = (run: () => unknown) => {
    try {
      run();
    } catch (error) {
      return error;
    }
    throw new Error('expected an error');
  };

  it.each([
    [() => outletEnthalpyFromEfficiency(1, 2, 0), 'isentropicEfficiency'],
    [() => outletEnthalpyFromEfficiency(1, 2, 1.01), 'isentropicEfficiency'],
    [() => outletEnthalpyFromEfficiency(3, 2, 0.5), 'isentropicOutletEnthalpy'],
    [() => isentropicEfficiency(1, 2, 1), 'outletEnthalpy'],
    [() => coefficientOfPerformance(1, 0), 'work'],
    [() => coefficientOfPerformance(Number.NaN, 1), 'heat'],
    [() => carnotHeatingCop(300, 300), 'warm'],
    [() => carnotHeatingCop(300, -1), 'cold'],
    [() => pressureRatio(1, 0), 'suctionPressure'],
    [() => volumetricHeatingCapacity(1, -1), 'suctionDensity'],
    [() => meanTemperatureLorenz(0, 300), 'from'],
  ])('%s names %s', (run, path) => {
    expect(refused(run)).toMatchObject({ name: 'InputError', path });
  });

  it('an exergy account that does not close is an error, not a result', () => {
    const account = {
      entropies: [1750, 1820, 1190, 1215] as const,
      heatDelivered: 200e3,
      heatTaken: 140e3,
      work: 61e3,
      deadState: 300,
      sinkTemperature: 300,
      sourceTemperature: 290,
    };
    expect(refused(() => exergyAccount(account))).toMatchObject({ name: 'ConvergenceError', code: 'notConverged' });
    expect(exergyAccount({ ...account, work: 60e3 }).destruction.compressor).toBe(300 * 70);
  });
});
