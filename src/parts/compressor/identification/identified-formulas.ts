// Formula records of an identified machine: each number out of its range and how far the points move it along, how far each given
// value is off, and how the points around correct the model.

import type { Formula, FormulaSymbol } from '../../../quantities/index.ts';
import { fromScale, onScale, type Scale } from './coordinates.ts';
import { contributionOf } from './deviation/contributions.ts';

const pure = (meaning: string): FormulaSymbol => ({ meaning, unit: '1', quantity: 'ratio' });

/** A number of the machine that lies so many σ from the likely value of its range. */
export function movedAlong(scale: Scale, likely: number, spread: number, deviation: number): number {
  return fromScale(scale, onScale(scale, likely, 'likely') + spread * deviation);
}

/** Modelled over given value, less 1. */
export function relativeDeviation(modelled: number, given: number): number {
  return modelled / given - 1;
}

/** Modelled less given temperature [K]. */
export function temperatureDeviation(modelled: number, given: number): number {
  return modelled - given;
}

/** ln of given over modelled value, from how far the model is off it, relative. */
export function missOf(deviation: number): number {
  return -Math.log1p(deviation);
}

/** How many points one sum of contributions takes; what is more is added to the sum before. */
export const pointsOfSum = 8;

/** Sum of weights times misses, added to what the points before gave. */
export function sumOfContributions(before: number, weights: readonly number[], misses: readonly number[]): number {
  return weights.reduce((sum, weight, index) => sum + contributionOf(weight, misses[index]!), before);
}

/** Symbols of weight and miss of the points of one sum. */
export const contributionSymbols: readonly (readonly [weight: string, miss: string])[] = Array.from(
  { length: pointsOfSum },
  (_, index) => [`lambda_${index + 1}`, `r_${index + 1}`],
);

/** Correction of the model, relative, from the logarithm of its factor. */
export function correctionOf(logarithm: number): number {
  return Math.exp(logarithm) - 1;
}

const file = 'src/parts/compressor/identification/identified-formulas.ts';
const kriging = 'Gaussian process over evaporating and condensing temperature, Rasmussen & Williams 2006, from memory';
const logarithmOfFactor = pure('logarithm of the factor that the points around tell; 0 without any');
const source =
  'most probable machine: least sum of squares of the deviations of numbers and points, each over its own spread';
const deviation = pure('where the points and ranges together put it, in standard deviations');

