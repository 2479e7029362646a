// A whole assessment: every number has its working, every working evaluates, edits cost what depends on them and give what
// a fresh start gives.

import { evaluate } from 'mathjs';
import { beforeAll, describe, expect, test } from 'vitest';
import { type Assessment, Assessor, type BandWithUnit, formulaById } from '../../src/assess/index.ts';
import { fieldRecord, parseDesign, setField } from '../../src/design/index.ts';
import { demoTexts } from '../designs.ts';

function assessed(text: string): Assessment {
  const outcome = new Assessor().assess(text, 'metric');
  if (!outcome.ok) throw new Error(JSON.stringify(outcome));
  return outcome.assessment;
}

function bandsIn(value: unknown): BandWithUnit[] {
  if (typeof value !== 'object' || value === null) return [];
  if ('likely' in value && 'result' in value) return [value as BandWithUnit];
  return Object.values(value).flatMap(bandsIn);
}

describe.each(Object.entries(demoTexts))('%s', (_name, text) => {
  let assessment: Assessment;
  beforeAll(() => {
    assessment = assessed(text);
  });

  test('every step of the working gives its value when its expression is evaluated from its inputs', () => {
    expect(assessment.workings.length).toBeGreaterThan(40);
    for (const { formula: id, inputs, value, result } of assessment.workings) {
      const formula = formulaById(id);
      expect(formula, `${result} names the formula ${id}`).toBeDefined();
      const again = evaluate(formula!.expression, { ...inputs });
      const scale = Math.max(Math.abs(value), 1e-12);
      expect(Math.abs(again - value) / scale, `${result} by ${id}`).toBeLessThan(1e-9);
    }
  });

  test('every number with a band names a step of the working that gives its likely value', () => {
    const steps = new Map(assessment.workings.map((step) => [step.result, step]));
    const bands = bandsIn(assessment);
    expect(bands.length).toBeGreaterThan(30);
    for (const { result, likely } of bands) {
      const step = steps.get(result);
      expect(step, result).toBeDefined();
      expect(Math.abs(step!.value - likely)).toBeLessThanOrEqual(1e-9 * Math.max(1, Math.abs(likely)));
    }
  });

  test('every origin in the working is a field of the design, another step, a state of the loop or named as assumed', () => {
    const steps = new Set(assessment.workings.map((step) => step.result));
    const known = (from: string) =>
      steps.has(from) ||
      fieldRecord(from) !== undefined ||
      from.startsWith('operating.points.') ||
      from.startsWith('engine');
    for (const { result, from } of assessment.workings) {
      for (const origin of Object.values(from).flatMap((each) => each.split(' and '))) {
        expect(known(origin), `${result} comes from ${origin}`).toBe(true);
      }
    }
  });

  test('bands hold their likely value and nothing is not a number', () => {
    const evens = assessment.loopAgainst.flatMap(({ houseHeatPrice, seasonCop }) => [houseHeatPrice.at, seasonCop?.at]);
    for (const band of bandsIn(assessment)) {
      // A break-even alone may have no end on a side, and then says null.
      const isEven = evens.some((at) => at?.result === band.result);
      const ends = [band.low, band.high].filter((end) => !(isEven && end === null));
      expect([band.likely, ...ends].every(Number.isFinite), band.result).toBe(true);
      expect(band.low ?? band.likely).toBeLessThanOrEqual(band.likely);
      expect(band.likely).toBeLessThanOrEqual(band.high ?? band.likely);
    }
    expect(JSON.stringify(assessment)).not.toContain('NaN');
  });

  test('paths sum to the loss, and what the machine takes and uses is what it gives', () => {
    const { tank, flows } = assessment;
    const sum = tank.paths.reduce((total, { heat }) => total + heat.likely, 0);
    expect(Math.abs(sum - tank.loss.likely)).toBeLessThan(1e-9 * tank.loss.likely);
    const toWater = assessment.workings.find((step) => step.result === 'operating.heatDelivered')!.value;
    const residual = flows.heatTaken + flows.compressorPower - toWater - flows.shellHeat;
    expect(Math.abs(residual)).toBeLessThan(1e-9 * toWater);
  });

  test('findings and cautions stand worst first, the models’ own among them', () => {
    for (const listed of [assessment.findings, assessment.cautions]) {
      const ranks = listed.map(({ severity }) => ['stop', 'look', 'note'].indexOf(severity));
      expect(ranks.length).toBeGreaterThan(0);
      expect(ranks).toEqual([...ranks].sort());
    }
  });

  test('never says safe, approved or compliant', () => {
    expect(JSON.stringify({ ...assessment, workings: [] })).not.toMatch(/\b(safe|approved|compliant)\b/i);
  });
});

describe('an edit', () => {
  const [text] = Object.values(demoTexts) as [string];

  function edited(path: string, to: string) {
    const parsed = parseDesign(text);
    if (!parsed.ok) throw new Error('the demo does not parse');
    const result = setField(parsed.document, path, to);
    if (!result.ok) throw new Error(JSON.stringify(result));
    return result.document;
  }

  test('gives the same as a fresh start', () => {
    const assessor = new Assessor();
    assessor.assess(text, 'metric');
    for (const [path, to] of [
      ['prices.heater', '55'],
      ['room.temperature', '18 to 20 °C'],
      ['tank.waterTemperature', '25 °C'],
    ] as const) {
      const document = edited(path, to);
      expect(assessor.assess(document, 'metric')).toEqual(new Assessor().assess(document, 'metric'));
    }
  });

  test('of a price runs the accounts and leaves tank, compressor and loop as they are', () => {
    const assessor = new Assessor();
    assessor.assess(text, 'metric');
    const before = assessor.stageCounts();
    assessor.assess(edited('prices.heater', '55'), 'metric');
    const after = assessor.stageCounts();
    expect(after.accounts! - before.accounts!).toBeGreaterThan(0);
    // Only the variation of uncertain inputs runs them again; the run of the edited design itself does not.
    const fresh = new Assessor();
    fresh.assess(text, 'metric');
    for (const name of ['tank', 'compressor', 'operating', 'surroundings'] as const) {
      expect(after[name]! - before[name]!, name).toBe(before[name]! - 1);
    }
  });
});

describe('refusals', () => {
  test('a document that breaks its rules is unusable, with every problem by path', () => {
    const outcome = new Assessor().assess('{"formatVersion":1,"nmae":"x"}', 'metric');
    expect(outcome.ok).toBe(false);
    if (!outcome.ok && outcome.kind === 'unusable') {
      expect(outcome.problems.some((problem) => problem.path === 'nmae')).toBe(true);
      expect(outcome.problems.length).toBeGreaterThan(3);
    } else {
      throw new Error('expected problems');
    }
  });
});
