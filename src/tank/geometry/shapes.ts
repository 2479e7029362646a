// Shapes of a vessel and what they come to: faces with wet and dry area, water surface, volume, freeboard. Inner dimensions;
// corners counted once. Formulas of areas and volumes stand in measures.ts.

import { InputError, requireNonNegative, requirePositive } from '../../numerics/index.ts';
import type { Facing } from '../built-tank.ts';
import { circleArea, faceArea, headspaceGap, waterVolume } from './measures.ts';

/** A box; the front and the back are `length` wide, the two ends `width` [m]. */
export interface RectangularShape {
  readonly kind: 'rectangular';
  readonly length: number;
  readonly width: number;
  readonly height: number;
  /** Water level above the bottom [m], at most `height`. */
  readonly waterDepth: number;
}

/** An upright cylinder [m]. */
export interface CylindricalShape {
  readonly kind: 'cylinder';
  readonly diameter: number;
  readonly height: number;
  readonly waterDepth: number;
}

/** A box whose back right corner is cut out over the whole height [m]. */
export interface LShape {
  readonly kind: 'lShape';
  readonly length: number;
  readonly width: number;
  readonly height: number;
  /** Of the corner cut out: along the back, and along the right end. */
  readonly recessLength: number;
  readonly recessWidth: number;
  readonly waterDepth: number;
}

/** Pieces of any form, each by its area [m²]; water by its surface [m²] and volume [m³]. */
export interface PiecesShape {
  readonly kind: 'panels';
  readonly pieces: readonly {
    readonly name: string;
    readonly facing: Facing;
    readonly area: number;
    readonly areaAboveWater: number;
  }[];
  readonly waterSurface: number;
  readonly waterVolume: number;
  /** Air between water and rim [m]. */
  readonly freeboard: number;
}

export type Shape = RectangularShape | CylindricalShape | LShape | PiecesShape;

/** One face of a shape. */
export interface Face {
  readonly name: string;
  readonly facing: Facing;
  /** Along the water line [m]; absent for the bottom and for pieces. */
  readonly breadth?: number;
  /** [m²], below and above the water line. */
  readonly wetArea: number;
  readonly dryArea: number;
}

export interface ShapeMeasures {
  readonly faces: readonly Face[];
  readonly waterSurface: number;
  readonly perimeter: number;
  readonly waterVolume: number;
  readonly freeboard: number;
}

/**
 * Faces, water surface, volume and freeboard of a shape.
 * @param shape  inner dimensions
 * @param path   place in the design, for errors
 * @throws InputError naming the first dimension that cannot be: water above the rim, a recess as large as the tank
 */
export function measuresOf(shape: Shape, path = 'tank.load'): ShapeMeasures {
  switch (shape.kind) {
    case 'rectangular':
      return rectangularMeasures(shape, path);
    case 'cylinder':
      return cylinderMeasures(shape, path);
    case 'lShape':
      return lShapeMeasures(shape, path);
    case 'panels':
      return piecesMeasures(shape, path);
  }
}

function rectangularMeasures(shape: RectangularShape, path: string): ShapeMeasures {
  const { length, width } = shape;
  requirePositive(`${path}.length`, length);
  requirePositive(`${path}.width`, width);
  const plan: readonly Wall[] = [
    ['front', length],
    ['back', length],
    ['left', width],
    ['right', width],
  ];
  return upright(shape, path, plan, faceArea(1, length, width));
}

function cylinderMeasures(shape: CylindricalShape, path: string): ShapeMeasures {
  const { diameter } = shape;
  requirePositive(`${path}.diameter`, diameter);
  return upright(shape, path, [['side', Math.PI * diameter]], circleArea(diameter));
}

function lShapeMeasures(shape: LShape, path: string): ShapeMeasures {
  const { length, width, recessLength, recessWidth } = shape;
  requirePositive(`${path}.length`, length);
  requirePositive(`${path}.width`, width);
  requireRecess(`${path}.recessLength`, recessLength, length);
  requireRecess(`${path}.recessWidth`, recessWidth, width);
  const plan: readonly Wall[] = [
    ['front', length],
    ['right', width - recessWidth],
    ['recessBack', recessLength],
    ['recessSide', recessWidth],
    ['back', length - recessLength],
    ['left', width],
  ];
  return upright(shape, path, plan, faceArea(1, length, width) - faceArea(1, recessLength, recessWidth));
}

function piecesMeasures({ pieces, ...water }: PiecesShape, path: string): ShapeMeasures {
  requirePositive(`${path}.waterSurface`, water.waterSurface);
  requirePositive(`${path}.waterVolume`, water.waterVolume);
  requireNonNegative(`${path}.freeboard`, water.freeboard);
  pieces.forEach(({ area, areaAboveWater }, index) => {
    requireNonNegative(`${path}.panels.${index}.area`, area);
    requireNonNegative(`${path}.panels.${index}.areaAboveWater`, areaAboveWater);
  });
  const faces = pieces.map(({ name, facing, area, areaAboveWater }) => {
    return { name, facing, wetArea: area, dryArea: areaAboveWater };
  });
  // A round surface has the shortest perimeter; a real one is longer, which only the mass-transfer analogy reads.
  const perimeter = 2 * Math.sqrt(Math.PI * water.waterSurface);
  return { faces, perimeter, ...water };
}

type Wall = readonly [name: string, breadth: number];

/** Upright walls on a plan, a flat bottom, water up to its depth. */
function upright(
  { height, waterDepth }: { readonly height: number; readonly waterDepth: number },
  path: string,
  walls: readonly Wall[],
  plan: number,
): ShapeMeasures {
  requirePositive(`${path}.height`, height);
  requirePositive(`${path}.waterDepth`, waterDepth);
  if (waterDepth > height) {
    throw new InputError(`${path}.waterDepth`, waterDepth, `at most the height, ${height} m`, 'waterAboveRim');
  }
  const freeboard = headspaceGap(height, waterDepth);
  const sides = walls.map(
    ([name, breadth]): Face => ({
      name,
      facing: 'side',
      breadth,
      wetArea: faceArea(1, breadth, waterDepth),
      dryArea: faceArea(1, breadth, freeboard),
    }),
  );
  return {
    faces: [...sides, { name: 'bottom', facing: 'bottom', wetArea: plan, dryArea: 0 }],
    waterSurface: plan,
    perimeter: walls.reduce((sum, [, breadth]) => sum + breadth, 0),
    waterVolume: waterVolume(plan, waterDepth),
    freeboard,
  };
}

function requireRecess(path: string, recess: number, whole: number): void {
  requirePositive(path, recess);
  if (recess >= whole) throw new InputError(path, recess, `less than ${whole} m, the tank itself`, 'recessTooLarge');
}
