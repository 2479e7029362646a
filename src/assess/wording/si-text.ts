// Messages of the engine are in base SI. Before a person reads one, its numbers are said in the reader's view: levels in
// °C or °F, pressures in bar or psia, four digits. For programs the message stays as it is.

import { type QuantityName, sayQuantity, type UnitView } from '../../quantities/index.ts';

const quantitiesByUnit: Readonly<Record<string, QuantityName>> = {
  Pa: 'pressure',
  'J/kg': 'enthalpy',
  'J/(kg K)': 'entropy',
  'kg/m³': 'density',
  'm³': 'displacement',
  W: 'power',
};

const number = String.raw`-?\d+(?:\.\d+)?(?:e[+-]?\d+)?`;
const withUnit = new RegExp(
  String.raw`(?<![\w.])(?:(${number}) to )?(${number}) (kg/m³|J/\(kg K\)|J/kg|m³|Pa|K|W)(?![\w/(])`,
  'g',
);

/** Below this a number of kelvins in a message is a difference: no refrigerant of this project is liquid so cold [K]. */
const coldestLevel = 80;

/** Names of the engine's own that messages carry. */
const names: readonly (readonly [string, string])[] = [['dischargeEnthalpy', 'enthalpy of the discharge gas']];

/** The message with every number that carries an SI unit said in the view. */
export function messageInView(message: string, view: UnitView): string {
  const areLevels = message.includes(' is outside ');
  const named = names.reduce((text, [name, word]) => text.replaceAll(name, word), message);
  return named.replace(withUnit, (_, low: string | undefined, value: string, unit: string) => {
    const last = said(Number(value), unit, view, areLevels);
    return low === undefined ? last : `${said(Number(low), unit, view, areLevels)} to ${last}`;
  });
}

function said(value: number, unit: string, view: UnitView, isLevel: boolean): string {
  if (unit !== 'K') return sayQuantity(value, quantitiesByUnit[unit]!, view, 4);
  return Math.abs(value) < coldestLevel && !isLevel
    ? sayQuantity(value, 'temperatureDifference', view, 3)
    : sayQuantity(value, 'temperature', view, 3);
}
