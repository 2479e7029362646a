// Viscosity and thermal conductivity of ordinary water: the international formulations IAPWS R12-08 and R15-11, with their
// critical parts as for scientific use. Letters with a bar in the releases are reduced quantities here.

import { LENGTH_EXPONENT, SUSCEPTIBILITY_EXPONENT } from './critical-enhancement.ts';
import { stiffnessElsewhere, type TransportPoint } from './point.ts';
import { polynomial } from './power-sum.ts';

/** Reference values of both releases [K, kg/m³, Pa]. */
const TEMPERATURE = 647.096;
const DENSITY = 322;
const PRESSURE = 22.064e6;
const REFERENCE_TEMPERATURE = 1.5 * TEMPERATURE;
/** ξ0 [nm] and Γ0 of the correlation length. */
const CORRELATION_LENGTH = 0.13;
const SUSCEPTIBILITY = 0.06;

/** H_ij of R12-08, Table 2: a row per power of 1/T − 1, in it one factor per power of ρ − 1. */
const viscosityFactors = [
  [0.520094, 0.222531, -0.281378, 0.161913, -0.0325372],
  [0.0850895, 0.999115, -0.906851, 0.257399],
  [-1.08374, 1.88797, -0.772479],
  [-0.289555, 1.26613, -0.489837, 0, 0.0698452, 0, -0.00435673],
  [0, 0, -0.25704, 0, 0, 0.00872102],
  [0, 0.120573, 0, 0, 0, 0, -0.000593264],
] as const;

/** L_ij of R15-11, Table 2, in the same order. */
const conductivityFactors = [
  [1.60397357, -0.646013523, 0.111443906, 0.102997357, -0.0504123634, 0.00609859258],
  [2.33771842, -2.78843778, 1.53616167, -0.463045512, 0.0832827019, -0.00719201245],
  [2.19650529, -4.54580785, 3.55777244, -1.40944978, 0.275418278, -0.0205938816],
  [-1.21051378, 1.60812989, -0.621178141, 0.0716373224],
  [-2.720337, 4.57586331, -3.18369245, 1.1168348, -0.19268305, 0.012913842],
] as const;

/** exp(ρ Σ_i (1/T − 1)^i Σ_j f_ij (ρ − 1)^j), the second factor of both properties. */
function densityFactor(factors: readonly (readonly number[])[], temperature: number, density: number): number {
  const x = 1 / temperature - 1;
  let sum = 0;
  for (let i = factors.length - 1; i >= 0; i--) sum = sum * x + polynomial(factors[i]!, density - 1);
  return Math.exp(density * sum);
}

/** Correlation length ξ [nm], R12-08 equation 20 and R15-11 equation 23; 0 far from the critical point. */
function correlationLength(point: TransportPoint): number {
  const { equation, temperature, density, stiffness } = point;
  const scale = (PRESSURE * density) / (DENSITY * DENSITY * equation.gasConstant * temperature);
  const excess = scale * (1 / stiffness - 1 / stiffnessElsewhere(point, REFERENCE_TEMPERATURE));
  if (excess <= 0) return 0;
  return CORRELATION_LENGTH * (excess / SUSCEPTIBILITY) ** (LENGTH_EXPONENT / SUSCEPTIBILITY_EXPONENT);
}

/** Below this correlation length [nm] a series takes the place of the closed form, which loses its digits there. */
const SHORT_LENGTH = 0.3817016416;
/** 1/q_C and 1/q_D of the viscosity [nm]. */
const VISCOSITY_CUTOFFS = { conductivity: 1.9, viscosity: 1.1 } as const;

