// The oblique projection of the tank pictures: the front stands true to scale, the depth runs to the upper left and is shortened,
// so that front, left end and top are seen from outside, and back, right end, bottom and the faces of a recess from inside.
// Lengths stay metres; in the picture x runs to the right and y down.

import type { Point } from '../../tank/index.ts';

/** A place in the picture [m]: to the right, and down. */
export type Spot = readonly [x: number, y: number];

/** How far a metre of depth runs to the left and up. Round shapes are seen from straight in front. */
export interface Depth {
  readonly left: number;
  readonly up: number;
}

export const boxDepth: Depth = { left: 0.4, up: 0.36 };
export const roundDepth: Depth = { left: 0, up: 0.36 };

export function project([x, y, z]: Point, { left, up }: Depth): Spot {
  return [x - left * y, -(z + up * y)];
}

/**
 * Whether an upright or level face turns its outer side to whoever looks. A level face of an outline is the bottom, seen from
 * inside only. Corners run counterclockwise seen from outside the vessel.
 */
export function isSeenFromOutside(polygon: readonly Point[], { left, up }: Depth): boolean {
  const [nx, ny, nz] = normalOf(polygon);
  if (Math.abs(nz) > Math.hypot(nx, ny)) return false;
  return -left * nx - ny + up * nz > 1e-9 * Math.hypot(nx, ny, nz);
}

/** Of any flat polygon, as long as twice its area (Newell's method). */
function normalOf(polygon: readonly Point[]): Point {
  let [nx, ny, nz] = [0, 0, 0];
  polygon.forEach(([x, y, z], index) => {
    const [nextX, nextY, nextZ] = polygon[(index + 1) % polygon.length]!;
    nx += (y - nextY) * (z + nextZ);
    ny += (z - nextZ) * (x + nextX);
    nz += (x - nextX) * (y + nextY);
  });
  return [nx, ny, nz];
}
