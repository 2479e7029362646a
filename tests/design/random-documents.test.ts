// Random edits of designs with lists (seeds in the names): each is made or refused by its path; what is made reads back as the
// same text, resolves to ordered, finite numbers, and can be taken back.

import { describe, expect, test } from 'vitest';
import {
  type DesignDocument,
  fieldRecord,
  fieldsOf,
  parseDesign,
  plainDesign,
  resolveDesign,
  sayProblem,
  serialiseDesign,
  uncertainInputs,
  withFollowers,
} from '../../src/design/index.ts';
import { cylinderDesign, documentOf, fullDesign, measuredDesign, panelsDesign, sizedDesign } from './examples.ts';
import { chance, randomEdit } from './random-edits.ts';

const editsEach = 60;

const starts = {
  full: fullDesign,
  panels: panelsDesign,
  cylinder: cylinderDesign,
  sized: sizedDesign,
  measured: measuredDesign,
};

function expectWhole(document: DesignDocument): void {
  const text = serialiseDesign(document);
  const read = parseDesign(text);
  expect(read.ok && serialiseDesign(read.document), text).toBe(text);
  const paths = fieldsOf(document).map(({ path }) => path);
  expect(new Set(paths).size, text).toBe(paths.length);
  for (const path of paths) expect(fieldRecord(path, document)?.path, text).toBe(path);
  const resolution = resolveDesign(document);
  const plain = plainDesign(resolution.design);
  expect(
    leaves(plain).every((leaf) => typeof leaf === 'string' || Number.isFinite(leaf)),
    text,
  ).toBe(true);
  const labels = new Map<string, string>();
  for (const { path, label, estimate } of uncertainInputs(resolution)) {
    expect(estimate.low <= estimate.likely && estimate.likely <= estimate.high, `${path} in ${text}`).toBe(true);
    expect(labels.get(label), label).toBeUndefined();
    labels.set(label, path);
    for (const end of [estimate.low, estimate.high]) {
      expect(leaves(withFollowers(plain, resolution.followers, path, end)).length).toBe(leaves(plain).length);
    }
  }
}

describe.each(Object.entries(starts))('%s', (_, start) => {
  test.each([1, 2])(`${editsEach} random edits (seed %d)`, (seed) => {
    const by = chance(seed);
    let document = documentOf(start());
    const made: Record<string, number> = { field: 0, kind: 0, add: 0, remove: 0, move: 0 };
    for (let count = 0; count < editsEach; count++) {
      const before = serialiseDesign(document);
      const { what, path, result, back } = randomEdit(by, document);
      expect(serialiseDesign(document)).toBe(before);
      if (!result.ok) {
        expect(result.problems.length).toBeGreaterThan(0);
        for (const problem of result.problems) {
          expect(problem.expected, `${what} ${path}`).not.toBe('');
          expect(sayProblem(problem)).not.toMatch(/undefined|NaN|\[object|\*/);
        }
        continue;
      }
      made[what]! += 1;
      if (back !== undefined) {
        const undone = back(result.document);
        expect(undone.ok && serialiseDesign(undone.document), `${what} ${path}`).toBe(before);
      }
      document = result.document;
      if (count % 15 === 0) expectWhole(document);
    }
    expectWhole(document);
    for (const kind of ['field', 'kind', 'add', 'remove']) expect(made[kind], kind).toBeGreaterThan(0);
  });
});

function leaves(tree: unknown): readonly (string | number)[] {
  if (typeof tree !== 'object' || tree === null) return [tree as string | number];
  return Object.values(tree).flatMap(leaves);
}
