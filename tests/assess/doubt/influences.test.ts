// How far inputs move the verdict, whether one alone flips it, and what to measure next: laws on real designs. A flip that is
// promised must come about when the design really says that value.

import { describe, expect, test } from 'vitest';
import { type Assessment, assessDesign } from '../../../src/assess/index.ts';
import { howToMeasure, isMeasurable } from '../../../src/assess/wording/measure.ts';
import { fieldRecords, listRecords, parseDesign, setField } from '../../../src/design/index.ts';
import { demoTexts } from '../../designs.ts';

describe.each(Object.entries(demoTexts))('%s', (_, text) => {
  const assessment = assessed(text);
  const { margin, influences, measureNext } = assessment;

  test('the margin is heat delivered less heat needed, with a band narrower than that of the two taken apart', () => {
    const { heatDelivered, tankLoad } = assessment;
    expect(margin.likely).toBeCloseTo(heatDelivered.likely - tankLoad.likely, 9);
    expect(margin.high).toBeLessThanOrEqual(heatDelivered.high - tankLoad.low);
    expect(margin.low).toBeGreaterThanOrEqual(heatDelivered.low - tankLoad.high);
  });

  test('knowing an input never widens the margin, and knowing all of them leaves no doubt', () => {
    let up = 0;
    for (const { marginIfKnown, marginAtLow, marginAtHigh, input } of influences) {
      expect(marginIfKnown.high).toBeLessThanOrEqual(margin.high + 1e-9);
      expect(marginIfKnown.low).toBeGreaterThanOrEqual(margin.low - 1e-9);
      const own = Math.max(0, marginAtLow - margin.likely, marginAtHigh - margin.likely);
      expect((marginIfKnown.high - margin.likely) ** 2 + own ** 2).toBeCloseTo((margin.high - margin.likely) ** 2, 3);
      expect(input.low).toBeLessThanOrEqual(input.likely);
      expect(input.likely).toBeLessThanOrEqual(input.high);
      up += own ** 2;
    }
    expect(Math.sqrt(up) / (margin.high - margin.likely)).toBeCloseTo(1, 9);
  });

  test('at most three measurements, the one that narrows most first, each with something to do and a place to enter it', () => {
    expect(measureNext.length).toBeLessThanOrEqual(3);
    const widths = measureNext.map(({ marginIfKnown }) => marginIfKnown.high - marginIfKnown.low);
    expect(widths).toEqual(widths.toSorted((a, b) => a - b));
    const paths = new Set([...fieldRecords, ...listRecords].map(({ path }) => path));
    for (const next of measureNext) {
      expect(widths[0]).toBeLessThan(margin.high - margin.low);
      expect(next.paths.every(isMeasurable)).toBe(true);
      expect(next.enterAt.length).toBeGreaterThan(0);
      for (const path of next.enterAt) expect(paths.has(path), path).toBe(true);
    }
  });
});

test('the volume swept alone would show that the bottle cooler’s machine carries the load, and typed it does', () => {
  const text = demoTexts['shrimp-rack-unknown-draughts.json']!;
  const before = assessed(text);
  const swept = before.influences.find(({ path }) => path === 'machine.compressor.displacement')!;
  expect(before.standing).toBe('uncertain');
  expect(swept).toMatchObject({ flipsAtLow: null, flipsAtHigh: 'carriesLoad' });
  const parsed = parseDesign(text);
  if (!parsed.ok) throw new Error('the demo does not parse');
  const typed = setField(parsed.document, swept.path, `${swept.input.high * 1e6} cm3`);
  if (!typed.ok) throw new Error(JSON.stringify(typed.problems));
  expect(assessed(JSON.stringify(typed.document)).standing).toBe('carriesLoad');
});

test('what a licensed technician would have to measure, or one only chooses, is not among the measurements', () => {
  expect(isMeasurable('machine.charge')).toBe(true);
  expect(isMeasurable('exchangers.evaporatorApproach')).toBe(false);
  for (const { path } of fieldRecords.filter(({ type }) => type === 'quantity')) {
    expect(howToMeasure(path)).not.toMatch(/\b(open|cut|tap|solder|braze|unscrew)\b/);
  }
});

function assessed(text: string): Assessment {
  const outcome = assessDesign(text, 'metric');
  if (!outcome.ok) throw new Error(JSON.stringify(outcome));
  return outcome.assessment;
}
