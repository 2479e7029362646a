// Beside the display tank: sump, refuge, overflow, pipes, air, and the water that is filled up and changed.

import * as z from 'zod/mini';
import { insulationNames, pipeMaterialNames, wallMaterialNames } from '../../../matter/materials/index.ts';
import { choiceField, kindField, listedField, listField, practice, quantityField } from '../field.ts';
import { lidSheet } from './cover.ts';
import { board, exposure, materialChoices, sheet, thin } from './layers.ts';
import { surface, waterDepth } from './surface.ts';

const inside = { quantity: 'length', minimum: 0.05, maximum: 10, level: 'more' } as const;

/** A box with water beside the display tank; "of the sump". */
function vessel(name: string, help: string) {
  const of = ` of the ${name}`;
  const { lidMaterial, lidThickness, lidOpenShare } = lidSheet(of);
  const label = `${name.charAt(0).toUpperCase()}${name.slice(1)}`;
  return z.optional(
    z
      .discriminatedUnion('kind', [
        z
          .strictObject({ kind: kindField('none') })
          .check(z.meta({ title: `No ${name}`, description: 'There is none.' })),
        z
          .strictObject({
            kind: kindField('rectangular'),
            length: quantityField({ ...inside, label: `Length${of}`, help: 'Inside, along its front.' }),
            width: quantityField({ ...inside, label: `Width${of}`, help: 'Inside, front to back.' }),
            height: quantityField({ ...inside, label: `Height${of}`, help: 'Inside, from the bottom to the rim.' }),
            waterDepth: waterDepth(of),
            wall: sheet(wallMaterialNames, `Panes${of}`, `the panes${of}`),
            insulation: board(`around the ${name}`),
            ...surface(of),
            lid: choiceField(
              ['none', 'tight', 'loose'],
              { none: 'No lid', tight: 'A lid that closes tightly', loose: 'A lid with gaps' },
              { label: `Lid${of}`, help: 'Open water loses most of its heat as vapour.', level: 'more' },
            ),
            lidMaterial,
            lidThickness,
            lidOpenShare,
            exposure: exposure({
              label: `What surrounds the ${name}`,
              help: 'What lies beyond its sides and its bottom.',
              level: 'more',
              default: { text: 'roomAir', source: 'room air on all sides until something else is named' },
            }),
          })
          .check(z.meta({ title: `A rectangular ${name}`, description: help })),
      ])
      .check(
        z.meta({
          title: label,
          description: help,
          field: { label, help, level: 'more', default: { text: 'none', source: 'none counted until one is named' } },
        }),
      ),
  );
}

/** The other vessels, each with a water surface and walls of its own. */
export const sideVessels = {
  sump: vessel('sump', 'A filter tank, often below the display tank.'),
  refuge: vessel('refuge', 'A separate tank in the same water, for plants or young animals.'),
  overflow: vessel('overflow', 'A box that the water falls into on its way down.'),
};

const pipe = z
  .strictObject({
    name: z.optional(
      z.string().check(
        z.minLength(1),
        z.maxLength(40),
        z.meta({
          title: 'Name of the pipe',
          description: 'Such as "return".',
          field: { label: 'Name of the pipe', help: 'Whatever tells it apart.', level: 'more' },
        }),
      ),
    ),
    length: quantityField({
      label: 'Length of the pipe',
      help: 'Of all runs of this kind together.',
      quantity: 'length',
      minimum: 0.01,
      maximum: 200,
      level: 'first',
    }),
    outerDiameter: quantityField({
      label: 'Outer diameter',
      help: 'Of the bare pipe.',
      quantity: 'length',
      minimum: 0.004,
      maximum: 0.5,
      level: 'first',
    }),
    material: listedField(materialChoices(pipeMaterialNames), {
      label: 'Pipe made of',
      help: 'Material of its wall.',
      level: 'first',
    }),
    wallThickness: z.optional(
      quantityField({
        label: 'Wall of the pipe',
        help: 'Thickness of its wall.',
        quantity: 'length',
        minimum: 0.0003,
        maximum: 0.05,
        level: 'expert',
        default: { rule: '7 % of the outer diameter (4 to 10 %)', source: practice },
      }),
    ),
    insulation: z.optional(
      z.strictObject({
        material: listedField(materialChoices(insulationNames), {
          label: 'Pipe wrapped in',
          help: 'Material around the pipe.',
          level: 'more',
        }),
        thickness: quantityField({
          ...thin,
          label: 'Thickness of the wrapping',
          help: 'Around the pipe.',
          level: 'more',
        }),
      }),
    ),
  })
  .check(z.meta({ title: 'Pipe', description: 'A pipe or hose with tank water in it.' }));

const air = { quantity: 'volumeFlow', minimum: 0, maximum: 0.1, level: 'more' } as const;

/** Pipes, air and fresh water. */
export const circulation = {
  pipes: z.optional(
    listField(pipe, {
      label: 'Pipes',
      help: 'Pipes and hoses with tank water in room air.',
      level: 'expert',
      item: 'pipe',
    }),
  ),
  airStones: z.optional(
    quantityField({
      ...air,
      label: 'Air through air stones',
      help: 'Room air that bubbles through the water and leaves it warm and damp.',
      default: { text: '0 L/h', source: 'no air counted until it is named' },
    }),
  ),
  skimmerAir: z.optional(
    quantityField({
      ...air,
      label: 'Air through the skimmer',
      help: 'Room air that the skimmer draws in; it leaves warm and damp.',
      default: { text: '0 L/h', source: 'no air counted until it is named' },
    }),
  ),
  makeUpFrom: z.optional(
    choiceField(
      ['room', 'mains'],
      { room: 'From a can as warm as the room', mains: 'Straight from the water main' },
      {
        label: 'Where make-up water comes from',
        help: 'What evaporates is filled up and has to be warmed.',
        level: 'expert',
        default: { text: 'room', source: practice },
      },
    ),
  ),
  waterChange: z.optional(
    z.strictObject({
      volume: quantityField({
        label: 'Water changed each time',
        help: 'Filled in as cold as the main; the old water leaves as warm as the tank.',
        quantity: 'volume',
        minimum: 0,
        maximum: 200,
        level: 'more',
      }),
      every: quantityField({
        label: 'Time between water changes',
        help: 'From one change to the next.',
        quantity: 'duration',
        minimum: 3600,
        maximum: 365 * 86400,
        level: 'more',
      }),
    }),
  ),
};
