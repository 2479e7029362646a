// The phase equilibrium of pure fluids: Maxwell's conditions themselves, the fast and the sure method against each other, the
// inverse, the Clausius-Clapeyron equation, the way to the critical point; and of all fluids the expansions that solvers
// start from. Blends have their own file.

import { describe, expect, test } from 'vitest';
import { equilibriumAtPressure, equilibriumAtTemperature } from '../../../src/matter/refrigerants/dome/dome.ts';
import { spinodalSearch } from '../../../src/matter/refrigerants/dome/spinodal.ts';
import {
  refrigerant,
  refrigerantNames,
  saturationAtPressure,
  saturationAtTemperature,
  surfaceTensionAt,
} from '../../../src/matter/refrigerants/index.ts';
import { relative } from './deviation.ts';

const fractions = [0, 0.01, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 0.95, 0.98, 0.99, 0.995, 0.999, 0.9995];

const pureNames = refrigerantNames.filter((name) => refrigerant(name).bubbleAndDew === undefined);

describe.each(pureNames)('%s', (name) => {
  const fluid = refrigerant(name);
  const { critical, limits, equation } = fluid;
  const temperatures = [
    ...fractions.map((share) => limits.temperatureMin + share * (critical.temperature - limits.temperatureMin)),
    0.9999 * critical.temperature,
  ];

  // Law (Maxwell): equal pressure and equal Gibbs energy g = h − T s on both sides.
  test('both sides have one pressure and one Gibbs energy', () => {
    for (const temperature of temperatures) {
      const { liquidDensity, vapourDensity, bubblePressure: pressure } = equilibriumAtTemperature(fluid, temperature);
      equation.at(temperature, liquidDensity);
      const stiff = equation.pressureByDensity * liquidDensity;
      const gibbs = equation.enthalpy - temperature * equation.entropy;
      expect(Math.abs(equation.pressure - pressure) / Math.max(pressure, stiff)).toBeLessThan(1e-12);
      equation.at(temperature, vapourDensity);
      expect(relative(equation.pressure, pressure)).toBeLessThan(1e-12);
      const gap = equation.enthalpy - temperature * equation.entropy - gibbs;
      expect(Math.abs(gap) / (fluid.gasConstant * temperature)).toBeLessThan(2e-11);
    }
  });

  test('the fast method gives what the sure one gives', () => {
    for (const temperature of temperatures.slice(2)) {
      const fast = equilibriumAtTemperature(fluid, temperature);
      const sure = spinodalSearch(fluid, temperature);
      const isClose = temperature > 0.98 * critical.temperature;
      // Bisection of the Gibbs energies stops at rounding of the pressure; densities follow with the compressibility.
      expect(relative(fast.bubblePressure, sure.bubblePressure), `p at ${temperature} K`).toBeLessThan(1e-10);
      const tolerance = isClose ? 1e-5 : 1e-10;
      expect(relative(fast.liquidDensity, sure.liquidDensity), `ρ′ at ${temperature} K`).toBeLessThan(tolerance);
      expect(relative(fast.vapourDensity, sure.vapourDensity), `ρ″ at ${temperature} K`).toBeLessThan(tolerance);
    }
  });

  test('temperature to pressure and back', () => {
    for (const temperature of temperatures) {
      const { bubblePressure: pressure } = equilibriumAtTemperature(fluid, temperature);
      expect(relative(equilibriumAtPressure(fluid, pressure).bubbleTemperature, temperature)).toBeLessThan(1e-12);
    }
  });

  // Law (Clausius-Clapeyron): dp/dT = (s″ − s′)/(v″ − v′); the slope by a central difference of 1e-5.
  test('Clausius-Clapeyron', () => {
    for (const temperature of temperatures.slice(1, -5)) {
      const step = 1e-5 * temperature;
      const above = equilibriumAtTemperature(fluid, temperature + step).bubblePressure;
      const below = equilibriumAtTemperature(fluid, temperature - step).bubblePressure;
      const { liquid, vapour } = saturationAtTemperature(fluid, temperature);
      const slope = (vapour.entropy - liquid.entropy) / (1 / vapour.density - 1 / liquid.density);
      expect(relative((above - below) / (2 * step), slope), `${temperature} K`).toBeLessThan(1e-7);
    }
  });

  // Law (Maxwell), also for equations with terms made for the critical point, which are not analytic there (R718, R744).
  test('Maxwell’s conditions to a hundred-millionth below the critical temperature', () => {
    for (let power = -4; power >= -8; power -= 0.05) {
      const distance = 10 ** power;
      const { bubbleTemperature, bubblePressure, liquidDensity, vapourDensity } = equilibriumAtTemperature(
        fluid,
        critical.temperature * (1 - distance),
      );
      equation.residualAt(bubbleTemperature, liquidDensity);
      const { pressure, chemicalPart } = equation;
      expect(relative(pressure, bubblePressure), `p at ${distance}`).toBeLessThan(1e-12);
      equation.residualAt(bubbleTemperature, vapourDensity);
      expect(relative(equation.pressure, bubblePressure), `p at ${distance}`).toBeLessThan(1e-12);
      expect(Math.abs(equation.chemicalPart - chemicalPart), `g at ${distance}`).toBeLessThan(1e-12);
    }
  });

  test('everything narrows towards the critical point without a step and meets there', () => {
    let gapBefore = Number.POSITIVE_INFINITY;
    let pressureBefore = 0;
    for (let power = -2; power >= -13; power -= 0.02) {
      const temperature = critical.temperature * (1 - 10 ** power);
      const { liquidDensity, vapourDensity, bubblePressure: pressure } = equilibriumAtTemperature(fluid, temperature);
      const gap = liquidDensity - vapourDensity;
      expect(gap, `gap at ${power}`).toBeGreaterThan(0);
      expect(gap, `gap at ${power}`).toBeLessThan(gapBefore);
      // A step is a twentieth of the distance; the densities part by its square root or less.
      if (power < -2) expect(gap / gapBefore, `gap at ${power}`).toBeGreaterThan(0.95);
      expect(pressure).toBeLessThan(critical.pressure);
      expect(pressure).toBeGreaterThanOrEqual(pressureBefore);
      expect(relative(equilibriumAtPressure(fluid, pressure).bubbleTemperature, temperature)).toBeLessThan(1e-11);
      gapBefore = gap;
      pressureBefore = pressure;
    }
    expect(gapBefore / critical.density).toBeLessThan(0.005);
  });

  test('the ends of the line', () => {
    const lowest = saturationAtTemperature(fluid, limits.temperatureMin);
    expect(lowest.vapour.pressure).toBe(fluid.triplePoint.pressure);
    expect(saturationAtPressure(fluid, fluid.triplePoint.pressure).vapour.temperature).toBeCloseTo(
      limits.temperatureMin,
      9,
    );
    const beyond = [
      () => saturationAtTemperature(fluid, critical.temperature),
      () => saturationAtTemperature(fluid, limits.temperatureMin * (1 - 1e-12)),
      () => saturationAtPressure(fluid, critical.pressure),
      () => saturationAtPressure(fluid, fluid.triplePoint.pressure * (1 - 1e-9)),
    ];
    for (const attempt of beyond) expect(attempt).toThrow(expect.objectContaining({ code: 'noSaturation' }));
  });

  test('surface tension falls with temperature to nothing', () => {
    let before = Number.POSITIVE_INFINITY;
    for (const temperature of temperatures) {
      const tension = surfaceTensionAt(fluid, temperature);
      // The fit of R12 meets 0 a quarter of a kelvin before the critical point.
      if (temperature < critical.temperature - 0.3) expect(tension).toBeGreaterThan(0);
      expect(tension).toBeGreaterThanOrEqual(0);
      expect(tension === 0 || tension < before).toBe(true);
      before = tension;
    }
    // Some fits end at another critical temperature than the equation's (R245fa 0.15 K higher): there is no surface beyond it.
    for (const beyond of [0, 0.1]) expect(surfaceTensionAt(fluid, critical.temperature + beyond)).toBe(0);
  });
});

