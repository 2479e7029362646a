// What every kind of term of an equation of state has in common: the reduced state it reads, the six sums it adds to,
// and the rule of differentiation that most kinds share. One file per kind stands beside this one.

/**
 * A reduced state with the powers that terms share, filled once per evaluation.
 * `deltaPower[k]` = δ^k, `decay[k]` = exp(−δ^k), both up to the highest power any term of the fluid needs.
 */
export interface ReducedState {
  tau: number;
  delta: number;
  lnTau: number;
  readonly deltaPower: Float64Array;
  readonly decay: Float64Array;
}

/**
 * Sums of a residual part, in this order: φ, δ φ_δ, τ φ_τ, δ² φ_δδ, δτ φ_δτ, τ² φ_ττ.
 * Multiplied by δ and τ because every property needs them so, and because no term then divides by δ.
 */
export type ResidualSums = Float64Array;

/** Sums of the ideal part without ln δ, in this order: φ⁰, τ φ⁰_τ, τ² φ⁰_ττ. */
export type IdealSums = Float64Array;

/** All terms of one kind of the residual part. */
export interface ResidualTerms {
  readonly highestPower: number;
  /** The largest k of exp(−δ^k) that the terms need; 0 for none. */
  readonly highestDecay: number;
  add(at: ReducedState, sums: ResidualSums): void;
}

/** All terms of one entry of the ideal part. */
export interface IdealTerms {
  add(tau: number, lnTau: number, sums: IdealSums): void;
}

/**
 * Adds one term f to the sums from its logarithmic slopes: with A = δ ∂ln f/∂δ and B = τ ∂ln f/∂τ, where A depends on δ
 * alone and B on τ alone,
 *     δ f_δ = f A,  τ f_τ = f B,  δ² f_δδ = f (A² − A + δA'),  δτ f_δτ = f A B,  τ² f_ττ = f (B² − B + τB')
 */
export function addProductTerm(
  sums: ResidualSums,
  value: number,
  slopeDelta: number,
  slopeDeltaChange: number,
  slopeTau: number,
  slopeTauChange: number,
): void {
  sums[0]! += value;
  sums[1]! += value * slopeDelta;
  sums[2]! += value * slopeTau;
  sums[3]! += value * (slopeDelta * slopeDelta - slopeDelta + slopeDeltaChange);
  sums[4]! += value * slopeDelta * slopeTau;
  sums[5]! += value * (slopeTau * slopeTau - slopeTau + slopeTauChange);
}
