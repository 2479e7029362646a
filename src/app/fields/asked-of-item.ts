// What an item of a list cannot be without.

import { type FieldRecord, fieldsOfItem } from '../../design/index.ts';
import type { LooseTexts } from './loose-field.tsx';

/** What may stay open one by one, but not all together: asked from the start. */
const oneOfThese: Readonly<Record<string, readonly string[]>> = {
  'machine.compressor.ratings': ['capacity', 'power', 'current'],
};

/**
 * The required fields of an item itself, of one kind where items have kinds; for a part within it that has kinds of its own,
 * that choice and what the chosen kind needs. Parts that are given whole or not at all can wait.
 * @param list    path of the list
 * @param kind    of the item
 * @param texts   as given so far, by path
 * @param wanted  paths of fields that were missed although they may be left out as a rule
 */
export function askedOfItem(
  list: string,
  kind?: string,
  texts: LooseTexts = {},
  wanted: readonly string[] = [],
): readonly FieldRecord[] {
  const item = `${list}.*`;
  const oneOf = (oneOfThese[list] ?? []).map((key) => `${item}.${key}`);
  return fieldsOfItem(list, kind).filter(({ path, optional, part, unionKind }) => {
    const isAsked =
      (!optional || wanted.includes(path) || oneOf.includes(path)) && part === undefined && path !== `${item}.kind`;
    const union = unionKind?.path.startsWith(`${item}.`) ? unionKind : undefined;
    return isAsked && (union === undefined || union.kinds.includes(texts[`${union.path}.kind`] ?? ''));
  });
}

/** Paths within a new item that a refusal says are missing; '*' stands for the index. */
export function missedInItem(
  list: string,
  at: number,
  problems: readonly { readonly path: string; readonly code: string }[],
): readonly string[] {
  const begin = `${list}.${at}.`;
  return problems
    .filter(({ path, code }) => code === 'missing' && path.startsWith(begin))
    .flatMap(({ path }) => {
      const inItem = `${list}.*.${path.slice(begin.length)}`;
      return [inItem, `${inItem}.kind`];
    });
}
