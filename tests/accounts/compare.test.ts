// This loop against another way: at the break-even price of house heat and at the break-even season figure the two accounts,
// made anew with these, cost the same. Nothing of the functions under test is used to make them anew.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type AccountPrices,
  account,
  annuityFactor,
  breakEvenCop,
  breakEvenHouseHeat,
  costAtCopOne,
  type ScenarioEnergies,
} from '../../src/accounts/index.ts';

const kilowattHour = 3.6e6;
const prices: AccountPrices = {
  electricity: 0.3 / kilowattHour,
  houseHeat: 0.12 / kilowattHour,
  roomCooledInSummer: false,
  roomCoolingCop: 3,
  years: 10,
  discountRate: 0.05,
};
const loop: ScenarioEnergies = {
  scenario: 'thisLoop',
  heatToWater: 3000 * kilowattHour,
  electricity: 1000 * kilowattHour,
  roomHeatHeated: -500 * kilowattHour,
  roomHeatSummer: -100 * kilowattHour,
  dehumidifierElectricity: null,
};
const heater: ScenarioEnergies = {
  scenario: 'plainHeater',
  heatToWater: 3000 * kilowattHour,
  electricity: 3000 * kilowattHour,
  roomHeatHeated: 1500 * kilowattHour,
  roomHeatSummer: 300 * kilowattHour,
  dehumidifierElectricity: null,
};

describe('break-even price of house heat', () => {
  it('by hand: saves 600 at the socket, takes 2000 kWh more from the room, nothing to buy → 0.30 a kilowatt hour', () => {
    const difference = account(loop, 0, prices).annualCost - account(heater, 0, prices).annualCost;
    expect(difference).toBeCloseTo(-360, 9);
    const price = breakEvenHouseHeat(prices.houseHeat, difference, loop.roomHeatHeated, heater.roomHeatHeated);
    expect(price * kilowattHour).toBeCloseTo(0.3, 12);
  });

  it('law, seed 20260403: at that price the two accounts are the same', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 2000, noNaN: true }),
        fc.double({ min: 0.01, max: 1, noNaN: true }),
        fc.double({ min: -3000, max: 1400, noNaN: true }),
        (purchase, houseHeat, roomHeat) => {
          const at = { ...prices, houseHeat: houseHeat / kilowattHour };
          const mine = { ...loop, roomHeatHeated: roomHeat * kilowattHour };
          const difference = account(mine, purchase, at).annualCost - account(heater, 40, at).annualCost;
          const price = breakEvenHouseHeat(at.houseHeat, difference, mine.roomHeatHeated, heater.roomHeatHeated);
          if (price < 0) return;
          const even = { ...at, houseHeat: price };
          const left = account(mine, purchase, even).annualCost - account(heater, 40, even).annualCost;
          expect(Math.abs(left)).toBeLessThan(1e-7 * (1 + price * kilowattHour));
        },
      ),
      { seed: 20260403, numRuns: 200 },
    );
  });

  it('refuses where both give the room the same heat', () => {
    expect(() => breakEvenHouseHeat(1e-8, 10, 5, 5)).toThrow(/roomLoop/);
  });
});

describe('break-even season figure', () => {
  it('by hand: a heater of 900 a year; a loop that costs 100 a year to buy must bring 3000 kWh for 800 → 1.125', () => {
    // Capital recovery of 5 % over 10 years, 0.1295046 (interest table): 100 a year is a purchase of 772.1735.
    const purchase = 100 * annuityFactor(0.05, 10);
    const same = { ...loop, roomHeatHeated: heater.roomHeatHeated };
    const difference = account(same, purchase, prices).annualCost - account(heater, 0, prices).annualCost;
    const electricity = { total: loop.electricity, whileHeated: 0, inSummer: 0 };
    const atOne = costAtCopOne(3, electricity, prices, false);
    expect(atOne).toBeCloseTo(900, 9);
    expect(breakEvenCop(atOne, 3, difference)).toBeCloseTo(1.125, 9);
  });

  it('law, seed 20260404: with the electricity of that figure, and what the room then keeps, the accounts are the same', () => {
    const given = fc.record({
      purchase: fc.double({ min: 0, max: 3000, noNaN: true }),
      heatedShare: fc.double({ min: 0, max: 1, noNaN: true }),
      fromRoom: fc.boolean(),
      cooled: fc.boolean(),
    });
    fc.assert(
      fc.property(given, ({ purchase, heatedShare, fromRoom, cooled }) => {
        const all = { ...prices, roomCooledInSummer: cooled };
        const electricity = {
          total: loop.electricity,
          whileHeated: heatedShare * loop.electricity,
          inSummer: 0.5 * (1 - heatedShare) * loop.electricity,
        };
        const difference = account(loop, purchase, all).annualCost - account(heater, 0, all).annualCost;
        const cop = breakEvenCop(costAtCopOne(3, electricity, all, fromRoom), 3, difference);
        if (cop <= 0) return;
        // 3 / cop times the electricity for the same heat; what is more at the socket is less from the source.
        const more = 3 / cop - 1;
        const kept = fromRoom ? more : 0;
        const at: ScenarioEnergies = {
          ...loop,
          electricity: loop.electricity * (1 + more),
          roomHeatHeated: loop.roomHeatHeated + kept * electricity.whileHeated,
          roomHeatSummer: loop.roomHeatSummer + kept * electricity.inSummer,
        };
        const left = account(at, purchase, all).annualCost - account(heater, 0, all).annualCost;
        expect(Math.abs(left)).toBeLessThan(1e-7 * (1 + Math.abs(more)));
      }),
      { seed: 20260404, numRuns: 200 },
    );
  });
});

it('works the example of money over time: 600 now saves 120 a year, 5 %, 10 years → 42.30 a year less', () => {
  // Net present value +326.608 and annuity factor 7.721735, as in present-value.test.ts: 326.608 / 7.721735 = 42.2972.
  const pays = { ...loop, electricity: 0, roomHeatHeated: 0 };
  const costs = { ...heater, electricity: 400 * kilowattHour, roomHeatHeated: 0 };
  const difference = account(pays, 600, prices).annualCost - account(costs, 0, prices).annualCost;
  expect(difference).toBeCloseTo(-326.608 / 7.721735, 3);
});
