// The document's JSON Schema, for editors and other programs; derived from the schema, so that it cannot differ from it.
// It knows names, kinds and choices; whether a text reads as a quantity, only this program can tell.

import * as z from 'zod/mini';
import { designSchema } from './schema/design.ts';
import { type FieldMeta, limitWords } from './schema/field.ts';

/** A JSON Schema, draft 2020-12. */
export function designJsonSchema(): Readonly<Record<string, unknown>> {
  return z.toJSONSchema(designSchema, {
    target: 'draft-2020-12',
    io: 'input',
    override: ({ jsonSchema }) => {
      const field = jsonSchema.field as FieldMeta | undefined;
      delete jsonSchema.field;
      delete jsonSchema.list;
      if (field !== undefined) jsonSchema.description = [field.help, ...limits(field), ...fallback(field)].join(' ');
    },
  }) as Readonly<Record<string, unknown>>;
}

function limits({ quantity, minimum, maximum }: FieldMeta): readonly string[] {
  if (quantity === undefined || minimum === undefined || maximum === undefined) return [];
  return [`Accepted: ${limitWords(quantity, minimum, maximum)}.`];
}

function fallback({ default: absent }: FieldMeta): readonly string[] {
  if (absent === undefined) return [];
  return [`If absent: ${'text' in absent ? absent.text : absent.rule} (${absent.source}).`];
}
