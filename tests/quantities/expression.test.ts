// The algebra of formula records against the general-purpose mathematics library mathjs: every expression of the engine on
// every example, and the ranks of the operators. Errors name the place.

import { all, create } from 'mathjs';
import { describe, expect, test } from 'vitest';
import { allFormulas } from '../../src/assess/index.ts';
import { InputError } from '../../src/numerics/index.ts';
import { evaluateExpression, parseExpression, symbolsIn } from '../../src/quantities/index.ts';

const math = create(all!, {});
/** Both work in doubles; powers and logarithms may differ in the last bit. */
const relativeTolerance = 1e-13;

function expectLikeMathjs(text: string, values: Readonly<Record<string, number>>): void {
  const reference = Number(math.evaluate(text, { ...values }));
  const own = evaluateExpression(parseExpression(text), values);
  expect(Math.abs(own - reference), `${text}: ${own}, mathjs ${reference}`).toBeLessThanOrEqual(
    relativeTolerance * Math.abs(reference),
  );
}

describe('against mathjs', () => {
  test.each(allFormulas.map((formula) => [formula.id, formula] as const))('%s', (_id, formula) => {
    for (const example of formula.examples) expectLikeMathjs(formula.expression, example);
    expect([...symbolsIn(parseExpression(formula.expression))].sort()).toEqual(Object.keys(formula.symbols).sort());
  });

  test.each([
    '-a^2',
    '2^-b',
    'a^b^c',
    '(-a)^2',
    'a / b * c',
    'a / b / c',
    'a - b - c',
    'a - -b',
    '- - a',
    '-a * b',
    'a * -b ^ 2',
    'a + b < c ? a : b',
    'a < b ? 1 : b < c ? 2 : 3',
    'a > b ? 1 : b > c ? 2 : a != c ? 3 : 4',
    '(a > b ? 1 : 2) * 3',
    'a >= 1.5 ? (b <= 2.5 ? 7 : 8) : 9',
    'a == 1.5 ? c : b',
    'max(a, b, c) - min(a, b) + max(a)',
    'sqrt(a) + cbrt(b) + exp(-c) + log(c) + log10(c) + tanh(a) + atan(c) + sin(b) + cos(pi / 4) + abs(-c)',
    '1e-3 * a + 2.5E+2 * b - .5 + 3. * c',
  ])('%s', (text) => {
    expectLikeMathjs(text, { a: 1.5, b: 2.25, c: 3.1 });
  });
});

describe('what is not algebra', () => {
  const refused = (text: string) => {
    try {
      parseExpression(text);
    } catch (error) {
      expect(error).toBeInstanceOf(InputError);
      const { code, path, received } = error as InputError;
      return { code, path, received };
    }
    return 'accepted';
  };

  test.each([
    ['', 0, 'the end'],
    ['a +', 3, 'the end'],
    ['a + * b', 4, '*'],
    ['a b', 2, 'b'],
    ['(a + b', 6, 'the end'],
    ['a + b)', 5, ')'],
    ['a ? b', 5, 'the end'],
    ['a < b < c', 6, '<'],
    ['a = b', 2, '='],
    ['a % b', 2, '%'],
    ['  § ', 2, '§'],
    ['1.5.2', 3, '.2'],
    ['2a', 1, 'a'],
    ['exp()', 4, ')'],
    ['gamma(a)', 0, 'gamma'],
    ['1 + toString(a)', 4, 'toString'],
    ['1 + exp(a, b)', 4, 'exp of 2'],
  ])('%s', (text, place, received) => {
    expect(refused(text)).toEqual({ code: 'badExpression', path: `expression[${place}]`, received });
  });
});

describe('what has no value', () => {
  const code = (text: string, values: Readonly<Record<string, number>>) => {
    try {
      return evaluateExpression(parseExpression(text), values);
    } catch (error) {
      return error instanceof InputError ? [error.code, error.path] : error;
    }
  };

  test('a symbol without a number is named', () => {
    expect(code('a * b', { a: 2 })).toEqual(['missingSymbol', 'symbols.b']);
    expect(code('a * constructor', { a: 2 })).toEqual(['missingSymbol', 'symbols.constructor']);
  });

  test('numbers that lead nowhere', () => {
    expect(code('1 / a', { a: 0 })).toEqual(['notFinite', 'expression']);
    expect(code('log(a)', { a: -1 })).toEqual(['notFinite', 'expression']);
  });

  test('only the chosen side of a choice is evaluated', () => {
    expect(code('a > 0 ? 1 / a : 0', { a: 0 })).toBe(0);
  });
});
