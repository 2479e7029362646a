// The page about the command line shows commands that work and names the exit codes and options there are.

import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { exitCodes } from '../../src/cli/exit-codes.ts';
import { main } from '../../src/cli/main.ts';
import { collected } from './streams.ts';

const page = readFileSync(new URL('../../docs/guide/command-line.md', import.meta.url), 'utf8');

/** Commands of the page's code blocks, as argument lists; quotes and line ends as a shell reads them. */
const commands = [...page.matchAll(/```sh\n([\s\S]*?)```/g)]
  .flatMap((block) => block[1]!.replaceAll('\\\n', ' ').split('\n'))
  .filter((line) => line.startsWith('npm run -s kettlefin -- '))
  .map((line) => line.replace(/\s+[#>].*$/, ''))
  .map((line) =>
    [...line.slice('npm run -s kettlefin -- '.length).matchAll(/"([^"]*)"|(\S+)/g)].map((m) => m[1] ?? m[2]!),
  )
  .filter((args) => !args.includes('COMMAND'));

test.each(commands.map((args) => [args.join(' '), args] as const))('%s', async (_, args) => {
  const { streams, output, errors } = collected();
  const code = await main(args, streams);
  expect(errors()).toBe('');
  expect(output().length).toBeGreaterThan(300);
  expect([0, 1, 4]).toContain(code);
});

test('shows every command and every exit code', () => {
  expect(commands.length).toBeGreaterThan(5);
  for (const name of ['check', 'load', 'working', 'brief', 'compare', 'cycle', 'state'])
    expect(commands.map(([command]) => command)).toContain(name);
  // The table at the head of the page, too.
  const named = [...page.matchAll(/^\| `(\w+)[^|]*` \| /gm)].map((match) => match[1]!);
  for (const name of ['check', 'load', 'working', 'brief', 'compare', 'cycle', 'state']) expect(named).toContain(name);
  const shown = [...page.matchAll(/^\| (\d+) \|/gm)].map((match) => Number(match[1]));
  expect(shown).toEqual([...Object.values(exitCodes).sort(), 70]);
});

test('the request of the page is answered', async () => {
  const request = /echo '(.*)' \| npm run -s kettlefin -- state --batch/.exec(page)?.[1];
  const { streams, output } = collected(`${request}\n`);
  expect(await main(['state', '--batch'], streams)).toBe(0);
  expect(JSON.parse(output()).phase).toBe('vapour');
});
