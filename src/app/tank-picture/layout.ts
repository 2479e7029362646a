// All drawings of a tank at one scale on one sheet: the display tank in the first rows, what stands below or beside it after it.
// The scale is the largest at which the rows fit the width and the sheet does not grow too high.

import type { Drawing } from './drawing.ts';

/** Around a drawing [px]: room for its caption, its dimension lines and their words. */
export interface Margins {
  readonly above: number;
  readonly below: number;
  readonly before: number;
  readonly after: number;
  /** No narrower than this with all margins. */
  readonly least: number;
}

export interface PlacedDrawing {
  readonly drawing: Drawing;
  /** Of the whole place, margins included [px]. */
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
  /** Where the drawing's own zero is [px]. */
  readonly originX: number;
  readonly originY: number;
}

export interface Sheet {
  /** [px/m]. */
  readonly scale: number;
  readonly height: number;
  readonly placed: readonly PlacedDrawing[];
}

export interface SheetFrame {
  readonly width: number;
  readonly mostHeight: number;
  /** At that scale [px/m]. */
  readonly marginsOf: (drawing: Drawing, scale: number) => Margins;
}

/** A tank as small as a cup is not drawn as large as the sheet [px/m]. */
const mostScale = 900;
const shrink = 0.97;

/** Even a very long vessel is drawn: then it is wider than it is readable, at this scale [px/m]. */
const leastScale = 4;

export function laySheet(drawings: readonly Drawing[], frame: SheetFrame): Sheet {
  let scale = mostScale;
  let sheet = rowsAt(drawings, frame, scale);
  while (!sheet.fits && scale > leastScale) {
    scale *= shrink;
    sheet = rowsAt(drawings, frame, scale);
  }
  return { scale, height: sheet.height, placed: sheet.placed };
}

function rowsAt(drawings: readonly Drawing[], { width, mostHeight, marginsOf }: SheetFrame, scale: number) {
  const placed: PlacedDrawing[] = [];
  let [x, y, rowHeight, widest] = [0, 0, 0, 0];
  let before: Drawing | undefined;
  for (const drawing of drawings) {
    const { above, below, before: leading, after, least } = marginsOf(drawing, scale);
    const { box } = drawing;
    const own = {
      width: Math.max(least, leading + scale * (box.right - box.left) + after),
      height: above + scale * (box.bottom - box.top) + below,
    };
    const isBelowTheTank = before?.vessel === 'tank' && drawing.vessel !== 'tank';
    if (before !== undefined && (isBelowTheTank || x + own.width > width)) {
      y += rowHeight;
      [x, rowHeight] = [0, 0];
    }
    placed.push({
      drawing,
      ...own,
      left: x,
      top: y,
      originX: x + leading - scale * box.left,
      originY: y + above - scale * box.top,
    });
    x += own.width;
    rowHeight = Math.max(rowHeight, own.height);
    widest = Math.max(widest, x);
    before = drawing;
  }
  const height = y + rowHeight;
  return { placed, height, fits: widest <= width && height <= mostHeight };
}
