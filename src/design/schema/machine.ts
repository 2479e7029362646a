// The machine in the document: its refrigerant and compressor, where it stands, what surrounds it, its small consumers.

import * as z from 'zod/mini';
import { yesNoLabels, yesNoUnknown } from './choices.ts';
import { compressorSchema, fromClass, levelLabels, levels } from './compressor.ts';
import { choiceField, kindField, listedField, practice, quantityField } from './field.ts';
import { fluidChoices } from './fluids.ts';

const enclosureVolume = quantityField({
  label: 'Volume it stands in',
  help: 'Air volume around the machine: inner length, width and height, less what stands in it. Decides whether leaked refrigerant could burn.',
  quantity: 'volume',
  minimum: 0.001,
  maximum: 500,
  level: 'more',
});

export const machineSchema = z.strictObject({
  refrigerant: listedField(fluidChoices, {
    label: 'Refrigerant it would run on',
    help: 'For study. A compressor belongs to the refrigerant it was made for.',
    level: 'first',
  }),
  compressor: compressorSchema,
  application: z.optional(
    choiceField(levels, levelLabels, {
      label: 'Made for which cold',
      help: 'The level of evaporating temperature the motor was built for.',
      level: 'more',
      default: { rule: 'as such compressors usually are', source: 'follows from the description of the compressor' },
    }),
  ),
  shellPlace: z.optional(
    choiceField(
      ['tankRoom', 'sourceRoom', 'outdoors'],
      { tankRoom: 'In the room of the tank', sourceRoom: 'Where the heat is taken from', outdoors: 'Outdoors' },
      {
        label: 'Where the compressor stands',
        help: 'Its shell warms what is around it.',
        level: 'more',
        default: { text: 'tankRoom', source: practice },
      },
    ),
  ),
  enclosure: z.optional(
    z
      .discriminatedUnion('kind', [
        z
          .strictObject({ kind: kindField('openRoom') })
          .check(z.meta({ title: 'Open in the room', description: 'No cabinet around it.' })),
        z
          .strictObject({ kind: kindField('closedCabinet'), volume: enclosureVolume })
          .check(z.meta({ title: 'In a closed cabinet', description: 'Under the tank, for instance.' })),
        z
          .strictObject({ kind: kindField('hood'), volume: enclosureVolume })
          .check(z.meta({ title: 'Under a hood', description: 'A cover open to one side.' })),
      ])
      .check(
        z.meta({
          title: 'What surrounds the machine',
          description: 'Where leaked refrigerant would gather.',
          field: {
            label: 'What surrounds the machine',
            help: 'Where leaked refrigerant would gather.',
            level: 'more',
            default: { text: 'openRoom', source: practice },
          },
        }),
      ),
  ),
  sunkenPlace: z.optional(
    z
      .discriminatedUnion('kind', [
        z
          .strictObject({ kind: kindField('unknown') })
          .check(z.meta({ title: 'Not known', description: 'Nobody has looked for a low place near the machine.' })),
        z
          .strictObject({ kind: kindField('none') })
          .check(z.meta({ title: 'None', description: 'The floor is level, without pit, open drain or step down.' })),
        z
          .strictObject({
            kind: kindField('pit'),
            volume: quantityField({
              label: 'Volume of the low place',
              help: 'Length, width and depth below the floor around it, by tape measure.',
              quantity: 'volume',
              minimum: 0.001,
              maximum: 500,
              level: 'more',
            }),
          })
          .check(z.meta({ title: 'There is one', description: 'A pit, a sunken stand, a step down, a shaft.' })),
      ])
      .check(
        z.meta({
          title: 'Low place near the machine',
          description: 'Where a heavy gas would flow and stay.',
          field: {
            label: 'A place lower than the floor nearby',
            help: 'A pit, a sunken stand, an open drain, a step down: refrigerants are heavier than air, flow there and stay.',
            level: 'more',
            default: { text: 'unknown', source: 'nothing assumed about the floor' },
          },
        }),
      ),
  ),
  charge: z.optional(
    quantityField({
      label: 'Refrigerant in the circuit',
      help: 'Printed on the rating plate of the appliance. Shown against limits only; never an amount to fill in.',
      quantity: 'mass',
      minimum: 0.001,
      maximum: 20,
      level: 'more',
      default: { rule: 'the range of such appliances as built', source: fromClass.source },
    }),
  ),
  forFlammables: z.optional(
    choiceField(yesNoUnknown, yesNoLabels, {
      label: 'Is the equipment made for a flammable refrigerant?',
      help: 'Relays, switches, thermostat and fan near the circuit must be made for it.',
      level: 'more',
      default: { text: 'unknown', source: 'nothing assumed about safety equipment' },
    }),
  ),
});

const small = { quantity: 'electricPower', minimum: 0, maximum: 2000 } as const;

export const powerSchema = z.optional(
  z.strictObject({
    fan: z.optional(
      quantityField({
        ...small,
        label: 'Power of the fan',
        help: 'The fan that drives the source air through the evaporator.',
        level: 'more',
        default: { text: '8 W (4 to 15)', source: practice },
      }),
    ),
    loopPump: z.optional(
      quantityField({
        ...small,
        label: 'Power of the loop pump',
        help: 'The pump of the water loop between refrigerant and tank.',
        level: 'more',
        default: { rule: '5 W (3 to 10) with a water loop, 0 W with a coil in the tank', source: practice },
      }),
    ),
    controls: z.optional(
      quantityField({
        ...small,
        label: 'Power of the controls',
        help: 'Thermostat, relays, display; day and night.',
        level: 'expert',
        default: { text: '3 W (1 to 6)', source: practice },
      }),
    ),
  }),
);
