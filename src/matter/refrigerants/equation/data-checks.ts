// What a coefficient file is checked with: small checks of one value each, and how they are put together. A check that fails
// is a DataError naming the file, the path inside it and the rule.

import { DataError } from '../../../numerics/index.ts';

export type Check = (value: unknown, path: string, file: string) => void;
/** An entry that may be left out. */
export interface Maybe {
  readonly maybe: Check;
}
/** What is checked of a record, by key. */
export type Shape = Readonly<Record<string, Check | Maybe>>;

export function broken(file: string, path: string, rule: string): never {
  throw new DataError(file, path, rule);
}

export const finite: Check = (value, path, file) => {
  if (typeof value !== 'number' || !Number.isFinite(value)) broken(file, path, 'must be a finite number');
};
export const positive: Check = (value, path, file) => {
  finite(value, path, file);
  if ((value as number) <= 0) broken(file, path, 'must be above 0');
};
export const words: Check = (value, path, file) => {
  if (typeof value !== 'string' || value.trim() === '') broken(file, path, 'must be a text that is not empty');
};

export function oneOf(...accepted: readonly string[]): Check {
  return (value, path, file) => {
    if (!accepted.includes(value as string)) broken(file, path, `must be one of ${accepted.join(', ')}`);
  };
}
export function listOf(check: Check, atLeast = 1): Check {
  return (value, path, file) => {
    if (!Array.isArray(value)) broken(file, path, 'must be a list');
    if (value.length < atLeast) broken(file, path, `must have at least ${atLeast} entries`);
    value.forEach((entry, index) => {
      check(entry, `${path}[${index}]`, file);
    });
  };
}
/** Whole powers up to 50: the shared tables of powers of δ hold no others. */
export function wholeFrom(lowest: number): Check {
  return (value, path, file) => {
    if (!Number.isInteger(value) || (value as number) < lowest || (value as number) > 50) {
      broken(file, path, `must be a whole number from ${lowest} to 50`);
    }
  };
}
/** A record with the keys of `shape` and no others. */
export function shaped(shape: Shape): Check {
  return (value, path, file) => {
    const record = asRecord(value, path, file);
    for (const key of Object.keys(record)) {
      if (!Object.hasOwn(shape, key)) {
        broken(file, `${path}.${key}`, `is not a known key; known are ${Object.keys(shape)}`);
      }
    }
    for (const [key, entry] of Object.entries(shape)) {
      const check = 'maybe' in entry ? entry.maybe : entry;
      if (Object.hasOwn(record, key)) check(record[key], `${path}.${key}`, file);
      else if (!('maybe' in entry)) broken(file, `${path}.${key}`, 'is missing');
    }
  };
}
/** A record whose list-valued entries must be of one length. */
export function columns(shape: Shape): Check {
  const check = shaped(shape);
  return (value, path, file) => {
    check(value, path, file);
    const lists = Object.entries(value as object).filter(([, entry]) => Array.isArray(entry));
    const lengths = new Set(lists.map(([, entry]) => (entry as unknown[]).length));
    if (lengths.size > 1) broken(file, path, `columns ${lists.map(([key]) => key)} must be of one length`);
  };
}
/** A record whose `type` decides which further keys it has. */
export function byType(kinds: Readonly<Record<string, Shape>>): Check {
  return (value, path, file) => {
    const kind = asRecord(value, path, file).type;
    const shape = typeof kind === 'string' && Object.hasOwn(kinds, kind) ? kinds[kind] : undefined;
    if (shape === undefined) broken(file, `${path}.type`, `unknown kind of term; known are ${Object.keys(kinds)}`);
    columns({ type: words, ...shape })(value, path, file);
  };
}
export function asRecord(value: unknown, path: string, file: string): Record<string, unknown> {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) broken(file, path, 'must be an object');
  return value as Record<string, unknown>;
}
