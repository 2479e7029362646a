// Vapour-liquid equilibrium by Maxwell's conditions: at one temperature both phases have the same pressure and the same
// Gibbs energy. Newton's method on both densities (and on the temperature, where the pressure is given), started from the
// ancillary curves; where Newton leaves the physical side, a slower search that cannot miss: bisection of the pressure
// between the two spinodals. Leaves out metastable states; nothing here is fitted.

import { findRoot } from '../../../numerics/index.ts';
import { BEFORE_FIRST_STEP, isLastStep } from '../flash/newton.ts';
import type { Refrigerant } from '../types.ts';
import { type Equilibrium, pureEquilibrium } from './equilibrium.ts';
import { lawTemperature, limitingEquilibrium, limitingTemperature } from './near-critical.ts';
import { requireDomePressure, requireDomeTemperature } from './range.ts';
import { spinodalSearch } from './spinodal.ts';

const STEPS = 30;
/** Below this share of the critical pressure no fluid is as close to it as the limiting law. */
const LAW_PRESSURE = 1 - 1e-6;
/** Largest relative change of a density in one step. */
const LARGEST_STEP = 0.3;

/**
 * Saturation pressure and densities at T.
 *     p(ρ′,T) = p(ρ″,T),  g(ρ′,T) = g(ρ″,T)
 * @param fluid        the fluid
 * @param temperature  T [K], from the triple point to below the critical temperature
 * @returns            p [Pa], ρ′ and ρ″ [kg/m³]
 * Accuracy: rounding, except close to the critical temperature, where the densities are worth fewer digits: about 1e-10 at a
 * distance of 1e-4, 1e-6 at 1e-8, where the limiting law of near-critical.ts takes over.
 * @throws OutOfModelError outside the saturation line; ConvergenceError if neither method closes
 * Source: J. C. Maxwell's equal-area rule; Newton form after R. Akasaka (2008), J. Therm. Sci. Technol. 3, 442 (from
 * memory of the source).
 * Worked value: R290 at 273.15 K → 0.47446 MPa.
 */
export function maxwellAtTemperature(fluid: Refrigerant, temperature: number): Equilibrium {
  requireDomeTemperature(fluid, temperature);
  if (temperature > lawTemperature(fluid)) {
    return limitingEquilibrium(fluid, temperature, (close) => maxwellAtTemperature(fluid, close));
  }
  return newtonAtTemperature(fluid, temperature) ?? spinodalSearch(fluid, temperature);
}

function newtonAtTemperature(fluid: Refrigerant, temperature: number): Equilibrium | undefined {
  const { equation, guess, critical, overTemperature } = fluid;
  const near = overTemperature?.holds(temperature) ? overTemperature.at(temperature) : undefined;
  let liquid = near?.liquidDensity ?? guess.liquidDensity(temperature);
  let vapour = near?.vapourDensity ?? guess.vapourDensity(temperature);
  let before = BEFORE_FIRST_STEP;
  for (let step = 0; step < STEPS; step++) {
    equation.residualAt(temperature, liquid);
    const liquidDelta = equation.delta;
    const liquidPush = 1 + equation.residual[1]!;
    const liquidPart = equation.chemicalPart;
    const liquidStiffness = equation.stiffness;
    equation.residualAt(temperature, vapour);
    const vapourDelta = equation.delta;
    const vapourPush = 1 + equation.residual[1]!;
    const vapourStiffness = equation.stiffness;
    if (!(liquidStiffness > 0 && vapourStiffness > 0)) return undefined;
    const pressureGap = liquidDelta * liquidPush - vapourDelta * vapourPush;
    const gibbsGap = liquidPart - equation.chemicalPart;
    const b = (pressureGap / liquidDelta - gibbsGap) / (1 / liquidDelta - 1 / vapourDelta);
    const liquidStep = (b - pressureGap) / (liquidStiffness * liquidDelta);
    const vapourStep = b / (vapourStiffness * vapourDelta);
    const size = Math.max(Math.abs(liquidStep), Math.abs(vapourStep));
    if (!Number.isFinite(size)) return undefined;
    const share = size > LARGEST_STEP ? LARGEST_STEP / size : 1;
    liquid *= 1 + share * liquidStep;
    vapour *= 1 + share * vapourStep;
    if (!(liquid > critical.density && vapour < critical.density)) return undefined;
    if (isLastStep(size, before)) {
      // The pressure to which the step leads: its own error is that of the step, squared.
      const reduced = vapourDelta * vapourPush + share * b;
      const pressure = reduced * equation.reducingDensity * equation.gasConstant * temperature;
      return pureEquilibrium(temperature, pressure, liquid, vapour);
    }
    before = size;
  }
  return undefined;
}

