// A comparison of refrigerants for the paper "Side by side": the numbers, their words in the view, and what the overlaid
// loops are drawn from. Loaded when the paper is first opened.

import {
  compareRefrigerants,
  type MachineBasis,
  type RefrigerantComparison,
  type Refusal,
  type SaidComparison,
  sayRefrigerants,
} from '../../assess/index.ts';
import { makeReducedLoops, type ReducedLoop } from '../../charts/index.ts';
import type { UnitView } from '../../quantities/index.ts';

export interface CompareForm {
  /** The design's own text, as it would be saved. */
  readonly text: string;
  readonly fluids: readonly string[];
  readonly basis: MachineBasis;
}

export interface CompareAnswer {
  readonly comparison: RefrigerantComparison;
  readonly said: SaidComparison;
  /** Of the fluids that have a loop. */
  readonly loops: readonly ReducedLoop[];
}

export type CompareReply = { readonly ok: true; readonly answer: CompareAnswer } | Refusal;

/** @throws InputError for fluids that cannot be compared */
export function answerCompare({ text, fluids, basis }: CompareForm, view: UnitView): CompareReply {
  const outcome = compareRefrigerants(text, fluids, basis);
  if (!outcome.ok) return outcome;
  const { comparison } = outcome;
  const requests = comparison.columns.flatMap(({ fluid, cycle }) =>
    cycle.ok ? [{ refrigerant: fluid, points: cycle.points }] : [],
  );
  return {
    ok: true,
    answer: { comparison, said: sayRefrigerants(comparison, view), loops: makeReducedLoops(requests) },
  };
}
