// Where the loop of a design settles over the year: the coldest spell, and the mild day, which is the warmest month in which the
// machine still has something to do; each number with its range from every input that the loop reads.

import type { OperatingPoint } from '../../../../loop/index.ts';
import { workingMonths } from '../../../answers/moments.ts';
import type { MapMark } from '../answer.ts';
import { mapValues } from '../running.ts';
import { type LoopResults, type LoopRun, type MachineSubject, placeOf, settledAt } from '../subject.ts';
import { type Variants, variedNumbers } from '../variants.ts';

/** A state of the year. */
export interface YearState {
  readonly when: MapMark['when'];
  /** Its place among the months; null for the coldest spell. */
  readonly month: number | null;
  /** Heat the tank needs then [W]. */
  readonly load: number;
}

/** The coldest spell, and the mild day where there is a month with work. */
export function yearStates({ results }: MachineSubject<LoopResults>): readonly YearState[] {
  const { tank, monthLoads } = results;
  const mildest = workingMonths(results).at(-1);
  return [
    { when: 'coldestSpell', month: null, load: tank.load },
    ...(mildest === undefined
      ? []
      : [{ when: 'mildDay', month: mildest.index, load: monthLoads[mildest.index]!.load } as const]),
  ];
}

/** The mark of one state. @throws what the loop throws where it has no operating point at likely values */
export function markOf(
  variants: Variants<LoopRun>,
  { when, month }: YearState,
  passed: (point: OperatingPoint) => readonly string[],
): MapMark {
  const point = settledAt(variants.likely, month);
  return {
    when,
    evaporating: point.evaporating.temperature,
    condensing: point.condensing.temperature,
    sourceTemperature: placeOf(variants.likely.surroundings, month).sourceTemperature,
    values: variedNumbers(variants, (run) => mapValues(settledAt(run, month))).bands,
    passed: passed(point),
  };
}
