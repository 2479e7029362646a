// The machine in the document: the compressor however it is known, its surroundings, exchangers, small consumers, safeguards.

import * as z from 'zod/mini';
import { applianceClasses, ratingPoint, ratingPointNames } from '../../parts/compressor/index.ts';
import { choiceField, kindField, listedField, quantityField } from './field.ts';
import { fluidChoices, madeForChoices } from './fluids.ts';
import { yesNoLabels, yesNoUnknown } from './place.ts';

const practice = 'common practice, no source';

const levels = ['low', 'medium', 'high'] as const;
const levelLabels = {
  low: 'Low: freezers, refrigerators',
  medium: 'Medium: bottle coolers, ice machines',
  high: 'High: dehumidifiers, air conditioners, dryers',
};

const madeFor = listedField(madeForChoices, {
  label: 'Refrigerant it was made for',
  help: 'Printed on the rating plate of the appliance and of the compressor.',
  level: 'first',
});

const fromClass = {
  rule: 'the range of such compressors',
  source: 'ranges of appliance classes: typical values from memory, and common practice',
};

const expert = { level: 'expert', default: fromClass } as const;

/** Numbers that one rating cannot tell; every kind of description may give them. */
const details = {
  speed: z.optional(
    quantityField({
      ...expert,
      label: 'Speed of the shaft',
      help: 'Revolutions under load; about 2900 rpm on 50 Hz mains, 3480 rpm on 60 Hz.',
      quantity: 'frequency',
      minimum: 5,
      maximum: 200,
    }),
  ),
  clearanceRatio: z.optional(
    quantityField({
      ...expert,
      label: 'Clearance ratio',
      help: 'Volume left above the piston over the swept volume.',
      quantity: 'fraction',
      minimum: 0,
      maximum: 0.5,
    }),
  ),
  reexpansionExponent: z.optional(
    quantityField({
      ...expert,
      label: 'Exponent of re-expansion',
      help: 'Polytropic exponent of the gas left in the clearance.',
      quantity: 'ratio',
      minimum: 1,
      maximum: 2,
    }),
  ),
  fillingFactor: z.optional(
    quantityField({
      ...expert,
      label: 'Filling factor',
      help: 'What warm suction gas, valves and leakage leave of the swept flow.',
      quantity: 'fraction',
      minimum: 0.1,
      maximum: 1,
    }),
  ),
  frictionPressure: z.optional(
    quantityField({
      ...expert,
      label: 'Constant losses as a pressure',
      help: 'Friction and idle losses over the swept volume flow.',
      quantity: 'pressureDifference',
      minimum: 0,
      maximum: 1e6,
    }),
  ),
  shellHeatShare: z.optional(
    quantityField({
      ...expert,
      label: 'Share of the power that leaves through the shell',
      help: 'Heat the shell gives to the air around it, over the electricity of the compressor.',
      quantity: 'fraction',
      minimum: 0,
      maximum: 0.95,
    }),
  ),
};

const compressionEfficiency = z.optional(
  quantityField({
    ...expert,
    label: 'Compression efficiency',
    help: 'Ideal work over the electricity that grows with it.',
    quantity: 'fraction',
    minimum: 0.1,
    maximum: 1,
  }),
);

const displacementLimits = { quantity: 'displacement', minimum: 5e-7, maximum: 2e-4 } as const;

const salvaged = z
  .strictObject({
    kind: kindField('salvaged'),
    madeFor,
    appliance: listedField(
      applianceClasses.map(({ name, title }) => ({ name, label: title.charAt(0).toUpperCase() + title.slice(1) })),
      {
        label: 'It came out of a …',
        help: 'The appliance tells what size and kind of compressor to expect.',
        level: 'first',
      },
    ),
    displacement: z.optional(
      quantityField({
        ...displacementLimits,
        label: 'Volume swept per revolution',
        help: 'From the maker’s data sheet; narrows the answer more than most other numbers.',
        level: 'more',
        default: fromClass,
      }),
    ),
    ...details,
    compressionEfficiency,
  })
  .check(z.meta({ title: 'I know what it came out of', description: 'Ranges of such compressors are assumed.' }));

const byDisplacement = z
  .strictObject({
    kind: kindField('displacement'),
    madeFor,
    displacement: quantityField({
      ...displacementLimits,
      label: 'Volume swept per revolution',
      help: 'From the maker’s data sheet, in cm³.',
      level: 'first',
    }),
    application: choiceField(levels, levelLabels, {
      label: 'Made for which cold',
      help: 'The level of evaporating temperature the compressor was built for; data sheets say LBP, MBP or HBP.',
      level: 'first',
    }),
    ...details,
    compressionEfficiency,
  })
  .check(z.meta({ title: 'I know its displacement', description: 'Swept volume from a data sheet.' }));

