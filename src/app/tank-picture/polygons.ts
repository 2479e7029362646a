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

/** The outline around several polygons that stand in a row: strips of a curved side (Andrew's monotone chain). */
export function hullOf(spots: readonly Spot[]): readonly Spot[] {
  const sorted = spots.toSorted(([ax, ay], [bx, by]) => ax - bx || ay - by);
  const half = (ordered: readonly Spot[]): readonly Spot[] => {
    const chain: Spot[] = [];
    for (const spot of ordered) {
      while (chain.length > 1 && turn(chain.at(-2)!, chain.at(-1)!, spot) <= 0) chain.pop();
      chain.push(spot);
    }
    return chain.slice(0, -1);
  };
  return [...half(sorted), ...half(sorted.toReversed())];
}

function turn([ax, ay]: Spot, [bx, by]: Spot, [cx, cy]: Spot): number {
  return (bx - ax) * (cy - ay) - (by - ay) * (cx - ax);
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
