// Every field of the document, derived by walking the schema once: path, label, help, quantity or choices, limits, default,
// level, and in which kinds of a union it exists. Forms, messages and the field table read this list; nobody writes it.
// In a list the path of a field holds '*' for the index: 'tank.load.pipes.*.length'.

import * as z from 'zod/mini';
import type { QuantityName } from '../quantities/index.ts';
import { genericPath, partAt, textAt } from './paths.ts';
import { type DesignDocument, designSchema } from './schema/design.ts';
import { type Choice, type DefaultRecord, type FieldMeta, fieldMeta, type Level, listMeta } from './schema/field.ts';

/** A field exists only where the part of the document at `path` is of one of these kinds; and that part within another. */
export interface UnionKind {
  readonly path: string;
  readonly kinds: readonly string[];
  readonly within?: UnionKind;
}

interface Placed {
  /** Dotted path in the document; a path may have two records, for different kinds of one union. */
  readonly path: string;
  readonly unionKind?: UnionKind;
  /** The part that is given whole or not at all, where the field stands in one: 'tank.load.insulation.back'. */
  readonly part?: string;
  /** Which items of lists it stands in, in words: "face 3, outer layer 1". */
  readonly item?: string;
}

export interface FieldRecord extends Placed {
  readonly type: 'quantity' | 'choice' | 'kind' | 'text';
  readonly label: string;
  readonly help: string;
  readonly level: Level;
  readonly optional: boolean;
  readonly quantity?: QuantityName;
  /** Hard limits in base SI, both included. */
  readonly minimum?: number;
  readonly maximum?: number;
  /** For `choice` and `kind`. */
  readonly choices?: readonly Choice[];
  readonly default?: DefaultRecord;
  readonly why?: string;
  /** For `text`: of several lines. */
  readonly lines?: true;
  readonly when?: FieldMeta['when'];
}

/** A list of the document: what it is called, and its items. */
export interface ListRecord extends Placed {
  readonly label: string;
  readonly help: string;
  readonly level: Level;
  /** What one item is called: "layer". */
  readonly itemName: string;
  readonly optional: boolean;
  readonly keepsEmpty: boolean;
}

interface Records {
  readonly fields: FieldRecord[];
  readonly lists: ListRecord[];
}

const walked: Records = { fields: [], lists: [] };
walk(designSchema, '', { optional: false }, walked);

/** All fields in the order of the schema. */
export const fieldRecords: readonly FieldRecord[] = merged(walked.fields);
/** All lists in the order of the schema. */
export const listRecords: readonly ListRecord[] = walked.lists;

const recordsByPath = new Map<string, FieldRecord[]>();
for (const entry of fieldRecords) recordsByPath.set(entry.path, [...(recordsByPath.get(entry.path) ?? []), entry]);

const listsByPath = new Map(listRecords.map((record) => [record.path, record]));

/**
 * The record of the field at a path, in the kinds this document uses; undefined where there is none, or where the document
 * has no such item of a list.
 */
export function fieldRecord(path: string, document?: DesignDocument): FieldRecord | undefined {
  const candidates = recordsByPath.get(genericPath(path)) ?? [];
  const placed = candidates.map((record) => placedAt(record, path));
  if (document === undefined || placed[0] === undefined) return placed[0];
  if (!hasItems(document, path)) return undefined;
  return placed.find((record) => isPresentKind(record, document)) ?? placed[0];
}

const parts = new Set(fieldRecords.flatMap(({ path }) => (path.includes('.') ? [path.split('.', 1)[0]!] : [])));

/** Whether a dotted path is one inside a design ('machine.compressor.tables.0.line 4'), in whatever detail. */
export function isPlaceInDesign(path: string): boolean {
  return path.includes('.') && parts.has(path.split('.', 1)[0]!);
}

/** The record of the list at a path: 'tank.load.faces.2.outside'; undefined where there is none. */
export function listRecord(path: string): ListRecord | undefined {
  const record = listsByPath.get(genericPath(path));
  return record === undefined ? undefined : placedAt(record, path);
}

/**
 * The fields that exist in this document, given or not: those of the kinds it has, of the items its lists have. Optional
 * fields of an absent part, and fields that mean nothing beside the others, are left out unless they are given.
 */
export function fieldsOf(document: DesignDocument): readonly FieldRecord[] {
  return expanded(fieldRecords, document).filter(
    (record) => isPresentKind(record, document) && hasMeaning(record, document),
  );
}

/** The lists that exist in this document, given or not, each before the lists in its items. */
export function listsOf(document: DesignDocument): readonly ListRecord[] {
  return expanded(listRecords, document).filter((record) => isPresentKind(record, document));
}

