// One vessel as drawings in the picture plane: from outside, and looking in with front and left end taken away, so that each
// panel is seen once and none hides another. Metres; scaled and placed in layout.ts.

import { type Outline, outline, type Point, type Shape } from '../../tank/index.ts';
import { type DrawnDimension, innerDimensions, outerDimensions } from './dimensions.ts';
import { type Box, boxOf } from './polygons.ts';
import { boxDepth, type Depth, isSeenFromOutside, project, roundDepth, type Spot } from './projection.ts';

/** What lies over the water, as it is drawn: nothing, a lid on the rim, a hood above it [m]. */
export type DrawnCover =
  | { readonly kind: 'none' }
  | { readonly kind: 'lid' }
  | { readonly kind: 'hood'; readonly height: number };

export interface PictureVessel {
  /** 'tank', 'sump', … */
  readonly vessel: string;
  readonly label: string;
  readonly shape: Shape;
  readonly cover: DrawnCover;
}

export interface DrawnFace {
  /** Name in its vessel: 'front', 'lid', 'hood', or 'waterSurface' where nothing covers it. */
  readonly panel: string;
  readonly polygons: readonly (readonly Spot[])[];
}

export type DrawingView = 'outside' | 'inside' | 'pieces';

export interface Drawing {
  readonly vessel: string;
  readonly label: string;
  readonly view: DrawingView;
  readonly faces: readonly DrawnFace[];
  /** Where the water reaches to: lines on the panes from outside, the whole surface looking in. */
  readonly waterLines: readonly (readonly Spot[])[];
  readonly dimensions: readonly DrawnDimension[];
  readonly box: Box;
}

/** The drawings of a vessel with a place in space; free pieces are drawn in pieces.ts. */
export function drawingsOf({ vessel, label, shape, cover }: PictureVessel): readonly Drawing[] {
  const solid = outline(shape);
  if (solid === undefined || shape.kind === 'panels') return [];
  const depth = shape.kind === 'cylinder' ? roundDepth : boxDepth;
  const flat = (polygon: readonly Point[]) => polygon.map((point) => project(point, depth));
  const seen = (isOutside: boolean) =>
    solid.faces
      .map(({ name, polygons }) => ({
        panel: name,
        polygons: asOne(polygons.filter((polygon) => isSeenFromOutside(polygon, depth) === isOutside).map(flat)),
      }))
      .filter(({ polygons }) => polygons.length > 0);
  const levels = solid.faces.flatMap(({ polygons }) =>
    polygons
      .filter((polygon) => isSeenFromOutside(polygon, depth))
      .map(([from, to]) => flat([atLevel(from!, shape.waterDepth), atLevel(to!, shape.waterDepth)])),
  );
  const outside = [...seen(true), coverFace(solid, cover, depth)];
  const inside = seen(false);
  const base = { vessel, label };
  return [
    {
      ...base,
      view: 'outside',
      faces: outside,
      waterLines: levels,
      dimensions: outerDimensions(shape, depth, topOf(shape.height, cover)),
      box: boxOf(outside.flatMap(({ polygons }) => polygons.flat())),
    },
    {
      ...base,
      view: 'inside',
      faces: inside,
      waterLines: [closed(flat(solid.waterSurface))],
      dimensions: innerDimensions(shape, depth),
      box: boxOf(inside.flatMap(({ polygons }) => polygons.flat())),
    },
  ];
}

/** The strips of a curved side, in order round it, as one shape: along all their lower edges, back along the upper ones. */
function asOne(polygons: readonly (readonly Spot[])[]): readonly (readonly Spot[])[] {
  const last = polygons.at(-1);
  if (last === undefined || polygons.length < 2) return polygons;
  const lower = [...polygons.map(([begin]) => begin!), last[1]!];
  const upper = [...polygons.map(([, , , begin]) => begin!), last[2]!];
  return [[...lower, ...upper.toReversed()]];
}

function isRound(sides: readonly unknown[]): boolean {
  return sides.length > 6;
}

function atLevel([x, y]: Point, z: number): Point {
  return [x, y, z];
}

function topOf(rim: number, cover: DrawnCover): number {
  return cover.kind === 'hood' ? rim + cover.height : rim;
}

function closed(line: readonly Spot[]): readonly Spot[] {
  return [...line, line[0]!];
}

/** The opening at the rim, or the hood's outer sides and top. */
function coverFace({ waterSurface, size }: Outline, cover: DrawnCover, depth: Depth): DrawnFace {
  const rim = size[2];
  const opening = (z: number) => waterSurface.map((point) => atLevel(point, z));
  const flat = (polygon: readonly Point[]) => polygon.map((point) => project(point, depth));
  if (cover.kind !== 'hood') {
    return { panel: cover.kind === 'lid' ? 'lid' : 'waterSurface', polygons: [flat(opening(rim))] };
  }
  const top = topOf(rim, cover);
  const sides = waterSurface
    .map((from, index): readonly Point[] => {
      const to = waterSurface[(index + 1) % waterSurface.length]!;
      return [atLevel(from, rim), atLevel(to, rim), atLevel(to, top), atLevel(from, top)];
    })
    .filter((polygon) => isSeenFromOutside(polygon, depth));
  return {
    panel: 'hood',
    polygons: [...(isRound(sides) ? asOne(sides.map(flat)) : sides.map(flat)), flat(opening(top))],
  };
}
