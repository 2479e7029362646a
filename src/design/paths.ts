// Reading and replacing texts in a document by dotted path, sharing everything that does not change. An item of a list is
// named by its index, counted from 0: 'tank.load.pipes.1.length'.

export type Part = Readonly<Record<string, unknown>>;

const index = /^(?:0|[1-9]\d*)$/;

/** The part or text at a path; undefined where there is none. */
export function partAt(document: unknown, path: string): unknown {
  let part = document;
  for (const key of path.split('.')) {
    if (!hasKey(part, key)) return undefined;
    part = part[key];
  }
  return part;
}

/** The text at a path; undefined where there is none. */
export function textAt(document: unknown, path: string): string | undefined {
  const part = partAt(document, path);
  return typeof part === 'string' ? part : undefined;
}

/**
 * The document with another part at a path; missing parents are made, `undefined` removes it and parents left empty. An
 * item of a list may be replaced, but neither added nor removed here.
 */
export function withPart(document: Part, keys: readonly string[], value: unknown): Part {
  const [key, ...rest] = keys;
  if (key === undefined) return document;
  const child = rest.length === 0 ? value : withPart((document[key] as Part | undefined) ?? {}, rest, value);
  if (Array.isArray(document)) return document.with(Number(key), child) as unknown as Part;
  const isLeftEmpty =
    rest.length > 0 && value === undefined && !Array.isArray(child) && Object.keys(child as Part).length === 0;
  const isEmpty = child === undefined || isLeftEmpty;
  if (!isEmpty) return { ...document, [key]: child };
  return Object.fromEntries(Object.entries(document).filter(([name]) => name !== key));
}

/** The path with every index replaced by '*', as the field records have it. */
export function genericPath(path: string): string {
  return path.replace(/\.(?:0|[1-9]\d*)(?=\.|$)/g, '.*');
}

function hasKey(part: unknown, key: string): part is Part {
  if (typeof part !== 'object' || part === null || !Object.hasOwn(part, key)) return false;
  return !Array.isArray(part) || index.test(key);
}
