// The tank drawn to scale: each panel is seen once and none hides another, sizes are true, the sheet keeps within its width,
// colours tell heat per area.

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { drawingsOf, type PictureVessel } from '../../src/app/tank-picture/drawing.ts';
import { faceTargets } from '../../src/app/tank-picture/face-targets.ts';
import { classOf, heatScale, tones } from '../../src/app/tank-picture/heat-scale.ts';
import { laySheet } from '../../src/app/tank-picture/layout.ts';
import { pieceDrawings } from '../../src/app/tank-picture/pieces.ts';
import { boxOf, isInside, placeInside } from '../../src/app/tank-picture/polygons.ts';
import type { Spot } from '../../src/app/tank-picture/projection.ts';
import { marginsOf } from '../../src/app/tank-picture/words.ts';
import { fromView } from '../../src/quantities/index.ts';
import { measuresOf, type Shape } from '../../src/tank/index.ts';

const size = fc.double({ min: 0.1, max: 3, noNaN: true });
const share = fc.double({ min: 0.1, max: 0.9, noNaN: true });

const rectangular = fc
  .record({ length: size, width: size, height: size, share })
  .map(({ share: part, ...box }): Shape => ({ kind: 'rectangular', ...box, waterDepth: part * box.height }));
const lShape = fc.record({ length: size, width: size, height: size, share, along: share, across: share }).map(
  ({ share: part, along, across, ...box }): Shape => ({
    kind: 'lShape',
    ...box,
    recessLength: along * box.length,
    recessWidth: across * box.width,
    waterDepth: part * box.height,
  }),
);
const cylinder = fc
  .record({ diameter: size, height: size, share })
  .map(({ share: part, ...round }): Shape => ({ kind: 'cylinder', ...round, waterDepth: part * round.height }));

function vesselOf(shape: Shape, vessel = 'tank'): PictureVessel {
  return { vessel, label: vessel, shape, cover: { kind: 'none' } };
}

/** Every place of a fine grid over the drawing lies in how many faces, away from their edges. */
function mostFacesAtOnePlace(faces: readonly (readonly Spot[])[]): number {
  const box = boxOf(faces.flat());
  let most = 0;
  for (let across = 0.013; across < 1; across += 0.037) {
    for (let down = 0.017; down < 1; down += 0.041) {
      const spot: Spot = [box.left + across * (box.right - box.left), box.top + down * (box.bottom - box.top)];
      most = Math.max(most, faces.filter((face) => isInside(spot, face)).length);
    }
  }
  return most;
}

