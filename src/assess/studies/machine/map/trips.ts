// Where the motor would give up as the evaporating temperature rises, at one condensing temperature of the map.

import { KettlefinError } from '../../../../numerics/index.ts';
import { type TripFound, tripAt } from '../../../../parts/compressor/index.ts';
import type { MapTrip } from '../answer.ts';
import type { LimitsOfMachine } from '../limits.ts';
import { type Run, runningAt } from '../running.ts';

/** Further up than the map nobody asks [K]. */
const beyondMap = 10;

/**
 * @param run          the likely machine
 * @param limits       what its motor bears
 * @param condensing   dew temperature [K]
 * @param evaporating  of the map, by rising temperature [K]
 * @returns            searchedUpTo is null where the machine has no running point to search from
 */
export function tripOf(run: Run, limits: LimitsOfMachine, condensing: number, evaporating: readonly number[]): MapTrip {
  const boundOf = (limit: string) => limits.limits.find(({ name }) => name === limit)?.bound ?? null;
  const highest = Math.min(condensing - 1, evaporating.at(-1)! + beyondMap);
  const found = searched({
    pointAt: (at) => runningAt(run, { evaporating: at, condensing }).compressor,
    from: evaporating[0]!,
    to: highest,
    highestLoad: boundOf('motorLoadHighest'),
    highestCurrent: boundOf('currentContinuous'),
  });
  return {
    condensing,
    evaporating: found?.trip?.evaporating ?? null,
    by: found?.trip?.by ?? null,
    searchedUpTo: found?.searchedUpTo ?? null,
  };
}

function searched(search: Parameters<typeof tripAt>[0]): TripFound | undefined {
  try {
    return tripAt(search);
  } catch (error) {
    if (!(error instanceof KettlefinError)) throw error;
    return undefined;
  }
}
