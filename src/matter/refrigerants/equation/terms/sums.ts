// What the parts of an equation add their terms to.

/**
 * Sums of the residual part, in this order: φ, δ φ_δ, τ φ_τ, δ² φ_δδ, δτ φ_δτ, τ² φ_ττ.
 * Multiplied by δ and τ because every property needs them so, and because no term then divides by δ.
 */
export type ResidualSums = Float64Array;

/** Sums of the ideal part without ln δ, in this order: φ⁰, τ φ⁰_τ, τ² φ⁰_ττ. */
export type IdealSums = Float64Array;
