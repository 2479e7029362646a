// Inputs that hang together: a default that follows another field moves with it and is never varied as if it stood alone.
// Expected bands come from the engine's own functions called one by one, combined as JCGM 100:2008 equation (10) says.

import { describe, expect, test } from 'vitest';
import { type Assessment, assessDesign, assessTankLoad } from '../../../src/assess/index.ts';
import { tankLoad } from '../../../src/tank/index.ts';

/** A measured tank; only water and room are in doubt, and the coldest spell follows the room. */
const measured = {
  formatVersion: 2,
  name: 'Measured, water and room in doubt',
  place: { altitude: '0 m' },
  room: {
    temperature: '18 to 20 °C',
    warmest: '25 °C',
    relativeHumidity: '50 %',
    volume: '40 m3',
    monthsHeated: '7',
    houseHeatPrice: '0.12 EUR/kWh',
  },
  tank: {
    waterTemperature: '25 to 27 °C',
    water: 'fresh',
    load: {
      kind: 'measured',
      energy: '60 kWh',
      duration: '10 days',
      volume: '400 L',
      evaporationShare: '0.4',
      pumpPower: '20 W',
      pumpShareToWater: '0.8',
      lightPower: '0 W',
    },
  },
  machine: {
    refrigerant: 'R134a',
    compressor: { appliance: 'dehumidifier', madeFor: 'R134a' },
  },
  prices: { currency: 'EUR', electricity: '0.36 EUR/kWh' },
};

/** The load [W] with water, usual room and coldest spell at these temperatures [°C], measured in that water and room. */
function loadAt(water: number, room: number, coldest: number): number {
  return tankLoad(
    {
      kind: 'measured',
      energy: 60 * 3.6e6,
      duration: 10 * 86_400,
      roomTemperature: room + 273.15,
      waterTemperature: water + 273.15,
      volume: 0.4,
      salinity: 0,
      evaporationShare: 0.4,
      pumpHeat: 16,
      lightHeat: 0,
    },
    {
      waterTemperature: water + 273.15,
      roomTemperature: coldest + 273.15,
      roomRelativeHumidity: 0.5,
      atmosphericPressure: 101_325,
    },
  ).load;
}

describe('a measured tank, water 25 to 27 °C, room 18 to 20 °C', () => {
  const likely = loadAt(26, 19, 17);
  // Water and the water it was measured in; the room, the room it was measured in and its coldest spell; the spell alone.
  const together = [
    [loadAt(25, 19, 17), loadAt(27, 19, 17)],
    [loadAt(26, 18, 16), loadAt(26, 20, 18)],
    [loadAt(26, 19, 16), loadAt(26, 19, 18)],
  ];
  const expected = bandOf(likely, together);

  test('gives the band of varying together what hangs together', () => {
    const { tankLoad: band } = assessed(measured);
    expect(band.likely / likely).toBeCloseTo(1, 9);
    expect(band.low / expected.low).toBeCloseTo(1, 9);
    expect(band.high / expected.high).toBeCloseTo(1, 9);
  });

  test('gives the same band where the tank alone is asked for', () => {
    const outcome = assessTankLoad(JSON.stringify(measured));
    if (!outcome.ok) throw new Error(JSON.stringify(outcome));
    expect(outcome.answer.tankLoad).toEqual(assessed(measured).tankLoad);
    expect(outcome.answer.influences.map(({ path }) => path).sort()).toEqual([
      'room.coldest',
      'room.temperature',
      'tank.waterTemperature',
    ]);
  });

  test('lists the whole range of what follows', () => {
    const found = assessed(measured).assumptions.find(({ path }) => path === 'tank.load.waterTemperature');
    expect(found?.value).toMatchObject({ low: 298.15, high: 300.15 });
  });

  test('a room that was noted while measuring stands by itself', () => {
    const noted = structuredClone(measured) as typeof measured & { tank: { load: { roomTemperature?: string } } };
    noted.tank.load.roomTemperature = '18 to 20 °C';
    const apart = bandOf(likely, [
      together[0]!,
      [loadAt(26, 19, 16), loadAt(26, 19, 18)],
      [loadAt(26, 19, 16), loadAt(26, 19, 18)],
      [loadAt(26, 18, 17), loadAt(26, 20, 17)],
    ]);
    const { tankLoad: band } = assessed(noted);
    expect(band.low / apart.low).toBeCloseTo(1, 9);
    expect(band.high / apart.high).toBeCloseTo(1, 9);
  });
});

describe('the price of house heat', () => {
  // 0.4 times that of electricity where it was not given; electricity alone is in doubt here, and the ratio by itself.
  test('moves with that of electricity', () => {
    const design = structuredClone(measured) as Record<string, unknown> & typeof measured;
    const { houseHeatPrice: _typed, ...room } = measured.room;
    const fixed = { ...design, room: { ...room, temperature: '19 °C', coldest: '17 °C' } };
    fixed.tank.waterTemperature = '26 °C';
    const credit = (electricity: string, houseHeatPrice?: string) => {
      const priced = {
        ...fixed,
        room: { ...fixed.room, ...(houseHeatPrice === undefined ? {} : { houseHeatPrice }) },
        prices: { currency: 'EUR', electricity },
      };
      return assessed(priced).accounts.find(({ scenario }) => scenario === 'plainHeater')!.runningCost;
    };
    const likely = credit('0.40 EUR/kWh', '0.16 EUR/kWh').likely;
    const expected = bandOf(likely, [
      [credit('0.35 EUR/kWh', '0.14 EUR/kWh').likely, credit('0.45 EUR/kWh', '0.18 EUR/kWh').likely],
      [credit('0.40 EUR/kWh', '0.10 EUR/kWh').likely, credit('0.40 EUR/kWh', '0.40 EUR/kWh').likely],
    ]);
    const pricesOnly = credit('0.35 to 0.45 EUR/kWh');
    const others = credit('0.40 EUR/kWh', '0.16 EUR/kWh');
    expect(pricesOnly.likely / likely).toBeCloseTo(1, 9);
    expect((pricesOnly.high - likely) ** 2 - (others.high - likely) ** 2).toBeCloseTo((expected.high - likely) ** 2, 6);
    expect((likely - pricesOnly.low) ** 2 - (likely - others.low) ** 2).toBeCloseTo((likely - expected.low) ** 2, 6);
  });
});

/** JCGM 100:2008, equation (10), upward and downward moves apart. */
function bandOf(likely: number, ends: readonly (readonly number[])[]) {
  const root = (pick: (...moves: number[]) => number) =>
    Math.sqrt(ends.reduce((sum, values) => sum + pick(0, ...values.map((value) => value - likely)) ** 2, 0));
  return { low: likely - root(Math.min), high: likely + root(Math.max) };
}

function assessed(design: unknown): Assessment {
  const outcome = assessDesign(JSON.stringify(design), 'metric');
  if (!outcome.ok) throw new Error(JSON.stringify(outcome));
  return outcome.assessment;
}
