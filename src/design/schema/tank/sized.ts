// A tank that is known by its sizes: a box, a cylinder, an L, or pieces; and all that such tanks have in common.

import * as z from 'zod/mini';
import { wallMaterialNames } from '../../../matter/materials/index.ts';
import { choiceField, kindField, listedField, listField, quantityField } from '../field.ts';
import { cover } from './cover.ts';
import { gains, ultraviolet } from './gains.ts';
import { board, exposure, layerList, materialChoices, sheet, stand } from './layers.ts';
import { meter } from './measured.ts';
import { airSpeed, surface, waterDepth } from './surface.ts';
import { circulation, sideVessels } from './vessels.ts';

const side = { quantity: 'length', minimum: 0.05, maximum: 10, level: 'first' } as const;

const length = quantityField({ ...side, label: 'Length', help: 'Inside, along the front.' });
const width = quantityField({ ...side, label: 'Width', help: 'Inside, front to back.' });
const height = quantityField({ ...side, label: 'Height', help: 'Inside, from the bottom to the rim.' });
const diameter = quantityField({ ...side, label: 'Diameter', help: 'Inside, from wall to wall.' });
const recess = { ...side, minimum: 0.01 } as const;

const wall = z.strictObject({
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
});

/** What one face or panel has of its own. */
const faceParts = {
  wall: z.optional(sheet(wallMaterialNames, 'This pane', 'this pane')),
  inside: layerList({
    label: 'Layers in the water',
    help: 'A background or a sand bed: from the water to the pane.',
    item: 'inner layer',
  }),
  outside: layerList({
    label: 'Layers outside',
    help: 'From the pane outwards, beyond the insulation that is named above.',
    item: 'outer layer',
  }),
  exposure: exposure({
    label: 'What lies beyond',
    help: 'Room air, a wall, a stand, the ground, or outdoor air.',
    level: 'more',
    default: {
      rule: 'room air at the sides, what the tank stands on at the bottom',
      source: 'until something else is named',
    },
  }),
};

const faces = z.optional(
  listField(
    z
      .strictObject({
        face: choiceField(
          ['front', 'back', 'left', 'right', 'side', 'recessBack', 'recessSide', 'bottom'],
          {
            front: 'Front',
            back: 'Back',
            left: 'Left end',
            right: 'Right end',
            side: 'The side of a cylinder',
            recessBack: 'Back of the recess',
            recessSide: 'Side of the recess',
            bottom: 'Bottom',
          },
          { label: 'Face', help: 'Which face it is.', level: 'first' },
        ),
        ...faceParts,
      })
      .check(z.meta({ title: 'Face', description: 'What one face has of its own.' })),
    {
      label: 'Faces of their own',
      help: 'Layers, pane or surroundings of one face, where they differ from the others.',
      level: 'expert',
      item: 'face',
    },
  ),
);

const panel = z
  .strictObject({
    name: z.string().check(
      z.minLength(1),
      z.maxLength(40),
      z.regex(/\S/),
      z.meta({
        title: 'Name of the panel',
        description: 'Such as "window".',
        field: { label: 'Name of the panel', help: 'Whatever tells it apart.', level: 'first' },
      }),
    ),
    facing: choiceField(
      ['side', 'bottom', 'top'],
      { side: 'Upright', bottom: 'Below the water', top: 'Above the water' },
      { label: 'Which way it faces', help: 'Heat leaves a side, a bottom and a top differently.', level: 'first' },
    ),
    area: quantityField({
      label: 'Area below the water line',
      help: 'What the water touches.',
      quantity: 'area',
      minimum: 0,
      maximum: 1000,
      level: 'first',
    }),
    areaAboveWater: z.optional(
      quantityField({
        label: 'Area above the water line',
        help: 'From the water line to the rim.',
        quantity: 'area',
        minimum: 0,
        maximum: 1000,
        level: 'more',
        default: { text: '0 m2', source: 'none counted until it is named' },
      }),
    ),
    ...faceParts,
  })
  .check(z.meta({ title: 'Panel', description: 'One piece of the tank.' }));

/** All that tanks known by their sizes have in common, but for their sizes. */
const shared = {
  ...surface(''),
  airSpeed,
  ...cover,
  stand,
  ...sideVessels,
  ...circulation,
  ...gains,
  ...ultraviolet,
  meter,
};

const sides = board('at both ends');
const bottom = board('below');
const boxInsulation = z.optional(
  z.strictObject({ sides, back: board('at the back'), bottom, front: board('at the front') }),
);

const depth = waterDepth('');
const box = { waterDepth: depth, wall, insulation: boxInsulation, faces };

export const rectangular = z
  .strictObject({ kind: kindField('rectangular'), length, width, height, ...box, ...shared })
  .check(
    z.meta({
      title: 'I know its sizes: a rectangular tank',
      description: 'A rectangular tank by length, width, height and panes.',
    }),
  );

export const cylinder = z
  .strictObject({
    kind: kindField('cylinder'),
    diameter,
    height,
    waterDepth: depth,
    wall,
    insulation: z.optional(z.strictObject({ sides: board('around it'), bottom })),
    faces,
    ...shared,
  })
  .check(z.meta({ title: 'I know its sizes: a cylinder', description: 'An upright cylinder by diameter and height.' }));

export const lShape = z
  .strictObject({
    kind: kindField('lShape'),
    length,
    width,
    height,
    recessLength: quantityField({
      ...recess,
      label: 'Length of the recess',
      help: 'Along the back, of the corner that is cut out at the back right.',
    }),
    recessWidth: quantityField({
      ...recess,
      label: 'Width of the recess',
      help: 'Front to back, of the corner that is cut out at the back right.',
    }),
    ...box,
    ...shared,
  })
  .check(z.meta({ title: 'I know its sizes: an L', description: 'A rectangle without its back right corner.' }));

export const panels = z
  .strictObject({
    kind: kindField('panels'),
    waterSurface: quantityField({
      label: 'Area of the water surface',
      help: 'Open to the air, or below the lid.',
      quantity: 'area',
      minimum: 0.001,
      maximum: 100,
      level: 'first',
    }),
    waterVolume: quantityField({
      label: 'Water in the tank',
      help: 'Without sump and pipes.',
      quantity: 'volume',
      minimum: 0.001,
      maximum: 200,
      level: 'first',
    }),
    freeboard: quantityField({
      label: 'Air between water and rim',
      help: 'From the surface up to the rim or the lid.',
      quantity: 'length',
      minimum: 0,
      maximum: 5,
      level: 'first',
    }),
    panels: listField(
      panel,
      { label: 'Panels', help: 'Every piece that holds the water.', level: 'first', item: 'panel' },
      1,
    ),
    wall,
    ...shared,
  })
  .check(
    z.meta({ title: 'I know its sizes: panel by panel', description: 'A tank of any form, as a list of flat pieces.' }),
  );
