// Messages of the engine are in base SI. Before a person reads one, its numbers are said in the reader's view: levels in
// °C or °F, pressures in bar or psia, four digits. For programs the message stays as it is.

import { type DesignProblem, sayProblem } from '../../design/index.ts';
import { type QuantityName, sayQuantity, type UnitView } from '../../quantities/index.ts';

const quantitiesByUnit: Readonly<Record<string, QuantityName>> = {
  Pa: 'pressure',
  'J/kg': 'enthalpy',
  'J/(kg K)': 'entropy',
  'kg/m³': 'density',
  'kg/s': 'massFlow',
  'm³': 'displacement',
  W: 'power',
};

const number = String.raw`-?\d+(?:\.\d+)?(?:e[+-]?\d+)?`;
const units = String.raw`(kg/m³|kg/s|J/\(kg K\)|J/kg|m³|Pa|K|W)(?![\w/(])`;
const withUnit = new RegExp(String.raw`(?<![\w.])(?:(${number}) to )?(${number}) ${units}`, 'g');
const outside = new RegExp(`(${number}) ${units} is outside (${number}) to (${number}) `);
/** Double precision has about 16 digits; some are lost on the way to a view. */
const mostDigitsMore = 9;

/** Below this a number of kelvins in a message is a difference: no refrigerant of this project is liquid so cold [K]. */
const coldestLevel = 80;

/** Names of the engine's own that messages carry. */
const names: readonly (readonly [string, string])[] = [['dischargeEnthalpy', 'enthalpy of the discharge gas']];

/** The message with every number that carries an SI unit said in the view. */
export function messageInView(message: string, view: UnitView): string {
  const areLevels = message.includes(' is outside ');
  const named = names.reduce((text, [name, word]) => text.replaceAll(name, word), message);
  const moreDigits = digitsToTellApart(message, view);
  const say = (value: string, unit: string) => said(Number(value), unit, view, areLevels, moreDigits);
  return named.replace(withUnit, (_, low: string | undefined, value: string, unit: string) =>
    low === undefined ? say(value, unit) : `${say(low, unit)} to ${say(value, unit)}`,
  );
}

/** A problem of a design in a sentence; what the engine found is said in the view, everything else as it was written. */
export function sayProblemInView(problem: DesignProblem, view: UnitView): string {
  const sentence = sayProblem(problem);
  return problem.engine === undefined ? sentence : messageInView(sentence, view);
}

/**
 * How many digits more than usual it takes that a value outside its limits does not read like one of them: 31 °C is outside
 * what ends at 30.98 °C, not what ends at 31 °C. None where a view cannot tell them apart.
 */
function digitsToTellApart(message: string, view: UnitView): number {
  const [, value, unit, low, high] = outside.exec(message) ?? [];
  if (value === undefined || unit === undefined) return 0;
  for (let more = 0; more <= mostDigitsMore; more++) {
    const [inWords, ...limits] = [value, low, high].map((each) => said(Number(each), unit, view, true, more));
    if (!limits.includes(inWords!)) return more;
  }
  return 0;
}

function said(value: number, unit: string, view: UnitView, isLevel: boolean, moreDigits: number): string {
  if (unit !== 'K') return sayQuantity(value, quantitiesByUnit[unit]!, view, 4 + moreDigits);
  return Math.abs(value) < coldestLevel && !isLevel
    ? sayQuantity(value, 'temperatureDifference', view, 3 + moreDigits)
    : sayQuantity(value, 'temperature', view, 3 + moreDigits);
}
