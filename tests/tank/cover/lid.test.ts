// A lid of any layers over trapped air: its balance closes, every added resistance saves, a lid on the water is the limit of a
// thin headspace, and faces settled together are what they are alone.

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { saturationVapourPressure } from '../../../src/matter/air/index.ts';
import { facesAboveWater } from '../../../src/tank/cover/inner-faces.ts';
import { coveredSurface } from '../../../src/tank/cover/lid.ts';
import type { TankConditions, Vessel } from '../../../src/tank/index.ts';
import { settlePanel } from '../../../src/tank/stack/panel.ts';
import { deviation } from '../../reference/tank/deviation.ts';
import {
  anyConditions,
  anyStack,
  anyVessel,
  foam,
  gap,
  glass,
  glassBox,
  type LidCover,
  livingRoom,
  placeOf,
} from './places.ts';

const lid: LidCover = { kind: 'lid', stack: [glass], emissivity: 0.87, openShare: 0 };

function covered(
  stack: LidCover['stack'],
  conditions: TankConditions = livingRoom,
  vessel: Vessel = glassBox,
  coveredShare = 1,
) {
  return coveredSurface({ vessel, cover: { ...lid, stack }, coveredShare, ...placeOf(conditions) });
}

const leaving = (state: ReturnType<typeof covered>) =>
  state.lid.heat + state.freeboard.reduce((sum, { heat }) => sum + heat, 0);

const anyLid = fc.record({
  kind: fc.constant('lid' as const),
  stack: anyStack,
  emissivity: fc.double({ min: 0.05, max: 1, noNaN: true }),
  openShare: fc.constant(0),
});

describe('balance of a lid (seed 20272)', () => {
  test('what crosses the trapped air leaves through lid and panels, to 1e-9', () => {
    fc.assert(
      fc.property(
        anyLid,
        anyConditions,
        anyVessel,
        fc.double({ min: 0.05, max: 1, noNaN: true }),
        (cover, conditions, vessel, coveredShare) => {
          const state = coveredSurface({ vessel, cover, coveredShare, ...placeOf(conditions, 0.035) });
          const crossing = state.area * state.headspace!.heatFlux;
          expect(Math.abs(crossing - leaving(state))).toBeLessThan(1e-9 * (Math.abs(crossing) + 1));
        },
      ),
      { seed: 20272, numRuns: 300 },
    );
  });

  test('the sign is that of the difference where all stands in one room', () => {
    fc.assert(
      fc.property(anyLid, anyConditions, (cover, conditions) => {
        const difference = conditions.waterTemperature - conditions.roomTemperature;
        fc.pre(Math.abs(difference) > 1e-3);
        const state = coveredSurface({ vessel: glassBox, cover, coveredShare: 1, ...placeOf(conditions) });
        expect(Math.sign(leaving(state))).toBe(Math.sign(difference));
        expect(state.headspace!.circulation).toBeGreaterThanOrEqual(0);
      }),
      { seed: 20272, numRuns: 200 },
    );
  });

  test('is continuous through a room as warm as the water', () => {
    const at = (room: number) => leaving(covered([glass], { ...livingRoom, roomTemperature: room }));
    expect(at(299.15)).toBeCloseTo(0, 10);
    expect(Math.abs(at(299.15 + 1e-5))).toBeLessThan(1e-3);
    expect(Math.abs(at(299.15 - 1e-5))).toBeLessThan(1e-3);
  });

  test('needs few trials of the inner temperature', () => {
    for (const stack of [[glass], [glass, gap, glass], [glass, foam]]) {
      for (const roomTemperature of [275.15, 285.15, 295.15, 298.65, 310.15]) {
        expect(covered(stack, { ...livingRoom, roomTemperature }).iterations).toBeLessThanOrEqual(9);
      }
    }
  });
});

