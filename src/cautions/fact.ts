// Short makers of the facts a finding carries: a number with the quantity it is of, or a word of the trade.

import type { Certainty, Fact, Finding } from '../quantities/index.ts';
import type { CautionCode } from './codes.ts';
import type { OperatingFacts, RangedFact } from './facts.ts';

/** What a rule rests on, and how sure that is. */
export interface Grounds {
  readonly source: string;
  readonly certainty: Certainty;
}

/** A finding whose code is one of ours. */
export type CautionFinding = Finding & Grounds & { readonly code: CautionCode };

/** A rule: what it finds in the facts, or nothing. */
export type CautionRule<Facts> = (facts: Facts) => CautionFinding | undefined;

export function word(value: string): Fact {
  return { word: value };
}

export function quantity(value: number, name: string): Fact {
  return { value, quantity: name };
}

export const temperature = (value: number) => quantity(value, 'temperature');
export const temperatureDifference = (value: number) => quantity(value, 'temperatureDifference');
export const pressure = (value: number) => quantity(value, 'pressure');
export const mass = (value: number) => quantity(value, 'mass');
export const volume = (value: number) => quantity(value, 'volume');
export const ratio = (value: number) => quantity(value, 'ratio');
export const power = (value: number) => quantity(value, 'power');
export const electricPower = (value: number) => quantity(value, 'electricPower');
export const current = (value: number) => quantity(value, 'current');
export const duration = (value: number) => quantity(value, 'duration');
export const area = (value: number) => quantity(value, 'area');
export const massFlow = (value: number) => quantity(value, 'massFlow');
export const chargeDensity = (value: number) => quantity(value, 'chargeDensity');

/** The state in which `read` is largest. */
export function highestBy(states: readonly OperatingFacts[], read: (state: OperatingFacts) => number): OperatingFacts {
  return states.reduce((worst, state) => (read(state) > read(worst) ? state : worst));
}

/** The state in which `read` is smallest. */
export function lowestBy(states: readonly OperatingFacts[], read: (state: OperatingFacts) => number): OperatingFacts {
  return states.reduce((worst, state) => (read(state) < read(worst) ? state : worst));
}

/** Upper end of a ranged fact; the likely value where no range is known. */
export function highEnd(state: OperatingFacts, name: RangedFact): number {
  return Math.max(likelyOf(state, name), state.ranges[name]?.high ?? Number.NEGATIVE_INFINITY);
}

/** Lower end of a ranged fact; the likely value where no range is known. */
export function lowEnd(state: OperatingFacts, name: RangedFact): number {
  return Math.min(likelyOf(state, name), state.ranges[name]?.low ?? Number.POSITIVE_INFINITY);
}

export function likelyOf(state: OperatingFacts, name: RangedFact): number {
  return name === 'pressureRatio' ? state.condensingPressure / state.evaporatingPressure : state[name];
}
