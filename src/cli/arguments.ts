// Arguments of a command: which options it has, and what was given. Everything unclear is refused with what is accepted: an
// unknown option with the nearest one, an option given twice, a value left out. A value may begin with a minus sign and a
// digit ("-10 °C"), which Node's own reader would take for an option.

import { parseArgs } from 'node:util';
import { InputError } from '../numerics/index.ts';
import { nearestWord, type UnitView } from '../quantities/index.ts';

/** `text`: an option with a value. `list`: the same, as often as wanted. `flag`: an option without. */
export type OptionKinds = Readonly<Record<string, 'text' | 'list' | 'flag'>>;

export interface Arguments<Kinds extends OptionKinds> {
  /** Values of the text options that were given. */
  readonly texts: Readonly<Partial<Record<NamesOf<Kinds, 'text'>, string>>>;
  /** Values of the list options in the order they were given; empty where none was. */
  readonly lists: Readonly<Record<NamesOf<Kinds, 'list'>, readonly string[]>>;
  readonly flags: Readonly<Record<NamesOf<Kinds, 'flag'>, boolean>>;
  readonly positionals: readonly string[];
}

type NamesOf<Kinds extends OptionKinds, Kind> = {
  [Name in keyof Kinds]: Kinds[Name] extends Kind ? Name : never;
}[keyof Kinds];

/** @throws InputError 'unknownOption', 'optionTwice', 'valueMissing', 'valueOfFlag' */
export function readArguments<const Kinds extends OptionKinds>(
  args: readonly string[],
  kinds: Kinds,
): Arguments<Kinds> {
  const { tokens } = parseArgs({
    args: joinNegativeValues(args, kinds),
    strict: false,
    allowPositionals: true,
    tokens: true,
    options: Object.fromEntries(
      Object.entries(kinds).map(([name, kind]) => [name, { type: kind === 'flag' ? 'boolean' : 'string' }] as const),
    ),
  });
  const texts: Record<string, string> = {};
  const ofKind = (kind: OptionKinds[string]) => Object.keys(kinds).filter((name) => kinds[name] === kind);
  const lists: Record<string, string[]> = Object.fromEntries(ofKind('list').map((name) => [name, []]));
  const flags: Record<string, boolean> = Object.fromEntries(ofKind('flag').map((name) => [name, false]));
  const positionals: string[] = [];
  for (const token of tokens) {
    if (token.kind === 'positional') positionals.push(token.value);
    if (token.kind !== 'option') continue;
    const { name, rawName, value } = token;
    const kind = Object.hasOwn(kinds, name) && rawName.startsWith('--') ? kinds[name] : undefined;
    if (kind === undefined) throw unknownOption(rawName, kinds);
    if (flags[name] === true || texts[name] !== undefined) {
      throw new InputError(rawName, 'given twice', 'each option once', 'optionTwice');
    }
    if (kind === 'flag') {
      if (value !== undefined) throw new InputError(rawName, value, 'this option without a value', 'valueOfFlag');
      flags[name] = true;
    } else {
      if (value === undefined || isKnownOption(value, kinds)) {
        throw new InputError(rawName, 'nothing', `a value after ${rawName}`, 'valueMissing');
      }
      if (kind === 'list') lists[name]!.push(value);
      else texts[name] = value;
    }
  }
  return { texts, lists, flags, positionals } as unknown as Arguments<Kinds>;
}

/** The one design file of a command. */
export function oneFile(positionals: readonly string[]): string {
  const [file, ...more] = positionals;
  const expected = 'the path of one design file, or - for standard input';
  if (file === undefined) throw new InputError('FILE', 'nothing', expected, 'missing');
  if (more.length > 0) throw new InputError('FILE', `"${more.join(' ')}"`, expected, 'tooMany');
  if (file === '') throw new InputError('FILE', '""', expected, 'missing');
  return file;
}

/** Refuses anything that is not an option. */
export function noPositionals(positionals: readonly string[]): void {
  const [first] = positionals;
  if (first !== undefined) throw new InputError('arguments', `"${first}"`, 'options only', 'tooMany');
}

/** Refuses what a batch cannot heed: each of its lines is a whole request. */
export function requireBatchAlone(
  texts: Readonly<Record<string, string | undefined>>,
  flags: Readonly<Record<string, boolean>>,
): void {
  const others = Object.keys(flags).filter((name) => name !== 'batch' && flags[name]);
  if (others.length === 0 && Object.keys(texts).length === 0) return;
  throw new InputError('--batch', 'other options', '--batch alone: each line is a whole request', 'bothGiven');
}

/** The refrigerant named; whether anybody knows it is for the engine to say. */
export function refrigerantGiven({ refrigerant }: { readonly refrigerant?: string }): string {
  if (refrigerant !== undefined) return refrigerant;
  throw new InputError('--refrigerant', 'nothing', 'the name of a refrigerant, such as R134a', 'missing');
}

/** The view that people asked for; metric where they did not. */
export function unitView(word: string | undefined): UnitView {
  if (word === undefined) return 'metric';
  if (word === 'metric' || word === 'us') return word;
  throw new InputError('--units', word, 'metric or us', 'unknownChoice');
}

function unknownOption(rawName: string, kinds: OptionKinds): InputError {
  const known = [...Object.keys(kinds), 'help'].map((name) => `--${name}`);
  const nearest = nearestWord(rawName, known);
  const hint = nearest === undefined ? '' : ` Did you mean ${nearest}?`;
  return new InputError(rawName, 'this option', `one of ${known.join(', ')}.${hint}`, 'unknownOption');
}

function takesValue(kinds: OptionKinds, name: string): boolean {
  return Object.hasOwn(kinds, name) && kinds[name] !== 'flag';
}

function isKnownOption(value: string, kinds: OptionKinds): boolean {
  return value.startsWith('--') && Object.hasOwn(kinds, value.slice(2).split('=')[0]!);
}

/** "--evaporating", "-10 °C" -> "--evaporating=-10 °C". */
function joinNegativeValues(args: readonly string[], kinds: OptionKinds): string[] {
  const joined: string[] = [];
  let areOptions = true;
  for (const arg of args) {
    const before = joined.at(-1) ?? '';
    areOptions &&= arg !== '--';
    const isWaiting = before.startsWith('--') && takesValue(kinds, before.slice(2));
    if (areOptions && isWaiting && /^-\s*[\d.]/.test(arg)) joined[joined.length - 1] = `${before}=${arg}`;
    else joined.push(arg);
  }
  return joined;
}
