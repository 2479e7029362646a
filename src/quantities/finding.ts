// Finding: the one type for model doubts, limits and safety. Data only: the sentence is made at the edge.

/** `stop`: do not build this. `look`: look at this before going on. `note`: worth knowing. */
export type Severity = 'note' | 'look' | 'stop';

/** Who or what the finding is about. */
export type Subject = 'person' | 'livestock' | 'house' | 'machine' | 'model';

/** A fact of a finding: a number in base SI with the quantity it is of, or a word (a name of the trade). */
export type Fact = { readonly value: number; readonly quantity: string } | { readonly word: string };

export interface Finding {
  /** Stable: 'flammableFluidInUnsuitableEquipment'. */
  readonly code: string;
  readonly severity: Severity;
  readonly subject: Subject;
  readonly facts: Readonly<Record<string, Fact>>;
  readonly source: string;
  /** What to do, one or two sentences; never an instruction for work that needs a licensed person. */
  readonly remedy: string;
  readonly needsLicensedPerson: boolean;
}
