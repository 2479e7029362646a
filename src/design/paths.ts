// Reading and replacing texts in a document by dotted path, sharing everything that does not change.

export type Part = Readonly<Record<string, unknown>>;

/** The part or text at a path; undefined where there is none. */
export function partAt(document: unknown, path: string): unknown {
  let part = document;
  for (const key of path.split('.')) {
    if (typeof part !== 'object' || part === null || !Object.hasOwn(part, key)) return undefined;
    part = (part as Part)[key];
  }
  return part;
}

/** The text at a path; undefined where there is none. */
export function textAt(document: unknown, path: string): string | undefined {
  const part = partAt(document, path);
  return typeof part === 'string' ? part : undefined;
}

/** The document with another part at a path; missing parents are made, `undefined` removes it and parents left empty. */
export function withPart(document: Part, keys: readonly string[], value: unknown): Part {
  const [key, ...rest] = keys;
  if (key === undefined) return document;
  const child = rest.length === 0 ? value : withPart((document[key] as Part | undefined) ?? {}, rest, value);
  const isLeftEmpty = rest.length > 0 && value === undefined && Object.keys(child as Part).length === 0;
  const isEmpty = child === undefined || isLeftEmpty;
  if (!isEmpty) return { ...document, [key]: child };
  return Object.fromEntries(Object.entries(document).filter(([name]) => name !== key));
}
