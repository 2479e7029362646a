// The load of a rectangular tank: laws it must keep (paths close, signs, monotony, limits), and what it refuses.

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type BuiltIntermediates,
  type RectangularTank,
  rectangularTank,
  surfaceMethods,
  type TankConditions,
  type TankLoad,
  tankFindingCodes,
  tankLoad,
} from '../../src/tank/index.ts';

const glass = { conductivity: 1, thickness: 0.01, emissivity: 0.87 };
const foam = { conductivity: 0.03, thickness: 0.025 };

const open: RectangularTank = {
  kind: 'rectangular',
  length: 1.5,
  width: 0.5,
  height: 0.6,
  waterDepth: 0.57,
  salinity: 0,
  wall: glass,
  insulation: {},
  surface: 'rippled',
  lid: 'none',
  pumpHeat: 9,
  lightHeat: 4,
};
const room: TankConditions = {
  waterTemperature: 299.15,
  roomTemperature: 292.15,
  roomRelativeHumidity: 0.5,
  atmosphericPressure: 101325,
};
const lidded: RectangularTank = { ...open, lid: 'tight', lidLayer: { conductivity: 1, thickness: 0.004 } };
const loose: RectangularTank = { ...lidded, lid: 'loose' };

const loadOf = (tank: RectangularTank, conditions: TankConditions) => tankLoad(rectangularTank(tank), conditions);
const heat = (load: TankLoad, name: string) => load.paths.find((path) => path.path === name)?.heat ?? 0;
const length = (min: number, max: number) => fc.double({ min, max, noNaN: true });

const anyTank: fc.Arbitrary<RectangularTank> = fc
  .record({
    length: length(0.3, 3),
    width: length(0.2, 1.2),
    height: length(0.25, 1),
    filling: length(0.5, 1),
    salinity: fc.constantFrom(0, 0.02, 0.035),
    surface: fc.constantFrom('still', 'rippled', 'rough' as const),
    lid: fc.constantFrom('none', 'tight', 'loose' as const),
    wrapped: fc.subarray(['sides', 'back', 'bottom'] as const),
    airFlow: fc.constantFrom(0, 1e-4),
    pumpHeat: length(0, 60),
  })
  .map(({ filling, wrapped, height, ...rest }) => ({
    ...open,
    ...rest,
    height,
    waterDepth: filling * height,
    insulation: Object.fromEntries(wrapped.map((face) => [face, foam])),
    lidLayer: { conductivity: 0.18, thickness: 0.004 },
  }));

const anyConditions: fc.Arbitrary<TankConditions> = fc.record({
  waterTemperature: length(285, 306),
  roomTemperature: length(275, 310),
  roomRelativeHumidity: length(0, 1),
  atmosphericPressure: length(75e3, 104e3),
});

