// Which measures the scenario "insulation only" stands for: those that pay, the next best in turn, at the likely values. A
// decision, not a result: no variation of an input makes it anew, so that its ranges are those of one set.

import { bestInTurn, payingSteps, type Terms } from '../../../accounts/index.ts';
import { isWrap } from './offered.ts';
import { type HeaterPrices, type WrappedStates, wrappedAccount } from './states.ts';

/** Names of the chosen measures, in turn; empty where nothing pays or none applies. */
export function chosenWraps(states: WrappedStates, prices: HeaterPrices, terms: Terms): readonly string[] {
  const candidates = states.applicable.filter(isWrap).map(({ id, cost }) => ({ id, cost: cost.likely }));
  const costWith = (ids: readonly string[]) => wrappedAccount(states.yearWith(ids), prices).runningCost;
  return payingSteps(bestInTurn(candidates, costWith, terms)).map(({ id }) => id);
}
