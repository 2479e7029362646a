// Layers and exposures at work in a whole tank: each part changes the path it stands in, and is named among the findings.

import { describe, expect, test } from 'vitest';
import {
  type BuiltTank,
  type Panel,
  type RectangularTank,
  rectangularTank,
  type StackLayer,
  type TankConditions,
  tankLoad,
} from '../../../src/tank/index.ts';
import { foilBoard, kelvin } from './stacks.ts';

const box: RectangularTank = {
  kind: 'rectangular',
  length: 1.2,
  width: 0.5,
  height: 0.55,
  waterDepth: 0.5,
  salinity: 0,
  wall: { conductivity: 1, thickness: 0.01, emissivity: 0.87 },
  insulation: {},
  surface: 'rippled',
  lid: 'tight',
  lidLayer: { conductivity: 0.2, thickness: 0.006 },
  pumpHeat: 8,
  lightHeat: 0,
};
const conditions: TankConditions = {
  waterTemperature: kelvin(26),
  roomTemperature: kelvin(18),
  roomRelativeHumidity: 0.5,
  atmosphericPressure: 101325,
  groundTemperature: kelvin(10),
};
const sand: StackLayer = { kind: 'solid', thickness: 0.05, conductivity: 2 };
const background: StackLayer = { kind: 'solid', thickness: 0.02, conductivity: 0.035 };
const water: StackLayer = { kind: 'waterGap', thickness: 0.025 };
const gap: StackLayer = { kind: 'sealedGap', thickness: 0.025 };

/** The box with some of its panels changed. */
function tankWith(changed: Readonly<Record<string, (panel: Panel) => Partial<Panel>>>): BuiltTank {
  const tank = rectangularTank(box);
  const [vessel] = tank.vessels;
  const panels = vessel!.panels.map((panel) => ({ ...panel, ...changed[panel.name]?.(panel) }));
  return { ...tank, vessels: [{ ...vessel!, panels }] };
}

const loadOf = (tank: BuiltTank) => tankLoad(tank, conditions);
const bare = loadOf(tankWith({}));
const heat = (load: ReturnType<typeof loadOf>, path: string) => load.paths.find((one) => one.path === path)!.heat;
const codes = (load: ReturnType<typeof loadOf>) => load.warnings.map(({ code }) => code);

