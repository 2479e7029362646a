// What people write -> an Estimate in base SI. One number, or a range in any of these forms:
//   "0.35 to 0.5", "7-9 K", "7 … 9 K"       ends; the likely value is the middle
//   "90 W ± 10 %", "90 W +- 9 W"            likely value and spread
//   "350 W (310 to 420)"                    likely value and ends, as results are printed
// Anything unclear is refused with what would be accepted; nothing is guessed.

import type { Estimate } from './estimate.ts';
import { nearestWord } from './nearest.ts';
import { leadingNumber, numberPattern, plainText } from './number-text.ts';
import { type QuantityName, type QuantityRecord, quantityRecord } from './records.ts';
import { findUnit, type Unit, type UnitFamily, unitFamilies, unitSpellings } from './units.ts';

/** What reading and printing need to know of the place. */
export interface QuantityContext {
  /** Local atmospheric pressure [Pa], for gauge pressures. */
  readonly atmosphericPressure?: number;
  /** Three letters; amounts in another currency are refused. */
  readonly currency?: string;
}

export type QuantityProblemCode =
  | 'empty'
  | 'tooLong'
  | 'notANumber'
  | 'ambiguousNumber'
  | 'notFinite'
  | 'unitMissing'
  | 'unknownUnit'
  | 'wrongUnit'
  | 'gaugeOrAbsolute'
  | 'atmosphereMissing'
  | 'otherCurrency'
  | 'lowAboveHigh'
  | 'likelyOutsideRange'
  | 'spreadUnclear'
  | 'belowAbsoluteZero'
  | 'negative'
  | 'notPositive';

/** Why a text was not understood. `expected` is a sentence part: "a length with its unit, such as 12 mm or 5/8 in". */
export interface QuantityProblem {
  readonly code: QuantityProblemCode;
  readonly received: string;
  readonly expected: string;
  /** A spelling that may have been meant. */
  readonly nearest?: string;
}

export type ReadResult =
  | { readonly ok: true; readonly estimate: Estimate; readonly unit: string }
  | { readonly ok: false; readonly problem: QuantityProblem };

const longestText = 200;

/**
 * Reads a quantity.
 * @param text      what a person wrote: "26.5C", "5/8in", "13 psig", "90 W ± 10 %"
 * @param quantity  name of a quantity record
 * @param context   atmospheric pressure for gauge pressures, currency for prices
 * @returns         the estimate in base SI, origin 'typed', and the label of the unit written; or the problem
 */
export function readQuantity(text: string, quantity: QuantityName, context: QuantityContext = {}): ReadResult {
  const reader = new Reader(quantityRecord(quantity), context, text);
  try {
    return reader.read();
  } catch (error) {
    if (error instanceof Refusal) return { ok: false, problem: error.problem };
    throw error;
  }
}

/** Carries a problem out of the nested readers; never leaves this file. */
class Refusal extends Error {
  readonly problem: QuantityProblem;

  constructor(problem: QuantityProblem) {
    super(problem.code);
    this.problem = problem;
  }
}

/** A number with the unit text beside it, which may be missing. */
interface Amount {
  readonly number: number;
  readonly unitText: string;
}

/** A unit with the factor of its currency, where there is one. */
interface Scale {
  readonly unit: Unit;
  readonly minor: number;
}

