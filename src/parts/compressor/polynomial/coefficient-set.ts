// A set of ten coefficients with everything it holds for, and its value inside its stated ranges only: outside them a cubic
// means nothing and is refused.

import { InputError, OutOfModelError, requireFinite } from '../../../numerics/index.ts';
import type { Supply } from '../hermetic/parameters.ts';
import type { RatingBasis } from './basis.ts';
import { requireTenCoefficients, type TenCoefficients, tenCoefficients } from './ten-coefficients.ts';
import {
  coefficientsInSi,
  type PolynomialQuantity,
  type PolynomialUnit,
  polynomialUnits,
  type TemperatureUnit,
  zeroCelsius,
} from './units.ts';

/** Two temperatures between which something holds [K]. */
export interface TemperatureRange {
  readonly low: number;
  readonly high: number;
}

/** Mains as stated beside printed numbers: a frequency that is missing is refused where it is needed. */
export interface StatedSupply {
  /** [Hz]; null where the sheet does not say. */
  readonly frequency: number | null;
  /** [V]. */
  readonly voltage: number;
}

export interface CoefficientSet {
  /** Where it stands: 'machine.compressor.coefficients.0'. */
  readonly path: string;
  readonly label: string;
  readonly of: PolynomialQuantity;
  /** As printed. */
  readonly coefficients: TenCoefficients;
  readonly temperatureUnit: TemperatureUnit;
  readonly unit: PolynomialUnit;
  readonly basis: RatingBasis;
  /** Saturation temperatures the set was made from [K], dew or mid-point as the basis says. */
  readonly evaporatingRange: TemperatureRange;
  readonly condensingRange: TemperatureRange;
  readonly supply: StatedSupply;
}

/**
 * What a set gives at two saturation temperatures.
 * @param set          the set
 * @param evaporating  [K], dew or mid-point as the set's basis says
 * @param condensing   [K], the same
 * @returns            kg/s, W or A
 * @throws OutOfModelError 'outsideItsData' outside the set's ranges; InputError 'notPositive' where it gives 0 or less;
 *         InputError for an impossible set
 */
export function coefficientValue(set: CoefficientSet, evaporating: number, condensing: number): number {
  requireCoefficientSet(set);
  requireInside(set, 'evaporating', evaporating);
  requireInside(set, 'condensing', condensing);
  const { coefficients, temperatureUnit, unit, path } = set;
  const inSi = coefficientsInSi(coefficients, temperatureUnit, unit);
  const value = tenCoefficients(inSi, evaporating - zeroCelsius, condensing - zeroCelsius);
  if (value > 0) return value;
  throw new InputError(
    `${path}.values`,
    `${set.of} ${value} at ${round(evaporating)}/${round(condensing)} K`,
    'a value above 0 everywhere inside the stated ranges: check order, signs and unit of the coefficients and both ranges',
    'notPositive',
  );
}

/** Whether values of a set depend on the liquid: of a capacity, and over mid-points, which it shifts. */
export function dependsOnLiquid({ of, basis }: CoefficientSet): boolean {
  return of === 'capacity' || basis.saturation === 'midPoint';
}

/** @throws InputError that names the first impossible part of the set. */
export function requireCoefficientSet(set: CoefficientSet): void {
  const { path, of, unit } = set;
  requireTenCoefficients(set.coefficients, `${path}.values`);
  const units: readonly string[] = polynomialUnits[of];
  if (!units.includes(unit)) throw new InputError(`${path}.unit`, unit, `for ${of} one of ${units.join(', ')}`);
  requireRange(`${path}.evaporatingRange`, set.evaporatingRange);
  requireRange(`${path}.condensingRange`, set.condensingRange);
}

/**
 * The mains a set or table holds for.
 * @throws InputError 'missingFrequency' where none is stated
 */
export function requireFrequency(path: string, { frequency, voltage }: StatedSupply): Supply {
  if (frequency === null) {
    const expected =
      'the mains frequency these numbers hold for, 50 Hz or 60 Hz: flow and power grow nearly in proportion to it, so that they would be in doubt by a fifth without it';
    throw new InputError(`${path}.frequency`, 'none', expected, 'missingFrequency');
  }
  return { frequency, voltage };
}

function requireRange(path: string, { low, high }: TemperatureRange): void {
  requireFinite(path, low);
  requireFinite(path, high);
  if (!(low > 0 && low <= high)) {
    throw new InputError(path, `${low} to ${high} K`, 'two temperatures above 0 K, the lower one first');
  }
}

function requireInside(set: CoefficientSet, which: 'evaporating' | 'condensing', value: number): void {
  const { low, high } = set[`${which}Range`];
  if (value >= low - roundingKelvin && value <= high + roundingKelvin) return;
  requireFinite(which, value);
  const reason = 'ten coefficients hold only between the temperatures they were made from';
  throw new OutOfModelError(`${which} temperature`, value, 'K', low, high, 'outsideItsData', reason);
}

/** °F to K and back [K]. */
const roundingKelvin = 1e-6;

function round(kelvin: number): number {
  return Math.round(kelvin * 100) / 100;
}
