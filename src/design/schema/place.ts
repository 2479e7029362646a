// The parts of the document around the tank: the place, the room, where the heat comes from, and prices.

import * as z from 'zod/mini';
import { secondsPerYear } from '../../quantities/index.ts';
import { type MonthName, monthNames } from '../../surroundings/index.ts';
import { choiceField, kindField, practice, quantityField } from './field.ts';

const kilowattHour = 3.6e6;

const monthLabels = Object.fromEntries(
  monthNames.map((month) => [month, `${month.charAt(0).toUpperCase()}${month.slice(1)}`]),
) as Readonly<Record<MonthName, string>>;

export const yesNo = ['yes', 'no'] as const;
export const yesNoUnknown = ['yes', 'no', 'unknown'] as const;
export const yesNoLabels = { yes: 'Yes', no: 'No', unknown: 'Not known' };

const regions = ['europeanUnion', 'unitedKingdom', 'unitedStates', 'elsewhere', 'unknown'] as const;
const regionLabels = {
  europeanUnion: 'European Union',
  unitedKingdom: 'United Kingdom',
  unitedStates: 'United States',
  elsewhere: 'Elsewhere',
  unknown: 'Not said',
};

export const placeSchema = z.optional(
  z.strictObject({
    altitude: z.optional(
      quantityField({
        label: 'Height above the sea',
        help: 'Thinner air changes evaporation and what a pressure gauge shows.',
        quantity: 'altitude',
        minimum: -430,
        maximum: 5000,
        level: 'expert',
        default: { text: '0 m (0 to 200)', source: practice },
      }),
    ),
    region: z.optional(
      choiceField(regions, regionLabels, {
        label: 'Where in the world it stands',
        help: 'Decides which law is named among the cautions, in general words. Local law comes first.',
        level: 'more',
        default: { text: 'unknown', source: 'nothing assumed about the law' },
      }),
    ),
  }),
);

export const roomSchema = z.strictObject({
  temperature: quantityField({
    label: 'Room temperature',
    help: 'The usual temperature of the room the tank stands in, in the months it is heated.',
    quantity: 'temperature',
    minimum: 253.15,
    maximum: 318.15,
    level: 'first',
  }),
  coldest: z.optional(
    quantityField({
      label: 'Coldest the room stays',
      help: 'The lowest temperature the room keeps for days in a cold spell. The verdict is judged here.',
      quantity: 'temperature',
      minimum: 243.15,
      maximum: 318.15,
      level: 'more',
      default: { rule: 'usual temperature of the room − 2 K ± 1 K', source: practice },
    }),
  ),
  warmest: z.optional(
    quantityField({
      label: 'Summer temperature of the room',
      help: 'The usual temperature of the room in summer.',
      quantity: 'temperature',
      minimum: 253.15,
      maximum: 328.15,
      level: 'more',
      default: { rule: '25 °C (23 to 28), and not below the usual temperature of the room', source: practice },
    }),
  ),
  relativeHumidity: z.optional(
    quantityField({
      label: 'Humidity of the room',
      help: 'Relative humidity of the air. The drier it is, the more water leaves the tank and the more heat goes with it.',
      quantity: 'fraction',
      minimum: 0.05,
      maximum: 0.99,
      level: 'more',
      default: { text: '50 % (35 to 60)', source: practice },
    }),
  ),
  volume: z.optional(
    quantityField({
      label: 'Volume of the room',
      help: 'Floor area times height of the room the tank stands in.',
      quantity: 'volume',
      minimum: 2,
      maximum: 5000,
      level: 'more',
      default: { text: '40 m3 (25 to 80)', source: practice },
    }),
  ),
  height: z.optional(
    quantityField({
      label: 'Height of the room',
      help: 'From floor to ceiling. With the volume it gives the floor that a heavy gas spreads on.',
      quantity: 'length',
      minimum: 1.5,
      maximum: 15,
      level: 'more',
      default: { text: '2.4 m (2.2 to 2.7)', source: practice },
    }),
  ),
  monthsHeated: z.optional(
    quantityField({
      label: 'Months the room is heated',
      help: 'In these months the heat that leaves the tank is not lost: it helps to heat the room.',
      quantity: 'count',
      minimum: 0,
      maximum: 12,
      level: 'more',
      default: { text: '7 (5 to 8)', source: practice },
    }),
  ),
  coldestMonth: z.optional(
    choiceField(monthNames, monthLabels, {
      label: 'Coldest month',
      help: 'January in most of the north, July in most of the south.',
      level: 'expert',
      default: { text: 'january', source: 'northern hemisphere assumed' },
    }),
  ),
  houseHeatPrice: z.optional(
    quantityField({
      label: 'Price of house heat',
      help: 'What one kilowatt hour of heat delivered to the room costs, whatever the house is heated with.',
      quantity: 'energyPrice',
      minimum: 0,
      maximum: 1e5 / kilowattHour,
      level: 'more',
      default: { rule: '0.4 times the electricity price (0.25 to 1.0 times)', source: practice },
    }),
  ),
  cooledInSummer: z.optional(
    choiceField(yesNo, yesNoLabels, {
      label: 'Is the room cooled in summer?',
      help: 'If it is, heat that leaves the tank in summer must be cooled away again.',
      level: 'more',
      default: { text: 'no', source: practice },
    }),
  ),
});

