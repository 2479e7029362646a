// Capacity, power and current as stated at single running points, by the name of the point or by its temperatures.

import * as z from 'zod/mini';
import { ratingPoint, ratingPointNames } from '../../../parts/compressor/index.ts';
import { kindField, listedField, listField, quantityField } from '../field.ts';
import { frequency, ofNameplate, voltage } from './nameplate.ts';
import { leftOpen } from './ranges.ts';

const temperature = { quantity: 'temperature', level: 'more' } as const;

/** Temperatures that machines are stated and measured at. */
export const evaporating = { ...temperature, minimum: 193.15, maximum: 318.15 } as const;
export const condensing = { ...temperature, minimum: 253.15, maximum: 373.15 } as const;
export const suctionGas = { ...temperature, minimum: 193.15, maximum: 353.15 } as const;
export const liquid = { ...temperature, minimum: 213.15, maximum: 373.15 } as const;

export const capacity = { quantity: 'power', minimum: 5, maximum: 50000, level: 'more' } as const;
export const power = { quantity: 'electricPower', minimum: 5, maximum: 20000, level: 'more' } as const;
export const current = { quantity: 'current', minimum: 0.02, maximum: 500, level: 'more' } as const;

const whyAll = 'the gas and the liquid alone are worth a fifth of the capacity';

const at = z
  .discriminatedUnion('kind', [
    z
      .strictObject({
        kind: kindField('named'),
        point: listedField(
          ratingPointNames.map((name) => ({ name, label: ratingPoint(name).title })),
          { label: 'Rating point', help: 'The name that stands beside the numbers.', level: 'more' },
        ),
      })
      .check(z.meta({ title: 'A point with a name', description: 'Its four temperatures follow from the name.' })),
    z
      .strictObject({
        kind: kindField('conditions'),
        evaporating: quantityField({
          ...evaporating,
          label: 'Evaporating temperature',
          help: 'Dew temperature at the suction pressure.',
        }),
        condensing: quantityField({
          ...condensing,
          label: 'Condensing temperature',
          help: 'Dew temperature at the discharge pressure.',
        }),
        returnGas: quantityField({
          ...suctionGas,
          label: 'Return gas temperature',
          help: 'Gas at the inlet of the compressor.',
          why: whyAll,
        }),
        liquid: quantityField({
          ...liquid,
          label: 'Liquid temperature',
          help: 'Liquid before the valve or capillary.',
          why: whyAll,
        }),
      })
      .check(z.meta({ title: 'By its temperatures', description: 'All four, as the sheet states them.' })),
  ])
  .check(
    z.meta({
      title: 'Stated at',
      description: 'The conditions of the rating.',
      field: {
        label: 'Stated at',
        help: 'A named rating point, or the four temperatures of the sheet.',
        level: 'more',
      },
    }),
  );

export const ratings = z.optional(
  listField(
    z.strictObject({
      at,
      capacity: z.optional(
        quantityField({ ...capacity, default: leftOpen, label: 'Capacity', help: 'Cooling capacity stated there.' }),
      ),
      power: z.optional(
        quantityField({ ...power, default: leftOpen, label: 'Electric power', help: 'Electric power stated there.' }),
      ),
      current: z.optional(
        quantityField({ ...current, default: leftOpen, label: 'Current', help: 'Current stated there.' }),
      ),
      frequency: z.optional(
        quantityField({
          ...frequency,
          level: 'more',
          label: 'Mains frequency of the rating',
          help: 'The frequency it was stated for.',
          default: ofNameplate,
        }),
      ),
      voltage: z.optional(
        quantityField({
          ...voltage,
          level: 'expert',
          label: 'Voltage of the rating',
          help: 'The voltage it was stated for.',
          default: ofNameplate,
        }),
      ),
    }),
    {
      label: 'Ratings',
      help: 'Capacity and power at single points, from a data sheet or a catalogue.',
      level: 'more',
      item: 'rating',
    },
  ),
);
