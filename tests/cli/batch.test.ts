// Batches as processes: a line is answered whatever it holds, in order, also when lines are very many, very long or very
// deep, when two batches run at once, and when input or reader breaks off.

import { spawn } from 'node:child_process';
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { kettlefin, root, run, stackTrace } from './process.ts';

const good = (temperature: number) =>
  JSON.stringify({ refrigerant: 'R134a', given: { temperature, pressure: 100_000 } });
const cycle = {
  refrigerant: 'R134a',
  evaporating: 263.15,
  condensing: 318.15,
  superheat: 5,
  subcooling: 5,
  isentropicEfficiency: 0.6,
};

async function batch(command: 'state' | 'cycle', lines: readonly string[]) {
  const outcome = await kettlefin([command, '--batch'], lines.join('\n'));
  return {
    ...outcome,
    answers: outcome.output
      .trimEnd()
      .split('\n')
      .map((line) => JSON.parse(line)),
  };
}

describe('state --batch', () => {
  test('100,000 lines, a bad one among each hundred', async () => {
    const lines = Array.from({ length: 100_000 }, (_, i) => (i % 100 === 7 ? `{"refrigerant":` : good(260 + i / 2000)));
    const { code, answers, errors } = await batch('state', lines);
    expect({ code, errors }).toEqual({ code: 0, errors: '' });
    expect(answers.length).toBe(lines.length);
    const wrong = answers.filter(({ temperature, error }, i) =>
      i % 100 === 7 ? error?.code !== 'notJson' : Math.abs(temperature - (260 + i / 2000)) > 1e-9,
    );
    expect(wrong).toEqual([]);
  });

  test.each([
    ['nonsense', 'notJson'],
    ['{"refrigerant":"R134a","given":{"temperature":NaN,"pressure":1}}', 'notJson'],
    ['{"refrigerant":"R134a","given":{"temperature":1e999,"pressure":1}}', 'badInput'],
    ['{"refrigerant":"R134a","given":{"temperature":300,"pressure":1e5,"pressure":2e5}}', 'duplicateKey'],
    ['{"refrigerant":{"toString":1},"given":{"temperature":300,"pressure":1e5}}', 'badRequest'],
    ['{"refrigerant":"R134a","given":{"temperature":{"toString":1},"pressure":1e5}}', 'badInput'],
    ['{"refrigerant":"__proto__","given":{"temperature":300,"pressure":1e5}}', 'unknownRefrigerant'],
    ['{"refrigerant":"R134a","__proto__":1,"given":{"temperature":300,"pressure":1e5}}', 'unknownKey'],
    ['{"refrigerant":"R134a","given":{"__proto__":1,"temperature":300,"pressure":1e5}}', 'unsupportedPair'],
    [`{"refrigerant":${'['.repeat(100_000)}${']'.repeat(100_000)},"given":1}`, 'tooDeep'],
    [`{"refrigerant":"${'x'.repeat(500_000)}","given":{"temperature":300,"pressure":1e5}}`, 'unknownRefrigerant'],
    [`{"refrigerant":"${'x'.repeat(3_000_000)}","given":1}`, 'lineTooLong'],
    ['{"refrigerant":"R134a","given":{"temperature":1e308,"pressure":1e308}}', 'outOfModel'],
    ['{"refrigerant":"R134a","given":{"pressure":1e5,"enthalpy":1e12}}', 'outOfModel'],
    ['{"refrigerant":"R134a","given":{"density":1e9,"temperature":300}}', 'outOfModel'],
    ['{"refrigerant":"R134a","given":{"temperature":380,"quality":0.5}}', 'noSaturation'],
  ])('%.80s is answered %s, and the batch goes on', async (line, expected) => {
    const { code, answers, errors } = await batch('state', [line, good(300)]);
    expect({ code, errors }).toEqual({ code: 0, errors: '' });
    expect(answers.length).toBe(2);
    expect(answers[0].error.code).toBe(expected);
    expect(answers[0].error.message.length).toBeLessThan(600);
    expect(answers[1].phase).toBe('vapour');
  });

  test('a byte order mark, carriage returns, empty lines and no last line break', async () => {
    const { code, output } = await kettlefin(['state', '--batch'], `\ufeff${good(300)}\r\n\r\n   \n${good(301)}`);
    expect(code).toBe(0);
    expect(
      output
        .trimEnd()
        .split('\n')
        .map((line) => JSON.parse(line).temperature),
    ).toEqual([300, 301]);
  });

  test('nothing at all', async () => {
    expect(await kettlefin(['state', '--batch'], '')).toEqual({ code: 0, output: '', errors: '' });
  });

  test('a line of 50 MB is dropped as it comes', async () => {
    const { code, answers } = await batch('state', ['x'.repeat(50_000_000), good(300)]);
    expect(code).toBe(0);
    expect(answers.map(({ error, phase }) => error?.code ?? phase)).toEqual(['lineTooLong', 'vapour']);
  });
});