const rangeWord = /\s+to\s+|\s*\.{2,3}\s*/i;
/** The dash of an exponent, as in "9e-6 m3", stands between no two numbers. */
const dashRange = new RegExp(`^(${numberPattern}\\s*[^\\d\\s–—-]*)(?<!\\d[eE])\\s*[–—-]\\s*(${numberPattern}.*)$`);
const spreadSign = /\s*(?:±|\+\s*\/\s*-|\+-)\s*/;
const about = /^(?:about|approx\.?|ca\.?|~|≈)\s*/i;
const feetAndInches = /^(\d[\d.,]*)\s*(?:ft|feet|foot|'|′)\s*(\d[\d\s./,]*?)\s*(?:in|inch|inches|"|″|'')$/i;
const resistanceForm = /^(R|RSI)\s*[-–]?\s*(?=\d|\.)/i;
const currencyBefore = /^([A-Za-z]{3}|[€£$¥])\s*(?=[\d.,+-])/;

class Reader {
  readonly #record: QuantityRecord;
  readonly #context: QuantityContext;
  readonly #original: string;
  #label = '';

  constructor(record: QuantityRecord, context: QuantityContext, original: string) {
    this.#record = record;
    this.#context = context;
    this.#original = original;
  }

  read(): ReadResult {
    if (this.#original.length > longestText) this.#refuse('tooLong', `at most ${longestText} characters`);
    const text = plainText(this.#original);
    if (text === '') this.#refuse('empty');
    const ends = this.#readEnds(text);
    this.#check(ends);
    return { ok: true, estimate: { ...ends, origin: 'typed' }, unit: this.#label };
  }

  #readEnds(text: string): Omit<Estimate, 'origin'> {
    const bracketed = /^(.*\S)\s*\((.*)\)$/.exec(text);
    const inner = bracketed === null ? undefined : splitRange(bracketed[2]!);
    if (bracketed !== null && inner !== undefined) {
      const [likely, low, high] = this.#values([bracketed[1]!.replace(about, ''), ...inner]);
      return { low: low!, likely: likely!, high: high! };
    }
    if (about.test(text)) this.#refuse('spreadUnclear', `how far it may be off, such as ${this.#spreadExample()}`);
    const spread = text.split(spreadSign);
    if (spread.length === 2 && spread[0] !== '') return this.#readSpread(spread[0]!, spread[1]!);
    const range = splitRange(text);
    if (range !== undefined) {
      const [low, high] = this.#values(range);
      return { low: low!, likely: (low! + high!) / 2, high: high! };
    }
    const [only] = this.#values([text]);
    return { low: only!, likely: only!, high: only! };
  }

  /** SI values of texts of which some may leave the unit to the others. */
  #values(texts: readonly string[]): readonly number[] {
    const amounts = texts.map((text) => this.#amount(text));
    const shared = amounts.find(({ unitText }) => unitText !== '')?.unitText ?? '';
    return amounts.map((amount) => this.#toSi(amount, shared));
  }

  #toSi(amount: Amount, sharedUnit: string): number {
    const scale = this.#scale(amount.unitText === '' ? sharedUnit : amount.unitText, this.#record.family);
    this.#label = scale.unit.label;
    const { factor, shift, gauge } = scale.unit;
    const absolute = gauge && this.#record.family === 'pressure' ? this.#atmosphere() : 0;
    const value = (amount.number + shift) * factor * scale.minor + absolute;
    if (!Number.isFinite(value)) this.#refuse('notFinite');
    return value + 0;
  }

  #readSpread(center: string, spread: string): Omit<Estimate, 'origin'> {
    const amount = this.#amount(center);
    const width = this.#amount(spread, true);
    if (width.number < 0) this.#refuse('spreadUnclear', 'a spread of 0 or above after ±');
    const isPercent = width.unitText === '%';
    const isShare = this.#record.family === 'fraction' || this.#record.family === 'salinity';
    if (isPercent && (isShare || this.#record.family === 'temperature')) {
      this.#refuse('spreadUnclear', `both ends, such as ${isShare ? '"40 % to 60 %"' : '"25 to 27 °C"'}`);
    }
    const shared = isPercent ? amount.unitText : amount.unitText || width.unitText;
    const likely = this.#toSi({ ...amount, unitText: shared }, shared);
    const label = this.#label;
    const half = isPercent
      ? (Math.abs(likely) * width.number) / 100
      : this.#differenceToSi(width.number, width.unitText || shared);
    this.#label = label;
    return { low: likely - half, likely, high: likely + half };
  }

  /** A spread is a difference: no shift, no atmosphere. */
  #differenceToSi(number: number, unitText: string): number {
    const family = this.#record.family;
    if (family === 'temperature') {
      return number * this.#scale(unitText, 'temperatureDifference').unit.factor;
    }
    const difference = findUnit('pressureDifference', unitText);
    if ((family === 'pressure' || family === 'gaugePressure') && difference !== undefined) {
      return number * difference.factor;
    }
    const { unit, minor } = this.#scale(unitText, family);
    return number * unit.factor * minor;
  }

  /** Splits a text into number and unit; knows feet with inches, R-values and leading currencies. */
  #amount(text: string, isSpread = false): Amount {
    const family = this.#record.family;
    if (family === 'length') {
      const parts = feetAndInches.exec(text.replace(/''|″/g, '"'));
      if (parts !== null)
        return { number: 12 * this.#number(parts[1]!) + this.#number(parts[2]!.trim()), unitText: 'in' };
    }
    if (family === 'thermalResistance') {
      const form = resistanceForm.exec(text);
      if (form !== null) {
        const unitText = form[1]!.toUpperCase() === 'R' ? 'R (US)' : 'RSI';
        return { number: this.#number(text.slice(form[0].length)), unitText };
      }
    }
    let body = text;
    let currency = '';
    if (family === 'money' || family === 'energyPrice') {
      const before = currencyBefore.exec(text);
      if (before !== null) {
        currency = before[1]!;
        body = text.slice(before[0].length);
      }
    }
    const found = leadingNumber(body);
    if (!found.ok) {
      if (found.code === 'ambiguousNumber') this.#refuse('ambiguousNumber', numberAdvice);
      if (found.code === 'notFinite') this.#refuse('notFinite', 'a number that is not so large');
      if (isSpread) this.#refuse('spreadUnclear', this.#spreadExample());
      this.#refuse('notANumber');
    }
    return { number: found.value, unitText: currency + found.rest };
  }

  #number(text: string): number {
    const found = leadingNumber(text);
    if (found.ok && found.rest === '') return found.value;
    if (!found.ok && found.code === 'ambiguousNumber') this.#refuse('ambiguousNumber', numberAdvice);
    return this.#refuse('notANumber');
  }

  #scale(unitText: string, family: UnitFamily): Scale {
    if (family === 'money' || family === 'energyPrice') return this.#priceScale(unitText, family);
    if (unitText === '') {
      if (!this.#record.bare) this.#refuse('unitMissing');
      return { unit: findUnit(family, '')!, minor: 1 };
    }
    const unit = findUnit(family, unitText);
    if (unit !== undefined) return { unit, minor: 1 };
    if (/^psi$/i.test(unitText) && family === 'pressure') {
      this.#refuse('gaugeOrAbsolute', 'psig (above the atmosphere) or psia (absolute)');
    }
    return this.#refuseUnit(unitText, family);
  }

  /** "EUR/kWh", "ct/kWh", "$", "/kWh": the currency is checked, the rest is the unit. */
  #priceScale(unitText: string, family: 'money' | 'energyPrice'): Scale {
    const parts = /^([^/]*?)\s*((?:\/|\bper\b).*)?$/i.exec(unitText);
    const currencyText = parts?.[1]?.trim() ?? '';
    const perText = parts?.[2] ?? '';
    if (family === 'energyPrice' && perText === '') {
      return this.#refuse(unitText === '' || currencyMinor(currencyText) !== undefined ? 'unitMissing' : 'unknownUnit');
    }
    const unit = findUnit(family, perText.replace(/^per\b/i, '/'));
    if (unit === undefined) return this.#refuseUnit(unitText, family);
    if (currencyText === '') return { unit, minor: 1 };
    const minor = currencyMinor(currencyText);
    if (minor === undefined || findUnit('energy', currencyText) !== undefined) {
      return this.#refuseUnit(unitText, family);
    }
    const currency = this.#context.currency;
    if (currency !== undefined && !currencyFits(currencyText, currency)) {
      this.#refuse('otherCurrency', `an amount in ${currency}, the currency of the design`);
    }
    return { unit, minor };
  }

  #atmosphere(): number {
    const pressure = this.#context.atmosphericPressure;
    if (pressure !== undefined) return pressure;
    return this.#refuse('atmosphereMissing', 'an absolute pressure here, such as 2.3 bar or 33 psia');
  }

  #check({ low, likely, high }: Omit<Estimate, 'origin'>): void {
    if (low > high) this.#refuse('lowAboveHigh', 'the lower end first, such as "0.35 to 0.5"');
    if (likely < low || likely > high) this.#refuse('likelyOutsideRange', 'a value between the two ends in brackets');
    const { sign, family, description } = this.#record;
    if (family === 'temperature' && low <= 0) this.#refuse('belowAbsoluteZero', 'a temperature above −273.15 °C');
    if (sign === 'positive' && low <= 0) this.#refuse('notPositive', `${article(description)} ${description} above 0`);
    if (sign === 'nonNegative' && low < 0) this.#refuse('negative', `${description}: 0 or above`);
  }

  #refuseUnit(unitText: string, family: UnitFamily): never {
    const elsewhere = (Object.keys(unitFamilies) as UnitFamily[]).some(
      (other) => other !== family && findUnit(other, unitText) !== undefined,
    );
    const nearest = elsewhere ? undefined : nearestWord(unitText, unitSpellings(family));
    throw new Refusal({
      code: elsewhere ? 'wrongUnit' : 'unknownUnit',
      received: this.#original,
      expected: this.#accepted(),
      ...(nearest === undefined ? {} : { nearest }),
    });
  }

  #refuse(code: QuantityProblemCode, expected = this.#accepted()): never {
    const shown = this.#original.length > longestText ? `${this.#original.slice(0, 40)}…` : this.#original;
    throw new Refusal({ code, received: shown, expected });
  }

  #accepted(): string {
    return acceptedWords(this.#record);
  }

  #spreadExample(): string {
    return `"${this.#record.examples[0].replace(/ to .*| ±.*/, '')} ± …", or both ends: "… to …"`;
  }
}

