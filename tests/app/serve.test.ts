// What the worker answers: an Assessment with words and formulas for everything shown, or problems with their place.

import { describe, expect, test } from 'vitest';
import { replyToCycle } from '../../src/app/worker/cycle.ts';
import { formulaTexts } from '../../src/app/worker/formulas.ts';
import { createServe } from '../../src/app/worker/serve.ts';
import { answerTo, exampleFiles, exampleText, freezerDome, replyTo } from './answers.ts';

const formulas = formulaTexts();

describe.each(exampleFiles)('%s', (file) => {
  const answer = answerTo(file);
  const { assessment } = answer;

  test('every finding has words, every step its formula', () => {
    expect(answer.findingWords.length).toBe(assessment.findings.length);
    expect(answer.cautionWords.length).toBe(assessment.cautions.length);
    for (const words of [...answer.findingWords, ...answer.cautionWords]) {
      expect(words.title).not.toBe('');
      expect(words.text).not.toBe('');
    }
    expect(assessment.workings.length).toBeGreaterThan(10);
    for (const step of assessment.workings) expect(formulas[step.formula], step.formula).toBeDefined();
  });

  test('headline numbers can be followed to a formula and its file', () => {
    const shown = [assessment.tankLoad, assessment.heatDelivered, assessment.operating.evaporatingTemperature];
    for (const { result } of shown) {
      const step = assessment.workings.find((candidate) => candidate.result === result);
      expect(step, result).toBeDefined();
      expect(formulas[step?.formula ?? '']?.file).toMatch(/^src\/.*\.ts$/);
    }
  });

  test('the answer can be posted: no function hides in it', () => {
    expect(structuredClone(answer)).toEqual(answer);
  });

  test('the view changes words, not numbers', () => {
    const us = answerTo(file, 'us');
    expect(us.assessment.tankLoad).toEqual(assessment.tankLoad);
    expect(us.assessment.sentence).not.toBe(assessment.sentence);
  });
});

test('the range of a result is that of the design answered last', () => {
  const serve = createServe(() => 0);
  const before = serve({ id: 1, body: { kind: 'range', result: 'tank.load' } });
  expect(before).toMatchObject({ kind: 'range', ok: true, answer: undefined });
  serve({ id: 2, body: { kind: 'assess', text: exampleText('reef-in-the-study.json'), view: 'metric' } });
  const reply = serve({ id: 3, body: { kind: 'range', result: 'tank.load' } });
  expect(reply).toMatchObject({ kind: 'range', id: 3, ok: true, answer: { quantity: 'power' } });
  expect(structuredClone(reply)).toEqual(reply);
});

describe('bad requests', () => {
  test('text that is no design is answered with its problems by path', () => {
    const design = JSON.parse(exampleText('reef-in-the-study.json'));
    design.tank.waterTemperature = '26 °X';
    const reply = replyTo(JSON.stringify(design));
    expect(reply.ok).toBe(false);
    expect(!reply.ok && reply.problems[0]).toMatchObject({ path: 'tank.waterTemperature' });
  });

  test('a cycle beyond the critical point is refused in words', () => {
    const reply = replyToCycle({
      id: 7,
      body: {
        kind: 'cycle',
        form: {
          request: {
            refrigerant: 'R134a',
            evaporating: 273.15,
            condensing: 400,
            superheat: 5,
            subcooling: 3,
            isentropicEfficiency: 0.7,
          },
          isotherms: [],
          isobars: [],
        },
        view: 'us',
      },
    });
    expect(reply).toMatchObject({ id: 7, ok: false, problems: [{ code: 'condensingAboveCritical' }] });
  });
});

describe('what is known of the machine is not possible', () => {
  const text = exampleText(freezerDome);
  const said = (rating: Readonly<Record<string, string>>, view: 'metric' | 'us' = 'metric') => {
    const design = JSON.parse(text);
    Object.assign(design.machine.compressor.ratings[0], rating);
    const reply = createServe(() => 0)({ id: 1, body: { kind: 'assess', text: JSON.stringify(design), view } });
    if (reply.ok) throw new Error('was answered');
    return reply.problems.map(({ message }) => message).join(' ');
  };

  test('the refusal names the field as the page does, and says what would be possible', () => {
    expect(said({ capacity: '19 kW' })).toMatch(
      /^Capacity of rating 1: takes more gas than .*Possible is at most .*\sW with every/,
    );
    expect(said({ power: '5 W' })).toMatch(
      /^Electric power of rating 1: less than isentropic.*Possible is at least .*\sW at/,
    );
  });

  test('in the units of the view', () => {
    expect(said({ capacity: '19 kW' }, 'us')).toMatch(/Possible is at most .*\sBTU\/h with every/);
  });
});
