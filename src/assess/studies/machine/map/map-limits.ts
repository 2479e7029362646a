// Where a map is beyond the limits of the machine: between which points of a line each limit is crossed, by straight lines between
// them.

import type { EnvelopeLimit } from '../../../../parts/compressor/index.ts';
import type { LimitMargin } from '../../../assessment/assessment.ts';
import type { MapLimit } from '../answer.ts';
import type { Levels } from '../running.ts';

/** The limits at one running point of the map. */
export interface PointMargins extends Levels {
  readonly margins: readonly LimitMargin[];
}

/**
 * The limits with the edges of what is beyond them.
 * @param limits  of the machine
 * @param points  every point of the map that has a running point, by condensing and then by rising evaporating temperature
 */
export function mapLimits(limits: readonly EnvelopeLimit[], points: readonly PointMargins[]): readonly MapLimit[] {
  const levels = [...new Set(points.map(({ condensing }) => condensing))];
  return limits.flatMap(({ name, source }) => {
    const told = points[0]?.margins.find(({ limit }) => limit === name);
    if (told === undefined) return [];
    const { limit, label, quantity, bound } = told;
    const edges = levels.flatMap((condensing) => edgesAt(condensing, distances(points, condensing, name)));
    return [{ limit, label, quantity, bound, source, edges }];
  });
}

interface Distance {
  readonly evaporating: number;
  /** Left up to the limit; negative once it is passed. */
  readonly margin: number;
}

function distances(points: readonly PointMargins[], condensing: number, limit: string): readonly Distance[] {
  return points
    .filter((point) => point.condensing === condensing)
    .flatMap(({ evaporating, margins }) => {
      const found = margins.find((each) => each.limit === limit);
      return found === undefined ? [] : [{ evaporating, margin: found.margin }];
    });
}

function edgesAt(condensing: number, line: readonly Distance[]): MapLimit['edges'] {
  if (line.every(({ margin }) => margin < 0)) return [{ condensing, beyond: 'above', at: 'all' }];
  const edges = line.slice(1).flatMap((right, index): MapLimit['edges'] => {
    const left = line[index]!;
    if (left.margin < 0 === right.margin < 0) return [];
    const share = left.margin / (left.margin - right.margin);
    const at = left.evaporating + share * (right.evaporating - left.evaporating);
    return [{ condensing, beyond: right.margin < 0 ? 'above' : 'below', at }];
  });
  return edges.length === 0 ? [{ condensing, beyond: 'above', at: null }] : edges;
}
