// What the thermal conductivity of ammonia gains near its critical point, after Tufeu and others (1984).

/** Critical point of the paper, not of the equation [K, kg/m³]. */
const CRITICAL_TEMPERATURE = 405.4;
const CRITICAL_DENSITY = 235;
const BOLTZMANN = 1.3806504e-23;
/** Exponents ν, γ and of the correction to both. */
const LENGTH_EXPONENT = 0.63;
const SUSCEPTIBILITY_EXPONENT = 1.24;
const CORRECTION_EXPONENT = 0.5;
/** The form is not followed nearer to its critical temperature than this share of it (0.08 K). See the pitfall below. */
const NEAREST = 2e-4;

/**
 * Δλ on the critical isochore.
 *     Δλ = Λ k T² / (6 π η ξ) · (∂p/∂T)² χ, ξ = ξ0 t^(−ν) (1 + t^Δ), χ = χ0 t^(−γ) (1 + t^Δ/0.7), t = |T − T_c|/T_c
 */
function onTheIsochore(temperature: number, distance: number): number {
  const correction = distance ** CORRECTION_EXPONENT;
  const viscosity = (2.6 + 1.6 * distance) * 1e-5;
  const pressureSlope = (2.18 - 0.12 * Math.exp(-17.8 * distance)) * 1e5;
  const length = 1.34e-10 * distance ** -LENGTH_EXPONENT * (1 + correction);
  const susceptibility = 0.423e-8 * distance ** -SUSCEPTIBILITY_EXPONENT * (1 + correction / 0.7);
  const mobility = (1.2 * BOLTZMANN * temperature * temperature) / (6 * Math.PI * viscosity * length);
  return mobility * pressureSlope * pressureSlope * susceptibility;
}

/**
 * What the thermal conductivity of ammonia gains near the critical point, Δλ.
 * @param temperature  T [K]
 * @param density      ρ [kg/m³]
 * @returns            Δλ [W/(m K)]
 * Pitfall: the width of the peak in density, 0.61 ρ_c + 16.5 ln t, closes at 0.07 K from the paper's critical temperature and
 * opens again within, and the height grows without limit there at every density. Within 0.08 K the value at 0.08 K is used.
 * The reference library follows the form: it gives a hundred times the conductivity of the vapour at 405.3999 K.
 * Source: R. Tufeu, D. Y. Ivanov, Y. Garrabos, B. Le Neindre (1984), Ber. Bunsenges. Phys. Chem. 88, 422.
 */
export function criticalConductivityTufeu1984(temperature: number, density: number): number {
  const distance = Math.max(Math.abs(temperature / CRITICAL_TEMPERATURE - 1), NEAREST);
  const peak = onTheIsochore(temperature, distance) * Math.exp(-36 * distance * distance);
  const width = 0.61 * CRITICAL_DENSITY + 16.5 * Math.log(distance);
  const centre = 0.96 * CRITICAL_DENSITY;
  // Below 0.6 of the critical density the gain at 0.6 falls off with the square of the density.
  const lowest = 0.6 * CRITICAL_DENSITY;
  const inside = Math.max(density, lowest);
  const share = (width * width) / (width * width + (inside - centre) ** 2);
  return peak * share * (density < lowest ? (density / lowest) ** 2 : 1);
}
