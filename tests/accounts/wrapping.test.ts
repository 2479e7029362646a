// Money of wrapping. Payback, discounted payback and net value against a worked example whose factors stand in the interest
// tables of engineering-economics texts (5 %, 10 years: 7.7217), further digits by exact arithmetic; orders against all
// orders tried one by one.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  bestInTurn,
  type Candidate,
  discountedPayback,
  discountedPaybackOrNever,
  eachAlone,
  inThisOrder,
  netValue,
  paybackOrNever,
  payingSteps,
  savingOf,
  simplePayback,
} from '../../src/accounts/index.ts';

const terms = { discountRate: 0.05, years: 10 };

describe('worth of a measure', () => {
  it('works the example: 600 now, 120 a year, 5 %, 10 years', () => {
    expect(netValue(600, 120, 0.05, 10)).toBeCloseTo(326.608, 3);
    expect(simplePayback(600, 120)).toBeCloseTo(5, 12);
    expect(discountedPayback(600, 120, 0.05)).toBeCloseTo(5.8963, 4);
  });

  it('has no net value left over exactly its discounted payback (law)', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 2000, noNaN: true }),
        fc.double({ min: 1, max: 500, noNaN: true }),
        fc.double({ min: 0.001, max: 0.12, noNaN: true }),
        (cost, saving, rate) => {
          fc.pre(rate * cost < 0.95 * saving);
          const t = discountedPayback(cost, saving, rate);
          expect(netValue(cost, saving, rate, t)).toBeCloseTo(0, 6);
          expect(t).toBeGreaterThanOrEqual(simplePayback(cost, saving));
        },
      ),
      { seed: 31, numRuns: 100 },
    );
  });

  it('is its savings less its cost without interest', () => {
    expect(netValue(600, 120, 0, 10)).toBe(600);
    expect(discountedPayback(600, 120, 0)).toBe(5);
  });

  it('never pays itself back where it saves nothing, or less than its interest', () => {
    expect(paybackOrNever(100, 0)).toBeNull();
    expect(paybackOrNever(100, -3)).toBeNull();
    expect(paybackOrNever(0, 5)).toBe(0);
    expect(discountedPaybackOrNever(1000, 49, 0.05)).toBeNull();
    expect(discountedPaybackOrNever(1000, 51, 0.05)).toBeGreaterThan(20);
    expect(() => simplePayback(100, 0)).toThrow(/saving/);
    expect(() => discountedPayback(1000, 49, 0.05)).toThrow(/interest/);
    expect(() => netValue(-1, 10, 0.05, 10)).toThrow(/cost/);
  });

  it('counts the room: what the socket saves, less what the room loses', () => {
    const undried = { dehumidifierCost: null };
    const before = { electricityCost: 400, roomHeatCredit: 120, coolingCost: 20, runningCost: 300, ...undried };
    const after = { electricityCost: 150, roomHeatCredit: 60, coolingCost: 12, runningCost: 102, ...undried };
    const saving = savingOf(before, after);
    expect(saving).toEqual({ electricitySaved: 250, roomCreditChange: -60, coolingSaved: 8, netSaving: 198 });
    expect(saving.netSaving).toBe(before.runningCost - after.runningCost);
  });

  it('counts what a dehumidifier no longer draws as electricity saved', () => {
    const before = {
      electricityCost: 400,
      roomHeatCredit: 120,
      coolingCost: 20,
      dehumidifierCost: 90,
      runningCost: 390,
    };
    const after = { electricityCost: 150, roomHeatCredit: 60, coolingCost: 12, dehumidifierCost: 25, runningCost: 127 };
    const saving = savingOf(before, after);
    expect(saving).toEqual({ electricitySaved: 315, roomCreditChange: -60, coolingSaved: 8, netSaving: 263 });
    expect(saving.netSaving).toBe(before.runningCost - after.runningCost);
  });
});

