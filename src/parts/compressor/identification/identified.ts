// What an identification leaves: the likely machine, how far each input alone moves it, how well each point is met, and how
// doubtful the model is near and far from the points.

import type { Estimate } from '../../../quantities/index.ts';
import type { HermeticCompressor } from '../hermetic/parameters.ts';
import type { Scale } from './coordinates.ts';
import type { Place } from './deviation/discrepancy.ts';
import type { EvidenceQuantity } from './evidence.ts';
import type { Prior } from './priors.ts';

/** What one input alone does to the machine's numbers, in the coordinates they are identified in (logarithms and logits). */
export interface Influence {
  /** Of a range: 'machine.compressor.clearanceRatio'; of a point: 'machine.compressor.ratings.0.capacity'; of what the
   *  scatter of a series leaves open: 'machine.compressor.points.open.0'. */
  readonly path: string;
  readonly label: string;
  readonly estimate: Estimate;
  /** Name of the quantity the estimate is of. */
  readonly quantity: string;
  /** On which its values are read between the ends. */
  readonly scale: Scale;
  /** Movement of each number on its scale, in the order of `hermeticParameters`, with this input alone at its end. */
  readonly atLow: readonly number[];
  readonly atHigh: readonly number[];
}

/** How well the likely machine meets one given value. */
export interface Residual {
  readonly path: string;
  readonly label: string;
  readonly quantity: EvidenceQuantity;
  readonly given: number;
  readonly modelled: number;
  /** Modelled over given, less 1; of a temperature the difference [K]. */
  readonly deviation: number;
  /** How far the value lies from what everything else known of the machine predicts for it, in σ of that prediction. */
  readonly score: number;
  /** True where that is 3 σ and more: the value, or what it is compared with, is wrong. */
  readonly disagrees: boolean;
}

/** A given point as far as it tells how near another running point is. */
export interface KnownPoint {
  readonly evaporating: number;
  readonly condensing: number;
  /** ln of given over modelled; null where it was not given. */
  readonly flow: number | null;
  readonly power: number | null;
}

/** Misses of one quantity, made ready for kriging. */
export interface KrigedMisses {
  /** Where each was given. */
  readonly places: readonly Place[];
  readonly middle: Place;
  /** Index of each in `residuals`. */
  readonly rows: readonly number[];
  /** ln of given over modelled, of the likely machine. */
  readonly misses: Float64Array;
  /** L of their covariance = L Lᵀ, row by row. */
  readonly lower: Float64Array;
  /** The same without the factors of whole series: it decides how much each point counts. */
  readonly weighing: Float64Array;
  /** Covariance⁻¹ times the misses of the likely machine. */
  readonly weights: Float64Array;
  /** Covariance⁻¹ times the change of the modelled values with each number in σ of its range, row by row. */
  readonly sensitivity: Float64Array;
  /** Factor on the width, 1 or more: the points scatter more than the model is stated to. */
  readonly widened: number;
  /** σ [-] with which a range just reaches as far as the farthest miss: so much it is widened at most. */
  readonly farthest: number;
}

/** A given point that the likely machine was not asked to meet. */
export interface SetAsidePoint {
  readonly path: string;
  readonly label: string;
  /** K */
  readonly evaporating: number;
  readonly condensing: number;
  /** What its flow fills of the stroke [-]. */
  readonly volumetricEfficiency: number;
}

export interface IdentifiedMachine {
  readonly compressor: HermeticCompressor;
  /** The ranges that it was identified in, and where it lies in them: in σ from their likely values. */
  readonly prior: Prior;
  readonly deviations: Float64Array;
  readonly madeFor: string;
  readonly influences: readonly Influence[];
  readonly residuals: readonly Residual[];
  readonly known: readonly KnownPoint[];
  /** Points that fill little of the stroke and cannot be of one machine of this kind with the others; mostly none. */
  readonly setAside: readonly SetAsidePoint[];
  /** Deviation usual between points and model, relative: of flow, of power. */
  readonly scatter: { readonly flow: number; readonly power: number };
  /** Null where no point says anything of it. */
  readonly kriged: { readonly flow: KrigedMisses | null; readonly power: KrigedMisses | null };
  /** Mains frequencies of the points; of the motor where there are none [Hz]. */
  readonly frequencies: readonly number[];
}

/** Relative corrections of the model at one running point, with the half width of their range. */
export interface ModelDoubt {
  readonly flow: { readonly correction: number; readonly halfWidth: number };
  readonly power: { readonly correction: number; readonly halfWidth: number };
  /** Why it is wide: 'otherFluid', 'otherFrequency', 'beyondEvaporating', 'beyondCondensing', 'noPoints'. */
  readonly reasons: readonly ModelDoubtReason[];
}

export type ModelDoubtReason = 'otherFluid' | 'otherFrequency' | 'beyondEvaporating' | 'beyondCondensing' | 'noPoints';
