// Layers, boards and what lies beyond them: the parts that faces, lids and panels are described by.

import * as z from 'zod/mini';
import {
  conductivityLimits,
  emissivityLimits,
  insulationNames,
  jointMaterialNames,
  material,
  materialNames,
  standMaterialNames,
} from '../../../matter/materials/index.ts';
import { kindField, listedField, listField, practice, quantityField } from '../field.ts';

/** Names of materials with the words people read. */
export function materialChoices(names: readonly string[]) {
  return names.map((name) => ({ name, label: material(name).label }));
}

const anyMaterial = materialChoices(materialNames);

export const thin = { quantity: 'length', minimum: 0.0005, maximum: 1 } as const;
const gap = { quantity: 'length', minimum: 0.001, maximum: 0.3 } as const;
const emissivity = {
  quantity: 'ratio',
  minimum: emissivityLimits.min,
  maximum: emissivityLimits.max,
  level: 'expert',
} as const;

const neighbour = { rule: 'that of the material beside the gap', source: 'the emissivity of that material' };

const layerTitle = (title: string, description: string) => z.meta({ title, description });

const layer = z
  .discriminatedUnion('kind', [
    z
      .strictObject({
        kind: kindField('material'),
        material: listedField(anyMaterial, { label: 'Material', help: 'What the layer is made of.', level: 'first' }),
        thickness: quantityField({ ...thin, label: 'Thickness', help: 'Thickness of the layer.', level: 'first' }),
        joint: z.optional(
          z.strictObject({
            material: listedField(materialChoices(jointMaterialNames), {
              label: 'Bridged by',
              help: 'A frame or joints of another material that pass through the layer.',
              level: 'expert',
            }),
            share: quantityField({
              label: 'Share of the area that is bridged',
              help: 'Timber in a board is often 10 to 15 %.',
              quantity: 'fraction',
              minimum: 0,
              maximum: 1,
              level: 'expert',
            }),
          }),
        ),
      })
      .check(layerTitle('A material', 'A sheet, board or bed of a known material.')),
    z
      .strictObject({
        kind: kindField('own'),
        conductivity: quantityField({
          label: 'Conductivity',
          help: 'Thermal conductivity from the maker’s sheet.',
          quantity: 'conductivity',
          minimum: conductivityLimits.min,
          maximum: conductivityLimits.max,
          level: 'first',
        }),
        thickness: quantityField({ ...thin, label: 'Thickness', help: 'Thickness of the layer.', level: 'first' }),
        emissivity: z.optional(
          quantityField({
            ...emissivity,
            label: 'Emissivity',
            help: 'Of its faces, in long-wave radiation: 0.9 for nearly everything, 0.05 for bare aluminium foil.',
            default: { text: '0.9 (0.85 to 0.95)', source: practice },
          }),
        ),
      })
      .check(layerTitle('A material of my own', 'Known by its conductivity and thickness.')),
    z
      .strictObject({
        kind: kindField('resistance'),
        resistance: quantityField({
          label: 'R-value',
          help: 'Thermal resistance of the layer alone, as printed on it.',
          quantity: 'thermalResistance',
          minimum: 0.0001,
          maximum: 50,
          level: 'first',
        }),
      })
      .check(layerTitle('An R-value', 'Known by its thermal resistance alone.')),
    z
      .strictObject({
        kind: kindField('sealedGap'),
        thickness: quantityField({
          ...gap,
          label: 'Width of the gap',
          help: 'A sealed air space. One that is open to the room is no layer.',
          level: 'first',
        }),
        innerEmissivity: z.optional(
          quantityField({
            ...emissivity,
            label: 'Emissivity of the face towards the water',
            help: 'In long-wave radiation. Foil that faces the gap earns its value here.',
            default: neighbour,
          }),
        ),
        outerEmissivity: z.optional(
          quantityField({
            ...emissivity,
            label: 'Emissivity of the face away from the water',
            help: 'In long-wave radiation. Foil that faces the gap earns its value here.',
            default: neighbour,
          }),
        ),
      })
      .check(layerTitle('A sealed air space', 'Air between two faces, closed all round.')),
    z
      .strictObject({
        kind: kindField('openGap'),
        thickness: quantityField({
          ...gap,
          label: 'Width of the open gap',
          help: 'Room air passes through it: the gap and all beyond it count for nothing.',
          level: 'first',
        }),
      })
      .check(layerTitle('An air space open to the room', 'Behind a board that hangs before the pane.')),
    z
      .strictObject({
        kind: kindField('waterGap'),
        thickness: quantityField({
          ...gap,
          label: 'Width of the water gap',
          help: 'Standing water, as behind a decorative background.',
          level: 'first',
        }),
      })
      .check(layerTitle('Standing water', 'Water behind a background or between two panes.')),
  ])
  .check(
    z.meta({
      title: 'Layer',
      description: 'One layer of a face.',
      field: {
        label: 'What the layer is',
        help: 'Known by its material, by its R-value, or as a gap.',
        level: 'first',
      },
    }),
  );

