// Findings, spaces and limits of the charge in the published answer.

import { z } from 'zod';
import { si, text } from './values.ts';

const fact = z.union([
  z.strictObject({ value: si('base SI'), quantity: text('name of the quantity, such as "temperature"') }),
  z.strictObject({ word: text('a name of the trade or of the design') }),
]);

export const finding = z.strictObject({
  code: text('stable name of the rule that spoke, such as "frostOnEvaporator"'),
  severity: z
    .enum(['note', 'look', 'stop'])
    .describe('stop: do not build; look: look at this first; note: worth knowing'),
  subject: z.enum(['person', 'house', 'livestock', 'machine', 'law', 'model']).describe('who or what it is about'),
  facts: z
    .record(z.string(), fact)
    .describe('the numbers and words it rests on; figures of the charge are left out with standing doNotBuild'),
  source: text('where the rule comes from'),
  certainty: z
    .enum(['confirmed', 'physics', 'stated', 'memory', 'practice'])
    .optional()
    .describe(
      'how sure what the rule rests on is: a published figure, a law of nature, what the design says, from memory, common practice; absent for findings about the models',
    ),
  remedy: text('what to do; never an instruction for work that needs a licensed person'),
  needsLicensedPerson: z.boolean().describe('whether what it is about is work for licensed people'),
});

export const space = z.strictObject({
  space: text('stable name: closedCabinet, hood, lowPlace, tankRoom, otherRoom, airPumpIntake'),
  label: text('the same in words'),
  volume: z.number().nullable().describe('lower end of its size [m³]; null where unknown'),
  concentration: z.number().nullable().describe('from the upper end of the charge [kg/m³]; null where unknown'),
  limit: z.number().nullable().describe('what a leak should stay below [kg/m³]; null where the catalogue knows none'),
  state: z
    .enum(['belowLimit', 'aboveLimit', 'flammable', 'unknown', 'noLimit'])
    .describe('how the two compare; belowLimit clears nothing'),
  path: text('field of the design that could settle it'),
  isAssumed: z.boolean().describe('whether its size is an assumption'),
  measure: text('how to find its size'),
});

export const chargeComparison = z.strictObject({
  name: text('stable name of the figure, such as "householdAppliance"'),
  label: text('what the figure is set for'),
  standard: text('which standard sets it'),
  limit: si('the figure [kg]'),
  certainty: z.enum(['confirmed', 'physics', 'stated', 'memory', 'practice']).describe('how sure the figure is'),
  charge: z
    .enum(['below', 'between', 'above'])
    .describe('where the charge of the circuit lies; between: only its upper end is above'),
});
