// Free panels as pieces side by side: each a square of its own area, the part above the water divided off at its top. They have
// no place in space; the water surface or its lid stands beside them as one more piece.

import type { PiecesShape } from '../../tank/index.ts';
import type { Drawing, PictureVessel } from './drawing.ts';
import { boxOf } from './polygons.ts';
import type { Spot } from './projection.ts';

/** One drawing for each piece, so that rows can be broken between any two. */
export function pieceDrawings({ vessel, label, cover }: PictureVessel, shape: PiecesShape): readonly Drawing[] {
  const panes = shape.pieces.map(({ name, area, areaAboveWater }) => piece(vessel, label, name, area, areaAboveWater));
  const over = cover.kind === 'none' ? 'waterSurface' : cover.kind;
  return [...panes, piece(vessel, label, over, shape.waterSurface, 0)];
}

function piece(vessel: string, label: string, panel: string, wetArea: number, dryArea: number): Drawing {
  const side = Math.sqrt(wetArea + dryArea);
  const level = side === 0 ? 0 : -wetArea / side;
  const square: readonly Spot[] = [
    [0, 0],
    [side, 0],
    [side, -side],
    [0, -side],
  ];
  return {
    vessel,
    label,
    view: 'pieces',
    faces: [{ panel, polygons: [square] }],
    waterLines:
      dryArea > 0
        ? [
            [
              [0, level],
              [side, level],
            ],
          ]
        : [],
    dimensions: [],
    box: boxOf(square),
  };
}
