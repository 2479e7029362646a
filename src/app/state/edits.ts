// Edits of the design that concern more than one field at once: a part that needs several texts before it is whole.

import { checkDesign, type DesignDocument, type EditResult, type FieldRecord, getField } from '../../design/index.ts';

type Part = Readonly<Record<string, unknown>>;

/** The document with several texts set at once. */
export function setFields(document: DesignDocument, texts: Readonly<Record<string, string>>): EditResult {
  let value: Part = document as unknown as Part;
  for (const [path, text] of Object.entries(texts)) value = withText(value, path.split('.'), text);
  return checkDesign(value);
}

/** A part with a text at some keys within it; parents that are missing are made. An index names an item of a list. */
export function withText(part: Part, [key, ...rest]: readonly string[], text: string): Part {
  if (key === undefined) return part;
  const inner = rest.length === 0 ? text : withText((part[key] as Part | undefined) ?? {}, rest, text);
  return Array.isArray(part) ? (part.with(Number(key), inner) as unknown as Part) : { ...part, [key]: inner };
}

/** The part that holds a field: 'tank.load.insulation.back'. */
export function parentOf(path: string): string {
  return path.slice(0, path.lastIndexOf('.'));
}

/**
 * Whether a field belongs to a part that is not in the document, although the part would need it: such a part is entered
 * whole or not at all.
 */
export function isInAbsentPart(record: FieldRecord, document: DesignDocument): boolean {
  return !record.optional && getField(document, record.path) === undefined;
}
