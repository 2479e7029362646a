// The range of one result: the band that stands beside it, and the inputs that make it.

import { expect, test } from 'vitest';
import { Assessor } from '../../../src/assess/index.ts';
import { demoTexts } from '../../designs.ts';

const text = demoTexts['reef-in-the-study.json']!;

function assessed() {
  const assessor = new Assessor();
  const outcome = assessor.assess(text, 'metric');
  if (!outcome.ok) throw new Error(JSON.stringify(outcome));
  return { assessor, assessment: outcome.assessment };
}

test('is the band of the assessment, and its moves add up to it as squares', () => {
  const { assessor, assessment } = assessed();
  for (const band of [assessment.tankLoad, assessment.systemCop, assessment.accounts[1]!.lifeCostPerYear]) {
    const range = assessor.rangeOf(band.result)!;
    expect(range.band).toEqual(band);
    const up = range.moves.map(({ atLow, atHigh }) => Math.max(0, atLow - band.likely, atHigh - band.likely));
    const root = Math.hypot(...up);
    expect(root / (band.high - band.likely)).toBeCloseTo(1, 9);
    expect(range.moves.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 9);
    for (const { measure, label } of range.moves) expect(`${measure}${label}`).not.toContain('undefined');
  }
});

test('is absent before the first answer and for a result without a band; a refused design leaves the last answer', () => {
  expect(new Assessor().rangeOf('tank.load')).toBeUndefined();
  const { assessor, assessment } = assessed();
  expect(assessor.rangeOf('year.january.heatNeeded')).toBeUndefined();
  expect(assessor.assess('{}', 'metric').ok).toBe(false);
  expect(assessor.rangeOf('tank.load')?.band).toEqual(assessment.tankLoad);
});
