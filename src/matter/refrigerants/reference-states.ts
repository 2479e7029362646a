// Where enthalpy and entropy count from. Inside the program they count from the first of these; the others differ by one
// constant in h and one in s per fluid, so that differences, work, heat and efficiency are the same under each.

import { InputError } from '../../numerics/index.ts';
import { saturationAtPressure, saturationAtTemperature } from './flash/flash.ts';
import type { Refrigerant } from './types.ts';

export type ReferenceStateName = 'iir' | 'ashrae' | 'normalBoilingPoint';

export interface ReferenceState {
  readonly name: ReferenceStateName;
  /** "200 kJ/kg and 1 kJ/(kg K) in the saturated liquid at 0 °C". */
  readonly words: string;
  readonly source: string;
}

export const referenceStates: readonly ReferenceState[] = [
  {
    name: 'iir',
    words: '200 kJ/kg and 1 kJ/(kg K) in the saturated liquid at 0 °C',
    source: 'convention of the International Institute of Refrigeration',
  },
  {
    name: 'ashrae',
    words: 'zero in the saturated liquid at −40 °C',
    source: 'convention of the ASHRAE Handbook, Fundamentals, and of most US textbooks',
  },
  {
    name: 'normalBoilingPoint',
    words: 'zero in the saturated liquid at 101 325 Pa',
    source: 'convention of the normal boiling point',
  },
];

/**
 * What is to be added to h and s of this engine so that they count from another reference state.
 * @param fluid  the fluid
 * @param which  the reference state
 * @returns      Δh [J/kg] and Δs [J/(kg K)]
 * @throws InputError on an unknown name; OutOfModelError where the fluid has no liquid at that state
 * Worked value: R600a, 'normalBoilingPoint' → −173.5 kJ/kg.
 */
export function referenceOffset(
  fluid: Refrigerant,
  which: ReferenceStateName,
): { readonly enthalpy: number; readonly entropy: number } {
  switch (which) {
    case 'iir':
      return { enthalpy: 0, entropy: 0 };
    case 'ashrae': {
      const { liquid } = saturationAtTemperature(fluid, 233.15);
      return { enthalpy: -liquid.enthalpy, entropy: -liquid.entropy };
    }
    case 'normalBoilingPoint': {
      const { liquid } = saturationAtPressure(fluid, 101325);
      return { enthalpy: -liquid.enthalpy, entropy: -liquid.entropy };
    }
    default:
      throw new InputError('referenceState', which, referenceStates.map(({ name }) => name).join(', '));
  }
}
