// Fixed sentences of the engine (what to do, where a rule comes from) carry a few numbers in °C, K and W/K. Before a person
// reads one, they are said in the reader's view; for programs the sentence stays as it is.

import { type QuantityName, sayQuantity, type UnitView } from '../../quantities/index.ts';

interface WrittenUnit {
  readonly quantity: QuantityName;
  readonly toSi: (value: number) => number;
}

const units: Readonly<Record<string, WrittenUnit>> = {
  '°C': { quantity: 'temperature', toSi: (value) => value + 273.15 },
  K: { quantity: 'temperatureDifference', toSi: (value) => value },
  'W/K': { quantity: 'thermalConductance', toSi: (value) => value },
};

const number = String.raw`\d+(?:\.\d+)?`;
const withUnit = new RegExp(String.raw`(?:(${number}) to )?(${number}) (°C|W/K|K)(?![\w/])`, 'g');

/** The sentence with each of its numbers said in the view; two digits, since none of them is known better. */
export function textInView(text: string, view: UnitView): string {
  if (view === 'metric') return text;
  return text.replace(withUnit, (_, low: string | undefined, value: string, unit: string) => {
    const { quantity, toSi } = units[unit]!;
    const said = (digits: string) => sayQuantity(toSi(Number(digits)), quantity, view, 2);
    return low === undefined ? said(value) : `${said(low)} to ${said(value)}`;
  });
}
