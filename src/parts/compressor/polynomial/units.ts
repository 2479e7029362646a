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

/** Degrees of the scale per kelvin, and what it reads at 0 °C. */
const temperatureScales: Readonly<Record<TemperatureUnit, { readonly perKelvin: number; readonly atZero: number }>> = {
  celsius: { perKelvin: 1, atZero: 0 },
  fahrenheit: { perKelvin: 1.8, atZero: 32 },
};

/** What a scale reads: degrees per kelvin, and its reading at 0 °C. */
export function temperatureScale(unit: TemperatureUnit): { readonly perKelvin: number; readonly atZero: number } {
  return temperatureScales[unit];
}

/** Reading of a scale [degrees of it] = (T − 273.15) a + b, from T [K]. Worked value: 258.15 K, 1.8, 32 → 5 °F. */
export function onTemperatureScale(temperature: number, perKelvin: number, atZero: number): number {
  return (temperature - zeroCelsius) * perKelvin + atZero;
}

/** A value in base SI, from the unit it was printed in and base SI per unit. Worked value: 12 lb/h → 0.00151 kg/s. */
export function valueInSi(value: number, perUnit: number): number {
  return value * perUnit;
}

/** The set with temperatures in °C and its value in base SI. */
export function coefficientsInSi(
  coefficients: TenCoefficients,
  temperatureUnit: TemperatureUnit,
  unit: PolynomialUnit,
): TenCoefficients {
  const { perKelvin, atZero } = temperatureScales[temperatureUnit];
  return convertedCoefficients(coefficients, { scale: perKelvin, shift: atZero, factor: unitFactor(unit) });
}
