// Two complete accounts: hand sums of small years, and the laws that tie the scenarios together.

import { describe, expect, it } from 'vitest';
import {
  type AccountPrices,
  account,
  accountsFormulas,
  accountWorking,
  assumedRoomCoolingCop,
  certifiedHeatPumpEnergies,
  electricityAtCop,
  plainHeaterEnergies,
  type ScenarioEnergies,
  scenarioWorking,
  thisLoopEnergies,
} from '../../src/accounts/index.ts';
import type { MachineState, PlantHardware } from '../../src/plant/index.ts';
import { monthlyConditions } from '../../src/surroundings/index.ts';
import { yearFormulas, yearOfMonths } from '../../src/year/index.ts';
import { expectTraced } from '../traced-steps.ts';

const kilowattHour = 3.6e6;
const second = 365 * 86400;
const prices: AccountPrices = {
  electricity: 0.3 / kilowattHour,
  houseHeat: 0.12 / kilowattHour,
  roomCooledInSummer: false,
  roomCoolingCop: assumedRoomCoolingCop,
  years: 10,
  discountRate: 0.05,
};
const hardware: PlantHardware = {
  sourceIsTankRoom: true,
  shellPlace: 'tankRoom',
  fanPower: 0,
  loopPumpPower: 0,
  loopPumpShareToWater: 0,
  controlsPower: 0,
  crankcaseHeaterPower: 0,
  sensibleShareOfHeatTaken: 1,
};

function yearWith(machine: MachineState, monthsHeated: number, fittings = hardware) {
  return yearOfMonths({
    months: monthlyConditions(
      { usual: 293.15, coldest: 290.15, warmest: 298.15, monthsHeated, coldestMonth: 'january' },
      { kind: 'roomAir' },
    ),
    loadAt: () => ({ load: 100, sensibleToRoom: 60, latentToRoom: 40 }),
    machineAt: () => machine,
    hardware: fittings,
  });
}

const lossless: MachineState = { condenserHeat: 200, heatTaken: 150, compressorPower: 50, shellHeat: 0 };

describe('energies of the scenarios', () => {
  const year = yearWith(lossless, 12);

  it('a heater turns 100 W into 100 W and leaves the room the tank loss', () => {
    const heater = plainHeaterEnergies(year);
    expect(heater.electricity).toBeCloseTo(100 * second, 0);
    expect(heater.roomHeatHeated).toBeCloseTo(60 * second, 0);
    expect(heater.roomHeatSummer).toBe(0);
  });

  it('a loop without losses is the same as a certified machine of its own coefficient', () => {
    const loop = thisLoopEnergies(year);
    const certified = certifiedHeatPumpEnergies(year, 4, true);
    expect(loop.electricity).toBeCloseTo(25 * second, 0);
    expect(certified.electricity).toBeCloseTo(loop.electricity, 0);
    expect(certified.roomHeatHeated).toBeCloseTo(loop.roomHeatHeated, 0);
    expect(certified.roomHeatHeated).toBeCloseTo((60 - 75) * second, 0);
  });

  it('what a heat pump saves at the socket it takes out of its own room: sums of electricity and room debit are equal', () => {
    const heater = plainHeaterEnergies(year);
    const certified = certifiedHeatPumpEnergies(year, 3.2, true);
    const saved = heater.electricity - certified.electricity;
    const taken = heater.roomHeatHeated - certified.roomHeatHeated;
    expect(saved / taken).toBeCloseTo(1, 12);
    const outside = certifiedHeatPumpEnergies(year, 3.2, false);
    expect(outside.roomHeatHeated).toBeCloseTo(heater.roomHeatHeated, 0);
  });

  it('so with house heat at the price of electricity and heating all year, a lossless heat pump on room air saves nothing', () => {
    const even = { ...prices, houseHeat: prices.electricity };
    const heater = account(plainHeaterEnergies(year), 0, even);
    const certified = account(certifiedHeatPumpEnergies(year, 4, true), 0, even);
    expect(certified.runningCost).toBeCloseTo(heater.runningCost, 8);
  });

  it('refuses a coefficient below 1', () => {
    expect(() => certifiedHeatPumpEnergies(year, 0.9, true)).toThrow(/cop/);
    expect(() => electricityAtCop(Number.NaN, 3)).toThrow(/heat/);
  });

  it('counts summer for a room that is heated seven months', () => {
    const part = plainHeaterEnergies(yearWith(lossless, 7));
    const summer = (30 + 31 + 31) * 86400;
    expect(part.roomHeatSummer).toBeCloseTo(60 * summer, 0);
    expect(part.roomHeatHeated).toBeCloseTo(60 * (31 + 28 + 31 + 30 + 31 + 30 + 31) * 86400, 0);
  });
});

