// The brief as data: everything that stands on its pages, in words and in the units of one view, in the order of the pages.
// One function makes it from an assessment and its design, another writes the pages. Nothing in it is markup.

import type { Standing } from '../assess/index.ts';
import type { ChartSpecification, ChartTable } from '../charts/index.ts';
import type { Origin, Severity, UnitView } from '../quantities/index.ts';

/** Who asks and how to reach them is a line or two [characters]. */
export const longestContact = 300;

/** A value with its name. */
export interface BriefValue {
  readonly label: string;
  readonly value: string;
}

/** A value of the design; `assumed` where the person did not give it. */
export interface BriefInput extends BriefValue {
  readonly path: string;
  readonly origin: Origin;
}

export interface BriefFinding {
  readonly code: string;
  readonly severity: Severity;
  readonly title: string;
  readonly text: string;
  /** What to do; never an instruction for work that needs a licensed person. */
  readonly remedy: string;
}

/** An assumed value, and how much of the doubt about the verdict it alone explains. */
export interface BriefAssumption extends BriefValue {
  readonly path: string;
  readonly share: string;
}

export interface BriefDocument {
  readonly briefVersion: 1;
  readonly caution: string;
  readonly designName: string;
  /** Year, month and day, as whoever asked for the brief gave them. */
  readonly date: string;
  /** Who asks and how to reach them, as typed; null where nobody typed it. */
  readonly contact: string | null;
  readonly units: UnitView;
  readonly refrigerant: string;
  readonly standing: Standing;
  readonly standingTitle: string;
  readonly sentence: string;
  /** "Not for this machine …" where the compressor was made for another fluid; else null. */
  readonly forStudyOnly: string | null;
  readonly asked: {
    readonly text: string;
    /** Why nothing is asked to be built; empty unless the answer is not to build. */
    readonly reasons: readonly string[];
    readonly questions: readonly string[];
  };
  readonly duty: readonly BriefValue[];
  readonly states: ChartTable;
  readonly diagram: ChartSpecification;
  readonly operatingRange: ChartTable;
  readonly limits: ChartTable;
  readonly parts: readonly BriefInput[];
  /** What the exchangers' temperature differences imply, and what the models leave out of it. */
  readonly impliedSizes: readonly string[];
  /** What the design does not say. */
  readonly openQuestions: readonly string[];
  readonly findings: {
    /** Those to stop at and to look at, the worst first. */
    readonly shown: readonly BriefFinding[];
    /** Titles of further ones to look at, where there are many. */
    readonly alsoLookAt: readonly string[];
    /** Titles of those that are only worth knowing. */
    readonly noted: readonly string[];
  };
  /** What the person gave of room, tank and source. */
  readonly given: readonly BriefInput[];
  readonly assumptions: {
    /** Those that matter most for the verdict first. */
    readonly shown: readonly BriefAssumption[];
    /** What is said of the others. */
    readonly rest: string;
  };
}
