// What warms the water besides the heater: pumps, lights, an ultraviolet lamp.

import * as z from 'zod/mini';
import { practice, quantityField } from '../field.ts';

/** Pumps and lights. */
export const gains = {
  pumpPower: z.optional(
    quantityField({
      label: 'Power of the pumps',
      help: 'Electricity of all filter and flow pumps together. Nearly all of it ends as heat in the water.',
      quantity: 'electricPower',
      minimum: 0,
      maximum: 2000,
      level: 'more',
      default: { text: '10 W (5 to 30)', source: practice },
    }),
  ),
  pumpShareToWater: z.optional(
    quantityField({
      label: 'Share of the pumps’ power that warms the water',
      help: 'Near 100 % for a pump inside the water, less for one that stands in the room.',
      quantity: 'fraction',
      minimum: 0,
      maximum: 1,
      level: 'expert',
      default: { text: '90 % (70 to 100)', source: practice },
    }),
  ),
  lightPower: z.optional(
    quantityField({
      label: 'Power of the lights',
      help: 'Electricity of all lights over the tank while they are on.',
      quantity: 'electricPower',
      minimum: 0,
      maximum: 5000,
      level: 'more',
      default: { text: '0 W', source: 'no light counted until one is named' },
    }),
  ),
  lightHours: z.optional(
    quantityField({
      label: 'Light per day',
      help: 'How long the lights are on in a day.',
      quantity: 'duration',
      minimum: 0,
      maximum: 86400,
      level: 'more',
      default: { text: '8 h (6 to 12)', source: practice },
    }),
  ),
  lightShareToWater: z.optional(
    quantityField({
      label: 'Share of the light’s power that warms the water',
      help: 'The rest warms the room directly.',
      quantity: 'fraction',
      minimum: 0,
      maximum: 1,
      level: 'expert',
      default: { text: '30 % (10 to 50)', source: practice },
    }),
  ),
};

/** An ultraviolet lamp, of a tank that is known by its sizes. */
export const ultraviolet = {
  ultravioletPower: z.optional(
    quantityField({
      label: 'Power of the ultraviolet clarifier',
      help: 'Electricity of an ultraviolet lamp in the water’s way.',
      quantity: 'electricPower',
      minimum: 0,
      maximum: 2000,
      level: 'expert',
      default: { text: '0 W', source: 'no lamp counted until one is named' },
    }),
  ),
  ultravioletShareToWater: z.optional(
    quantityField({
      label: 'Share of the clarifier’s power that warms the water',
      help: 'Nearly all of a lamp whose sleeve the water flows around.',
      quantity: 'fraction',
      minimum: 0,
      maximum: 1,
      level: 'expert',
      when: { field: 'ultravioletPower' },
      default: { text: '90 % (70 to 100)', source: practice },
    }),
  ),
};
