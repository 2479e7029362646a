// Numbers as people write them: decimal point or comma, fractions ("5/8", "1 1/2", "1½"), exponents, either minus sign.
// A comma before exactly three digits ("1,234") may be thousands or decimals: refused, never guessed.

/** One number at the beginning of a text, and what follows it. */
export type LeadingNumber =
  | { readonly ok: true; readonly value: number; readonly rest: string }
  | { readonly ok: false; readonly code: 'notANumber' | 'ambiguousNumber' | 'notFinite' };

const vulgarFractions: Readonly<Record<string, string>> = {
  '½': '1/2',
  '¼': '1/4',
  '¾': '3/4',
  '⅓': '1/3',
  '⅔': '2/3',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
};

/** Pattern of one number, for splitting ranges. */
export const numberPattern = String.raw`[+-]?(?:\d+(?:\s+|-)\d+\/\d+|\d+\/\d+|(?:\d[\d.,]*|[.,]\d+)(?:[eE][+-]?\d+)?)`;

const mixed = /^([+-]?)(\d+)(?:\s+|-)(\d+)\/(\d+)/;
const fraction = /^([+-]?)(\d+)\/(\d+)/;
const decimal = /^[+-]?(?:\d[\d.,]*|[.,]\d+)(?:[eE][+-]?\d+)?/;

/** One way of writing blanks, minus signs, fractions and dots. */
export function plainText(text: string): string {
  return text
    .replace(/(\d?)([½¼¾⅓⅔⅛⅜⅝⅞])/g, (_, digit: string, sign: string) =>
      digit === '' ? vulgarFractions[sign]! : `${digit} ${vulgarFractions[sign]}`,
    )
    .replace(/(?<=\d)[\u2009\u202f](?=\d{3}(?!\d))/g, '')
    .replace(/[−﹣－]/g, '-')
    .replace(/…/g, '...')
    .replace(/\s+/g, ' ')
    .trim();
}

/** The number a text begins with. `text` has gone through plainText. */
export function leadingNumber(text: string): LeadingNumber {
  const asMixed = mixed.exec(text);
  if (asMixed !== null) {
    const [all, sign, whole, top, bottom] = asMixed;
    return finish(sign === '-' ? -1 : 1, Number(whole) + Number(top) / Number(bottom), text.slice(all.length));
  }
  const asFraction = fraction.exec(text);
  if (asFraction !== null) {
    const [all, sign, top, bottom] = asFraction;
    return finish(sign === '-' ? -1 : 1, Number(top) / Number(bottom), text.slice(all.length));
  }
  const asDecimal = decimal.exec(text);
  if (asDecimal === null) return { ok: false, code: 'notANumber' };
  return decimalNumber(asDecimal[0], text.slice(asDecimal[0].length));
}

function decimalNumber(digits: string, rest: string): LeadingNumber {
  const mantissa = digits.replace(/[eE].*$/, '');
  const separators = mantissa.replace(/[^.,]/g, '');
  if (separators.length > 1) return { ok: false, code: 'ambiguousNumber' };
  if (/^[+-]?[1-9]\d{0,2},\d{3}$/.test(mantissa)) return { ok: false, code: 'ambiguousNumber' };
  if (/^\s*\d(?!\/[a-z])/.test(rest)) return { ok: false, code: 'ambiguousNumber' };
  return finish(1, Number(digits.replace(',', '.')), rest);
}

function finish(sign: number, size: number, rest: string): LeadingNumber {
  if (!Number.isFinite(size)) return { ok: false, code: 'notFinite' };
  // Adding zero turns -0 into 0.
  return { ok: true, value: sign * size + 0, rest: rest.trim() };
}
