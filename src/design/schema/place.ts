// The parts of the document around the room: the place, where the heat comes from, and prices.

import * as z from 'zod/mini';
import { secondsPerYear } from '../../quantities/index.ts';
import { choiceField, kindField, practice, quantityField } from './field.ts';

const kilowattHour = 3.6e6;

const regions = ['europeanUnion', 'unitedKingdom', 'unitedStates', 'elsewhere', 'unknown'] as const;
const regionLabels = {
  europeanUnion: 'European Union',
  unitedKingdom: 'United Kingdom',
  unitedStates: 'United States',
  elsewhere: 'Elsewhere',
  unknown: 'Not said',
};

const outdoors = { quantity: 'temperature', minimum: 223.15, maximum: 328.15, level: 'expert' } as const;
const mains = { quantity: 'temperature', minimum: 273.15, maximum: 313.15, level: 'expert' } as const;

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
    outdoors: z.optional(
      z.strictObject({
        winter: z.optional(
          quantityField({
            ...outdoors,
            label: 'Outdoors in winter',
            help: 'Mean temperature of the coldest month.',
            default: { text: '2 °C (-6 to 8)', source: practice },
          }),
        ),
        coldest: z.optional(
          quantityField({
            ...outdoors,
            label: 'Coldest it stays outdoors',
            help: 'The lowest temperature that lasts for days.',
            default: { rule: 'mean of the coldest month − 7 K (−12 to −4 K)', source: practice },
          }),
        ),
        summer: z.optional(
          quantityField({
            ...outdoors,
            label: 'Outdoors in summer',
            help: 'Mean temperature of the warmest month.',
            default: { rule: 'mean of the coldest month + 17 K (+10 to +22 K)', source: practice },
          }),
        ),
        windSpeed: z.optional(
          quantityField({
            label: 'Wind at the tank',
            help: 'Where it stands, not above the roofs.',
            quantity: 'speed',
            minimum: 0,
            maximum: 20,
            level: 'expert',
            default: { text: '2 m/s (0.5 to 4)', source: practice },
          }),
        ),
      }),
    ),
    mains: z.optional(
      z.strictObject({
        winter: z.optional(
          quantityField({
            ...mains,
            label: 'Water main in winter',
            help: 'Temperature of cold water from the tap in the coldest month.',
            default: { text: '8 °C (4 to 12)', source: practice },
          }),
        ),
        summer: z.optional(
          quantityField({
            ...mains,
            label: 'Water main in summer',
            help: 'Temperature of cold water from the tap at the height of summer.',
            default: { text: '17 °C (13 to 22)', source: practice },
          }),
        ),
      }),
    ),
  }),
);

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
