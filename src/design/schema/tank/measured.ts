// A tank that is known by what its heater used, and the meter of a tank that is known by its sizes.

import * as z from 'zod/mini';
import { yesNo, yesNoLabels } from '../choices.ts';
import { choiceField, kindField, practice, quantityField } from '../field.ts';
import { gains } from './gains.ts';

const kilowattHour = 3.6e6;

const measurement = {
  energy: quantityField({
    label: 'What the heater used',
    help: 'Electricity of the heater over the time you measured, read from a plug-in meter.',
    quantity: 'energy',
    minimum: 0.001 * kilowattHour,
    maximum: 1e6 * kilowattHour,
    level: 'first',
  }),
  duration: quantityField({
    label: 'How long you measured',
    help: 'A week or more is good; a day is short.',
    quantity: 'duration',
    minimum: 3600,
    maximum: 2 * 365 * 86400,
    level: 'first',
  }),
  roomTemperature: z.optional(
    quantityField({
      label: 'Room temperature while measuring',
      help: 'The mean temperature of the room in that time.',
      quantity: 'temperature',
      minimum: 253.15,
      maximum: 318.15,
      level: 'more',
      default: { rule: 'the usual temperature of the room', source: 'taken to be as usual' },
    }),
  ),
  waterTemperature: z.optional(
    quantityField({
      label: 'Water temperature while measuring',
      help: 'The mean temperature of the water in that time.',
      quantity: 'temperature',
      minimum: 275.15,
      maximum: 318.15,
      level: 'more',
      default: { rule: 'the water temperature to be kept', source: 'taken to be as it shall be kept' },
    }),
  ),
};

/** The load as the heater's meter gives it. */
export const measured = z
  .strictObject({
    kind: kindField('measured'),
    ...measurement,
    volume: z.optional(
      quantityField({
        label: 'Water in the tank',
        help: 'Decides how fast the water cools when the heat fails.',
        quantity: 'volume',
        minimum: 0.001,
        maximum: 200,
        level: 'more',
        default: { text: '200 L (100 to 600)', source: practice },
      }),
    ),
    evaporationShare: z.optional(
      quantityField({
        label: 'Share of the loss that leaves as vapour',
        help: 'Vapour carries heat that does not warm the room. Little under a tight lid, half or more without one.',
        quantity: 'fraction',
        minimum: 0,
        maximum: 1,
        level: 'more',
        default: { text: '35 % (10 to 60)', source: practice },
      }),
    ),
    ...gains,
  })
  .check(
    z.meta({
      title: 'I measured what the heater uses',
      description: 'A plug-in meter on the heater for some days; better than any calculation.',
    }),
  );

/** A measurement beside the sizes: tells how far the computed load is off. */
export const meter = z.optional(
  z
    .discriminatedUnion('kind', [
      z
        .strictObject({ kind: kindField('none') })
        .check(z.meta({ title: 'Not measured', description: 'The computed load stands alone.' })),
      z
        .strictObject({
          kind: kindField('heater'),
          ...measurement,
          adopt: z.optional(
            choiceField(yesNo, yesNoLabels, {
              label: 'Take the measurement as the load',
              help: 'Then the losses are as measured, and the calculation says only how they change.',
              level: 'more',
              default: { text: 'no', source: 'the measurement is compared until it is adopted' },
            }),
          ),
        })
        .check(z.meta({ title: 'A meter on the heater', description: 'What the heater used in some days.' })),
    ])
    .check(
      z.meta({
        title: 'Meter on the heater',
        description: 'A measurement beside the sizes.',
        field: {
          label: 'Meter on the heater',
          help: 'What the heater really used shows how far the calculation is off.',
          level: 'more',
          default: { text: 'none', source: 'nothing measured until it is given' },
        },
      }),
    ),
);
