// What the likely machine misses of flow and of power, made ready for kriging at any other running point.

import { choleskyFactor, solveCholesky } from '../../../../numerics/index.ts';
import { dimensions } from '../coordinates.ts';
import type { EvidenceSeries } from '../evidence.ts';
import type { Fitted } from '../fitting/fit.ts';
import type { KrigedMisses } from '../identified.ts';
import type { Datum } from '../points.ts';
import { endsAt } from '../priors.ts';
import { covarianceOf, type Places, withoutSeriesFactors } from './covariance.ts';
import { type DeviationKind, deviationKind } from './discrepancy.ts';

/** How far given values scatter more than the model is stated to, from the sum of squares of their misses in their own σ. */
function scatterOf(misses: Float64Array, square: number): Pick<KrigedMisses, 'widened' | 'farthest'> {
  const most = misses.reduce((largest, miss) => Math.max(largest, Math.abs(miss)), 0);
  return { widened: Math.max(1, Math.sqrt(square / misses.length)), farthest: Math.expm1(most) / endsAt };
}

export function krigedMisses(
  kind: DeviationKind,
  data: readonly Datum[],
  series: readonly EvidenceSeries[],
  places: Places,
  fit: Fitted,
): KrigedMisses | null {
  const rows = data.flatMap(({ quantity }, row) => (deviationKind(quantity) === kind ? [row] : []));
  const size = rows.length;
  if (size === 0) return null;
  const own = rows.map((row) => data[row]!);
  const lower = choleskyFactor(covarianceOf(own, series, places), size);
  const weighing = choleskyFactor(covarianceOf(own, series, places, withoutSeriesFactors), size);
  const misses = Float64Array.from(rows, (row) => data[row]!.observed - fit.modelled[row]!);
  const weights = solveCholesky(weighing, size, misses);
  // Values are followed as given, but a machine that its series' common error moves is not pulled back to them by the correction.
  const sensitivity = new Float64Array(size * dimensions);
  for (let number = 0; number < dimensions; number++) {
    const column = Float64Array.from(rows, (row) => fit.jacobian[row * dimensions + number]!);
    solveCholesky(lower, size, column).forEach((value, row) => {
      sensitivity[row * dimensions + number] = value;
    });
  }
  const square = misses.reduce((sum, miss, index) => sum + miss * weights[index]!, 0);
  return {
    places: own.map(({ point }) => places.of[point]!),
    middle: places.middle,
    rows,
    misses,
    lower,
    weighing,
    weights,
    sensitivity,
    ...scatterOf(misses, square),
  };
}
