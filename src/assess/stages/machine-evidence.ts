// What the readers of a machine's description have in common.

import type { ResolvedDesign } from '../../design/index.ts';
import type { EvidencePoint, EvidenceSeries, Supply } from '../../parts/compressor/index.ts';
import type { Estimate } from '../../quantities/index.ts';

/** A compressor with its ranges. */
export type DescribedCompressor = ResolvedDesign['machine']['compressor'];

/** Points that were read out of one part of the description. */
export interface Evidence {
  readonly points: readonly EvidencePoint[];
  readonly series: readonly EvidenceSeries[];
}

/** Was anything printed or measured of it that makes a point? */
export function hasGivenPoints({ ratings, coefficients, tables, bench, nameplate }: DescribedCompressor): boolean {
  const given = [ratings, coefficients, tables, bench].some((list) => list.length > 0);
  return given || nameplate.ratedCurrent !== undefined || nameplate.power !== undefined;
}

/** Air around the shell on a calorimeter [K]: 32.2 °C, usual for small machines; from memory. */
export const calorimeterSurroundings = 305.35;

/** Likely mains of a part of the description. */
export function supplyOf({ frequency, voltage }: DescribedCompressor['nameplate']): Supply {
  return { frequency: frequency.likely, voltage: voltage.likely };
}

/** A factor that may be so far off 1. */
export function aboutOne(tolerance: number): Estimate {
  return { low: 1 - tolerance, likely: 1, high: 1 + tolerance, origin: 'assumed' };
}
