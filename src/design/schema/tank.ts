// The tank in the document: its water, what lives in it, and what it needs by measurement or by its sizes.

import * as z from 'zod/mini';
import { insulationNames, lidMaterialNames, material, wallMaterialNames } from '../../matter/materials/index.ts';
import { LOOSE_LID_OPEN_SHARE } from '../../tank/index.ts';
import { choiceField, kindField, listedField, practice, quantityField } from './field.ts';

const kilowattHour = 3.6e6;

const side = { quantity: 'length', minimum: 0.05, maximum: 10, level: 'first' } as const;
const materialChoices = (names: readonly string[]) => names.map((name) => ({ name, label: material(name).label }));

const gains = {
  pumpPower: z.optional(
    quantityField({
      label: 'Power of the pumps',
      help: 'Electricity of all filter and flow pumps together. Nearly all of it ends as heat in the water.',
      quantity: 'electricPower',
      minimum: 0,
      maximum: 2000,
      level: 'more',
      default: { text: '10 W (5 to 30)', source: practice },
    }),
  ),
  pumpShareToWater: z.optional(
    quantityField({
      label: 'Share of the pumps’ power that warms the water',
      help: 'Near 100 % for a pump inside the water, less for one that stands in the room.',
      quantity: 'fraction',
      minimum: 0,
      maximum: 1,
      level: 'expert',
      default: { text: '90 % (70 to 100)', source: practice },
    }),
  ),
  lightPower: z.optional(
    quantityField({
      label: 'Power of the lights',
      help: 'Electricity of all lights over the tank while they are on.',
      quantity: 'electricPower',
      minimum: 0,
      maximum: 5000,
      level: 'more',
      default: { text: '0 W', source: 'no light counted until one is named' },
    }),
  ),
  lightHours: z.optional(
    quantityField({
      label: 'Light per day',
      help: 'How long the lights are on in a day.',
      quantity: 'duration',
      minimum: 0,
      maximum: 86400,
      level: 'more',
      default: { text: '8 h (6 to 12)', source: practice },
    }),
  ),
  lightShareToWater: z.optional(
    quantityField({
      label: 'Share of the light’s power that warms the water',
      help: 'The rest warms the room directly.',
      quantity: 'fraction',
      minimum: 0,
      maximum: 1,
      level: 'expert',
      default: { text: '30 % (10 to 50)', source: practice },
    }),
  ),
};

