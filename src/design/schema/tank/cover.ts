// What lies over the water of the display tank: nothing, a lid of one or two panes or of layers, a hood with a fan.

import * as z from 'zod/mini';
import { lidMaterialNames } from '../../../matter/materials/index.ts';
import { LOOSE_LID_OPEN_SHARE } from '../../../tank/index.ts';
import { choiceField, listedField, practice, quantityField } from '../field.ts';
import { layerList, materialChoices, thin } from './layers.ts';

const anyLid = { field: 'lid', is: ['tight', 'loose'] } as const;

const hooded = { field: 'tank.load.lid', is: ['hood'] } as const;

export const usualLidRule = '4 mm (3 to 6); twin-wall sheet and foam board 10 mm (6 to 16)';

/** Material, thickness and gaps of a lid, as the display tank and every other vessel may have it. */
export function lidSheet(of: string) {
  return {
    lidMaterial: z.optional(
      listedField(materialChoices(lidMaterialNames), {
        label: `Lid${of} made of`,
        help: 'Material of the lid.',
        level: 'more',
        when: anyLid,
        default: { text: 'glass', source: practice },
      }),
    ),
    lidThickness: z.optional(
      quantityField({
        ...thin,
        maximum: 0.2,
        label: `Thickness of the lid${of}`,
        help: 'Thickness of the sheet.',
        level: 'more',
        when: anyLid,
        default: { rule: usualLidRule, source: practice },
      }),
    ),
    lidOpenShare: z.optional(
      quantityField({
        label: `Gaps of a loose lid${of}`,
        help: 'Share of the water surface that a lid with gaps leaves open to the room.',
        quantity: 'fraction',
        minimum: 0,
        maximum: 1,
        level: 'more',
        when: { field: 'lid', is: ['loose'] },
        default: { text: `${100 * LOOSE_LID_OPEN_SHARE} % (5 to 30)`, source: practice },
      }),
    ),
  };
}

const { lidMaterial, lidThickness, lidOpenShare } = lidSheet('');

/** The whole cover of the display tank. */
export const cover = {
  lid: choiceField(
    ['none', 'tight', 'loose', 'hood'],
    {
      none: 'No lid',
      tight: 'A lid that closes tightly',
      loose: 'A lid with gaps',
      hood: 'A hood whose fan draws room air through it',
    },
    {
      label: 'Lid',
      help: 'A lid that closes tightly stops most of the evaporation, often the largest loss.',
      level: 'first',
    },
  ),
  lidMaterial,
  lidThickness,
  lidPanes: z.optional(
    choiceField(
      ['one', 'two'],
      { one: 'One pane', two: 'Two panes with a sealed gap' },
      {
        label: 'Panes of the lid',
        help: 'Two panes with sealed air between them lose less than half of one.',
        level: 'more',
        when: anyLid,
        default: { text: 'one', source: practice },
      },
    ),
  ),
  lidPaneGap: z.optional(
    quantityField({
      label: 'Gap between the panes of the lid',
      help: 'Sealed air between the two panes.',
      quantity: 'length',
      minimum: 0.001,
      maximum: 0.1,
      level: 'expert',
      when: { field: 'lidPanes', is: ['two'] },
      default: { text: '12 mm (8 to 20)', source: practice },
    }),
  ),
  lidLayers: layerList({
    label: 'Layers of the lid',
    help: 'From the water upwards, instead of material, thickness and panes.',
    item: 'lid layer',
  }),
  lidOpenShare,
  lidArea: z.optional(
    quantityField({
      label: 'Area of the lid',
      help: 'What a lid with gaps covers; what is left of the opening stays open.',
      quantity: 'area',
      minimum: 0.001,
      maximum: 100,
      level: 'expert',
      when: { field: 'lid', is: ['loose'] },
      default: { rule: 'the opening without its gaps', source: 'taken from the share of the gaps' },
    }),
  ),
  hood: z.optional(
    z.strictObject({
      airFlow: z.optional(
        quantityField({
          label: 'Air through the hood',
          help: 'Room air that the fan of the hood draws over the water.',
          quantity: 'volumeFlow',
          minimum: 0,
          maximum: 1,
          level: 'more',
          when: hooded,
          default: { text: '20 m3/h (5 to 60)', source: practice },
        }),
      ),
      height: z.optional(
        quantityField({
          label: 'Height of the hood',
          help: 'From the rim of the tank to its top.',
          quantity: 'length',
          minimum: 0.01,
          maximum: 2,
          level: 'expert',
          when: hooded,
          default: { text: '20 cm (12 to 30)', source: practice },
        }),
      ),
      material: z.optional(
        listedField(materialChoices(lidMaterialNames), {
          label: 'Hood made of',
          help: 'Material of its sides and top.',
          level: 'expert',
          when: hooded,
          default: { text: 'acrylic', source: practice },
        }),
      ),
      thickness: z.optional(
        quantityField({
          ...thin,
          maximum: 0.2,
          label: 'Thickness of the hood',
          help: 'Thickness of its sheet.',
          level: 'expert',
          when: hooded,
          default: { text: '4 mm (3 to 6)', source: practice },
        }),
      ),
    }),
  ),
};
