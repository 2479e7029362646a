// Where on the sheet each face answers the pointer: the box around each of its polygons, clipped to the polygon.

import type { PlacedDrawing, Sheet } from './layout.ts';
import { panelKey } from './panels.ts';
import { type Box, boxOf } from './polygons.ts';
import type { Spot } from './projection.ts';

export interface FaceTarget {
  readonly id: string;
  /** Of the panel. */
  readonly key: string;
  /** [px]. */
  readonly box: Box;
  /** CSS clip-path, relative to the box. */
  readonly clip: string;
}

export function faceTargets({ placed, scale }: Sheet): readonly FaceTarget[] {
  return placed.flatMap((place) =>
    place.drawing.faces.flatMap(({ panel, polygons }) =>
      polygons.map((polygon, index): FaceTarget => {
        const spots = polygon.map((spot) => onSheet(spot, place, scale));
        const box = boxOf(spots);
        const key = panelKey(place.drawing.vessel, panel);
        const corners = spots.map(([x, y]) => `${rounded(x - box.left)}px ${rounded(y - box.top)}px`);
        return {
          id: `${key} ${place.drawing.view} ${index}`,
          key,
          box,
          clip: `polygon(${corners.join(', ')})`,
        };
      }),
    ),
  );
}

/** From the drawing's own metres to the sheet [px]. */
export function onSheet([x, y]: Spot, { originX, originY }: PlacedDrawing, scale: number): Spot {
  return [originX + scale * x, originY + scale * y];
}

function rounded(number: number): number {
  return Math.round(10 * number) / 10;
}
