// Runs the command line as people do: a process of its own, real files, real pipes.

import { spawn } from 'node:child_process';
import { fileURLToPath } from 'node:url';

export const root = fileURLToPath(new URL('../..', import.meta.url));

export interface Outcome {
  readonly code: number | null;
  readonly output: string;
  readonly errors: string;
}

/** `npm run -s kettlefin -- …` without npm. */
export function kettlefin(args: readonly string[], input: string | Buffer = '', folder = root): Promise<Outcome> {
  return run(process.execPath, [`${folder}/src/cli/launch.mjs`, ...args], input, folder);
}

/** Any program, from start to end. */
export function run(
  program: string,
  args: readonly string[],
  input: string | Buffer = '',
  folder = root,
): Promise<Outcome> {
  return new Promise((resolve, reject) => {
    const child = spawn(program, args, { cwd: folder });
    let output = '';
    let errors = '';
    child.stdout.setEncoding('utf8').on('data', (text) => {
      output += text;
    });
    child.stderr.setEncoding('utf8').on('data', (text) => {
      errors += text;
    });
    child.on('error', reject);
    child.on('close', (code) => resolve({ code, output, errors }));
    child.stdin.on('error', () => undefined);
    child.stdin.end(input);
  });
}

/** No-break blanks as plain ones, so that a test can write what one reads. */
export function plain(text: string): string {
  return text.replaceAll(/[\u00a0\u202f]/g, ' ');
}

/** What a stack trace looks like. */
export const stackTrace = /\n\s+at |node:internal/;
