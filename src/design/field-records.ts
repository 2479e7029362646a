// Every field of the document, derived by walking the schema once: path, label, help, quantity or choices, limits, default,
// level, and in which kinds of a union it exists. Forms, messages and the field table read this list; nobody writes it.

import * as z from 'zod/mini';
import type { QuantityName } from '../quantities/index.ts';
import { type DesignDocument, designSchema } from './schema/design.ts';
import { type Choice, type DefaultRecord, type FieldMeta, fieldMeta, type Level } from './schema/field.ts';

/** A field exists only where the part of the document at `path` is of one of these kinds. */
export interface UnionKind {
  readonly path: string;
  readonly kinds: readonly string[];
}

export interface FieldRecord {
  /** Dotted path in the document; a path may have two records, for different kinds of one union. */
  readonly path: string;
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
  readonly unionKind?: UnionKind;
}

/** All fields in the order of the schema. */
export const fieldRecords: readonly FieldRecord[] = merged(walk(designSchema, '', { optional: false }));

/** The record of the field at a path, in the kinds this document uses; undefined where there is none. */
export function fieldRecord(path: string, document?: DesignDocument): FieldRecord | undefined {
  const candidates = fieldRecords.filter((record) => record.path === path);
  if (document === undefined || candidates.length < 2) return candidates[0];
  return candidates.find((record) => isPresentKind(record, document)) ?? candidates[0];
}

/** The fields that exist in this document, given or not. */
export function fieldsOf(document: DesignDocument): readonly FieldRecord[] {
  return fieldRecords.filter((record) => isPresentKind(record, document));
}

function isPresentKind({ unionKind }: FieldRecord, document: DesignDocument): boolean {
  return unionKind === undefined || unionKind.kinds.includes(kindAt(document, unionKind.path));
}

/** The kind of the union at a path; its default where it is absent. */
function kindAt(document: DesignDocument, path: string): string {
  let part: unknown = document;
  for (const key of path.split('.')) part = (part as Readonly<Record<string, unknown>> | undefined)?.[key];
  if (part !== undefined) return (part as { readonly kind: string }).kind;
  const fallback = fieldRecords.find((record) => record.path === `${path}.kind`)?.default;
  return fallback !== undefined && 'text' in fallback ? fallback.text : '';
}

interface Surroundings {
  readonly optional: boolean;
  readonly unionKind?: UnionKind;
}

function walk(schema: z.ZodMiniType, path: string, around: Surroundings): FieldRecord[] {
  if (schema instanceof z.ZodMiniOptional)
    return walk(schema.def.innerType as z.ZodMiniType, path, { ...around, optional: true });
  if (schema instanceof z.ZodMiniDiscriminatedUnion) return walkUnion(schema, path, around);
  if (schema instanceof z.ZodMiniObject) {
    return Object.entries(schema.shape as Readonly<Record<string, z.ZodMiniType>>).flatMap(([key, inner]) => {
      const innerPath = path === '' ? key : `${path}.${key}`;
      // A field inside an absent optional part is optional, but one inside a given layer or union is as its schema says.
      return walk(inner, innerPath, { ...around, optional: false });
    });
  }
  const meta = fieldMeta(schema);
  return meta === undefined ? [] : [record(path, typeOf(meta), meta, around)];
}

function walkUnion(schema: z.ZodMiniDiscriminatedUnion, path: string, around: Surroundings): FieldRecord[] {
  const options = schema.def.options as readonly z.ZodMiniObject[];
  const kinds = options.map((option) => ({
    name: kindName(option),
    label: z.globalRegistry.get(option)?.title ?? kindName(option),
  }));
  const meta = fieldMeta(schema)!;
  const selector = record(`${path}.kind`, 'kind', { ...meta, choices: kinds }, around);
  const inner = options.flatMap((option) =>
    walk(option, path, { optional: false, unionKind: { path, kinds: [kindName(option)] } }),
  );
  return [selector, ...inner];
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
  const { unionKind, optional } = around;
  return { path, type, ...meta, optional, ...(unionKind === undefined ? {} : { unionKind }) };
}

/** One record where several kinds of a union share a field with the same words. */
function merged(records: readonly FieldRecord[]): readonly FieldRecord[] {
  const result: FieldRecord[] = [];
  for (const next of records) {
    const index = result.findIndex((known) => isSameField(known, next));
    const known = result[index];
    if (known?.unionKind === undefined || next.unionKind === undefined) {
      result.push(next);
    } else {
      const kinds = [...known.unionKind.kinds, ...next.unionKind.kinds];
      result[index] = { ...known, unionKind: { path: known.unionKind.path, kinds } };
    }
  }
  return result;
}

function isSameField(left: FieldRecord, right: FieldRecord): boolean {
  return left.path === right.path && left.label === right.label && left.optional === right.optional;
}
