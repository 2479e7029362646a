// A dehumidifier in the tank's room, from the design to every account: what evaporates is condensed, and its heat and electricity
// are counted once. Laws; the figures by hand are those of the working.

import { describe, expect, it, test } from 'vitest';
import { allFormulas } from '../../src/assess/formulas.ts';
import { type Assessment, assessDesign, assessTankLoad, assessWrapping } from '../../src/assess/index.ts';
import { fieldRecord } from '../../src/design/index.ts';
import { latentHeat } from '../../src/matter/water/index.ts';
import { changedDesign, demoTexts } from '../designs.ts';
import { expectTraced } from '../traced-steps.ts';

const demo = demoTexts['bare-glass-above-an-open-sump.json']!;
const known = { 'room.relativeHumidity': '55 %', 'room.moisture': { kind: 'humidityKnown' } };
const dried = (energyPerLitre: string) => ({
  'room.relativeHumidity': '55 %',
  'room.moisture': { kind: 'dehumidifier', energyPerLitre },
});

function assessed(changes: Readonly<Record<string, unknown>>): Assessment {
  const outcome = assessDesign(changedDesign(demo, changes), 'metric');
  if (!outcome.ok) throw new Error(JSON.stringify(outcome));
  return outcome.assessment;
}

const without = assessed(known);
const withOne = assessed(dried('0.5 kWh/L'));
const kilowattHour = 3.6e6;

describe('a dehumidifier in every account', () => {
  it('leaves heat and electricity of every way as they are, to the last bit', () => {
    for (const [index, account] of withOne.accounts.entries()) {
      const other = without.accounts[index]!;
      expect(account.scenario).toBe(other.scenario);
      if (account.scenario === 'insulationOnly') continue;
      expect(account.electricity.likely).toBe(other.electricity.likely);
      expect(account.electricityCost.likely).toBe(other.electricityCost.likely);
      expect(other.dehumidifierCost).toBeNull();
      expect(other.dehumidifierElectricity).toBeNull();
    }
    expect(withOne.year.map(({ heatNeeded }) => heatNeeded)).toEqual(without.year.map(({ heatNeeded }) => heatNeeded));
  });

  it('takes out what evaporates, month by month: latent heat and electricity come back as warmth, to 1e-9', () => {
    const step = (name: string) => withOne.workings.find(({ result }) => result === name)!.value;
    for (const [index, { month, roomTemperature, roomHeat }] of withOne.year.entries()) {
      const at = `year.${month}`;
      const evaporation = step(`${at}.tank.evaporation`);
      const drawn = evaporation * 0.5 * kilowattHour;
      expect(step(`${at}.dehumidifier.removed`)).toBe(evaporation);
      expect(step(`${at}.dehumidifier.electricity`) / drawn).toBeCloseTo(1, 9);
      const heat = evaporation * latentHeat(roomTemperature) + drawn;
      expect(step(`${at}.dehumidifier.heatToRoom`) / heat).toBeCloseTo(1, 9);
      const gained = roomHeat - without.year[index]!.roomHeat;
      const energy = step(`${at}.energies.dehumidifierHeat`);
      expect(Math.abs(gained - energy)).toBeLessThan(1e-9 * (Math.abs(energy) + Math.abs(roomHeat)));
    }
  });

  it('adds up: running cost of a year and of each month, and the months to the year', () => {
    for (const account of withOne.accounts) {
      const { electricityCost, roomCredit, coolingCost, dehumidifierCost, runningCost, months } = account;
      const sum = electricityCost.likely - roomCredit.likely + coolingCost.likely + dehumidifierCost!.likely;
      expect(runningCost.likely / sum).toBeCloseTo(1, 12);
      const ofMonths = months.reduce((all, month) => all + month.dehumidifierCost!, 0);
      expect(ofMonths / dehumidifierCost!.likely).toBeCloseTo(1, 9);
      expect(months.reduce((all, month) => all + month.runningCost, 0) / runningCost.likely).toBeCloseTo(1, 9);
      expect(dehumidifierCost!.high).toBeGreaterThan(dehumidifierCost!.likely);
    }
  });

  it('costs the same whatever heats the water, and less on a wrapped tank', () => {
    const cost = (scenario: string) =>
      withOne.accounts.find((account) => account.scenario === scenario)!.dehumidifierCost!.likely;
    expect(cost('thisLoop')).toBe(cost('plainHeater'));
    expect(cost('certifiedHeatPump')).toBe(cost('plainHeater'));
    expect(cost('insulationOnly')).toBeLessThan(cost('plainHeater'));
  });

  it('says how it is simplified, and draws nothing where electricity for a litre is next to nothing', () => {
    expect(withOne.findings.map(({ code }) => code)).toContain('dehumidifierSimplified');
    expect(without.findings.map(({ code }) => code)).not.toContain('dehumidifierSimplified');
    const frugal = assessed(dried('0.05 kWh/L')).accounts[0]!;
    expect(frugal.dehumidifierCost!.likely / withOne.accounts[0]!.dehumidifierCost!.likely).toBeCloseTo(0.1, 9);
  });

  it('is traced to the design', () => {
    const isGiven = (origin: string) => fieldRecord(origin) !== undefined || origin.startsWith('engine.');
    const ofIt = withOne.workings.filter(({ result }) => /dehumidifier|\.runningCost$/.test(result));
    expect(ofIt.length).toBeGreaterThan(100);
    const names = new Set(withOne.workings.map(({ result }) => result));
    const isKnown = (origin: string) => isGiven(origin) || names.has(origin);
    expectTraced(ofIt, allFormulas, isKnown, ['t']);
  });
});

