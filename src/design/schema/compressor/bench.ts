// What somebody measured: thermometers clamped to the pipes and a meter in the socket, of a machine that ran steadily.

import * as z from 'zod/mini';
import { kindField, listField, practice, quantityField } from '../field.ts';
import { frequency, voltage } from './nameplate.ts';
import { leftOpen } from './ranges.ts';
import { condensing, current, evaporating, liquid, power, suctionGas } from './ratings.ts';

const meter = z
  .discriminatedUnion('kind', [
    z
      .strictObject({
        kind: kindField('watts'),
        power: quantityField({ ...power, label: 'Power at the meter', help: 'Watts while it ran steadily.' }),
      })
      .check(z.meta({ title: 'A watt meter', description: 'A plug-in meter that shows watts.' })),
    z
      .strictObject({
        kind: kindField('ampsAndVolts'),
        current: quantityField({ ...current, label: 'Current at the meter', help: 'Amps while it ran steadily.' }),
        powerFactor: z.optional(
          quantityField({
            quantity: 'powerFactor',
            minimum: 0.2,
            maximum: 1,
            level: 'more',
            label: 'Power factor',
            help: 'Amps times volts is not watts: a small motor draws 40 to 90 % of them.',
            default: { text: '0.7 (0.45 to 0.95)', source: practice },
          }),
        ),
      })
      .check(z.meta({ title: 'A clamp meter', description: 'Amps only; the power factor is a range.' })),
  ])
  .check(
    z.meta({
      title: 'Meter',
      description: 'What the electricity was measured with.',
      field: { label: 'Measured with', help: 'A meter that shows watts tells far more.', level: 'more' },
    }),
  );

const here = { rule: 'of the mains here', source: 'taken to be measured here' };

export const bench = z.optional(
  listField(
    z.strictObject({
      evaporating: quantityField({
        ...evaporating,
        label: 'Evaporating temperature',
        help: 'Clamped to a pipe of the evaporator where liquid still boils, or dew temperature from a gauge.',
      }),
      condensing: quantityField({
        ...condensing,
        label: 'Condensing temperature',
        help: 'Clamped to the middle of the condenser, or dew temperature from a gauge.',
      }),
      suction: quantityField({
        ...suctionGas,
        label: 'Suction pipe',
        help: 'Clamped a hand’s width before the compressor, wrapped against the air.',
      }),
      discharge: z.optional(
        quantityField({
          quantity: 'temperature',
          level: 'more',
          minimum: 253.15,
          maximum: 473.15,
          default: leftOpen,
          label: 'Discharge pipe',
          help: 'Clamped a hand’s width behind the compressor, wrapped against the air.',
        }),
      ),
      liquid: quantityField({ ...liquid, label: 'Liquid pipe', help: 'Clamped before the valve or capillary.' }),
      surroundings: quantityField({
        quantity: 'temperature',
        level: 'more',
        minimum: 243.15,
        maximum: 333.15,
        label: 'Air around the shell',
        help: 'While it was measured.',
      }),
      meter,
      frequency: z.optional(
        quantityField({
          ...frequency,
          level: 'expert',
          label: 'Mains frequency while measuring',
          help: 'Of the mains it ran on.',
          default: here,
        }),
      ),
      voltage: z.optional(
        quantityField({
          ...voltage,
          level: 'more',
          label: 'Voltage while measuring',
          help: 'At the socket.',
          default: here,
        }),
      ),
    }),
    {
      label: 'Measured on the bench',
      help: 'The machine in its appliance, running steadily, with thermometers clamped to the pipes and a meter in the socket.',
      level: 'more',
      item: 'measurement',
    },
  ),
);
