// The zero of enthalpy and entropy, in words of the view: such numbers mean nothing without it.

import type { ReferenceStateName } from '../../matter/refrigerants/index.ts';
import { sayQuantity, type UnitView } from '../../quantities/index.ts';

const freezing = 273.15;
const atmosphere = 101_325;

/** "200 kJ/kg and 1 kJ/(kg K) in boiling liquid at 0 °C". */
export function sayReferenceState(name: ReferenceStateName, view: UnitView): string {
  switch (name) {
    case 'iir':
      return `${sayQuantity(200e3, 'enthalpy', view, 4)} and ${sayQuantity(1000, 'entropy', view, 4)} in boiling liquid at ${sayQuantity(freezing, 'temperature', view)}`;
    case 'ashrae':
      return `zero in boiling liquid at ${sayQuantity(freezing - 40, 'temperature', view)}`;
    case 'normalBoilingPoint':
      return `zero in boiling liquid at ${sayQuantity(atmosphere, 'pressure', view, 5)}`;
  }
}
