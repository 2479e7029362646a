// The water surface of the display tank and of every other vessel.

import * as z from 'zod/mini';
import { choiceField, practice, quantityField } from '../field.ts';

export function surface(of: string) {
  return {
    surface: z.optional(
      choiceField(
        ['still', 'rippled', 'rough'],
        {
          still: 'Still: a mirror',
          rippled: 'Rippled by a filter outlet',
          rough: 'Rough: broken by a strong pump or air stones',
        },
        {
          label: `Surface of the water${of}`,
          help: 'The livelier the surface, the more water evaporates.',
          level: 'more',
          default: { text: 'rippled', source: practice },
        },
      ),
    ),
    evaporationFactor: z.optional(
      quantityField({
        label: `Correction of the evaporation${of}`,
        help: 'Multiplies the computed evaporation and the convection of the surface; 1 leaves them as published.',
        quantity: 'ratio',
        minimum: 0.1,
        maximum: 5,
        level: 'expert',
        default: {
          rule: '1, with the range in which published methods differ for such a surface',
          source: 'spread of published evaporation methods for still, rippled and rough water',
        },
      }),
    ),
  };
}

export const airSpeed = z.optional(
  quantityField({
    label: 'Air over the water',
    help: 'Speed of the room air over the surface: 0.1 m/s in a closed room, more beside a fan.',
    quantity: 'speed',
    minimum: 0,
    maximum: 3,
    level: 'expert',
    default: { rule: 'that of the evaporation method', source: 'still room air' },
  }),
);

/** Water level of a vessel. */
export function waterDepth(of: string) {
  return z.optional(
    quantityField({
      label: `Depth of the water${of}`,
      help: 'From the bottom to the surface.',
      quantity: 'length',
      minimum: 0.02,
      maximum: 10,
      level: 'more',
      default: { rule: '95 % of the height (92 to 98 %)', source: practice },
    }),
  );
}
