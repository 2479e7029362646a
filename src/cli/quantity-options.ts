// Options that hold a quantity as a person writes it ("-10 °C", "14 F", "2 bar abs", "13 psig" with an altitude), and the
// way back: an engine's complaint about one of them, in the words and units of the person.

import { messageInView } from '../assess/index.ts';
import { pressureAtAltitude } from '../matter/air/index.ts';
import { InputError, type KettlefinError, OutOfModelError } from '../numerics/index.ts';
import { type QuantityName, readQuantity, sayQuantity, type UnitView } from '../quantities/index.ts';
import { errorSentence, inputSentence } from './say-error.ts';

/** One quantity that a command can be given: its option, the key of the engine's request, and what it is. */
export interface QuantityOption {
  readonly option: string;
  readonly key: string;
  readonly quantity: QuantityName;
}

/** The air pressure at the altitude given, for gauge pressures; undefined where no altitude was given [Pa]. */
export function airPressure(altitude: string | undefined): number | undefined {
  if (altitude === undefined) return undefined;
  const height = oneValue('altitude', altitude, 'altitude', undefined);
  try {
    return pressureAtAltitude(height);
  } catch (error) {
    if (!(error instanceof OutOfModelError)) throw error;
    const { low, high } = error;
    throw new InputError('--altitude', `"${altitude}"`, `an altitude from ${low} to ${high} m`, 'outOfModel');
  }
}

/** The request's numbers in base SI, by the engine's keys; options that were not given are left out. */
export function quantitiesGiven(
  options: readonly QuantityOption[],
  texts: Readonly<Record<string, string | undefined>>,
  atmosphere: number | undefined,
): Record<string, number> {
  const given: Record<string, number> = {};
  for (const { option, key, quantity } of options) {
    const text = texts[option];
    if (text !== undefined) given[key] = oneValue(option, text, quantity, atmosphere);
  }
  return given;
}

/**
 * The sentence about a fault, with the names of the options and the units of the view.
 * @param error    thrown by the engine for a request made by `quantitiesGiven`
 * @param options  those of the command
 * @param view     units of the numbers in the sentence
 * @param words    further names of the engine's own and what people call them
 */
export function sayInOptionWords(
  error: KettlefinError,
  options: readonly QuantityOption[],
  view: UnitView,
  words: Readonly<Record<string, string>> = {},
): string {
  const sentence = error instanceof InputError ? inputSaid(error, options, view) : errorSentence(error);
  const named = Object.entries(words).reduce(
    (text, [name, word]) => text.replace(new RegExp(`\\b${name}\\b`, 'g'), word),
    sentence,
  );
  return messageInView(optionNames(named, options), view);
}

function oneValue(option: string, text: string, quantity: QuantityName, atmosphere: number | undefined): number {
  const read = readQuantity(text, quantity, atmosphere === undefined ? {} : { atmosphericPressure: atmosphere });
  if (!read.ok) {
    const { code, received, expected, nearest } = read.problem;
    const hint = nearest === undefined ? '' : `; did you mean "${nearest}"?`;
    const altitude = code === 'atmosphereMissing' ? ', or the altitude with --altitude "0 m"' : '';
    throw new InputError(`--${option}`, `"${received}"`, `${expected}${altitude}${hint}`, code);
  }
  const { low, likely, high } = read.estimate;
  if (low !== high) throw new InputError(`--${option}`, `"${text}"`, 'one value, not a range', 'rangeNotAccepted');
  return likely;
}

function inputSaid(error: InputError, options: readonly QuantityOption[], view: UnitView): string {
  const { path, code } = error;
  const { received, expected } = error.facts();
  const nameKeys = code === 'bothGiven' || code === 'missing' ? everyName : (text: string) => text;
  const quantity = options.find(({ key }) => key === path.replace(/^given\./, ''))?.quantity;
  const number = received === '' ? Number.NaN : Number(received);
  const said = quantity === undefined || !Number.isFinite(number) ? received : sayQuantity(number, quantity, view, 4);
  return inputSentence(path === 'refrigerant' ? '--refrigerant' : path, said, nameKeys(expected, options), code);
}

/** The option that holds what the engine refused; its own path where no option does, undefined where it has none. */
export function optionAt(error: KettlefinError, options: readonly QuantityOption[]): string | undefined {
  if (!(error instanceof InputError)) return undefined;
  const { path } = error;
  const key = path.replace(/^given\./, '');
  if (key === 'refrigerant') return '--refrigerant';
  const option = options.find((each) => each.key === key)?.option;
  return option === undefined ? path : `--${option}`;
}

/** Keys at the head of a sentence and compound keys anywhere: "given.temperature" -> "--temperature". */
function optionNames(message: string, options: readonly QuantityOption[]): string {
  return options.reduce((text, { option, key }) => {
    const isPlainWord = /^[a-z]+$/.test(key);
    const found = isPlainWord ? `^(?:given\\.)?${key}(?=[: ])|given\\.${key}` : `\\b${key}\\b`;
    return text.replace(new RegExp(found, 'g'), `--${option}`);
  }, message);
}

/** Every word of the text that is a key. */
function everyName(text: string, options: readonly QuantityOption[]): string {
  return text.replace(/\w+/g, (word) => {
    const option = options.find(({ key }) => key === word)?.option;
    return option === undefined ? word : `--${option}`;
  });
}
