// Bands from a machine and its doubt: the rule of doubt.ts for numbers that only some inputs move, and ends without an answer.

import { expect, test } from 'vitest';
import type { DoubtfulInput } from '../../../../src/assess/index.ts';
import { variantsOf, variedNumbers } from '../../../../src/assess/studies/machine/variants.ts';
import { NoSolutionError } from '../../../../src/numerics/index.ts';

const input = (path: string, low: number, likely: number, high: number): DoubtfulInput => ({
  path,
  label: path,
  estimate: { low, likely, high, origin: 'assumed' },
});

interface Run {
  readonly a: number;
  readonly b: number;
}

const inputs = [input('a', 1, 2, 4), input('b', 10, 10, 13), input('none', 0, 1, 2)];
const likely: Run = { a: 2, b: 10 };
const withInput = (path: string, value: number): Run =>
  path === 'none' ? { ...likely } : { ...likely, [path]: value };
const isSame = (left: Run, right: Run) => left.a === right.a && left.b === right.b;

test('an input that changes nothing is left out, and so is an end that is the likely value', () => {
  const { ends } = variantsOf(likely, inputs, withInput, isSame);
  expect(ends.map(({ input: { path }, low, high }) => [path, low, high])).toEqual([
    ['a', { a: 1, b: 10 }, { a: 4, b: 10 }],
    ['b', undefined, { a: 2, b: 13 }],
  ]);
});

test('moves add by the root of the sum of their squares, upward and downward apart', () => {
  const variants = variantsOf(likely, inputs, withInput, isSame);
  const { bands } = variedNumbers(variants, ({ a, b }) => ({ sum: 2 * a + b, only: b }));
  // Up: 4 by a, 3 by b; down: 2 by a.
  expect(bands.sum).toEqual({ low: 12, likely: 14, high: 19 });
  expect(bands.only).toEqual({ low: 10, likely: 10, high: 13 });
});

test('an end without an answer is told, and moves nothing', () => {
  const variants = variantsOf(likely, inputs, withInput, isSame);
  const { bands, unanswered } = variedNumbers(variants, ({ a, b }) => {
    if (a > 3) throw new NoSolutionError('Too much.', 'at most 3', 'tooMuch');
    return { sum: 2 * a + b };
  });
  expect(bands.sum).toEqual({ low: 12, likely: 14, high: 17 });
  expect(unanswered).toEqual([{ path: 'a', label: 'a', end: 'high', value: 4, message: 'Too much.' }]);
});

test('a machine that one end does not allow is told too', () => {
  const { ends, unanswered } = variantsOf(
    likely,
    inputs,
    (path, value) => {
      if (value === 13) throw new NoSolutionError('No.', 'none', 'none');
      return withInput(path, value);
    },
    isSame,
  );
  expect(ends.map(({ input: { path } }) => path)).toEqual(['a']);
  expect(unanswered.map(({ path, end }) => [path, end])).toEqual([['b', 'high']]);
});
