// What is left out is named where the tank has the part, and only there; each code has its words elsewhere.

import { describe, expect, test } from 'vitest';
import { type BuiltTank, type Cover, rectangularTank, type TankConditions, tankLoad } from '../../src/tank/index.ts';
import { glass, livingRoom } from './cover/places.ts';

const box = rectangularTank({
  kind: 'rectangular',
  length: 1.2,
  width: 0.5,
  height: 0.5,
  waterDepth: 0.44,
  salinity: 0,
  wall: { conductivity: 1, thickness: 0.01, emissivity: 0.87 },
  insulation: {},
  surface: 'rippled',
  lid: 'none',
  pumpHeat: 0,
  lightHeat: 0,
});
const lid: Cover = { kind: 'lid', stack: [glass], emissivity: 0.87, openShare: 0 };
const hood: Cover = { kind: 'hood', stack: [glass], emissivity: 0.87, area: 1.3, airFlow: 0.002 };

function codesOf(change: Partial<BuiltTank> = {}, conditions: Partial<TankConditions> = {}): readonly string[] {
  return tankLoad({ ...box, ...change }, { ...livingRoom, ...conditions }).warnings.map(({ code }) => code);
}

function vessels(change: Partial<BuiltTank['vessels'][number]>): Partial<BuiltTank> {
  return { vessels: [{ ...box.vessels[0]!, ...change }] };
}

const named: readonly (readonly [code: string, Partial<BuiltTank>, Partial<TankConditions>])[] = [
  ['hoodWellMixed', vessels({ cover: hood }), {}],
  ['nightCoverMixed', { night: { share: 0.4, cover: lid } }, {}],
  ['waterChangeSpread', { exchange: { makeUpFrom: 'room', changeFlow: 1e-7 } }, { mainsTemperature: 283.15 }],
  ['drawnAirSaturated', { airFlow: { airStones: 1e-4, skimmer: 0 } }, {}],
  ['surfaceInMovingAir', vessels({ airSpeed: 0.5 }), {}],
  ['surfaceBeyondMethods', {}, { roomRelativeHumidity: 0.1 }],
  ['handbookNearSeaLevel', {}, { atmosphericPressure: 84e3 }],
  ['headspaceDeep', vessels({ cover: lid, freeboard: 0.3 }), {}],
  ['lidCondensateReturns', vessels({ cover: lid }), {}],
  ['looseLidAsOpenShare', vessels({ cover: { ...lid, openShare: 0.1 } }), {}],
  ['condensationOnWater', {}, { roomTemperature: 305.15, roomRelativeHumidity: 0.9 }],
];

describe('findings', () => {
  test('a plain open tank has none of those of parts', () => {
    const plain = codesOf();
    for (const [code] of named) expect(plain).not.toContain(code);
  });

  test.each(named)('%s is named once where it belongs', (code, change, conditions) => {
    expect(codesOf(change, conditions).filter((each) => each === code)).toEqual([code]);
  });

  test('rough water asks nothing of the method for quiet water, still water nothing of the handbook', () => {
    expect(codesOf(vessels({ surface: 'rough' }), { roomRelativeHumidity: 0.1 })).not.toContain('surfaceBeyondMethods');
    expect(codesOf(vessels({ surface: 'still' }), { atmosphericPressure: 84e3 })).not.toContain('handbookNearSeaLevel');
  });

  test('a lidded sump beside an open tank is no loose lid', () => {
    const sump = { ...box.vessels[0]!, name: 'sump' as const, cover: lid };
    const codes = codesOf({ vessels: [...box.vessels, sump] });
    expect(codes).toContain('lidCondensateReturns');
    expect(codes).not.toContain('looseLidAsOpenShare');
  });

  test('every fact is a number of a known quantity or a word', () => {
    for (const [, change, conditions] of named) {
      for (const { facts } of tankLoad({ ...box, ...change }, { ...livingRoom, ...conditions }).warnings) {
        for (const fact of Object.values(facts)) {
          if ('value' in fact) expect(Number.isFinite(fact.value)).toBe(true);
          else expect(fact.word).not.toBe('');
        }
      }
    }
  });
});

describe('evaporation of hoods and nights', () => {
  test('the range holds the value and widens a hood less than an open surface', () => {
    const open = tankLoad(box, livingRoom);
    const hooded = tankLoad({ ...box, ...vessels({ cover: hood }) }, livingRoom);
    const width = ({ evaporation, evaporationRange: { low, high } }: typeof open) => {
      expect(low).toBeLessThan(evaporation);
      expect(high).toBeGreaterThan(evaporation);
      return (high - low) / evaporation;
    };
    expect(width(hooded)).toBeLessThan(width(open));
    const night = tankLoad({ ...box, night: { share: 0.4, cover: lid } }, livingRoom);
    expect(width(night)).toBeCloseTo(width(open), 9);
  });

  test('a hood smaller than the water is refused', () => {
    const small = { ...box, ...vessels({ cover: { ...hood, area: 0.5 } }) };
    expect(() => tankLoad(small, livingRoom)).toThrow(/tank\.load\.hood\.area/);
  });

  test('fresh water as hot as steam is refused', () => {
    const exchange = { makeUpFrom: 'room', changeFlow: 1e-7 } as const;
    const from = (mainsTemperature: number) => tankLoad({ ...box, exchange }, { ...livingRoom, mainsTemperature });
    expect(() => from(380)).toThrow(/place\.mains/);
    expect(() => from(Number.NaN)).toThrow();
  });
});

describe('fresh water', () => {
  // By hand: 40 L a week of water at 25 °C (997.05 kg/m³, 4181 J/(kg K)) over 10 °C: 6.614e-8 m³/s · 997.05 · 4181 · 15 = 4.14 W.
  test('40 L a week from 10 to 25 °C is 4.14 W', () => {
    const exchange = { makeUpFrom: 'room', changeFlow: 0.04 / (7 * 86400) } as const;
    const conditions = { ...livingRoom, waterTemperature: 298.15, mainsTemperature: 283.15 };
    const load = tankLoad({ ...box, exchange }, conditions);
    const path = load.paths.find((each) => each.path === 'waterChange');
    expect(path?.heat).toBeCloseTo(4.14, 1);
    expect(path?.to).toBe('freshWater');
  });

  test('make-up water from a colder main asks for more, in proportion', () => {
    const exchange = { makeUpFrom: 'mains', changeFlow: 0 } as const;
    const heat = (mainsTemperature: number) =>
      tankLoad({ ...box, exchange }, { ...livingRoom, mainsTemperature }).paths.find(
        ({ path }) => path === 'makeUpWater',
      )!.heat;
    expect(heat(279.15) / heat(289.15)).toBeCloseTo(2, 9);
  });
});
