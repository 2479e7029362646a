// The tank: what it is made of, the air and the water it stands in and holds, its walls and its surface, each against values
// from outside; and the rules of thumb that aquarium keepers repeat, which are reported and hold nothing.

import type { ValidationRow } from '../validation.ts';
import { commonPracticeRows } from './common-practice.ts';
import { airRows, waterRows } from './rows-of-air-and-water.ts';
import { materialRows } from './rows-of-materials.ts';
import { surfaceRows } from './rows-of-surface.ts';
import { wallRows } from './rows-of-walls.ts';

export function validationRows(): readonly ValidationRow[] {
  return [...wallRows(), ...surfaceRows(), ...airRows(), ...waterRows(), ...materialRows(), ...rulesOfThumb()];
}

function rulesOfThumb(): readonly ValidationRow[] {
  return commonPracticeRows().map(
    ({ claim, ours, claimed: [low, high], note }): ValidationRow => ({
      subject: 'Rules of thumb',
      quantity: claim,
      source: 'common practice, no source',
      published: `${low} to ${high}`,
      ours,
      deviation: ours >= low && ours <= high ? 'inside' : 'outside',
      status: 'common practice, no source',
      reason: note,
    }),
  );
}
