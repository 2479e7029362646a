// The starter of the command line: builds when the source is newer, passes arguments, input, output and exit code through,
// also when two start at once, and says what is wrong when the source cannot be built.

import { spawn } from 'node:child_process';
import { appendFileSync, cpSync, mkdtempSync, readdirSync, rmSync, symlinkSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { kettlefin, root } from './process.ts';

describe('a finished project', () => {
  test('tells its commands', async () => {
    const { code, output, errors } = await kettlefin(['--help']);
    expect({ code, errors }).toEqual({ code: 0, errors: '' });
    for (const command of ['check', 'cycle', 'state']) expect(output).toContain(command);
  });

  test('passes the exit code on: an unknown command is unusable input', async () => {
    const { code, output, errors } = await kettlefin(['no-such-command']);
    expect(code).toBe(2);
    expect(output).toBe('');
    expect(errors).toContain('no-such-command');
    expect(errors).not.toMatch(/\n\s+at /);
  });

  test('answers a batch line by line, in order, and goes on after a line it cannot answer', async () => {
    const temperatures = Array.from({ length: 2000 }, (_, i) => 260 + i / 100);
    const lines = temperatures.map((temperature) =>
      JSON.stringify({ refrigerant: 'R134a', given: { temperature, pressure: 100_000 } }),
    );
    lines[700] = 'this is not JSON';
    const { code, output } = await kettlefin(['state', '--batch'], lines.join('\n'));
    expect(code).toBe(0);
    const answers = output.trimEnd().split('\n');
    expect(answers.length).toBe(lines.length);
    answers.forEach((answer, index) => {
      const { temperature, error } = JSON.parse(answer);
      if (index === 700) expect(error.code).toEqual(expect.any(String));
      else expect(temperature).toBeCloseTo(temperatures[index]!, 9);
    });
  });

  test('a reader that stops early is no fault', async () => {
    const child = spawn(process.execPath, [join(root, 'src/cli/launch.mjs'), 'state', '--batch'], { cwd: root });
    let errors = '';
    child.stderr.setEncoding('utf8').on('data', (text) => {
      errors += text;
    });
    child.stdin.on('error', () => undefined);
    const line = `${JSON.stringify({ refrigerant: 'R290', given: { temperature: 300, pressure: 100_000 } })}\n`;
    child.stdin.write(line.repeat(20_000));
    child.stdout.once('data', () => {
      child.stdout.destroy();
      child.stdin.end(line.repeat(20_000));
    });
    const code = await new Promise((resolve) => child.on('close', resolve));
    expect({ code, errors }).toEqual({ code: 0, errors: '' });
  });
});

describe('a project that is not built yet', () => {
  let folder = '';
  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), 'kettlefin-'));
    for (const name of ['src', 'data', 'package.json', 'package-lock.json']) {
      cpSync(join(root, name), join(folder, name), { recursive: true });
    }
    symlinkSync(join(root, 'node_modules'), join(folder, 'node_modules'), 'dir');
  });
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  test('is built once, silently, also when three start at the same time', async () => {
    const outcomes = await Promise.all([0, 1, 2].map(() => kettlefin(['--help'], '', folder)));
    for (const { code, output, errors } of outcomes) {
      expect({ code, errors }).toEqual({ code: 0, errors: '' });
      expect(output).toBe(outcomes[0]?.output);
    }
    expect(readdirSync(join(folder, 'dist', 'cli')).length).toBe(1);
  });

  test('is built again when a source file has changed, and only then', async () => {
    await kettlefin(['--help'], '', folder);
    const before = readdirSync(join(folder, 'dist', 'cli'));
    appendFileSync(join(folder, 'src/cli/exit-codes.ts'), '\n// changed\n');
    expect((await kettlefin(['--help'], '', folder)).code).toBe(0);
    const after = readdirSync(join(folder, 'dist', 'cli'));
    expect(after.length).toBe(before.length + 1);
  });

  test('says why it cannot be built, on the error stream only', async () => {
    appendFileSync(join(folder, 'src/cli/exit-codes.ts'), '\nthis is not TypeScript\n');
    const { code, output, errors } = await kettlefin(['--help'], '', folder);
    expect(code).toBe(70);
    expect(output).toBe('');
    expect(errors).toContain('exit-codes.ts');
    expect(errors).not.toContain('\u001b');
  });
});