describe('laws', () => {
  test('paths sum to the loss, the loss less the gains is the load, the room’s shares add up (seed 11001)', () => {
    fc.assert(
      fc.property(anyTank, anyConditions, (tank, conditions) => {
        const load = loadOf(tank, conditions);
        const scale = Math.max(1, ...load.paths.map((path) => Math.abs(path.heat)));
        const sum = load.paths.reduce((total, path) => total + path.heat, 0);
        expect(Math.abs(sum - load.loss)).toBeLessThan(1e-9 * scale);
        expect(Math.abs(load.loss - load.gains.pump - load.gains.light - load.load)).toBeLessThan(1e-9 * scale);
        const shared = load.sensibleToRoom + load.latentToRoom + heat(load, 'makeUpWater');
        expect(Math.abs(shared - load.loss)).toBeLessThan(1e-9 * scale);
        for (const value of [load.evaporation, load.conductance, load.heatCapacity, load.lostElsewhere]) {
          expect(Number.isFinite(value)).toBe(true);
        }
        expect(load.evaporationRange.low).toBeLessThanOrEqual(load.evaporation);
        expect(load.evaporationRange.high).toBeGreaterThanOrEqual(load.evaporation);
      }),
      { seed: 11001, numRuns: 300 },
    );
  });

  test('warmer water never loses less and never needs less (seed 11002)', () => {
    fc.assert(
      fc.property(anyTank, anyConditions, (tank, conditions) => {
        const warmer = { ...conditions, waterTemperature: conditions.waterTemperature + 0.5 };
        expect(loadOf(tank, warmer).load).toBeGreaterThan(loadOf(tank, conditions).load);
      }),
      { seed: 11002, numRuns: 200 },
    );
  });

  test('a warmer room, at the same vapour pressure of the water, never raises the dry losses (seed 11003)', () => {
    fc.assert(
      fc.property(anyTank, anyConditions, (tank, conditions) => {
        const dry = (load: TankLoad) =>
          load.paths.reduce((sum, { panel, heat: watts }) => sum + (panel === undefined ? 0 : watts), 0);
        const warmer = { ...conditions, roomTemperature: conditions.roomTemperature + 0.5 };
        expect(dry(loadOf(tank, warmer))).toBeLessThan(dry(loadOf(tank, conditions)));
      }),
      { seed: 11003, numRuns: 200 },
    );
  });

  test('wrapping a face, or thickening it, lowers the loss of a tank warmer than its room (seed 11004)', () => {
    fc.assert(
      fc.property(
        anyTank,
        fc.constantFrom('sides', 'back', 'bottom' as const),
        length(0.005, 0.1),
        (tank, face, thickness) => {
          const at = (layer: RectangularTank['insulation']['back']) => {
            const { [face]: _, ...others } = tank.insulation;
            return loadOf({ ...tank, insulation: layer === undefined ? others : { ...others, [face]: layer } }, room)
              .loss;
          };
          const bare = at(undefined);
          const thin = at({ conductivity: 0.03, thickness });
          expect(thin).toBeLessThan(bare);
          expect(at({ conductivity: 0.03, thickness: thickness * 1.5 })).toBeLessThan(thin);
        },
      ),
      { seed: 11004, numRuns: 100 },
    );
  });

  test('no lid loses more than a loose one, a loose one more than a tight one (seed 11005)', () => {
    fc.assert(
      fc.property(anyTank, length(0.3, 0.6), (tank, humidity) => {
        const at = (lid: RectangularTank['lid']) =>
          loadOf({ ...tank, lid, waterDepth: tank.height * 0.93 }, { ...room, roomRelativeHumidity: humidity }).loss;
        expect(at('none')).toBeGreaterThan(at('loose'));
        expect(at('loose')).toBeGreaterThan(at('tight'));
      }),
      { seed: 11005, numRuns: 100 },
    );
  });

  test('drier rooms take more vapour, salt water gives less (seed 11006)', () => {
    fc.assert(
      fc.property(anyTank, anyConditions, (tank, conditions) => {
        const bare = { ...tank, lid: 'none' as const, salinity: 0, surface: 'rough' as const };
        const drier = { ...conditions, roomRelativeHumidity: conditions.roomRelativeHumidity * 0.9 };
        const here = loadOf(bare, conditions).evaporation;
        expect(loadOf(bare, drier).evaporation).toBeGreaterThanOrEqual(here);
        expect(loadOf({ ...bare, salinity: 0.035 }, conditions).evaporation).toBeLessThan(here);
      }),
      { seed: 11006, numRuns: 150 },
    );
  });

  test('the heat that crosses the trapped air leaves through lid and panes above the water, gaps above 0.1 mm (seed 11007)', () => {
    fc.assert(
      fc.property(anyTank, anyConditions, (tank, conditions) => {
        fc.pre(tank.lid !== 'none' && tank.height - tank.waterDepth > 1e-4);
        const { intermediates } = loadOf(tank, conditions);
        const covered = (intermediates as BuiltIntermediates).vessels[0]!.lid!;
        const { lid, headspace, freeboard, area } = covered;
        const leaving = lid.heat + freeboard.reduce((sum, face) => sum + face.heat, 0);
        const crossing = area * headspace!.heatFlux;
        expect(Math.abs(leaving - crossing)).toBeLessThan(1e-6 * Math.max(1, Math.abs(crossing)));
      }),
      { seed: 11007, numRuns: 200 },
    );
  });

  test('the conductance is the slope of the loss', () => {
    const at = (waterTemperature: number) => loadOf(open, { ...room, waterTemperature }).loss;
    const slope = (at(299.15 + 0.01) - at(299.15 - 0.01)) / 0.02;
    // Taken over 0.1 K to one side, over which vapour bends the loss.
    expect(Math.abs(loadOf(open, room).conductance / slope - 1)).toBeLessThan(0.003);
  });
});

