// How far the model itself may be off, beside its numbers: a smooth deviation of ln(flow) and of ln(power) over evaporating and
// condensing temperature, taken as a Gaussian process. Near the points it is known from them (kriging); away from them it
// returns to a spread that grows with the distance. The amounts are our own judgement, set so that the bands of machines that part
// of a published curve identifies hold nine of ten of the rest of it (curves of some thirty machines; a test counts it on some).
// Method: C. E. Rasmussen, C. K. I. Williams 2006, Gaussian Processes for Machine Learning, chapter 2 (from memory).

import type { EvidenceQuantity } from '../evidence.ts';

/** What follows one deviation of the model: flow and capacity, power; current and temperatures scatter for themselves. */
export type DeviationKind = 'flow' | 'power';

export function deviationKind(quantity: EvidenceQuantity): DeviationKind | undefined {
  if (quantity === 'massFlow' || quantity === 'capacity') return 'flow';
  return quantity === 'power' ? 'power' : undefined;
}

export interface DeviationAmounts {
  /** σ of the part that is alike within a length, of ln [-]. */
  readonly smooth: number;
  /** σ of a slope from the middle of the points, of ln [1/K]: over evaporating, over condensing temperature. */
  readonly evaporatingSlope: number;
  readonly condensingSlope: number;
  /** σ of what no neighbour tells: of ln [-]. */
  readonly rough: number;
}

/** Set on published curves. */
export const deviationAmounts: Readonly<Record<DeviationKind, DeviationAmounts>> = {
  flow: { smooth: 0.02, evaporatingSlope: 0.0028, condensingSlope: 0.0022, rough: 0.005 },
  power: { smooth: 0.025, evaporatingSlope: 0.0025, condensingSlope: 0.002, rough: 0.007 },
};

/** Temperatures over which a deviation stays alike [K]; own judgement. */
export const deviationLengths = { evaporating: 12, condensing: 12 } as const;

/** σ of ln(current) and of the discharge temperature [K] about the model, point by point; own judgement. */
export const pointScatter = { current: 0.05, dischargeTemperature: 5 } as const;

/** A place of the map [K], and the middle that slopes count from. */
export interface Place {
  readonly evaporating: number;
  readonly condensing: number;
}

/** Middle of the points; undefined without any. */
export function middleOf(points: readonly Place[]): Place | undefined {
  if (points.length === 0) return undefined;
  const mean = (name: keyof Place) => points.reduce((sum, point) => sum + point[name], 0) / points.length;
  return { evaporating: mean('evaporating'), condensing: mean('condensing') };
}

/** Covariance of the deviations at two places, without the rough part. */
export function deviationCovariance(kind: DeviationKind, middle: Place, a: Place, b: Place): number {
  return covarianceWith(deviationAmounts[kind], middle, a, b);
}

/** k [-] = s² exp(−½ ((Δt_e/L)² + (Δt_c/L)²)) + b_e² Δt_e,a Δt_e,b + b_c² Δt_c,a Δt_c,b, the latter from the middle of the points. */
export function covarianceWith(amounts: DeviationAmounts, middle: Place, a: Place, b: Place): number {
  const { smooth, evaporatingSlope, condensingSlope } = amounts;
  const evaporating = (a.evaporating - b.evaporating) / deviationLengths.evaporating;
  const condensing = (a.condensing - b.condensing) / deviationLengths.condensing;
  const alike = Math.exp(-0.5 * (evaporating * evaporating + condensing * condensing));
  return (
    smooth * smooth * alike +
    evaporatingSlope * evaporatingSlope * (a.evaporating - middle.evaporating) * (b.evaporating - middle.evaporating) +
    condensingSlope * condensingSlope * (a.condensing - middle.condensing) * (b.condensing - middle.condensing)
  );
}
