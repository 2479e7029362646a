// Defaults that follow another field: which they are, what of their range is their own, and that they move along.

import { describe, expect, test } from 'vitest';
import {
  type Follower,
  plainDesign,
  type Resolution,
  resolveDesign,
  uncertainInputs,
  withFollowers,
} from '../../src/design/index.ts';
import { documentOf, type Loose, measuredDesign, sizedDesign } from './examples.ts';

const resolved = (value: Loose): Resolution => resolveDesign(documentOf(value));

function otherRoom(design: Loose): Loose {
  design.source = { kind: 'otherRoom', temperature: '10 to 14 °C' };
  return design;
}

function pairs({ followers }: Resolution): string[] {
  return followers.map(({ path, follows, by }) => `${path} ${by} ${follows}`).sort();
}

function rangeOf(resolution: Resolution, path: string) {
  return uncertainInputs(resolution).find((input) => input.path === path)?.estimate;
}

describe('which defaults follow', () => {
  test('in a measured tank with another room as source', () => {
    expect(pairs(resolved(otherRoom(measuredDesign())))).toEqual([
      'room.coldest difference room.temperature',
      'room.houseHeatPrice ratio prices.electricity',
      'source.coldest difference source.temperature',
      'source.warmest difference source.temperature',
      'tank.load.roomTemperature difference room.temperature',
      'tank.load.waterTemperature difference tank.waterTemperature',
    ]);
  });

  test('in a tank by its sizes', () => {
    expect(pairs(resolved(sizedDesign()))).toEqual([
      'room.coldest difference room.temperature',
      'room.houseHeatPrice ratio prices.electricity',
      'tank.load.waterDepth ratio tank.load.height',
    ]);
  });

  test('none where the person typed the value, which then stays where it is', () => {
    const design = otherRoom(measuredDesign());
    design.room = { temperature: '18 to 20 °C', coldest: '16 to 17 °C', houseHeatPrice: '0.1 EUR/kWh' };
    Object.assign(design.tank.load, { roomTemperature: '19 °C', waterTemperature: '25 °C' });
    Object.assign(design.source, { coldest: '5 °C', warmest: '20 °C' });
    const resolution = resolved(design);
    expect(resolution.followers).toEqual([]);
    const plain = plainDesign(resolution.design);
    const moved = withFollowers(plain, resolution.followers, 'room.temperature', 293.15);
    expect(moved).toEqual({ ...plain, room: { ...plain.room, temperature: 293.15 } });
    expect(rangeOf(resolution, 'room.coldest')).toMatchObject({ low: 289.15, high: 290.15 });
  });
});

describe('a follower', () => {
  test('by difference is listed with its whole range and varied by its own', () => {
    const design = sizedDesign();
    design.room.temperature = '18 to 22 °C';
    const resolution = resolved(design);
    const listed = resolution.assumptions.find(({ path }) => path === 'room.coldest')!.estimate!;
    expect([listed.low, listed.likely, listed.high].map(rounded)).toEqual([288.15, 291.15, 294.15]);
    const varied = rangeOf(resolution, 'room.coldest')!;
    expect([varied.low, varied.likely, varied.high].map(rounded)).toEqual([290.15, 291.15, 292.15]);
  });

  test('by ratio likewise, and moves with the price it follows', () => {
    const design = sizedDesign();
    design.prices.electricity = '0.30 to 0.40 EUR/kWh';
    const resolution = resolved(design);
    const perKilowattHour = (price: number) => rounded(price * 3.6e6);
    const listed = resolution.assumptions.find(({ path }) => path === 'room.houseHeatPrice')!.estimate!;
    expect([listed.low, listed.likely, listed.high].map(perKilowattHour)).toEqual([0.075, 0.14, 0.4]);
    const varied = rangeOf(resolution, 'room.houseHeatPrice')!;
    expect([varied.low, varied.likely, varied.high].map(perKilowattHour)).toEqual([0.0875, 0.14, 0.35]);
    const plain = plainDesign(resolution.design);
    const dear = withFollowers(plain, resolution.followers, 'prices.electricity', 0.4 / 3.6e6);
    expect(perKilowattHour(dear.room.houseHeatPrice)).toBe(0.16);
    expect(plain.room.houseHeatPrice).toBe(listed.likely);
  });

  test('without a spread of its own is not varied by itself', () => {
    const design = measuredDesign();
    design.room.temperature = '18 to 22 °C';
    design.tank.waterTemperature = '25 to 27 °C';
    const resolution = resolved(design);
    expect(resolution.design.tank.load).toMatchObject({ roomTemperature: { low: 291.15, high: 295.15 } });
    expect(rangeOf(resolution, 'tank.load.roomTemperature')).toBeUndefined();
    expect(rangeOf(resolution, 'tank.load.waterTemperature')).toBeUndefined();
    expect(rangeOf(resolution, 'room.temperature')).toBeDefined();
  });
});

test('a chain of followers moves as one: each keeps its own difference or ratio to the one before', () => {
  const plain = plainDesign(resolved(otherRoom(measuredDesign())).design);
  const chain: readonly Follower[] = [
    // Named before what it follows, to show that the order does not matter.
    { path: 'source.warmest', follows: 'source.coldest', by: 'difference', own: { low: 5, likely: 10, high: 15 } },
    { path: 'source.coldest', follows: 'room.coldest', by: 'ratio', own: { low: 0.9, likely: 0.95, high: 1 } },
    { path: 'room.coldest', follows: 'room.temperature', by: 'difference', own: { low: -4, likely: -3, high: -2 } },
  ];
  const moved = withFollowers(plain, chain, 'room.temperature', 300);
  expect(moved.room.coldest).toBe(297);
  expect(moved.source).toMatchObject({ coldest: 297 * 0.95, warmest: 297 * 0.95 + 10 });
  const inTheMiddle = withFollowers(plain, chain, 'room.coldest', 290);
  expect(inTheMiddle.room.temperature).toBe(plain.room.temperature);
  expect(inTheMiddle.source).toMatchObject({ coldest: 275.5, warmest: 285.5 });
});

function rounded(value: number): number {
  return Number(value.toPrecision(12));
}
