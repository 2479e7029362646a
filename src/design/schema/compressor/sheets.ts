// Whole fields of running points: ten coefficients as makers print them, and tables pasted from a spreadsheet. With them the
// gas and the liquid they hold for, without which they are numbers of no machine.

import * as z from 'zod/mini';
import { choiceField, type FieldMeta, kindField, listField, quantityField, textField } from '../field.ts';
import { frequency, ofNameplate, voltage, whyFrequency } from './nameplate.ts';
import { condensing, evaporating, liquid, suctionGas } from './ratings.ts';

/** A table of hundreds of points fits; more is refused [characters]. */
const longestTable = 20_000;

export const whySuction = 'colder return gas is denser: tens of kelvins are a tenth of the flow';
const difference = { quantity: 'temperatureDifference', minimum: 0, maximum: 100, level: 'more' } as const;

/** The gas they hold for; `fallback` where something else may tell it. */
function suction(fallback: Pick<FieldMeta, 'default'> = {}) {
  return z
    .discriminatedUnion('kind', [
      z
        .strictObject({
          kind: kindField('superheat'),
          superheat: quantityField({
            ...difference,
            label: 'Superheat of the data',
            help: 'Gas at the inlet above the evaporating (dew) temperature.',
          }),
        })
        .check(z.meta({ title: 'A superheat', description: 'Always so far above the evaporating temperature.' })),
      z
        .strictObject({
          kind: kindField('returnGas'),
          returnGas: quantityField({
            ...suctionGas,
            label: 'Return gas of the data',
            help: 'Gas at the inlet, the same for every point.',
          }),
        })
        .check(z.meta({ title: 'A return gas temperature', description: 'The same for every point.' })),
    ])
    .check(
      z.meta({
        title: 'Return gas',
        description: 'The gas the data hold for.',
        field: {
          label: 'Return gas they hold for',
          help: 'A superheat or one temperature of the return gas; it stands at the head of the sheet.',
          level: 'more',
          why: whySuction,
          ...fallback,
        },
      }),
    );
}

const byColumn = { default: { rule: 'of a column of the table', source: 'the table says it point by point' } };

const liquidBasis = z
  .discriminatedUnion('kind', [
    z
      .strictObject({
        kind: kindField('subcooling'),
        subcooling: quantityField({
          ...difference,
          label: 'Subcooling of the data',
          help: 'Liquid below the condensing temperature; 0 K where the sheet says none.',
        }),
      })
      .check(z.meta({ title: 'A subcooling', description: 'Always so far below the condensing temperature.' })),
    z
      .strictObject({
        kind: kindField('temperature'),
        temperature: quantityField({
          ...liquid,
          label: 'Liquid temperature of the data',
          help: 'Liquid before the valve, the same for every point.',
        }),
      })
      .check(z.meta({ title: 'A liquid temperature', description: 'The same for every point.' })),
  ])
  .check(
    z.meta({
      title: 'Liquid',
      description: 'The liquid the data hold for.',
      field: {
        label: 'Liquid they hold for',
        help: 'A subcooling or one temperature of the liquid. Needed where a capacity is stated.',
        level: 'more',
        default: {
          rule: 'of a column of the table; of no account for flow, power and current',
          source: 'only a capacity depends on it',
        },
      },
    }),
  );

const saturation = z.optional(
  choiceField(
    ['dew', 'midPoint'],
    { dew: 'Dew temperatures', midPoint: 'Mid-points of a blend' },
    {
      label: 'Saturation temperatures are',
      help: 'Of a blend, some sheets print the middle between boiling and dew. Of a pure fluid both are the same.',
      level: 'expert',
      default: { text: 'dew', source: 'as the standards state them' },
    },
  ),
);

