// Older format versions -> the present one, a step at a time; and what a person is told of it. A change of the schema that
// refuses what was accepted before comes with a step here and tests in both directions.

import type { DesignNotice } from '../notices.ts';
import type { Part } from '../paths.ts';
import { machineByWhatIsKnown } from './version-1.ts';

/** A document one version further, and what it could not take along or says in other words now. */
export interface Migrated {
  readonly document: Part;
  readonly notices: readonly DesignNotice[];
}

/** Turns a document of version n into one of version n + 1; must not change its argument, nor throw for any value. */
export type Migration = (document: Part) => Migrated;

/** The step that leaves each version, by that version. */
export const migrations: ReadonlyMap<number, Migration> = new Map([[1, machineByWhatIsKnown]]);

/** Applies steps from the document's version up to `target`. @throws RangeError if a step is missing from the table. */
export function migrate(
  document: Part,
  from: number,
  target: number,
  steps: ReadonlyMap<number, Migration> = migrations,
): Migrated {
  let current = document;
  const notices: DesignNotice[] = [];
  for (let version = from; version < target; version++) {
    const step = steps.get(version);
    if (step === undefined) throw new RangeError(`no migration from format version ${version}`);
    const migrated = step(current);
    current = { ...migrated.document, formatVersion: version + 1 };
    notices.push(...migrated.notices);
  }
  if (from >= target) return { document: current, notices };
  const told: DesignNotice = {
    code: 'olderFormat',
    path: 'formatVersion',
    received: String(from),
    now: String(target),
  };
  return { document: current, notices: [told, ...notices] };
}