describe('account', () => {
  const energies: ScenarioEnergies = {
    scenario: 'thisLoop',
    heatToWater: 3000 * kilowattHour,
    electricity: 1000 * kilowattHour,
    roomHeatHeated: 500 * kilowattHour,
    roomHeatSummer: 100 * kilowattHour,
    dehumidifierElectricity: null,
  };

  it('adds up by hand: 300 − 60 = 240 a year, plus 600 spread over ten years at 5 %', () => {
    const result = account(energies, 600, prices);
    expect(result.electricityCost).toBeCloseTo(300, 9);
    expect(result.roomHeatCredit).toBeCloseTo(60, 9);
    expect(result.coolingCost).toBe(0);
    expect(result.runningCost).toBeCloseTo(240, 9);
    expect(result.annualisedPurchase).toBeCloseTo(600 * 0.1295046, 4);
    expect(result.annualCost).toBeCloseTo(240 + 77.7027, 3);
    expect(result.costOverLife).toBeCloseTo(600 + 240 * 7.721735, 3);
  });

  it('charges cooling in summer only where the room is cooled: 100 kWh over 3 at 0.30', () => {
    const cooled = account(energies, 600, { ...prices, roomCooledInSummer: true });
    expect(cooled.coolingCost).toBeCloseTo(10, 9);
    expect(cooled.runningCost).toBeCloseTo(250, 9);
    const chills = account({ ...energies, roomHeatSummer: -100 * kilowattHour }, 600, {
      ...prices,
      roomCooledInSummer: true,
    });
    expect(chills.coolingCost).toBeCloseTo(-10, 9);
  });

  it('debits a room that is chilled', () => {
    const result = account({ ...energies, roomHeatHeated: -500 * kilowattHour }, 0, prices);
    expect(result.runningCost).toBeCloseTo(360, 9);
  });

  it('spreads evenly without interest, and names a bad price', () => {
    expect(account(energies, 600, { ...prices, discountRate: 0 }).annualisedPurchase).toBe(60);
    expect(() => account(energies, -1, prices)).toThrow(/purchase/);
    expect(() => account(energies, 0, { ...prices, houseHeat: Number.NaN })).toThrow(/houseHeat/);
  });

  it.each([
    ['cooled in summer', { ...prices, roomCooledInSummer: true }, true],
    ['not cooled, no interest', { ...prices, discountRate: 0 }, true],
    ['source elsewhere', prices, false],
  ])('shows its working from the months to the cost of a year: %s', (_what, given, sourceIsTankRoom) => {
    const year = yearWith({ condenserHeat: 180, heatTaken: 150, compressorPower: 50, shellHeat: 20 }, 6.4);
    const from = { cop: 'given.cop', sourceIsTankRoom: 'given.source' };
    const certified = { cop: 3.4, sourceIsTankRoom, from };
    const scenarios = [
      plainHeaterEnergies(year),
      thisLoopEnergies(year),
      certifiedHeatPumpEnergies(year, certified.cop, sourceIsTankRoom),
    ];
    for (const energies of scenarios) {
      const result = account(energies, 600, given);
      const steps = [...scenarioWorking(energies, year, certified), ...accountWorking(result, given, 'given.purchase')];
      const isGiven = (origin: string) => /^(given|prices|room|year)\./.test(origin);
      const own = energies.scenario === 'plainHeater' ? ['COP', 'COP_cool'] : ['COP_cool'];
      const values = expectTraced(steps, [...accountsFormulas, ...yearFormulas], isGiven, own);
      const named = (name: string) => values.get(`accounts.${energies.scenario}.${name}`);
      expect(named('electricity')).toBe(energies.electricity);
      expect(named('roomHeat')).toBe(energies.roomHeatHeated);
      expect(named('roomHeatSummer')).toBe(energies.roomHeatSummer);
      expect(named('coolingCost')).toBe(result.coolingCost);
      expect(named('runningCost')).toBe(result.runningCost);
      expect(named('annualCost')).toBe(result.annualCost);
    }
  });
});