describe('drawings of a vessel', () => {
  test.each([
    ['rectangular', rectangular],
    ['lShape', lShape],
  ])('%s: each panel is in one of the two, and no face hides another (seed 7)', (_kind, shapes) => {
    fc.assert(
      fc.property(shapes, (shape) => {
        const drawings = drawingsOf(vesselOf(shape));
        const names = drawings.flatMap(({ faces }) => faces.map(({ panel }) => panel));
        const expected = [...measuresOf(shape).faces.map(({ name }) => name), 'waterSurface'];
        expect(names.toSorted()).toEqual(expected.toSorted());
        for (const { faces } of drawings) {
          expect(mostFacesAtOnePlace(faces.flatMap(({ polygons }) => polygons))).toBe(1);
        }
      }),
      { seed: 7, numRuns: 60 },
    );
  });

  test('a cylinder: its side is seen from outside and looking in, its bottom looking in (seed 7)', () => {
    fc.assert(
      fc.property(cylinder, (shape) => {
        const drawings = drawingsOf(vesselOf(shape));
        const names = drawings.map(({ faces }) => faces.map(({ panel }) => panel));
        expect(names).toEqual([
          ['side', 'waterSurface'],
          ['side', 'bottom'],
        ]);
        // Its side ends where the surface or the bottom begins: no line of the one runs across the other.
        for (const { faces } of drawings) {
          expect(mostFacesAtOnePlace(faces.flatMap(({ polygons }) => polygons))).toBe(1);
        }
      }),
      { seed: 7, numRuns: 20 },
    );
  });

  test('the front is true to scale, and so is the water line on it', () => {
    const shape: Shape = { kind: 'rectangular', length: 1.5, width: 0.6, height: 0.7, waterDepth: 0.65 };
    const [outside] = drawingsOf(vesselOf(shape));
    const box = boxOf(outside!.faces.find(({ panel }) => panel === 'front')!.polygons[0]!);
    expect(box.right - box.left).toBeCloseTo(1.5, 12);
    expect(box.bottom - box.top).toBeCloseTo(0.7, 12);
    const onFront = outside!.waterLines.find((line) => line.every(([x]) => x >= 0))!;
    for (const [, y] of onFront) expect(y).toBeCloseTo(-0.65, 12);
    expect(outside!.dimensions.map(({ name, size: metres }) => [name, metres])).toEqual([
      ['length', 1.5],
      ['width', 0.6],
      ['height', 0.7],
    ]);
  });

  test('a hood stands above the rim by its height, a lid lies on the rim', () => {
    const shape: Shape = { kind: 'rectangular', length: 1, width: 0.5, height: 0.5, waterDepth: 0.45 };
    const topOf = (cover: PictureVessel['cover']) => {
      const [outside] = drawingsOf({ ...vesselOf(shape), cover });
      return [outside!.faces.at(-1)!.panel, -outside!.box.top] as const;
    };
    const [lid, rim] = topOf({ kind: 'lid' });
    const [hood, top] = topOf({ kind: 'hood', height: 0.2 });
    expect([lid, hood]).toEqual(['lid', 'hood']);
    expect(top - rim).toBeCloseTo(0.2, 12);
  });

  test('free panels: squares of their own area, the dry part divided off, and the water surface beside them', () => {
    const shape = {
      kind: 'panels',
      pieces: [
        { name: 'panel1', facing: 'side', area: 0.6, areaAboveWater: 0.04 },
        { name: 'panel2', facing: 'bottom', area: 0.5, areaAboveWater: 0 },
      ],
      waterSurface: 0.5,
      waterVolume: 0.25,
      freeboard: 0.03,
    } as const satisfies Shape;
    const drawings = pieceDrawings(vesselOf(shape), shape);
    expect(drawings.map(({ faces }) => faces[0]!.panel)).toEqual(['panel1', 'panel2', 'waterSurface']);
    const [first, second] = drawings;
    expect((first!.box.right - first!.box.left) ** 2).toBeCloseTo(0.64, 12);
    expect(first!.waterLines[0]![0]![1]).toBeCloseTo(-0.75, 12);
    expect(second!.waterLines).toEqual([]);
  });
});

