// The last hundred-millionth below the critical temperature. There the two phases differ by little more than the rounding of
// the equation, and no solution by Maxwell's conditions is left; what is known is how they part from the critical point on:
// the densities as a power of the distance, their mean and the pressure in proportion to it. The power is one half for an
// equation that is analytic there, about a third for those with terms made for the critical point (R718, R744, in their way
// R717); it is taken from two solved equilibria, from which the law goes on without a step.

import type { Refrigerant } from '../types.ts';
import { type Equilibrium, pureEquilibrium } from './equilibrium.ts';

/** Relative distance from the critical temperature below which the law is used. */
export const LAW_DISTANCE = 1e-8;
/** The second distance at which the law is taken from a solved equilibrium. */
const FAR = 10 * LAW_DISTANCE;

/**
 * Saturation pressure and densities close to the critical point.
 *     ρ′, ρ″ = ρc + A Θ ± B Θ^β,  p = pc − C Θ,  Θ = 1 − T/Tc
 * @param fluid        the fluid
 * @param temperature  T [K], Θ from 0 to 1e-8
 * @param solve        the equilibrium at a temperature, by Maxwell's conditions; two of them fix A, B, C and β
 * @returns            p [Pa], ρ′ and ρ″ [kg/m³]
 * Accuracy: p to rounding; densities to about 1e-6, as good as the equation allows in double precision there.
 * Source: power laws of the critical point, as in any text on critical phenomena.
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
  const near = solve(lawTemperature(fluid));
  const share = distance / LAW_DISTANCE;
  const exponent = Math.log(halfGap(far) / halfGap(near)) / Math.log(FAR / LAW_DISTANCE);
  const half = halfGap(near) * share ** exponent;
  const mean = critical.density + ((near.liquidDensity + near.vapourDensity) / 2 - critical.density) * share;
  const pressure = critical.pressure - (critical.pressure - near.bubblePressure) * share;
  return pureEquilibrium(temperature, pressure, mean + half, mean - half);
}

/** Temperature [K] at which the law gives a pressure between that of the equilibrium it begins with and the critical one. */
export function limitingTemperature({ critical }: Refrigerant, pressure: number, beginning: Equilibrium): number {
  const share = (critical.pressure - pressure) / (critical.pressure - beginning.bubblePressure);
  return critical.temperature - (critical.temperature - beginning.bubbleTemperature) * share;
}

/** The temperature at which the law begins, the warmest that is solved for. */
export function lawTemperature({ critical }: Refrigerant): number {
  return critical.temperature * (1 - LAW_DISTANCE);
}

function halfGap({ liquidDensity, vapourDensity }: Equilibrium): number {
  return (liquidDensity - vapourDensity) / 2;
}
