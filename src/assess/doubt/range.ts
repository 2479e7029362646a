// The range of one result: its band, and which uncertain inputs make it, the most telling first.

import { type Bands, bandOf } from '../answers/pieces.ts';
import type { BandWithUnit } from '../assessment/assessment.ts';
import type { Doubt } from './doubt.ts';
import { type InputInfluence, influencesOn } from './vary.ts';

/** Plain data in base SI. */
export interface ResultRange {
  readonly band: BandWithUnit;
  /** Name of the quantity the band is of. */
  readonly quantity: string;
  /** The result with one input alone at its ends, all others likely; inputs that do not move it are left out. */
  readonly moves: readonly InputInfluence[];
}

/** @returns undefined for a name without a band: a step on the way, a month, a value that is known */
export function rangeOfResult(doubt: Doubt, bands: Bands, result: string): ResultRange | undefined {
  const quantity = bands.quantities[result];
  if (quantity === undefined) return undefined;
  return { band: bandOf(bands, result), quantity, moves: influencesOn(doubt, result) };
}
