// Takes fields of a valid document one by one: what was typed, or the default, which is then written down as an assumption
// with its source. Used by resolve.ts alone.

import { DataError, InputError } from '../../numerics/index.ts';
import { type Estimate, type QuantityContext, type QuantityName, readQuantity } from '../../quantities/index.ts';
import { type FieldRecord, fieldRecord, fullLabel } from '../field-records.ts';
import { partAt, textAt } from '../paths.ts';
import type { Assumption } from '../plain.ts';
import type { DesignDocument } from '../schema/design.ts';
import type { SourcedDefault } from './defaults.ts';
import type { Follower } from './followers.ts';

export class Resolver {
  readonly assumptions: Assumption[] = [];
  /** The defaults that follow another field. */
  readonly followers: Follower[] = [];
  readonly #document: DesignDocument;
  readonly #context: QuantityContext;

  constructor(document: DesignDocument) {
    this.#document = document;
    this.#context = { currency: document.prices.currency };
  }

  /** True where the person gave the field. */
  has(path: string): boolean {
    return textAt(this.#document, path) !== undefined;
  }

  /**
   * The quantity at a path, typed or assumed.
   * @param fallback  the default that depends on other fields; without it, the constant on the schema
   * @param matters   false where nothing depends on the field: then a default is neither listed nor varied
   */
  quantity(path: string, fallback?: () => SourcedDefault, matters = true): Estimate {
    const record = this.#record(path);
    const quantity = record.quantity!;
    const text = textAt(this.#document, path);
    if (text !== undefined) return this.#read(path, text, quantity);
    const { source, following, ...ends } = fallback?.() ?? this.#constant(record, quantity);
    if (!matters) return { low: ends.likely, likely: ends.likely, high: ends.likely, origin: 'assumed' };
    if (following !== undefined) this.followers.push({ path, ...following });
    const estimate: Estimate = { ...ends, origin: 'assumed' };
    this.#note(record, { kind: 'quantity', quantity, estimate }, source);
    return estimate;
  }

  /** The quantity at a path where it was typed; undefined where it was not: nothing stands in for it. */
  quantityIfGiven(path: string): Estimate | undefined {
    return this.has(path) ? this.quantity(path) : undefined;
  }

  /** A free text, such as a name; undefined where there is none. */
  text(path: string): string | undefined {
    return textAt(this.#document, path);
  }

  /** True where a rule in words says what holds while the field is open: there is no one value to take. */
  isByRule(path: string): boolean {
    const fallback = this.#record(path).default;
    return fallback !== undefined && 'rule' in fallback;
  }

  /** True where the document has something at a path: a part or a list that may be absent. */
  hasPart(path: string): boolean {
    return partAt(this.#document, path) !== undefined;
  }

  /** How many items a list has; 0 where it is absent. */
  itemsIn(path: string): number {
    const items = partAt(this.#document, path);
    return Array.isArray(items) ? items.length : 0;
  }

  /** The choice at a path, typed or assumed. The schema has made sure that it is one of the names. */
  choice<Name extends string>(path: string, fallback?: { name: Name; source: string }, matters = true): Name {
    const record = this.#record(path);
    const text = textAt(this.#document, path);
    if (text !== undefined) return text as Name;
    const { name, source } = fallback ?? this.#constantChoice(record);
    const choiceLabel = record.choices?.find((choice) => choice.name === name)?.label ?? name;
    if (matters) this.#note(record, { kind: 'choice', choice: name, choiceLabel }, source);
    return name as Name;
  }

  #note(
    { path, level, ...words }: FieldRecord,
    value:
      | { kind: 'quantity'; quantity: QuantityName; estimate: Estimate }
      | { kind: 'choice'; choice: string; choiceLabel: string },
    source: string,
  ): void {
    this.assumptions.push({ path, label: fullLabel(words), level, source, ...value });
  }

  #record(path: string): FieldRecord {
    const record = fieldRecord(path, this.#document);
    if (record === undefined) throw new InputError('path', path, 'a field of this design', 'unknownPath');
    return record;
  }

  #read(path: string, text: string, quantity: QuantityName): Estimate {
    const read = readQuantity(text, quantity, this.#context);
    if (!read.ok) throw new InputError(path, text, read.problem.expected, read.problem.code);
    return read.estimate;
  }

  #constant(record: FieldRecord, quantity: QuantityName): SourcedDefault {
    const fallback = record.default;
    if (fallback === undefined || !('text' in fallback)) {
      throw new DataError('src/design/schema', record.path, 'needs a default as text');
    }
    const { low, likely, high } = this.#read(record.path, fallback.text, quantity);
    return { low, likely, high, source: fallback.source };
  }

  #constantChoice(record: FieldRecord): { readonly name: string; readonly source: string } {
    const fallback = record.default;
    if (fallback === undefined || !('text' in fallback)) {
      throw new DataError('src/design/schema', record.path, 'needs a default choice');
    }
    return { name: fallback.text, source: fallback.source };
  }
}
