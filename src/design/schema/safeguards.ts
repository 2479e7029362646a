// Safeguards in the document: what is known of protection from leaking current, overheating, and water on the mains.

import * as z from 'zod/mini';
import { yesNoLabels, yesNoUnknown } from './choices.ts';
import { choiceField } from './field.ts';

const nothingAssumed = { text: 'unknown', source: 'nothing assumed about safety equipment' };

export const safeguardsSchema = z.optional(
  z.strictObject({
    overTemperatureCutOut: z.optional(
      choiceField(
        ['independent', 'none', 'unknown'],
        { independent: 'Yes, independent of the thermostat', none: 'None', unknown: 'Not known' },
        {
          label: 'Over-temperature cut-out',
          help: 'A mechanical switch of its own that stops the machine when the water gets too warm.',
          level: 'more',
          default: nothingAssumed,
        },
      ),
    ),
    residualCurrentProtection: z.optional(
      choiceField(yesNoUnknown, yesNoLabels, {
        label: 'Residual-current protection',
        help: 'A device that cuts the mains when current leaks into the water (RCD, GFCI).',
        level: 'more',
        default: nothingAssumed,
      }),
    ),
    airPumpIntake: z.optional(
      choiceField(
        ['none', 'elsewhere', 'sameRoom', 'besideMachine', 'unknown'],
        {
          none: 'There is no air pump',
          elsewhere: 'From outdoors or a room without any part of the circuit',
          sameRoom: 'From a room that holds part of the circuit',
          besideMachine: 'From the cabinet, hood or corner of the machine',
          unknown: 'Not known',
        },
        {
          label: 'Where the air pump draws its air',
          help: 'An air pump that draws in leaked refrigerant blows it through the water.',
          level: 'more',
          default: nothingAssumed,
        },
      ),
    ),
    sockets: z.optional(
      choiceField(
        ['aboveWater', 'belowWater', 'unknown'],
        {
          aboveWater: 'Above the rim of the tank, to one side',
          belowWater: 'Below the water level, or under the tank',
          unknown: 'Not known',
        },
        {
          label: 'Where sockets and plugs are',
          help: 'Water that spills or siphons out runs down to whatever hangs lower.',
          level: 'more',
          default: nothingAssumed,
        },
      ),
    ),
    dripLoops: z.optional(
      choiceField(yesNoUnknown, yesNoLabels, {
        label: 'Does every cable hang in a drip loop?',
        help: 'The cable hangs lower than its socket before it rises to it, so that water drips off.',
        level: 'more',
        default: nothingAssumed,
      }),
    ),
    machineLevel: z.optional(
      choiceField(
        ['aboveWater', 'belowWater', 'unknown'],
        { aboveWater: 'Above the water level', belowWater: 'Below the water level', unknown: 'Not known' },
        {
          label: 'Height of the machine',
          help: 'Below the water level, a hose that slips off floods it.',
          level: 'more',
          default: nothingAssumed,
        },
      ),
    ),
    metalEarthed: z.optional(
      choiceField(yesNoUnknown, yesNoLabels, {
        label: 'Is metal that touches the water earthed?',
        help: 'A metal coil is earthed and bonded by a licensed electrician. Without meaning for plastic tube.',
        level: 'more',
        default: nothingAssumed,
      }),
    ),
  }),
);
