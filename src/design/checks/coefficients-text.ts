// Ten coefficients as people paste them: in a line or a column, with their names C1 to C10 or without, with decimal points or
// decimal commas. Anything that can be read in two ways is refused.

import type { DesignProblem } from '../problems.ts';

export type CoefficientsRead =
  | { readonly ok: true; readonly numbers: readonly number[] }
  | { readonly ok: false; readonly problem: Pick<DesignProblem, 'code' | 'received' | 'expected'> };

const howMany = 10;
const tenNumbers =
  'ten numbers, C1 to C10, with blanks, semicolons or new lines between them, such as 1.2e3 4.5 -6.7e-2 …';

/** The ten numbers of a text, or why they are none. */
export function readCoefficients(text: string): CoefficientsRead {
  const plain = text.replace(/[−﹣－]/g, '-').replace(/\bC(?:10|[1-9])\b(?![.,])\s*[:=]?/gi, ' ');
  const words = wordsOf(plain);
  const wrong = words.find((word) => !/^[+-]?(?:\d+(?:[.,]\d*)?|[.,]\d+)(?:[eE][+-]?\d+)?$/.test(word));
  if (wrong !== undefined) return refused('notANumber', wrong.slice(0, 40), tenNumbers);
  if (words.length !== howMany) return refused('notTenNumbers', `${words.length} numbers`, tenNumbers);
  const withComma = words.filter((word) => word.includes(','));
  const mayBeThousands = withComma.length > 0 && withComma.every((word) => /^[+-]?[1-9]\d{0,2},\d{3}$/.test(word));
  const isMixed = withComma.length > 0 && words.some((word) => word.includes('.'));
  if (mayBeThousands || isMixed)
    return refused('ambiguousNumber', withComma[0]!, 'decimal points, and no other commas');
  const numbers = words.map((word) => Number(word.replace(',', '.')));
  const tooLarge = numbers.findIndex((each) => !(Math.abs(each) <= largestCoefficient));
  if (tooLarge >= 0) return refused('notFinite', words[tooLarge]!, 'coefficients below 1e12');
  if (numbers.every((each) => each === 0)) return refused('notTenNumbers', 'ten zeros', 'at least one that is not 0');
  return { ok: true, numbers };
}

/** Printed ones are a few thousands at most; far larger ones overflow. */
const largestCoefficient = 1e12;

/** Commas stand between numbers only where nothing else does. */
function wordsOf(plain: string): readonly string[] {
  const split = (separator: RegExp) => plain.split(separator).filter((word) => word !== '');
  const byBlanks = split(/[\s;|]+/);
  const isWhole = byBlanks.length === howMany && !byBlanks.some((word) => word.endsWith(','));
  return isWhole ? byBlanks : split(/[\s;|,]+/);
}

function refused(code: DesignProblem['code'], received: string, expected: string): CoefficientsRead {
  return { ok: false, problem: { code, received, expected } };
}
