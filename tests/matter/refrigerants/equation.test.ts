// The equation of state itself: every kind of term against the values of a general-purpose reference library (CoolProp
// 8.0.0, exported by data/refrigerants/export.py), the release on water, the check table of the propane paper, and the
// derivatives against differences of the function.

import { describe, expect, test } from 'vitest';
import { type EquationData, HelmholtzEquation } from '../../../src/matter/refrigerants/equation/equation.ts';
import { refrigerant, refrigerantNames } from '../../../src/matter/refrigerants/index.ts';
import terms from '../../reference/refrigerants/terms.json';
import { relative } from './deviation.ts';

const fluids = terms.fluids as unknown as readonly (EquationData & {
  readonly name: string;
  readonly rows: readonly {
    readonly temperature: number;
    readonly delta: number;
    readonly tau: number;
    readonly residual: readonly number[];
    readonly ideal: readonly number[];
  }[];
})[];

describe('kinds of terms', () => {
  test('all kinds the coefficient files may hold are among the reference fluids', () => {
    const residual = new Set(fluids.flatMap((fluid) => fluid.residual.map((term) => term.type)));
    const ideal = new Set(fluids.flatMap((fluid) => fluid.ideal.map((term) => term.type)));
    expect([...residual].sort()).toEqual(['doubleExponential', 'gaussian', 'nonAnalytic', 'power', 'secondGaussian']);
    expect([...ideal].sort()).toEqual([
      'constantHeatCapacity',
      'lead',
      'logTau',
      'offset',
      'planckEinstein',
      'polynomialHeatCapacity',
      'power',
    ]);
  });

  // Reference: CoolProp 8.0.0. The sums hold terms that cancel; 1e-11 of the largest derivative at the point is rounding.
  test.each(fluids)('$name: both parts and all derivatives', (fluid) => {
    const equation = new HelmholtzEquation(fluid);
    const density = fluid.reducing.molarDensity * fluid.molarMass;
    expect(fluid.rows.length).toBeGreaterThan(30);
    for (const { temperature, delta, tau, residual, ideal } of fluid.rows) {
      equation.at(temperature, delta * density);
      const [phi, d, t, dd, dt, tt] = residual as [number, number, number, number, number, number];
      const expected = [phi, d * delta, t * tau, dd * delta ** 2, dt * delta * tau, tt * tau ** 2];
      const scale = Math.max(1, ...expected.map(Math.abs));
      expected.forEach((value, k) => {
        expect(Math.abs(equation.residual[k]! - value) / scale, `${temperature} K, δ ${delta}, ${k}`).toBeLessThan(
          1e-11,
        );
      });
      const [phi0, t0, tt0] = ideal as [number, number, number];
      const expectedIdeal = [phi0 - Math.log(delta), t0 * tau, tt0 * tau ** 2];
      expectedIdeal.forEach((value, k) => {
        expect(Math.abs(equation.ideal[k]! - value) / Math.max(1, Math.abs(value)), `ideal ${k}`).toBeLessThan(1e-12);
      });
    }
  });

  // Reference: IAPWS R6-95(2018), Table 6, 500 K and 838.025 kg/m³; printed to nine digits.
  test('water: check values of the release', () => {
    const equation = new HelmholtzEquation(fluids.find(({ name }) => name === 'Water')!);
    equation.at(500, 838.025);
    const delta = 838.025 / 322;
    const tau = 647.096 / 500;
    const table = [-3.42693206, -0.36436665, -5.81403435, 0.856063701, -1.12176915, -2.23440737];
    const factors = [1, delta, tau, delta ** 2, delta * tau, tau ** 2];
    table.forEach((value, k) => {
      expect(equation.residual[k]! / factors[k]!).toBeCloseTo(value, 8);
    });
    const ideal = [2.04797733 - Math.log(delta), 9.04611106 * tau, -1.93249185 * tau ** 2];
    // The library shifts the zero of the ideal part by one constant in energy and entropy; the curvature has no zero.
    expect(equation.ideal[2]!).toBeCloseTo(ideal[2]!, 7);
  });
});

