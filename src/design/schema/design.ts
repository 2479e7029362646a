// The Design document, version 2: the only definition of what a design file may contain. Every quantity is a text with its
// unit, as a person wrote it. Everything optional has a default that is shown as an assumption; unknown keys are refused.

import * as z from 'zod/mini';
import { exchangersSchema } from './exchangers.ts';
import { machineSchema, powerSchema } from './machine.ts';
import { placeSchema, pricesSchema, sourceSchema } from './place.ts';
import { roomSchema } from './room.ts';
import { safeguardsSchema } from './safeguards.ts';
import { tankSchema } from './tank/tank.ts';
import { wrappingSchema } from './wrapping.ts';

/** The version this program writes. A file of a higher one is refused, an older one is migrated. */
export const formatVersion = 2;

const longestName = 120;
const longestNote = 5000;

export const designSchema = z
  .strictObject({
    formatVersion: z.literal(formatVersion),
    name: z.string().check(
      z.minLength(1),
      z.maxLength(longestName),
      // Blanks alone would leave what is printed without a title.
      z.regex(/\S/),
      z.meta({
        title: 'Name',
        description: 'Name of the design.',
        field: { label: 'Name of the design', help: 'Whatever tells it apart.', level: 'first' },
      }),
    ),
    note: z.optional(
      z.string().check(
        z.maxLength(longestNote),
        z.meta({
          title: 'Note',
          description: 'Anything worth keeping with the design.',
          field: { label: 'Note', help: 'Anything worth keeping with the design.', level: 'more' },
        }),
      ),
    ),
    place: placeSchema,
    room: roomSchema,
    tank: tankSchema,
    wrapping: wrappingSchema,
    source: sourceSchema,
    machine: machineSchema,
    exchangers: exchangersSchema,
    power: powerSchema,
    safeguards: safeguardsSchema,
    prices: pricesSchema,
  })
  .check(z.meta({ title: 'Kettlefin design', description: 'One design of an aquarium heat pump, format version 2.' }));

/** A valid document. The text of each quantity is kept as written. */
export type DesignDocument = z.infer<typeof designSchema>;
