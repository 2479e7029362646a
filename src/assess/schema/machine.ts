// The machine in the published answer: what it is, how it would run, how well it is known.

import { z } from 'zod';
import { limitAnswer, limitMargin } from './coldest-spell.ts';
import { band, bandWithUnit, si, text } from './values.ts';

const span = z.strictObject({ lowest: si('[K]'), highest: si('[K]') });

const correction = z.strictObject({
  correction: si('of the model by the points nearby, relative'),
  halfWidth: si('what is left in doubt of it, relative'),
});

const residual = z.strictObject({
  path: text('where the value was given in the design'),
  label: text('the same in words'),
  of: z.enum(['massFlow', 'capacity', 'power', 'current', 'dischargeTemperature']),
  quantity: text('name of the quantity of the two numbers'),
  given: si('as printed or measured'),
  modelled: si('of the likely machine'),
  deviation: si('modelled over given, less 1; of a temperature the difference [K]'),
  score: si('distance from what everything else predicts for it, in standard deviations of that'),
  disagrees: z.boolean().describe('true where it does not fit the rest, from 3 standard deviations on'),
});

export const machine = z
  .strictObject({
    count: si('machines alike, each with a circuit of its own'),
    madeFor: text('the fluid it was made for'),
    appliance: z.string().nullable().describe('what it came out of; null where nobody knows'),
    application: z.enum(['low', 'medium', 'high']).describe('back pressure it was made for'),
    builtFor: span.describe('evaporating range of its application'),
    wouldRunAt: z
      .strictObject({ evaporating: span, condensing: span })
      .describe('from the coldest spell to the mild day, likely dew temperatures'),
    heat: bandWithUnit('out of the condenser in the coldest spell [W]'),
    power: bandWithUnit('electricity [W]'),
    current: bandWithUnit('[A]'),
    ratedCurrent: band.nullable().describe('as printed on it [A]; null where that is not known'),
    currentShare: bandWithUnit('current over the rated current').nullable(),
    motorLoad: bandWithUnit('torque over the torque of the motor’s best load'),
    wallTemperature: bandWithUnit('shell, motor and pump, taken as one temperature [K]'),
    firstLimit: limitMargin.describe('the limit that is met first'),
    limits: z.array(limitAnswer).describe('every limit known of it, the nearest first'),
    displacement: bandWithUnit('swept per revolution [m³]'),
    residuals: z.array(residual).describe('how well the likely machine meets each value given'),
    doubt: z
      .strictObject({
        flow: correction,
        power: correction,
        reasons: z.array(z.enum(['otherFluid', 'otherFrequency', 'beyondEvaporating', 'beyondCondensing', 'noPoints'])),
      })
      .describe('how far the model itself is off there, beside its numbers'),
  })
  .describe('one machine in the coldest spell');
