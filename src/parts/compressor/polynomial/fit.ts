// Ten coefficients by least squares from points, with what is left at each point and the points that disagree with the others.
// The points themselves decide where the fit holds; it is never used beyond them.

import { InputError, leastSquares, requireFinite, requirePositive, studentTail } from '../../../numerics/index.ts';
import type { TemperatureRange } from './coefficient-set.ts';
import {
  coefficientCount,
  coefficientPowers,
  convertedCoefficients,
  requireTenCoefficients,
  type TenCoefficients,
} from './ten-coefficients.ts';
import { zeroCelsius } from './units.ts';

export interface FitPoint {
  /** Saturation temperatures [K]. */
  readonly evaporating: number;
  readonly condensing: number;
  /** What is fitted, above 0: kg/s, W or A. */
  readonly value: number;
  /** What people call it: 'line 4'. */
  readonly name: string;
}

/** `relative` makes the squares of deviations in per cent least, as errors of calorimeters go; `absolute` those in W or kg/s. */
export type FitWeighting = 'relative' | 'absolute';

export interface FitResidual {
  readonly name: string;
  readonly given: number;
  readonly fitted: number;
  /** Fitted over given, less 1. */
  readonly deviation: number;
  /** Externally studentised residual; null where all points are needed to fix the coefficients. */
  readonly studentised: number | null;
  /** Value there of the fit without the points that disagree, for those points. */
  readonly byTheOthers: number | null;
  readonly disagrees: boolean;
}

export interface TenCoefficientFit {
  /** For temperatures in °C, value in base SI. */
  readonly coefficients: TenCoefficients;
  readonly residuals: readonly FitResidual[];
  /** Root mean square of the deviations, with points less ten in the denominator; 0 at exactly ten points. */
  readonly scatter: number;
  readonly weighting: FitWeighting;
  /** Where the fit holds [K]. */
  readonly evaporatingRange: TemperatureRange;
  readonly condensingRange: TemperatureRange;
}

/** A set of points of one machine without a wrong one shows a disagreeing point in one case out of twenty. */
const disagreementChance = 0.05;
/** Deviations smaller than this disagree with nothing, however well the others agree: printed numbers are rounded. */
const leastDisagreement = 0.01;
/** At most this share of the points can disagree with the others. */
const mostDisagreeing = 0.2;

/** Levels closer than this count as one [K]. */
const sameLevel = 0.5;
/** Levels a cubic needs. */
const fewestLevels = 4;

/**
 * Coefficients of the points, and what is left at each.
 * A point disagrees where its externally studentised residual would be passed by chance, in one set of points out of twenty
 * (Student's distribution, divided by the number of points), and it lies 1 % or more off; the worst first, each time without those found before.
 * @param points     at least ten, at four different levels of each temperature or more
 * @param weighting  relative, unless said otherwise
 * @throws InputError 'tooFewPoints', 'pointsNotSpread' with the reason, or for a number that is not finite or positive
 * Source: linear least squares; studentised residuals and their test as in Cook & Weisberg 1982, Residuals and Influence in
 * Regression, from memory.
 */
export function fitTenCoefficients(
  points: readonly FitPoint[],
  weighting: FitWeighting = 'relative',
): TenCoefficientFit {
  checkPoints(points);
  const scale = scaleOf(points);
  const whole = fitted(points, scale, weighting);
  const { among, without } = disagreeing(points, scale, weighting);
  const residuals = points.map((point, index): FitResidual => {
    const value = valueAt(whole.solution, scale, point);
    const disagrees = among.has(point);
    return {
      name: point.name,
      given: point.value,
      fitted: value,
      deviation: value / point.value - 1,
      studentised: studentised(whole, index),
      byTheOthers: disagrees ? valueAt(without.solution, scale, point) : null,
      disagrees,
    };
  });
  const freedom = points.length - coefficientCount;
  const squares = residuals.reduce((sum, { deviation }) => sum + deviation ** 2, 0);
  return {
    coefficients: inCelsius(whole.solution, scale),
    residuals,
    scatter: freedom === 0 ? 0 : Math.sqrt(squares / freedom),
    weighting,
    evaporatingRange: rangeOf(points.map(({ evaporating }) => evaporating)),
    condensingRange: rangeOf(points.map(({ condensing }) => condensing)),
  };
}

function checkPoints(points: readonly FitPoint[]): void {
  if (points.length < coefficientCount) {
    const expected = `at least ${coefficientCount} points, since ten coefficients are asked for`;
    throw new InputError('points', `${points.length} points`, expected, 'tooFewPoints');
  }
  for (const { name, evaporating, condensing, value } of points) {
    requireFinite(`${name}.evaporating`, evaporating);
    requireFinite(`${name}.condensing`, condensing);
    requirePositive(`${name}.value`, value);
  }
  for (const which of ['evaporating', 'condensing'] as const) {
    const levels = levelCount(points.map((point) => point[which]));
    if (levels >= fewestLevels) continue;
    const received = levels === 1 ? `one ${which} temperature` : `${levels} ${which} temperatures`;
    throw notSpread(
      received,
      `at least ${fewestLevels} different ${which} temperatures: a cubic in it is not fixed by fewer`,
    );
  }
}

function notSpread(received: string, expected: string): InputError {
  return new InputError('points', received, expected, 'pointsNotSpread');
}

