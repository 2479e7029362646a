// The room the tank stands in: its temperatures, its air, how long it is heated, and what decides its humidity.

import * as z from 'zod/mini';
import { type MonthName, monthNames } from '../../surroundings/index.ts';
import { yesNo, yesNoLabels } from './choices.ts';
import { choiceField, kindField, practice, quantityField } from './field.ts';

const kilowattHour = 3.6e6;

const monthLabels = Object.fromEntries(
  monthNames.map((month) => [month, `${month.charAt(0).toUpperCase()}${month.slice(1)}`]),
) as Readonly<Record<MonthName, string>>;

const moisture = z.optional(
  z
    .discriminatedUnion('kind', [
      z.strictObject({ kind: kindField('humidityKnown') }).check(
        z.meta({
          title: 'Its humidity is known',
          description: 'The room keeps its humidity whatever evaporates.',
        }),
      ),
      z
        .strictObject({
          kind: kindField('ventilated'),
          airChanges: z.optional(
            quantityField({
              label: 'Air changes',
              help: 'How often an hour outdoor air replaces the air of the room.',
              quantity: 'airChangeRate',
              minimum: 0.01 / 3600,
              maximum: 20 / 3600,
              level: 'expert',
              default: { text: '0.5 /h (0.2 to 1)', source: practice },
            }),
          ),
          outdoorHumidity: z.optional(
            quantityField({
              label: 'Humidity outdoors',
              help: 'Relative humidity of the outdoor air.',
              quantity: 'fraction',
              minimum: 0,
              maximum: 1,
              level: 'expert',
              default: { text: '80 % (65 to 90)', source: practice },
            }),
          ),
        })
        .check(
          z.meta({
            title: 'It is aired',
            description: 'The humidity follows from what evaporates and from the air that is replaced.',
          }),
        ),
      z
        .strictObject({
          kind: kindField('dehumidifier'),
          energyPerLitre: z.optional(
            quantityField({
              label: 'Electricity for a litre of water',
              help: 'What the dehumidifier uses for each litre it takes out of the air.',
              quantity: 'energyPerWater',
              minimum: 0.05 * kilowattHour,
              maximum: 5 * kilowattHour,
              level: 'expert',
              default: { text: '0.5 kWh/L (0.3 to 0.9)', source: practice },
            }),
          ),
        })
        .check(
          z.meta({
            title: 'A dehumidifier keeps it',
            description: 'The humidity above is what the dehumidifier is set to; it gives the heat of the vapour back.',
          }),
        ),
    ])
    .check(
      z.meta({
        title: 'What becomes of the vapour',
        description: 'What decides the humidity of the room.',
        field: {
          label: 'What becomes of the vapour',
          help: 'Known humidity, fresh air, or a dehumidifier.',
          level: 'expert',
          default: { text: 'humidityKnown', source: 'the humidity of the room is taken as it is given' },
        },
      }),
    ),
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
      minimum: 0,
      maximum: 1,
      level: 'more',
      default: { text: '50 % (35 to 60)', source: practice },
    }),
  ),
  moisture,
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
