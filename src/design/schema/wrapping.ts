// What may be wrapped in the document: a list of measures with what each costs. Each is a change to the design.

import * as z from 'zod/mini';
import { insulationNames, lidMaterialNames } from '../../matter/materials/index.ts';
import { secondsPerYear } from '../../quantities/index.ts';
import { choiceField, kindField, listedField, listField, practice, quantityField } from './field.ts';
import { usualLidRule } from './tank/cover.ts';
import { materialChoices, thin } from './tank/layers.ts';

const money = { quantity: 'money', minimum: 0, maximum: 1e9, level: 'first' } as const;

const name = z.optional(
  z.string().check(
    z.minLength(1),
    z.maxLength(60),
    z.meta({
      title: 'Name of the measure',
      description: 'Whatever tells it apart.',
      field: { label: 'Name of the measure', help: 'Whatever tells it apart.', level: 'more' },
    }),
  ),
);
const cost = quantityField({ ...money, label: 'Cost', help: 'What it costs in all.' });
const freeUnlessGiven = z.optional(
  quantityField({
    ...money,
    label: 'Cost of the change',
    help: 'What it costs in all, if anything.',
    default: { text: '0', source: 'nothing to buy' },
  }),
);
const insulation = listedField(materialChoices(insulationNames), {
  label: 'Insulation',
  help: 'Material of the board or mat.',
  level: 'first',
});
const insulationThickness = quantityField({
  ...thin,
  label: 'Thickness of the insulation',
  help: 'Thickness of the board or mat.',
  level: 'first',
});

const sheetRule = { rule: usualLidRule, source: practice };

const lid = z
  .strictObject({
    kind: kindField('lid'),
    name,
    material: listedField(materialChoices(lidMaterialNames), {
      label: 'New lid made of',
      help: 'Material of the lid.',
      level: 'first',
    }),
    thickness: z.optional(
      quantityField({
        ...thin,
        label: 'Thickness of the new lid',
        help: 'Thickness of the sheet.',
        level: 'more',
        default: sheetRule,
      }),
    ),
    vessel: z.optional(
      choiceField(
        ['tank', 'sump', 'refuge', 'overflow'],
        { tank: 'The display tank', sump: 'The sump', refuge: 'The refuge', overflow: 'The overflow' },
        {
          label: 'Vessel it lies on',
          help: 'Open water anywhere in the system evaporates.',
          level: 'more',
          default: { text: 'tank', source: 'a lid is for the display tank until another vessel is named' },
        },
      ),
    ),
    panes: z.optional(
      choiceField(
        ['one', 'two'],
        { one: 'One pane', two: 'Two panes with a sealed gap' },
        {
          label: 'Panes of the new lid',
          help: 'Two panes lose less than half of one.',
          level: 'more',
          default: { text: 'one', source: practice },
        },
      ),
    ),
    cost,
  })
  .check(z.meta({ title: 'A tight lid', description: 'Stops most of the evaporation.' }));

const board = z
  .strictObject({
    kind: kindField('board'),
    name,
    where: choiceField(
      ['hidden', 'back', 'sides', 'bottom', 'front', 'sideVessels'],
      {
        hidden: 'Back and both ends, and all sides of the sump',
        back: 'Back',
        sides: 'Both ends',
        bottom: 'Bottom',
        front: 'Front, or around a cylinder',
        sideVessels: 'Around sump, refuge and overflow',
      },
      { label: 'Where the board goes', help: 'Outside of these panes.', level: 'first' },
    ),
    material: insulation,
    thickness: insulationThickness,
    gap: z.optional(
      quantityField({
        label: 'Sealed gap behind the board',
        help: 'Air between pane and board, closed all round.',
        quantity: 'length',
        minimum: 0.001,
        maximum: 0.3,
        level: 'more',
        default: { rule: 'none: the board lies on the pane', source: 'no gap counted until one is named' },
      }),
    ),
    cost,
  })
  .check(z.meta({ title: 'A board on the outside', description: 'Insulating board, perhaps over a sealed gap.' }));

