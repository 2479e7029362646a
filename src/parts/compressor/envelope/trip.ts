// At which evaporating temperature a motor would give up: its load or its current passes what it is rated for, or it stalls.

import { findRoot, InputError, KettlefinError, NoSolutionError } from '../../../numerics/index.ts';
import type { HermeticPoint } from '../hermetic/point.ts';

export interface TripSearch {
  /** The machine's running point at an evaporating temperature [K], with everything else kept. */
  readonly pointAt: (evaporating: number) => Pick<HermeticPoint, 'motor' | 'current'>;
  /** Evaporating temperatures searched [K], upward. */
  readonly from: number;
  readonly to: number;
  /** Load of the motor that its application asks of it at most [-]; null where unknown. */
  readonly highestLoad: number | null;
  /** Current it bears for long [A]; null where unknown. */
  readonly highestCurrent: number | null;
}

export interface Trip {
  /** Lowest evaporating temperature at which it happens [K]; `from` where it happens there already. */
  readonly evaporating: number;
  readonly by: 'motorLoad' | 'current' | 'stall';
}

export interface TripFound {
  /** Null where it was not met in what was searched, which clears nothing beyond it. */
  readonly trip: Trip | null;
  /** Highest evaporating temperature at which the model had an answer [K]. */
  readonly searchedUpTo: number;
}

/**
 * Lowest evaporating temperature at which the motor's load or current passes its limit, or the motor stalls.
 * Power first grows with the evaporating temperature and falls again where the lift gets small, so the range is walked in
 * steps of 2 K and the first crossing is then narrowed to 0.01 K.
 * @throws InputError unless from < to and a limit is positive; what `pointAt` throws at `from`, but for a stalled motor
 * Pitfall: a crossing and its return inside one step stay unseen.
 */
export function tripAt(search: TripSearch): TripFound {
  const { from, to } = search;
  if (!(from < to)) throw new InputError('from', from, `a temperature below ${to} K`);
  let before = overloadAt(search, from);
  if (before.excess > 0) return { trip: { evaporating: from, by: before.by }, searchedUpTo: from };
  for (let last = from; last < to; ) {
    const next = Math.min(to, last + step);
    const now = overloadOrNothing(search, next);
    if (now === undefined) return { trip: null, searchedUpTo: last };
    if (now.excess > 0) return { trip: crossing(search, [last, before], [next, now]), searchedUpTo: next };
    before = now;
    last = next;
  }
  return { trip: null, searchedUpTo: to };
}

/** [K] */
const step = 2;
const narrowedTo = 0.01;

/** How far beyond its limits the motor is, as a share of them; of a stalled one only that it is. */
interface Overload {
  readonly excess: number;
  readonly by: Trip['by'];
}

function overloadAt({ pointAt, highestLoad, highestCurrent }: TripSearch, evaporating: number): Overload {
  let point: Pick<HermeticPoint, 'motor' | 'current'>;
  try {
    point = pointAt(evaporating);
  } catch (error) {
    if (error instanceof NoSolutionError && error.code === 'motorStalls') {
      return { excess: Number.POSITIVE_INFINITY, by: 'stall' };
    }
    throw error;
  }
  const load = highestLoad === null ? Number.NEGATIVE_INFINITY : point.motor.load / highestLoad - 1;
  const current = highestCurrent === null ? Number.NEGATIVE_INFINITY : point.current / highestCurrent - 1;
  return load >= current ? { excess: load, by: 'motorLoad' } : { excess: current, by: 'current' };
}

/** Nothing where the model has no answer. */
function overloadOrNothing(search: TripSearch, evaporating: number): Overload | undefined {
  try {
    return overloadAt(search, evaporating);
  } catch (error) {
    if (error instanceof KettlefinError) return undefined;
    throw error;
  }
}

function crossing(
  search: TripSearch,
  [low, below]: readonly [number, Overload],
  [high, beyond]: readonly [number, Overload],
): Trip {
  if (Number.isFinite(below.excess) && Number.isFinite(beyond.excess)) {
    const excess = (evaporating: number) => overloadAt(search, evaporating).excess;
    const { root } = findRoot(excess, low, high, {
      absoluteTolerance: narrowedTo,
      valueAtLow: below.excess,
      valueAtHigh: beyond.excess,
      what: 'evaporating temperature at which the motor trips',
    });
    return { evaporating: root, by: overloadAt(search, root).by };
  }
  return bisected(search, low, high, beyond.by);
}

/** Where one end has no number: halving, which asks only on which side a point lies. */
function bisected(search: TripSearch, low: number, high: number, by: Trip['by']): Trip {
  let [under, over, how] = [low, high, by];
  while (over - under > narrowedTo) {
    const middle = (under + over) / 2;
    const now = overloadAt(search, middle);
    if (now.excess > 0) [over, how] = [middle, now.by];
    else under = middle;
  }
  return { evaporating: over, by: how };
}
