// Defaults that follow another field: the coldest room from the usual one, the price of house heat from that of electricity.
// Such a default keeps its distance, or its ratio, to what it follows, so the two are not independent: when the followed
// field is varied its followers move along, and a follower is varied by its own spread alone, never by what it copied.

import type { Band, Estimate } from '../../quantities/index.ts';
import { type PlainDesign, withValue } from '../plain.ts';

/** How a default follows another field. */
export interface Following {
  /** Path of the field that is followed. */
  readonly follows: string;
  /** `difference`: followed + own. `ratio`: followed × own. */
  readonly by: 'difference' | 'ratio';
  /** The difference in SI, or the ratio: its own range, without that of the followed field. */
  readonly own: Band;
}

/** A field of one design that was not given and follows another. */
export interface Follower extends Following {
  readonly path: string;
}

/** The value that keeps the distance or ratio `own` to the followed value. */
export function followed(by: Following['by'], value: number, own: number): number {
  return by === 'difference' ? value + own : value * own;
}

/**
 * The range of a follower's own spread, with the followed field at its likely value.
 * @param following  how it follows
 * @param estimate   the whole range of the follower, into which that of the followed field has gone
 * @param likely     likely value of the followed field
 */
export function ownSpread(following: Following, estimate: Estimate, likely: number): Estimate {
  const { by, own } = following;
  const { origin } = estimate;
  return {
    low: followed(by, likely, own.low),
    likely: estimate.likely,
    high: followed(by, likely, own.high),
    origin,
  };
}

/**
 * The design with one number changed, and with it every default that follows it, that follows one of those, and so on:
 * each at its likely difference or ratio. What the person typed stays.
 * @throws InputError as `withValue` does
 */
export function withFollowers(
  plain: PlainDesign,
  followers: readonly Follower[],
  path: string,
  value: number,
): PlainDesign {
  return followers
    .filter(({ follows }) => follows === path)
    .reduce(
      (changed, { path: next, by, own }) => withFollowers(changed, followers, next, followed(by, value, own.likely)),
      withValue(plain, path, value),
    );
}
