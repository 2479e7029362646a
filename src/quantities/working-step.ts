// Puts one step of a working together from its inputs, each a number with the place it came from.

import type { WorkingStep } from './formula.ts';

/** A number put in and, unless it is a constant of the model, the design path or the step it came from. */
export type StepInput = readonly [value: number, from?: string | undefined];

/** Inputs of a step by the symbol of its formula. */
export type StepInputs = Readonly<Record<string, StepInput>>;

/** A step: its result's name, the formula's id, the value, and the inputs by symbol. */
export function workingStep(result: string, formula: string, value: number, given: StepInputs): WorkingStep {
  const inputs: Record<string, number> = {};
  const from: Record<string, string> = {};
  for (const [symbol, [number, origin]] of Object.entries(given)) {
    inputs[symbol] = number;
    if (origin !== undefined) from[symbol] = origin;
  }
  return { result, formula, inputs, from, value };
}
