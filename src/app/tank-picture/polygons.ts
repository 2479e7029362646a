// What laying out needs of polygons in the picture: their box, whether a place lies inside, where a label may stand.

import type { Spot } from './projection.ts';

export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

export function boxOf(spots: readonly Spot[]): Box {
  const xs = spots.map(([x]) => x);
  const ys = spots.map(([, y]) => y);
  return { left: Math.min(...xs), top: Math.min(...ys), right: Math.max(...xs), bottom: Math.max(...ys) };
}

/** By the number of edges crossed on the way to the right. */
export function isInside([x, y]: Spot, polygon: readonly Spot[]): boolean {
  let inside = false;
  polygon.forEach(([ax, ay], index) => {
    const [bx, by] = polygon[(index + 1) % polygon.length]!;
    if (ay > y !== by > y && x < ax + ((y - ay) / (by - ay)) * (bx - ax)) inside = !inside;
  });
  return inside;
}

/** How finely places for a label are tried, across and down. */
const tries = 12;

/**
 * The middle of a box of that size inside a polygon, as near to the middle of the polygon as one is found; undefined where none
 * is.
 */
export function placeInside(polygon: readonly Spot[], width: number, height: number): Spot | undefined {
  const box = boxOf(polygon);
  const middle: Spot = [(box.left + box.right) / 2, (box.top + box.bottom) / 2];
  const spots = Array.from({ length: (tries + 1) ** 2 }, (_, index): Spot => {
    const across = (index % (tries + 1)) / tries;
    const down = Math.floor(index / (tries + 1)) / tries;
    return [box.left + across * (box.right - box.left), box.top + down * (box.bottom - box.top)];
  });
  const distance = ([x, y]: Spot) => Math.hypot(x - middle[0], y - middle[1]);
  const fits = ([x, y]: Spot) =>
    [-0.5, 0, 0.5].every((across) =>
      [-0.5, 0.5].every((down) => isInside([x + across * width, y + down * height], polygon)),
    );
  return [middle, ...spots].toSorted((a, b) => distance(a) - distance(b)).find(fits);
}
