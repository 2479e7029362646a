// Conditions that exist for every fluid: the tests of this folder speak of cycles between about 240 and 320 K, as small heat
// pumps have them; where a fluid's dome does not hold these, they are moved as a whole.

import {
  type ReferenceStateName,
  type Refrigerant,
  refrigerant,
  saturationAtDewTemperature,
} from '../../src/matter/refrigerants/index.ts';

/** The span that the tests use, with room for superheat below the critical point [K]. */
const span = { low: 240, high: 328 } as const;

/** What is added to the temperatures of the tests [K]: 0 but for carbon dioxide, which is critical at 304 K, and water. */
export function shiftOf({ critical, limits, triplePoint }: Refrigerant): number {
  const lowest = Math.max(limits.temperatureMin, triplePoint.temperature);
  return Math.max(lowest - span.low, 0) + Math.min(critical.temperature - span.high, 0);
}

export interface LevelsOf {
  /** A zero of enthalpy and entropy other than the usual one; water is solid at −40 °C. */
  readonly coldZero: ReferenceStateName;
  /** A temperature of the tests as it is for this fluid [K]. */
  at(temperature: number): number;
  /** Dew pressure there, or a share of it [Pa]. */
  pressureAt(temperature: number, share?: number): number;
}

export function levelsOf(name: string): LevelsOf {
  const fluid = refrigerant(name);
  const shift = shiftOf(fluid);
  const at = (temperature: number) => temperature + shift;
  return {
    at,
    coldZero: fluid.limits.temperatureMin < 233.15 ? 'ashrae' : 'normalBoilingPoint',
    pressureAt: (temperature, share = 1) => share * saturationAtDewTemperature(fluid, at(temperature)).vapour.pressure,
  };
}
