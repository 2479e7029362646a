// Evaporator and condenser in the document: what their sizes imply, what touches the water, superheat and subcooling.

import * as z from 'zod/mini';
import { choiceField, practice, quantityField } from './field.ts';

const approach = { quantity: 'temperatureDifference', minimum: 1, maximum: 40, level: 'more' } as const;

export const exchangersSchema = z.optional(
  z.strictObject({
    evaporatorApproach: z.optional(
      quantityField({
        ...approach,
        label: 'Source air above evaporating temperature',
        help: 'A larger cold exchanger needs less. Air temperature minus evaporating (dew) temperature: of a blend, the nearest that boiling comes to the air.',
        default: { text: '10 K (7 to 15)', source: practice },
      }),
    ),
    condenserApproach: z.optional(
      quantityField({
        ...approach,
        label: 'Condensing temperature above the water',
        help: 'A larger warm exchanger needs less. Condensing (bubble) temperature minus water temperature: of a blend, the nearest that condensing comes to the water.',
        default: {
          rule: '10 K (7 to 14) with a water loop between, 6 K (4 to 9) with a coil in the tank',
          source: practice,
        },
      }),
    ),
    condenserArrangement: z.optional(
      choiceField(
        ['intermediateLoop', 'coilInTank'],
        { intermediateLoop: 'A water loop between refrigerant and tank', coilInTank: 'A refrigerant coil in the tank' },
        {
          label: 'How the heat gets into the tank',
          help: 'With a water loop between, a leak of refrigerant or oil does not reach the animals.',
          level: 'more',
          default: {
            text: 'intermediateLoop',
            source: 'the arrangement that keeps refrigerant and oil away from the tank',
          },
        },
      ),
    ),
    wettedMetal: z.optional(
      choiceField(
        ['titanium', 'stainless316', 'copper', 'cupronickel', 'polymer', 'unknown'],
        {
          titanium: 'Titanium',
          stainless316: 'Stainless steel 316',
          copper: 'Copper',
          cupronickel: 'Cupronickel',
          polymer: 'Plastic tube',
          unknown: 'Not known',
        },
        {
          label: 'What touches the tank water',
          help: 'Material of the surface that gives the heat to the tank.',
          level: 'more',
          default: { text: 'unknown', source: 'nothing assumed about the material' },
        },
      ),
    ),
    tubeDiameter: z.optional(
      quantityField({
        label: 'Diameter of the coil’s tube',
        help: 'Outer diameter.',
        quantity: 'length',
        minimum: 0.002,
        maximum: 0.1,
        level: 'expert',
        default: { text: '9.5 mm', source: practice },
      }),
    ),
    superheat: z.optional(
      quantityField({
        label: 'Superheat',
        help: 'How far the gas at the compressor is above its dew temperature.',
        quantity: 'temperatureDifference',
        minimum: 0,
        maximum: 60,
        level: 'expert',
        default: { text: '6 K (3 to 10)', source: practice },
      }),
    ),
    subcooling: z.optional(
      quantityField({
        label: 'Subcooling',
        help: 'How far the liquid before the valve or capillary is below its bubble temperature.',
        quantity: 'temperatureDifference',
        minimum: 0,
        maximum: 40,
        level: 'expert',
        default: { text: '3 K (1 to 6)', source: practice },
      }),
    ),
    airSpeed: z.optional(
      quantityField({
        label: 'Air speed at the evaporator',
        help: 'Air flow over the face area of the evaporator.',
        quantity: 'speed',
        minimum: 0.1,
        maximum: 10,
        level: 'expert',
        default: { text: '1.5 m/s (1 to 2)', source: practice },
      }),
    ),
    suctionPressureLimit: z.optional(
      quantityField({
        label: 'Suction pressure held at most',
        help: 'By a crankcase pressure regulator: a valve before the compressor that lets no more than this through, absolute pressure. Spares a motor that was built for more cold.',
        quantity: 'pressure',
        minimum: 1e4,
        maximum: 2e6,
        level: 'more',
        default: { rule: 'no such valve', source: 'none until one is named' },
      }),
    ),
  }),
);
