// Whole numbers of machines for a load, and how many run in a month: worked by hand.

import { expect, test } from 'vitest';
import { howMany, machinesFor } from '../../../../src/assess/studies/machine/how-many.ts';

test.each([
  [400, 150, 3],
  [450, 150, 3],
  [451, 150, 4],
  [0, 150, 0],
  [-20, 150, 0],
])('%s W by machines of %s W: %s', (load, heat, machines) => {
  expect(machinesFor(load, heat)).toBe(machines);
});

test('a machine without heat carries nothing, however many there are', () => {
  expect(machinesFor(100, 0)).toBeNull();
  expect(machinesFor(100, -5)).toBeNull();
});

const exactly = (value: number) => ({ low: value, likely: value, high: value });

test('heat of 150 W each, a pump that gives 4 of its 5 W, a load of 300 to 420 W', () => {
  const answer = howMany({
    coldestSpell: { heat: { low: 120, likely: 150, high: 180 }, power: exactly(60) },
    mildDay: null,
    load: { low: 300, likely: 350, high: 420 },
    planned: 1,
    beside: { fanPower: 8, loopPumpPower: 5, loopPumpShareToWater: 0.8, controlsPower: 3 },
    chargePerCircuit: exactly(0.09),
    months: [
      { month: 'january', load: 350, heatOfOne: 150 },
      { month: 'july', load: 0, heatOfOne: 210 },
      { month: 'may', load: 604, heatOfOne: 200 },
      { month: 'march', load: 100, heatOfOne: null },
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
  ]);
  expect(answer.chargeOfAll.likely).toBeCloseTo(0.27, 12);
});
