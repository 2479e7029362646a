// The study of wrapping on designs: its numbers agree with the accounts and with one another, ranges hold their likely values, and
// the scenario "insulation only" is what the study says pays.

import { beforeAll, describe, expect, it } from 'vitest';
import bareGlass from '../../../../data/designs/bare-glass-above-an-open-sump.json?raw';
import fragTank from '../../../../data/designs/frag-tank-cold-garage.json?raw';
import reef from '../../../../data/designs/reef-in-the-study.json?raw';
import shrimps from '../../../../data/designs/shrimp-rack-unknown-draughts.json?raw';
import { annuityFactor } from '../../../../src/accounts/index.ts';
import { allFormulas, assessWrapping, BareAssessor, type WrappingAnswer } from '../../../../src/assess/index.ts';
import { expectTraced } from '../../../traced-steps.ts';

function answerOf(text: string): WrappingAnswer {
  const outcome = assessWrapping(text);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome));
  return outcome.answer;
}

describe.each([
  ['bare glass', bareGlass],
  ['frag tank', fragTank],
  ['shrimps', shrimps],
] as const)('wrapping of: %s', (_name, text) => {
  let answer: WrappingAnswer;
  beforeAll(() => {
    answer = answerOf(text);
  });

  it('takes every measure once', () => {
    expect(answer.inTurn.map(({ id }) => id).sort()).toEqual(answer.measures.map(({ id }) => id).sort());
    expect(answer.inTurn.filter(({ stopsPayingHere }) => stopsPayingHere).length).toBeLessThanOrEqual(1);
    answer.inTurn.forEach(({ gain }, index) => {
      if (index < answer.payingSteps) expect(gain.pays).toBe(true);
    });
    expect(answer.inTurn[answer.payingSteps]?.gain.pays ?? false).toBe(false);
  });

  it('begins each step where the one before ended, and adds up', () => {
    let load = answer.asItIs.load.likely;
    let saved = 0;
    for (const { before, after, gain, cumulative } of answer.inTurn) {
      expect(before.load.likely).toBeCloseTo(load, 9);
      expect(gain.loadSaved.likely).toBeCloseTo(before.load.likely - after.load.likely, 9);
      saved += gain.netSaving.likely;
      expect(cumulative.netSaving.likely).toBeCloseTo(saved, 6);
      load = after.load.likely;
    }
    expect(answer.waterfall.at(-1)!.to).toBeCloseTo(load, 9);
  });

  it('makes the first step the best alone', () => {
    const best = Math.max(...answer.measures.map(({ alone }) => alone.netValue.likely));
    expect(answer.inTurn[0]!.gain.netValue.likely).toBeCloseTo(best, 6);
    expect(answer.measures[0]!.alone.netValue.likely).toBeCloseTo(best, 6);
  });

  it('counts tank and room: net saving is electricity, credit and cooling together; net value its present worth', () => {
    const worth = annuityFactor(answer.basis.discountRate, answer.basis.years);
    for (const { alone, cost } of answer.measures) {
      const { electricitySaved, roomCreditChange, coolingSaved, netSaving, netValue, payback } = alone;
      const sum = electricitySaved.likely + roomCreditChange.likely + coolingSaved.likely;
      expect(netSaving.likely).toBeCloseTo(sum, 6);
      expect(netValue.likely).toBeCloseTo(worth * netSaving.likely - cost.likely, 6);
      if (netSaving.likely > 1e-9 && cost.likely > 0) {
        expect(payback.likely).toBeCloseTo(cost.likely / netSaving.likely, 6);
      }
    }
  });

  it('holds each likely value in its range, a payback of null being never', () => {
    const later = (value: number | null) => value ?? Number.POSITIVE_INFINITY;
    for (const { alone } of answer.measures) {
      for (const band of [alone.loadSaved, alone.netSaving, alone.netValue, alone.heatSaved, alone.waterSaved]) {
        expect(band.low).toBeLessThanOrEqual(band.likely);
        expect(band.likely).toBeLessThanOrEqual(band.high);
      }
      const { low, likely, high } = alone.payback;
      expect(later(low)).toBeLessThanOrEqual(later(likely));
      expect(later(likely)).toBeLessThanOrEqual(later(high));
    }
  });

  it('values the same order with a heat pump, where heat saved is worth less', () => {
    for (const { steps, priceOfHeat, seasonCop } of answer.withHeatPump) {
      expect(steps.map(({ id }) => id)).toEqual(answer.inTurn.map(({ id }) => id));
      expect(priceOfHeat).toBeCloseTo(answer.basis.electricityPrice / seasonCop, 15);
      for (const [index, step] of steps.entries()) {
        expect(step.stopsPaying).toBe(answer.inTurn[index]!.gain.pays && !step.pays);
      }
    }
  });

  it('has its own prices among those of the table, with the worth of what pays', () => {
    const { cells, ownPrice, ownRate } = answer.prices;
    const own = cells[ownPrice]![ownRate]!;
    expect(own.paying).toEqual(answer.inTurn.slice(0, answer.payingSteps).map(({ id }) => id));
    expect(own.netValue).toBeCloseTo(answer.paying?.netValue.likely ?? 0, 6);
    for (const row of cells) {
      const values = row.map(({ netValue }) => netValue);
      expect(values).toEqual([...values].sort((left, right) => right - left));
    }
  });

  it('lets the next inch of a board save less than the last (law)', () => {
    for (const { points } of answer.lastInch) {
      const saved = points.flatMap(({ lastInch }) => (lastInch === null ? [] : [lastInch.loadSaved]));
      expect(saved.length).toBeGreaterThan(5);
      // From the second inch on: in the first a sealed gap behind the board comes with it.
      const further = saved.slice(5);
      expect(further).toEqual([...further].sort((left, right) => right - left));
    }
  });

  it('traces every step to its formula, its inputs and the steps before it', () => {
    const isGiven = (origin: string) => origin.startsWith('engine.') || /^(prices|wrapping|room|tank)\./.test(origin);
    expectTraced(answer.workings, allFormulas, isGiven);
  });

  it('shows the working of every worth', () => {
    const values = new Map(answer.workings.map(({ result, value }) => [result, value]));
    for (const { alone } of answer.measures) {
      expect(values.get(alone.netValue.result)).toBeCloseTo(alone.netValue.likely, 9);
      expect(values.get(alone.netSaving.result)).toBeCloseTo(alone.netSaving.likely, 9);
    }
  });
});

