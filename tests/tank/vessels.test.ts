// A tank of several vessels: each path belongs to its vessel, the whole is the sum of its parts, and what is added to a tank
// changes only what it should.

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type BuiltTank,
  type RectangularTank,
  rectangularTank,
  type TankConditions,
  type TankLoad,
  tankLoad,
  type Vessel,
} from '../../src/tank/index.ts';

const display: RectangularTank = {
  kind: 'rectangular',
  length: 1.4,
  width: 0.6,
  height: 0.6,
  waterDepth: 0.56,
  salinity: 0.035,
  wall: { conductivity: 1, thickness: 0.012, emissivity: 0.87 },
  insulation: {},
  surface: 'rippled',
  lid: 'none',
  pumpHeat: 20,
  lightHeat: 10,
};
const room: TankConditions = {
  waterTemperature: 298.65,
  roomTemperature: 292.15,
  roomRelativeHumidity: 0.5,
  atmosphericPressure: 101325,
};
const alone = rectangularTank(display);
const box = rectangularTank({ ...display, length: 0.8, width: 0.4, height: 0.4, waterDepth: 0.25 });
const sump: Vessel = { ...box.vessels[0]!, name: 'sump', surface: 'rough' };
const withSump: BuiltTank = { ...alone, vessels: [...alone.vessels, sump] };

const heatOf = (load: TankLoad, path: string) => load.paths.find((each) => each.path === path)?.heat ?? 0;

function changed(change: Partial<BuiltTank>): BuiltTank {
  return { ...alone, ...change };
}

function exposedAtTheBack(kind: 'outdoors' | 'slab'): BuiltTank {
  const [vessel] = alone.vessels;
  const exposure = kind === 'outdoors' ? { kind, windSpeed: 2 } : { kind, resistance: 0.5 };
  const panels = vessel!.panels.map((panel) => (panel.name === 'back' ? { ...panel, exposure } : panel));
  return { ...alone, vessels: [{ ...vessel!, panels }] };
}

describe('vessels', () => {
  test('a sump adds its own paths under its own name and leaves those of the tank as they were', () => {
    const both = tankLoad(withSump, room);
    const one = tankLoad(alone, room);
    for (const { path, heat } of one.paths) {
      if (path !== 'makeUpWater') expect(heatOf(both, path)).toBe(heat);
    }
    const own = both.paths.filter(({ vessel }) => vessel === 'sump');
    expect(own.map(({ path }) => path)).toEqual([
      'sump.evaporation',
      'sump.surfaceConvection',
      'sump.surfaceRadiation',
      'sump.front',
      'sump.back',
      'sump.left',
      'sump.right',
      'sump.bottom',
    ]);
    expect(both.waterVolume).toBeCloseTo(one.waterVolume + sump.waterVolume, 12);
  });

  test('paths sum to the loss and split into where they end, with everything a tank can have (seed 11201)', () => {
    const share = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(share, share, share, share, (night, change, air, humidity) => {
        const tank: BuiltTank = {
          ...exposedAtTheBack('outdoors'),
          vessels: [...exposedAtTheBack('outdoors').vessels, sump],
          airFlow: { airStones: 3e-4 * air, skimmer: 2e-4 * air },
          exchange: { makeUpFrom: 'mains', changeFlow: 1e-6 * change },
          night: { share: night, cover: lid },
          measuredOverModelled: 0.5 + change,
          ultravioletHeat: 8,
        };
        const load = tankLoad(tank, {
          ...room,
          roomRelativeHumidity: humidity,
          outdoorTemperature: 275.15,
          mainsTemperature: 281.15,
        });
        const scale = Math.max(1, Math.abs(load.loss));
        const sum = load.paths.reduce((total, { heat }) => total + heat, 0);
        expect(Math.abs(sum - load.loss) / scale).toBeLessThan(1e-12);
        const split = load.sensibleToRoom + load.latentToRoom + load.lostElsewhere;
        expect(Math.abs(split - load.loss) / scale).toBeLessThan(1e-9);
        const { pump, light, ultraviolet } = load.gains;
        expect(Math.abs(load.loss - pump - light - ultraviolet - load.load) / scale).toBeLessThan(1e-12);
      }),
      { seed: 11201, numRuns: 100 },
    );
  });
});

