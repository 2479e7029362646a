// Properties from the reduced derivatives of a fundamental equation: one line of algebra each, used by the equation of
// every fluid and shown in the working. Symbols: φ_d = δφʳ_δ, φ_dd = δ²φʳ_δδ, φ_dt = δτφʳ_δτ (residual part);
// φ_t = τ(φ⁰_τ + φʳ_τ), φ_tt = τ²(φ⁰_ττ + φʳ_ττ) (both parts). R is the fluid's specific gas constant [J/(kg K)].
// Source of all: R. Span (2000), Multiparameter Equations of State, chapter 3; printed in each fluid's own paper too.

/**
 * Pressure p [Pa].
 *     p = ρ R T (1 + φ_d)
 * ρ [kg/m³], T [K]. Worked value: R290, 300 K, 0.4 mol/dm³ → 0.84694991 MPa (Lemmon and others 2009).
 */
export function pressureOf(density: number, gasConstant: number, temperature: number, residualDelta: number): number {
  return density * gasConstant * temperature * (1 + residualDelta);
}

/**
 * Stiffness K [-]: slope of pressure over density, (∂p/∂ρ)_T / (R T).
 *     K = 1 + 2 φ_d + φ_dd
 * Below 0 between the spinodals, where no phase is stable.
 */
export function stiffnessOf(residualDelta: number, residualDeltaDelta: number): number {
  return 1 + 2 * residualDelta + residualDeltaDelta;
}

/**
 * Thermal push [-]: slope of pressure over temperature, (∂p/∂T)_ρ / (ρ R).
 *     1 + φ_d − φ_dt
 */
export function thermalPushOf(residualDelta: number, residualDeltaTau: number): number {
  return 1 + residualDelta - residualDeltaTau;
}

/**
 * Enthalpy h [J/kg].
 *     h = R T (1 + φ_d + φ_t) + h₀, h₀ the shift to the chosen zero
 */
export function enthalpyOf(
  gasConstant: number,
  temperature: number,
  residualDelta: number,
  tau: number,
  zero: number,
): number {
  return gasConstant * temperature * (1 + residualDelta + tau) + zero;
}

/**
 * Temperature T [K] at a state of known enthalpy: the relation of the enthalpy solved for T. The derivatives are those at
 * the state, which an iteration has found.
 *     T = (h − h₀) / (R (1 + φ_d + φ_t))
 */
export function temperatureOf(
  enthalpy: number,
  zero: number,
  gasConstant: number,
  residualDelta: number,
  tau: number,
): number {
  return (enthalpy - zero) / (gasConstant * (1 + residualDelta + tau));
}

/**
 * Entropy s [J/(kg K)].
 *     s = R (φ_t − φ) + s₀, φ = φ⁰ + φʳ, s₀ the shift to the chosen zero
 */
export function entropyOf(gasConstant: number, tau: number, reducedEnergy: number, zero: number): number {
  return gasConstant * (tau - reducedEnergy) + zero;
}

/**
 * Heat capacity at constant volume c_v [J/(kg K)].
 *     c_v = −R φ_tt
 */
export function heatCapacityAtConstantVolume(gasConstant: number, tauTau: number): number {
  return -gasConstant * tauTau;
}

/**
 * Heat capacity at constant pressure c_p [J/(kg K)].
 *     c_p = R (−φ_tt + push² / K)
 * Pitfall: grows without limit towards the critical point, where K goes to 0.
 */
export function heatCapacityAtConstantPressure(
  gasConstant: number,
  tauTau: number,
  push: number,
  stiffness: number,
): number {
  return gasConstant * (-tauTau + (push * push) / stiffness);
}

/**
 * Speed of sound w [m/s].
 *     w = √(R T (K − push² / φ_tt))
 */
export function soundSpeedOf(
  gasConstant: number,
  temperature: number,
  tauTau: number,
  push: number,
  stiffness: number,
): number {
  return Math.sqrt(gasConstant * temperature * (stiffness - (push * push) / tauTau));
}

/**
 * Property per mass of a mixture of saturated liquid and vapour (h, s, u or 1/ρ).
 *     y = (1 − x) y′ + x y″, x the quality
 */
export function mixed(liquid: number, vapour: number, quality: number): number {
  return (1 - quality) * liquid + quality * vapour;
}
