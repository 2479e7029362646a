// Doubt in the published answer: what moves the margin, what to measure, what was assumed.

import { z } from 'zod';
import { band, si, text } from './values.ts';

const loadStanding = z.enum(['fallsShort', 'uncertain', 'carriesLoad']);

export const influence = z.strictObject({
  path: text('of the input in the design, or "engine." and the name of an assumption of the models'),
  label: text('the same in words'),
  quantity: text('name of the quantity of the input'),
  input: band.describe('range of the input, base SI'),
  marginAtLow: si('heat delivered less load with this input at its low end, all others likely [W]'),
  marginAtHigh: si('the same at its high end [W]'),
  share: si('of the variance of the margin, 0 to 1'),
  measure: text('how one could find out'),
  marginIfKnown: band.describe(
    'what would be left of the margin’s range were this input known at its likely value [W]',
  ),
  flipsAtLow: loadStanding
    .nullable()
    .describe('what could be said of the load were this input known at its low end; null where no more than now'),
  flipsAtHigh: loadStanding.nullable().describe('the same at its high end'),
});

export const measurement = z.strictObject({
  measure: text('how'),
  paths: z.array(z.string()).describe('inputs it settles'),
  labels: z.array(z.string()).describe('the same in words'),
  enterAt: z.array(z.string()).describe('fields of the design that take its result'),
  share: si('of the variance of the margin that it settles, 0 to 1'),
  marginIfKnown: band.describe('what would be left of the margin’s range, were the measurement without doubt [W]'),
});

export const assumption = z.strictObject({
  path: text('where the design would say otherwise; "engine.…" is inside the models'),
  label: text('the same in words'),
  quantity: text('name of the quantity, or "choice"'),
  value: z
    .union([band, z.string()])
    .describe('a band in base SI, or the word assumed; "withheld" for the charge with standing doNotBuild'),
  source: text('where the assumed value comes from'),
  level: z.enum(['first', 'more', 'expert']).describe('how likely a person knows it'),
});
