// One machine and its doubt: the machine at likely values, and once with each uncertain input alone at its low and at its high end.
// Every number of a study of the machine gets its band from these, without the rest of the assessment.

import { KettlefinError } from '../../../numerics/index.ts';
import type { Band } from '../../../quantities/index.ts';
import { type DoubtfulInput, type EndMoves, nonNegativeBand, type UnansweredEnd } from '../../doubt/doubt.ts';

/** One uncertain input at both ends; undefined where there is no machine with it there, or where the end is the likely value. */
export interface Variant<Run> {
  readonly input: DoubtfulInput;
  readonly low: Run | undefined;
  readonly high: Run | undefined;
}

export interface Variants<Run> {
  readonly likely: Run;
  readonly ends: readonly Variant<Run>[];
  readonly unanswered: readonly UnansweredEnd[];
}

/**
 * The likely machine, and what each uncertain input alone makes of it. Inputs that make no difference are left out.
 * @param likely     with every input at its likely value
 * @param inputs     the inputs to vary
 * @param withInput  the machine with one input at another value; may throw a KettlefinError, which is reported
 * @param isSame     whether two machines are the same in every number
 */
export function variantsOf<Run>(
  likely: Run,
  inputs: readonly DoubtfulInput[],
  withInput: (path: string, value: number) => Run,
  isSame: (left: Run, right: Run) => boolean,
): Variants<Run> {
  const unanswered: UnansweredEnd[] = [];
  const ends = inputs.flatMap((input): readonly Variant<Run>[] => {
    const { path, label, estimate } = input;
    const at = (end: 'low' | 'high'): Run | undefined => {
      if (estimate[end] === estimate.likely) return undefined;
      try {
        const run = withInput(path, estimate[end]);
        return isSame(run, likely) ? undefined : run;
      } catch (error) {
        if (!(error instanceof KettlefinError)) throw error;
        unanswered.push({ path, label, end, value: estimate[end], message: error.message });
        return undefined;
      }
    };
    const [low, high] = [at('low'), at('high')];
    return low === undefined && high === undefined ? [] : [{ input, low, high }];
  });
  return { likely, ends, unanswered };
}

/** Numbers of one running point by name. */
type Numbers<Name extends string> = Readonly<Record<Name, number>>;

export interface VariedNumbers<Name extends string> {
  readonly bands: Readonly<Record<Name, Band>>;
  /** Ends of inputs at which there is no such point: the bands are too narrow there. */
  readonly unanswered: readonly UnansweredEnd[];
}

/**
 * Bands of numbers that follow from a machine and are above zero by nature, by the rule of doubt.ts.
 * @param variants  the machine and its doubt
 * @param evaluate  the numbers of one machine; may throw a KettlefinError
 * @throws what `evaluate` throws for the likely machine
 */
export function variedNumbers<Run, Name extends string>(
  variants: Variants<Run>,
  evaluate: (run: Run) => Numbers<Name>,
): VariedNumbers<Name> {
  const { likely, ends } = variants;
  const center = evaluate(likely);
  const names = Object.keys(center) as Name[];
  const unanswered: UnansweredEnd[] = [];
  const moves = ends.map(({ input, low, high }) => {
    const at = (run: Run | undefined, end: 'low' | 'high'): Numbers<Name> => {
      if (run === undefined) return center;
      try {
        return evaluate(run);
      } catch (error) {
        if (!(error instanceof KettlefinError)) throw error;
        const { path, label, estimate } = input;
        unanswered.push({ path, label, end, value: estimate[end], message: error.message });
        return center;
      }
    };
    return [at(low, 'low'), at(high, 'high')] as const;
  });
  const bands = Object.fromEntries(
    names.map((name) => {
      const reaches = moves.map(([low, high]): EndMoves => [low[name] - center[name], high[name] - center[name]]);
      return [name, nonNegativeBand(center[name], reaches)] as const;
    }),
  ) as Readonly<Record<Name, Band>>;
  return { bands, unanswered };
}
