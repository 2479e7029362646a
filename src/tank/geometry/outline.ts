// The faces of a shape as polygons in space, for drawing to scale: x to the right along the front, y from the front to the
// back, z up; metres, inner dimensions. Free pieces have no place in space and no outline.

import type { CylindricalShape, LShape, RectangularShape, Shape } from './shapes.ts';

export type Point = readonly [x: number, y: number, z: number];

/** A face may need several polygons: the curved side of a cylinder is drawn in strips. */
export interface OutlineFace {
  readonly name: string;
  readonly polygons: readonly (readonly Point[])[];
}

export interface Outline {
  readonly faces: readonly OutlineFace[];
  readonly waterSurface: readonly Point[];
  /** Box around it [m]. */
  readonly size: Point;
}

/** Strips of a cylinder's side: enough to look round on a screen. */
const strips = 36;

/** Undefined for free pieces, which have no place in space. */
export function outline(shape: Shape): Outline | undefined {
  return shape.kind === 'panels' ? undefined : prism(shape, planOf(shape));
}

type Upright = RectangularShape | CylindricalShape | LShape;
/** One side of the plan, from one corner to the next, counterclockwise seen from above. */
interface PlanSide {
  readonly name: string;
  readonly from: readonly [x: number, y: number];
  readonly to: readonly [x: number, y: number];
}

function planOf(shape: Upright): readonly PlanSide[] {
  switch (shape.kind) {
    case 'rectangular': {
      const { length, width } = shape;
      return closed([
        ['front', 0, 0],
        ['right', length, 0],
        ['back', length, width],
        ['left', 0, width],
      ]);
    }
    case 'lShape': {
      const { length, width, recessLength, recessWidth } = shape;
      return closed([
        ['front', 0, 0],
        ['right', length, 0],
        ['recessBack', length, width - recessWidth],
        ['recessSide', length - recessLength, width - recessWidth],
        ['back', length - recessLength, width],
        ['left', 0, width],
      ]);
    }
    case 'cylinder': {
      const radius = shape.diameter / 2;
      return closed(
        Array.from({ length: strips }, (_, index) => {
          const angle = (2 * Math.PI * index) / strips;
          return ['side', radius * (1 + Math.cos(angle)), radius * (1 + Math.sin(angle))] as const;
        }),
      );
    }
  }
}

/** Corners in order; each gives its name to the side that begins there. */
function closed(corners: readonly (readonly [name: string, x: number, y: number])[]): readonly PlanSide[] {
  return corners.map(([name, x, y], index) => {
    const [, nextX, nextY] = corners[(index + 1) % corners.length]!;
    return { name, from: [x, y], to: [nextX, nextY] };
  });
}

function prism({ height, waterDepth }: Upright, plan: readonly PlanSide[]): Outline {
  const byName = new Map<string, (readonly Point[])[]>();
  for (const { name, from, to } of plan) {
    const wall: readonly Point[] = [
      [...from, 0],
      [...to, 0],
      [...to, height],
      [...from, height],
    ];
    byName.set(name, [...(byName.get(name) ?? []), wall]);
  }
  const at = (z: number) => plan.map(({ from }): Point => [...from, z]);
  const faces = [...byName].map(([name, polygons]): OutlineFace => ({ name, polygons }));
  return {
    faces: [...faces, { name: 'bottom', polygons: [at(0)] }],
    waterSurface: at(waterDepth),
    size: [Math.max(...plan.map(({ from }) => from[0])), Math.max(...plan.map(({ from }) => from[1])), height],
  };
}
