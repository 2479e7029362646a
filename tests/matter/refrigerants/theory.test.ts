// The hand-written page of theory against the data: equation and range of every fluid, how its transport properties are come
// by, which fluids have a melting line, and which are for study only.

import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import '../../../src/matter/every-refrigerant/index.ts';
import {
  isStudyOnly,
  refrigerant,
  refrigerantNames,
  transportMethods,
} from '../../../src/matter/refrigerants/index.ts';

const page = readFileSync(new URL('../../../docs/theory/refrigerants.md', import.meta.url), 'utf8');

test.each(refrigerantNames)('%s: equation and range', (name) => {
  const { citations, limits } = refrigerant(name);
  const [lowest, highest, pressure] = [limits.temperatureMin, limits.temperatureMax, limits.pressureMax / 1e6];
  const row = page.split('\n').find((line) => line.startsWith(`| ${name} | ${citations.equation}`)) ?? '';
  const numbers = /(\S+) to (\S+) K, up to (\S+) MPa/.exec(row)?.slice(1).map(Number);
  expect(numbers).toEqual([Number(lowest.toFixed(2)), highest, Math.round(pressure)]);
});

test.each(['viscosity', 'conductivity'] as const)('%s: what is a correlation, what an estimate', (property) => {
  const cells = page
    .split('\n')
    .find((line) => line.startsWith(`| ${property} |`))!
    .split('|')
    .slice(2, 5);
  const methods = ['ownCorrelation', 'residualEntropy', 'correspondingStates'] as const;
  methods.forEach((method, column) => {
    const meant = refrigerantNames.filter((name) => transportMethods(refrigerant(name))[property].method === method);
    expect(namesIn(cells[column]!.replaceAll(/\(from R\w+\)/g, '')), method).toEqual([...meant].sort());
  });
  for (const [, list, reference] of cells[2]!.matchAll(/([^;]*)\(from (R\w+)\)/g)) {
    for (const name of namesIn(list!)) {
      expect(transportMethods(refrigerant(name))[property].referenceFluid, name).toBe(reference);
    }
  }
});

test('which fluids have a melting line', () => {
  const line = page
    .split('\n')
    .find((each) => each.startsWith('- **Solid.**'))!
    .replace('water', 'R718');
  expect(namesIn(line)).toEqual(refrigerantNames.filter((name) => refrigerant(name).meltingLine !== undefined).sort());
});

test('which fluids are for study only', () => {
  const sentence = page.slice(page.indexOf('**for study only**')).split('Every answer')[0]!;
  expect(namesIn(sentence)).toEqual(refrigerantNames.filter(isStudyOnly).sort());
});

/** Names of refrigerants in a text, sorted. */
function namesIn(text: string): readonly string[] {
  return [...text.matchAll(/R\d+\w*(?:\(E\))?/g)].map(([name]) => name).sort();
}
