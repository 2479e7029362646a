// The chain behind one result: every step it rests on, and where the numbers come from in the end. Steps that were found
// together rest on one another; each stands once all the same.

import { InputError } from '../numerics/index.ts';
import type { WorkingStep } from './formula.ts';
import { nearestWord } from './nearest.ts';

export interface ResultChain {
  /** In the order of computing, each once, the result itself last. */
  readonly steps: readonly WorkingStep[];
  /** What the chain begins with: design paths, keys of a request, assumptions of the engine; in the order first used. */
  readonly origins: readonly string[];
}

/**
 * The steps behind one result.
 * @param workings  all steps
 * @param result    name of one of them: 'plant.systemCop'
 * @throws InputError 'unknownResult' with the nearest name, where no step gives that result
 */
export function chainOf(workings: readonly WorkingStep[], result: string): ResultChain {
  const byResult = new Map(workings.map((step) => [step.result, step]));
  if (!byResult.has(result)) throw unknownResult(result, [...byResult.keys()]);
  const steps: WorkingStep[] = [];
  const origins = new Set<string>();
  const met = new Set<string>();
  const follow = (step: WorkingStep) => {
    met.add(step.result);
    for (const origin of Object.values(step.from)) {
      const before = byResult.get(origin);
      if (before === undefined) origins.add(origin);
      else if (!met.has(origin)) follow(before);
    }
    steps.push(step);
  };
  follow(byResult.get(result)!);
  return { steps, origins: [...origins] };
}

/** What a name is refused with that none of the known ones is; the nearest of them is offered. */
export function unknownResult(result: string, known: readonly string[]): InputError {
  const nearest = nearestWord(result, known);
  const hint = nearest === undefined ? '' : `; did you mean ${nearest}?`;
  return new InputError('RESULT', `"${result}"`, `the name of a result${hint}`, 'unknownResult');
}
