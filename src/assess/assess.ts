// Design -> Assessment: every answer (bare-assessor.ts), and how each of its numbers was computed.

import type { DesignDocument } from '../design/index.ts';
import type { UnitView, WorkingStep } from '../quantities/index.ts';
import type { Assessment } from './assessment/assessment.ts';
import { type AssessOptions, BareAssessor, type OutcomeOf } from './bare-assessor.ts';
import type { ResultRange } from './doubt/range.ts';
import type { StageCounts } from './stage.ts';
import { workingsOf } from './working/workings.ts';

export type AssessOutcome = OutcomeOf<Assessment>;

/** Remembers its last run, so that an edit costs what depends on it. */
export class Assessor {
  readonly #bare: BareAssessor;

  /** @param options  as of BareAssessor */
  constructor(options: AssessOptions = {}) {
    this.#bare = new BareAssessor(options);
  }

  /** @param design  the text of a design file, or a document that was parsed before */
  assess(design: string | DesignDocument, view: UnitView): AssessOutcome {
    const outcome = this.#bare.assess(design, view);
    if (!outcome.ok) return outcome;
    return { ok: true, assessment: { ...outcome.assessment, workings: lastWorkings(this.#bare)! } };
  }

  /** As of BareAssessor. */
  rangeOf(result: string): ResultRange | undefined {
    return this.#bare.rangeOf(result);
  }

  /** As of BareAssessor. */
  stageCounts(): StageCounts {
    return this.#bare.stageCounts();
  }
}

/** How the numbers of the last design that had an answer were computed; undefined before the first. */
export function lastWorkings(assessor: BareAssessor): readonly WorkingStep[] | undefined {
  const run = assessor.lastRun();
  return run && workingsOf(run.design, run.results);
}

/** Assesses once, remembering nothing. */
export function assessDesign(
  design: string | DesignDocument,
  view: UnitView,
  options: AssessOptions = {},
): AssessOutcome {
  return new Assessor(options).assess(design, view);
}