// The expansions start solvers and decide phases clear of the line: they must be as good as they say. Law: the same values as
// the solved dome, between the points they were made from.
describe.each(refrigerantNames)('%s, expansions of the line', (name) => {
  const fluid = refrigerant(name);
  const { critical, limits, equation, gasConstant, overTemperature, overPressure } = fluid;
  const energy = gasConstant * critical.temperature;
  const shares = Array.from({ length: 401 }, (_, k) => k / 400);
  const far = shares.map(
    (share) => limits.temperatureMin + share * (0.999 * critical.temperature - limits.temperatureMin),
  );
  const near = shares.map((share) => critical.temperature * (1 - 1e-3 * 1e-2 ** share));
  // Closer than 1e-3 to the critical temperature Maxwell's own densities lose digits as the distance shrinks.
  const toleranceAt = (temperature: number) => Math.max(1e-9, 3e-12 / (1 - temperature / critical.temperature));

  test('over temperature', () => {
    for (const temperature of [...far, ...near].filter((candidate) => overTemperature!.holds(candidate))) {
      const solved = equilibriumAtTemperature(fluid, temperature);
      const line = overTemperature!.at(temperature);
      const tolerance = toleranceAt(temperature);
      expect(relative(line.bubblePressure, solved.bubblePressure), `${temperature} K`).toBeLessThan(1e-9);
      expect(relative(line.dewPressure, solved.dewPressure), `${temperature} K`).toBeLessThan(1e-9);
      expect(relative(line.liquidDensity, solved.liquidDensity), `${temperature} K`).toBeLessThan(tolerance);
      expect(relative(line.vapourDensity, solved.vapourDensity), `${temperature} K`).toBeLessThan(tolerance);
    }
  });

  test('over pressure, with enthalpy and entropy', () => {
    const pressures = [...far, ...near].map((temperature) => fluid.guess.saturationPressure(temperature));
    const held = pressures.filter(
      (pressure) => overPressure!.holds(pressure) && pressure >= fluid.triplePoint.pressure,
    );
    expect(held.length).toBeGreaterThan(300);
    for (const pressure of held) {
      const solved = equilibriumAtPressure(fluid, pressure);
      const line = overPressure!.at(pressure);
      const tolerance = toleranceAt(solved.bubbleTemperature);
      expect(relative(line.bubbleTemperature, solved.bubbleTemperature), `${pressure} Pa`).toBeLessThan(1e-9);
      expect(relative(line.dewTemperature, solved.dewTemperature), `${pressure} Pa`).toBeLessThan(1e-9);
      expect(relative(line.liquidDensity, solved.liquidDensity), `${pressure} Pa`).toBeLessThan(tolerance);
      expect(relative(line.vapourDensity, solved.vapourDensity), `${pressure} Pa`).toBeLessThan(tolerance);
      equation.at(solved.bubbleTemperature, solved.liquidDensity);
      expect(Math.abs(line.liquidEnthalpy - equation.enthalpy) / energy, `${pressure} Pa`).toBeLessThan(tolerance);
      expect(Math.abs(line.liquidEntropy - equation.entropy) / gasConstant, `${pressure} Pa`).toBeLessThan(tolerance);
      equation.at(solved.dewTemperature, solved.vapourDensity);
      expect(Math.abs(line.vapourEnthalpy - equation.enthalpy) / energy, `${pressure} Pa`).toBeLessThan(tolerance);
      expect(Math.abs(line.vapourEntropy - equation.entropy) / gasConstant, `${pressure} Pa`).toBeLessThan(tolerance);
    }
  });
});
