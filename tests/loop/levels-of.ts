// Conditions that exist for every fluid: the tests of this folder speak of cycles as small heat pumps have them; where a
// fluid's dome does not hold their temperatures, they are moved and drawn together as a whole.

import {
  type ReferenceStateName,
  refrigerant,
  saturationAtDewTemperature,
} from '../../src/matter/refrigerants/index.ts';

/** The temperatures that the tests use lie in this span [K], the coldest subcooled liquid and the hottest condensing gas included. */
const span = { low: 222, high: 345 } as const;
/** The hottest condensing temperature of a test, as a share of the critical one. */
const highestShare = 0.985;

export interface LevelsOf {
  /** A temperature of the tests as it is for this fluid [K]: itself, but for a fluid whose dome is too small for it. */
  at(temperature: number): number;
  /** Dew pressure there, or a share of it [Pa]. */
  pressureAt(temperature: number, share?: number): number;
  /** A zero of enthalpy and entropy other than the usual one; water is solid at −40 °C. */
  readonly coldZero: ReferenceStateName;
}

export function levelsOf(name: string): LevelsOf {
  const fluid = refrigerant(name);
  const { critical, limits } = fluid;
  const low = Math.max(limits.temperatureMin, span.low);
  const scale = Math.min((highestShare * critical.temperature - low) / (span.high - span.low), 1);
  const at = (temperature: number) =>
    low === span.low && scale === 1 ? temperature : low + scale * (temperature - span.low);
  return {
    at,
    pressureAt: (temperature, share = 1) => share * saturationAtDewTemperature(fluid, at(temperature)).vapour.pressure,
    coldZero: limits.temperatureMin < 233.15 ? 'ashrae' : 'normalBoilingPoint',
  };
}
