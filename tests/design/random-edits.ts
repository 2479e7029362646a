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
  if (record.lines === true) return linesFor({ number, pick }, record.path);
  const ends = quantity === 'temperature' ? likelyTemperatures[record.path.split('.').at(-1)!] : undefined;
  if (ends !== undefined && number() < 0.8) {
    const range = record.path.endsWith('Range');
    const [low, high] = range ? ends : [ends[0] + number() * (ends[1] - ends[0])];
    return high === undefined ? `${low!.toFixed(1)} °C` : `${low} to ${high} °C`;
  }
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

/** Temperatures that mostly go together, by the field of a rating, a sheet or a measurement [°C]. */
const likelyTemperatures: Readonly<Record<string, readonly [number, number]>> = {
  evaporating: [-35, -5],
  evaporatingRange: [-35, -5],
  condensing: [38, 60],
  condensingRange: [38, 60],
  returnGas: [0, 35],
  suction: [0, 35],
  liquid: [10, 38],
  discharge: [60, 110],
};

/** Ten numbers, or a table of a few points; one in six that cannot be read. */
function linesFor({ number, pick }: Chance, path: string): string {
  const spoiled = number() < 1 / 6;
  if (path.endsWith('.values')) {
    const separator = pick([' ', '\n', '; ', '\t']);
    return Array.from({ length: spoiled ? 9 : 10 }, () => (200 * number() - 100).toPrecision(5)).join(separator);
  }
  const head = pick(['Te [°C]\tTc [°C]\tP [W]', 'te C;tc C;power W']);
  const separator = head.includes(';') ? ';' : '\t';
  const rows = Array.from({ length: 1 + Math.floor(4 * number()) }, () =>
    [-30 * number(), 40 + 20 * number(), spoiled ? 'many' : 80 + 200 * number()]
      .map((cell) => (typeof cell === 'string' ? cell : cell.toFixed(1)))
      .join(separator),
  );
  const gas = number() < 0.5 ? ['', ''] : [`${separator}superheat [K]`, `${separator}11`];
  return [head + gas[0], ...rows.map((row) => row + gas[1])].join('\n');
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
  const item = newItem(by, path, kind);
  const count = itemsOf(document, path).length;
  const at = Math.floor(by.number() * (count + 1));
  const isBegun = count > 0 || !optional || path === 'wrapping.measures';
  const back = isBegun ? {} : { back: (added: DesignDocument) => removeItem(added, path, at) };
  return { what: 'add', path, result: addItem(document, path, item, at), ...back };
}

/** What the item cannot be without, each part within it of a random kind; now and then more. */
function newItem(by: Chance, list: string, kind: string | undefined): Readonly<Record<string, unknown>> {
  const begin = `${list}.*`;
  const kinds: Record<string, string> = kind === undefined ? {} : { [begin]: kind };
  let item: Readonly<Record<string, unknown>> = kind === undefined ? {} : { kind };
  for (const field of fieldsOfItem(list, kind)) {
    const { path, optional, part, unionKind } = field;
    const isOfChosen = unionKind === undefined || !unionKind.path.startsWith(begin);
    const isPresent = isOfChosen || unionKind.kinds.includes(kinds[unionKind.path] ?? '');
    const isWanted = !optional || by.number() < 0.3;
    if (path === `${begin}.kind` || part !== undefined || !isPresent || !isWanted) continue;
    const text = textFor(by, field) ?? `Item ${Math.floor(1e6 * by.number())}`;
    if (field.type === 'kind') kinds[path.slice(0, -'.kind'.length)] = text;
    item = withText(item, path.slice(begin.length + 1).split('.'), text);
  }
  return item;
}

function withText(part: Readonly<Record<string, unknown>>, [key, ...rest]: readonly string[], text: string) {
  const inner = (part[key!] ?? {}) as Readonly<Record<string, unknown>>;
  const value: unknown = rest.length === 0 ? text : withText(inner, rest, text);
  return { ...part, [key!]: value };
}

function textsFor(by: Chance, fields: readonly FieldRecord[]): Readonly<Record<string, string>> {
  return Object.fromEntries(
    fields.flatMap((field) => {
      const text = field.optional || field.part !== undefined ? undefined : textFor(by, field);
      return text === undefined ? [] : [[field.path, text]];
    }),
  );
}