/** The label, with the item it belongs to: "Thickness (face 3, outer layer 1)". */
export function fullLabel({ label, item }: Pick<FieldRecord, 'label' | 'item'>): string {
  return item === undefined ? label : `${label} (${item})`;
}

/** Whether a record belongs to a kind of the part at this path, itself or through a part within it. */
export function isOfKind({ unionKind }: Placed, path: string, kind: string): boolean {
  for (let union = unionKind; union !== undefined; union = union.within) {
    if (union.path === path) return union.kinds.includes(kind);
  }
  return false;
}

function isPresentKind({ unionKind }: Placed, document: DesignDocument): boolean {
  for (let union = unionKind; union !== undefined; union = union.within) {
    if (!union.kinds.includes(kindAt(document, union.path))) return false;
  }
  return true;
}

/** The kind of the union at a path; its default where it is absent. */
function kindAt(document: DesignDocument, path: string): string {
  const kind = textAt(document, `${path}.kind`);
  if (kind !== undefined || partAt(document, path) !== undefined) return kind ?? '';
  const fallback = recordsByPath.get(genericPath(`${path}.kind`))?.[0]?.default;
  return fallback !== undefined && 'text' in fallback ? fallback.text : '';
}

function hasMeaning(record: FieldRecord, document: DesignDocument): boolean {
  const { path, part, optional, when } = record;
  if (!optional || textAt(document, path) !== undefined) return true;
  if (part !== undefined && partAt(document, part) === undefined) return false;
  if (when === undefined) return true;
  const beside = when.field.includes('.') ? when.field : `${path.slice(0, path.lastIndexOf('.'))}.${when.field}`;
  const text = textAt(document, beside);
  return when.is === undefined ? text !== undefined : text !== undefined && when.is.includes(text);
}

function hasItems(document: DesignDocument, path: string): boolean {
  const keys = path.split('.');
  return keys.every(
    (key, index) => !/^\d+$/.test(key) || partAt(document, keys.slice(0, index + 1).join('.')) !== undefined,
  );
}

/** Records with '*' once for every item of the document, item by item. */
function expanded<Record extends Placed>(records: readonly Record[], document: DesignDocument): readonly Record[] {
  const result: Record[] = [];
  for (let at = 0; at < records.length; ) {
    const { path } = records[at]!;
    const star = path.indexOf('.*');
    if (star < 0) {
      result.push(records[at++]!);
      continue;
    }
    const list = path.slice(0, star);
    let end = at + 1;
    while (end < records.length && records[end]!.path.startsWith(`${list}.*`)) end++;
    const items = partAt(document, list);
    const block = records.slice(at, end);
    for (let index = 0; Array.isArray(items) && index < items.length; index++) {
      const prefix = `${list}.${index}`;
      const ofItem = block.map((record) => placedAt(record, prefix + record.path.slice(star + 2)));
      result.push(...expanded(ofItem, document));
    }
    at = end;
  }
  return result;
}

/** The record with the indexes of a path in place of each '*'. */
export function placedAt<Record extends Placed>(record: Record, path: string): Record {
  if (record.path === path) return record;
  const keys = path.split('.');
  const indexed = (inner: string) =>
    inner
      .split('.')
      .map((key, index) => (key === '*' ? keys[index]! : key))
      .join('.');
  const union = ({ path: at, kinds, within }: UnionKind): UnionKind => ({
    path: indexed(at),
    kinds,
    ...(within === undefined ? {} : { within: union(within) }),
  });
  const { unionKind, part } = record;
  const item = itemWords(keys);
  return {
    ...record,
    path,
    ...(unionKind === undefined ? {} : { unionKind: union(unionKind) }),
    ...(part === undefined ? {} : { part: indexed(part) }),
    ...(item === '' ? {} : { item }),
  };
}

/** "face 3, outer layer 1": items are counted from 1 for people. */
function itemWords(keys: readonly string[]): string {
  return keys
    .flatMap((key, index) => {
      const list = /^\d+$/.test(key) ? listsByPath.get(genericPath(keys.slice(0, index).join('.'))) : undefined;
      return list === undefined ? [] : [`${list.itemName} ${Number(key) + 1}`];
    })
    .join(', ');
}

interface Surroundings {
  readonly optional: boolean;
  readonly unionKind?: UnionKind;
  readonly part?: string;
}

