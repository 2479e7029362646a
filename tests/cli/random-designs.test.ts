// Random designs inside the limits of every field: each is a verdict, a refusal by path or no solution; no crash, nothing that
// is not a number, and the published schema holds. Numbers and choices from a seeded generator (seed 20).

import { expect, test } from 'vitest';
import { assessDesign, assessTankLoad, withoutCharge } from '../../src/assess/index.ts';
import { assessmentSchema } from '../../src/assess/schema/assessment-schema.ts';
import { checkReport } from '../../src/cli/report/check-report.ts';
import { loadReport } from '../../src/cli/report/load-report.ts';
import { fieldsOf, parseDesign } from '../../src/design/index.ts';
import { chance, textFor } from '../design/random-edits.ts';
import { demoTexts } from '../designs.ts';

const designs = 60;
const changesEach = 8;

const by = chance(20);

type Tree = { [key: string]: Tree | string };

function randomDesign(): string {
  const text = demoTexts[by.pick(Object.keys(demoTexts))]!;
  const parsed = parseDesign(text);
  if (!parsed.ok) throw new Error('a demo is no design');
  const fields = fieldsOf(parsed.document).filter(({ type }) => type !== 'kind' && type !== 'text');
  const design = JSON.parse(text) as Tree;
  for (let change = 0; change < changesEach; change++) {
    const field = by.pick(fields);
    const keys = field.path.split('.');
    const last = keys.pop()!;
    let part = design;
    for (const key of keys) {
      part[key] ??= {};
      part = part[key] as Tree;
    }
    const written = textFor(by, field);
    if (written !== undefined) part[last] = written;
  }
  return JSON.stringify(design);
}

test(`${designs} random designs`, () => {
  const answers = { verdict: 0, unusable: 0, noSolution: 0 };
  for (let index = 0; index < designs; index++) {
    const text = randomDesign();
    const outcome = assessDesign(text, 'metric');
    const load = assessTankLoad(text);
    if (outcome.ok) {
      answers.verdict += 1;
      const exported = JSON.parse(JSON.stringify(withoutCharge(outcome.assessment)));
      expect(assessmentSchema.safeParse(exported).error, text).toBeUndefined();
      for (const view of ['metric', 'us'] as const) {
        expect(checkReport(outcome.assessment, view), text).not.toMatch(/undefined|NaN|Infinity|\[object/);
      }
    } else {
      answers[outcome.kind] += 1;
      if (outcome.kind === 'unusable')
        expect(
          outcome.problems.every(({ expected }) => expected !== ''),
          text,
        ).toBe(true);
    }
    // The tank of every design that can be used has a load, whatever the machine does, and also where only what is told of the
    // machine cannot be.
    if (outcome.ok || outcome.kind === 'noSolution') expect(load.ok, text).toBe(true);
    else if (load.ok) expect(outcome.problems.map(({ path }) => path).join(' '), text).toMatch(/^(machine\.\S+ ?)+$/);
    if (load.ok) expect(loadReport(load.answer, 'us'), text).not.toMatch(/undefined|NaN|Infinity|\[object/);
  }
  expect(answers.verdict).toBeGreaterThan(designs / 4);
});