test('a tank that evaporates nothing gives a dehumidifier nothing to do', () => {
  const measured = {
    kind: 'measured',
    energy: '20 kWh',
    duration: '7 days',
    roomTemperature: '19 °C',
    evaporationShare: '0 %',
    volume: '200 L',
  };
  const still = assessed({ ...dried('0.5 kWh/L'), 'tank.load': measured, wrapping: undefined });
  const same = assessed({ ...known, 'tank.load': measured, wrapping: undefined });
  for (const [index, account] of still.accounts.entries()) {
    expect(account.dehumidifierCost!.likely).toBe(0);
    expect(account.runningCost).toEqual(same.accounts[index]!.runningCost);
    expect(account.roomCredit).toEqual(same.accounts[index]!.roomCredit);
  }
});

test('the tank alone shows the same account of a plain heater', () => {
  const outcome = assessTankLoad(changedDesign(demo, dried('0.5 kWh/L')));
  if (!outcome.ok) throw new Error(JSON.stringify(outcome));
  const { heaterAccount, findings } = outcome.answer;
  const { dehumidifierCost, runningCost } = withOne.accounts[0]!;
  expect(heaterAccount.dehumidifierCost!.likely).toBe(dehumidifierCost!.likely);
  expect(heaterAccount.runningCost.likely).toBe(runningCost.likely);
  expect(findings.map(({ code }) => code)).toContain('dehumidifierSimplified');
});

test('a lid saves the dehumidifier electricity', () => {
  const answer = (changes: Readonly<Record<string, unknown>>) => {
    const outcome = assessWrapping(changedDesign(demo, changes));
    if (!outcome.ok) throw new Error(JSON.stringify(outcome));
    return outcome.answer;
  };
  const lidOf = ({ measures }: ReturnType<typeof answer>) => measures.find(({ kind }) => kind === 'lid')!.alone;
  const [plain, one] = [answer(known), answer(dried('0.5 kWh/L'))];
  expect(one.basis.dehumidifier).toBe(true);
  expect(plain.basis.dehumidifier).toBe(false);
  const saved = lidOf(one).electricitySaved.likely - lidOf(plain).electricitySaved.likely;
  const litres = lidOf(one).waterSaved.likely * 1000;
  expect(saved / (litres * 0.5 * one.basis.electricityPrice * kilowattHour)).toBeCloseTo(1, 9);
  const { electricitySaved, roomCreditChange, coolingSaved, netSaving } = lidOf(one);
  expect(netSaving.likely).toBeCloseTo(electricitySaved.likely + roomCreditChange.likely + coolingSaved.likely, 9);
});

test('that airing is charged to nobody is said of an aired room alone', () => {
  const aired = assessed({ 'room.moisture': { kind: 'ventilated', airChanges: '0.5 /h' } });
  expect(aired.findings.map(({ code }) => code)).toContain('airingNotCharged');
  expect(aired.accounts[0]!.dehumidifierCost).toBeNull();
});