describe('signs and limits', () => {
  test('a room hotter than the tank heats it: every dry path and the load are negative', () => {
    const hot = { ...room, roomTemperature: 304.15, roomRelativeHumidity: 0.4 };
    for (const tank of [open, lidded, loose]) {
      const load = loadOf(tank, hot);
      for (const path of load.paths) if (path.kind === 'sensible') expect(path.heat, path.path).toBeLessThan(0);
    }
    const load = loadOf(lidded, hot);
    expect(load.load).toBeLessThan(load.loss);
    expect(load.load).toBeLessThan(0);
    expect(load.warnings.map((finding) => finding.code)).toContain('tankNeedsNoHeat');
  });

  test('water as warm as the room loses only vapour', () => {
    const load = loadOf(open, { ...room, roomTemperature: room.waterTemperature });
    for (const path of load.paths) if (path.kind === 'sensible') expect(Math.abs(path.heat), path.path).toBe(0);
    expect(heat(load, 'evaporation')).toBeGreaterThan(0);
    expect(loadOf(lidded, { ...room, roomTemperature: room.waterTemperature }).loss).toBe(0);
  });

  test('a room so humid that it condenses on the water gives heat to it and says so', () => {
    const load = loadOf(open, { ...room, roomTemperature: 303.15, roomRelativeHumidity: 0.95 });
    expect(load.evaporation).toBeLessThan(0);
    expect(heat(load, 'evaporation')).toBeLessThan(0);
    expect(load.paths.some((path) => path.path === 'makeUpWater')).toBe(false);
    expect(load.warnings.map((finding) => finding.code)).toContain('condensationOnWater');
  });

  test('under a tight lid nothing evaporates to the room and no water is topped up', () => {
    const load = loadOf(lidded, room);
    expect(load.evaporation).toBe(0);
    expect(load.latentToRoom).toBe(0);
    expect(load.paths.map((path) => path.path)).toEqual([
      'lid',
      'freeboard',
      'front',
      'back',
      'left',
      'right',
      'bottom',
    ]);
  });

  test('a loose lid that leaves nothing open is a tight one, one that leaves everything open is none', () => {
    expect(loadOf({ ...loose, lidOpenShare: 0 }, room).loss).toBeCloseTo(loadOf(lidded, room).loss, 9);
    expect(loadOf({ ...loose, lidOpenShare: 1 }, room).loss).toBeCloseTo(loadOf(open, room).loss, 9);
  });

  test('a lid that lies on the water is the limit of a thinner and thinner air gap', () => {
    const at = (waterDepth: number) => loadOf({ ...lidded, waterDepth }, room).loss;
    expect(at(0.6)).toBeCloseTo(at(0.6 - 1e-6), 1);
  });

  test('a lid given by its conductance is the same as by its layer', () => {
    const byLayer = loadOf(lidded, room);
    const byConductance = loadOf({ ...lidded, lidLayer: { conductance: 1 / 0.004 } }, room);
    expect(byConductance.loss).toBeCloseTo(byLayer.loss, 9);
  });

  test('the front pane by hand: 0.855 m², 1/300 + 0.010 + R_s', () => {
    const load = loadOf(open, room);
    expect(load.intermediates.kind).toBe('built');
    if (load.intermediates.kind !== 'built') return;
    const front = load.intermediates.vessels[0]!.panels.find(({ name }) => name === 'front')!;
    const radiative = 4 * 0.87 * 5.670374419e-8 * ((front.outer.temperature + room.roomTemperature) / 2) ** 3;
    const expected = (0.855 * 7) / (1 / 300 + 0.01 + 1 / (2.5 + radiative));
    expect(heat(load, 'front')).toBeCloseTo(expected, 6);
    expect(load.waterVolume).toBeCloseTo(0.4275, 12);
  });

  test('air stones add vapour and warmth, and their vapour is topped up', () => {
    const calm = loadOf(lidded, room);
    const blown = loadOf({ ...lidded, airFlow: 10e-3 / 60 }, room);
    expect(blown.evaporation).toBeGreaterThan(0);
    expect(blown.loss - calm.loss).toBeCloseTo(
      heat(blown, 'airStonesVapour') + heat(blown, 'airStones') + heat(blown, 'makeUpWater'),
      9,
    );
  });

  test('the evaporation factor scales vapour and convection of the surface and nothing else', () => {
    const once = loadOf(open, room);
    const more = loadOf({ ...open, evaporationFactor: 1.25 }, room);
    expect(more.evaporation / once.evaporation).toBeCloseTo(1.25, 12);
    expect(heat(more, 'surfaceConvection') / heat(once, 'surfaceConvection')).toBeCloseTo(1.25, 12);
    expect(heat(more, 'surfaceRadiation')).toBe(heat(once, 'surfaceRadiation'));
    expect(once.evaporationRange.high / once.evaporation).toBeCloseTo(surfaceMethods.rippled.factor.high, 12);
  });
});

