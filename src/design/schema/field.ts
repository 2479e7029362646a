// Field records as metadata on the schema: label, help, quantity or choices, hard limits, default with its source, level.
// A field of the document is a text; these builders make the validator of that text and carry its record. No field is
// described anywhere else: forms, messages, the field table and the JSON Schema are derived from here. The schema library
// is used in its small form, whose parts are functions: the page loads only those that are called.

import * as z from 'zod/mini';
import {
  type Estimate,
  type QuantityName,
  type QuantityProblem,
  quantityRecord,
  readQuantity,
  sayQuantity,
} from '../../quantities/index.ts';

// No generated code: the workbench forbids it by its content security policy.
z.config({ jitless: true });

/** The source of a default that every practitioner would name and nobody has printed. */
export const practice = 'common practice, no source';

/** `first`: asked at the start. `more`: behind "I know more". `expert`: rarely known. */
export type Level = 'first' | 'more' | 'expert';

/** What is assumed when the field is absent: a quantity or choice as one would write it, or a rule in words. */
export type DefaultRecord =
  | { readonly text: string; readonly source: string }
  | { readonly rule: string; readonly source: string };

export interface Choice {
  readonly name: string;
  readonly label: string;
}

/** The part of a field's record that stands on the schema; its path and what surrounds it follow from where it stands. */
export interface FieldMeta {
  readonly label: string;
  readonly help: string;
  readonly level: Level;
  readonly quantity?: QuantityName;
  /** Hard limits in base SI, both included. */
  readonly minimum?: number;
  readonly maximum?: number;
  readonly choices?: readonly Choice[];
  readonly default?: DefaultRecord;
  /** Why it is asked for: what cannot be told without it. Said where it is missing. */
  readonly why?: string;
  /** A text of several lines, such as a table. */
  readonly lines?: true;
  /** Has a meaning only where the field of this name beside it, or at this path, is given or has one of these values. */
  readonly when?: { readonly field: string; readonly is?: readonly string[] };
}

/** The record of a list: what it holds, what its items are called. */
export interface ListMeta {
  readonly label: string;
  readonly help: string;
  readonly level: Level;
  /** One of them: "layer". */
  readonly item: string;
  /** An empty list says something else than no list, so it stays when the last item goes. */
  readonly keepsEmpty?: boolean;
}

/** No list is longer. */
export const mostItems = 24;

export interface QuantityFieldInput extends FieldMeta {
  readonly quantity: QuantityName;
  readonly minimum: number;
  readonly maximum: number;
}

/** A problem of a field before its path is known. */
export interface FieldProblem extends Omit<QuantityProblem, 'code'> {
  readonly code: QuantityProblem['code'] | 'outOfRange';
}

/** A text that must read as the quantity within its hard limits. Its currency is checked with the whole document. */
export function quantityField(input: QuantityFieldInput) {
  return z
    .string()
    .check(({ value, issues }) => {
      const problem = quantityFieldProblem(value, input);
      if (problem !== undefined) {
        issues.push({ code: 'custom', input: value, message: problem.expected, params: { problem } });
      }
    })
    .check(
      z.meta({
        title: input.label,
        description: input.help,
        examples: [...quantityRecord(input.quantity).examples],
        field: input,
      }),
    );
}

/** A free text of at most so many characters; of several lines where `lines` says so. */
export function textField(longest: number, input: FieldMeta) {
  return z.string().check(
    z.minLength(1),
    z.maxLength(longest),
    // Blanks alone say nothing.
    z.regex(/\S/),
    z.meta({ title: input.label, description: input.help, field: input }),
  );
}

/** One of a list of names. */
export function choiceField<const Names extends readonly [string, ...string[]]>(
  names: Names,
  labels: Readonly<Record<Names[number], string>>,
  input: FieldMeta,
) {
  const choices = names.map((name) => ({ name, label: labels[name as Names[number]] }));
  return z.enum(names).check(z.meta({ title: input.label, description: input.help, field: { ...input, choices } }));
}

/** One of a list of names that comes from data. */
export function listedField(choices: readonly Choice[], input: FieldMeta) {
  const names = choices.map(({ name }) => name) as [string, ...string[]];
  return z.enum(names).check(z.meta({ title: input.label, description: input.help, field: { ...input, choices } }));
}

/** The field that chooses between the kinds of a part of the document. */
export function kindField<const Name extends string>(name: Name) {
  return z.literal(name);
}

/** A list of at most `mostItems` parts. */
export function listField<Item extends z.ZodMiniType>(item: Item, input: ListMeta, fewest = 0) {
  return z
    .array(item)
    .check(z.minLength(fewest), z.maxLength(mostItems))
    .check(z.meta({ title: input.label, description: input.help, list: input }));
}

/** The record on a schema node, if it is a list. */
export function listMeta(schema: z.ZodMiniType): ListMeta | undefined {
  return z.globalRegistry.get(schema)?.list as ListMeta | undefined;
}

/** The record on a schema node, if it is a field. */
export function fieldMeta(schema: z.ZodMiniType): FieldMeta | undefined {
  return z.globalRegistry.get(schema)?.field as FieldMeta | undefined;
}

/** What keeps a text from being this quantity within its limits; undefined if nothing does. */
export function quantityFieldProblem(
  text: string,
  { quantity, minimum, maximum }: Pick<QuantityFieldInput, 'quantity' | 'minimum' | 'maximum'>,
): FieldProblem | undefined {
  const read = readQuantity(text, quantity);
  if (!read.ok) return read.problem;
  if (isWithin(read.estimate, minimum, maximum)) return undefined;
  return { code: 'outOfRange', received: text, expected: limitWords(quantity, minimum, maximum) };
}

/** "0 °C to 45 °C (32 °F to 113 °F)". */
export function limitWords(quantity: QuantityName, minimum: number, maximum: number): string {
  const say = (view: 'metric' | 'us') =>
    `${sayQuantity(minimum, quantity, view)} to ${sayQuantity(maximum, quantity, view)}`;
  const metric = say('metric');
  const us = say('us');
  return metric === us ? metric : `${metric} (${us})`;
}

/** Limits are compared with a hair of tolerance, so that the limit itself can be written in any unit. */
function isWithin({ low, high }: Estimate, minimum: number, maximum: number): boolean {
  const hair = 1e-9 * Math.max(Math.abs(minimum), Math.abs(maximum));
  return low >= minimum - hair && high <= maximum + hair;
}
