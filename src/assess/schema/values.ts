// The smallest parts of the published answer: numbers in SI, words, bands.

import { z } from 'zod';

export const si = (description: string) => z.number().describe(description);
export const text = (description: string) => z.string().describe(description);

export const band = z.strictObject({
  low: si('lower end: one would be surprised, about one time in ten, to see it passed'),
  likely: si('likely value'),
  high: si('upper end'),
});

export const bandWithUnit = (description: string) =>
  z
    .strictObject({
      ...band.shape,
      unit: text('SI unit of the three numbers; "1" for a pure number and for money'),
      result: text('name of this result; the step of `workings` of the same name shows how it was computed'),
    })
    .describe(description);
