// Base SI -> what people read: a number of few digits with its unit in the metric or the US view, and ranges.
// What is printed here can be typed back: readQuantity understands it. No-break spaces keep number and unit together.

import { requireFinite } from '../numerics/index.ts';
import type { Band } from './estimate.ts';
import type { QuantityContext } from './read.ts';
import {
  chartUnit,
  type QuantityName,
  type QuantityRecord,
  quantityRecord,
  type UnitView,
  viewUnit,
} from './records.ts';
import { findUnit, type Unit } from './units.ts';

const noBreakSpace = '\u00a0';
const thinNoBreakSpace = '\u202f';

/**
 * One value with its unit: "26.5 °C", "350 W", "R-6.2".
 * @param value     in base SI
 * @param quantity  what it is a number of
 * @param view      which units
 * @param digits    significant digits; for temperature levels decimals plus two. Absent: as in the quantity's record
 * @param context   currency, and the air pressure that gauge pressures count from
 */
export function sayQuantity(
  value: number,
  quantity: QuantityName,
  view: UnitView,
  digits?: number,
  context: QuantityContext = {},
): string {
  requireFinite(quantity, value);
  const record = quantityRecord(quantity);
  const unit = sayUnit(record, view, value, context);
  const number = fromSi(value, unit, atmosphereUnder(record, unit, context));
  // Close to the largest number of double precision a smaller unit has no number any more.
  if (!Number.isFinite(number)) return `${exponentForm(value, digits ?? record.digits)}${noBreakSpace}${record.unit}`;
  return withUnit(sayNumber(record, number, digits ?? record.digits), unit, record, context);
}

/** "about 350 W (310 to 420)"; one value where the ends are not told apart at the digits shown. */
export function sayBand(band: Band, quantity: QuantityName, view: UnitView, context: QuantityContext = {}): string {
  const said = bandParts(band, quantity, view, context);
  if (said.low === said.high) return said.complete(said.likely);
  return `about ${said.complete(said.likely)} (${said.low} to ${said.high})`;
}

/** Likely value and range as two texts: "350 W" over "310 to 420 W"; no range where the ends are not told apart. */
export function sayBandParts(
  band: Band,
  quantity: QuantityName,
  view: UnitView,
  context: QuantityContext = {},
): { readonly likely: string; readonly range: string | undefined } {
  const said = bandParts(band, quantity, view, context);
  const likely = said.complete(said.likely);
  return { likely, range: said.low === said.high ? undefined : sayRange(band, quantity, view, context) };
}

/** "310 to 420 W". */
export function sayRange(band: Band, quantity: QuantityName, view: UnitView, context: QuantityContext = {}): string {
  const said = bandParts(band, quantity, view, context);
  if (said.low === said.high) return said.complete(said.likely);
  const prefix = said.unit.prefix;
  const low = prefix === undefined ? said.low : `${prefix}${said.low}`;
  return `${low} to ${said.complete(said.high)}`;
}

/** Unit label of axes and table heads: "°C", "BTU/h"; "1" for a pure number stays empty. */
export function quantityUnit(quantity: QuantityName, view: UnitView, context: QuantityContext = {}): string {
  const record = quantityRecord(quantity);
  return priceLabel(chartUnit(record, view), record, context);
}

/** SI value -> number in the unit that quantityUnit names. */
export function toView(value: number, quantity: QuantityName, view: UnitView): number {
  return fromSi(value, chartUnit(quantityRecord(quantity), view), 0);
}

/** Number in the unit that quantityUnit names -> SI value. */
export function fromView(value: number, quantity: QuantityName, view: UnitView): number {
  const unit = chartUnit(quantityRecord(quantity), view);
  return (value + unit.shift) * unit.factor;
}

/** A number with that many significant digits, without trailing zeros and never "-0"; thin spaces from five digits on. */
export function formatNumber(value: number, digits: number): string {
  requireFinite('number', value);
  if (value === 0) return '0';
  const size = Math.abs(value);
  if (size >= 1e9 || size < 1e-5) return exponentForm(value, digits);
  return fixedForm(Number(value.toPrecision(digits)));
}

/** A number with that many decimals, for columns: trailing zeros, a true minus sign and never "−0.0". */
export function fixedDecimals(value: number, decimals: number): string {
  requireFinite('number', value);
  const digits = value.toFixed(decimals);
  return Number(digits) === 0 ? digits.replace('-', '') : digits.replace('-', '−');
}

interface BandParts {
  readonly low: string;
  readonly likely: string;
  readonly high: string;
  readonly unit: Unit;
  readonly complete: (number: string) => string;
}

