// The chain behind one result: every step it rests on, each once, in the order of computing, and where the chain begins.

import type { WorkingStep } from '../../../quantities/index.ts';

export interface ResultChain {
  readonly steps: readonly WorkingStep[];
  /** What the first numbers are: paths of the design, in the order they are first used. */
  readonly origins: readonly string[];
}

/** Empty where no step gives that result. */
export function chainOf(workings: readonly WorkingStep[], result: string): ResultChain {
  const byResult = new Map<string, WorkingStep[]>();
  for (const step of workings) byResult.set(step.result, [...(byResult.get(step.result) ?? []), step]);
  const steps: WorkingStep[] = [];
  const origins = new Set<string>();
  const seen = new Set<string>();
  const visit = (name: string) => {
    if (seen.has(name)) return;
    seen.add(name);
    for (const step of byResult.get(name) ?? []) {
      for (const from of Object.values(step.from)) {
        if (byResult.has(from)) visit(from);
        else origins.add(from);
      }
      steps.push(step);
    }
  };
  visit(result);
  return { steps, origins: [...origins] };
}
