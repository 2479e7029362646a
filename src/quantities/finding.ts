// Finding: the one type for model doubts, limits and safety. Data only: the sentence is made at the edge.

/** `stop`: do not build this. `look`: look at this before going on. `note`: worth knowing. */
export type Severity = 'note' | 'look' | 'stop';

/** Who or what the finding is about. */
export type Subject = 'person' | 'house' | 'livestock' | 'machine' | 'law' | 'model';

/** Whom findings are about, in the order in which they are told. */
export const subjectTitles: Readonly<Record<Subject, string>> = {
  person: 'Persons',
  house: 'The house',
  livestock: 'The animals',
  machine: 'The machine',
  law: 'The law',
  model: 'What the models leave out',
};

/** Subjects in the order in which they are told. */
export const subjects = Object.keys(subjectTitles) as readonly Subject[];

/**
 * How sure what a rule rests on is. `confirmed`: a published figure that was read. `physics`: follows from a law of nature.
 * `stated`: follows from what the design itself says. `memory`: a figure of the source named, not re-read.
 * `practice`: common practice or own judgement, no source. A rule on the last two can warn; its silence clears nothing.
 */
export type Certainty = 'confirmed' | 'physics' | 'stated' | 'memory' | 'practice';

/** A fact of a finding: a number in base SI with the quantity it is of, or a word (a name of the trade). */
export type Fact = { readonly value: number; readonly quantity: string } | { readonly word: string };

export interface Finding {
  /** Stable: 'flammableFluidInUnsuitableEquipment'. */
  readonly code: string;
  readonly severity: Severity;
  readonly subject: Subject;
  readonly facts: Readonly<Record<string, Fact>>;
  readonly source: string;
  /** Absent where the finding is about a model and not a rule of caution. */
  readonly certainty?: Certainty | undefined;
  /** What to do, one or two sentences; never an instruction for work that needs a licensed person. */
  readonly remedy: string;
  readonly needsLicensedPerson: boolean;
}
