// How far a running point is from a limit of the machine.

import { requireFinite } from '../../../numerics/index.ts';
import type { Formula, FormulaSymbol } from '../../../quantities/index.ts';

/**
 * Distance left below a highest value, such as the highest discharge temperature.
 *     Δy = y_limit − y
 * @param value  y, a temperature [K] or a pressure ratio [-]; finite
 * @param bound  y_limit, in the same unit; finite
 * @returns      Δy, in that unit; negative once the limit is passed
 * @throws InputError unless both are finite
 * Source: definition. Worked value: 311.4, 328.15 → 16.75 K.
 */
export function distanceBelow(value: number, bound: number): number {
  requireFinite('value', value);
  requireFinite('bound', bound);
  return bound - value;
}

/**
 * Distance left above a lowest value, such as the lowest evaporating temperature.
 *     Δy = y − y_limit
 * @param value  y, a temperature [K]; finite
 * @param bound  y_limit [K]; finite
 * @returns      Δy [K]; negative once the limit is passed
 * @throws InputError unless both are finite
 * Source: definition. Worked value: 263.4, 243.15 → 20.25 K.
 */
export function distanceAbove(value: number, bound: number): number {
  requireFinite('value', value);
  requireFinite('bound', bound);
  return value - bound;
}

const file = 'src/parts/compressor/envelope/limit-distance.ts';
const level: Pick<FormulaSymbol, 'unit' | 'quantity'> = { unit: 'K', quantity: 'temperature' };
const difference: Pick<FormulaSymbol, 'unit' | 'quantity'> = { unit: 'K', quantity: 'temperatureDifference' };
const ratio: Pick<FormulaSymbol, 'unit' | 'quantity'> = { unit: '1' };

/** Formula records of this file. */
export const limitFormulas: readonly Formula[] = [
  {
    id: 'compressor.temperatureBelow',
    title: 'Distance below the highest temperature allowed',
    result: { symbol: 'dT', meaning: 'distance left; negative once passed', ...difference },
    expression: 'y_limit - y',
    symbols: { y: { meaning: 'temperature', ...level }, y_limit: { meaning: 'highest temperature', ...level } },
    source: 'definition; the limit from what the machine was made for',
    validity: 'any two temperatures',
    file,
    compute: (v) => distanceBelow(v.y!, v.y_limit!),
    examples: [
      { y: 311.4, y_limit: 328.15 },
      { y: 289.9, y_limit: 280.15 },
    ],
  },
  {
    id: 'compressor.temperatureAbove',
    title: 'Distance above the lowest temperature allowed',
    result: { symbol: 'dT', meaning: 'distance left; negative once passed', ...difference },
    expression: 'y - y_limit',
    symbols: { y: { meaning: 'temperature', ...level }, y_limit: { meaning: 'lowest temperature', ...level } },
    source: 'definition; the limit from what the machine was made for',
    validity: 'any two temperatures',
    file,
    compute: (v) => distanceAbove(v.y!, v.y_limit!),
    examples: [
      { y: 263.4, y_limit: 243.15 },
      { y: 240.1, y_limit: 248.15 },
    ],
  },
  {
    id: 'compressor.ratioBelow',
    title: 'Distance below the highest pressure ratio',
    result: { symbol: 'dr', meaning: 'distance left; negative once passed', ...ratio },
    expression: 'y_limit - y',
    symbols: { y: { meaning: 'pressure ratio', ...ratio }, y_limit: { meaning: 'highest pressure ratio', ...ratio } },
    source: 'definition; the limit from what the machine was made for',
    validity: 'any two ratios',
    file,
    compute: (v) => distanceBelow(v.y!, v.y_limit!),
    examples: [
      { y: 4.2, y_limit: 10 },
      { y: 9.7, y_limit: 8 },
    ],
  },
];
