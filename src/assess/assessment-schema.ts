// The published form of `check --json`: a schema of the Assessment with a description of every key. Only the tests and the
// script that writes docs/guide/assessment.schema.json read it; the program itself never does. A test holds it to the type
// Assessment at compile time, and to the answers of real designs. Keys may be added in later versions, none is renamed or
// taken away within assessmentVersion 1.

import { z } from 'zod';

const si = (description: string) => z.number().describe(description);
const text = (description: string) => z.string().describe(description);

const band = z.strictObject({
  low: si('lower end: one would be surprised, about one time in ten, to see it passed'),
  likely: si('likely value'),
  high: si('upper end'),
});

const bandWithUnit = (description: string) =>
  z
    .strictObject({
      ...band.shape,
      unit: text('SI unit of the three numbers; "1" for a pure number and for money'),
      result: text('name of this result; the step of `workings` of the same name shows how it was computed'),
    })
    .describe(description);

const fact = z.union([
  z.strictObject({ value: si('base SI'), quantity: text('name of the quantity, such as "temperature"') }),
  z.strictObject({ word: text('a name of the trade or of the design') }),
]);

const finding = z.strictObject({
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

const space = z.strictObject({
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

const chargeComparison = z.strictObject({
  name: text('stable name of the figure, such as "householdAppliance"'),
  label: text('what the figure is set for'),
  standard: text('which standard sets it'),
  limit: si('the figure [kg]'),
  certainty: z.enum(['confirmed', 'physics', 'stated', 'memory', 'practice']).describe('how sure the figure is'),
  charge: z
    .enum(['below', 'between', 'above'])
    .describe('where the charge of the circuit lies; between: only its upper end is above'),
});

const lossPath = z.strictObject({
  path: text(
    'stable name: evaporation, surfaceConvection, surfaceRadiation, lid, freeboard, front, back, sides, bottom, makeUpWater, wallsAndSurface',
  ),
  label: text('the same in words'),
  kind: z.enum(['sensible', 'latent']).describe('latent heat leaves as vapour and does not warm the room'),
  heat: bandWithUnit('heat by this path [W]'),
});

const tank = z
  .strictObject({
    waterTemperature: si('[K]'),
    roomTemperature: si('at the coldest spell [K]'),
    paths: z.array(lossPath).describe('they sum to `loss`'),
    loss: bandWithUnit('all heat that leaves [W]'),
    gains: z.strictObject({ pump: si('[W]'), light: si('[W]') }).describe('heat that pumps and lights give the water'),
    gainRanges: z.strictObject({ pump: band, light: band }).describe('their ranges [W]'),
    load: bandWithUnit('loss less gains: heat needed [W]'),
    evaporation: bandWithUnit('water that evaporates [kg/s]'),
    heatCapacity: si('of the water alone [J/K]'),
    timePerKelvin: z
      .number()
      .nullable()
      .describe('time for the water to fall by 1 K without heat [s]; null where it needs none'),
    timePerKelvinRange: z
      .strictObject({
        low: si('[s]'),
        high: z.number().nullable().describe('[s]; null where it might not cool at all'),
      })
      .nullable()
      .describe('from the range of the load; null as timePerKelvin is'),
  })
  .describe('the tank at the coldest spell');

const loopPoint = z.strictObject({
  name: text('stable name of the point of the loop'),
  temperature: si('[K]'),
  pressure: si('absolute [Pa]'),
  enthalpy: si('[J/kg], 200 kJ/kg in saturated liquid at 0 °C'),
  entropy: si('[J/(kg K)], 1 kJ/(kg K) in saturated liquid at 0 °C'),
  density: si('[kg/m³]'),
  quality: z.number().nullable().describe('mass of vapour by mass; null outside the dome'),
});

const limitMargin = z.strictObject({
  limit: text(
    'stable name: evaporatingHighest, evaporatingLowest, condensingContinuous, dischargeHighest, pressureRatioHighest',
  ),
  label: text('the same in words'),
  quantity: text('"temperature" or "ratio"'),
  value: si('where the machine is [K, or ratio]'),
  bound: si('the limit [K, or ratio]'),
  margin: si('distance left [K, or ratio]; negative once passed'),
  passed: z.boolean(),
});

const operating = z
  .strictObject({
    refrigerant: text('the fluid it is computed on'),
    sourceTemperature: si('[K]'),
    waterTemperature: si('[K]'),
    atmosphericPressure: bandWithUnit('air pressure of the place, from which gauge pressures count [Pa]'),
    evaporatingTemperature: bandWithUnit('dew temperature [K]'),
    condensingTemperature: bandWithUnit('dew temperature [K]'),
    blend: z
      .strictObject({
        evaporatingBubbleTemperature: bandWithUnit('[K]'),
        evaporatingGlide: bandWithUnit('dew less bubble temperature [K]'),
        condensingBubbleTemperature: bandWithUnit('[K]; the approach to the water counts from it'),
        condensingGlide: bandWithUnit('dew less bubble temperature [K]'),
      })
      .nullable()
      .describe('null for a single substance, which boils and condenses at one temperature'),
    evaporatingPressure: bandWithUnit('absolute [Pa]'),
    condensingPressure: bandWithUnit('absolute [Pa]'),
    dischargeTemperature: bandWithUnit('discharge gas, in the line behind the compressor [K]'),
    pressureRatio: bandWithUnit('condensing by evaporating pressure'),
    massFlow: bandWithUnit('refrigerant [kg/s]'),
    volumetricEfficiency: bandWithUnit('gas drawn in by gas swept'),
    overallEfficiency: bandWithUnit('isentropic work by electricity of the compressor'),
    shellHeat: bandWithUnit('given off by the compressor’s shell while it runs [W]'),
    points: z.array(loopPoint).describe('likely values'),
    limits: z.array(limitMargin).describe('limits usual for such a machine, the nearest first'),
  })
  .describe('where the loop settles at the coldest spell');

const operatingMoment = z.strictObject({
  when: z
    .enum(['coldestSpell', 'usual', 'warmestMonth'])
    .describe('usual: the middle of winter; warmestMonth: the warmest one in which the machine has something to do'),
  sourceTemperature: si('[K]'),
  evaporatingTemperature: si('dew temperature [K]'),
  condensingTemperature: si('dew temperature [K]'),
  evaporatingPressure: si('absolute [Pa]'),
  condensingPressure: si('absolute [Pa]'),
  dischargeTemperature: si('discharge gas [K]'),
  compressorPower: si('electricity of the compressor [W]'),
  heatDelivered: si('reaches the water while the machine runs [W]'),
  load: si('heat the tank needs [W]'),
});

const sizing = z
  .strictObject({
    condenser: z.strictObject({
      approach: si('condensing (bubble) temperature less water temperature [K]'),
      coilLength: bandWithUnit('of the tube in the tank [m]'),
      coilArea: bandWithUnit('outer [m²]'),
      tubeDiameter: si('outer [m]'),
      leavesOut: text('what the model leaves out'),
    }),
    evaporator: z.strictObject({
      approach: si('source temperature less evaporating (dew) temperature [K]'),
      faceArea: bandWithUnit('[m²]'),
      airFlow: bandWithUnit('[m³/s]'),
      leavesOut: text('what the model leaves out'),
    }),
  })
  .describe('exchangers that the temperature differences imply');

const flows = z
  .strictObject({
    heatTaken: si('from the source [W]'),
    compressorPower: si('[W]'),
    fanPower: si('[W]'),
    loopPumpPower: si('[W]'),
    controlsPower: si('[W]'),
    shellHeat: si('given off by the compressor’s shell [W]'),
    delivered: si('reaches the water while the machine runs [W]'),
    runFraction: si('share of the time it runs; 1 means that it cannot stop'),
    backup: si('left to a backup heater [W]'),
    paths: z.array(z.strictObject({ path: z.string(), label: z.string(), heat: si('[W]') })),
    ranges: z
      .strictObject({ heatTaken: band, electricity: band, delivered: band, backup: band })
      .describe('means over the spell [W]; electricity holds that of the backup heater and what pumps and lights give'),
  })
  .describe('heat and electricity of the coldest spell with the machine running, likely values');

const month = z.strictObject({
  month: text('january to december'),
  roomTemperature: si('[K]'),
  sourceTemperature: si('[K]'),
  heatNeeded: si('[J]'),
  heatDelivered: si('[J]'),
  electricity: si('[J]'),
  backup: si('[J]'),
  runFraction: si('share of the time'),
  heatTaken: si('from the source [J]'),
  roomHeat: si('net sensible heat into the tank’s room [J]; negative is heat taken out of it'),
  heated: si('share of the month in which the room is heated'),
  vapourHeat: si('leaves the tank as vapour [J]; never credited'),
});

const monthOfAccount = z.strictObject({
  month: text('january to december'),
  heated: si('share of the month in which the room is heated'),
  electricity: si('[J]'),
  electricityCost: si('in `currency`'),
  roomHeat: si('net sensible heat into the room while it is heated [J]; negative is heat taken from it'),
  roomCredit: si('what that heat is worth, in `currency`'),
  coolingCost: si('of cooling the room in summer, in `currency`'),
  runningCost: si('electricity less room credit plus cooling, in `currency`'),
});

const account = z.strictObject({
  scenario: z.enum(['plainHeater', 'thisLoop', 'certifiedHeatPump']),
  label: text('the same in words'),
  electricity: bandWithUnit('[J] a year'),
  electricityCost: bandWithUnit('a year, in `currency`'),
  roomHeat: bandWithUnit('heat given to the room in heated months [J]; negative is heat taken from it'),
  roomCredit: bandWithUnit('what that heat is worth a year, in `currency`; negative where it is taken'),
  coolingCost: bandWithUnit('of cooling the room in summer, a year, in `currency`'),
  runningCost: bandWithUnit('electricity less room credit plus cooling, a year, in `currency`'),
  purchase: si('price, in `currency`'),
  purchaseRange: band.describe('its range'),
  lifeCostPerYear: bandWithUnit('running plus purchase spread over its life, a year, in `currency`'),
  months: z.array(monthOfAccount).describe('likely values; they add up to those of the year'),
});

const breakEven = z.strictObject({
  loopCostsLess: z
    .enum(['below', 'above', 'always', 'never'])
    .describe('where this loop costs less: below or above `at`, at every value asked about, or at none'),
  at: z
    .strictObject({
      low: z.number().nullable().describe('lower end; null where the range has none'),
      likely: si('likely value'),
      high: z.number().nullable().describe('upper end; null where the range has none'),
      unit: text('SI unit of the numbers'),
      result: text('name of this result; the step of `workings` of the same name shows how it was computed'),
    })
    .nullable()
    .describe('where both cost the same; null with always and never'),
});

const loopAgainst = z.strictObject({
  against: z.enum(['plainHeater', 'certifiedHeatPump']),
  label: text('the same in words'),
  isCheapest: z.boolean().describe('whether it is the cheapest of the other ways over its life, likely values'),
  lifeCost: bandWithUnit('cost of this loop less that of the other, a year over its life, both varied together'),
  ifBuilt: si('what the loop would cost a year more, were it built and the unfavourable end true, in `currency`'),
  ifNotBuilt: si('what the other would cost a year more, were the loop not built and the favourable end true'),
  houseHeatPrice: breakEven.describe('price of house heat, from 0 up [1/J, in `currency`]'),
  seasonCop: breakEven.nullable().describe('COP over the year of this loop, from 1 up; null where seasonCop is'),
});

const loadStanding = z.enum(['fallsShort', 'uncertain', 'carriesLoad']);

const influence = z.strictObject({
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

const measurement = z.strictObject({
  measure: text('how'),
  paths: z.array(z.string()).describe('inputs it settles'),
  labels: z.array(z.string()).describe('the same in words'),
  enterAt: z.array(z.string()).describe('fields of the design that take its result'),
  share: si('of the variance of the margin that it settles, 0 to 1'),
  marginIfKnown: band.describe('what would be left of the margin’s range, were the measurement without doubt [W]'),
});

const assumption = z.strictObject({
  path: text('where the design would say otherwise; "engine.…" is inside the models'),
  label: text('the same in words'),
  quantity: text('name of the quantity, or "choice"'),
  value: z
    .union([band, z.string()])
    .describe('a band in base SI, or the word assumed; "withheld" for the charge with standing doNotBuild'),
  source: text('where the assumed value comes from'),
  level: z.enum(['first', 'more', 'expert']).describe('how likely a person knows it'),
});

const workingStep = z.strictObject({
  result: text('name of the result'),
  formula: text('id of its formula record'),
  inputs: z.record(z.string(), z.number()).describe('by symbol, base SI'),
  from: z.record(z.string(), z.string()).describe('by symbol: a path of the design, or the result of another step'),
  value: si('base SI'),
});

/** Every key of the answer. */
export const assessmentSchema = z.strictObject({
  assessmentVersion: z.literal(1).describe('version of this form'),
  caution: text('stands on everything; to be shown wherever a part of this is shown'),
  designName: text('as the design file says'),
  standing: z
    .enum(['doNotBuild', 'fallsShort', 'uncertain', 'notWorthIt', 'carriesLoad'])
    .describe('the first of these that applies, judged at the coldest spell; exit codes 1, 1, 4, 1, 0'),
  sentence: text('the verdict in words, in the units asked for with --units'),
  tankLoad: bandWithUnit('heat the tank needs at the coldest spell [W]'),
  heatDelivered: bandWithUnit('heat that reaches the water with the machine running without a pause [W]'),
  compressorPower: bandWithUnit('electricity of the compressor [W]'),
  systemPower: bandWithUnit('electricity of compressor, fan, loop pump and controls [W]'),
  compressorCop: bandWithUnit('heat leaving the refrigerant on the tank side by electricity of the compressor'),
  systemCop: bandWithUnit('heat reaching the tank water by electricity of the system'),
  seasonCop: bandWithUnit('[1]')
    .nullable()
    .describe('the same over a year, backup included; null where no month needs heat, or none uses electricity'),
  tank,
  operating,
  operatingRange: z
    .array(operatingMoment)
    .describe('where the loop settles from the coldest spell to the warmest month, likely values'),
  sizing,
  flows,
  year: z.array(month).describe('twelve steady months, likely values'),
  accounts: z.array(account).describe('one complete account, tank and room, per scenario'),
  loopAgainst: z.array(loopAgainst).describe('this loop against each other way'),
  currency: text('three letters, as the design says'),
  margin: bandWithUnit('heat delivered less heat needed [W]'),
  measureNext: z.array(measurement).describe('one to three measurements that would narrow the margin most'),
  influences: z.array(influence).describe('uncertain inputs, the most telling first'),
  assumptions: z.array(assumption).describe('values the person did not give'),
  findings: z.array(finding).describe('about the machine and the models, worst first'),
  cautions: z.array(finding).describe('about person, animals, house and law, worst first'),
  spaces: z.array(space).describe('each enclosed space by itself, with the whole charge evenly mixed in it'),
  chargeComparisons: z
    .array(chargeComparison)
    .describe('the charge beside figures of standards that do not apply to a home-made machine; never a permission'),
  workings: z.array(workingStep).describe('how every number was computed, likely values'),
});

const problem = z.strictObject({
  path: text('dotted path in the design, or the option to blame; empty for the file or design as a whole'),
  code: text('stable name of what is wrong'),
  received: z.unknown().describe('what was read there, shortened'),
  expected: text('what is accepted'),
  nearest: text('a name that may have been meant').optional(),
  line: z.number().describe('counted from 1, where the text is not JSON').optional(),
  column: z.number().describe('counted from 1').optional(),
  message: text('all of it in a sentence'),
});

/** What `--json` prints instead, with exit code 2 (unusable) or 3 (noSolution). */
export const refusalSchema = z.strictObject({
  caution: z.string(),
  error: z.union([
    z.strictObject({ kind: z.literal('unusable'), problems: z.array(problem) }),
    z.strictObject({
      kind: z.literal('noSolution'),
      code: text('stable name of what stood in the way'),
      message: text('in a sentence, base SI'),
      facts: z.record(z.string(), z.unknown()).describe('numbers of the message, base SI'),
    }),
  ]),
});

/** JSON Schema, draft 2020-12, of the assessment; the refusal stands under `$defs.refusal`. */
export function assessmentJsonSchema(): Readonly<Record<string, unknown>> {
  const { $schema, ...assessment } = openSchema(assessmentSchema);
  const { $schema: _same, ...refusal } = openSchema(refusalSchema);
  return {
    $schema,
    title: 'Assessment of a Kettlefin design',
    description:
      'What `kettlefin check FILE --json` prints. Base SI throughout. Later versions may add keys: pass over those you do not know.',
    ...assessment,
    $defs: { refusal },
  };
}

/** A schema that lets unknown keys pass, so that a program that checks answers by it bears those of later versions. */
function openSchema(schema: z.ZodType): Record<string, unknown> {
  return z.toJSONSchema(schema, {
    target: 'draft-2020-12',
    override: ({ jsonSchema }) => {
      if (jsonSchema.additionalProperties === false) delete jsonSchema.additionalProperties;
    },
  }) as Record<string, unknown>;
}
