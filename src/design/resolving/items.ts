// Lists -> resolved, item by item.

import type { Resolver } from './resolver.ts';

/** Every item of a list, by its path. */
export function resolveItems<Item>(take: Resolver, list: string, resolve: (path: string) => Item): readonly Item[] {
  return Array.from({ length: take.itemsIn(list) }, (_, index) => resolve(`${list}.${index}`));
}
