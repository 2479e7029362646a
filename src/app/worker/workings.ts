// How every number of a design was computed: far more than its answers, and asked for far more seldom. Loaded when somebody
// first asks.

import { type BareAssessor, lastWorkings, type Refusal } from '../../assess/index.ts';
import type { UnitView, WorkingStep } from '../../quantities/index.ts';

export type WorkingsOutcome = { readonly ok: true; readonly workings: readonly WorkingStep[] } | Refusal;

/**
 * @param assessor  has mostly answered this design last, so that nothing is computed twice
 * @param text      of the design
 * @param view      of the reader
 */
export function answerWorkings(assessor: BareAssessor, text: string, view: UnitView): WorkingsOutcome {
  const outcome = assessor.assess(text, view);
  return outcome.ok ? { ok: true, workings: lastWorkings(assessor) ?? [] } : outcome;
}
