// Editing a document: one field, the kind of a part, an item of a list. The new document is checked as a whole; the old one
// stays as it is, and everything beside the path is shared. An empty text takes an optional field out again, back to its
// default.

import {
  type FieldRecord,
  fieldRecord,
  fieldRecords,
  isOfKind,
  type ListRecord,
  listRecord,
  placedAt,
} from './field-records.ts';
import { checkDesign, type ReadDesign } from './parse.ts';
import { genericPath, type Part, partAt, textAt, withPart } from './paths.ts';
import type { DesignProblem } from './problems.ts';
import type { DesignDocument } from './schema/design.ts';

/** The edited document with what is unusual of it, or why it cannot be. */
export type EditResult = ReadDesign;

/** The text of a field as it was written; undefined where the default holds. */
export function getField(document: DesignDocument, path: string): string | undefined {
  return textAt(document, path);
}

/** The items of a list, as they are written; none where the list is absent. */
export function itemsOf(document: DesignDocument, list: string): readonly Part[] {
  const items = partAt(document, list);
  return Array.isArray(items) ? items : [];
}

/** The document with another text in one field. For the kind of a part use setKind. */
export function setField(document: DesignDocument, path: string, text: string): EditResult {
  const record = fieldRecord(path, document);
  if (record === undefined) return refused(unknownPath(path));
  if (record.type === 'kind') return setKind(document, path.slice(0, -'.kind'.length), text, {});
  const written = record.lines === true ? text.replace(/^(?:[ \t]*[\r\n]+)+|\s+$/g, '') : text.trim();
  if (written.trim() === '') return clearField(document, record);
  return checkDesign(withPart(document, path.split('.'), written));
}

/**
 * The document with a part, or an item of a list, of another kind. Fields that both kinds have keep their text, and so do
 * lists that both have; the others come from `texts`, by path, where a list stands with its items. A required field that is in neither is a problem 'missing' at
 * its path.
 */
export function setKind(
  document: DesignDocument,
  path: string,
  kind: string,
  texts: Readonly<Record<string, string | readonly Part[]>>,
): EditResult {
  const selector = fieldRecord(`${path}.kind`, document);
  if (selector?.type !== 'kind') return refused(unknownPath(`${path}.kind`));
  if (kind.trim() === '' && selector.optional) return checkDesign(withPart(document, path.split('.'), undefined));
  const existing = partAt(document, path) as Part | undefined;
  let part: Part = { kind };
  for (const inner of partsOfKind(path, kind)) {
    const kept = texts[`${path}.${inner}`] ?? partAt(existing, inner);
    if (typeof kept === 'string' || Array.isArray(kept)) part = withPart(part, inner.split('.'), kept);
  }
  return checkDesign(withPart(document, path.split('.'), part));
}

/** The fields of one kind of a part, in the order of the schema; those of parts and lists within it are left out. */
export function fieldsOfKind(path: string, kind: string): readonly FieldRecord[] {
  const generic = genericPath(path);
  return fieldRecords
    .filter(({ path: inner, unionKind }) => {
      return (
        unionKind?.path === generic && unionKind.kinds.includes(kind) && !inner.slice(generic.length).includes('*')
      );
    })
    .map((record) => placedAt(record, path + record.path.slice(generic.length)));
}

/**
 * The fields of an item of a list, in the order of the schema; of one kind where items have kinds. '*' stands for its index;
 * lists within it are left out.
 */
export function fieldsOfItem(list: string, kind?: string): readonly FieldRecord[] {
  const generic = `${genericPath(list)}.*`;
  return fieldRecords
    .filter(({ path, unionKind }) => {
      if (!path.startsWith(`${generic}.`) || path.slice(generic.length).includes('*')) return false;
      return unionKind?.path !== generic || kind === undefined || unionKind.kinds.includes(kind);
    })
    .map((record) => placedAt(record, `${list}.*${record.path.slice(generic.length)}`));
}

