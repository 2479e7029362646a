// The covariance of what the given values miss: each value's own doubt, the common factor of its series, and the deviation of
// the model, all on the scales of the identification.

import type { EvidenceSeries } from '../evidence.ts';
import { type Datum, seriesFactorOf } from '../points.ts';
import { spreadOf } from '../priors.ts';
import { deviationAmounts, deviationCovariance, deviationKind, type Place, pointScatter } from './discrepancy.ts';

/** Places of the points in their order, and the middle of them. */
export interface Places {
  readonly of: readonly Place[];
  readonly middle: Place;
}

/** σ of ln of a factor of a series; 0 for a quantity that no factor moves. */
function seriesSpread(series: readonly EvidenceSeries[], { quantity, series: number }: Datum): number {
  const factor = seriesFactorOf(quantity);
  if (number === undefined || factor === undefined) return 0;
  const of = series[number]!;
  return spreadOf(of[factor], { kind: 'logarithm' }, `${of.path}.${factor}`);
}

/** Variance of the scatter about the model that no other value shares, without the value's own doubt. */
function roughVariance({ quantity }: Datum): number {
  const kind = deviationKind(quantity);
  if (kind !== undefined) return deviationAmounts[kind].rough ** 2;
  return pointScatter[quantity as keyof typeof pointScatter] ** 2;
}

/** Do both follow one factor of one series? */
function sharesFactor(a: Datum, b: Datum): boolean {
  if (a.series === undefined || a.series !== b.series) return false;
  const factor = seriesFactorOf(a.quantity);
  return factor !== undefined && factor === seriesFactorOf(b.quantity);
}

/** Covariance of two values through the model's deviation. Flow and capacity of one point share all of it. */
function modelCovariance(places: Places, a: Datum, b: Datum): number {
  if (a === b && deviationKind(a.quantity) === undefined) return roughVariance(a);
  const kind = deviationKind(a.quantity);
  if (kind === undefined || kind !== deviationKind(b.quantity)) return 0;
  const smooth = deviationCovariance(kind, places.middle, places.of[a.point]!, places.of[b.point]!);
  return a.point === b.point ? smooth + roughVariance(a) : smooth;
}

/** Parts of the covariance that are told apart when it is asked where a doubt comes from. */
export interface CovarianceParts {
  /** The model's deviation. */
  readonly model: boolean;
  /** Own doubt of values in a series, of values that stand alone. */
  readonly ownInSeries: boolean;
  readonly ownAlone: boolean;
  readonly seriesFactors: boolean;
}

/**
 * What decides where the likely machine and the likely deviation lie: values of a series are followed as they are given. That the
 * whole series may be off widens the range about them and never shifts it towards what such machines usually are.
 */
export const withoutSeriesFactors: CovarianceParts = {
  model: true,
  ownInSeries: true,
  ownAlone: true,
  seriesFactors: false,
};

const allParts: CovarianceParts = { model: true, ownInSeries: true, ownAlone: true, seriesFactors: true };

/** No printed or metered value is known better than this part of itself, or by this many kelvins [σ]: its last digit. */
const rounding = 1e-3;

/** Σ, row by row. */
export function covarianceOf(
  data: readonly Datum[],
  series: readonly EvidenceSeries[],
  places: Places,
  parts: CovarianceParts = allParts,
): Float64Array {
  const size = data.length;
  const matrix = new Float64Array(size * size);
  const factorSpread = data.map((datum) => seriesSpread(series, datum));
  data.forEach((a, row) => {
    for (let column = 0; column <= row; column++) {
      const b = data[column]!;
      let value = 0;
      if (parts.model) value += modelCovariance(places, a, b);
      if (row === column && (a.series === undefined ? parts.ownAlone : parts.ownInSeries))
        value += a.spread ** 2 + rounding ** 2;
      if (parts.seriesFactors && sharesFactor(a, b)) value += factorSpread[row]! * factorSpread[column]!;
      matrix[row * size + column] = value;
      matrix[column * size + row] = value;
    }
  });
  return matrix;
}
