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
 * Density ρ [kg/m³] at a state of known pressure: the relation of the pressure solved for ρ. The derivative is that at the
 * state, which an iteration has found.
 *     ρ = p / (R T (1 + φ_d))
 */
export function densityOf(pressure: number, gasConstant: number, temperature: number, residualDelta: number): number {
  return pressure / (gasConstant * temperature * (1 + residualDelta));
}

/**
 * Temperature T [K] at a state of known pressure and density: the relation of the pressure solved for T.
 *     T = p / (ρ R (1 + φ_d))
 */
export function temperatureOfPressure(
  pressure: number,
  density: number,
  gasConstant: number,
  residualDelta: number,
): number {
  return densityOf(pressure, gasConstant, density, residualDelta);
}

/**
 * Saturation pressure p [Pa], where both phases have one Gibbs energy (Maxwell's conditions).
 *     p = R T (φ′ − φ″) / (1/ρ″ − 1/ρ′)
 * φ′, φ″ the reduced Helmholtz energies of liquid and vapour, φ⁰ + φʳ; ρ′, ρ″ their densities [kg/m³].
 */
export function saturationPressureOf(
  gasConstant: number,
  temperature: number,
  liquidEnergy: number,
  vapourEnergy: number,
  liquidDensity: number,
  vapourDensity: number,
): number {
  return (gasConstant * temperature * (liquidEnergy - vapourEnergy)) / (1 / vapourDensity - 1 / liquidDensity);
}

/**
 * Saturation temperature T [K]: Maxwell's conditions solved for T.
 *     T = p (1/ρ″ − 1/ρ′) / (R (φ′ − φ″))
 */
export function saturationTemperatureOf(
  pressure: number,
  gasConstant: number,
  liquidEnergy: number,
  vapourEnergy: number,
  liquidDensity: number,
  vapourDensity: number,
): number {
  return (pressure * (1 / vapourDensity - 1 / liquidDensity)) / (gasConstant * (liquidEnergy - vapourEnergy));
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
 * The same where pressure and density are known: internal energy R T φ_t, and p / ρ.
 *     h = R T φ_t + p / ρ + h₀
 * ρ [kg/m³].
 */
export function enthalpyOfPressure(
  gasConstant: number,
  temperature: number,
  tau: number,
  pressure: number,
  density: number,
  zero: number,
): number {
  return gasConstant * temperature * tau + pressure / density + zero;
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
 * The same with the density written out, which stands in φ as ln(ρ/ρ_c).
 *     s = R (φ_t − φ_s − ln(ρ/ρ_c)) + s₀, φ_s = φ − ln(ρ/ρ_c)
 * ρ and the critical density ρ_c [kg/m³].
 */
export function entropyOfDensity(
  gasConstant: number,
  tau: number,
  energyWithoutDensity: number,
  density: number,
  criticalDensity: number,
  zero: number,
): number {
  return entropyOf(gasConstant, tau, energyWithoutDensity + Math.log(density / criticalDensity), zero);
}

/**
 * Density ρ [kg/m³] at a state of known entropy: the relation of the entropy solved for ρ.
 *     ρ = ρ_c exp(φ_t − φ_s − (s − s₀) / R), φ_s = φ − ln(ρ/ρ_c)
 */
export function densityOfEntropy(
  criticalDensity: number,
  tau: number,
  energyWithoutDensity: number,
  entropy: number,
  zero: number,
  gasConstant: number,
): number {
  return criticalDensity * Math.exp(tau - energyWithoutDensity - (entropy - zero) / gasConstant);
}

/**
 * Internal energy u [J/kg].
 *     u = h − p / ρ
 */
export function internalEnergyOf(enthalpy: number, pressure: number, density: number): number {
  return enthalpy - pressure / density;
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
 * Property of a mixture of saturated liquid and vapour, per mass (h, s, u or 1/ρ); of a blend by its lines also T.
 *     y = (1 − x) y′ + x y″, x the quality
 */
export function mixed(liquid: number, vapour: number, quality: number): number {
  return (1 - quality) * liquid + quality * vapour;
}

/**
 * Density ρ [kg/m³] of a mixture of saturated liquid and vapour: volumes per mass add up.
 *     ρ = 1 / ((1 − x) / ρ′ + x / ρ″), x the quality
 */
export function mixedDensity(liquid: number, vapour: number, quality: number): number {
  return 1 / mixed(1 / liquid, 1 / vapour, quality);
}

/**
 * Quality x [-]: mass of vapour by mass, from a property per mass y between that of the liquid and that of the vapour.
 *     x = (y − y′) / (y″ − y′)
 */
export function qualityOf(value: number, liquid: number, vapour: number): number {
  return (value - liquid) / (vapour - liquid);
}
