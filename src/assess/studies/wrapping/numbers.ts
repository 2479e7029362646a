// Every number of the study that has a range, for one set of plain inputs and one order of the measures: by name, so that all are
// varied together and a difference keeps what moves both its sides.

import { netValue, savingOf } from '../../../accounts/index.ts';
import type { QuantityName } from '../../../quantities/index.ts';
import type { ResultValues } from '../../doubt/doubt.ts';
import { type HeaterPrices, type WrappedStates, wrappedAccount } from '../../stages/wrapping/states.ts';

/** What the numbers are reckoned from. */
export interface NumbersInput {
  readonly states: WrappedStates;
  readonly prices: HeaterPrices;
  readonly terms: { readonly discountRate: number; readonly years: number };
  /** Cost of each measure by its name [money]. */
  readonly costs: Readonly<Record<string, number>>;
  /** The measures in turn. */
  readonly order: readonly string[];
}

/** Parts of the state of a tank, and of what one state saves beside another, with the quantity each is of. */
export const stateParts = {
  load: 'power',
  heatNeeded: 'energy',
  water: 'volume',
  runningCost: 'money',
} as const satisfies Readonly<Record<string, QuantityName>>;

export const gainParts = {
  loadSaved: 'power',
  heatSaved: 'energy',
  waterSaved: 'volume',
  electricitySaved: 'money',
  roomCreditChange: 'money',
  coolingSaved: 'money',
  netSaving: 'money',
  netValue: 'money',
  cost: 'money',
} as const satisfies Readonly<Record<string, QuantityName>>;

export type GainPart = keyof typeof gainParts;

/** Names of the groups of numbers. */
export const stateName = (step: number) => (step === 0 ? 'wrapping.asItIs' : `wrapping.turn.${step}.after`);
export const aloneName = (id: string) => `wrapping.alone.${id}`;
export const stepName = (step: number) => `wrapping.turn.${step}.gain`;
export const togetherName = (step: number) => `wrapping.turn.${step}.together`;

/** A litre of evaporated water is counted as a kilogram [kg/m³]. */
const waterDensity = 1000;

export function wrappingNumbers(input: NumbersInput): ResultValues {
  const { states, order, costs } = input;
  const values: Record<string, number> = {};
  const put = (group: string, parts: Readonly<Record<string, number>>) => {
    for (const [part, value] of Object.entries(parts)) values[`${group}.${part}`] = value;
  };
  const none = stateOf(input, []);
  put(stateName(0), none.parts);
  for (const { id } of states.applicable) {
    put(aloneName(id), gainOf(input, none, stateOf(input, [id]), costs[id]!));
  }
  let before = none;
  let spent = 0;
  for (const [index, id] of order.entries()) {
    const after = stateOf(input, order.slice(0, index + 1));
    spent += costs[id]!;
    put(stateName(index + 1), after.parts);
    put(stepName(index + 1), gainOf(input, before, after, costs[id]!));
    put(togetherName(index + 1), gainOf(input, none, after, spent));
    before = after;
  }
  return values;
}

type State = ReturnType<typeof stateOf>;

function stateOf({ states, prices }: NumbersInput, ids: readonly string[]) {
  const wrapped = states.yearWith(ids);
  const account = wrappedAccount(wrapped, prices);
  const water = wrapped.year.months.reduce(
    (sum, { conditions }, index) => sum + (wrapped.heats[index]!.evaporation * conditions.duration) / waterDensity,
    0,
  );
  const { heatNeeded } = wrapped.year.energies;
  const { load } = states.spellWith(ids);
  return { account, parts: { load, heatNeeded, water, runningCost: account.runningCost } };
}

function gainOf({ terms }: NumbersInput, before: State, after: State, cost: number): Record<GainPart, number> {
  const saving = savingOf(before.account, after.account);
  return {
    loadSaved: before.parts.load - after.parts.load,
    heatSaved: before.parts.heatNeeded - after.parts.heatNeeded,
    waterSaved: before.parts.water - after.parts.water,
    ...saving,
    netValue: netValue(cost, saving.netSaving, terms.discountRate, terms.years),
    cost,
  };
}

/** The quantity of a number by its name. */
export function quantityOf(name: string): QuantityName {
  const part = name.slice(name.lastIndexOf('.') + 1);
  return { ...stateParts, ...gainParts }[part as GainPart];
}
