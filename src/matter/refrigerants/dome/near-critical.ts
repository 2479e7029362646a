// The last three ten-millionths below the critical temperature. There the two phases differ by little more than the rounding
// of the equation, but the equation's own limiting law holds: the densities part as the square root of the distance, their
// mean moves in proportion to it, and the pressure falls along the slope of the critical isochore.

import type { Refrigerant } from '../types.ts';
import { type Equilibrium, pureEquilibrium } from './equilibrium.ts';

/** Relative distance from the critical temperature below which the law is used. */
export const LAW_DISTANCE = 3e-7;
/** Relative distances at which the constants of the law are taken from solved equilibria. */
const FAR = 1e-5;
const NEAR = 2e-6;

/**
 * Saturation pressure and densities close to the critical point.
 *     ρ′, ρ″ = ρc + A Θ ± (B + C Θ) √Θ,  p = pc − (∂p/∂T)_ρc (Tc − T),  Θ = 1 − T/Tc
 * @param fluid        the fluid; its equation must be analytic at the critical point
 * @param temperature  T [K], Θ from 0 to 3e-7
 * @param solve        the equilibrium at a temperature, by Maxwell's conditions: at two temperatures it fixes A, B and C
 * @returns            p [Pa], ρ′ and ρ″ [kg/m³]
 * Accuracy: p to rounding; densities to about 1e-6, as good as the equation allows in double precision there.
 * Source: Landau expansion of an analytic equation, as in any text on critical phenomena.
 * Worked value: R290, Θ = 1e-8 → densities ρc (1 ± 0.00073).
 */
export function limitingEquilibrium(
  fluid: Refrigerant,
  temperature: number,
  solve: (temperature: number) => Equilibrium,
): Equilibrium {
  const { critical } = fluid;
  const distance = Math.max(1 - temperature / critical.temperature, 0);
  const far = solve(critical.temperature * (1 - FAR));
  const near = solve(critical.temperature * (1 - NEAR));
  const drift = ((far.liquidDensity + far.vapourDensity) / 2 - critical.density) / FAR;
  const farSpread = halfGap(far) / Math.sqrt(FAR);
  const nearSpread = halfGap(near) / Math.sqrt(NEAR);
  const spread = nearSpread + ((farSpread - nearSpread) * (distance - NEAR)) / (FAR - NEAR);
  const mean = critical.density + drift * distance;
  const half = spread * Math.sqrt(distance);
  const pressure = critical.pressure - criticalSlope(fluid) * critical.temperature * distance;
  return pureEquilibrium(temperature, pressure, mean + half, mean - half);
}

/** Temperature at which the law gives a pressure just below the critical one. */
export function limitingTemperature(fluid: Refrigerant, pressure: number): number {
  return fluid.critical.temperature - (fluid.critical.pressure - pressure) / criticalSlope(fluid);
}

function halfGap({ liquidDensity, vapourDensity }: Equilibrium): number {
  return (liquidDensity - vapourDensity) / 2;
}

/** (∂p/∂T)_ρ at the critical point [Pa/K], which is also the end slope of the saturation line. */
function criticalSlope({ equation, critical }: Refrigerant): number {
  return equation.residualAt(critical.temperature, critical.density).pressureByTemperature;
}
