// Temperatures behind an option of the machine's commands: one, or the pair "evaporating, condensing". A number without a unit is
// taken to be in °C (or K, of a difference), and the answer says so.

import { InputError } from '../numerics/index.ts';
import { type QuantityName, readQuantity } from '../quantities/index.ts';

/** A value in base SI, and whether its unit was taken for granted. */
export interface TypedTemperature {
  readonly value: number;
  readonly isBare: boolean;
}

/** Two dew temperatures [K] as asked, with the text they were read from. */
export interface TypedPair {
  readonly text: string;
  readonly evaporating: number;
  readonly condensing: number;
  /** True where a unit was taken for granted. */
  readonly isBare: boolean;
}

type Kind = Extract<QuantityName, 'temperature' | 'temperatureDifference'>;

const unitOfBare: Readonly<Record<Kind, string>> = { temperature: '°C', temperatureDifference: 'K' };

/**
 * One temperature or difference.
 * @param option  its option, for the message: '--return-gas'
 * @param text    what was typed behind it
 * @param kind    a level, or a difference
 * @throws InputError that names the option
 */
export function temperatureOption(option: string, text: string, kind: Kind = 'temperature'): TypedTemperature {
  const isBare = bareNumber.test(text.trim());
  return { value: oneTemperature(option, text, isBare ? `${text} ${unitOfBare[kind]}` : text, kind), isBare };
}

/** A number alone, either minus sign, decimal point or comma. */
const bareNumber = /^[+\-−﹣－]?\s*(?:\d+(?:[.,]\d*)?|[.,]\d+)$/;

const pairExpected =
  'evaporating and condensing temperature, such as "-23.3, 54.4", "-10 °F, 110 °F" or "−10 °C; 45 °C"';

/**
 * "-23.3,54.4", "-10 F, 110 F", "−10 °C; 45 °C", "-23,3; 54,4". A unit behind one of them holds for both where the other has none.
 * @throws InputError that names the option
 */
export function temperaturePair(option: string, text: string): TypedPair {
  const parts = twoTexts(text);
  if (parts === undefined) throw new InputError(option, `"${text}"`, pairExpected, 'notAPair');
  const [first, second] = parts;
  const units = [first, second].filter((part) => !bareNumber.test(part)).map(unitBehind);
  const shared = units[0] ?? unitOfBare.temperature;
  const read = (part: string) =>
    oneTemperature(option, text, bareNumber.test(part) ? `${part} ${shared}` : part, 'temperature');
  const [evaporating, condensing] = [read(first), read(second)];
  if (!(condensing > evaporating)) {
    const expected = 'a condensing temperature above the evaporating one, which stands first';
    throw new InputError(option, `"${text}"`, expected, 'condensingBelowEvaporating');
  }
  return { text, evaporating, condensing, isBare: units.length === 0 };
}

/** The two texts; undefined where it is not plain where one ends. */
function twoTexts(text: string): readonly [string, string] | undefined {
  const separators = [/;/, /,\s+/, /,/, /\s+\/\s+|\//].map((each) => text.split(each));
  const pair = separators.find((parts) => parts.length > 1);
  if (pair === undefined || pair.length !== 2) return undefined;
  const [first, second] = pair.map((part) => part.trim()) as [string, string];
  return first === '' || second === '' ? undefined : [first, second];
}

function unitBehind(text: string): string {
  return text.replace(/^[+\-−﹣－]?[\s\d.,]+/, '');
}

function oneTemperature(option: string, typed: string, text: string, kind: Kind): number {
  const read = readQuantity(text, kind);
  if (!read.ok) {
    const { code, expected, nearest } = read.problem;
    const hint = nearest === undefined ? '' : `; did you mean "${nearest}"?`;
    throw new InputError(option, `"${typed}"`, `${expected}${hint}`, code);
  }
  const { low, likely, high } = read.estimate;
  if (low !== high) throw new InputError(option, `"${typed}"`, 'one value, not a range', 'rangeNotAccepted');
  return likely;
}
