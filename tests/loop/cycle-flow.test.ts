// The mass flow of a textbook cycle: worked values, and refusals.

import { describe, expect, it } from 'vitest';
import { inletVolumeFlow, massFlowFromDisplacement, massFlowFromPower, ratePerSecond } from '../../src/loop/index.ts';
import { InputError } from '../../src/numerics/index.ts';

describe('mass flow and rates', () => {
  it('worked values of their comments', () => {
    expect(massFlowFromPower(7180, 143_600)).toBeCloseTo(0.05, 12);
    expect(massFlowFromDisplacement(0.005, 0.8, 7)).toBeCloseTo(0.028, 12);
    expect(ratePerSecond(0.05, 36_230)).toBeCloseTo(1811.5, 9);
    expect(inletVolumeFlow(0.05, 7)).toBeCloseTo(0.00714286, 8);
  });

  it.each([
    ['no heat per kilogram', () => massFlowFromPower(1000, 0)],
    ['volumetric efficiency above 1', () => massFlowFromDisplacement(0.005, 1.1, 7)],
    ['no volumetric efficiency', () => massFlowFromDisplacement(0.005, 0, 7)],
    ['no flow', () => ratePerSecond(0, 1)],
    ['no density', () => inletVolumeFlow(0.05, Number.NaN)],
  ])('refuse: %s', (_what, call) => {
    expect(call).toThrowError(InputError);
  });
});
