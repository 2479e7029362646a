// The same measures in the same order with the heat made by a heat pump: heat saved is worth less there, so that some stop paying.
// Simplifications: the loop runs as it would on the tank as it is, also where the water is kept cooler; a smaller tank load buys
// no smaller machine.

import {
  type Account,
  account,
  type Candidate,
  certifiedHeatPumpEnergies,
  inThisOrder,
  type TurnStep,
  thisLoopEnergies,
} from '../../../accounts/index.ts';
import type { StageResults } from '../../stages/index.ts';
import { yearOf } from '../../stages/plant.ts';
import type { WrappedStates } from '../../stages/wrapping/states.ts';
import { scenarioLabel } from '../../wording/labels.ts';
import type { WithHeatPump } from './answer.ts';
import type { InchTerms } from './last-inch.ts';

export interface HeatPumpInput {
  readonly states: WrappedStates;
  /** In turn. */
  readonly candidates: readonly Candidate[];
  /** Of those with a plain heater. */
  readonly withHeater: readonly TurnStep[];
  readonly names: ReadonlyMap<string, string>;
  readonly terms: InchTerms;
}

/** With a complete certified heat pump. */
export function withCertified(input: HeatPumpInput, cop: number, sourceIsTankRoom: boolean): WithHeatPump {
  const { states, terms } = input;
  const accountWith = (ids: readonly string[]) =>
    account(certifiedHeatPumpEnergies(states.yearWith(ids).year, cop, sourceIsTankRoom), terms.heater, terms.prices);
  return valued(input, 'certifiedHeatPump', cop, accountWith);
}

/** With this loop; null where no month needs heat from it. */
export function withThisLoop(input: HeatPumpInput, results: StageResults): WithHeatPump | null {
  const { states, terms } = input;
  const { year, surroundings, monthOperating, hardware } = results;
  if (year.seasonCop === null) return null;
  const accountWith = (ids: readonly string[]) => {
    const { heats } = states.yearWith(ids);
    const wrapped = yearOf(surroundings.months, heats, monthOperating, hardware, states.dryingEnergy);
    return account(thisLoopEnergies(wrapped), terms.heater, terms.prices);
  };
  return valued(input, 'thisLoop', year.seasonCop, accountWith);
}

function valued(
  { candidates, withHeater, names, terms }: HeatPumpInput,
  heat: WithHeatPump['heat'],
  seasonCop: number,
  accountWith: (ids: readonly string[]) => Account,
): WithHeatPump {
  const valuedSteps = inThisOrder(candidates, (ids) => accountWith(ids).runningCost, terms);
  const steps = valuedSteps.map(({ id, netSaving, payback, netValue, pays }, index) => ({
    id,
    name: names.get(id)!,
    netSaving,
    payback,
    netValue,
    pays,
    stopsPaying: withHeater[index]!.pays && !pays,
  }));
  return {
    heat,
    label: scenarioLabel(heat),
    seasonCop,
    priceOfHeat: terms.prices.electricity / seasonCop,
    steps,
    stopPaying: steps.filter(({ stopsPaying }) => stopsPaying).map(({ name }) => name),
  };
}
