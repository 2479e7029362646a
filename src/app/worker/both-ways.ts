// A design reckoned with every state of the refrigerant from its equation, and again with states from tables: how long each
// took, and which figure of the verdict they differ in most. Loaded when it is first asked for.

import { Assessor, exactStates, type Refusal, stateDifferences, tableStates } from '../../assess/index.ts';
import { refrigerant, tabulated } from '../../matter/refrigerants/index.ts';
import type { UnitView } from '../../quantities/index.ts';

export interface BothWaysAnswer {
  readonly refrigerant: string;
  /** The shortest of some whole assessments each way [ms]. */
  readonly exactTook: number;
  readonly tablesTook: number;
  /** Making the table, before those [ms]; 0 where it was there already. */
  readonly building: number;
  /** Memory of the table [bytes]. */
  readonly bytes: number;
  /** States that one assessment asked for: given by the table, and left to the equation. */
  readonly byTable: number;
  readonly byEquation: number;
  /** How many figures were compared, and which moved most, by which share of itself. */
  readonly figures: number;
  readonly largest: { readonly label: string; readonly share: number };
  readonly isSameStanding: boolean;
}

const runs = 3;

export type BothWaysOutcome = { readonly ok: true; readonly answer: BothWaysAnswer } | Refusal;

/**
 * @param text  of a design
 * @param view  in whose units the words of a refusal are
 * @param now   a clock in milliseconds
 */
export function answerBothWays(text: string, view: UnitView, now: () => number): BothWaysOutcome {
  const exact = new Assessor({ states: exactStates }).assess(text, view);
  if (!exact.ok) return exact;
  const name = exact.assessment.operating.refrigerant;
  const since = now();
  const { table } = tabulated(refrigerant(name));
  const building = now() - since;
  const before = table.counts;
  const tables = new Assessor({ states: tableStates }).assess(text, view);
  if (!tables.ok) return tables;
  const { byTable, byEquation } = table.counts;
  const differences = stateDifferences(exact.assessment, tables.assessment);
  const took = [exactStates, tableStates].map((states) => {
    const times = Array.from({ length: runs }, () => {
      const start = now();
      new Assessor({ states }).assess(text, view);
      return now() - start;
    });
    return Math.min(...times);
  });
  const { label, share } = differences[0]!;
  return {
    ok: true,
    answer: {
      refrigerant: name,
      exactTook: took[0]!,
      tablesTook: took[1]!,
      building,
      bytes: table.table.bytes,
      byTable: byTable - before.byTable,
      byEquation: byEquation - before.byEquation,
      figures: differences.length,
      largest: { label, share },
      isSameStanding: exact.assessment.standing === tables.assessment.standing,
    },
  };
}
