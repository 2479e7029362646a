// Shapes: areas and volumes by hand, faces that close the shape, outlines that agree with the faces, and what is refused.

import { describe, expect, test } from 'vitest';
import { measuresOf, outline, type Point, type Shape } from '../../src/tank/index.ts';

const box: Shape = { kind: 'rectangular', length: 1.5, width: 0.5, height: 0.6, waterDepth: 0.57 };
const round: Shape = { kind: 'cylinder', diameter: 0.8, height: 0.9, waterDepth: 0.85 };
const corner: Shape = {
  kind: 'lShape',
  length: 1.6,
  width: 1.2,
  height: 0.6,
  recessLength: 0.9,
  recessWidth: 0.7,
  waterDepth: 0.55,
};
const pieces: Shape = {
  kind: 'panels',
  pieces: [
    { name: 'panel1', facing: 'side', area: 0.8, areaAboveWater: 0.05 },
    { name: 'panel2', facing: 'bottom', area: 0.6, areaAboveWater: 0 },
  ],
  waterSurface: 0.6,
  waterVolume: 0.3,
  freeboard: 0.04,
};

/** Area of a flat polygon in space: half the length of the sum of the cross products of its edges. */
function polygonArea(points: readonly Point[]): number {
  const sum = [0, 0, 0];
  points.forEach(([x, y, z], index) => {
    const [u, v, w] = points[(index + 1) % points.length]!;
    sum[0]! += y * w - z * v;
    sum[1]! += z * u - x * w;
    sum[2]! += x * v - y * u;
  });
  return Math.hypot(...sum) / 2;
}

describe('by hand', () => {
  test('a box: 1.5 x 0.5 x 0.6 m, water 0.57 m', () => {
    const { faces, ...rest } = measuresOf(box);
    expect(faces.map(({ name }) => name)).toEqual(['front', 'back', 'left', 'right', 'bottom']);
    expect(faces[0]!.wetArea).toBeCloseTo(0.855, 12);
    expect(faces[2]!.wetArea).toBeCloseTo(0.285, 12);
    expect(faces[0]!.dryArea).toBeCloseTo(0.045, 12);
    expect(rest.waterSurface).toBeCloseTo(0.75, 12);
    expect(rest.perimeter).toBeCloseTo(4, 12);
    expect(rest.waterVolume).toBeCloseTo(0.4275, 12);
    expect(rest.freeboard).toBeCloseTo(0.03, 12);
  });

  test('a cylinder: 0.8 m across, water 0.85 m', () => {
    const { faces, waterSurface, perimeter, waterVolume } = measuresOf(round);
    expect(faces.map(({ name }) => name)).toEqual(['side', 'bottom']);
    expect(waterSurface).toBeCloseTo(0.502655, 6);
    expect(perimeter).toBeCloseTo(2.513274, 6);
    expect(faces[0]!.wetArea).toBeCloseTo(2.136283, 6);
    expect(waterVolume).toBeCloseTo(0.427257, 6);
  });

  test('an L: 1.6 x 1.2 m with 0.9 x 0.7 m cut out', () => {
    const { faces, waterSurface, perimeter, waterVolume } = measuresOf(corner);
    expect(faces.map(({ name }) => name)).toEqual([
      'front',
      'right',
      'recessBack',
      'recessSide',
      'back',
      'left',
      'bottom',
    ]);
    expect(waterSurface).toBeCloseTo(1.29, 12);
    // Cutting out a corner leaves the perimeter as it was.
    expect(perimeter).toBeCloseTo(5.6, 12);
    expect(waterVolume).toBeCloseTo(0.7095, 12);
  });

  test('free pieces keep their areas', () => {
    const { faces, waterVolume, waterSurface } = measuresOf(pieces);
    expect(faces).toEqual([
      { name: 'panel1', facing: 'side', wetArea: 0.8, dryArea: 0.05 },
      { name: 'panel2', facing: 'bottom', wetArea: 0.6, dryArea: 0 },
    ]);
    expect([waterVolume, waterSurface]).toEqual([0.3, 0.6]);
  });
});

describe('outlines', () => {
  test.each([box, corner])('polygons have the area of their faces ($kind)', (shape) => {
    const drawn = outline(shape)!;
    for (const { name, wetArea, dryArea } of measuresOf(shape).faces) {
      const face = drawn.faces.find((each) => each.name === name)!;
      const area = face.polygons.reduce((sum, polygon) => sum + polygonArea(polygon), 0);
      expect(area).toBeCloseTo(wetArea + dryArea, 12);
    }
    expect(polygonArea(drawn.waterSurface)).toBeCloseTo(measuresOf(shape).waterSurface, 12);
  });

  test('a cylinder drawn in strips is less than 1 % smaller than it is', () => {
    const drawn = outline(round)!;
    const side = drawn.faces.find(({ name }) => name === 'side')!;
    const area = side.polygons.reduce((sum, polygon) => sum + polygonArea(polygon), 0);
    const whole = measuresOf(round).faces[0]!;
    expect(area / (whole.wetArea + whole.dryArea)).toBeGreaterThan(0.99);
    expect(area).toBeLessThan(whole.wetArea + whole.dryArea);
  });

  test('free pieces have no place in space', () => {
    expect(outline(pieces)).toBeUndefined();
  });
});

describe('what cannot be is refused with its place', () => {
  test.each<[string, Shape, string]>([
    ['water above the rim', { ...round, waterDepth: 1 }, 'tank.load.waterDepth'],
    ['a recess as long as the tank', { ...corner, recessLength: 1.6 }, 'tank.load.recessLength'],
    ['a recess wider than the tank', { ...corner, recessWidth: 1.3 }, 'tank.load.recessWidth'],
    ['a diameter of nothing', { ...round, diameter: 0 }, 'tank.load.diameter'],
    ['a negative piece', { ...pieces, pieces: [{ ...pieces.pieces[0]!, area: -1 }] }, 'tank.load.panels.0.area'],
    ['no water', { ...pieces, waterVolume: 0 }, 'tank.load.waterVolume'],
  ])('%s', (_, shape, path) => {
    expect(() => measuresOf(shape)).toThrow(expect.objectContaining({ name: 'InputError', path }));
  });
});