export const identifiedFormulas: readonly Formula[] = [
  {
    id: 'compressor.identifiedByFactor',
    title: 'A number of the machine that is known by a factor',
    result: { symbol: 'X', ...pure('number of the likely machine, in its own unit') },
    expression: 'X_0 * exp(sigma * z)',
    symbols: {
      X_0: pure('likely value of its range, in its own unit'),
      sigma: pure('standard deviation of its logarithm, by its range'),
      z: deviation,
    },
    source,
    validity: 'numbers above 0; ends of a range are passed one time in ten',
    file,
    compute: (v) => movedAlong({ kind: 'logarithm' }, v.X_0!, v.sigma!, v.z!),
    examples: [
      { X_0: 7.5e-6, sigma: 0.2, z: -0.7 },
      { X_0: 2.4e4, sigma: 0.35, z: 1.2 },
    ],
  },
  {
    id: 'compressor.identifiedByShare',
    title: 'A number of the machine that cannot pass a bound',
    result: { symbol: 'X', ...pure('number of the likely machine') },
    expression: 'X_max / (1 + (X_max / X_0 - 1) * exp(-sigma * z))',
    symbols: {
      X_0: pure('likely value of its range'),
      X_max: pure('bound that it cannot pass'),
      sigma: pure('standard deviation of its logit, by its range'),
      z: deviation,
    },
    source,
    validity: 'numbers between 0 and their bound; ends of a range are passed one time in ten',
    file,
    compute: (v) => movedAlong({ kind: 'logit', top: v.X_max! }, v.X_0!, v.sigma!, v.z!),
    examples: [
      { X_0: 0.7, X_max: 1, sigma: 0.25, z: 0.8 },
      { X_0: 0.03, X_max: 0.5, sigma: 0.3, z: -1.1 },
    ],
  },
  {
    id: 'compressor.relativeDeviation',
    title: 'How far the likely machine is off a given value',
    result: { symbol: 'delta', ...pure('modelled over given, less 1') },
    expression: 'X / X_given - 1',
    symbols: { X: pure('of the likely machine, in its own unit'), X_given: pure('printed or measured') },
    source: 'definition',
    validity: 'flow, capacity, power, current',
    file,
    compute: (v) => relativeDeviation(v.X!, v.X_given!),
    examples: [
      { X: 176, X_given: 180 },
      { X: 1.14, X_given: 1.1 },
    ],
  },
  {
    id: 'compressor.temperatureDeviation',
    title: 'How far the likely machine is off a given temperature',
    result: {
      symbol: 'dT',
      meaning: 'modelled less given temperature',
      unit: 'K',
      quantity: 'temperatureDifference',
    },
    expression: 'T - T_given',
    symbols: {
      T: { meaning: 'of the likely machine', unit: 'K', quantity: 'temperature' },
      T_given: { meaning: 'measured', unit: 'K', quantity: 'temperature' },
    },
    source: 'definition',
    validity: 'discharge temperature',
    file,
    compute: (v) => temperatureDeviation(v.T!, v.T_given!),
    examples: [
      { T: 361.2, T_given: 358.4 },
      { T: 349.9, T_given: 352 },
    ],
  },
  {
    id: 'compressor.missOfPoint',
    title: 'What the likely machine misses of a given value',
    result: { symbol: 'r', ...pure('logarithm of given over modelled value') },
    expression: '-log(1 + delta)',
    symbols: { delta: pure('modelled over given, less 1') },
    source: 'definition',
    validity: 'flow, capacity, power',
    file,
    compute: (v) => missOf(v.delta!),
    examples: [{ delta: 0.021 }, { delta: -0.034 }],
  },
  {
    id: 'compressor.sumOfContributions',
    title: 'What the misses of the points around tell of the model here',
    result: { symbol: 'mu', ...logarithmOfFactor },
    expression: ['mu_0', ...contributionSymbols.map(([weight, miss]) => `${weight} * ${miss}`)].join(' + '),
    symbols: {
      mu_0: pure('the same of the points before; 0 at the first'),
      ...Object.fromEntries(
        contributionSymbols.flatMap(([weight, miss], index) => [
          [weight, pure(`weight of point ${index + 1} here, by how near it stands and how sure it is; 0 without it`)],
          [miss, pure(`logarithm of given over modelled value of point ${index + 1}; 0 without it`)],
        ]),
      ),
    },
    source: `${kriging}: the weights solve their covariances for the covariance with the running point`,
    validity: 'between the points; away from them the weights return to 0',
    file,
    compute: (v) =>
      sumOfContributions(
        v.mu_0!,
        contributionSymbols.map(([weight]) => v[weight]!),
        contributionSymbols.map(([, miss]) => v[miss]!),
      ),
    examples: [0.7, -0.4].map((share) => ({
      mu_0: 0.003 * share,
      ...Object.fromEntries(
        contributionSymbols.flatMap(([weight, miss], index) => [
          [weight, 0.3 - 0.05 * index],
          [miss, share * 0.01 * (index + 1)],
        ]),
      ),
    })),
  },
  {
    id: 'compressor.modelCorrection',
    title: 'Correction of the model by the points around',
    result: { symbol: 'c', ...pure('correction, relative') },
    expression: 'exp(mu) - 1',
    symbols: { mu: logarithmOfFactor },
    source: kriging,
    validity: 'between the points; away from them it returns to 0',
    file,
    compute: (v) => correctionOf(v.mu!),
    examples: [{ mu: 0.021 }, { mu: -0.034 }],
  },
];