const mat = z
  .strictObject({ kind: kindField('mat'), name, material: insulation, thickness: insulationThickness, cost })
  .check(z.meta({ title: 'A mat underneath', description: 'Below the bottom, where it bears the weight.' }));

const doubleGlazing = z
  .strictObject({
    kind: kindField('doubleGlazing'),
    name,
    where: choiceField(
      ['front', 'sides', 'frontAndSides'],
      { front: 'Front, or around a cylinder', sides: 'Both ends', frontAndSides: 'Front and both ends' },
      { label: 'Where the second pane goes', help: 'Outside of these panes.', level: 'first' },
    ),
    gap: z.optional(
      quantityField({
        label: 'Gap between the panes',
        help: 'Sealed air between them.',
        quantity: 'length',
        minimum: 0.001,
        maximum: 0.1,
        level: 'more',
        default: { text: '12 mm (8 to 20)', source: practice },
      }),
    ),
    cost,
  })
  .check(z.meta({ title: 'A second pane', description: 'Double glazing where one wants to look in.' }));

const cooler = z
  .strictObject({
    kind: kindField('cooler'),
    name,
    by: quantityField({
      label: 'Cooler by',
      help: 'How much lower the water is kept, if the animals allow it.',
      quantity: 'temperatureDifference',
      minimum: 0.1,
      maximum: 15,
      level: 'first',
    }),
    cost: freeUnlessGiven,
  })
  .check(z.meta({ title: 'Cooler water', description: 'Keeps the water a little cooler.' }));

const nightCover = z
  .strictObject({
    kind: kindField('nightCover'),
    name,
    hours: quantityField({
      label: 'Covered a day',
      help: 'How long the cover lies on the tank each day.',
      quantity: 'duration',
      minimum: 600,
      maximum: 86400,
      level: 'first',
    }),
    material: z.optional(
      listedField(
        materialChoices([
          ...insulationNames,
          ...lidMaterialNames.filter((lidName) => !insulationNames.includes(lidName)),
        ]),
        {
          label: 'Cover made of',
          help: 'Material of the cover.',
          level: 'more',
          default: { text: 'expandedPolystyrene', source: practice },
        },
      ),
    ),
    thickness: z.optional(
      quantityField({
        ...thin,
        label: 'Thickness of the cover',
        help: 'Thickness of the sheet or board.',
        level: 'more',
        default: { text: '10 mm (6 to 20)', source: practice },
      }),
    ),
    cost,
  })
  .check(z.meta({ title: 'A cover at night', description: 'A tight cover while nobody looks.' }));

const calmerSurface = z
  .strictObject({
    kind: kindField('calmerSurface'),
    name,
    to: choiceField(
      ['still', 'rippled'],
      { still: 'Still: a mirror', rippled: 'Rippled by a filter outlet' },
      { label: 'Surface after the change', help: 'The water still needs oxygen.', level: 'first' },
    ),
    cost: freeUnlessGiven,
  })
  .check(z.meta({ title: 'A calmer surface', description: 'Filter outlets below the surface, fewer air stones.' }));

export const wrappingSchema = z.optional(
  z.strictObject({
    measures: z.optional(
      listField(
        z.discriminatedUnion('kind', [lid, board, mat, doubleGlazing, cooler, nightCover, calmerSurface]).check(
          z.meta({
            title: 'Measure',
            description: 'One thing that saves heat.',
            field: { label: 'What to do', help: 'One thing that saves heat.', level: 'first' },
          }),
        ),
        {
          label: 'Measures',
          help: 'What you might wrap, with its cost. Without a list the usual ones that apply are offered.',
          level: 'first',
          item: 'measure',
          keepsEmpty: true,
        },
      ),
    ),
    years: z.optional(
      quantityField({
        label: 'Years counted',
        help: 'How long what is wrapped is expected to save.',
        quantity: 'duration',
        minimum: 0.5 * secondsPerYear,
        maximum: 50 * secondsPerYear,
        level: 'more',
        default: { text: '10 years (7 to 15)', source: practice },
      }),
    ),
  }),
);
