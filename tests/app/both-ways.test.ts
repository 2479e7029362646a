// A design reckoned with states from the equation and from tables, as the worker answers it and the paper says it.

import { expect, test } from 'vitest';
import { bothWaysWords } from '../../src/app/papers/working/both-ways-words.ts';
import { answerBothWays, type BothWaysAnswer } from '../../src/app/worker/both-ways.ts';
import { fluidsNamed } from '../../src/app/worker/fluids-named.ts';
import { answerOnDemand } from '../../src/app/worker/on-demand.ts';
import { BareAssessor } from '../../src/assess/index.ts';
import { exampleFiles, exampleText } from './answers.ts';

/** A clock that a second look moves by one millisecond. */
function ticking(): () => number {
  let time = 0;
  return () => {
    time += 1;
    return time;
  };
}

test.each(exampleFiles)('%s: same answer, differences below a ten thousandth, both times told', (file) => {
  const outcome = answerBothWays(exampleText(file), 'metric', ticking());
  if (!outcome.ok) throw new Error(JSON.stringify(outcome));
  const { answer } = outcome;
  expect(answer.isSameStanding).toBe(true);
  expect(answer.largest.share).toBeGreaterThan(0);
  expect(answer.largest.share).toBeLessThan(1e-4);
  expect(answer.byTable).toBeGreaterThan(100);
  expect(answer).toMatchObject({ exactTook: 1, tablesTook: 1, building: 1 });
  expect(structuredClone(answer)).toEqual(answer);
});

test('the worker answers it, after fetching the fluids of the design', async () => {
  const body = { kind: 'bothWays', text: exampleText('propane-in-the-cabinet.json'), view: 'us' } as const;
  expect(fluidsNamed(body)).toContain('R290');
  const reply = await answerOnDemand({ id: 7, body }, ticking(), new BareAssessor());
  expect(reply).toMatchObject({ kind: 'bothWays', id: 7, ok: true, answer: { refrigerant: 'R290' } });
});

test('a text that is no design is refused with its problems', async () => {
  const reply = await answerOnDemand(
    { id: 8, body: { kind: 'bothWays', text: '{}', view: 'metric' } },
    ticking(),
    new BareAssessor(),
  );
  if (reply.ok) throw new Error('answered');
  expect(reply.problems.length).toBeGreaterThan(0);
});

const told: BothWaysAnswer = {
  refrigerant: 'R290',
  exactTook: 41.4,
  tablesTook: 9.44,
  building: 36.6,
  bytes: 1.304e6,
  byTable: 4210,
  byEquation: 0,
  figures: 16,
  largest: { label: 'COP of the system', share: 1.853e-7 },
  isSameStanding: true,
};

test('the words for it', () => {
  expect(bothWaysWords(told)).toEqual([
    'The answer is the same; of the 16 figures of the verdict “COP of the system” moves most, by one part in 5,400,000.',
    'From the equation of R290 a whole verdict with all its ranges takes 41 ms, from the table 9.4 ms; making the table took 37 ms once. Of 4,210 states the table gave every one. The table holds 1.3 MB.',
  ]);
  const other = { ...told, isSameStanding: false, building: 0, byEquation: 12, largest: { label: '', share: 0 } };
  expect(bothWaysWords(other)).toEqual([
    'The answer is not the same: trust the equation; all 16 figures of the verdict are equal to the last digit.',
    'From the equation of R290 a whole verdict with all its ranges takes 41 ms, from the table 9.4 ms; the table was there already. Of 4,222 states the table gave 4,210; the rest lay outside it and came from the equation.' +
      ' The table holds 1.3 MB.',
  ]);
});
