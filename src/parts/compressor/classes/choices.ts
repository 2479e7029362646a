// Choices a person has when describing a machine: how its motor starts, and its oil.

import type { Oil } from '../../../matter/refrigerants/index.ts';
import { machineData, type StartType, startTypes } from './machine-data.ts';

/** Start types with words for a person. */
export const startTypeChoices: readonly { readonly name: StartType; readonly title: string }[] = startTypes.map(
  (name) => ({ name, title: machineData.motors.get(name)!.title }),
);

/** Oils of small hermetic machines with words for a person; names as the catalogue of refrigerants uses them. */
export const oilChoices: readonly { readonly name: Oil; readonly title: string }[] = [
  { name: 'mineral', title: 'mineral oil' },
  { name: 'alkylbenzene', title: 'alkylbenzene' },
  { name: 'polyolester', title: 'polyolester (ester oil)' },
  { name: 'polyvinylether', title: 'polyvinyl ether' },
  { name: 'polyalkyleneglycol', title: 'polyalkylene glycol' },
];