const numberAdvice = 'a number with one decimal point or comma and no thousands separator, such as 1234.5';

/** "length: a number with its unit (mm, cm, m, in, ft …), such as 12 mm or 5/8 in". */
export function acceptedWords(record: QuantityRecord): string {
  const [first, second] = record.examples;
  const units = unitFamilies[record.family].map((entry: Unit) => entry.label).filter((label) => label !== '');
  const withUnit =
    record.family === 'money' || record.family === 'pure'
      ? 'a number'
      : `a number${record.bare ? ', or one' : ''} with its unit (${units.slice(0, 8).join(', ')}${units.length > 8 ? ' …' : ''})`;
  return `${record.description}: ${withUnit}, such as ${first} or ${second}`;
}

function article(noun: string): string {
  return /^[aeiou]/.test(noun) ? 'an' : 'a';
}

function splitRange(text: string): readonly [string, string] | undefined {
  const parts = text.split(rangeWord);
  if (parts.length === 2 && parts[0] !== '' && parts[1] !== '') return [parts[0]!, parts[1]!];
  if (/^[+-]?\d+-\d+\/\d+/.test(text)) return undefined;
  const dashed = dashRange.exec(text);
  return dashed === null ? undefined : [dashed[1]!.trim(), dashed[2]!];
}

/** 1 for a currency, 0.01 for its hundredth, undefined for anything that is neither. */
function currencyMinor(text: string): number | undefined {
  if (/^(?:ct|c|cents?|¢|p|pence)$/i.test(text)) return 0.01;
  return /^(?:[A-Za-z]{3}|[€£$¥])$/.test(text) ? 1 : undefined;
}

function currencyFits(text: string, currency: string): boolean {
  if (text === '€') return currency === 'EUR';
  if (text === '£' || /^(?:p|pence)$/i.test(text)) return currency === 'GBP';
  if (text === '¥') return currency === 'JPY' || currency === 'CNY';
  if (text === '$') return currency.endsWith('D');
  if (currencyMinor(text) === 0.01) return true;
  return text.toUpperCase() === currency;
}
