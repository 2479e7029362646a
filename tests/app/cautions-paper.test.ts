// The paper of cautions: its answer in one sentence, and a way into the design for every caution.

import { describe, expect, test } from 'vitest';
import { fieldsSettling, settledBy } from '../../src/app/papers/cautions/settled-by.ts';
import { answerSentence, countWords } from '../../src/app/papers/cautions/words.ts';
import { homeOf } from '../../src/app/stations/fields.ts';
import { saidFindings } from '../../src/app/ui/findings.tsx';
import { cautionCodes } from '../../src/cautions/index.ts';
import { fieldRecord } from '../../src/design/index.ts';
import { answerTo, exampleFiles } from './answers.ts';

describe('fields that could settle a caution', () => {
  test.each(cautionCodes)('%s', (code) => {
    for (const path of settledBy[code]) {
      expect(fieldRecord(path), path).toBeDefined();
      expect(homeOf(path), path).toBeDefined();
    }
  });

  test('are missing only where no field could', () => {
    expect(cautionCodes.filter((code) => settledBy[code].length === 0)).toEqual(['oilTakesUpWater']);
    expect(fieldsSettling('tankSimplifications')).toEqual([]);
  });
});

describe('the answer', () => {
  test('counts all, and names the worst', () => {
    const said = saidFindings(answerTo('propane-in-the-cabinet.json'));
    const count = (severity: string) => said.filter(({ finding }) => finding.severity === severity).length;
    const sentence = answerSentence(said);
    expect(sentence).toContain(`${count('stop')} to stop for, ${count('look')} to look at, ${count('note')} to note.`);
    expect(sentence).toMatch(/The worst: R290 burns, and this equipment was not made for it\.$/);
  });

  test('without a stop or a look says that no limit was found, and what is noted first', () => {
    const said = saidFindings(answerTo('reef-in-the-study.json')).filter(({ finding }) => finding.severity === 'note');
    expect(answerSentence(said)).toMatch(/^No limit found; \d+ to note\. First of the notes: /);
    expect(countWords(said)).toMatch(/^\d+ to note$/);
  });

  test('lets a worst that is a question ask', () => {
    const said = saidFindings(answerTo('shrimp-rack-unknown-draughts.json')).filter(({ words }) =>
      words.title.endsWith('?'),
    );
    expect(said.length).toBeGreaterThan(0);
    expect(answerSentence(said)).toMatch(/: [^:]+\?$/);
  });

  test('without any finding permits nothing', () => {
    expect(answerSentence([])).toBe('No limit found. That says what the rules found, and permits nothing.');
  });

  test.each(exampleFiles)('%s: nobody reads "safe", "approved" or "compliant"', (file) => {
    for (const view of ['metric', 'us'] as const) {
      for (const { words } of saidFindings(answerTo(file, view))) {
        expect(Object.values(words).join(' ')).not.toMatch(/\b(?:safe|safely|approved|compliant)\b/i);
      }
    }
  });
});

describe('words of the findings', () => {
  test.each(exampleFiles)('%s: the US view says no number in metric units', (file) => {
    const said = saidFindings(answerTo(file, 'us'));
    expect(said.length).toBeGreaterThan(5);
    for (const { words } of said) {
      expect(Object.values(words).join(' ')).not.toMatch(/°C|\d\s?K\b|W\/K|kelvin|\d\s(?:bar|kPa|m³|m²|kg|g|L)\b/);
    }
  });

  test('withhold the charge where the answer is not to build, and keep the concentration', () => {
    const answer = answerTo('propane-in-the-cabinet.json');
    const words = saidFindings(answer).map((each) => each.words.text);
    expect(words.filter((text) => /A charge of|up to 130/.test(text))).toEqual([]);
    expect(words.some((text) => /The whole charge of R290/.test(text))).toBe(true);
    expect(words.some((text) => /makes up to 720/.test(text))).toBe(true);
  });
});