const sourceTemperature = {
  quantity: 'temperature',
  minimum: 243.15,
  maximum: 328.15,
} as const;

export const sourceSchema = z.optional(
  z
    .discriminatedUnion('kind', [
      z.strictObject({ kind: kindField('roomAir') }).check(
        z.meta({
          title: 'The air of the tank’s own room',
          description: 'The machine cools the room that the tank warms.',
        }),
      ),
      z
        .strictObject({
          kind: kindField('otherRoom'),
          temperature: quantityField({
            ...sourceTemperature,
            label: 'Temperature there',
            help: 'The usual temperature of that room in the heating season.',
            level: 'first',
          }),
          coldest: z.optional(
            quantityField({
              ...sourceTemperature,
              label: 'Coldest it stays there',
              help: 'The lowest temperature that room keeps for days in a cold spell.',
              level: 'more',
              default: { rule: 'usual temperature there − 3 K (−6 to −1 K)', source: practice },
            }),
          ),
          warmest: z.optional(
            quantityField({
              ...sourceTemperature,
              label: 'Summer temperature there',
              help: 'The usual temperature of that room in summer.',
              level: 'more',
              default: { rule: 'usual temperature there + 6 K (+3 to +12 K)', source: practice },
            }),
          ),
          volume: z.optional(
            quantityField({
              label: 'Volume of that room',
              help: 'Floor area times height. A leak can gather there as well as in the room of the tank.',
              quantity: 'volume',
              minimum: 0.5,
              maximum: 5000,
              level: 'more',
              default: { text: '25 m3 (8 to 60)', source: practice },
            }),
          ),
        })
        .check(z.meta({ title: 'The air of another room', description: 'An unheated room, a cellar or a garage.' })),
    ])
    .check(
      z.meta({
        title: 'Where the heat comes from',
        description: 'The air that the machine cools.',
        field: {
          label: 'Where the heat comes from',
          help: 'The air that the machine cools: the room of the tank, or an unheated room, cellar or garage.',
          level: 'first',
          default: { text: 'roomAir', source: 'the nearest source, assumed until another is named' },
        },
      }),
    ),
);

const money = { quantity: 'money', minimum: 0, maximum: 1e9, level: 'more' } as const;

export const pricesSchema = z.strictObject({
  currency: z.string().check(
    z.regex(/^[A-Z]{3}$/),
    z.meta({
      title: 'Currency',
      description: 'Three capital letters.',
      examples: ['EUR', 'USD'],
      field: { label: 'Currency', help: 'Three capital letters. Every price is in it.', level: 'first' },
    }),
  ),
  electricity: quantityField({
    label: 'Price of electricity',
    help: 'What one more kilowatt hour costs, taxes included.',
    quantity: 'energyPrice',
    minimum: 0,
    maximum: 1e5 / kilowattHour,
    level: 'first',
  }),
  loopParts: z.optional(
    quantityField({
      ...money,
      label: 'Cost of building this loop',
      help: 'Parts, exchangers, controls, and the licensed person who opens, seals and charges the circuit.',
      default: { text: '250 (120 to 500)', source: practice },
    }),
  ),
  heater: z.optional(
    quantityField({
      ...money,
      label: 'Cost of a plain heater',
      help: 'A heater with a thermostat for the same tank.',
      default: { text: '40 (20 to 80)', source: practice },
    }),
  ),
  certifiedHeatPump: z.optional(
    quantityField({
      ...money,
      label: 'Cost of a complete certified heat pump',
      help: 'A finished machine, made and certified for heating a tank, bought whole.',
      default: { text: '1400 (800 to 2500)', source: practice },
    }),
  ),
  certifiedCop: z.optional(
    quantityField({
      label: 'COP of the certified heat pump',
      help: 'Heat into the water for each unit of electricity, everything counted, as its maker states.',
      quantity: 'ratio',
      minimum: 1,
      maximum: 12,
      level: 'more',
      default: { text: '4 (3 to 5)', source: practice },
    }),
  ),
  life: z.optional(
    quantityField({
      label: 'Years it lasts',
      help: 'How long each of the machines is expected to work.',
      quantity: 'duration',
      minimum: 0.5 * secondsPerYear,
      maximum: 50 * secondsPerYear,
      level: 'expert',
      default: { text: '8 years (4 to 12)', source: practice },
    }),
  ),
  discountRate: z.optional(
    quantityField({
      label: 'Interest on money spent now',
      help: 'What the money would otherwise bring in a year, after inflation.',
      quantity: 'fraction',
      minimum: 0,
      maximum: 0.3,
      level: 'expert',
      default: { text: '3 % (0 to 6)', source: practice },
    }),
  ),
});