// Reference: E. W. Lemmon, M. O. McLinden, W. Wagner (2009), J. Chem. Eng. Data 54, 3141, table of values for checking
// computer programs: T [K], ρ [mol/dm³] → p [MPa], c_v, c_p [J/(mol K)], w [m/s]. Printed to eight digits.
describe('R290: check values of the paper', () => {
  test.each([
    [200, 14, 2.3795138, 61.078424, 93.475362, 1381.9552],
    [300, 12, 19.053797, 73.972542, 108.61529, 958.4052],
    [300, 0.4, 0.84694991, 69.021875, 85.753997, 221.88959],
    [400, 5, 6.646284, 97.017439, 271.07044, 194.65847],
    [369.9, 5, 4.2519399, 117.71621, 753625.0, 130.898],
  ])('%d K, %d mol/dm³', (temperature, molarDensity, pressure, cv, cp, soundSpeed) => {
    const fluid = refrigerant('R290');
    const { equation, molarMass } = fluid;
    equation.at(temperature, molarDensity * 1e3 * molarMass);
    expect(relative(equation.pressure, pressure * 1e6)).toBeLessThan(1e-7);
    expect(relative(equation.cv * molarMass, cv)).toBeLessThan(1e-7);
    expect(relative(equation.cp * molarMass, cp)).toBeLessThan(1e-7);
    expect(relative(equation.soundSpeed, soundSpeed)).toBeLessThan(1e-7);
  });
});

describe('laws', () => {
  // Law: slopes are the limits of differences; a central difference of step 1e-5 is good to about 1e-8 of the scale.
  test.each(refrigerantNames)('%s: slopes against differences', (name) => {
    const { equation, critical } = refrigerant(name);
    for (const ratio of [0.6, 0.8, 1.2]) {
      for (const delta of [0.01, 0.3, 2.2]) {
        const temperature = ratio * critical.temperature;
        const density = delta * critical.density;
        const step = 1e-5;
        const difference = (property: 'pressure' | 'enthalpy' | 'entropy', by: 'density' | 'temperature') => {
          const [dT, dD] = by === 'density' ? [0, step] : [step, 0];
          const above = equation.at(temperature * (1 + dT), density * (1 + dD))[property];
          const below = equation.at(temperature * (1 - dT), density * (1 - dD))[property];
          return (above - below) / (2 * step * (by === 'density' ? density : temperature));
        };
        const expected = [
          difference('pressure', 'density'),
          difference('pressure', 'temperature'),
          difference('enthalpy', 'density'),
          difference('enthalpy', 'temperature'),
          difference('entropy', 'density'),
          temperature * difference('entropy', 'temperature'),
        ];
        equation.at(temperature, density);
        const slopes = [
          equation.pressureByDensity,
          equation.pressureByTemperature,
          equation.enthalpyByDensity,
          equation.enthalpyByTemperature,
          equation.entropyByDensity,
          equation.cv,
        ];
        slopes.forEach((slope, k) => {
          expect(relative(slope, expected[k]!), `${name} ${ratio} ${delta} ${k}`).toBeLessThan(2e-6);
        });
      }
    }
  });

  // Law: no value depends on what was evaluated before (what depends on τ alone is kept between evaluations).
  test('evaluation has no memory', () => {
    const { equation } = refrigerant('R22');
    const first = [...equation.at(310, 900).residual, ...equation.ideal, equation.enthalpy];
    equation.residualAt(250, 4);
    equation.residualAt(310, 4);
    equation.at(410, 40);
    expect([...equation.at(310, 900).residual, ...equation.ideal, equation.enthalpy]).toEqual(first);
  });

  // Law: a thin gas obeys p = ρ R T.
  test.each(refrigerantNames)('%s: ideal gas at low density', (name) => {
    const { equation, gasConstant } = refrigerant(name);
    equation.at(350, 1e-8);
    expect(relative(equation.pressure, 1e-8 * gasConstant * 350)).toBeLessThan(1e-8);
    expect(relative(equation.cp - equation.cv, gasConstant)).toBeLessThan(1e-7);
  });
});
