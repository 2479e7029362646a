// Months of an account: one worked by hand, and the law that twelve of them are the year.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type AccountPrices,
  account,
  certifiedHeatPumpEnergies,
  monthAccounts,
  plainHeaterEnergies,
  thisLoopEnergies,
} from '../../src/accounts/index.ts';
import type { MachineState, PlantHardware } from '../../src/plant/index.ts';
import { monthlyConditions } from '../../src/surroundings/index.ts';
import { type Year, yearOfMonths } from '../../src/year/index.ts';

const kilowattHour = 3.6e6;
const prices: AccountPrices = {
  electricity: 0.3 / kilowattHour,
  houseHeat: 0.12 / kilowattHour,
  roomCooledInSummer: true,
  roomCoolingCop: 3,
  years: 10,
  discountRate: 0.05,
};
const hardware: PlantHardware = {
  sourceIsTankRoom: true,
  shellPlace: 'tankRoom',
  fanPower: 5,
  loopPumpPower: 0,
  loopPumpShareToWater: 0,
  controlsPower: 0,
  crankcaseHeaterPower: 0,
  sensibleShareOfHeatTaken: 1,
};
const machine: MachineState = { condenserHeat: 180, heatTaken: 150, compressorPower: 50, shellHeat: 20 };

function yearWith(monthsHeated: number, load = 90, fittings = hardware): Year {
  return yearOfMonths({
    months: monthlyConditions(
      { usual: 293.15, coldest: 290.15, warmest: 298.15, monthsHeated, coldestMonth: 'january' },
      { kind: 'roomAir' },
    ),
    loadAt: ({ roomTemperature }) => ({
      load: load * (300.15 - roomTemperature) * 0.14,
      sensibleToRoom: 60,
      latentToRoom: 40,
    }),
    machineAt: () => machine,
    hardware: fittings,
  });
}

const certified = { cop: 3.4, sourceIsTankRoom: true };
const scenarios = ['plainHeater', 'thisLoop', 'certifiedHeatPump'] as const;

describe('a month by hand', () => {
  // A load of 90 W for 31 days: 66.96 kWh. The machine brings 180 W, so it runs half of the time.
  const year = yearOfMonths({
    months: monthlyConditions(
      { usual: 293.15, coldest: 290.15, warmest: 298.15, monthsHeated: 12, coldestMonth: 'january' },
      { kind: 'roomAir' },
    ).slice(0, 1),
    loadAt: () => ({ load: 90, sensibleToRoom: 60, latentToRoom: 40 }),
    machineAt: () => machine,
    hardware,
  });
  const january = (scenario: (typeof scenarios)[number]) => monthAccounts(scenario, year, certified, prices)[0]!;

  it('plain heater: 66.96 kWh at 0.30; 60 W × 31 d = 44.64 kWh to the room at 0.12', () => {
    const month = january('plainHeater');
    expect(month.month).toBe('january');
    expect(month.electricity / kilowattHour).toBeCloseTo(66.96, 9);
    expect(month.electricityCost).toBeCloseTo(20.088, 9);
    expect(month.roomHeat / kilowattHour).toBeCloseTo(44.64, 9);
    expect(month.roomHeatCredit).toBeCloseTo(5.3568, 9);
    expect(month.coolingCost).toBe(0);
    expect(month.runningCost).toBeCloseTo(14.7312, 9);
  });

  it('this loop, half of the time: (50 + 5) W → 20.46 kWh; room 60 + (20 + 5 − 150)/2 = −2.5 W → −1.86 kWh', () => {
    const month = january('thisLoop');
    expect(month.electricity / kilowattHour).toBeCloseTo(20.46, 9);
    expect(month.electricityCost).toBeCloseTo(6.138, 9);
    expect(month.roomHeat / kilowattHour).toBeCloseTo(-1.86, 9);
    expect(month.roomHeatCredit).toBeCloseTo(-0.2232, 9);
    expect(month.runningCost).toBeCloseTo(6.3612, 9);
  });

  it('certified heat pump of 3.4: 66.96/3.4 kWh; it takes 66.96 (1 − 1/3.4) out of the room', () => {
    const month = january('certifiedHeatPump');
    expect(month.electricityCost).toBeCloseTo((0.3 * 66.96) / 3.4, 9);
    expect(month.roomHeatCredit).toBeCloseTo(0.12 * (44.64 - 66.96 * (1 - 1 / 3.4)), 9);
  });
});

describe('law, seed 20260402', () => {
  it('the months add up to the year in every line of every scenario', () => {
    const given = fc.record({
      heated: fc.double({ min: 0, max: 12, noNaN: true }),
      load: fc.double({ min: 1, max: 400, noNaN: true }),
      cop: fc.double({ min: 1, max: 6, noNaN: true }),
      own: fc.boolean(),
      cooled: fc.boolean(),
    });
    fc.assert(
      fc.property(given, ({ heated, load, cop, own, cooled }) => {
        const year = yearWith(heated, load, { ...hardware, sourceIsTankRoom: own });
        const all = { ...prices, roomCooledInSummer: cooled };
        const what = { cop, sourceIsTankRoom: own };
        const energies = {
          plainHeater: plainHeaterEnergies(year),
          thisLoop: thisLoopEnergies(year),
          certifiedHeatPump: certifiedHeatPumpEnergies(year, cop, own),
        };
        for (const scenario of scenarios) {
          const months = monthAccounts(scenario, year, what, all);
          const whole = account(energies[scenario], 100, all);
          const lines = [
            ['electricity', whole.energies.electricity],
            ['electricityCost', whole.electricityCost],
            ['roomHeat', whole.energies.roomHeatHeated],
            ['roomHeatSummer', whole.energies.roomHeatSummer],
            ['roomHeatCredit', whole.roomHeatCredit],
            ['coolingCost', whole.coolingCost],
            ['runningCost', whole.runningCost],
          ] as const;
          for (const [name, total] of lines) {
            const sum = months.reduce((before, month) => before + month[name], 0);
            const scale = months.reduce((before, month) => before + Math.abs(month[name]), 0);
            expect(Math.abs(sum - total), `${scenario} ${name}`).toBeLessThanOrEqual(1e-9 * scale);
          }
        }
      }),
      { seed: 20260402, numRuns: 60 },
    );
  });
});

it('a month that is not heated credits nothing, and one that is not summer costs no cooling', () => {
  const months = monthAccounts('plainHeater', yearWith(5), certified, prices);
  const july = months.find(({ month }) => month === 'july')!;
  expect(july.heatedShare).toBe(0);
  expect(july.roomHeatCredit).toBe(0);
  expect(july.coolingCost).toBeGreaterThan(0);
  expect(months.find(({ month }) => month === 'january')!.coolingCost).toBe(0);
});