/**
 * Saturation temperature and densities at p.
 *     p(ρ′,T) = p,  p(ρ″,T) = p,  g(ρ′,T) = g(ρ″,T), Newton in T, ρ′, ρ″
 * @param fluid     the fluid
 * @param pressure  p [Pa], from the triple point to below the critical pressure
 * @returns         T [K], ρ′ and ρ″ [kg/m³]
 * Accuracy and errors: as maxwellAtTemperature.
 * Worked value: R134a at 101 325 Pa → 247.08 K.
 */
export function maxwellAtPressure(fluid: Refrigerant, pressure: number): Equilibrium {
  const { critical } = fluid;
  requireDomePressure(fluid, pressure);
  if (pressure > LAW_PRESSURE * critical.pressure) {
    const beginning = maxwellAtTemperature(fluid, lawTemperature(fluid));
    if (pressure > beginning.bubblePressure) {
      const limiting = Math.min(limitingTemperature(fluid, pressure, beginning), below(critical.temperature));
      return atPressure(maxwellAtTemperature(fluid, limiting), pressure);
    }
  }
  return newtonAtPressure(fluid, pressure) ?? searchAtPressure(fluid, pressure);
}

function newtonAtPressure(fluid: Refrigerant, pressure: number): Equilibrium | undefined {
  const { equation, guess, critical, overPressure } = fluid;
  const { gasConstant } = equation;
  const near = overPressure?.holds(pressure) ? overPressure.at(pressure) : undefined;
  let temperature = near?.bubbleTemperature ?? guess.saturationTemperature(pressure);
  let liquid = near?.liquidDensity ?? guess.liquidDensity(temperature);
  let vapour = near?.vapourDensity ?? guess.vapourDensity(temperature);
  let before = BEFORE_FIRST_STEP;
  for (let step = 0; step < STEPS; step++) {
    const { residual } = equation;
    const scale = gasConstant * temperature;
    equation.residualAt(temperature, liquid);
    const liquidGap = (pressure - equation.pressure) / (scale * liquid);
    const liquidPush = equation.thermalPush;
    const liquidPart = equation.chemicalPart;
    const liquidSlope = residual[2]! + residual[4]!;
    const liquidStiffness = equation.stiffness;
    equation.residualAt(temperature, vapour);
    const vapourGap = (pressure - equation.pressure) / (scale * vapour);
    const vapourPush = equation.thermalPush;
    const vapourSlope = residual[2]! + residual[4]!;
    const vapourStiffness = equation.stiffness;
    if (!(liquidStiffness > 0 && vapourStiffness > 0)) return undefined;
    const gap = liquidPart - equation.chemicalPart + liquidGap - vapourGap;
    const warming = gap / (liquidPush - vapourPush + liquidSlope - vapourSlope);
    const liquidStep = (liquidGap - liquidPush * warming) / liquidStiffness;
    const vapourStep = (vapourGap - vapourPush * warming) / vapourStiffness;
    const size = Math.max(Math.abs(warming), Math.abs(liquidStep), Math.abs(vapourStep));
    if (!Number.isFinite(size)) return undefined;
    const share = size > LARGEST_STEP ? LARGEST_STEP / size : 1;
    temperature *= 1 + share * warming;
    liquid *= 1 + share * liquidStep;
    vapour *= 1 + share * vapourStep;
    const physical = temperature < critical.temperature && liquid > critical.density && vapour < critical.density;
    if (!(physical && temperature > 0.9 * fluid.limits.temperatureMin)) return undefined;
    if (isLastStep(size, before)) {
      return pureEquilibrium(temperature, pressure, liquid, vapour);
    }
    before = size;
  }
  return undefined;
}

/** Brent's method in ln p over 1/T, on equilibria found at each temperature: for the few pressures where Newton fails. */
function searchAtPressure(fluid: Refrigerant, pressure: number): Equilibrium {
  const { critical, limits, triplePoint } = fluid;
  const at = (inverse: number) => maxwellAtTemperature(fluid, Math.max(1 / inverse, limits.temperatureMin));
  const gapAt = (inverse: number) => Math.log(at(inverse).bubblePressure / pressure);
  const { root } = findRoot(gapAt, 1 / limits.temperatureMin, 1 / critical.temperature, {
    relativeTolerance: 0,
    residualTolerance: 4e-15,
    valueAtLow: Math.log(triplePoint.pressure / pressure),
    valueAtHigh: Math.log(critical.pressure / pressure),
    what: 'saturation at a pressure',
  });
  return atPressure(at(root), pressure);
}

/** The same equilibrium under the pressure asked for, which it meets to rounding. */
function atPressure(found: Equilibrium, pressure: number): Equilibrium {
  return pureEquilibrium(found.bubbleTemperature, pressure, found.liquidDensity, found.vapourDensity);
}

/** The next smaller number of double precision, to within a factor of two. */
function below(value: number): number {
  return value * (1 - Number.EPSILON);
}
