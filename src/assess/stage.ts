// Stages: an Assessment is an ordered set of pure functions, each with declared inputs. A runner remembers each stage's
// last result and runs it again only when a value it reads, or a result it needs, has changed. An edit in the workbench
// and the one-at-a-time variation of an uncertain input use the same machinery: both change one value of the design.

import type { StagedDesign } from './stages/engine-assumptions.ts';

/** Names of the design's top-level parts, the grain at which stages declare what they read. */
export type DesignPart = Exclude<keyof StagedDesign, 'formatVersion' | 'name' | 'note'>;

/** The part of the design a stage declared. Reading anything else is a type error and undefined at run time. */
export type DesignSlice<Parts extends DesignPart> = Pick<StagedDesign, Parts>;

/** A pure step from parts of the design and earlier results to one result. */
export interface Stage<Results extends object, Name extends keyof Results> {
  readonly name: Name;
  readonly reads: readonly DesignPart[];
  readonly needs: readonly (keyof Results)[];
  readonly run: (design: StagedDesign, results: Results) => Results[Name];
}

/** Declares a stage so that `run` sees only what it declared; the runner passes nothing else. */
export function stage<
  Results extends object,
  Name extends keyof Results,
  Parts extends DesignPart,
  Needs extends keyof Results,
>(
  name: Name,
  reads: readonly Parts[],
  needs: readonly Needs[],
  run: (design: DesignSlice<Parts>, results: Pick<Results, Needs>) => Results[Name],
): Stage<Results, Name> {
  return { name, reads, needs, run: run as Stage<Results, Name>['run'] };
}

interface Remembered {
  readonly inputs: readonly unknown[];
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
    const { results, remembered } = this.#evaluate(design);
    this.#remembered = remembered;
    return results;
  }

  probe(design: StagedDesign): Results {
    return this.#evaluate(design).results;
  }

  counts(): StageCounts {
    return { ...this.#counts };
  }

  #evaluate(design: StagedDesign) {
    const results = {} as Results;
    const remembered = new Map<keyof Results, Remembered>();
    for (const step of this.#stages) {
      const slice = pick(design, step.reads) as unknown as StagedDesign;
      const needed = pick(results, step.needs) as Results;
      const inputs = [...leaves(slice), ...step.needs.map((need) => results[need])];
      const before = this.#remembered.get(step.name);
      const unchanged = before !== undefined && sameValues(before.inputs, inputs);
      if (!unchanged) this.#counts[String(step.name)] = (this.#counts[String(step.name)] ?? 0) + 1;
      const result = unchanged ? (before.result as Results[keyof Results]) : step.run(slice, needed);
      results[step.name] = result;
      remembered.set(step.name, unchanged ? before : { inputs, result });
    }
    return { results, remembered };
  }
}

function pick<T extends object, K extends keyof T>(source: T, keys: readonly K[]): Pick<T, K> {
  const picked: Partial<T> = {};
  for (const key of keys) picked[key] = source[key];
  return picked as Pick<T, K>;
}

/** Paths and primitive values of a tree, in order; paths too, since a key may come or go. */
function leaves(tree: unknown, path = ''): unknown[] {
  if (typeof tree !== 'object' || tree === null) return [path, tree];
  return Object.entries(tree).flatMap(([key, value]) => leaves(value, `${path}.${key}`));
}

function sameValues(left: readonly unknown[], right: readonly unknown[]): boolean {
  return left.length === right.length && left.every((value, index) => Object.is(value, right[index]));
}
