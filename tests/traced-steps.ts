// What every working must hold: each step gives its value again when its formula's function is called with its inputs, and
// each number that comes from another step is that step's value.

import { expect } from 'vitest';
import type { Formula, WorkingStep } from '../src/quantities/index.ts';

/**
 * Values by name of the steps, once they hold.
 * @param isGiven   origins that are not steps: what the caller said they come from
 * @param constants symbols that may come from nowhere, being numbers of the model itself
 */
export function expectTraced(
  steps: readonly WorkingStep[],
  formulas: readonly Formula[],
  isGiven: (origin: string) => boolean,
  constants: readonly string[] = [],
): ReadonlyMap<string, number> {
  const byId = new Map(formulas.map((formula) => [formula.id, formula]));
  const values = new Map(steps.map((step) => [step.result, step.value]));
  expect(values.size, 'no result stands twice').toBe(steps.length);
  for (const { result, formula: id, inputs, from, value } of steps) {
    const formula = byId.get(id);
    expect(formula, `${result} by ${id}`).toBeDefined();
    expect(Object.keys(inputs).sort(), result).toEqual(Object.keys(formula!.symbols).sort());
    expectClose(formula!.compute(inputs), value, `${result} by ${id}`);
    for (const symbol of Object.keys(inputs)) {
      const origin = from[symbol];
      const at = `${result}: ${symbol} from ${origin}`;
      if (origin === undefined) expect(constants, at).toContain(symbol);
      else if (values.has(origin)) expectClose(inputs[symbol]!, values.get(origin)!, at);
      else expect(isGiven(origin), at).toBe(true);
    }
  }
  return values;
}

function expectClose(left: number, right: number, what: string): void {
  const scale = Math.max(Math.abs(left), Math.abs(right), Number.MIN_VALUE);
  expect(Math.abs(left - right) / scale, `${what}: ${left}, ${right}`).toBeLessThan(1e-9);
}