function bandParts(band: Band, quantity: QuantityName, view: UnitView, context: QuantityContext): BandParts {
  for (const end of [band.low, band.likely, band.high]) requireFinite(quantity, end);
  const record = quantityRecord(quantity);
  const unit = sayUnit(record, view, Math.max(Math.abs(band.likely), Math.abs(band.high) / 3), context);
  const atmosphere = atmosphereUnder(record, unit, context);
  const low = fromSi(band.low, unit, atmosphere);
  const likely = fromSi(band.likely, unit, atmosphere);
  const high = fromSi(band.high, unit, atmosphere);
  const step = bandStep(low, high, record);
  const complete = (number: string) => withUnit(number, unit, record, context);
  if (step === undefined) {
    const only = sayNumber(record, likely, record.digits);
    return { low: only, likely: only, high: only, unit, complete };
  }
  const decimals = Math.max(0, -Math.floor(Math.log10(step) + 1e-9));
  const say = (value: number) => withDecimals(roundTo(value, step), decimals);
  return { low: say(low), likely: say(likely), high: say(high), unit, complete };
}

/** Rounding step: two significant digits of the larger end, finer where the range is narrow. Undefined: no range. */
function bandStep(low: number, high: number, record: QuantityRecord): number | undefined {
  const spread = high - low;
  const size = Math.max(Math.abs(low), Math.abs(high));
  if (spread <= size * 1e-9) return undefined;
  const byWidth = 10 ** Math.floor(Math.log10(spread / 2));
  const bySize = 10 ** (Math.floor(Math.log10(size)) - 1);
  return record.family === 'temperature' ? Math.min(byWidth, 1) : Math.min(byWidth, bySize);
}

function sayUnit(record: QuantityRecord, view: UnitView, value: number, context: QuantityContext): Unit {
  if (record.name === 'pressure' && view === 'us' && context.atmosphericPressure !== undefined) {
    return findUnit('pressure', 'psig')!;
  }
  return viewUnit(record, view, value);
}

function fromSi(value: number, unit: Unit, atmosphere: number): number {
  return (value - atmosphere) / unit.factor - unit.shift;
}

/** What an absolute pressure loses when it is printed as gauge pressure [Pa]. */
function atmosphereUnder(record: QuantityRecord, unit: Unit, context: QuantityContext): number {
  return unit.gauge && record.name === 'pressure' ? (context.atmosphericPressure ?? 0) : 0;
}

function sayNumber(record: QuantityRecord, value: number, digits: number): string {
  if (record.family !== 'temperature') return formatNumber(value, digits);
  return fixedForm(Number(value.toFixed(Math.max(0, digits - 2))));
}

function withUnit(number: string, unit: Unit, record: QuantityRecord, context: QuantityContext): string {
  if (unit.prefix !== undefined) return `${unit.prefix}${number}`;
  const label = priceLabel(unit, record, context);
  if (label === '') return number;
  return label.startsWith('/') ? `${number}${label}` : `${number}${noBreakSpace}${label.replaceAll(' ', noBreakSpace)}`;
}

function priceLabel(unit: Unit, record: QuantityRecord, context: QuantityContext): string {
  const isPrice = record.family === 'energyPrice' || record.family === 'money';
  return isPrice && context.currency !== undefined ? `${context.currency}${unit.label}` : unit.label;
}

function roundTo(value: number, step: number): number {
  const decimals = Math.max(0, -Math.floor(Math.log10(step) + 1e-9));
  return Number((Math.round(value / step) * step).toFixed(decimals));
}

/** Plain digits with a true minus sign; JavaScript's shortest form, grouped by thin spaces from five digits on. */
function fixedForm(value: number): string {
  if (value === 0) return '0';
  const size = Math.abs(value);
  if (size >= 1e15 || size < 1e-6) return exponentForm(value, 15);
  const [whole, decimals] = String(size).split('.');
  const grouped = whole!.length < 5 ? whole! : whole!.replace(/\B(?=(\d{3})+$)/g, thinNoBreakSpace);
  return `${value < 0 ? '−' : ''}${grouped}${decimals === undefined ? '' : `.${decimals}`}`;
}

/** The same decimals for every number of a range: "3.0 (2.3 to 3.7)". */
function withDecimals(value: number, decimals: number): string {
  const shortest = fixedForm(value);
  if (decimals === 0 || shortest.includes('e')) return shortest;
  const [whole, present = ''] = shortest.split('.');
  return `${whole}.${present.padEnd(decimals, '0')}`;
}

function exponentForm(value: number, digits: number): string {
  const written = value.toExponential(digits - 1);
  // Rounded up, the largest numbers of double precision are numbers no more, and stay as they are written.
  const shortest = Number(written);
  return (Number.isFinite(shortest) ? String(shortest) : written)
    .replace('-', value < 0 ? '−' : '-')
    .replace('e+', 'e');
}
