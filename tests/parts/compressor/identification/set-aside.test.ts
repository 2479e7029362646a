// A machine of another structure than the model's: volumetric efficiency on a straight line over the pressure ratio, down to 0.16 at
// the coldest and hottest point, overall efficiency on a parabola over its logarithm. There no machine of the model's kind meets it.
// Source of the flows and powers: CoolProp 8.0.0 states of R134a; gas and liquid at 32.2 °C, 7.4 cm³, 48.5 strokes a second,
// η_v = 0.80 − 0.028 r, η_o = 0.52 − 0.07 ln²(r/6), powers with a scatter of 1 %.

import { describe, expect, test } from 'vitest';
import { refrigerant, tabulated } from '../../../../src/matter/refrigerants/index.ts';
import { type EvidencePoint, identifyMachine } from '../../../../src/parts/compressor/index.ts';
import { about, described, pointAt, type Ranges } from './descriptions.ts';

/** Evaporating, condensing [°C], flow [kg/h], power [W]. */
const rows = [
  [-35, 40, 1.285, 58.5],
  [-30, 40, 2.059, 78.3],
  [-25, 40, 3.001, 97.9],
  [-20, 40, 4.138, 120.0],
  [-15, 40, 5.501, 136.7],
  [-35, 45, 1.074, 53.0],
  [-30, 45, 1.847, 77.7],
  [-25, 45, 2.788, 99.1],
  [-20, 45, 3.924, 119.7],
  [-15, 45, 5.286, 142.4],
  [-35, 50, 0.842, 46.0],
  [-30, 50, 1.614, 73.0],
  [-25, 50, 2.554, 98.8],
  [-20, 50, 3.689, 122.4],
  [-15, 50, 5.049, 145.6],
  [-35, 55, 0.586, 35.7],
  [-30, 55, 1.358, 67.3],
  [-25, 55, 2.297, 96.2],
  [-20, 55, 3.43, 123.4],
  [-15, 55, 4.788, 147.4],
] as const;

const r134a = tabulated(refrigerant('R134a'));
const points: readonly EvidencePoint[] = rows.map(([evaporating, condensing, flow, power], index) =>
  pointAt(index, evaporating, condensing, { massFlow: about(flow / 3600, 0.01), power: about(power, 0.02) }),
);
/** Of any machine for R134a; plausible, no source. */
const ranges: Ranges = {
  displacement: [7.4e-6, 7.4e-6, 7.4e-6],
  clearanceRatio: [0.005, 0.018, 0.038],
  suctionVelocity: [15, 41, 75],
  dischargeVelocity: [60, 176, 400],
  suctionHeatingUnits: [0.05, 0.48, 1.3],
  dischargeCoolingUnits: [0.3, 0.6, 1.2],
  leakageRatio: [2e-6, 1.7e-5, 2e-4],
  proportionalLoss: [0.04, 0.08, 0.14],
  frictionPressure: [20e3, 48e3, 97e3],
  motorEfficiency: [0.58, 0.72, 0.84],
  motorPressure: [2e5, 4.8e5, 9.1e5],
  slip: [0.017, 0.025, 0.033],
  powerFactor: [0.5, 0.68, 0.96],
  shellConductance: [0.55, 1.25, 3.3],
};
const description = (given: readonly EvidencePoint[]) => described({ fluid: r134a, ranges, points: given });

describe('reference: a table down to where hardly anything flows', () => {
  test('the point that fits no machine with the others is set aside and named; the others are met', () => {
    const { residuals, setAside } = identifyMachine(description(points));
    expect(setAside.map(({ path }) => path)).toEqual(['machine.compressor.ratings.15']);
    expect(setAside[0]!.volumetricEfficiency).toBeCloseTo(0.17, 1);
    const worst = Math.max(...residuals.map(({ deviation }) => Math.abs(deviation)));
    expect(worst).toBeLessThan(0.12);
    expect(residuals).toHaveLength(2 * (rows.length - 1));
  });

  test('points that fill more of the stroke are never left out, however far off one of them is', () => {
    const warmer = points.filter((_, index) => rows[index]![0] >= -20);
    const wrong = warmer.map((point, index) =>
      index === 2 ? { ...point, given: { ...point.given, massFlow: about(4.7 / 3600, 0.01) } } : point,
    );
    const { residuals, setAside } = identifyMachine(description(wrong));
    expect(setAside).toEqual([]);
    const worst = residuals.reduce((most, each) => (Math.abs(each.score) > Math.abs(most.score) ? each : most));
    expect(worst.path).toBe(`${wrong[2]!.path}.massFlow`);
  });
});
