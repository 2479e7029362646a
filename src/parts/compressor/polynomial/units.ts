// The units in which sets of ten coefficients are printed, and a set in the engine's own: saturation temperatures in °C, value
// in base SI.

import { findUnit } from '../../../quantities/index.ts';
import { convertedCoefficients, type TenCoefficients } from './ten-coefficients.ts';

/** What a set of ten coefficients, or a column of a table, may be of. */
export type PolynomialQuantity = 'massFlow' | 'capacity' | 'power' | 'current';

export type TemperatureUnit = 'celsius' | 'fahrenheit';

/** Units of each quantity that sets are printed in. */
export const polynomialUnits = {
  massFlow: ['kg/h', 'g/s', 'kg/s', 'lb/h'],
  capacity: ['W', 'kW', 'BTU/h'],
  power: ['W', 'kW', 'BTU/h'],
  current: ['A'],
} as const satisfies Readonly<Record<PolynomialQuantity, readonly string[]>>;

/** Base SI of each. */
export const polynomialUnitsInSi = {
  massFlow: 'kg/s',
  capacity: 'W',
  power: 'W',
  current: 'A',
} as const satisfies Readonly<Record<PolynomialQuantity, string>>;

export type PolynomialUnit = (typeof polynomialUnits)[PolynomialQuantity][number];

export const temperatureUnits: readonly TemperatureUnit[] = ['celsius', 'fahrenheit'];

/** 0 °C [K]. */
export const zeroCelsius = 273.15;

/** Base SI per unit. */
export function unitFactor(unit: PolynomialUnit): number {
  if (unit === 'A') return 1;
  return (findUnit('massFlow', unit) ?? findUnit('power', unit))!.factor;
}

/** The set with temperatures in °C and its value in base SI. */
export function coefficientsInSi(
  coefficients: TenCoefficients,
  temperatureUnit: TemperatureUnit,
  unit: PolynomialUnit,
): TenCoefficients {
  const degrees = temperatureUnit === 'celsius' ? { scale: 1, shift: 0 } : { scale: 1.8, shift: 32 };
  return convertedCoefficients(coefficients, { ...degrees, factor: unitFactor(unit) });
}
