// What follows from first and second derivatives of the equation beyond the properties of a state: a line of algebra each,
// shown to people with the numbers put in. Symbols as in equation/relations.ts.
// Source of all: R. Span (2000), Multiparameter Equations of State, chapter 3, unless another is named.

/**
 * Joule–Thomson coefficient μ [K/Pa]: temperature over pressure where no heat and no work pass, as in a throttle.
 *     μ = (∂T/∂p)_h = −(φ_d + φ_dd + φ_dt) / (ρ c_p K)
 * ρ [kg/m³], c_p [J/(kg K)]. Positive: cools when throttled; 0 along the inversion curve. Of an ideal gas 0.
 * Pitfall: the usual (T α − 1)/(ρ c_p) is the same, but loses every digit in a thin gas.
 */
export function jouleThomsonOf(
  residualDelta: number,
  residualDeltaDelta: number,
  residualDeltaTau: number,
  density: number,
  heatCapacity: number,
  stiffness: number,
): number {
  return -(residualDelta + residualDeltaDelta + residualDeltaTau) / (density * heatCapacity * stiffness);
}

/**
 * Isentropic exponent κ [-] of the real fluid.
 *     κ = −(v/p) (∂p/∂v)_s = ρ w² / p
 * w [m/s], p [Pa]. Of an ideal gas c_p/c_v; of a liquid very large. Pitfall: not c_p/c_v of a real gas.
 */
export function isentropicExponentOf(density: number, soundSpeed: number, pressure: number): number {
  return (density * soundSpeed * soundSpeed) / pressure;
}

/**
 * Isobaric expansion coefficient α [1/K].
 *     α = −(∂ρ/∂T)_p / ρ = push / (T K)
 * T [K]. Below 0 in water colder than its greatest density, about 4 °C.
 */
export function expansionOf(temperature: number, push: number, stiffness: number): number {
  return push / (temperature * stiffness);
}

/**
 * Isothermal compressibility κ_T [1/Pa].
 *     κ_T = (∂ρ/∂p)_T / ρ = 1 / (ρ R T K)
 */
export function compressibilityOf(
  density: number,
  gasConstant: number,
  temperature: number,
  stiffness: number,
): number {
  return 1 / (density * gasConstant * temperature * stiffness);
}

/**
 * Slope of the saturation pressure of a pure fluid over temperature [Pa/K], by Clapeyron.
 *     dp/dT = (s″ − s′) / (1/ρ″ − 1/ρ′)
 * Source: B. P. E. Clapeyron (1834); any text on thermodynamics.
 */
export function clapeyronOf(
  liquidEntropy: number,
  vapourEntropy: number,
  liquidDensity: number,
  vapourDensity: number,
): number {
  return (vapourEntropy - liquidEntropy) / (1 / vapourDensity - 1 / liquidDensity);
}
