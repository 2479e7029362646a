// Viscosity of carbon dioxide after Laesecke and Muzny (2017), and thermal conductivity of its dilute gas after Huber and
// others (2016). Constants as printed in the papers.

/** Triple point [K], density of the liquid there [kg/m³], viscosity made of both, of the gas constant and of the molar mass. */
const TRIPLE_TEMPERATURE = 216.592;
const TRIPLE_LIQUID_DENSITY = 1178.53;
/** ρ^(2/3) √(R T) / (M^(1/6) N_A^(1/3)) with R 8.3144598 J/(mol K), M 44.0095 g/mol, N_A 6.022140857e23 1/mol [Pa s]. */
const TRIPLE_VISCOSITY =
  (TRIPLE_LIQUID_DENSITY ** (2 / 3) * Math.sqrt(8.3144598 * TRIPLE_TEMPERATURE)) /
  (0.0440095 ** (1 / 6) * Math.cbrt(6.022140857e23));
/** Reducing temperature of the conductivity [K]. */
const CRITICAL_TEMPERATURE = 304.1282;

/**
 * Viscosity η₀ of dilute carbon dioxide.
 *     η₀ = 1.0055e-3 √T / (a0 + a1 T^(1/6) + a2 exp(a3 T^(1/3)) + (a4 + a5 T^(1/3))/exp(T^(1/3)) + a6 √T)
 * @param temperature  T [K]
 * @returns            η₀ [Pa s]
 * Validity: 100 to 2000 K. Source: A. Laesecke, C. D. Muzny (2017), J. Phys. Chem. Ref. Data 46, 013107, equation 4.
 * Worked value: 300 K → 14.99e-6 Pa s.
 */
export function diluteViscosityLaesecke2017(temperature: number): number {
  const third = Math.cbrt(temperature);
  const root = Math.sqrt(temperature);
  const denominator =
    1749.35489318835 -
    369.069300007128 * Math.sqrt(third) +
    5423856.34887691 * Math.exp(-2.21283852168356 * third) +
    (-269503.247933569 + 73145.021531826 * third) * Math.exp(-third) +
    5.34368649509278 * root;
  return (1.0055e-3 * root) / denominator;
}

/**
 * What the viscosity of carbon dioxide gains at higher density beyond η₀ (1 + B ρ).
 *     Δη = η_t (c1 T_r ρ_r³ + (ρ_r² + ρ_r^γ)/(T_r − c2)); T_r, ρ_r over the liquid at the triple point
 * @param temperature  T [K]
 * @param density      ρ [kg/m³]
 * @returns            Δη [Pa s]
 * Validity: 220 to 700 K up to the melting line. Source: as above, equations 8 and 9.
 */
export function residualViscosityLaesecke2017(temperature: number, density: number): number {
  const reducedTemperature = temperature / TRIPLE_TEMPERATURE;
  const reducedDensity = density / TRIPLE_LIQUID_DENSITY;
  const square = reducedDensity * reducedDensity;
  return (
    TRIPLE_VISCOSITY *
    (0.360603235428487 * reducedTemperature * square * reducedDensity +
      (square + reducedDensity ** 8.06282737481277) / (reducedTemperature - 0.121550806591497))
  );
}

/**
 * Thermal conductivity λ₀ of dilute carbon dioxide.
 *     λ₀ = 1e-3 √T_r / Σ L_k T_r^(−k)
 * @param temperature  T [K]
 * @returns            λ₀ [W/(m K)]
 * Validity: 200 to 1100 K (from memory). Source: M. L. Huber, E. A. Sykioti, M. J. Assael, R. A. Perkins (2016), J. Phys.
 * Chem. Ref. Data 45, 013102, equation 3.
 * Worked value: 250 K → 12.99e-3 W/(m K).
 */
export function diluteConductivityHuber2016(temperature: number): number {
  const tau = CRITICAL_TEMPERATURE / temperature;
  const sum = 0.0151874307 + tau * (0.028067404 + tau * (0.022856419 - tau * 0.0074162421));
  return 1e-3 / (Math.sqrt(tau) * sum);
}