describe('what stands in the path of a panel', () => {
  test('foil board over a sealed gap behind the tank saves nine tenths of the back, above the water too', () => {
    const wrapped = loadOf(
      tankWith({ back: ({ stack }) => ({ stack: [...stack, gap, foilBoard], emissivity: 0.05 }) }),
    );
    expect(heat(wrapped, 'back')).toBeLessThan(0.12 * heat(bare, 'back'));
    expect(heat(wrapped, 'freeboard')).toBeLessThan(heat(bare, 'freeboard'));
    expect(heat(wrapped, 'front')).toBe(heat(bare, 'front'));
    expect(wrapped.load).toBeLessThan(bare.load);
  });

  test('a board that hangs open before the back earns nothing', () => {
    const open: StackLayer = { kind: 'openGap', thickness: 0.025 };
    // Its pane looks at the room as any face without its own emissivity does, 0.9.
    const ownFace = (panel: Panel) => ({ ...panel, emissivity: 0.9 });
    const hanging = loadOf(
      tankWith({
        back: ({ stack }) => ({ stack: [{ ...stack[0]!, emissivity: 0.9 } as StackLayer, open, foilBoard] }),
      }),
    );
    expect(heat(hanging, 'back')).toBe(heat(loadOf(tankWith({ back: ownFace })), 'back'));
  });

  test('a background with water behind it holds heat below the water line only', () => {
    const layers = (panel: Panel) => ({ stack: [background, water, ...panel.stack], layersInWater: 2 });
    const decorated = loadOf(tankWith({ back: layers }));
    expect(heat(decorated, 'back')).toBeLessThan(0.35 * heat(bare, 'back'));
    expect(heat(decorated, 'freeboard')).toBeCloseTo(heat(bare, 'freeboard'), 6);
    expect(codes(decorated)).toContain('waterGapClosed');
    expect(codes(bare)).not.toContain('waterGapClosed');
  });

  test('a bed of sand and a closed stand lower what leaves by the bottom, in turn', () => {
    const bedded = loadOf(tankWith({ bottom: ({ stack }) => ({ stack: [sand, ...stack], layersInWater: 1 }) }));
    const standing = loadOf(
      tankWith({
        bottom: ({ stack }) => ({
          stack: [sand, ...stack],
          layersInWater: 1,
          exposure: { kind: 'closedStand', resistance: 0.1 },
        }),
      }),
    );
    expect(heat(bedded, 'bottom')).toBeLessThan(heat(bare, 'bottom'));
    expect(heat(standing, 'bottom')).toBeLessThan(heat(bedded, 'bottom'));
    expect(codes(standing)).toContain('closedStandStill');
    expect(codes(standing)).not.toContain('tankBottomFacesRoomAir');
  });

  test('on a slab heat ends in the ground, not in the room', () => {
    const onSlab = loadOf(tankWith({ bottom: () => ({ exposure: { kind: 'slab', resistance: 0.6 } }) }));
    expect(onSlab.paths.find(({ path }) => path === 'bottom')!.to).toBe('ground');
    expect(onSlab.lostElsewhere - bare.lostElsewhere).toBeCloseTo(heat(onSlab, 'bottom'), 9);
    expect(codes(onSlab)).toContain('slabToGround');
  });

  test('against a wall the back loses less, and it is named', () => {
    const near = loadOf(tankWith({ back: () => ({ exposure: { kind: 'againstWall', resistance: 0.5 } }) }));
    expect(heat(near, 'back')).toBeLessThan(heat(bare, 'back'));
    expect(codes(near)).toContain('wallCloseBy');
  });
});

describe('where the standard ends', () => {
  const backOf = (...layers: readonly StackLayer[]) =>
    loadOf(tankWith({ back: ({ stack }) => ({ stack: [...stack, ...layers] }) }));

  test('an air gap beyond 300 mm is named with its thickness', () => {
    const wide = backOf({ kind: 'sealedGap', thickness: 0.35 }, background);
    const finding = wide.warnings.find(({ code }) => code === 'sealedGapThick');
    expect(finding).toMatchObject({
      severity: 'look',
      facts: { thickness: { value: 0.35 }, panels: { word: 'back' } },
    });
    expect(codes(backOf({ kind: 'sealedGap', thickness: 0.3 }, background))).not.toContain('sealedGapThick');
  });

  test('a steel joint is named as outside the method, and so are limits far apart; timber is neither', () => {
    const joint = (share: number, conductivity: number): StackLayer => ({
      kind: 'solid',
      thickness: 0.05,
      conductivity: 0.029,
      bridge: { share, conductivity },
    });
    expect(codes(backOf(joint(0.01, 50)))).toEqual(expect.arrayContaining(['jointOfMetal', 'jointLimitsApart']));
    const timber = codes(backOf(joint(0.1, 0.13)));
    expect(timber).not.toContain('jointOfMetal');
    expect(timber).not.toContain('jointLimitsApart');
  });
});

test('all paths still add up to the loss with every part at once', () => {
  const all = loadOf(
    tankWith({
      back: ({ stack }) => ({ stack: [background, water, ...stack, gap, foilBoard], layersInWater: 2 }),
      left: () => ({ exposure: { kind: 'againstWall', resistance: 0.5 } }),
      bottom: ({ stack }) => ({
        stack: [sand, ...stack],
        layersInWater: 1,
        exposure: { kind: 'slab', resistance: 0.6 },
      }),
    }),
  );
  const sum = all.paths.reduce((total, path) => total + path.heat, 0);
  expect(Math.abs(sum - all.loss)).toBeLessThan(1e-9 * all.loss);
});