const byRating = z
  .strictObject({
    kind: kindField('rating'),
    madeFor,
    ratingPoint: listedField(
      ratingPointNames.map((name) => ({ name, label: ratingPoint(name).title })),
      {
        label: 'Rated at',
        help: 'The named conditions under which capacity and power are stated.',
        level: 'first',
      },
    ),
    capacity: quantityField({
      label: 'Capacity',
      help: 'Cooling capacity stated there.',
      quantity: 'power',
      minimum: 5,
      maximum: 50000,
      level: 'first',
    }),
    power: quantityField({
      label: 'Electric power',
      help: 'Electric power stated there.',
      quantity: 'electricPower',
      minimum: 5,
      maximum: 20000,
      level: 'first',
    }),
    ...details,
  })
  .check(z.meta({ title: 'I have its rating', description: 'Capacity and power at a named rating point.' }));

const enclosureVolume = quantityField({
  label: 'Volume it stands in',
  help: 'Air volume around the machine: inner length, width and height, less what stands in it. Decides whether leaked refrigerant could burn.',
  quantity: 'volume',
  minimum: 0.001,
  maximum: 500,
  level: 'more',
});

export const machineSchema = z.strictObject({
  refrigerant: listedField(fluidChoices, {
    label: 'Refrigerant it would run on',
    help: 'For study. A compressor belongs to the refrigerant it was made for.',
    level: 'first',
  }),
  compressor: z.discriminatedUnion('kind', [salvaged, byDisplacement, byRating]).check(
    z.meta({
      title: 'Compressor',
      description: 'However it is known.',
      field: {
        label: 'How the compressor is known',
        help: 'By the appliance it came out of, by its displacement, or by a rating.',
        level: 'first',
      },
    }),
  ),
  application: z.optional(
    choiceField(levels, levelLabels, {
      label: 'Made for which cold',
      help: 'The level of evaporating temperature the motor was built for.',
      level: 'more',
      default: { rule: 'as such compressors usually are', source: 'follows from the description of the compressor' },
    }),
  ),
  shellPlace: z.optional(
    choiceField(
      ['tankRoom', 'sourceRoom', 'outdoors'],
      { tankRoom: 'In the room of the tank', sourceRoom: 'Where the heat is taken from', outdoors: 'Outdoors' },
      {
        label: 'Where the compressor stands',
        help: 'Its shell warms what is around it.',
        level: 'more',
        default: { text: 'tankRoom', source: practice },
      },
    ),
  ),
  enclosure: z.optional(
    z
      .discriminatedUnion('kind', [
        z
          .strictObject({ kind: kindField('openRoom') })
          .check(z.meta({ title: 'Open in the room', description: 'No cabinet around it.' })),
        z
          .strictObject({ kind: kindField('closedCabinet'), volume: enclosureVolume })
          .check(z.meta({ title: 'In a closed cabinet', description: 'Under the tank, for instance.' })),
        z
          .strictObject({ kind: kindField('hood'), volume: enclosureVolume })
          .check(z.meta({ title: 'Under a hood', description: 'A cover open to one side.' })),
      ])
      .check(
        z.meta({
          title: 'What surrounds the machine',
          description: 'Where leaked refrigerant would gather.',
          field: {
            label: 'What surrounds the machine',
            help: 'Where leaked refrigerant would gather.',
            level: 'more',
            default: { text: 'openRoom', source: practice },
          },
        }),
      ),
  ),
  sunkenPlace: z.optional(
    z
      .discriminatedUnion('kind', [
        z
          .strictObject({ kind: kindField('unknown') })
          .check(z.meta({ title: 'Not known', description: 'Nobody has looked for a low place near the machine.' })),
        z
          .strictObject({ kind: kindField('none') })
          .check(z.meta({ title: 'None', description: 'The floor is level, without pit, open drain or step down.' })),
        z
          .strictObject({
            kind: kindField('pit'),
            volume: quantityField({
              label: 'Volume of the low place',
              help: 'Length, width and depth below the floor around it, by tape measure.',
              quantity: 'volume',
              minimum: 0.001,
              maximum: 500,
              level: 'more',
            }),
          })
          .check(z.meta({ title: 'There is one', description: 'A pit, a sunken stand, a step down, a shaft.' })),
      ])
      .check(
        z.meta({
          title: 'Low place near the machine',
          description: 'Where a heavy gas would flow and stay.',
          field: {
            label: 'A place lower than the floor nearby',
            help: 'A pit, a sunken stand, an open drain, a step down: refrigerants are heavier than air, flow there and stay.',
            level: 'more',
            default: { text: 'unknown', source: 'nothing assumed about the floor' },
          },
        }),
      ),
  ),
  charge: z.optional(
    quantityField({
      label: 'Refrigerant in the circuit',
      help: 'Printed on the rating plate of the appliance. Shown against limits only; never an amount to fill in.',
      quantity: 'mass',
      minimum: 0.001,
      maximum: 20,
      level: 'more',
      default: { rule: 'the range of such appliances as built', source: fromClass.source },
    }),
  ),
  forFlammables: z.optional(
    choiceField(yesNoUnknown, yesNoLabels, {
      label: 'Is the equipment made for a flammable refrigerant?',
      help: 'Relays, switches, thermostat and fan near the circuit must be made for it.',
      level: 'more',
      default: { text: 'unknown', source: 'nothing assumed about safety equipment' },
    }),
  ),
});

