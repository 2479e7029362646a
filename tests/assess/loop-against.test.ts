// This loop against each other way, on real designs: the difference varied as one is never wider than the two bills taken
// apart, the break-evens make the bills equal when typed into the design, and the words say what the numbers say.

import { describe, expect, test } from 'vitest';
import { type Assessment, assessDesign, sayLoopAgainst } from '../../src/assess/index.ts';
import { parseDesign, setField } from '../../src/design/index.ts';
import { demoTexts } from '../designs.ts';

const kilowattHour = 3.6e6;

describe.each(Object.entries(demoTexts))('%s', (_, text) => {
  const assessment = assessed(text);
  const accountOf = (scenario: string) => assessment.accounts.find((each) => each.scenario === scenario)!;

  test('the months of each bill add up to its year', () => {
    for (const { months, electricityCost, roomCredit, coolingCost, runningCost } of assessment.accounts) {
      expect(months.length).toBe(12);
      const sum = (read: (month: (typeof months)[number]) => number) =>
        months.reduce((total, month) => total + read(month), 0);
      const scale = sum((month) => Math.abs(month.electricityCost) + Math.abs(month.roomCredit));
      const near = (left: number, right: number) => expect(Math.abs(left - right)).toBeLessThanOrEqual(1e-9 * scale);
      near(
        sum((month) => month.electricityCost),
        electricityCost.likely,
      );
      near(
        sum((month) => month.roomCredit),
        roomCredit.likely,
      );
      near(
        sum((month) => month.coolingCost),
        coolingCost.likely,
      );
      near(
        sum((month) => month.runningCost),
        runningCost.likely,
      );
    }
  });

  test('the difference is of the likely bills, and narrower than the two bands taken apart', () => {
    expect(assessment.loopAgainst.filter(({ isCheapest }) => isCheapest).length).toBe(1);
    const loop = accountOf('thisLoop').lifeCostPerYear;
    for (const { against, lifeCost, ifBuilt, ifNotBuilt } of assessment.loopAgainst) {
      const other = accountOf(against).lifeCostPerYear;
      expect(lifeCost.likely).toBeCloseTo(loop.likely - other.likely, 9);
      expect(lifeCost.high).toBeLessThan(loop.high - other.low);
      expect(lifeCost.low).toBeGreaterThan(loop.low - other.high);
      expect(ifBuilt).toBe(Math.max(0, lifeCost.high));
      expect(ifNotBuilt).toBe(Math.max(0, -lifeCost.low));
    }
  });

  test('a standing that rests on cost agrees with the cheapest difference', () => {
    const cheapest = assessment.loopAgainst.find(({ isCheapest }) => isCheapest)!;
    if (assessment.standing === 'carriesLoad') expect(cheapest.lifeCost.likely).toBeLessThanOrEqual(0);
    if (assessment.standing === 'notWorthIt') expect(cheapest.lifeCost.likely).toBeGreaterThan(0);
  });

  test('says it in two digits and never how long something takes to pay back', () => {
    for (const view of ['metric', 'us'] as const) {
      for (const against of assessment.loopAgainst) {
        const { short, ...words } = sayLoopAgainst(against, assessment.currency, view);
        const said = [...Object.values(words), ...Object.values(short)].join(' ');
        expect(said).not.toMatch(/undefined|NaN|null|payback|pays? back/);
        expect(said.replaceAll(/[\u00a0\u202f]/g, '')).not.toMatch(/\d\.0*[1-9]\d{3}/);
      }
    }
  });
});

test('with the break-even price of house heat in the design, propane’s two bills are the same', () => {
  const text = demoTexts['propane-in-the-cabinet.json']!;
  const { houseHeatPrice } = assessed(text).loopAgainst.find(({ against }) => against === 'plainHeater')!;
  expect(houseHeatPrice.loopCostsLess).toBe('below');
  const even = edited(text, 'room.houseHeatPrice', `${houseHeatPrice.at!.likely * kilowattHour} CHF/kWh`);
  const there = even.loopAgainst.find(({ against }) => against === 'plainHeater')!;
  expect(Math.abs(there.lifeCost.likely)).toBeLessThan(1e-6);
  expect(there.houseHeatPrice.at!.likely / houseHeatPrice.at!.likely).toBeCloseTo(1, 9);
  // Just below the price the loop is the cheaper of the two, just above the other.
  const below = edited(text, 'room.houseHeatPrice', `${0.9 * houseHeatPrice.at!.likely * kilowattHour} CHF/kWh`);
  expect(below.loopAgainst[0]!.lifeCost.likely).toBeLessThan(0);
});

test('where the two may give the room the same heat, the range of the price is left open and said so', () => {
  const { loopAgainst, currency } = assessed(demoTexts['propane-in-the-cabinet.json']!);
  const certified = loopAgainst.find(({ against }) => against === 'certifiedHeatPump')!;
  expect(certified.houseHeatPrice.at).toMatchObject({ high: null });
  expect(sayLoopAgainst(certified, currency, 'metric').houseHeatPrice).toMatch(/the range has no upper end/);
});

function edited(text: string, path: string, value: string): Assessment {
  const parsed = parseDesign(text);
  if (!parsed.ok) throw new Error('the demo does not parse');
  const result = setField(parsed.document, path, value);
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return assessed(JSON.stringify(result.document));
}

function assessed(text: string): Assessment {
  const outcome = assessDesign(text, 'metric');
  if (!outcome.ok) throw new Error(JSON.stringify(outcome));
  return outcome.assessment;
}
