// Formula records of the identification: what a range is as a spread, how alike the model's deviations are at two places, and the
// width that is left of them.

import type { Formula, FormulaSymbol } from '../../../quantities/index.ts';
import { covarianceWith, deviationLengths } from './deviation/discrepancy.ts';
import { halfWidthOf } from './deviation/doubt.ts';
import { endsAt, spreadOf } from './priors.ts';

const folder = 'src/parts/compressor/identification';

function level(meaning: string): FormulaSymbol {
  return { meaning, unit: 'K', quantity: 'temperatureDifference' };
}

export const identificationFormulas: readonly Formula[] = [
  {
    id: 'compressor.spreadOfRange',
    title: 'Spread of a range on a scale of logarithms',
    result: { symbol: 'sigma', meaning: 'standard deviation of the logarithm', unit: '1' },
    expression: `log(x_high / x_low) / (2 * ${endsAt})`,
    symbols: {
      x_low: { meaning: 'lower end of the range', unit: '1' },
      x_high: { meaning: 'upper end of the range', unit: '1' },
    },
    source: 'normal distribution whose ends are passed one time in ten in all',
    validity: 'numbers above 0, both ends in one unit',
    file: `${folder}/priors.ts`,
    compute: ({ x_low, x_high }) =>
      spreadOf({ low: x_low!, likely: x_low!, high: x_high!, origin: 'assumed' }, { kind: 'logarithm' }, 'x'),
    examples: [
      { x_low: 25, x_high: 70 },
      { x_low: 0.04, x_high: 0.14 },
    ],
  },
  {
    id: 'compressor.deviationCovariance',
    title: "Covariance of the model's deviation at two places",
    result: { symbol: 'k', meaning: 'covariance of the logarithm of given over modelled', unit: '1' },
    expression: `s^2 * exp(-((e_a - e_b)^2 / ${deviationLengths.evaporating}^2 + (c_a - c_b)^2 / ${deviationLengths.condensing}^2) / 2) + b_e^2 * e_a * e_b + b_c^2 * c_a * c_b`,
    symbols: {
      s: { meaning: 'spread of the deviation that is alike nearby', unit: '1' },
      b_e: { meaning: 'spread of its slope over evaporating temperature', unit: '1/K' },
      b_c: { meaning: 'spread of its slope over condensing temperature', unit: '1/K' },
      e_a: level('how far one place evaporates above the middle of the points'),
      e_b: level('how far the other place evaporates above that middle'),
      c_a: level('how far one place condenses above that middle'),
      c_b: level('how far the other place condenses above that middle'),
    },
    source:
      'Rasmussen & Williams 2006, Gaussian Processes for Machine Learning, section 4.2 (from memory); amounts: own judgement',
    validity: 'small hermetic machines; the amounts are judged, not measured',
    file: `${folder}/deviation/discrepancy.ts`,
    compute: ({ s, b_e, b_c, e_a, e_b, c_a, c_b }) =>
      covarianceWith(
        { smooth: s!, evaporatingSlope: b_e!, condensingSlope: b_c!, rough: 0 },
        { evaporating: 0, condensing: 0 },
        { evaporating: e_a!, condensing: c_a! },
        { evaporating: e_b!, condensing: c_b! },
      ),
    examples: [
      { s: 0.02, b_e: 0.0015, b_c: 0.0015, e_a: 5, e_b: -8, c_a: 3, c_b: 9 },
      { s: 0.025, b_e: 0.0025, b_c: 0.002, e_a: 30, e_b: 12, c_a: -6, c_b: -2 },
    ],
  },
  {
    id: 'compressor.modelDoubt',
    title: 'Half width of what is doubtful of the model',
    result: { symbol: 'w', meaning: 'half width relative to the model', unit: '1' },
    expression: `f * ${endsAt} * sqrt(v)`,
    symbols: {
      f: { meaning: 'factor of the model there, from the points around', unit: '1' },
      v: { meaning: 'variance left by the points, with that of another fluid and another frequency', unit: '1' },
    },
    source: 'normal distribution whose ends are passed one time in ten in all; JCGM 100:2008, 5.1.2',
    validity: 'widths up to about a third; wider ones are skewed',
    file: `${folder}/deviation/doubt.ts`,
    compute: ({ f, v }) => halfWidthOf(f!, v!),
    examples: [
      { f: 0.98, v: 0.0009 },
      { f: 1.04, v: 0.0041 },
    ],
  },
];
