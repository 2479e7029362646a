// Every refrigerant in the machine of a design, and beside any other: an answer without a hole, or words that say what
// cannot be. Pairs stride through the list, so that each refrigerant stands beside several others.

import { describe, expect, test } from 'vitest';
import { answerCompare } from '../../src/app/worker/compare.ts';
import { comparisonBases } from '../../src/assess/index.ts';
import { refrigerantNames } from '../../src/matter/refrigerants/index.ts';
import { exampleText, replyTo } from './answers.ts';

const reef = exampleText('reef-in-the-study.json');

/** Paths of numbers and texts that should not be shown. */
function holesIn(value: unknown, path = ''): readonly string[] {
  if (typeof value === 'number') return Number.isFinite(value) ? [] : [path];
  if (typeof value === 'string') return /NaN|Infinity|undefined/.test(value) ? [`${path}: ${value}`] : [];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) => holesIn(inner, `${path}.${key}`));
}

function onFluid(refrigerant: string): string {
  const design = JSON.parse(reef);
  design.machine.refrigerant = refrigerant;
  return JSON.stringify(design);
}

describe('in the machine', () => {
  test.each(refrigerantNames)('%s is answered, or refused in words', (name) => {
    const reply = replyTo(onFluid(name));
    expect(holesIn(reply)).toEqual([]);
    if (reply.ok) return;
    const [problem] = reply.problems;
    expect(reply.problems).toHaveLength(1);
    expect(problem?.code).toMatch(/^(condensingAboveCritical|dischargeTooHot|outOfModel)$/);
    expect(problem?.message).toContain(name);
  });

  test('what cannot condense at the water’s temperature says up to where it does', () => {
    const reply = replyTo(onFluid('R744'));
    expect(reply.ok ? '' : reply.problems[0]?.message.replaceAll('\u00a0', ' ')).toMatch(
      /^Condensing at 35.5 °C is not below the critical point of R744, 31 °C/,
    );
  });
});

describe.each(comparisonBases)('side by side, %s', (basis) => {
  test.each([1, 7, 12])('each beside the one %i further in the list', (stride) => {
    for (const [index, name] of refrigerantNames.entries()) {
      const other = refrigerantNames[(index + stride) % refrigerantNames.length]!;
      const reply = answerCompare({ text: reef, fluids: [name, other], basis }, 'metric');
      if (!reply.ok) throw new Error(`${name}, ${other}: ${JSON.stringify(reply)}`);
      expect(holesIn(reply), `${name}, ${other}`).toEqual([]);
      const { said, comparison } = reply.answer;
      expect(said.columns.map(({ fluid }) => fluid).sort()).toEqual([name, other].sort());
      for (const { fluid, cycle } of comparison.columns) {
        const column = said.columns.find((each) => each.fluid === fluid);
        expect(column?.problem === undefined, fluid).toBe(cycle.ok);
      }
    }
  });
});
