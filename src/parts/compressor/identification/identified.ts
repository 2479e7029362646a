// What an identification leaves: the likely machine, how far each input alone moves it, how well each point is met, and how
// doubtful the model is near and far from the points.

import type { Estimate } from '../../../quantities/index.ts';
import type { HermeticCompressor } from '../hermetic/parameters.ts';
import type { EvidenceQuantity } from './evidence.ts';

/** What one input alone does to the machine's numbers, in the coordinates they are identified in (logarithms and logits). */
export interface Influence {
  /** Of a range: 'machine.compressor.clearanceRatio'; of a point: 'machine.compressor.ratings.0.capacity'; of what the
   *  scatter of a series leaves open: 'machine.compressor.points.open.0'. */
  readonly path: string;
  readonly label: string;
  readonly estimate: Estimate;
  /** Name of the quantity the estimate is of. */
  readonly quantity: string;
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
  /** True where it lies so far off that the value, or the machine behind it, is doubtful. */
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

export interface IdentifiedMachine {
  readonly compressor: HermeticCompressor;
  readonly madeFor: string;
  readonly influences: readonly Influence[];
  readonly residuals: readonly Residual[];
  readonly known: readonly KnownPoint[];
  /** Deviation usual between points and model, relative: of flow, of power. */
  readonly scatter: { readonly flow: number; readonly power: number };
}

/** Relative corrections of the model at one running point, with the half width of their range. */
export interface ModelDoubt {
  readonly flow: { readonly correction: number; readonly halfWidth: number };
  readonly power: { readonly correction: number; readonly halfWidth: number };
  /** Why it is wide: 'otherFluid', 'otherFrequency', 'beyondEvaporating', 'beyondCondensing', 'noPoints'. */
  readonly reasons: readonly ModelDoubtReason[];
}

export type ModelDoubtReason = 'otherFluid' | 'otherFrequency' | 'beyondEvaporating' | 'beyondCondensing' | 'noPoints';
