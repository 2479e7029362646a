// The tank in the document: its water, what lives in it, and what it needs by measurement or by its sizes.

import * as z from 'zod/mini';
import { choiceField, quantityField } from '../field.ts';
import { measured } from './measured.ts';
import { cylinder, lShape, panels, rectangular } from './sized.ts';

export const tankSchema = z.strictObject({
  waterTemperature: quantityField({
    label: 'Water temperature',
    help: 'What the water is to be kept at.',
    quantity: 'temperature',
    minimum: 275.15,
    maximum: 318.15,
    level: 'first',
  }),
  water: choiceField(
    ['fresh', 'sea'],
    { fresh: 'Fresh water', sea: 'Sea water' },
    { label: 'Water', help: 'Sea water evaporates a little less and attacks more metals.', level: 'first' },
  ),
  salinity: z.optional(
    quantityField({
      label: 'Salinity',
      help: 'Grams of salt in a kilogram of water.',
      quantity: 'salinity',
      minimum: 0,
      maximum: 0.12,
      level: 'expert',
      default: { rule: '35 g/kg in sea water, 0 in fresh water', source: 'ocean water' },
    }),
  ),
  livestock: z.optional(
    choiceField(
      ['fish', 'invertebrates', 'plantsOnly', 'unknown'],
      {
        fish: 'Fish',
        invertebrates: 'Shrimps, snails, corals or other invertebrates',
        plantsOnly: 'Plants only',
        unknown: 'Not said',
      },
      {
        label: 'What lives in it',
        help: 'Invertebrates die of traces of copper that fish may bear.',
        level: 'more',
        default: { text: 'unknown', source: 'nothing assumed about the animals' },
      },
    ),
  ),
  load: z.discriminatedUnion('kind', [measured, rectangular, cylinder, lShape, panels]).check(
    z.meta({
      title: 'What the tank needs',
      description: 'By measurement or by sizes.',
      field: {
        label: 'How the tank is known',
        help: 'A measurement of what the heater uses is better than any calculation from sizes.',
        level: 'first',
      },
    }),
  ),
});
