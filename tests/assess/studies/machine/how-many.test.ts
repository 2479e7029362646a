// Whole numbers of machines for a load, and how many run in a month: worked by hand.

import { expect, test } from 'vitest';
import { howMany, machinesFor } from '../../../../src/assess/studies/machine/how-many.ts';

test.each([
  [400, 150, 0, 3],
  [450, 150, 0, 3],
  [451, 150, 0, 4],
  [454, 150, 4, 3],
  [455, 150, 4, 4],
  [0, 150, 4, 0],
  [-20, 150, 4, 0],
  // The pump runs only while a machine does.
  [3, 150, 4, 1],
])('%s W by machines of %s W and a pump of %s W: %s', (load, heat, pump, machines) => {
  expect(machinesFor(load, heat, pump)).toBe(machines);
});

test('a machine without heat carries nothing, however many there are', () => {
  expect(machinesFor(100, 0, 4)).toBeNull();
  expect(machinesFor(100, -5, 4)).toBeNull();
});

const exactly = (value: number) => ({ low: value, likely: value, high: value });

test('heat of 150 W each, a pump that gives 4 of its 5 W, a load of 300 to 420 W', () => {
  const answer = howMany({
    coldestSpell: {
      heat: { low: 120, likely: 150, high: 180 },
      power: exactly(60),
      current: { low: 0.5, likely: 0.6, high: 0.8 },
    },
    mildDay: null,
    load: { low: 300, likely: 350, high: 420 },
    planned: 1,
    beside: { fanPower: 8, loopPumpPower: 5, loopPumpShareToWater: 0.8, controlsPower: 3 },
    chargePerCircuit: exactly(0.09),
    lockedRotorCurrent: { low: 4, likely: 5, high: 7 },
    months: [
      { month: 'january', load: 350, heatOfOne: 150 },
      { month: 'july', load: 0, heatOfOne: 210 },
      { month: 'may', load: 604, heatOfOne: 200 },
      { month: 'march', load: 100, heatOfOne: null },
      { month: 'june', load: 77, heatOfOne: 150 },
      { month: 'april', load: 154, heatOfOne: 150 },
      { month: 'august', load: 3, heatOfOne: 150 },
    ],
  });
  // (300 − 4)/180, (350 − 4)/150, (420 − 4)/120, each rounded up.
  expect(answer.needed).toEqual({ low: 2, likely: 3, high: 4 });
  expect(answer.rows.map(({ machines, carries }) => [machines, carries])).toEqual([
    [1, 'no'],
    [2, 'perhaps'],
    [3, 'perhaps'],
    [4, 'yes'],
  ]);
  const third = answer.rows[2]!;
  expect(third.coldestSpell).toMatchObject({ low: 364, likely: 454, high: 544 });
  expect(third.power.likely).toBe(3 * (60 + 8) + 5 + 3);
  expect(third.share).toBeCloseTo(350 / 454, 12);
  expect(answer.months).toEqual([
    { month: 'january', load: 350, heatOfOne: 150, running: 3, shareOfLast: expect.closeTo(346 / 150 - 2, 12) },
    { month: 'july', load: 0, heatOfOne: 210, running: 0, shareOfLast: 0 },
    { month: 'may', load: 604, heatOfOne: 200, running: 3, shareOfLast: 1 },
    { month: 'march', load: 100, heatOfOne: null, running: null, shareOfLast: null },
    // 77 W out of 150 + 4 W: half of the time, and the pump with it.
    { month: 'june', load: 77, heatOfOne: 150, running: 1, shareOfLast: 0.5 },
    { month: 'april', load: 154, heatOfOne: 150, running: 1, shareOfLast: 1 },
    { month: 'august', load: 3, heatOfOne: 150, running: 1, shareOfLast: expect.closeTo(3 / 154, 12) },
  ]);
  // Two are left; the third starts while two run.
  expect(third.withoutOne).toMatchObject({ heat: { low: 244, likely: 304, high: 364 }, carries: 'perhaps' });
  expect(answer.rows[0]!.withoutOne).toMatchObject({ heat: { low: 0, likely: 0, high: 0 }, carries: 'no' });
  expect(third.starting!.oneAfterAnother.likely).toBeCloseTo(5 + 2 * 0.6, 12);
  expect(third.starting!.oneAfterAnother.high).toBeCloseTo(7 + 2 * 0.8, 12);
  expect(third.starting!.allAtOnce).toMatchObject({ low: 12, likely: 15, high: 21 });
  expect(answer.chargeOfAll.likely).toBeCloseTo(0.27, 12);
});
