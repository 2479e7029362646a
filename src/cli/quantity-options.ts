// Options that hold a quantity as a person writes it ("-10 °C", "14 F", "2 bar abs", "13 psig" with an altitude), and the
// way back: an engine's complaint about one of them, in the words and units of the person.

import { messageInView } from '../assess/index.ts';
import { pressureAtAltitude } from '../matter/air/index.ts';
import { InputError, KettlefinError } from '../numerics/index.ts';
import { type QuantityName, readQuantity, sayQuantity, type UnitView } from '../quantities/index.ts';

/** One quantity that a command can be given: its option, the key of the engine's request, and what it is. */
export interface QuantityOption {
  readonly option: string;
  readonly key: string;
  readonly quantity: QuantityName;
}

/** The air pressure at the altitude given, for gauge pressures; undefined where no altitude was given [Pa]. */
export function airPressure(altitude: string | undefined): number | undefined {
  return altitude === undefined ? undefined : pressureAtAltitude(oneValue('altitude', altitude, 'altitude', undefined));
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
 * Tells a fault with the names of the options and the units of the view: its message is made anew, its code and facts stay.
 * @param error  thrown by the engine for a request made by `quantitiesGiven`, and held by nobody else
 */
export function sayInOptionWords(error: unknown, options: readonly QuantityOption[], view: UnitView): void {
  if (!(error instanceof KettlefinError)) return;
  const message = error instanceof InputError ? inputMessage(error, options, view) : error.message;
  error.message = optionNames(messageInView(message, view), options);
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

function inputMessage(
  { path, received, expected, message }: InputError,
  options: readonly QuantityOption[],
  view: UnitView,
) {
  const key = path.replace(/^given\./, '');
  const known = options.find((each) => each.key === key);
  if (known === undefined || typeof received !== 'number' || !Number.isFinite(received)) return message;
  return `${path}: ${sayQuantity(received, known.quantity, view, 4)} is not accepted; expected ${expected}`;
}

/** "given.temperature", "evaporatingPressure" -> "--temperature", "--evaporating-pressure"; plain words stay. */
function optionNames(message: string, options: readonly QuantityOption[]): string {
  return options.reduce((text, { option, key }) => {
    const isPlainWord = /^[a-z]+$/.test(key);
    const found = isPlainWord
      ? new RegExp(String.raw`^(?:given\.)?${key}(?=:| )|given\.${key}`)
      : new RegExp(String.raw`\b${key}\b`, 'g');
    return text.replace(found, `--${option}`);
  }, message);
}