describe('insulation only', () => {
  it('is the tank with the wraps that pay, and the verdict can be to insulate and stop', () => {
    const outcome = new BareAssessor().assess(bareGlass, 'metric');
    if (!outcome.ok) throw new Error('an answer');
    const { accounts, standing, sentence, loopAgainst } = outcome.assessment;
    const of = (scenario: string) => accounts.find((each) => each.scenario === scenario)!;
    expect(of('insulationOnly').runningCost.likely).toBeLessThan(of('plainHeater').runningCost.likely);
    expect(of('insulationOnly').purchase).toBeGreaterThan(of('plainHeater').purchase);
    expect(loopAgainst.find(({ isCheapest }) => isCheapest)!.against).toBe('insulationOnly');
    expect(standing).toBe('notWorthIt');
    expect(sentence).toContain('Insulate and stop');
    const months = of('insulationOnly').months.reduce((sum, { runningCost }) => sum + runningCost, 0);
    expect(months).toBeCloseTo(of('insulationOnly').runningCost.likely, 6);
  });

  it('is left out where the list is empty', () => {
    const design = JSON.parse(fragTank) as object;
    const outcome = new BareAssessor().assess(JSON.stringify({ ...design, wrapping: { measures: [] } }), 'metric');
    if (!outcome.ok) throw new Error('an answer');
    expect(outcome.assessment.accounts.map(({ scenario }) => scenario)).not.toContain('insulationOnly');
  });

  it('keeps to one choice while inputs vary: its range is that of one set of measures', () => {
    const assessor = new BareAssessor();
    const outcome = assessor.assess(fragTank, 'metric');
    if (!outcome.ok) throw new Error('an answer');
    expect(assessor.stageCounts().wrappingChoice).toBe(1);
    expect(assessor.stageCounts().wrapped).toBeGreaterThan(5);
  });

  it('is left out where nothing can be wrapped: the tank is known by its meter', () => {
    const outcome = new BareAssessor().assess(reef, 'metric');
    if (!outcome.ok) throw new Error('an answer');
    expect(outcome.assessment.accounts.map(({ scenario }) => scenario)).toEqual([
      'plainHeater',
      'thisLoop',
      'certifiedHeatPump',
    ]);
    const answer = answerOf(reef);
    expect(answer.measures.map(({ kind }) => kind)).toEqual(['cooler']);
    expect(new Set(answer.notApplied.map(({ reason }) => reason))).toEqual(new Set(['sizesUnknown']));
  });
});

describe('a design without an answer', () => {
  it('says so', () => {
    expect(assessWrapping('{')).toMatchObject({ ok: false, kind: 'unusable' });
  });
});