test('the factor on the outer film reaches panes, bottom, lid and the panes above the water, and nothing else', () => {
  const quick = loadOf({ ...loose, outerFilmFactor: 1.25 }, room);
  const standard = loadOf(loose, room);
  const { panels, lid } = (quick.intermediates as BuiltIntermediates).vessels[0]!;
  for (const face of [...panels, lid!.lid, ...lid!.freeboard]) {
    const { convectiveCoefficient, radiativeCoefficient, resistance } = face.outer;
    expect(1 / resistance / (convectiveCoefficient + radiativeCoefficient)).toBeCloseTo(1.25, 12);
  }
  for (const { path, heat: now } of quick.paths) {
    const before = heat(standard, path);
    if (['front', 'back', 'left', 'right', 'bottom', 'lid', 'freeboard'].includes(path))
      expect(now).toBeGreaterThan(before);
    else expect(now).toBe(before);
  }
});

test('every simplification that shaped the result is named in it', () => {
  const codes = (tank: RectangularTank) => loadOf(tank, room).warnings.map((finding) => finding.code);
  expect(codes(open)).toEqual(
    expect.arrayContaining(['tankSimplifications', 'tankBottomFacesRoomAir', 'evaporationMethodsDiffer']),
  );
  expect(codes(lidded)).toContain('lidCondensateReturns');
  expect(codes(lidded)).not.toContain('evaporationMethodsDiffer');
  expect(codes(loose)).toContain('looseLidAsOpenShare');
  for (const code of [...codes(open), ...codes(lidded), ...codes(loose)]) expect(tankFindingCodes).toContain(code);
});

describe('what cannot be is refused with its place', () => {
  test.each([
    ['water above the rim', { waterDepth: 0.61 }, 'tank.load.waterDepth'],
    ['no length', { length: 0 }, 'tank.load.length'],
    ['a width that is no number', { width: Number.NaN }, 'tank.load.width'],
    ['an endless height', { height: Number.POSITIVE_INFINITY }, 'tank.load.height'],
    ['a negative pane', { wall: { ...glass, thickness: -0.01 } }, 'tank.load.wall.thickness'],
    ['a pane that conducts like nothing', { wall: { ...glass, conductivity: 1000 } }, 'tank.load.wall.conductivity'],
    ['an emissivity above 1', { wall: { ...glass, emissivity: 1.2 } }, 'tank.load.wall.emissivity'],
    [
      'a negative wrapping',
      { insulation: { back: { ...foam, thickness: -0.02 } } },
      'tank.load.insulation.back.thickness',
    ],
    ['brine', { salinity: 0.3 }, 'tank.salinity'],
    ['a pump that cools', { pumpHeat: -1 }, 'tank.load.pumpPower'],
    ['a light that is no number', { lightHeat: Number.NaN }, 'tank.load.lightPower'],
    ['an evaporation factor of zero', { evaporationFactor: 0 }, 'tank.load.evaporationFactor'],
    ['an outer film of nothing', { outerFilmFactor: 0 }, 'outerFilmFactor'],
    ['a lid of nothing', { lid: 'tight' as const }, 'tank.load.lidMaterial'],
    ['a lid with a hole larger than itself', { ...loose, lidOpenShare: 1.5 }, 'tank.load.lidOpenShare'],
  ])('%s', (_, change, path) => {
    expect(() => loadOf({ ...open, ...change }, room)).toThrow(expect.objectContaining({ name: 'InputError', path }));
  });

  test.each([
    ['ice', { waterTemperature: 272 }, 'tank.waterTemperature'],
    ['a room on fire', { roomTemperature: 400 }, 'room.temperature'],
    ['a vacuum', { atmosphericPressure: 1000 }, 'atmosphericPressure'],
  ])('%s is outside the model and names the limits', (_, change, quantity) => {
    expect(() => loadOf(open, { ...room, ...change })).toThrow(
      expect.objectContaining({ name: 'OutOfModelError', quantity }),
    );
  });

  test('a relative humidity in per cent', () => {
    expect(() => loadOf(open, { ...room, roomRelativeHumidity: 50 })).toThrow(
      expect.objectContaining({ name: 'InputError', path: 'room.relativeHumidity' }),
    );
  });

  test('a kind that nobody knows', () => {
    expect(() => tankLoad({ kind: 'round' } as never, room)).toThrow(
      expect.objectContaining({ path: 'tank.load.kind' }),
    );
  });
});
