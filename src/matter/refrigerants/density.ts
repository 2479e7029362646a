// Density of a single phase from temperature and pressure, on a branch of the isotherm where pressure rises with density:
// Newton's method inside a bracket that shrinks at each step, so that it ends on the branch asked for or says why not.

import { ConvergenceError } from '../../numerics/index.ts';
import type { Equilibrium } from './saturation.ts';
import type { Refrigerant } from './types.ts';

const STEPS = 100;
const LAST_STEP = 1e-9;

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
  for (let step = 0; step < STEPS; step++) {
    equation.residualAt(temperature, density);
    const gap = equation.pressure - pressure;
    if (gap === 0) return density;
    if (gap < 0) below = density;
    else above = density;
    const slope = equation.pressureByDensity;
    let next = density - gap / slope;
    if (!(slope > 0 && next > below && next < above)) {
      // Near a wall of the bracket the root may sit on the wall within rounding.
      if (slope > 0 && Math.abs(gap / slope) <= 1e-13 * density) return density;
      next = below > 0 && above / below > 4 ? Math.sqrt(below * above) : (below + above) / 2;
    }
    const size = Math.abs(next - density);
    density = next;
    // Newton's error squares with each step: below this size the next one would change nothing.
    if (size <= LAST_STEP * density && slope > 0) return density;
    if (above - below <= 2e-16 * above) return density;
  }
  throw new ConvergenceError('density at a pressure', STEPS, [temperature, density], Number.NaN, [below, above]);
}

/** Density at the equilibrium's temperature and another pressure: liquid above the saturation pressure, vapour below. */
export function densityBesideDome(fluid: Refrigerant, equilibrium: Equilibrium, pressure: number): number {
  const { temperature, liquidDensity, vapourDensity } = equilibrium;
  if (pressure > equilibrium.pressure) {
    const stiffness = fluid.equation.residualAt(temperature, liquidDensity).pressureByDensity * liquidDensity;
    // Liquids stiffen with pressure about as a power law with this exponent; only a first guess.
    const start = liquidDensity * (1 + (9 * (pressure - equilibrium.pressure)) / stiffness) ** (1 / 9);
    return densityOnBranch(fluid, temperature, pressure, liquidDensity, fluid.limits.densityMax, start);
  }
  const { gasConstant } = fluid;
  const start = vapourDensityGuess(gasConstant, temperature, pressure, equilibrium.pressure, vapourDensity);
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
