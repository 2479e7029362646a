// What Side by side begins with, and what it keeps.

import { describe, expect, test } from 'vitest';
import {
  basisLabels,
  choiceAtFirst,
  fewestFluids,
  keptChoice,
  mostFluids,
  readKeptChoice,
  withFluid,
} from '../../src/app/papers/side-by-side/fluid-choice.ts';
import * as engine from '../../src/assess/index.ts';
import { parseDesign } from '../../src/design/index.ts';
import { refrigerantNames } from '../../src/matter/refrigerants/index.ts';
import { demoTexts } from '../designs.ts';

const known = refrigerantNames;

function documentOf(name: string) {
  const parsed = parseDesign(demoTexts[name]!);
  if (!parsed.ok) throw new Error(name);
  return parsed.document;
}

test('the design’s own fluid and the compressor’s are among those at first', () => {
  expect(choiceAtFirst(documentOf('reef-in-the-study.json'), known).fluids).toEqual(['R134a', 'R600a', 'R290']);
  expect(choiceAtFirst(documentOf('propane-in-the-cabinet.json'), known).fluids).toEqual(['R134a', 'R600a', 'R290']);
  const document = documentOf('reef-in-the-study.json');
  const old = {
    ...document,
    machine: {
      ...document.machine,
      refrigerant: 'R22' as const,
      compressor: { ...document.machine.compressor, madeFor: 'R12' as const },
    },
  } as typeof document;
  expect(choiceAtFirst(old, known).fluids).toEqual(['R134a', 'R12', 'R22']);
});

test('limits and bases are those of the engine', () => {
  expect([fewestFluids, mostFluids]).toEqual([engine.fewestFluids, engine.mostFluids]);
  expect(basisLabels.map(([basis]) => basis)).toEqual([...engine.comparisonBases]);
  for (const [basis, label] of basisLabels) expect(label).toBe(engine.basisTitles[basis]);
});

describe('a kept choice', () => {
  const choice = { fluids: ['R134a', 'R290'], basis: 'sameHeat' } as const;

  test('comes back', () => {
    expect(readKeptChoice(keptChoice(choice), known)).toEqual(choice);
  });

  test.each([
    undefined,
    '',
    '{',
    '[]',
    '{"fluids":["R134a"],"basis":"sameHeat"}',
    '{"fluids":["R134a","R290"],"basis":"x"}',
  ])('%j is none', (text) => {
    expect(readKeptChoice(text, known)).toBeUndefined();
  });

  test('one fluid more stands in the order of the list', () => {
    const more = withFluid(choice, 'R600a', true, known);
    expect(more.fluids).toEqual(['R134a', 'R600a', 'R290']);
    expect(withFluid(more, 'R134a', false, known).fluids).toEqual(['R600a', 'R290']);
  });
});