describe('the sheet', () => {
  const vessels = (shape: Shape): readonly PictureVessel[] => [
    vesselOf(shape),
    vesselOf({ kind: 'rectangular', length: 0.8, width: 0.4, height: 0.4, waterDepth: 0.25 }, 'sump'),
    vesselOf({ kind: 'rectangular', length: 0.2, width: 0.1, height: 0.4, waterDepth: 0.35 }, 'overflow'),
  ];

  test.each([
    [350, 'metric'],
    [350, 'us'],
    [940, 'metric'],
  ] as const)('%i px wide, %s: nothing overlaps, nothing leaves it, one scale (seed 7)', (width, view) => {
    fc.assert(
      fc.property(fc.oneof(rectangular, lShape, cylinder), (shape) => {
        const drawings = vessels(shape).flatMap(drawingsOf);
        const sheet = laySheet(drawings, { width, mostHeight: 1000, marginsOf: marginsOf([], view) });
        for (const { left, top, width: wide, height } of sheet.placed) {
          expect(left).toBeGreaterThanOrEqual(0);
          expect(left + wide).toBeLessThanOrEqual(width + 1e-9);
          expect(top + height).toBeLessThanOrEqual(sheet.height + 1e-9);
        }
        sheet.placed.forEach((one, index) => {
          for (const other of sheet.placed.slice(index + 1)) {
            const isApart =
              one.left + one.width <= other.left + 1e-9 ||
              other.left + other.width <= one.left + 1e-9 ||
              one.top + one.height <= other.top + 1e-9 ||
              other.top + other.height <= one.top + 1e-9;
            expect(isApart).toBe(true);
          }
        });
        for (const { box } of faceTargets(sheet)) {
          expect(box.left).toBeGreaterThanOrEqual(0);
          expect(box.right).toBeLessThanOrEqual(width);
        }
      }),
      { seed: 7, numRuns: 40 },
    );
  });

  test('what stands below the tank begins a row of its own', () => {
    const drawings = vessels({ kind: 'rectangular', length: 0.3, width: 0.2, height: 0.2, waterDepth: 0.15 }).flatMap(
      drawingsOf,
    );
    const { placed } = laySheet(drawings, { width: 2000, mostHeight: 600, marginsOf: marginsOf([], 'metric') });
    const [tank, , sump, , overflow] = placed;
    expect(sump!.top).toBeGreaterThanOrEqual(tank!.top + tank!.height);
    expect(overflow!.top).toBe(sump!.top);
  });
});

describe('colours of heat per area', () => {
  const fluxes = fc.array(fc.double({ min: -50, max: 900, noNaN: true }), { minLength: 1, maxLength: 20 });

  test.each(['metric', 'us'] as const)(
    '%s: every value lies in its class, at most six, the most the deepest (seed 7)',
    (view) => {
      fc.assert(
        fc.property(fluxes, (values) => {
          const scale = heatScale(values, view);
          expect(scale.classes.length).toBeLessThanOrEqual(tones);
          expect(scale.hasIncoming).toBe(values.some((value) => value < 0));
          for (const value of values) {
            const own = classOf(scale, value, view);
            if (value < 0) expect(own).toBe('incoming');
            else if (own !== 'incoming') {
              expect(fromView(own.from, 'heatFlux', view)).toBeLessThanOrEqual(value + 1e-9);
              expect(fromView(own.to, 'heatFlux', view)).toBeGreaterThanOrEqual(value - 1e-9);
            }
          }
          const most = Math.max(...values);
          if (most > 0) expect(classOf(scale, most, view)).toBe(scale.classes.at(-1));
          if (most > 0) expect(scale.classes.at(-1)!.tone).toBe(tones - 1);
        }),
        { seed: 7, numRuns: 200 },
      );
    },
  );

  test('bounds are round numbers, finer where all are alike', () => {
    const bounds = (values: readonly number[]) => heatScale(values, 'metric').classes.map(({ from, to }) => [from, to]);
    expect(bounds([12, 24, 41])).toEqual([
      [10, 15],
      [15, 20],
      [20, 30],
      [30, 50],
    ]);
    expect(bounds([12, 24, 41, 190])).toEqual([
      [10, 20],
      [20, 30],
      [30, 50],
      [50, 100],
      [100, 200],
    ]);
    expect(bounds([0.01, 41, 190])[0]).toEqual([0, 5]);
    expect(bounds([0, 0])).toEqual([[0, 1]]);
    expect(bounds([-4])).toEqual([]);
  });
});

test('words stand inside their face or not at all', () => {
  const slanted: readonly Spot[] = [
    [0, 0],
    [60, 50],
    [60, 150],
    [0, 100],
  ];
  const place = placeInside(slanted, 40, 30)!;
  for (const across of [-20, 20]) {
    for (const down of [-15, 15]) expect(isInside([place[0] + across, place[1] + down], slanted)).toBe(true);
  }
  expect(placeInside(slanted, 70, 10)).toBeUndefined();
});
