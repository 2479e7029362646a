// Measures in order of worth. Measures overlap: a board saves less on a cooler tank, a second lid nothing. So the next best one
// is looked for anew after each step, beside all that were taken before. It knows no tank: a function says what a year costs with a
// set of measures.

import type { Terms } from './terms.ts';
import { netValue, paybackOrNever } from './worth.ts';

/** One measure: a name and what it costs once [money]. */
export interface Candidate {
  readonly id: string;
  readonly cost: number;
}

/** Running cost of a year [money] with the measures of these names, in the order they were taken. */
export type RunningCostWith = (chosen: readonly string[]) => number;

export interface Worth {
  readonly id: string;
  /** Money a year. */
  readonly netSaving: number;
  /** [years]; null: never. */
  readonly payback: number | null;
  readonly netValue: number;
  readonly pays: boolean;
}

export interface TurnStep extends Worth {
  /** All up to this one. */
  readonly chosen: readonly string[];
}

/** Each measure by itself beside none, in the order given. */
export function eachAlone(candidates: readonly Candidate[], costWith: RunningCostWith, terms: Terms): readonly Worth[] {
  const none = costWith([]);
  return candidates.map((candidate) => worthOf(candidate, none - costWith([candidate.id]), terms));
}

/**
 * All measures, the next best one in turn: the highest net value beside those before it; of equal ones the shorter payback, then
 * the earlier in the list. Once the best of those left has no net value above 0, the order goes on the same way and none pays.
 * @param candidates  names differ
 * @param costWith    asked once for each set that is looked at: n (n + 1)/2 times for n measures, and once for none
 * @param terms       discount rate and years
 */
export function bestInTurn(
  candidates: readonly Candidate[],
  costWith: RunningCostWith,
  terms: Terms,
): readonly TurnStep[] {
  const left = [...candidates];
  const steps: TurnStep[] = [];
  let chosen: readonly string[] = [];
  let cost = costWith(chosen);
  while (left.length > 0) {
    const before = chosen;
    const worths = left.map((candidate) => {
      const after = costWith([...before, candidate.id]);
      return { cost: after, worth: worthOf(candidate, cost - after, terms) };
    });
    const best = worths.reduce((first, next) => (isBetter(next.worth, first.worth) ? next : first));
    chosen = [...before, best.worth.id];
    cost = best.cost;
    steps.push({ ...best.worth, chosen });
    left.splice(
      left.findIndex(({ id }) => id === best.worth.id),
      1,
    );
  }
  return steps;
}

/** The steps before the first that does not pay. */
export function payingSteps(steps: readonly TurnStep[]): readonly TurnStep[] {
  const end = steps.findIndex(({ pays }) => !pays);
  return end < 0 ? steps : steps.slice(0, end);
}

/** The same measures in a given order, valued where a year costs something else: with another source of heat. */
export function inThisOrder(
  candidates: readonly Candidate[],
  costWith: RunningCostWith,
  terms: Terms,
): readonly TurnStep[] {
  let chosen: readonly string[] = [];
  let cost = costWith(chosen);
  return candidates.map((candidate) => {
    chosen = [...chosen, candidate.id];
    const now = costWith(chosen);
    const step = { ...worthOf(candidate, cost - now, terms), chosen };
    cost = now;
    return step;
  });
}

function worthOf({ id, cost }: Candidate, saving: number, { discountRate, years }: Terms): Worth {
  const value = netValue(cost, saving, discountRate, years);
  return { id, netSaving: saving, payback: paybackOrNever(cost, saving), netValue: value, pays: value > 0 };
}

function isBetter(next: Worth, first: Worth): boolean {
  if (next.netValue !== first.netValue) return next.netValue > first.netValue;
  return (next.payback ?? Number.POSITIVE_INFINITY) < (first.payback ?? Number.POSITIVE_INFINITY);
}
