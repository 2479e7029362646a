// Viscosity estimated from the residual entropy: how much order the forces between molecules make beyond that of an ideal gas
// at the same density and temperature. One curve serves many fluids, with one factor each.

import { lennardJonesViscosity, type OfTemperature } from '../low-density.ts';
import type { TransportPoint } from '../point.ts';
import { polynomial } from '../power-sum.ts';
import type { LennardJonesData, ResidualEntropyData } from '../transport-data.ts';

/** Where the curve of the vapour hands over to that of the liquid, and how sharply. */
const CROSSOVER = 2;
const SHARPNESS = 100;

/**
 * Viscosity over that of the dilute gas.
 *     η/η₀ = 1 + C (exp(ψ P_l(x) + (1 − ψ) P_v(x)) − 1),  ψ = 1/(1 + exp(−100 (x − 2)))
 * @param entropyRatio  x = ρ s^r / (ρ s^r)_c [-]
 * @param data          C and the cubics P_l, P_v
 */
export function viscosityRatioBell2016(
  entropyRatio: number,
  data: Omit<ResidualEntropyData, 'type' | 'source'>,
): number {
  const liquidShare = 1 / (1 + Math.exp(-SHARPNESS * (entropyRatio - CROSSOVER)));
  const logarithm =
    liquidShare * polynomial(data.liquid, entropyRatio) + (1 - liquidShare) * polynomial(data.vapour, entropyRatio);
  return 1 + data.factor * Math.expm1(logarithm);
}

/**
 * Viscosity η [Pa s] by residual-entropy corresponding states.
 *     ρ s^r = ρ R (τ φʳ_τ − φʳ)
 * Validity, accuracy: an estimate; see the notes on each fluid.
 * Source: I. H. Bell, A. Laesecke (2016), 16th International Refrigeration and Air Conditioning Conference at Purdue.
 */
export function residualEntropyViscosity(
  data: ResidualEntropyData,
  molecules: LennardJonesData,
  molarMass: number,
): (point: TransportPoint) => number {
  const dilute: OfTemperature = lennardJonesViscosity(molecules, molarMass);
  return ({ equation, temperature, density }) => {
    const { residual, gasConstant } = equation.residualAt(temperature, density);
    const entropyDensity = density * gasConstant * (residual[2]! - residual[0]!);
    return dilute(temperature) * viscosityRatioBell2016(entropyDensity / data.criticalEntropyDensity, data);
  };
}
