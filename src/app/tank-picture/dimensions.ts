// Which sizes stand beside a drawing, and where: outer ones where the tank is seen from outside, the water's depth looking in.

import type { Point, Shape } from '../../tank/index.ts';
import { type Depth, project, type Spot } from './projection.ts';

export interface DrawnDimension {
  readonly name: 'length' | 'width' | 'height' | 'diameter' | 'waterDepth' | 'recessLength' | 'recessWidth';
  /** [m]. */
  readonly size: number;
  readonly from: Spot;
  readonly to: Spot;
  /** Unit direction in which the line stands off the drawing. */
  readonly off: Spot;
}

const down: Spot = [0, 1];
const right: Spot = [1, 0];
const up: Spot = [0, -1];

type Upright = Exclude<Shape, { readonly kind: 'panels' }>;

/** Length, width and height as drawn; `top`: height at which what is drawn ends, a hood above the rim included [m]. */
export function outerDimensions(shape: Upright, depth: Depth, top: number): readonly DrawnDimension[] {
  const at = (...point: Point) => project(point, depth);
  const [x, y] = rightmost(shape);
  const height = dimension('height', shape.height, at(x, y, 0), at(x, y, shape.height), right);
  if (shape.kind === 'cylinder') {
    return [dimension('diameter', shape.diameter, at(0, 0, 0), at(shape.diameter, 0, 0), down), height];
  }
  const { length, width } = shape;
  const slant = Math.hypot(depth.left, depth.up);
  const besideSlant: Spot = [-depth.up / slant, depth.left / slant];
  const box = [
    dimension('length', length, at(0, 0, 0), at(length, 0, 0), down),
    dimension('width', width, at(0, 0, 0), at(0, width, 0), besideSlant),
    height,
  ];
  if (shape.kind === 'rectangular') return box;
  const [corner, inner] = [length - shape.recessLength, width - shape.recessWidth];
  return [...box, dimension('recessWidth', shape.recessWidth, at(corner, inner, top), at(corner, width, top), right)];
}

export function innerDimensions(shape: Upright, depth: Depth): readonly DrawnDimension[] {
  const at = (...point: Point) => project(point, depth);
  const [x, y] = rightmost(shape);
  const water = dimension('waterDepth', shape.waterDepth, at(x, y, 0), at(x, y, shape.waterDepth), right);
  if (shape.kind !== 'lShape') return [water];
  const { length, width, height, recessLength, recessWidth } = shape;
  const inner = width - recessWidth;
  const along = [at(length - recessLength, inner, height), at(length, inner, height)] as const;
  return [water, dimension('recessLength', recessLength, ...along, up)];
}

/** Where, seen from above, the drawing reaches farthest to the right. */
function rightmost(shape: Upright): readonly [x: number, y: number] {
  return shape.kind === 'cylinder' ? [shape.diameter, shape.diameter / 2] : [shape.length, 0];
}

function dimension(name: DrawnDimension['name'], size: number, from: Spot, to: Spot, off: Spot): DrawnDimension {
  return { name, size, from, to, off };
}