function walk(schema: z.ZodMiniType, path: string, around: Surroundings, into: Records): void {
  if (schema instanceof z.ZodMiniOptional) {
    const inner = schema.def.innerType as z.ZodMiniType;
    const whole = inner instanceof z.ZodMiniObject && hasRequired(inner) ? { part: path } : {};
    walk(inner, path, { ...around, ...whole, optional: true }, into);
  } else if (schema instanceof z.ZodMiniDiscriminatedUnion) {
    walkUnion(schema, path, around, into);
  } else if (schema instanceof z.ZodMiniArray) {
    const { item, keepsEmpty = false, ...words } = listMeta(schema)!;
    into.lists.push(placed(path, around, { ...words, itemName: item, keepsEmpty, optional: around.optional }));
    walk(schema.def.element as z.ZodMiniType, `${path}.*`, { ...around, optional: false }, into);
  } else if (schema instanceof z.ZodMiniObject) {
    for (const [key, inner] of entriesOf(schema)) {
      // A field inside an absent optional part is optional, but one inside a given layer or union is as its schema says.
      walk(inner, path === '' ? key : `${path}.${key}`, { ...around, optional: false }, into);
    }
  } else {
    const meta = fieldMeta(schema);
    if (meta !== undefined) into.fields.push(record(path, typeOf(meta), meta, around));
  }
}

/** The fields of all kinds, those that several kinds share once, in an order that is that of every kind. */
function walkUnion(schema: z.ZodMiniDiscriminatedUnion, path: string, around: Surroundings, into: Records): void {
  const options = schema.def.options as readonly z.ZodMiniObject[];
  const choices = options.map((option) => ({
    name: kindName(option),
    label: z.globalRegistry.get(option)?.title ?? kindName(option),
  }));
  into.fields.push(record(`${path}.kind`, 'kind', { ...fieldMeta(schema)!, choices }, around));
  const entries: { readonly key: string; readonly inner: z.ZodMiniType; readonly kinds: string[] }[] = [];
  for (const option of options) {
    // From the last field to the first: what only this kind has stands right before what it shares with kinds before it.
    let at = entries.length;
    for (const [key, inner] of entriesOf(option).toReversed()) {
      const known = entries.findIndex((entry) => entry.key === key && entry.inner === inner);
      if (known < 0) entries.splice(at, 0, { key, inner, kinds: [kindName(option)] });
      else {
        entries[known]!.kinds.push(kindName(option));
        at = known;
      }
    }
  }
  const { unionKind: within } = around;
  for (const { key, inner, kinds } of entries) {
    const unionKind = { path, kinds, ...(within === undefined ? {} : { within }) };
    walk(inner, `${path}.${key}`, { optional: false, unionKind }, into);
  }
}

function entriesOf(schema: z.ZodMiniObject): readonly (readonly [string, z.ZodMiniType])[] {
  return Object.entries(schema.shape as Readonly<Record<string, z.ZodMiniType>>);
}

function hasRequired(schema: z.ZodMiniObject): boolean {
  return entriesOf(schema).some(([, inner]) => !(inner instanceof z.ZodMiniOptional));
}

function kindName(option: z.ZodMiniObject): string {
  const literal = (option.shape as Readonly<Record<string, z.ZodMiniType>>).kind as z.ZodMiniLiteral;
  return String(literal.def.values[0]);
}

function typeOf(meta: FieldMeta): FieldRecord['type'] {
  if (meta.quantity !== undefined) return 'quantity';
  return meta.choices === undefined ? 'text' : 'choice';
}

function record(path: string, type: FieldRecord['type'], meta: FieldMeta, around: Surroundings): FieldRecord {
  return placed(path, around, { type, ...meta, optional: around.optional });
}

function placed<Words extends object>(path: string, { unionKind, part }: Surroundings, words: Words) {
  return {
    path,
    ...words,
    ...(unionKind === undefined ? {} : { unionKind }),
    ...(part === undefined ? {} : { part }),
  };
}

/** One record where several kinds of a union share a field with the same words. */
function merged(records: readonly FieldRecord[]): readonly FieldRecord[] {
  const result: FieldRecord[] = [];
  const known = new Map<string, number>();
  for (const next of records) {
    const key = JSON.stringify([next.path, next.label, next.optional]);
    const index = known.get(key);
    const same = index === undefined ? undefined : result[index];
    if (index === undefined || same?.unionKind === undefined || next.unionKind === undefined) {
      known.set(key, result.push(next) - 1);
    } else {
      result[index] = { ...same, unionKind: joined(same.unionKind, next.unionKind) };
    }
  }
  return result;
}

/** Both kinds of one union; what surrounds it is the same for both, but for the kinds of the outermost. */
function joined(left: UnionKind, right: UnionKind): UnionKind {
  const kinds = [...new Set([...left.kinds, ...right.kinds])];
  if (left.within === undefined || right.within === undefined) return { path: left.path, kinds };
  return { path: left.path, kinds, within: joined(left.within, right.within) };
}