const measured = z
  .strictObject({
    kind: kindField('measured'),
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

const layer = (face: string) =>
  z.optional(
    z.strictObject({
      material: listedField(materialChoices(insulationNames), {
        label: `Insulation ${face}`,
        help: 'What the panes are wrapped in there.',
        level: 'more',
      }),
      thickness: quantityField({
        label: `Thickness of the insulation ${face}`,
        help: 'Thickness of the board or mat.',
        quantity: 'length',
        minimum: 0.0005,
        maximum: 1,
        level: 'more',
      }),
    }),
  );

const rectangular = z
  .strictObject({
    kind: kindField('rectangular'),
    length: quantityField({ ...side, label: 'Length', help: 'Inside, along the front.' }),
    width: quantityField({ ...side, label: 'Width', help: 'Inside, front to back.' }),
    height: quantityField({ ...side, label: 'Height', help: 'Inside, from the bottom to the rim.' }),
    waterDepth: z.optional(
      quantityField({
        label: 'Depth of the water',
        help: 'From the bottom to the surface.',
        quantity: 'length',
        minimum: 0.02,
        maximum: 10,
        level: 'more',
        default: { rule: '95 % of the height (92 to 98 %)', source: practice },
      }),
    ),
    wall: z.strictObject({
      material: listedField(materialChoices(wallMaterialNames), {
        label: 'Panes made of',
        help: 'What walls and bottom are made of.',
        level: 'first',
      }),
      thickness: quantityField({
        label: 'Thickness of the panes',
        help: 'Thickness of walls and bottom.',
        quantity: 'length',
        minimum: 0.001,
        maximum: 1,
        level: 'first',
      }),
    }),
    insulation: z.optional(
      z.strictObject({ sides: layer('at both ends'), back: layer('at the back'), bottom: layer('below') }),
    ),
    surface: z.optional(
      choiceField(
        ['still', 'rippled', 'rough'],
        {
          still: 'Still: a mirror',
          rippled: 'Rippled by a filter outlet',
          rough: 'Rough: broken by a strong pump or air stones',
        },
        {
          label: 'Surface of the water',
          help: 'The livelier the surface, the more water evaporates.',
          level: 'more',
          default: { text: 'rippled', source: practice },
        },
      ),
    ),
    lid: choiceField(
      ['none', 'tight', 'loose'],
      { none: 'No lid', tight: 'A lid that closes tightly', loose: 'A lid with gaps' },
      {
        label: 'Lid',
        help: 'A lid that closes tightly stops most of the evaporation, often the largest loss.',
        level: 'first',
      },
    ),
    lidMaterial: z.optional(
      listedField(materialChoices(lidMaterialNames), {
        label: 'Lid made of',
        help: 'Material of the lid.',
        level: 'more',
        default: { text: 'glass', source: practice },
      }),
    ),
    lidThickness: z.optional(
      quantityField({
        label: 'Thickness of the lid',
        help: 'Thickness of the sheet.',
        quantity: 'length',
        minimum: 0.0005,
        maximum: 0.2,
        level: 'more',
        default: { rule: '4 mm (3 to 6); twin-wall sheet and foam board 10 mm (6 to 16)', source: practice },
      }),
    ),
    lidOpenShare: z.optional(
      quantityField({
        label: 'Gaps of a loose lid',
        help: 'Share of the water surface that a lid with gaps leaves open to the room.',
        quantity: 'fraction',
        minimum: 0,
        maximum: 1,
        level: 'more',
        default: { text: `${100 * LOOSE_LID_OPEN_SHARE} % (5 to 30)`, source: practice },
      }),
    ),
    evaporationFactor: z.optional(
      quantityField({
        label: 'Correction of the evaporation',
        help: 'Multiplies the computed evaporation and the convection of the surface; 1 leaves them as published.',
        quantity: 'ratio',
        minimum: 0.1,
        maximum: 5,
        level: 'expert',
        default: {
          rule: '1, with the range in which published methods differ for such a surface',
          source: 'spread of published evaporation methods for still, rippled and rough water',
        },
      }),
    ),
    ...gains,
  })
  .check(z.meta({ title: 'I know its sizes', description: 'A rectangular tank by length, width, height and panes.' }));

export const tankSchema = z.strictObject({
  waterTemperature: quantityField({
    label: 'Water temperature',
    help: 'What the water is to be kept at.',
    quantity: 'temperature',
    minimum: 275.15,
    maximum: 318.15,
    level: 'first',
  }),
  water: choiceField(
    ['fresh', 'sea'],
    { fresh: 'Fresh water', sea: 'Sea water' },
    { label: 'Water', help: 'Sea water evaporates a little less and attacks more metals.', level: 'first' },
  ),
  salinity: z.optional(
    quantityField({
      label: 'Salinity',
      help: 'Grams of salt in a kilogram of water.',
      quantity: 'salinity',
      minimum: 0,
      maximum: 0.12,
      level: 'expert',
      default: { rule: '35 g/kg in sea water, 0 in fresh water', source: 'ocean water' },
    }),
  ),
  livestock: z.optional(
    choiceField(
      ['fish', 'invertebrates', 'plantsOnly', 'unknown'],
      {
        fish: 'Fish',
        invertebrates: 'Shrimps, snails, corals or other invertebrates',
        plantsOnly: 'Plants only',
        unknown: 'Not said',
      },
      {
        label: 'What lives in it',
        help: 'Invertebrates die of traces of copper that fish may bear.',
        level: 'more',
        default: { text: 'unknown', source: 'nothing assumed about the animals' },
      },
    ),
  ),
  load: z.discriminatedUnion('kind', [measured, rectangular]).check(
    z.meta({
      title: 'What the tank needs',
      description: 'By measurement or by sizes.',
      field: {
        label: 'How the tank is known',
        help: 'A measurement of what the heater uses is better than any calculation from sizes.',
        level: 'first',
      },
    }),
  ),
});
