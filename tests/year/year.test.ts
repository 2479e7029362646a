// A year of twelve steady states: sums, seasons, and a case that can be added up by hand.

import { describe, expect, it } from 'vitest';
import { type MachineState, type PlantHardware, plantFormulas } from '../../src/plant/index.ts';
import { type MonthConditions, monthlyConditions } from '../../src/surroundings/index.ts';
import { seasonCop, yearFormulas, yearOfMonths, yearWorking } from '../../src/year/index.ts';
import { expectTraced } from '../traced-steps.ts';

const months = monthlyConditions(
  { usual: 293.15, coldest: 290.15, warmest: 298.15, monthsHeated: 7, coldestMonth: 'january' },
  { kind: 'roomAir' },
);
const hardware: PlantHardware = {
  sourceIsTankRoom: true,
  shellPlace: 'tankRoom',
  fanPower: 8,
  loopPumpPower: 0,
  loopPumpShareToWater: 0,
  controlsPower: 2,
  crankcaseHeaterPower: 0,
  sensibleShareOfHeatTaken: 1,
};
const machine: MachineState = { condenserHeat: 180, heatTaken: 150, compressorPower: 50, shellHeat: 20 };
const second = 365 * 86400;

/** Heat in proportion to the temperature difference to water at 299.15 K, 20 W/K, of which half is vapour. */
function loadAt(conditions: MonthConditions) {
  const load = 20 * (299.15 - conditions.roomTemperature);
  return { load, sensibleToRoom: load / 2, latentToRoom: load / 2 };
}