describe('cycle --batch', () => {
  test.each([
    [{ ...cycle, condensing: 400 }, 'condensingAboveCritical'],
    [{ ...cycle, condensing: 374.3 }, 'condensingAboveCritical'],
    [{ ...cycle, condensing: 250 }, 'condensingBelowEvaporating'],
    [{ ...cycle, condensing: 263.15 }, 'condensingBelowEvaporating'],
    [{ ...cycle, superheat: -1 }, 'badInput'],
    [{ ...cycle, subcooling: 500 }, 'badInput'],
    [{ ...cycle, isentropicEfficiency: 0 }, 'badInput'],
    [{ ...cycle, isentropicEfficiency: 1e-9 }, 'outOfModel'],
    [{ ...cycle, extra: 1 }, 'unknownKey'],
    [{ ...cycle, evaporatingPressure: 2e5 }, 'bothGiven'],
    [{ ...cycle, superheat: undefined }, 'missing'],
    [{ ...cycle, evaporating: { toString: 1 } }, 'badInput'],
    [[], 'badInput'],
    [null, 'badInput'],
  ])('%j: %s', async (request, expected) => {
    const { code, answers } = await batch('cycle', [JSON.stringify(request), JSON.stringify(cycle)]);
    expect(code).toBe(0);
    expect(answers[0].error.code).toBe(expected);
    expect(answers[1].heatingCop).toBeGreaterThan(1);
  });
});

test('two batches at once do not disturb each other', async () => {
  const lines = Array.from({ length: 20_000 }, (_, i) => good(280 + i / 1000));
  const [first, second] = await Promise.all([batch('state', lines), batch('state', [...lines].reverse())]);
  expect(first.answers).toEqual([...second.answers].reverse());
});

/** A process whose reader closes the pipe after the first piece. */
function withImpatientReader(args: readonly string[], input: string): Promise<{ code: number | null; errors: string }> {
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, [join(root, 'src/cli/launch.mjs'), ...args], { cwd: root });
    let errors = '';
    child.stderr.setEncoding('utf8').on('data', (text) => {
      errors += text;
    });
    child.on('error', reject);
    child.stdin.on('error', () => undefined);
    child.stdout.once('data', () => child.stdout.destroy());
    child.on('close', (code) => resolve({ code, errors }));
    child.stdin.end(input);
  });
}

describe('a reader that goes away', () => {
  test('ends a batch quietly', async () => {
    const input = `${good(300)}\n`.repeat(200_000);
    expect(await withImpatientReader(['state', '--batch'], input)).toEqual({ code: 0, errors: '' });
  });

  test('does not turn a "no" into a "yes"', async () => {
    const file = join(root, 'data/designs/propane-in-the-cabinet.json');
    const { code, errors } = await withImpatientReader(['check', file, '--json'], '');
    expect(errors).toBe('');
    expect(code).toBe(1);
  });
});

if (existsSync('/dev/full')) {
  describe('a full disk', () => {
    const toFull = (stream: number, args: string) =>
      run('/bin/sh', ['-c', `exec "$0" src/cli/launch.mjs ${args} ${stream}> /dev/full`, process.execPath], good(300));

    test.each(['state --batch', 'check data/designs/reef-in-the-study.json'])('under %s is no answer', async (args) => {
      const { code, errors } = await toFull(1, args);
      expect(code).toBe(70);
      expect(errors).toMatch(/gives no answer: .*ENOSPC/);
      expect(errors).not.toMatch(stackTrace);
    });

    test('under the error stream leaves the exit code', async () => {
      expect((await toFull(2, 'check no-such-file.json')).code).toBe(2);
    });
  });
}
