// The published schema of an assessment: the same shape as the type, true of the answers of real designs, and the files in
// docs/guide are those of the present code.

import { readFileSync } from 'node:fs';
import { describe, expect, expectTypeOf, test } from 'vitest';
import type { z } from 'zod';
import { schemaFiles } from '../../../docs/guide/schemas.ts';
import { type Assessment, assessDesign, sayFinding, withoutCharge } from '../../../src/assess/index.ts';
import { assessmentJsonSchema, assessmentSchema } from '../../../src/assess/schema/assessment-schema.ts';
import { parseDesign, setField, setKind } from '../../../src/design/index.ts';
import { demoTexts } from '../../designs.ts';

/** Without readonly, which a schema does not know. */
type Plain<T> = T extends readonly (infer Item)[]
  ? Plain<Item>[]
  : T extends object
    ? { -readonly [Key in keyof T]: Plain<T[Key]> }
    : T;

test('has exactly the keys and types of an Assessment', () => {
  expectTypeOf<Plain<z.infer<typeof assessmentSchema>>>().toEqualTypeOf<Plain<Assessment>>();
});

function assessed(text: string): Assessment {
  const outcome = assessDesign(text, 'metric');
  if (!outcome.ok) throw new Error(JSON.stringify(outcome));
  return outcome.assessment;
}

/** The demo with other texts in some fields; a path that ends in ".kind" changes the kind of a part. */
function edited(name: string, edits: readonly (readonly [string, string])[]): Assessment {
  const parsed = parseDesign(demoTexts[name]!);
  if (!parsed.ok) throw new Error('the demo does not parse');
  let { document } = parsed;
  for (const [path, text] of edits) {
    const result = path.endsWith('.kind')
      ? setKind(document, path.slice(0, -5), text, {})
      : setField(document, path, text);
    if (!result.ok) throw new Error(JSON.stringify(result.problems));
    document = result.document;
  }
  return assessed(JSON.stringify(document));
}

describe('is true of', () => {
  test.each(Object.entries(demoTexts))('%s', (_, text) => {
    const answer = JSON.parse(JSON.stringify(withoutCharge(assessed(text))));
    expect(assessmentSchema.safeParse(answer).error).toBeUndefined();
  });

  test.each([
    [
      'a tank that needs no heat',
      'reef-in-the-study.json',
      [
        ['tank.load.pumpPower', '400 W'],
        ['tank.load.pumpShareToWater', '100 %'],
      ],
    ],
    [
      'a source so cold that it frosts',
      'reef-in-the-study.json',
      [
        ['source.coldest', '-14 °C'],
        ['source.temperature', '2 °C'],
      ],
    ],
    ['a room that is cooled in summer', 'reef-in-the-study.json', [['room.cooledInSummer', 'yes']]],
    ['the tank’s own room as the source', 'shrimp-rack-unknown-draughts.json', [['source.kind', 'roomAir']]],
    ['ranges that reach where no answer is', 'frag-tank-cold-garage.json', [['exchangers.condenserApproach', '3 K']]],
  ] as const)('%s', (_, name, edits) => {
    const answer = JSON.parse(JSON.stringify(edited(name, edits)));
    for (const finding of [...answer.findings, ...answer.cautions]) expect(sayFinding(finding, 'us').text).toBeTruthy();
    expect(assessmentSchema.safeParse(answer).error).toBeUndefined();
  });
});

test('names the keys that other programs rely on', () => {
  const { required, properties } = assessmentJsonSchema() as {
    required: string[];
    properties: Record<string, { description?: string; properties?: Record<string, unknown> }>;
  };
  const stable = [
    'standing',
    'sentence',
    'tankLoad',
    'heatDelivered',
    'compressorPower',
    'systemPower',
    'compressorCop',
    'systemCop',
    'operating',
    'accounts',
    'assumptions',
    'findings',
    'cautions',
    'caution',
  ];
  expect(required).toEqual(expect.arrayContaining(stable));
  for (const key of ['tankLoad', 'heatDelivered', 'compressorPower', 'systemPower', 'compressorCop', 'systemCop']) {
    expect(Object.keys(properties[key]!.properties!), key).toEqual(
      expect.arrayContaining(['low', 'likely', 'high', 'unit']),
    );
  }
  for (const [key, { description }] of Object.entries(properties)) expect(description, key).toBeTruthy();
});

test('lets a later version add keys', () => {
  expect(JSON.stringify(assessmentJsonSchema())).not.toContain('"additionalProperties":false');
});

test('the files in docs/guide are those of the present code ("npm run documents" writes them)', () => {
  const files = schemaFiles();
  expect(files.map(({ name }) => name)).toEqual(['assessment.schema.json', 'design.schema.json']);
  for (const { name, text } of files) {
    const written = readFileSync(new URL(`../../../docs/guide/${name}`, import.meta.url), 'utf8');
    expect(JSON.parse(written), name).toEqual(JSON.parse(text));
  }
});
