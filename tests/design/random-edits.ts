// Random texts, items and edits of designs from a seeded generator: what a person might type, often at a limit.

import {
  addItem,
  type DesignDocument,
  type EditResult,
  type FieldRecord,
  fieldsOf,
  fieldsOfItem,
  fieldsOfKind,
  itemsOf,
  type ListRecord,
  listsOf,
  moveItem,
  removeItem,
  setField,
  setKind,
} from '../../src/design/index.ts';
import { quantityUnit, toView } from '../../src/quantities/index.ts';

export interface Chance {
  /** From 0 to below 1. */
  readonly number: () => number;
  readonly pick: <Item>(list: readonly Item[]) => Item;
}

/** Linear congruential generator of Numerical Recipes: enough to choose with. */
export function chance(seed: number): Chance {
  let state = seed;
  const number = () => {
    state = (state * 1664525 + 1013904223) % 2 ** 32;
    return state / 2 ** 32;
  };
  return { number, pick: (list) => list[Math.floor(number() * list.length)]! };
}

/** A value for a field, in the unit of charts: often at a limit, sometimes a range; undefined for free text. */
export function textFor({ number, pick }: Chance, record: FieldRecord): string | undefined {
  const { quantity, minimum, maximum, choices } = record;
  if (choices !== undefined) return pick(choices).name;
  if (quantity === undefined || minimum === undefined || maximum === undefined) return undefined;
  const place = pick([0, 1, number(), number()]);
  const isWide = minimum > 0 && maximum / minimum > 100;
  const value = isWide ? minimum * (maximum / minimum) ** place : minimum + place * (maximum - minimum);
  const other = Math.min(maximum, Math.max(minimum, value * (1 + 0.2 * number())));
  const said = [value, other]
    .sort((a, b) => a - b)
    .map((each) => String(Number(toView(each, quantity, 'metric').toPrecision(7))));
  const text = number() < 0.5 ? said[0]! : `${said[0]} to ${said[1]}`;
  return `${text} ${quantityUnit(quantity, 'metric')}`.trim();
}

export interface Edit {
  readonly what: 'field' | 'kind' | 'add' | 'remove' | 'move';
  readonly path: string;
  readonly result: EditResult;
  /** Takes the edit back, where one edit can. */
  readonly back?: (document: DesignDocument) => EditResult;
}

/** One random edit of a document, made or refused. */
export function randomEdit(by: Chance, document: DesignDocument): Edit {
  const lists = listsOf(document);
  const list = by.pick(lists);
  switch (by.pick(['field', 'field', 'kind', 'add', 'add', 'remove', 'move'] as const)) {
    case 'field': {
      const { path, ...record } = by.pick(fieldsOf(document).filter(({ type }) => type !== 'kind'));
      const text =
        by.number() < 0.1 ? '' : (textFor(by, { path, ...record }) ?? `Name ${Math.floor(99 * by.number())}`);
      return { what: 'field', path, result: setField(document, path, text) };
    }
    case 'kind': {
      const { path, choices } = by.pick(fieldsOf(document).filter(({ type }) => type === 'kind'));
      const part = path.slice(0, -'.kind'.length);
      const kind = by.pick(choices!).name;
      return { what: 'kind', path, result: setKind(document, part, kind, textsFor(by, fieldsOfKind(part, kind))) };
    }
    case 'add':
      return addition(by, document, list);
    case 'remove': {
      const index = Math.floor(by.number() * (itemsOf(document, list.path).length + 0.3));
      return { what: 'remove', path: list.path, result: removeItem(document, list.path, index) };
    }
    case 'move': {
      const last = itemsOf(document, list.path).length;
      const [from, to] = [Math.floor(by.number() * last), Math.floor(by.number() * last)];
      const back = (moved: DesignDocument) => moveItem(moved, list.path, to, from);
      return { what: 'move', path: list.path, result: moveItem(document, list.path, from, to), back };
    }
  }
}

function addition(by: Chance, document: DesignDocument, { path, optional }: ListRecord): Edit {
  const kinds = fieldsOfItem(path).find((field) => field.path === `${path}.*.kind`)?.choices;
  const kind = kinds === undefined ? undefined : by.pick(kinds).name;
  const needed = fieldsOfItem(path, kind).filter((field) => !field.optional && field.part === undefined);
  const item: Record<string, string> = kind === undefined ? {} : { kind };
  for (const field of needed) {
    const key = field.path.slice(path.length + 3);
    if (key !== 'kind') item[key] = textFor(by, field) ?? `Item ${Math.floor(1e6 * by.number())}`;
  }
  const count = itemsOf(document, path).length;
  const at = Math.floor(by.number() * (count + 1));
  const isBegun = count > 0 || !optional || path === 'wrapping.measures';
  const back = isBegun ? {} : { back: (added: DesignDocument) => removeItem(added, path, at) };
  return { what: 'add', path, result: addItem(document, path, item, at), ...back };
}

function textsFor(by: Chance, fields: readonly FieldRecord[]): Readonly<Record<string, string>> {
  return Object.fromEntries(
    fields.flatMap((field) => {
      const text = field.optional || field.part !== undefined ? undefined : textFor(by, field);
      return text === undefined ? [] : [[field.path, text]];
    }),
  );
}
