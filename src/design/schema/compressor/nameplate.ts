// What is printed on the dome and on the plate of the appliance.

import * as z from 'zod/mini';
import type { Oil } from '../../../matter/refrigerants/index.ts';
import { oilChoices, startTypeChoices } from '../../../parts/compressor/index.ts';
import { sentenceStart } from '../../../quantities/index.ts';
import { choiceField, listedField, quantityField, textField } from '../field.ts';
import { leftOpen } from './ranges.ts';

type OilLabels = Readonly<Record<Oil, string>>;

const oilLabels = Object.fromEntries(oilChoices.map(({ name, title }) => [name, sentenceStart(title)]));

const more = { level: 'more' } as const;

/** Frequency and voltage of mains; `of` ends the label: "Frequency of the mains". */
export const frequency = { quantity: 'mainsFrequency', minimum: 15, maximum: 400 } as const;
export const voltage = { quantity: 'voltage', minimum: 10, maximum: 700 } as const;

/** What a set of points is not known without. */
export const whyFrequency =
  'flow and power go with the speed: a machine with these numbers at 60 Hz is a sixth smaller than one with them at 50 Hz';

export const ofNameplate = {
  rule: 'as on the nameplate, or of the mains here',
  source: 'taken to hold for the mains the machine was made for',
};

const current = { ...more, quantity: 'current', minimum: 0.02, maximum: 500, default: leftOpen } as const;

export const nameplate = z.optional(
  z.strictObject({
    voltage: z.optional(
      quantityField({
        ...more,
        ...voltage,
        label: 'Rated voltage',
        help: 'Printed on the dome.',
        default: { rule: 'of the mains here', source: 'taken to be made for the mains it runs on' },
      }),
    ),
    frequency: z.optional(
      quantityField({
        ...more,
        ...frequency,
        label: 'Rated frequency',
        help: 'Printed on the dome. Of two (50/60 Hz), the one its other numbers are for.',
        default: {
          rule: 'the first that a rating, a set of coefficients or a table names; else of the mains here',
          source: 'taken to be made for the mains it runs on',
        },
      }),
    ),
    ratedCurrent: z.optional(
      quantityField({
        ...current,
        label: 'Rated current',
        help: 'The current its motor bears for good: FLA, RLA or plain A on the plate.',
      }),
    ),
    lockedRotorCurrent: z.optional(
      quantityField({
        ...current,
        label: 'Locked-rotor current',
        help: 'The current at the moment of starting: LRA on the plate, several times the rated one.',
      }),
    ),
    power: z.optional(
      quantityField({
        ...more,
        quantity: 'electricPower',
        minimum: 5,
        maximum: 20000,
        label: 'Power on the plate',
        default: leftOpen,
        help: 'Electric power in watts. The conditions behind it are seldom printed, so it is compared, not relied on.',
      }),
    ),
    horsepower: z.optional(
      textField(40, {
        ...more,
        label: 'Horsepower as printed',
        help: 'A name of its size, such as 1/5 hp. It is no power: it is kept and never turned into watts.',
      }),
    ),
    oil: z.optional(
      choiceField(
        ['unknown', 'mineral', 'alkylbenzene', 'polyolester', 'polyvinylether', 'polyalkyleneglycol'],
        { unknown: 'Not known', ...(oilLabels as OilLabels) },
        {
          ...more,
          label: 'Oil in it',
          help: 'Decides which other fluids carry it back. A plate seldom says.',
          default: { text: 'unknown', source: 'nothing assumed about the oil' },
        },
      ),
    ),
    startType: z.optional(
      listedField(
        startTypeChoices.map(({ name, title }) => ({ name, label: sentenceStart(title) })),
        {
          ...more,
          label: 'How it starts',
          help: 'Decides whether it starts against pressure, and how good its motor is.',
          default: { text: 'unknown', source: 'nothing assumed about its starting gear' },
        },
      ),
    ),
  }),
);
