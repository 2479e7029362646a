// What an item of a list cannot be without.

import { type FieldRecord, fieldsOfItem } from '../../design/index.ts';

/**
 * The required fields of an item itself, of one kind where items have kinds; parts that are given whole or not at all, and what
 * only a kind of such a part needs, can wait.
 */
export function askedOfItem(list: string, kind?: string): readonly FieldRecord[] {
  const generic = list.replace(/\.\d+(?=\.|$)/g, '.*');
  return fieldsOfItem(list, kind).filter(
    ({ optional, part, type, unionKind }) =>
      !optional && part === undefined && type !== 'kind' && !unionKind?.path.startsWith(`${generic}.*.`),
  );
}