/** A lid and a board that both save 100 of the same 150; a mat that stands apart; one that costs too much. */
const candidates: readonly Candidate[] = [
  { id: 'board', cost: 120 },
  { id: 'lid', cost: 60 },
  { id: 'mat', cost: 40 },
  { id: 'glazing', cost: 900 },
];
function costWith(chosen: readonly string[]): number {
  const shared = Math.min(150, 100 * chosen.filter((id) => id === 'lid' || id === 'board').length);
  return 400 - shared - (chosen.includes('mat') ? 20 : 0) - (chosen.includes('glazing') ? 30 : 0);
}

describe('measures in turn', () => {
  it('are worth alone what they save beside none', () => {
    const alone = eachAlone(candidates, costWith, terms);
    expect(alone.map(({ netSaving }) => netSaving)).toEqual([100, 100, 20, 30]);
    expect(alone[1]!.payback).toBeCloseTo(0.6, 12);
    expect(alone[3]!.pays).toBe(false);
  });

  it('take the best first and value the next beside it', () => {
    const steps = bestInTurn(candidates, costWith, terms);
    expect(steps.map(({ id }) => id)).toEqual(['lid', 'board', 'mat', 'glazing']);
    expect(steps.map(({ netSaving }) => netSaving)).toEqual([100, 50, 20, 30]);
    expect(payingSteps(steps).map(({ id }) => id)).toEqual(['lid', 'board', 'mat']);
  });

  it('ask once for each set they look at', () => {
    let asked = 0;
    bestInTurn(
      candidates,
      (chosen) => {
        asked += 1;
        return costWith(chosen);
      },
      terms,
    );
    expect(asked).toBe(1 + (4 * 5) / 2);
  });

  it('of equal worth the shorter payback goes first, then the earlier of the list', () => {
    const { years } = terms;
    const dear: Candidate = { id: 'dear', cost: 100 };
    const cheap: Candidate = { id: 'cheap', cost: 50 };
    const saves = (chosen: readonly string[]) =>
      1000 - (chosen.includes('dear') ? 100 / years + 20 : 0) - (chosen.includes('cheap') ? 50 / years + 20 : 0);
    const noInterest = { discountRate: 0, years };
    expect(bestInTurn([dear, cheap], saves, noInterest)[0]!.id).toBe('cheap');
    const same = [
      { id: 'first', cost: 10 },
      { id: 'second', cost: 10 },
    ];
    expect(bestInTurn(same, (chosen) => 100 - 5 * chosen.length, terms)[0]!.id).toBe('first');
  });

  it('give the sum of the steps as the saving of all together, in any order (law)', () => {
    fc.assert(
      fc.property(fc.shuffledSubarray([...candidates], { minLength: 1 }), (list) => {
        const steps = inThisOrder(list, costWith, terms);
        const sum = steps.reduce((total, { netSaving }) => total + netSaving, 0);
        expect(sum).toBeCloseTo(costWith([]) - costWith(list.map(({ id }) => id)), 9);
        expect(steps.map(({ id }) => id)).toEqual(list.map(({ id }) => id));
      }),
      { seed: 32, numRuns: 50 },
    );
  });

  it('without overlap the order is that of the worth alone (every order of five tried)', () => {
    const apart: readonly Candidate[] = [30, 10, 25, 5, 60].map((cost, index) => ({ id: `m${index}`, cost }));
    const saves = [9, 6, 2, 1, 14];
    const cost = (chosen: readonly string[]) => chosen.reduce((sum, id) => sum - saves[Number(id.slice(1))]!, 200);
    const byWorth = [...eachAlone(apart, cost, terms)].sort((left, right) => right.netValue - left.netValue);
    fc.assert(
      fc.property(fc.shuffledSubarray([...apart], { minLength: 5 }), (list) => {
        expect(bestInTurn(list, cost, terms).map(({ id }) => id)).toEqual(byWorth.map(({ id }) => id));
      }),
      { seed: 33, numRuns: 40 },
    );
  });

  it('has nothing to order where there is nothing', () => {
    expect(bestInTurn([], costWith, terms)).toEqual([]);
    expect(payingSteps([])).toEqual([]);
  });
});
