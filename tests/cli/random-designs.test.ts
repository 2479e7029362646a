// Random designs inside the limits of every field: each is a verdict, a refusal by path or no solution; no crash, nothing that
// is not a number, and the published schema holds. Numbers and choices from a seeded generator (seed 20).

import { expect, test } from 'vitest';
import { assessDesign, assessTankLoad, withoutCharge } from '../../src/assess/index.ts';
import { assessmentSchema } from '../../src/assess/schema/assessment-schema.ts';
import { loadReport } from '../../src/cli/commands/load.ts';
import { checkReport } from '../../src/cli/report/check-report.ts';
import { type FieldRecord, fieldRecords } from '../../src/design/index.ts';
import { quantityUnit, toView } from '../../src/quantities/index.ts';
import { demoTexts } from '../designs.ts';

const designs = 60;
const changesEach = 8;

/** Linear congruential generator of Numerical Recipes: enough to choose with. */
let state = 20;
function random(): number {
  state = (state * 1664525 + 1013904223) % 2 ** 32;
  return state / 2 ** 32;
}

function pick<Item>(list: readonly Item[]): Item {
  return list[Math.floor(random() * list.length)]!;
}

type Tree = { [key: string]: Tree | string };

/** A value for a field, in the unit of charts: often at a limit, sometimes a range. */
function textFor({ quantity, minimum, maximum, choices }: FieldRecord): string | undefined {
  if (choices !== undefined) return pick(choices).name;
  if (quantity === undefined || minimum === undefined || maximum === undefined) return undefined;
  const place = pick([0, 1, random(), random()]);
  const isWide = minimum > 0 && maximum / minimum > 100;
  const value = isWide ? minimum * (maximum / minimum) ** place : minimum + place * (maximum - minimum);
  const other = Math.min(maximum, Math.max(minimum, value * (1 + 0.2 * random())));
  const said = [value, other]
    .sort((a, b) => a - b)
    .map((each) => String(Number(toView(each, quantity, 'metric').toPrecision(7))));
  const number = random() < 0.5 ? said[0]! : `${said[0]} to ${said[1]}`;
  return `${number} ${quantityUnit(quantity, 'metric')}`.trim();
}

function randomDesign(): string {
  const design = JSON.parse(demoTexts[pick(Object.keys(demoTexts))]!) as Tree;
  for (let change = 0; change < changesEach; change++) {
    const field = pick(fieldRecords.filter(({ type }) => type !== 'kind' && type !== 'text'));
    const { path, unionKind } = field;
    const kind = unionKind?.path
      .split('.')
      .reduce<Tree | string | undefined>((node, key) => (node as Tree)?.[key], design);
    if (unionKind !== undefined && !unionKind.kinds.includes((kind as Tree | undefined)?.kind as string)) continue;
    const keys = path.split('.');
    const last = keys.pop()!;
    let part = design;
    for (const key of keys) {
      part[key] ??= {};
      part = part[key] as Tree;
    }
    const text = textFor(field);
    if (text !== undefined) part[last] = text;
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
    // The tank of every design that can be used has a load, whatever the machine does.
    expect(load.ok, text).toBe(outcome.ok || outcome.kind === 'noSolution');
    if (load.ok) expect(loadReport(load.answer, 'us'), text).not.toMatch(/undefined|NaN|Infinity|\[object/);
  }
  expect(answers.verdict).toBeGreaterThan(designs / 3);
});
