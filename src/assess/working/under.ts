// Steps that stand more than once under different prefixes: a tank in each month, a tank as it stood while it was measured.

import type { WorkingStep } from '../../quantities/index.ts';

/**
 * Steps under a prefix: their names, and the origins that are names of steps among them. An origin that only names a
 * state of the loop is left out: of these states no month keeps more than its steps.
 */
export function under(prefix: string, steps: readonly WorkingStep[]): readonly WorkingStep[] {
  const names = new Set(steps.map((step) => step.result));
  return steps.map((step) => {
    const kept = Object.entries(step.from).filter(([, from]) => names.has(from) || !from.startsWith('operating.'));
    const from = kept.map(([symbol, origin]) => [symbol, names.has(origin) ? `${prefix}.${origin}` : origin]);
    return { ...step, result: `${prefix}.${step.result}`, from: Object.fromEntries(from) };
  });
}
