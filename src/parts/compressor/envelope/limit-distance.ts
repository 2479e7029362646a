// How far a running point is from a limit of the machine.

import { requireFinite } from '../../../numerics/index.ts';
import type { Formula, FormulaSymbol } from '../../../quantities/index.ts';

/**
 * Distance left below a highest value, such as the highest discharge temperature or current.
 *     Δy = y_limit − y
 * @param value  y, in the unit of its limit; finite
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
 * @param value  y, in the unit of its limit; finite
 * @param bound  y_limit, in the same unit; finite
 * @returns      Δy, in that unit; negative once the limit is passed
 * @throws InputError unless both are finite
 * Source: definition. Worked value: 263.4, 243.15 → 20.25 K.
 */
export function distanceAbove(value: number, bound: number): number {
  requireFinite('value', value);
  requireFinite('bound', bound);
  return value - bound;
}

const file = 'src/parts/compressor/envelope/limit-distance.ts';

type Kind = Pick<FormulaSymbol, 'unit' | 'quantity'>;

const level: Kind = { unit: 'K', quantity: 'temperature' };
const difference: Kind = { unit: 'K', quantity: 'temperatureDifference' };
const ratio: Kind = { unit: '1' };
const pressure: Kind = { unit: 'Pa', quantity: 'pressure' };
const current: Kind = { unit: 'A', quantity: 'current' };

/** One record: which quantity stays on which side, in words, and two examples of value and bound. */
interface Distance {
  readonly id: string;
  readonly of: string;
  readonly stays: 'below' | 'above';
  readonly symbol: string;
  readonly value: Kind;
  readonly left: Kind;
  readonly examples: readonly (readonly [value: number, bound: number])[];
}

function distanceFormula({ id, of, stays, symbol, value, left, examples }: Distance): Formula {
  const isBelow = stays === 'below';
  const bounded = isBelow ? 'highest' : 'lowest';
  return {
    id: `compressor.${id}`,
    title: `Distance ${stays} the ${bounded} ${of}${value === level ? ' allowed' : ''}`,
    result: { symbol, meaning: 'distance left; negative once passed', ...left },
    expression: isBelow ? 'y_limit - y' : 'y - y_limit',
    symbols: { y: { meaning: of, ...value }, y_limit: { meaning: `${bounded} ${of}`, ...value } },
    source: 'definition; the limit from what the machine was made for',
    validity: 'any two numbers of the same kind',
    file,
    compute: isBelow ? (v) => distanceBelow(v.y!, v.y_limit!) : (v) => distanceAbove(v.y!, v.y_limit!),
    examples: examples.map(([y, y_limit]) => ({ y, y_limit })),
  };
}

const distances: readonly Distance[] = [
  {
    id: 'temperatureBelow',
    of: 'temperature',
    stays: 'below',
    symbol: 'dT',
    value: level,
    left: difference,
    examples: [
      [311.4, 328.15],
      [289.9, 280.15],
    ],
  },
  {
    id: 'temperatureAbove',
    of: 'temperature',
    stays: 'above',
    symbol: 'dT',
    value: level,
    left: difference,
    examples: [
      [263.4, 243.15],
      [240.1, 248.15],
    ],
  },
  {
    id: 'ratioBelow',
    of: 'pressure ratio',
    stays: 'below',
    symbol: 'dr',
    value: ratio,
    left: ratio,
    examples: [
      [4.2, 10],
      [9.7, 8],
    ],
  },
  {
    id: 'ratioAbove',
    of: 'pressure ratio',
    stays: 'above',
    symbol: 'dr',
    value: ratio,
    left: ratio,
    examples: [
      [3.1, 2],
      [1.6, 2],
    ],
  },
  {
    id: 'suctionPressureBelow',
    of: 'suction pressure',
    stays: 'below',
    symbol: 'dp',
    value: pressure,
    left: pressure,
    examples: [
      [1.9e5, 2.01e5],
      [3.5e5, 2.01e5],
    ],
  },
  {
    id: 'superheatAbove',
    of: 'superheat',
    stays: 'above',
    symbol: 'dT',
    value: difference,
    left: difference,
    examples: [
      [8, 5],
      [1.5, 5],
    ],
  },
  {
    id: 'currentBelow',
    of: 'current',
    stays: 'below',
    symbol: 'dI',
    value: current,
    left: current,
    examples: [
      [0.9, 1.1],
      [1.6, 1.1],
    ],
  },
  {
    id: 'motorLoadBelow',
    of: 'load of the motor',
    stays: 'below',
    symbol: 'dx',
    value: ratio,
    left: ratio,
    examples: [
      [1.2, 1.7],
      [1.9, 1.7],
    ],
  },
];

/** Formula records of this file. */
export const limitFormulas: readonly Formula[] = distances.map(distanceFormula);
