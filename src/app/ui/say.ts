// Short names for putting values into words of the view; the rules are those of quantities/.

import {
  type Band,
  fixedDecimals,
  type QuantityName,
  quantityUnit,
  sayBand,
  sayBandParts,
  sayQuantity,
  toView,
  type UnitView,
} from '../../quantities/index.ts';

export { insideSentence, sentenceStart } from '../../quantities/index.ts';

export function say(value: number, quantity: QuantityName, view: UnitView, digits?: number): string {
  return sayQuantity(value, quantity, view, digits);
}

/** Heat that is needed: "about 370 W (320 to 420)", or that none is. */
export function sayNeed(load: Band, view: UnitView): string {
  return load.high <= 0 ? 'no heat' : sayBand(load, 'power', view);
}

/** A value with all its significant digits, trailing zeros too, for columns of exact results: "38.00 kJ/kg". */
export function sayFixed(value: number, quantity: QuantityName, view: UnitView, digits: number): string {
  const number = toView(value, quantity, view);
  const before = number === 0 ? 1 : Math.floor(Math.log10(Math.abs(number))) + 1;
  const said = fixedDecimals(number, Math.max(0, Math.min(12, digits - before)));
  const unit = quantityUnit(quantity, view);
  return unit === '' ? said : `${said}\u00a0${unit.replaceAll(' ', '\u00a0')}`;
}

/** Likely value and range as two texts, for a headline number over its range. */
export function sayParts(
  band: Band,
  quantity: QuantityName,
  view: UnitView,
  currency?: string,
): { readonly likely: string; readonly range: string | undefined } {
  return sayBandParts(band, quantity, view, currency === undefined ? {} : { currency });
}
