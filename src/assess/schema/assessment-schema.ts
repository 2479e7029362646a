// The published form of `check --json`: a schema of the Assessment with a description of every key. Only the tests and the
// script that writes docs/guide/assessment.schema.json read it; the program itself never does. A test holds it to the type
// Assessment at compile time, and to the answers of real designs. Keys may be added in later versions, none is renamed or
// taken away within assessmentVersion 1.

import { z } from 'zod';
import { flows, operating, operatingMoment, sizing } from './coldest-spell.ts';
import { assumption, influence, measurement } from './doubt.ts';
import { chargeComparison, finding, space } from './findings.ts';
import { machine } from './machine.ts';
import { tank } from './tank.ts';
import { bandWithUnit, si, text } from './values.ts';
import { account, loopAgainst, month } from './year.ts';

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
  compressorPower: bandWithUnit('electricity of the compressor, of all machines together [W]'),
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
  machine,
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
