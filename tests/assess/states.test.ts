// The verdict with states from the equation and with states from tables of it: the same to less than a ten thousandth, and
// the tables really were asked.

import { describe, expect, test } from 'vitest';
import {
  type Assessment,
  type AssessOptions,
  Assessor,
  assessDesign,
  stateDifferences,
  tableStates,
} from '../../src/assess/index.ts';
import { refrigerant, tabulated } from '../../src/matter/refrigerants/index.ts';
import { demoTexts } from '../designs.ts';

function assessed(text: string, options: AssessOptions = {}): Assessment {
  const outcome = assessDesign(text, 'metric', options);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome));
  return outcome.assessment;
}

/** The largest share by which a figure of the verdict may differ. */
const allowed = 1e-4;

describe.each(Object.entries(demoTexts))('%s', (_file, text) => {
  const exact = assessed(text);
  const counts = () => tabulated(refrigerant(exact.operating.refrigerant)).table.counts;
  const before = counts();
  const tables = assessed(text, { states: tableStates });
  const after = counts();

  test('the tables answered, and nearly always', () => {
    const byTable = after.byTable - before.byTable;
    const byEquation = after.byEquation - before.byEquation;
    expect(byTable).toBeGreaterThan(100);
    expect(byEquation).toBeLessThan(0.1 * byTable);
  });

  test(`no figure of the verdict moves by more than ${allowed}, and something moves at all`, () => {
    const differences = stateDifferences(exact, tables);
    expect(differences.length).toBeGreaterThan(12);
    for (const { label, share } of differences) expect(share, label).toBeLessThan(allowed);
    expect(differences[0]!.share).toBeGreaterThan(0);
    expect(differences.find(({ result }) => result === 'tank.load')?.share).toBe(0);
  });

  test('standing, limits passed and cautions are the same; the tables are named as a simplification', () => {
    expect(tables.standing).toBe(exact.standing);
    const passed = ({ operating }: Assessment) => operating.limits.map(({ limit, passed }) => [limit, passed]);
    expect(passed(tables)).toEqual(passed(exact));
    const codes = (findings: Assessment['findings']) => findings.map(({ code }) => code).sort();
    expect(codes(tables.cautions)).toEqual(codes(exact.cautions));
    expect(codes(tables.findings)).toEqual([...codes(exact.findings), 'statesFromTables'].sort());
  });
});

test('an assessor keeps to its own states from edit to edit', () => {
  const text = demoTexts['reef-in-the-study.json']!;
  const assessor = new Assessor({ states: tableStates });
  const first = assessor.assess(text, 'metric');
  const again = assessor.assess(text, 'metric');
  expect(again).toEqual(first);
});
