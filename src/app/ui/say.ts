// Short names for putting values into words of the view; the rules are those of quantities/.

import { type Band, type QuantityName, sayBand, sayQuantity, sayRange, type UnitView } from '../../quantities/index.ts';

export function say(value: number, quantity: QuantityName, view: UnitView, digits?: number): string {
  return sayQuantity(value, quantity, view, digits);
}

/** Likely value and range as two texts, for a headline number over its range. */
export function sayParts(
  band: Band,
  quantity: QuantityName,
  view: UnitView,
  currency?: string,
): { readonly likely: string; readonly range: string | undefined } {
  const context = currency === undefined ? {} : { currency };
  const whole = sayBand(band, quantity, view, context);
  const parts = /^about (.*) \((.*)\)$/.exec(whole);
  if (parts === null) return { likely: whole, range: undefined };
  return { likely: parts[1] ?? whole, range: sayRange(band, quantity, view, context) };
}

/** Labels of results are written as inside a sentence; this is for where one begins. */
export function sentenceStart(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
