// Sentences put together: beginnings, middles, lists; and numbers of columns with a true minus sign.

import { describe, expect, test } from 'vitest';
import { InputError } from '../../src/numerics/index.ts';
import { fixedDecimals, insideSentence, listed, sentenceStart } from '../../src/quantities/index.ts';

test.each([
  ['june', 'June'],
  ['R134a', 'R134a'],
  ['', ''],
])('where a sentence begins: %s', (text, said) => {
  expect(sentenceStart(text)).toBe(said);
});

test.each([
  ['Open in the room', 'open in the room'],
  ['A dehumidifier', 'a dehumidifier'],
  ['R134a', 'R134a'],
  ['I know its rating', 'I know its rating'],
  ['COP of the compressor', 'COP of the compressor'],
  ['Appliance’s name', 'appliance’s name'],
])('inside a sentence: %s', (text, said) => {
  expect(insideSentence(text)).toBe(said);
});

test.each([
  [[], ''],
  [['a'], 'a'],
  [['a', 'b'], 'a and b'],
  [['a', 'b', 'c'], 'a, b and c'],
])('a list of %j', (parts, said) => {
  expect(listed(parts)).toBe(said);
});

test('a list of alternatives', () => {
  expect(listed(['mineral', 'alkylbenzene', 'polyolester'], 'or')).toBe('mineral, alkylbenzene or polyolester');
});

describe('a number with fixed decimals', () => {
  test.each([
    [3, 1, '3.0'],
    [-12.34, 1, '−12.3'],
    [-0.04, 1, '0.0'],
    [-0.4, 0, '0'],
    [0.05, 3, '0.050'],
  ])('%d to %d decimals', (value, decimals, said) => {
    expect(fixedDecimals(value, decimals)).toBe(said);
  });

  test('that is none is refused', () => {
    expect(() => fixedDecimals(Number.NaN, 1)).toThrow(InputError);
  });
});