describe('layers of a lid', () => {
  test('a second pane over a sealed gap saves, a board on top saves more', () => {
    const [single, double, boarded] = [[glass], [glass, gap, glass], [glass, foam]].map((stack) => covered(stack));
    expect(double!.lid.heat).toBeLessThan(0.75 * single!.lid.heat);
    expect(boarded!.lid.heat).toBeLessThan(double!.lid.heat);
    expect(boarded!.innerTemperature).toBeGreaterThan(double!.innerTemperature);
    expect(double!.innerTemperature).toBeGreaterThan(single!.innerTemperature);
  });

  test('any added resistance lowers what leaves the water (seed 20273)', () => {
    fc.assert(
      fc.property(
        anyStack,
        anyConditions,
        fc.double({ min: 0.01, max: 5, noNaN: true }),
        (stack, conditions, extra) => {
          fc.pre(conditions.waterTemperature - conditions.roomTemperature > 0.1);
          const thicker = [...stack, { kind: 'resistance' as const, resistance: extra }];
          expect(leaving(covered(thicker, conditions))).toBeLessThan(leaving(covered(stack, conditions)));
        },
      ),
      { seed: 20273, numRuns: 200 },
    );
  });

  // By hand: 4 mm of glass and the outer film alone lie between the water and the room, U = 1/(0.004 + R_s).
  test('a lid that lies on the water is the limit of ever less trapped air', () => {
    const on = covered([glass], livingRoom, { ...glassBox, freeboard: 0 });
    const near = covered([glass], livingRoom, {
      ...glassBox,
      freeboard: 1e-7,
      panels: glassBox.panels.map((panel) => ({ ...panel, dryArea: 0 })),
    });
    expect(on.headspace).toBeUndefined();
    expect(deviation(near.lid.heat, on.lid.heat)).toBeLessThan(1e-3);
    expect(deviation(on.lid.heat, 0.6 * 4 * (1 / (0.004 + on.lid.outer.resistance)))).toBeLessThan(1e-9);
  });

  test('the lid is wet while colder than the dew point over the water, and dry beyond', () => {
    const wet = covered([glass], { ...livingRoom, roomTemperature: 285.15 });
    expect(wet.headspace!.circulation).toBeGreaterThan(0);
    expect(saturationVapourPressure(wet.innerTemperature)).toBeLessThan(saturationVapourPressure(299.15));
    expect(covered([glass], { ...livingRoom, roomTemperature: 303.15 }).headspace!.circulation).toBe(0);
  });
});

describe('faces above the water', () => {
  test('settled together are what each is alone', () => {
    const conditions = { ...livingRoom, outdoorTemperature: 268.15 };
    const panels = glassBox.panels.map((panel) =>
      panel.name === 'left' ? { ...panel, exposure: { kind: 'outdoors' as const, windSpeed: 2 } } : panel,
    );
    const vessel = { ...glassBox, panels };
    const state = covered([glass], conditions, vessel);
    const faces = facesAboveWater(vessel, 1);
    expect(state.freeboard.map(({ name }) => name)).toEqual(['front', 'back', 'left', 'right']);
    for (const [index, face] of faces.entries()) {
      const { surroundings } = placeOf(conditions);
      const alone = settlePanel({
        ...face,
        inside: state.innerTemperature,
        waterFilmResistance: 0,
        surroundings,
        outerFilmFactor: 1,
      });
      expect(deviation(state.freeboard[index]!.heat, alone.heat)).toBeLessThan(1e-12);
      expect(state.freeboard[index]).toEqual({ ...alone, heat: expect.closeTo(alone.heat, 10) });
    }
  });

  test('leave out what lies in the water', () => {
    const sand = { kind: 'solid' as const, thickness: 0.05, conductivity: 2 };
    const panels = glassBox.panels.map((panel) => ({ ...panel, stack: [sand, ...panel.stack], layersInWater: 1 }));
    const bare = covered([glass]);
    const behindSand = covered([glass], livingRoom, { ...glassBox, panels });
    expect(behindSand.innerTemperature).toBe(bare.innerTemperature);
    expect(behindSand.freeboard.map(({ layers }) => layers.length)).toEqual([1, 2, 1, 1]);
  });
});