describe('a year of months', () => {
  const year = yearOfMonths({ months, loadAt, machineAt: () => machine, hardware });

  it('needs as much heat as its degree days: 20 W/K times the sum of (299.15 − T) over time', () => {
    const byHand = months.reduce((total, month) => total + 20 * (299.15 - month.roomTemperature) * month.duration, 0);
    expect(year.energies.heatNeeded / byHand).toBeCloseTo(1, 12);
  });

  it('degree hours of a steady difference agree with the textbook sum: 8 K for 8760 h are 70 080 K h', () => {
    const steady = months.map((month) => ({ ...month, roomTemperature: 291.15 }));
    const steadyYear = yearOfMonths({ months: steady, loadAt, machineAt: () => machine, hardware });
    expect(steadyYear.energies.heatNeeded / 20 / 3600).toBeCloseTo(70_080, 6);
  });

  it('adds its months', () => {
    const sum = year.months.reduce((total, month) => total + month.energies.electricity.total, 0);
    expect(year.energies.electricity.total).toBeCloseTo(sum, 3);
    const { total, ...parts } = year.energies.electricity;
    expect(Object.values(parts).reduce((all, part) => all + part, 0) / total).toBeCloseTo(1, 12);
  });

  it('closes over the year: electricity + heat taken = heat needed + shell + fan + controls', () => {
    const { energies } = year;
    const shell = (energies.heatTakenFromSource / 150) * 20;
    const right = energies.heatNeeded + shell + energies.electricity.fan + energies.electricity.controls;
    expect((energies.electricity.total + energies.heatTakenFromSource) / right).toBeCloseTo(1, 12);
  });

  it('counts room heat of the heated months and of summer apart', () => {
    const heated = year.months.filter((month) => month.conditions.heatedShare === 1);
    expect(heated).toHaveLength(7);
    expect(year.roomHeatHeated).toBeCloseTo(
      heated.reduce((total, month) => total + month.energies.roomHeat, 0),
      3,
    );
    const summer = year.months.filter((month) => ['june', 'july', 'august'].includes(month.conditions.month));
    expect(year.roomHeatSummer).toBeCloseTo(
      summer.reduce((total, month) => total + month.energies.roomHeat, 0),
      3,
    );
  });

  it('states standby and backup in the season figure', () => {
    expect(year.seasonCop).toBeCloseTo(year.energies.heatNeeded / year.energies.electricity.total, 12);
    expect(year.backupShare).toBe(0);
    expect(year.runFraction).toBeGreaterThan(0.1);
    expect(year.runFraction).toBeLessThan(1);
    expect(seasonCop(1.8e9, 0.2e9, 0.8e9)).toBeCloseTo(2.5, 12);
  });

  it('names months without an operating point and heats them by resistance', () => {
    const broken = yearOfMonths({
      months,
      loadAt,
      machineAt: (conditions) => (conditions.month === 'january' ? null : machine),
      hardware,
    });
    expect(broken.monthsWithoutMachine).toEqual(['january']);
    expect(broken.energies.backupHeat).toBeCloseTo(120 * 31 * 86400, 3);
    expect(broken.backupShare).toBeGreaterThan(0.05);
  });

  it('does not ask for an operating point in a month that needs no heat', () => {
    const idle = yearOfMonths({
      months,
      loadAt: () => ({ load: -5, sensibleToRoom: 0, latentToRoom: 0 }),
      machineAt: () => {
        throw new Error('asked');
      },
      hardware,
    });
    expect(idle.energies.electricity.total).toBeCloseTo(2 * second, 3);
    expect(idle.energies.surplusHeat).toBeCloseTo(5 * second, 3);
    expect(idle.monthsWithoutMachine).toEqual([]);
    expect(idle.backupShare).toBe(0);
  });

  const symbols = ['L', 'Q_tank', 'Q_latent', 'P_comp', 'Q_e', 'P_sh', 'Q_c'];
  const origins = () => Object.fromEntries(symbols.map((symbol) => [symbol, 'given']));
  const isGiven = (origin: string) => origin === 'given' || /^year\.\w+\.(heated|summer)Share$/.test(origin);
  const constants = ['phi', 'P_p', 'P_fan', 'P_f', 'P_ctl', 'P_cr', 's', 't'];

  it('shows its working: months, energies, sums and the season figure', () => {
    const steps = yearWorking(year, hardware, origins);
    const values = expectTraced(steps, [...plantFormulas, ...yearFormulas], isGiven, constants);
    expect(values.get('year.seasonCop')).toBe(year.seasonCop);
    expect(values.get('year.energies.electricity')).toBe(year.energies.electricity.total);
    expect(values.get('year.roomHeatHeated')).toBe(year.roomHeatHeated);
    expect(values.get('year.roomHeatSummer')).toBe(year.roomHeatSummer);
    expect(values.get('year.march.energies.heatNeeded')).toBe(year.months[2]!.energies.heatNeeded);
  });

  it('shows a part of a year and a month without operating point', () => {
    const part = yearOfMonths({
      months: months.slice(0, 2),
      loadAt,
      machineAt: ({ month }) => (month === 'january' ? null : machine),
      hardware,
    });
    const idle = [...constants, 'x', 'Q_w', 'Q_e', 'P_sh', 'Q_taken', 'P_comp'];
    const unused = Array.from(months.slice(2), ({ month }) => `E_${month}`);
    const steps = yearWorking(part, hardware, origins);
    const values = expectTraced(steps, [...plantFormulas, ...yearFormulas], isGiven, [...idle, ...unused]);
    expect(values.get('year.energies.backupHeat')).toBe(part.energies.backupHeat);
    expect(values.get('year.january.backupHeat')).toBeCloseTo(120, 9);
  });

  it('has no season figure without electricity', () => {
    const nothing = yearOfMonths({
      months,
      loadAt: () => ({ load: 0, sensibleToRoom: 0, latentToRoom: 0 }),
      machineAt: () => machine,
      hardware: { ...hardware, controlsPower: 0 },
    });
    expect(nothing.seasonCop).toBeNull();
    const steps = yearWorking(nothing, hardware, () => ({}));
    expect(steps.some((step) => step.result === 'year.seasonCop')).toBe(false);
  });

  it('refuses no months and impossible months', () => {
    expect(() => yearOfMonths({ months: [], loadAt, machineAt: () => machine, hardware })).toThrow(/months/);
    const bad = [{ ...months[0]!, duration: Number.NaN }];
    expect(() => yearOfMonths({ months: bad, loadAt, machineAt: () => machine, hardware })).toThrow(/january.duration/);
  });
});
