// Public names of the shapes.

export { circleArea, faceArea, headspaceGap, waterVolume } from './measures.ts';
export { type Outline, type OutlineFace, outline, type Point } from './outline.ts';
export {
  type Layer,
  type LidLayer,
  LOOSE_LID_OPEN_SHARE,
  OUTER_EMISSIVITY,
  type RectangularTank,
  rectangularTank,
} from './rectangular-tank.ts';
export {
  type CylindricalShape,
  type Face,
  type LShape,
  measuresOf,
  type PiecesShape,
  type RectangularShape,
  type Shape,
  type ShapeMeasures,
} from './shapes.ts';
