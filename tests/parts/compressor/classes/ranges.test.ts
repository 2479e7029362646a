// Ranges made from ranges, against hand-worked values.

import { describe, expect, test } from 'vitest';
import { bothOf, productOf, spanOf } from '../../../../src/parts/compressor/classes/ranges.ts';

const e = Math.E;

describe('worked by hand', () => {
  test('product: half widths of 0.3 and 0.4 in the logarithm give 0.5', () => {
    const one = { low: 2 * e ** -0.3, likely: 2, high: 2 * e ** 0.3 };
    const other = { low: 5 * e ** -0.4, likely: 5, high: 5 * e ** 0.4 };
    const { low, likely, high } = productOf([one, other]);
    expect(likely).toBeCloseTo(10, 12);
    expect(low).toBeCloseTo(10 * e ** -0.5, 12);
    expect(high).toBeCloseTo(10 * e ** 0.5, 12);
  });

  test('span: 1 to 4 and 2 to 16 give 1 to 16 about the geometric mean', () => {
    const span = spanOf([
      { low: 1, likely: 2, high: 4 },
      { low: 2, likely: 8, high: 16 },
    ]);
    expect(span.low).toBe(1);
    expect(span.likely).toBeCloseTo(4, 12);
    expect(span.high).toBe(16);
  });

  test('both: equal widths meet in the middle, and the width falls by √2', () => {
    const half = 0.4;
    const around = (likely: number) => ({ low: likely * e ** -half, likely, high: likely * e ** half });
    const { low, likely, high } = bothOf(around(1), around(1.21));
    expect(likely).toBeCloseTo(1.1, 12);
    expect(Math.log(high / low)).toBeCloseTo((2 * half) / Math.SQRT2, 12);
  });
});

test('law: a range that contradicts another is spanned with it', () => {
  const both = bothOf({ low: 1, likely: 2, high: 3 }, { low: 10, likely: 20, high: 30 });
  expect([both.low, both.high]).toEqual([1, 30]);
});