function levelCount(temperatures: readonly number[]): number {
  let count = 0;
  let last = Number.NEGATIVE_INFINITY;
  for (const temperature of [...temperatures].sort((a, b) => a - b)) {
    if (temperature - last < sameLevel) continue;
    count += 1;
    last = temperature;
  }
  return count;
}

/** Both temperatures as numbers from −1 to 1, in which the ten powers differ as much as they can. */
interface Scale {
  readonly suction: { readonly middle: number; readonly half: number };
  readonly discharge: { readonly middle: number; readonly half: number };
}

function scaleOf(points: readonly FitPoint[]): Scale {
  const of = (temperatures: readonly number[]) => {
    const { low, high } = rangeOf(temperatures);
    return { middle: (low + high) / 2, half: (high - low) / 2 };
  };
  return {
    suction: of(points.map(({ evaporating }) => evaporating)),
    discharge: of(points.map(({ condensing }) => condensing)),
  };
}

interface Fitted {
  readonly solution: Float64Array;
  /** In units of the weighting. */
  readonly residuals: Float64Array;
  readonly leverages: Float64Array;
}

function fitted(points: readonly FitPoint[], scale: Scale, weighting: FitWeighting): Fitted {
  const rows = new Float64Array(points.length * coefficientCount);
  const values = new Float64Array(points.length);
  points.forEach((point, index) => {
    const weight = weighting === 'relative' ? 1 / point.value : 1;
    values[index] = weight * point.value;
    powersAt(scale, point).forEach((power, column) => {
      rows[index * coefficientCount + column] = weight * power;
    });
  });
  const result = leastSquares(rows, coefficientCount, values);
  if (result.rank < coefficientCount) {
    throw notSpread(
      'points on few lines',
      'points spread over both temperatures: these leave some of the ten coefficients open, as points along one line do',
    );
  }
  return result;
}

function powersAt({ suction, discharge }: Scale, { evaporating, condensing }: FitPoint): readonly number[] {
  const u = (evaporating - suction.middle) / suction.half;
  const v = (condensing - discharge.middle) / discharge.half;
  return coefficientPowers.map(([i, j]) => u ** i * v ** j);
}

function valueAt(solution: Float64Array, scale: Scale, point: FitPoint): number {
  return powersAt(scale, point).reduce((sum, power, column) => sum + power * solution[column]!, 0);
}

/** Rounding alone leaves residuals of this size, relative to the largest value. */
const roundingShare = 1e-12;

/** Residual over its own spread, estimated from the other points; null without points to spare. */
function studentised({ residuals, leverages }: Fitted, index: number): number | null {
  const freedom = residuals.length - coefficientCount - 1;
  if (freedom < 1) return null;
  const free = 1 - leverages[index]!;
  if (free < 1e-9) return null;
  const squares = residuals.reduce((sum, residual) => sum + residual ** 2, 0);
  const others = Math.max(0, squares - residuals[index]! ** 2 / free) / freedom;
  return residuals[index]! / Math.sqrt(Math.max(others, roundingShare ** 2) * free);
}

/** Points that disagree, found one after the other, and the fit without them. */
function disagreeing(points: readonly FitPoint[], scale: Scale, weighting: FitWeighting) {
  const among = new Set<FitPoint>();
  let left = [...points];
  let without = fitted(left, scale, weighting);
  const most = Math.floor(mostDisagreeing * points.length);
  while (among.size < most) {
    const worst = worstOf(left, without, points.length);
    if (worst === undefined) break;
    const remaining = left.filter((point) => point !== worst);
    const next = fittedIfFixed(remaining, scale, weighting);
    if (next === undefined) break;
    if (Math.abs(valueAt(next.solution, scale, worst) / worst.value - 1) < leastDisagreement) break;
    among.add(worst);
    left = remaining;
    without = next;
  }
  return { among, without };
}

/** The point with the largest studentised residual, if chance would hardly pass it. */
function worstOf(points: readonly FitPoint[], fit: Fitted, tested: number): FitPoint | undefined {
  let worst: { point: FitPoint; size: number } | undefined;
  points.forEach((point, index) => {
    const size = Math.abs(studentised(fit, index) ?? 0);
    if (worst === undefined || size > worst.size) worst = { point, size };
  });
  const freedom = points.length - coefficientCount - 1;
  if (worst === undefined || freedom < 1) return undefined;
  return studentTail(worst.size, freedom) * tested < disagreementChance ? worst.point : undefined;
}

function fittedIfFixed(points: readonly FitPoint[], scale: Scale, weighting: FitWeighting): Fitted | undefined {
  try {
    return fitted(points, scale, weighting);
  } catch (error) {
    if (error instanceof InputError && error.code === 'pointsNotSpread') return undefined;
    throw error;
  }
}

/** The solution in scaled temperatures as coefficients for °C. */
function inCelsius(solution: Float64Array, { suction, discharge }: Scale): TenCoefficients {
  const scaled = requireTenCoefficients([...solution]);
  return convertedCoefficients(
    scaled,
    { scale: 1 / suction.half, shift: (zeroCelsius - suction.middle) / suction.half, factor: 1 },
    { scale: 1 / discharge.half, shift: (zeroCelsius - discharge.middle) / discharge.half },
  );
}

function rangeOf(temperatures: readonly number[]): TemperatureRange {
  return { low: Math.min(...temperatures), high: Math.max(...temperatures) };
}