const lid = {
  kind: 'lid',
  stack: [{ kind: 'solid', thickness: 0.004, conductivity: 0.2 }],
  emissivity: 0.9,
  openShare: 0,
} as const;

describe('a cover at night', () => {
  const covered = (share: number) => tankLoad(changed({ night: { share, cover: lid } }), room);

  test('none of the day is the tank by day, all of it the tank under its night cover', () => {
    const [vessel] = alone.vessels;
    const always = tankLoad({ ...alone, vessels: [{ ...vessel!, cover: lid }] }, room);
    expect(covered(0).loss).toBeCloseTo(tankLoad(alone, room).loss, 9);
    expect(covered(1).loss).toBeCloseTo(always.loss, 9);
  });

  test('half of the day saves half of what a lid saves, but for the make-up water of the same vapour', () => {
    const saved = (share: number) => tankLoad(alone, room).loss - covered(share).loss;
    expect(saved(0.5)).toBeCloseTo(saved(1) / 2, 9);
    expect(covered(0.5).evaporation).toBeCloseTo(tankLoad(alone, room).evaporation / 2, 12);
  });
});

describe('air, fresh water, surroundings', () => {
  test('a skimmer takes as much as air stones with the same air', () => {
    const stones = tankLoad(changed({ airFlow: { airStones: 2e-4, skimmer: 0 } }), room);
    const skimmer = tankLoad(changed({ airFlow: { airStones: 0, skimmer: 2e-4 } }), room);
    expect(heatOf(skimmer, 'skimmerVapour')).toBe(heatOf(stones, 'airStonesVapour'));
    expect(skimmer.loss).toBeCloseTo(stones.loss, 9);
  });

  test('20 L a day from 10 °C to 25.5 °C: 15.5 K, 20 L, about 14.7 W of salt water by hand', () => {
    const exchange = { makeUpFrom: 'room', changeFlow: 0.02 / 86_400 } as const;
    const load = tankLoad(changed({ exchange }), { ...room, mainsTemperature: 283.15 });
    // 1023.4 kg/m³ and 4001 J/(kg K): sea water of 35 g/kg near 25 °C, Sharqawy et al. 2010.
    expect(heatOf(load, 'waterChange')).toBeCloseTo((0.02 * 1023.4 * 4001 * 15.5) / 86_400, 1);
    expect(load.lostElsewhere).toBeCloseTo(heatOf(load, 'waterChange') + heatOf(load, 'makeUpWater'), 9);
  });

  test('make-up water from the main takes more than from the room', () => {
    const exchange = { makeUpFrom: 'mains', changeFlow: 0 } as const;
    const cold = tankLoad(changed({ exchange }), { ...room, mainsTemperature: 283.15 });
    expect(heatOf(cold, 'makeUpWater')).toBeGreaterThan(heatOf(tankLoad(alone, room), 'makeUpWater'));
  });

  test('what leaves outdoors or into the ground does not warm the room', () => {
    const outdoors = tankLoad(exposedAtTheBack('outdoors'), { ...room, outdoorTemperature: 273.15 });
    expect(outdoors.lostElsewhere).toBeCloseTo(heatOf(outdoors, 'back') + heatOf(outdoors, 'makeUpWater'), 9);
    expect(heatOf(outdoors, 'back')).toBeGreaterThan(heatOf(tankLoad(alone, room), 'back'));
    const slab = tankLoad(exposedAtTheBack('slab'), { ...room, groundTemperature: 285.15 });
    expect(slab.paths.find(({ path }) => path === 'back')!.to).toBe('ground');
  });

  test('a temperature that is not given but needed is asked for', () => {
    expect(() => tankLoad(exposedAtTheBack('outdoors'), room)).toThrow(
      expect.objectContaining({ name: 'InputError', code: 'missing' }),
    );
  });

  test('an adopted measurement multiplies every loss, and with it the vapour', () => {
    const adopted = tankLoad(changed({ measuredOverModelled: 0.8 }), room);
    const plain = tankLoad(alone, room);
    expect(adopted.loss / plain.loss).toBeCloseTo(0.8, 12);
    expect(adopted.evaporation / plain.evaporation).toBeCloseTo(0.8, 12);
    for (const { path, heat } of plain.paths) expect(heatOf(adopted, path)).toBeCloseTo(0.8 * heat, 9);
  });
});
