// Density of a single phase from temperature and pressure, on a branch of the isotherm where pressure rises with density:
// Newton's method inside a bracket that shrinks at each step, so that it ends on the branch asked for or says why not.

import { ConvergenceError } from '../../../numerics/index.ts';
import type { Equilibrium } from '../dome/equilibrium.ts';
import type { Refrigerant } from '../types.ts';
import { BEFORE_FIRST_STEP, isLastStep } from './newton.ts';

const STEPS = 100;

/**
 * Density ρ with p(ρ,T) = p between two densities.
 *     ρ ← ρ − (p(ρ,T) − p)/(∂p/∂ρ)_T, halved into the bracket where that leaves it
 * @param fluid        the fluid
 * @param temperature  T [K]
 * @param pressure     p [Pa]
 * @param low          lower end of the branch [kg/m³], pressure there ≤ p
 * @param high         upper end of the branch [kg/m³], pressure there ≥ p
 * @param start        first guess [kg/m³]
 * @returns            ρ [kg/m³]
 * Pitfall: the caller chooses the branch; on it the isotherm must rise.
 * @throws ConvergenceError with the last bracket
 */
export function densityOnBranch(
  fluid: Refrigerant,
  temperature: number,
  pressure: number,
  low: number,
  high: number,
  start: number,
): number {
  const { equation } = fluid;
  let below = low;
  let above = high;
  let density = start > below && start < above ? start : (below + above) / 2;
  let before = BEFORE_FIRST_STEP;
  for (let step = 0; step < STEPS; step++) {
    equation.residualAt(temperature, density);
    const gap = equation.pressure - pressure;
    if (gap === 0) return density;
    if (gap < 0) below = density;
    else above = density;
    const slope = equation.pressureByDensity;
    const next = density - gap / slope;
    const size = Math.abs(next / density - 1);
    if (slope > 0 && next > below && next < above) {
      density = next;
      if (isLastStep(size, before)) return density;
      before = size;
    } else {
      // The root may sit on the wall of the bracket within rounding; otherwise Newton went astray.
      if (slope > 0 && size <= 1e-13) return density;
      density = below > 0 && above / below > 4 ? Math.sqrt(below * above) : (below + above) / 2;
      before = BEFORE_FIRST_STEP;
    }
    // Neighbouring numbers: no double lies between.
    if (above - below <= 4.5e-16 * above) return density;
  }
  throw new ConvergenceError('density at a pressure', STEPS, [temperature, density], Number.NaN, [below, above]);
}

/** Density at the equilibrium's temperature and another pressure: liquid above the bubble pressure, vapour below the dew pressure. */
export function densityBesideDome(fluid: Refrigerant, equilibrium: Equilibrium, pressure: number): number {
  const { bubbleTemperature: temperature, liquidDensity, vapourDensity, bubblePressure, dewPressure } = equilibrium;
  if (pressure > bubblePressure) {
    const stiffness = fluid.equation.residualAt(temperature, liquidDensity).pressureByDensity * liquidDensity;
    // Liquids stiffen with pressure about as a power law with this exponent; only a first guess.
    const start = liquidDensity * (1 + (9 * (pressure - bubblePressure)) / stiffness) ** (1 / 9);
    return densityOnBranch(fluid, temperature, pressure, liquidDensity, fluid.limits.densityMax, start);
  }
  // Only of a blend, and only from the critical pressure on, which its bubble line passes just below the critical temperature.
  if (pressure > dewPressure) {
    const middle = (vapourDensity + liquidDensity) / 2;
    return densityOnBranch(fluid, temperature, pressure, vapourDensity, liquidDensity, middle);
  }
  const { gasConstant } = fluid;
  const start = vapourDensityGuess(gasConstant, temperature, pressure, dewPressure, vapourDensity);
  return densityOnBranch(fluid, temperature, pressure, 0, vapourDensity, start);
}

/** First guess for a gas: the compressibility factor falls with pressure from 1 to its value at saturation. */
function vapourDensityGuess(
  gasConstant: number,
  temperature: number,
  pressure: number,
  saturationPressure: number,
  saturationDensity: number,
): number {
  const saturated = saturationPressure / (saturationDensity * gasConstant * temperature);
  const factor = 1 + (saturated - 1) * Math.min(pressure / saturationPressure, 1);
  return pressure / (factor * gasConstant * temperature);
}
