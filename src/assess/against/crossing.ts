// Where a difference of costs that is linear in one number crosses zero, and how far the doubt lets that crossing wander: all
// values of the number at which the band of the difference holds zero. This is the range one gets from the difference
// itself; a ratio of two doubtful numbers varied end by end would break down where its divisor may be zero.
// Source of the idea: Fieller (1954), Some problems in interval estimation, J. R. Statist. Soc. B 16, 175 (from memory).

import { findRoot } from '../../numerics/index.ts';
import type { BreakEven } from '../assessment/assessment.ts';
import { combinedReach, type Doubt, endMoves } from '../doubt/doubt.ts';

/** D(x) = at0 + sign · slope · x: the names of two results that were varied together. */
export interface DoubtfulLine {
  readonly at0: string;
  readonly slope: string;
  readonly sign: 1 | -1;
}

/** Which x are asked about, and how far the ends of the range are looked for. */
export interface Reach {
  readonly from: number;
  /** May be infinite. */
  readonly to: number;
  readonly searchedTo: number;
}

export interface Crossing {
  /** At which x the loop costs less: D below 0. */
  readonly loopCostsLess: BreakEven['loopCostsLess'];
  /** Null for an end that was not found within the search: the range has no end on that side. */
  readonly at: { readonly low: number | null; readonly likely: number; readonly high: number | null } | null;
}

/** The crossing of D(x) = 0 with its range; without one, which of the two costs less at every x asked about. */
export function crossingOf(doubt: Doubt, { at0, slope, sign }: DoubtfulLine, reach: Reach): Crossing {
  const start = doubt.bands[at0]!.likely;
  const rise = sign * doubt.bands[slope]!.likely;
  const likely = -start / rise;
  if (rise === 0 || !(likely >= reach.from && likely <= reach.to)) {
    return { loopCostsLess: start + rise * reach.from < 0 ? 'always' : 'never', at: null };
  }
  const moves = doubt.moves.map((move) => ({ start: endMoves(move, at0), rise: endMoves(move, slope) }));
  const reachAt = (x: number) =>
    combinedReach(
      moves.map((move) => [move.start[0] + sign * move.rise[0] * x, move.start[1] + sign * move.rise[1] * x] as const),
    );
  // Above zero where the band still holds zero, below where it no longer does. Convex on either side: the reach is a norm of
  // non-negative convex functions of x, and the difference itself is straight.
  const cheaperStill = (x: number) => start + rise * x + reachAt(x).up;
  const dearerStill = (x: number) => reachAt(x).down - (start + rise * x);
  const [before, after] = rise > 0 ? [cheaperStill, dearerStill] : [dearerStill, cheaperStill];
  return {
    loopCostsLess: rise > 0 ? 'below' : 'above',
    at: { low: endBetween(before, likely, reach.from), likely, high: endBetween(after, likely, reach.searchedTo) },
  };
}

/** Where a convex function that is not below zero at `near` first falls below it on the way to `far`; null where it never does. */
function endBetween(f: (x: number) => number, near: number, far: number): number | null {
  if (near === far) return null;
  const below = f(far) < 0 ? far : lowestBetween(f, near, far);
  if (!(f(below) < 0)) return null;
  if (f(near) <= 0) return near;
  return findRoot(f, near, below, { relativeTolerance: 1e-9, what: 'end of a break-even range' }).root;
}

/** Place of the least value of a convex function, by ternary search. */
function lowestBetween(f: (x: number) => number, one: number, other: number): number {
  let [left, right] = [Math.min(one, other), Math.max(one, other)];
  for (let step = 0; step < 60; step += 1) {
    const third = (right - left) / 3;
    if (f(left + third) < f(right - third)) right -= third;
    else left += third;
  }
  return (left + right) / 2;
}
