// The machine in the document: its refrigerant and compressor, where it stands, what surrounds it, its small consumers.

import * as z from 'zod/mini';
import { yesNoLabels, yesNoUnknown } from './choices.ts';
import { compressorSchema } from './compressor/compressor.ts';
import { frequency, voltage } from './compressor/nameplate.ts';
import { ofSuchMachines } from './compressor/ranges.ts';
import { choiceField, kindField, listedField, practice, quantityField } from './field.ts';
import { fluidChoices } from './fluids.ts';

/** Level of evaporating temperature that a machine is made for. */
const levels = ['low', 'medium', 'high'] as const;
const levelLabels = {
  low: 'Low: freezers, refrigerators',
  medium: 'Medium: bottle coolers, ice machines',
  high: 'High: dehumidifiers, air conditioners, dryers',
};

const ofMains = 'nominal mains, IEC 60038';

const enclosureVolume = quantityField({
  label: 'Volume it stands in',
  help: 'Air volume around the machine: inner length, width and height, less what stands in it. Decides whether leaked refrigerant could burn.',
  quantity: 'volume',
  minimum: 0.001,
  maximum: 500,
  level: 'more',
});

export const machineSchema = z.strictObject({
  refrigerant: z.optional(
    listedField(fluidChoices, {
      label: 'Refrigerant it would run on',
      help: 'For study. A compressor belongs to the refrigerant it was made for.',
      level: 'first',
      default: { rule: 'the one the compressor was made for', source: 'a compressor belongs to that refrigerant' },
    }),
  ),
  compressor: compressorSchema,
  application: z.optional(
    choiceField(levels, levelLabels, {
      label: 'Made for which cold',
      help: 'The level of evaporating temperature the motor was built for; data sheets say LBP, MBP or HBP.',
      level: 'more',
      default: {
        rule: 'of the appliance, or of the first rating; low where neither is known',
        source: 'follows from the description of the compressor',
      },
    }),
  ),
  count: z.optional(
    quantityField({
      label: 'How many such machines',
      help: 'All alike, each with a circuit of its own.',
      quantity: 'count',
      minimum: 1,
      maximum: 24,
      level: 'more',
      default: { text: '1', source: 'one until more are named' },
    }),
  ),
  supply: z.optional(
    z.strictObject({
      frequency: z.optional(
        quantityField({
          ...frequency,
          label: 'Mains frequency here',
          help: 'Decides how fast the motor turns.',
          level: 'more',
          default: {
            rule: 'of the region: 60 Hz in the United States, 50 Hz elsewhere; of the nameplate where the region is not known',
            source: ofMains,
          },
        }),
      ),
      voltage: z.optional(
        quantityField({
          ...voltage,
          label: 'Mains voltage here',
          help: 'Of the socket the machine is to run on.',
          level: 'more',
          default: {
            rule: 'of the region: 120 V in the United States, 230 V elsewhere; of the nameplate where the region is not known',
            source: ofMains,
          },
        }),
      ),
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
      default: { rule: 'the range of such appliances as built', source: ofSuchMachines.source },
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
    crankcaseHeater: z.optional(
      quantityField({
        ...small,
        label: 'Power of a crankcase heater',
        help: 'A belt or rod that keeps the oil of the resting machine warm. It runs while the machine rests.',
        level: 'more',
        default: { text: '0 W', source: 'none until one is named' },
      }),
    ),
  }),
);
