// Ranges made from ranges: of a product, of several classes at once, and of two things known of one number. All in logarithms,
// since these numbers are known by their factor.

import type { Band } from '../../../quantities/index.ts';

/**
 * Range of a product of independent factors: y = Π x_i, each end by the root of the summed squares of the logarithmic half widths.
 * @param factors  positive ranges
 * @returns        their product
 * Source: root-sum-square rule of JCGM 100 applied to logarithms.
 */
export function productOf(factors: readonly Band[]): Band {
  const likely = factors.reduce((product, { likely: each }) => product * each, 1);
  const down = Math.hypot(...factors.map((each) => Math.log(each.likely / each.low)));
  const up = Math.hypot(...factors.map((each) => Math.log(each.high / each.likely)));
  return { low: likely * Math.exp(-down), likely, high: likely * Math.exp(up) };
}

/** Range that holds all of several; its likely value is their geometric mean. */
export function spanOf(ranges: readonly Band[]): Band {
  const logarithms = ranges.map(({ likely }) => Math.log(likely));
  return {
    low: Math.min(...ranges.map(({ low }) => low)),
    likely: Math.exp(logarithms.reduce((sum, each) => sum + each, 0) / ranges.length),
    high: Math.max(...ranges.map(({ high }) => high)),
  };
}

/**
 * What two independent ranges of one number say together: the mean of the logarithms of the likely values, each weighed by
 * 1/width², and a width of (w_1^−2 + w_2^−2)^−½. Ranges that do not overlap contradict each other and are spanned instead.
 */
export function bothOf(one: Band, other: Band): Band {
  if (one.high < other.low || other.high < one.low) return spanOf([one, other]);
  const weights = [one, other].map(({ low, high }) => Math.log(high / low) ** -2);
  const whole = weights[0]! + weights[1]!;
  const likely = (weights[0]! * Math.log(one.likely) + weights[1]! * Math.log(other.likely)) / whole;
  const half = Math.sqrt(1 / whole) / 2;
  return { low: Math.exp(likely - half), likely: Math.exp(likely), high: Math.exp(likely + half) };
}
