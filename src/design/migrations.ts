// Older format versions -> the present one, a step at a time. Version 1 is the first, so the table is empty; a change of
// the schema that refuses what was accepted before comes with a step here and tests in both directions.

/** Turns a document of version n into one of version n + 1; must not change its argument. */
export type Migration = (document: Readonly<Record<string, unknown>>) => Readonly<Record<string, unknown>>;

/** The step that leaves each version, by that version. */
export const migrations: ReadonlyMap<number, Migration> = new Map();

/** Applies steps from the document's version up to `target`. @throws RangeError if a step is missing from the table. */
export function migrate(
  document: Readonly<Record<string, unknown>>,
  from: number,
  target: number,
  steps: ReadonlyMap<number, Migration> = migrations,
): Readonly<Record<string, unknown>> {
  let current = document;
  for (let version = from; version < target; version++) {
    const step = steps.get(version);
    if (step === undefined) throw new RangeError(`no migration from format version ${version}`);
    current = { ...step(current), formatVersion: version + 1 };
  }
  return current;
}
