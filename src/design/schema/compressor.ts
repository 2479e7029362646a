// The compressor in the document: by the appliance it came out of, by its displacement, or by a rating.

import * as z from 'zod/mini';
import { applianceClasses, ratingPoint, ratingPointNames } from '../../parts/compressor/index.ts';
import { choiceField, kindField, listedField, quantityField } from './field.ts';
import { madeForChoices } from './fluids.ts';

/** Level of evaporating temperature that a compressor is made for. */
export const levels = ['low', 'medium', 'high'] as const;
export const levelLabels = {
  low: 'Low: freezers, refrigerators',
  medium: 'Medium: bottle coolers, ice machines',
  high: 'High: dehumidifiers, air conditioners, dryers',
};

const madeFor = listedField(madeForChoices, {
  label: 'Refrigerant it was made for',
  help: 'Printed on the rating plate of the appliance and of the compressor.',
  level: 'first',
});

export const fromClass = {
  rule: 'the range of such compressors',
  source: 'ranges of appliance classes: typical values from memory, and common practice',
};

const expert = { level: 'expert', default: fromClass } as const;

/** Numbers that one rating cannot tell; every kind of description may give them. */
const details = {
  speed: z.optional(
    quantityField({
      ...expert,
      label: 'Speed of the shaft',
      help: 'Revolutions under load; about 2900 rpm on 50 Hz mains, 3480 rpm on 60 Hz.',
      quantity: 'frequency',
      minimum: 5,
      maximum: 200,
    }),
  ),
  clearanceRatio: z.optional(
    quantityField({
      ...expert,
      label: 'Clearance ratio',
      help: 'Volume left above the piston over the swept volume.',
      quantity: 'fraction',
      minimum: 0,
      maximum: 0.5,
    }),
  ),
  reexpansionExponent: z.optional(
    quantityField({
      ...expert,
      label: 'Exponent of re-expansion',
      help: 'Polytropic exponent of the gas left in the clearance.',
      quantity: 'ratio',
      minimum: 1,
      maximum: 2,
    }),
  ),
  fillingFactor: z.optional(
    quantityField({
      ...expert,
      label: 'Filling factor',
      help: 'What warm suction gas, valves and leakage leave of the swept flow.',
      quantity: 'fraction',
      minimum: 0.1,
      maximum: 1,
    }),
  ),
  frictionPressure: z.optional(
    quantityField({
      ...expert,
      label: 'Constant losses as a pressure',
      help: 'Friction and idle losses over the swept volume flow.',
      quantity: 'pressureDifference',
      minimum: 0,
      maximum: 1e6,
    }),
  ),
  shellHeatShare: z.optional(
    quantityField({
      ...expert,
      label: 'Share of the power that leaves through the shell',
      help: 'Heat the shell gives to the air around it, over the electricity of the compressor.',
      quantity: 'fraction',
      minimum: 0,
      maximum: 0.95,
    }),
  ),
};

const compressionEfficiency = z.optional(
  quantityField({
    ...expert,
    label: 'Compression efficiency',
    help: 'Ideal work over the electricity that grows with it.',
    quantity: 'fraction',
    minimum: 0.1,
    maximum: 1,
  }),
);

const displacementLimits = { quantity: 'displacement', minimum: 5e-7, maximum: 2e-4 } as const;

const salvaged = z
  .strictObject({
    kind: kindField('salvaged'),
    madeFor,
    appliance: listedField(
      applianceClasses.map(({ name, title }) => ({ name, label: title.charAt(0).toUpperCase() + title.slice(1) })),
      {
        label: 'It came out of a …',
        help: 'The appliance tells what size and kind of compressor to expect.',
        level: 'first',
      },
    ),
    displacement: z.optional(
      quantityField({
        ...displacementLimits,
        label: 'Volume swept per revolution',
        help: 'From the maker’s data sheet; narrows the answer more than most other numbers.',
        level: 'more',
        default: fromClass,
      }),
    ),
    ...details,
    compressionEfficiency,
  })
  .check(z.meta({ title: 'I know what it came out of', description: 'Ranges of such compressors are assumed.' }));

const byDisplacement = z
  .strictObject({
    kind: kindField('displacement'),
    madeFor,
    displacement: quantityField({
      ...displacementLimits,
      label: 'Volume swept per revolution',
      help: 'From the maker’s data sheet, in cm³.',
      level: 'first',
    }),
    application: choiceField(levels, levelLabels, {
      label: 'Made for which cold',
      help: 'The level of evaporating temperature the compressor was built for; data sheets say LBP, MBP or HBP.',
      level: 'first',
    }),
    ...details,
    compressionEfficiency,
  })
  .check(z.meta({ title: 'I know its displacement', description: 'Swept volume from a data sheet.' }));

const byRating = z
  .strictObject({
    kind: kindField('rating'),
    madeFor,
    ratingPoint: listedField(
      ratingPointNames.map((name) => ({ name, label: ratingPoint(name).title })),
      {
        label: 'Rated at',
        help: 'The named conditions under which capacity and power are stated.',
        level: 'first',
      },
    ),
    capacity: quantityField({
      label: 'Capacity',
      help: 'Cooling capacity stated there.',
      quantity: 'power',
      minimum: 5,
      maximum: 50000,
      level: 'first',
    }),
    power: quantityField({
      label: 'Electric power',
      help: 'Electric power stated there.',
      quantity: 'electricPower',
      minimum: 5,
      maximum: 20000,
      level: 'first',
    }),
    ...details,
  })
  .check(z.meta({ title: 'I have its rating', description: 'Capacity and power at a named rating point.' }));

/** The compressor however it is known. */
export const compressorSchema = z.discriminatedUnion('kind', [salvaged, byDisplacement, byRating]).check(
  z.meta({
    title: 'Compressor',
    description: 'However it is known.',
    field: {
      label: 'How the compressor is known',
      help: 'By the appliance it came out of, by its displacement, or by a rating.',
      level: 'first',
    },
  }),
);