/** Y of R12-08, equations 14 to 18, from the correlation length ξ [nm]. */
function viscosityCrossover(length: number): number {
  const c = length / VISCOSITY_CUTOFFS.conductivity;
  const d = length / VISCOSITY_CUTOFFS.viscosity;
  if (length <= SHORT_LENGTH) return 0.2 * c * d ** 5 * (1 - c + c * c - (765 / 504) * d * d);
  const psi = Math.acos(1 / Math.sqrt(1 + d * d));
  const w = Math.sqrt(Math.abs((c - 1) / (c + 1))) * Math.tan(psi / 2);
  const l = c > 1 ? Math.log((1 + w) / (1 - w)) : 2 * Math.atan(Math.abs(w));
  const squared = c * c;
  return (
    Math.sin(3 * psi) / 12 -
    Math.sin(2 * psi) / (4 * c) +
    ((1 - 1.25 * squared) * Math.sin(psi)) / squared -
    ((1 - 1.5 * squared) * psi - Math.abs(squared - 1) ** 1.5 * l) / (squared * c)
  );
}

/**
 * Viscosity η of water.
 *     η = 1e-6 η₀(T) η₁(T, ρ) η₂(ξ)
 * @param point  state; reduced with 647.096 K and 322 kg/m³
 * @returns      η [Pa s]; NaN within rounding of the critical point
 * Validity: liquid and vapour to 900 °C, up to 1000 MPa. Accuracy: 1 % in the liquid, 0.17 % at ordinary pressure to 373 K.
 * Source: IAPWS R12-08, equations 10 to 21.
 * Worked value: 298.15 K, 998 kg/m³ → 889.735100e-6 Pa s (Table 4).
 */
export function viscosityOfWater(point: TransportPoint): number {
  const temperature = point.temperature / TEMPERATURE;
  const inverse = 1 / temperature;
  const dilute =
    (100 * Math.sqrt(temperature)) / (1.67752 + inverse * (2.20462 + inverse * (0.6366564 - inverse * 0.241605)));
  const dense = densityFactor(viscosityFactors, temperature, point.density / DENSITY);
  return 1e-6 * dilute * dense * Math.exp(0.068 * viscosityCrossover(correlationLength(point)));
}

/** Below this y the critical part of the conductivity is nothing, R15-11. */
const SMALLEST_REACH = 1.2e-7;
const CONDUCTIVITY_CUTOFF = 0.4;
const CONDUCTIVITY_AMPLITUDE = 177.8514;

/** λ₂ of R15-11, equations 18 to 20 [mW/(m K)]. */
function criticalPart(point: TransportPoint, viscosity: number): number {
  const { equation, cp, cv } = point;
  const density = point.density / DENSITY;
  const reach = correlationLength(point) / CONDUCTIVITY_CUTOFF;
  if (reach < SMALLEST_REACH) return 0;
  const share = cv / cp;
  const background = -Math.expm1(-1 / (1 / reach + (reach * reach) / (3 * density * density)));
  const z = (2 / (Math.PI * reach)) * ((1 - share) * Math.atan(reach) + share * reach - background);
  const mobility = (CONDUCTIVITY_AMPLITUDE * point.temperature) / (TEMPERATURE * 1e6 * viscosity);
  return mobility * density * (cp / equation.gasConstant) * z;
}

/**
 * Thermal conductivity λ of water.
 *     λ = 1e-3 (λ₀(T) λ₁(T, ρ) + λ₂(T, ρ))
 * @param point      state; reduced as above
 * @param viscosity  η [Pa s] of the same state
 * @returns          λ [W/(m K)]; NaN within rounding of the critical point, where it grows without limit
 * Validity: liquid and vapour to 900 °C, up to 1000 MPa (250 MPa above 523 K). Accuracy: 0.7 to 4 % by region.
 * Source: IAPWS R15-11, equations 15 to 25.
 * Worked value: 647.35 K, 222 kg/m³ → 367.787459e-3 W/(m K) (Table 5).
 */
export function conductivityOfWater(point: TransportPoint, viscosity: number): number {
  const temperature = point.temperature / TEMPERATURE;
  const inverse = 1 / temperature;
  const sum =
    2.443221e-3 + inverse * (1.323095e-2 + inverse * (6.770357e-3 + inverse * (-3.454586e-3 + inverse * 4.096266e-4)));
  const dense = densityFactor(conductivityFactors, temperature, point.density / DENSITY);
  return 1e-3 * ((Math.sqrt(temperature) / sum) * dense + criticalPart(point, viscosity));
}