const shared = {
  frequency: quantityField({
    ...frequency,
    level: 'more',
    label: 'Mains frequency of the data',
    help: 'The frequency they were measured at.',
    why: whyFrequency,
  }),
  voltage: z.optional(
    quantityField({
      ...voltage,
      level: 'expert',
      label: 'Voltage of the data',
      help: 'The voltage they were measured at.',
      default: ofNameplate,
    }),
  ),
};

const unitNames = ['kg/h', 'g/s', 'kg/s', 'lb/h', 'W', 'kW', 'BTU/h', 'A'] as const;
const unitLabels = {
  'kg/h': 'kg/h',
  'g/s': 'g/s',
  'kg/s': 'kg/s',
  'lb/h': 'lb/h',
  W: 'watts',
  kW: 'kW',
  'BTU/h': 'BTU/h',
  A: 'amps',
};

export const coefficients = z.optional(
  listField(
    z.strictObject({
      of: choiceField(
        ['massFlow', 'capacity', 'power', 'current'],
        { massFlow: 'Mass flow', capacity: 'Capacity', power: 'Electric power', current: 'Current' },
        { label: 'Coefficients of', help: 'What the ten numbers compute.', level: 'more' },
      ),
      values: textField(2000, {
        label: 'Ten coefficients',
        help: 'C1 to C10 in the order of AHRI 540, with blanks, semicolons or new lines between them: 1, S, D, S², S·D, D², S³, D·S², S·D², D³, with S the evaporating and D the condensing temperature.',
        level: 'more',
        lines: true,
      }),
      temperatureUnit: choiceField(
        ['celsius', 'fahrenheit'],
        { celsius: '°C', fahrenheit: '°F' },
        { label: 'Temperatures in', help: 'The unit of evaporating and condensing temperature.', level: 'more' },
      ),
      unit: choiceField(unitNames, unitLabels, {
        label: 'Result in',
        help: 'The unit of what they compute.',
        level: 'more',
      }),
      basis: z.strictObject({ suction: suction(), liquid: z.optional(liquidBasis), saturation }),
      evaporatingRange: quantityField({
        ...evaporating,
        label: 'Evaporating range',
        help: 'Between which temperatures the set holds, such as -35 to -10 °C. A polynomial is used nowhere else.',
      }),
      condensingRange: quantityField({
        ...condensing,
        label: 'Condensing range',
        help: 'Between which temperatures the set holds, such as 30 to 55 °C. A polynomial is used nowhere else.',
      }),
      ...shared,
    }),
    {
      label: 'Coefficients',
      help: 'Sets of ten coefficients (AHRI 540, EN 12900), one for each quantity.',
      level: 'more',
      item: 'set of coefficients',
    },
  ),
);

const tolerance = { quantity: 'fraction', minimum: 0, maximum: 0.5, level: 'expert' } as const;
const sheetTolerance = { source: 'common practice, no source' };

export const tables = z.optional(
  listField(
    z.strictObject({
      table: textField(longestTable, {
        label: 'Table',
        help: 'Copied from a spreadsheet, with a line of headings that name each column and its unit: evaporating, condensing, capacity, power, mass flow, current, return gas, liquid.',
        level: 'more',
        lines: true,
      }),
      basis: z.optional(
        z.strictObject({ suction: z.optional(suction(byColumn)), liquid: z.optional(liquidBasis), saturation }),
      ),
      ...shared,
      flowTolerance: z.optional(
        quantityField({
          ...tolerance,
          label: 'Common error of flow and capacity',
          help: 'How far all of them may be off together, either way.',
          default: { text: '5 %', ...sheetTolerance },
        }),
      ),
      powerTolerance: z.optional(
        quantityField({
          ...tolerance,
          label: 'Common error of power and current',
          help: 'How far all of them may be off together, either way.',
          default: { text: '5 %', ...sheetTolerance },
        }),
      ),
    }),
    {
      label: 'Tables of points',
      help: 'Pasted from a spreadsheet or typed from a sheet, any number of points.',
      level: 'more',
      item: 'table',
    },
  ),
);