const approach = { quantity: 'temperatureDifference', minimum: 1, maximum: 40, level: 'more' } as const;

export const exchangersSchema = z.optional(
  z.strictObject({
    evaporatorApproach: z.optional(
      quantityField({
        ...approach,
        label: 'Source air above evaporating temperature',
        help: 'A larger cold exchanger needs less. Air temperature minus evaporating (dew) temperature: of a blend, the nearest that boiling comes to the air.',
        default: { text: '10 K (7 to 15)', source: practice },
      }),
    ),
    condenserApproach: z.optional(
      quantityField({
        ...approach,
        label: 'Condensing temperature above the water',
        help: 'A larger warm exchanger needs less. Condensing (bubble) temperature minus water temperature: of a blend, the nearest that condensing comes to the water.',
        default: {
          rule: '10 K (7 to 14) with a water loop between, 6 K (4 to 9) with a coil in the tank',
          source: practice,
        },
      }),
    ),
    condenserArrangement: z.optional(
      choiceField(
        ['intermediateLoop', 'coilInTank'],
        { intermediateLoop: 'A water loop between refrigerant and tank', coilInTank: 'A refrigerant coil in the tank' },
        {
          label: 'How the heat gets into the tank',
          help: 'With a water loop between, a leak of refrigerant or oil does not reach the animals.',
          level: 'more',
          default: {
            text: 'intermediateLoop',
            source: 'the arrangement that keeps refrigerant and oil away from the tank',
          },
        },
      ),
    ),
    wettedMetal: z.optional(
      choiceField(
        ['titanium', 'stainless316', 'copper', 'cupronickel', 'polymer', 'unknown'],
        {
          titanium: 'Titanium',
          stainless316: 'Stainless steel 316',
          copper: 'Copper',
          cupronickel: 'Cupronickel',
          polymer: 'Plastic tube',
          unknown: 'Not known',
        },
        {
          label: 'What touches the tank water',
          help: 'Material of the surface that gives the heat to the tank.',
          level: 'more',
          default: { text: 'unknown', source: 'nothing assumed about the material' },
        },
      ),
    ),
    tubeDiameter: z.optional(
      quantityField({
        label: 'Diameter of the coil’s tube',
        help: 'Outer diameter.',
        quantity: 'length',
        minimum: 0.002,
        maximum: 0.1,
        level: 'expert',
        default: { text: '9.5 mm', source: practice },
      }),
    ),
    superheat: z.optional(
      quantityField({
        label: 'Superheat',
        help: 'How far the gas at the compressor is above its dew temperature.',
        quantity: 'temperatureDifference',
        minimum: 0,
        maximum: 60,
        level: 'expert',
        default: { text: '6 K (3 to 10)', source: practice },
      }),
    ),
    subcooling: z.optional(
      quantityField({
        label: 'Subcooling',
        help: 'How far the liquid before the valve or capillary is below its bubble temperature.',
        quantity: 'temperatureDifference',
        minimum: 0,
        maximum: 40,
        level: 'expert',
        default: { text: '3 K (1 to 6)', source: practice },
      }),
    ),
    airSpeed: z.optional(
      quantityField({
        label: 'Air speed at the evaporator',
        help: 'Air flow over the face area of the evaporator.',
        quantity: 'speed',
        minimum: 0.1,
        maximum: 10,
        level: 'expert',
        default: { text: '1.5 m/s (1 to 2)', source: practice },
      }),
    ),
  }),
);

const small = { quantity: 'electricPower', minimum: 0, maximum: 2000 } as const;

export const powerSchema = z.optional(
  z.strictObject({
    fan: z.optional(
      quantityField({
        ...small,
        label: 'Power of the fan',
        help: 'The fan that drives the source air through the evaporator.',
        level: 'more',
        default: { text: '8 W (4 to 15)', source: practice },
      }),
    ),
    loopPump: z.optional(
      quantityField({
        ...small,
        label: 'Power of the loop pump',
        help: 'The pump of the water loop between refrigerant and tank.',
        level: 'more',
        default: { rule: '5 W (3 to 10) with a water loop, 0 W with a coil in the tank', source: practice },
      }),
    ),
    controls: z.optional(
      quantityField({
        ...small,
        label: 'Power of the controls',
        help: 'Thermostat, relays, display; day and night.',
        level: 'expert',
        default: { text: '3 W (1 to 6)', source: practice },
      }),
    ),
  }),
);

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
