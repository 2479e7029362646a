// Viscosity at higher density: powers of density and temperature, and a term that grows without limit as the molecules come
// to be packed closely (free volume, after Batschinski and Hildebrand).

import { PowerSum, sumOfPowers } from './power-sum.ts';
import type { BatschinskiHildebrandData } from './transport-data.ts';

/** Function of temperature [K] and molar density [mol/m³]. */
export type OfTemperatureAndDensity = (temperature: number, molarDensity: number) => number;

/**
 * Free-volume term of the viscosity.
 *     Δη = f δ^k (1/(δ₀ − δ) − 1/δ₀)
 * f [Pa s]; δ reduced density; δ₀ that of close packing, above δ; k 0 or 1. NaN at and beyond close packing, where the form
 * says nothing.
 */
export function freeVolumeViscosity(factor: number, delta: number, packed: number, densityPower: number): number {
  if (!(delta < packed)) return Number.NaN;
  return factor * delta ** densityPower * (1 / (packed - delta) - 1 / packed);
}

/**
 * What viscosity gains at higher density beyond η₀ (1 + B ρ).
 *     Δη = Σ a δ^d τ^t + f δ^k (1/(δ₀ − δ) − 1/δ₀),  δ₀ = Σ n τ^t / Σ n′ τ^t′
 * Source: each fluid's own; the form as in E. Vogel and others (1998), J. Phys. Chem. Ref. Data 27, 947.
 * Pitfall: the reducing point is that of the paper, not of the fluid's equation.
 */
export function batschinskiHildebrand(data: BatschinskiHildebrandData): OfTemperatureAndDensity {
  const { reducingTemperature, reducingMolarDensity, freeVolume } = data;
  const powers = new PowerSum(data);
  if (freeVolume === undefined) {
    return (temperature, molarDensity) =>
      powers.at(molarDensity / reducingMolarDensity, reducingTemperature / temperature);
  }
  const { factor, densityPower, numerator, denominator } = freeVolume;
  return (temperature, molarDensity) => {
    const delta = molarDensity / reducingMolarDensity;
    const tau = reducingTemperature / temperature;
    const packed = sumOfPowers(numerator.n, numerator.t, tau) / sumOfPowers(denominator.n, denominator.t, tau);
    return powers.at(delta, tau) + freeVolumeViscosity(factor, delta, packed, densityPower);
  };
}