/** A list of layers, from the water outwards. */
export function layerList(input: { readonly label: string; readonly help: string; readonly item: string }) {
  return z.optional(listField(layer, { ...input, level: 'expert' }));
}

/** A pane: one sheet of any material that a wall is made of. */
export function sheet(names: readonly string[], label: string, what: string) {
  return z.strictObject({
    material: listedField(materialChoices(names), {
      label: `${label} made of`,
      help: `What ${what} is made of.`,
      level: 'more',
    }),
    thickness: quantityField({
      ...thin,
      label: `Thickness of ${what}`,
      help: 'Thickness of the sheet.',
      level: 'more',
    }),
  });
}

/** The short form of insulation: one board on a face, perhaps over a sealed gap. */
export function board(face: string) {
  return z.optional(
    z.strictObject({
      material: listedField(materialChoices(insulationNames), {
        label: `Insulation ${face}`,
        help: 'What the panes are wrapped in there.',
        level: 'more',
      }),
      thickness: quantityField({
        ...thin,
        label: `Thickness of the insulation ${face}`,
        help: 'Thickness of the board or mat.',
        level: 'more',
      }),
      gap: z.optional(
        quantityField({
          ...gap,
          label: `Sealed gap behind the insulation ${face}`,
          help: 'Air between pane and board, closed all round. Foil that faces it earns its value.',
          level: 'expert',
          default: { rule: 'none: the board lies on the pane', source: 'no gap counted until one is named' },
        }),
      ),
    }),
  );
}

const wall = {
  label: 'Resistance of that wall',
  help: 'Thermal resistance to the room behind it.',
  quantity: 'thermalResistance',
  minimum: 0.01,
  maximum: 50,
  level: 'expert',
} as const;

const kinds = {
  roomAir: z
    .strictObject({ kind: kindField('roomAir') })
    .check(z.meta({ title: 'Free in the room', description: 'Room air on the outside.' })),
  againstWall: z
    .strictObject({
      kind: kindField('againstWall'),
      resistance: z.optional(
        quantityField({ ...wall, default: { text: '0.5 m2 K/W (0.2 to 2)', source: `${practice}: an inner wall` } }),
      ),
    })
    .check(z.meta({ title: 'Against a wall', description: 'A wall close by, the gap open at its edges.' })),
  openStand: z
    .strictObject({ kind: kindField('openStand') })
    .check(z.meta({ title: 'On an open stand', description: 'Room air below.' })),
  closedStand: z
    .strictObject({
      kind: kindField('closedStand'),
      material: listedField(materialChoices(standMaterialNames), {
        label: 'Boards of the stand',
        help: 'What the stand is made of.',
        level: 'more',
      }),
      thickness: quantityField({ ...thin, label: 'Thickness of those boards', help: 'Of one board.', level: 'more' }),
      boardArea: z.optional(
        quantityField({
          label: 'Area of those boards',
          help: 'Sides and doors of the stand together.',
          quantity: 'area',
          minimum: 0.05,
          maximum: 100,
          level: 'expert',
          default: { rule: 'the four sides of a stand 0.7 m high below the tank', source: practice },
        }),
      ),
    })
    .check(z.meta({ title: 'In or on a closed stand', description: 'The still air of a cabinet.' })),
  slab: z
    .strictObject({
      kind: kindField('slab'),
      resistance: z.optional(
        quantityField({
          ...wall,
          label: 'Resistance of slab and ground',
          help: 'Thermal resistance from the panel down to ground as warm as the yearly mean outdoors.',
          default: {
            text: '0.6 m2 K/W (0.3 to 1.3)',
            source:
              'ISO 13370:2017 (formula from memory): 0.3 for a bare slab of the tank’s own size, 1.3 below a whole room',
          },
        }),
      ),
    })
    .check(z.meta({ title: 'On a slab on the ground', description: 'Concrete on the ground.' })),
  outdoors: z
    .strictObject({ kind: kindField('outdoors') })
    .check(z.meta({ title: 'Outdoors', description: 'Outdoor air and wind.' })),
};

interface ExposureField {
  readonly label: string;
  readonly help: string;
  readonly level: 'more' | 'expert';
  readonly default:
    | { readonly text: string; readonly source: string }
    | { readonly rule: string; readonly source: string };
}

/** What lies beyond a face. */
export function exposure(field: ExposureField) {
  const { roomAir, againstWall, openStand, closedStand, slab, outdoors } = kinds;
  return z.optional(
    z
      .discriminatedUnion('kind', [roomAir, againstWall, openStand, closedStand, slab, outdoors])
      .check(z.meta({ title: field.label, description: field.help, field })),
  );
}

/** What the tank stands on: beyond its bottom. */
export const stand = z.optional(
  z.discriminatedUnion('kind', [kinds.openStand, kinds.closedStand, kinds.slab, kinds.outdoors]).check(
    z.meta({
      title: 'What it stands on',
      description: 'What lies below the bottom.',
      field: {
        label: 'What it stands on',
        help: 'The still air of a closed cabinet keeps the bottom warmer than an open frame.',
        level: 'more',
        default: { text: 'openStand', source: 'room air below the bottom until something else is named' },
      },
    }),
  ),
);
