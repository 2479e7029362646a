// An invented machine whose flow and power follow textbook relations, and sets of ten coefficients fitted to them in any unit: what
// readers of coefficients and tables are tried on.

import { refrigerant } from '../../../../src/matter/refrigerants/index.ts';
import { type RatingBasis, ratedConditions } from '../../../../src/parts/compressor/polynomial/basis.ts';
import type { CoefficientSet } from '../../../../src/parts/compressor/polynomial/coefficient-set.ts';
import { fitTenCoefficients } from '../../../../src/parts/compressor/polynomial/fit.ts';
import { ratedStates } from '../../../../src/parts/compressor/polynomial/flow-and-capacity.ts';
import { convertedCoefficients } from '../../../../src/parts/compressor/polynomial/ten-coefficients.ts';
import {
  type PolynomialQuantity,
  type PolynomialUnit,
  type TemperatureUnit,
  unitFactor,
} from '../../../../src/parts/compressor/polynomial/units.ts';

export const kelvin = (celsius: number) => celsius + 273.15;
export const fluid = refrigerant('R134a');
export const displacement = 6.5e-6;
export const frequency = 50;
export const voltage = 230;
export const evaporatingRange = { low: kelvin(-35), high: kelvin(-5) };
export const condensingRange = { low: kelvin(35), high: kelvin(60) };

export const warmGas: RatingBasis = {
  gas: { kind: 'returnGas', returnGas: kelvin(32.2) },
  liquid: { kind: 'liquid', liquid: kelvin(32.2) },
  saturation: 'dew',
};

/** Flow, capacity, power and current at two levels [K]. */
export function truth(evaporating: number, condensing: number, basis = warmGas): Record<PolynomialQuantity, number> {
  const states = ratedStates(fluid, ratedConditions(fluid, basis, evaporating, condensing));
  const { suction, dischargePressure, isentropicWork, liquidEnthalpy } = states;
  const ratio = dischargePressure / suction.pressure;
  const flowEfficiency = 0.9 * (1 - 0.03 * (ratio ** (1 / 1.1) - 1));
  const massFlow = flowEfficiency * displacement * frequency * 0.97 * suction.density;
  const power = (massFlow * isentropicWork) / 0.6 + 25;
  return {
    massFlow,
    capacity: massFlow * (suction.enthalpy - liquidEnthalpy),
    power,
    current: power / (voltage * 0.65) + 0.2,
  };
}

export function spread(
  { low, high }: { readonly low: number; readonly high: number },
  count: number,
): readonly number[] {
  return Array.from({ length: count }, (_, index) => low + ((high - low) * index) / (count - 1));
}

const places = spread(condensingRange, 6).flatMap((condensing) =>
  spread(evaporatingRange, 7).map((evaporating) => ({ evaporating, condensing })),
);

/** Its set of ten coefficients of one quantity, as printed in these units. */
export function printedSet(
  of: PolynomialQuantity,
  unit: PolynomialUnit,
  temperatureUnit: TemperatureUnit = 'celsius',
  changes: Partial<CoefficientSet> = {},
): CoefficientSet {
  const points = places.map(({ evaporating, condensing }) => ({
    evaporating,
    condensing,
    value: truth(evaporating, condensing)[of],
    name: 'point',
  }));
  const { coefficients } = fitTenCoefficients(points);
  const degrees = temperatureUnit === 'celsius' ? { scale: 1, shift: 0 } : { scale: 1 / 1.8, shift: -32 / 1.8 };
  return {
    path: `coefficients.${of}`,
    label: of,
    of,
    coefficients: convertedCoefficients(coefficients, { ...degrees, factor: 1 / unitFactor(unit) }),
    temperatureUnit,
    unit,
    basis: warmGas,
    evaporatingRange,
    condensingRange,
    supply: { frequency, voltage },
    ...changes,
  };
}
