// Conductivity near the critical point: heat is carried by fluctuations of density there, the further they reach the more.
// The simplified form of the crossover theory of Olchowy and Sengers.

import type { TransportPoint } from './point.ts';
import { stiffnessElsewhere } from './point.ts';
import type { OlchowySengersData } from './transport-data.ts';

/** k [J/K] of CODATA 2010, used throughout the correlations that have this part. */
const BOLTZMANN = 1.3806488e-23;
/** Universal exponents ν and γ of the correlation length and of the susceptibility. */
export const LENGTH_EXPONENT = 0.63;
export const SUSCEPTIBILITY_EXPONENT = 1.239;
/** An excess of susceptibility below this is rounding. */
const SMALLEST_EXCESS = 10 * Number.EPSILON;

/**
 * How far fluctuations of density reach, correlation length ξ [m].
 *     ξ = ξ0 (Δχ/Γ)^(ν/γ)
 * Δχ excess of the reduced susceptibility over that at the reference temperature, Γ [-], ξ0 [m].
 */
export function correlationLengthOf(amplitude: number, excess: number, susceptibility: number): number {
  return amplitude * (excess / susceptibility) ** (LENGTH_EXPONENT / SUSCEPTIBILITY_EXPONENT);
}

/**
 * Excess Δχ of the reduced susceptibility.
 *     Δχ = p_c δ / (ρ_r R T) · (1/K − 1/K_ref)
 * p_c [Pa], ρ_r [kg/m³], R [J/(kg K)], T [K]; K = (∂p/∂ρ)_T/(R T) at the state, K_ref at the reference temperature and the
 * same density.
 */
export function susceptibilityExcessOf(
  criticalPressure: number,
  delta: number,
  reducingDensity: number,
  gasConstant: number,
  temperature: number,
  stiffness: number,
  referenceStiffness: number,
): number {
  const scale = (criticalPressure * delta) / (reducingDensity * gasConstant * temperature);
  return scale * (1 / stiffness - 1 / referenceStiffness);
}

/**
 * Ω − Ω0 [-], how much of the fluctuations carries heat, by y = q_D ξ and κ = c_p/c_v.
 *     Ω = 2/π ((1 − 1/κ) atan y + y/κ);  Ω0 = 2/π (1 − exp(−1/(1/y + y²/(3 δ²))))
 */
export function crossoverOf(reach: number, heatCapacityRatio: number, delta: number): number {
  const carrying = (1 - 1 / heatCapacityRatio) * Math.atan(reach) + reach / heatCapacityRatio;
  const background = -Math.expm1(-1 / (1 / reach + (reach * reach) / (3 * delta * delta)));
  return (2 / Math.PI) * (carrying - background);
}

/**
 * What thermal conductivity gains near the critical point.
 *     Δλ = R0 k T ρ c_p / (6 π η ξ) · (Ω − Ω0)
 * T [K], ρ [kg/m³], c_p [J/(kg K)], η [Pa s], ξ [m], amplitude R0 and Ω − Ω0 [-] → [W/(m K)].
 */
export function criticalConductivityOf(
  amplitude: number,
  temperature: number,
  density: number,
  cp: number,
  viscosity: number,
  correlationLength: number,
  crossover: number,
): number {
  const mobility = (amplitude * BOLTZMANN * temperature) / (6 * Math.PI * viscosity * correlationLength);
  return mobility * density * cp * crossover;
}

/**
 * Δλ [W/(m K)] of a state of known viscosity; 0 where the susceptibility is no larger than at the reference temperature; NaN
 * where c_p has no limit.
 * Source: G. A. Olchowy, J. V. Sengers (1989), Int. J. Thermophys. 10, 417; parameters from each fluid's source.
 * Worked value: R134a at 320 K and 300 mol/m³ → 0.1092e-3 W/(m K).
 */
export function olchowySengers(point: TransportPoint, viscosity: number, data: OlchowySengersData): number {
  const { equation, temperature, density, cp, cv, stiffness } = point;
  const delta = density / equation.reducingDensity;
  const excess = susceptibilityExcessOf(
    data.criticalPressure,
    delta,
    equation.reducingDensity,
    equation.gasConstant,
    temperature,
    stiffness,
    stiffnessElsewhere(point, data.referenceTemperature),
  );
  if (excess < SMALLEST_EXCESS) return 0;
  const length = correlationLengthOf(data.correlationLength, excess, data.susceptibility);
  const crossover = crossoverOf(data.cutoff * length, cp / cv, delta);
  return criticalConductivityOf(data.amplitude, temperature, density, cp, viscosity, length, crossover);
}