/**
 * The document with one more item in a list; a list that was absent is begun.
 * @param document  stays as it is
 * @param list      path of the list: 'tank.load.faces.2.outside'
 * @param item      as it stands in a file: { "kind": "material", "material": "glass", "thickness": "6 mm" }
 * @param at        index of the new item; the end of the list where absent
 */
export function addItem(document: DesignDocument, list: string, item: unknown, at?: number): EditResult {
  const record = presentList(document, list);
  if (record === undefined) return refused(unknownPath(list));
  const items = itemsOf(document, list);
  const index = at ?? items.length;
  if (!Number.isInteger(index) || index < 0 || index > items.length) return refused(noSuchItem(record, index, items));
  return withItems(document, record, items.toSpliced(index, 0, item as Part));
}

/** The document without one item of a list; an optional list goes with its last item, unless an empty one says something. */
export function removeItem(document: DesignDocument, list: string, index: number): EditResult {
  const record = presentList(document, list);
  if (record === undefined) return refused(unknownPath(list));
  const items = itemsOf(document, list);
  if (items[index] === undefined) return refused(noSuchItem(record, index, items));
  return withItems(document, record, items.toSpliced(index, 1));
}

/** The document with one item of a list at another place among the others. */
export function moveItem(document: DesignDocument, list: string, from: number, to: number): EditResult {
  const record = presentList(document, list);
  if (record === undefined) return refused(unknownPath(list));
  const items = itemsOf(document, list);
  const item = items[from];
  if (item === undefined) return refused(noSuchItem(record, from, items));
  if (items[to] === undefined) return refused(noSuchItem(record, to, items));
  return withItems(document, record, items.toSpliced(from, 1).toSpliced(to, 0, item));
}

function withItems(document: DesignDocument, record: ListRecord, items: readonly unknown[]): EditResult {
  const isGone = items.length === 0 && record.optional && !record.keepsEmpty;
  return checkDesign(withPart(document, record.path.split('.'), isGone ? undefined : items));
}

/** The record of a list whose surroundings are in the document: an item that is not there has no lists. */
function presentList(document: DesignDocument, list: string): ListRecord | undefined {
  const record = listRecord(list);
  const parent = list.slice(0, list.lastIndexOf('.'));
  const isItem = genericPath(parent).endsWith('*');
  return isItem && partAt(document, parent) === undefined ? undefined : record;
}

/** What one kind of a part may hold, by path within it: its fields, those of parts within it, its lists as wholes. */
function partsOfKind(path: string, kind: string): readonly string[] {
  const generic = genericPath(path);
  const inner = fieldRecords
    .filter((record) => record.path.startsWith(`${generic}.`) && isOfKind(record, generic, kind))
    .map((record) => record.path.slice(generic.length + 1).split('.*')[0]!);
  return [...new Set(inner)];
}

/** Takes an optional field out; a part that is given whole or not at all goes with any of its required fields. */
function clearField(document: DesignDocument, record: FieldRecord): EditResult {
  const { path, part, optional } = record;
  if (!optional && part !== undefined) return checkDesign(withPart(document, part.split('.'), undefined));
  if (!optional) {
    const expected = `${record.label.toLowerCase()}: it has no default`;
    return refused({ path, code: 'notOptional', received: '', expected });
  }
  return checkDesign(withPart(document, path.split('.'), undefined));
}

function noSuchItem({ path, itemName }: ListRecord, index: number, items: readonly unknown[]): DesignProblem {
  const expected = items.length === 0 ? `an ${itemName} that is there: the list is empty` : `0 to ${items.length - 1}`;
  return { path: `${path}.${index}`, code: 'unknownPath', received: String(index), expected };
}

function unknownPath(path: string): DesignProblem {
  return { path, code: 'unknownPath', received: path, expected: 'the path of a field of this design' };
}

function refused(problem: DesignProblem): EditResult {
  return { ok: false, problems: [problem] };
}
