// Every number of an assessment is the result of a step, or one of the design's own, under a name that can be asked for.

import { describe, expect, test } from 'vitest';
import { type Assessment, assessDesign, namedResults } from '../../src/assess/index.ts';
import { fieldRecord } from '../../src/design/index.ts';
import { demoTexts } from '../designs.ts';

/** Answers whose numbers are promised to be traceable. */
const sections = ['tank', 'operating', 'flows', 'year', 'accounts'] as const;
const headlines = [
  'tankLoad',
  'heatDelivered',
  'compressorPower',
  'systemPower',
  'compressorCop',
  'systemCop',
] as const;

/** Where each entry of a list stands under: its own name. */
const namesOfEntries = ['name', 'path', 'limit', 'month', 'scenario', 'vessel', 'by'] as const;

/**
 * Not results: ranges, and what the ranges themselves are made of; what the tank is drawn from, its vessels' sizes and its
 * panels' temperatures; paths and energies of its months, which the year's own results tell.
 */
const notAsked =
  /(^|\.)(\w*[rR]anges?|low|high)(\.|$)|^tank\.(panels|roomDewPoint|months\.\w+\.(paths|heatNeeded|duration|roomTemperature))|^tank\.vessels\.\w+\.(water|shape|cover)|^tank\.falls\.\d+\.by|explanations/;

function numbersIn(node: unknown, place: string): (readonly [string, number])[] {
  if (notAsked.test(place)) return [];
  if (typeof node === 'number') return [[place, node]];
  if (typeof node !== 'object' || node === null) return [];
  if ('likely' in node && 'result' in node) return [[place, node.likely as number]];
  return Object.entries(node).flatMap(([key, value]) => {
    const own = Array.isArray(node)
      ? namesOfEntries.map((name) => value[name]).find((name) => name !== undefined)
      : key;
    return numbersIn(value, `${place}.${own}`);
  });
}

/** Given by the person or the place, shown again in the answer. */
const repeated: Readonly<Record<string, readonly string[]>> = {
  'operating.sourceTemperature': ['room.coldest', 'source.coldest'],
  'operating.waterTemperature': ['tank.waterTemperature'],
};

/** Of one vessel alone the loss is that of the tank; of a measured tank nobody told the ultraviolet lamp. */
const notNamed = /^tank\.vessels\.tank\.loss$|^tank\.gains\.ultraviolet$/;

describe.each(Object.keys(demoTexts))('%s', (file) => {
  const outcome = assessDesign(demoTexts[file]!, 'metric');
  if (!outcome.ok) throw new Error(JSON.stringify(outcome));
  const { assessment } = outcome;
  const results = new Map(namedResults(assessment).map((result) => [result.place, result]));
  const steps = new Map(assessment.workings.map((step) => [step.result, step.value]));

  test('no number is without its name', () => {
    const places = [...sections, ...headlines].flatMap((key) => numbersIn(assessment[key as keyof Assessment], key));
    expect(places.length).toBeGreaterThan(100);
    for (const [place, value] of places) {
      if (place in repeated || (notNamed.test(place) && !results.has(place))) continue;
      const result = results.get(place);
      expect(result, place).toBeDefined();
      expect(result!.value, place).toBe(value);
    }
  });

  test('each name is a step of that value, or a field of the design', () => {
    const idle = new Set(assessment.year.filter((month) => month.runFraction === 0).map(({ month }) => month));
    const isRoomAir = !steps.has('year.january.sourceTemperature');
    for (const { place, name, value } of results.values()) {
      // A machine that stands still has no share to compute, and the room's air is the room's own temperature.
      if (/^year\.\w+\.runFraction$/.test(place) && idle.has(place.split('.')[1]!) && !steps.has(name)) continue;
      if (/^year\.\w+\.sourceTemperature$/.test(place) && isRoomAir) continue;
      if (fieldRecord(name) !== undefined) continue;
      expect(steps.has(name), `${place}: ${name}`).toBe(true);
      expect(Math.abs(steps.get(name)! - value), `${place}: ${name}`).toBeLessThanOrEqual(1e-9 * Math.abs(value));
    }
  });

  test('each has its own words', () => {
    const words = [...results.values()].map(({ label, place }) => `${label}, ${place.split('.')[0]}`);
    expect(words.filter((each, index) => words.indexOf(each) !== index)).toEqual([]);
  });
});
