// Stages: an Assessment is an ordered set of pure functions, each with declared inputs. A runner remembers each stage's
// last result and runs it again only when a value it reads, or a result it needs, has changed. An edit in the workbench
// and the one-at-a-time variation of an uncertain input use the same machinery: both change one value of the design.

import type { StagedDesign } from './stages/engine-assumptions.ts';

/**
 * A pure step from a part of the design and earlier results to one result.
 * `reads` picks what the stage may see of the design; `run` gets that and the results named in `needs`, nothing else.
 */
export interface Stage<Results extends object, Name extends keyof Results> {
  readonly name: Name;
  readonly reads: (design: StagedDesign) => object;
  readonly needs: readonly (keyof Results)[];
  readonly run: (slice: never, results: Results) => Results[Name];
  /** True for a decision: `probe` keeps that of the last run, so that variations are of one and the same choice. */
  readonly isHeld?: boolean;
}

/** Declares the stages of one set of results, so that each is checked against what it reads and needs. */
export function stageOf<Results extends object>() {
  return <Name extends keyof Results, Slice extends object, Needs extends keyof Results>(
    name: Name,
    reads: (design: StagedDesign) => Slice,
    needs: readonly Needs[],
    run: (slice: Slice, results: Pick<Results, Needs>) => Results[Name],
    isHeld = false,
  ): Stage<Results, Name> => ({ name, reads, needs, run: run as Stage<Results, Name>['run'], isHeld });
}

interface Remembered {
  readonly slice: object;
  readonly needed: readonly unknown[];
  readonly result: unknown;
}

/** How often each stage really ran: lets a test prove that an edit recomputed only what depends on it. */
export type StageCounts = Readonly<Record<string, number>>;

/**
 * Runs stages in order, remembering the last full run.
 * `run` makes its results the remembered ones; `probe` compares with them but leaves them alone, so that any number of
 * variations of one value cost only the stages downstream of it.
 */
export class StageRunner<Results extends object> {
  readonly #stages: readonly Stage<Results, keyof Results>[];
  #remembered = new Map<keyof Results, Remembered>();
  readonly #counts: Record<string, number> = {};

  constructor(stages: readonly Stage<Results, keyof Results>[]) {
    this.#stages = stages;
  }

  run(design: StagedDesign): Results {
    const { results, remembered } = this.#evaluate(design, false);
    this.#remembered = remembered;
    return results;
  }

  probe(design: StagedDesign): Results {
    return this.#evaluate(design, true).results;
  }

  counts(): StageCounts {
    return { ...this.#counts };
  }

  #evaluate(design: StagedDesign, isProbe: boolean) {
    const results = {} as Results;
    const remembered = new Map<keyof Results, Remembered>();
    for (const { name, reads, needs, run, isHeld } of this.#stages) {
      const slice = reads(design);
      const needed = needs.map((need) => results[need]);
      const before = this.#remembered.get(name);
      if (isProbe && isHeld === true && before !== undefined) {
        results[name] = before.result as Results[keyof Results];
        continue;
      }
      if (before !== undefined && sameTree(before.slice, slice) && sameResults(before.needed, needed)) {
        results[name] = before.result as Results[keyof Results];
        remembered.set(name, before);
        continue;
      }
      this.#counts[String(name)] = (this.#counts[String(name)] ?? 0) + 1;
      const result = run(slice as never, pick(results, needs) as Results);
      results[name] = result;
      remembered.set(name, { slice, needed, result });
    }
    return { results, remembered };
  }
}

function pick<T extends object, K extends keyof T>(source: T, keys: readonly K[]): Pick<T, K> {
  const picked: Partial<T> = {};
  for (const key of keys) picked[key] = source[key];
  return picked as Pick<T, K>;
}

/** Equal trees of plain data. Shared branches are recognised at once, which is what a varied design mostly consists of. */
function sameTree(left: unknown, right: unknown): boolean {
  if (Object.is(left, right)) return true;
  if (typeof left !== 'object' || typeof right !== 'object' || left === null || right === null) return false;
  const leftKeys = Object.keys(left);
  if (leftKeys.length !== Object.keys(right).length) return false;
  return leftKeys.every(
    (key) =>
      Object.hasOwn(right, key) &&
      sameTree((left as Record<string, unknown>)[key], (right as Record<string, unknown>)[key]),
  );
}

function sameResults(left: readonly unknown[], right: readonly unknown[]): boolean {
  return left.every((result, index) => Object.is(result, right[index]));
}
