// The compressor in the document, by whatever is known of it: where it came from, what is printed on it, what was stated or
// measured. Everything may be left out; what is not known is a range.

import * as z from 'zod/mini';
import { applianceClasses } from '../../../parts/compressor/index.ts';
import { sentenceStart } from '../../../quantities/index.ts';
import { listedField, quantityField } from '../field.ts';
import { madeForChoices } from '../fluids.ts';
import { bench } from './bench.ts';
import { nameplate } from './nameplate.ts';
import { machineNumbers } from './numbers.ts';
import { leftOpen, ofSuchMachines } from './ranges.ts';
import { ratings } from './ratings.ts';
import { coefficients, tables } from './sheets.ts';

const dome = { quantity: 'length', minimum: 0.05, maximum: 1, level: 'more', default: leftOpen } as const;

export const compressorSchema = z.optional(
  z.strictObject({
    appliance: z.optional(
      listedField(
        applianceClasses.map(({ name, title }) => ({ name, label: sentenceStart(title) })),
        {
          label: 'It came out of a …',
          help: 'The appliance tells what size and kind of compressor to expect.',
          level: 'first',
          default: { rule: 'any small machine', source: 'the span of all appliances known here' },
        },
      ),
    ),
    madeFor: z.optional(
      listedField(madeForChoices, {
        label: 'Refrigerant it was made for',
        help: 'Printed on the rating plate of the appliance and of the compressor.',
        level: 'first',
        default: { rule: 'the usual one of such appliances in those years', source: ofSuchMachines.source },
      }),
    ),
    year: z.optional(
      quantityField({
        quantity: 'calendarYear',
        minimum: 1930,
        maximum: 2100,
        label: 'Year it was made in',
        help: 'Or between which years, such as 1995 to 2005. Decides fluid, oil and how good the motor is.',
        level: 'first',
        default: { rule: 'any year', source: 'the span of all years' },
      }),
    ),
    domeHeight: z.optional(
      quantityField({
        ...dome,
        label: 'Height of the dome',
        help: 'Without its feet. With the diameter it tells the size of the machine.',
      }),
    ),
    domeDiameter: z.optional(
      quantityField({ ...dome, label: 'Diameter of the dome', help: 'Of an oval one, the mean of both.' }),
    ),
    displacement: z.optional(
      quantityField({
        quantity: 'displacement',
        minimum: 5e-7,
        maximum: 2e-4,
        label: 'Volume swept per revolution',
        help: 'From the maker’s data sheet; narrows the answer more than most other numbers.',
        level: 'more',
        default: ofSuchMachines,
      }),
    ),
    nameplate,
    ratings,
    coefficients,
    tables,
    bench,
    ...machineNumbers,
  }),
);
