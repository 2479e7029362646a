// The pages of the guide show commands that work; the one about the command line names the exit codes and options there are.

import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { exitCodes } from '../../src/cli/exit-codes.ts';
import { main } from '../../src/cli/main.ts';
import { collected } from './streams.ts';

const guide = new URL('../../docs/guide/', import.meta.url);
const page = readFileSync(new URL('command-line.md', guide), 'utf8');
const walks = readdirSync(guide)
  .filter((name) => name.startsWith('walk-'))
  .map((name) => readFileSync(new URL(name, guide), 'utf8'));
const commands = commandsOf(page);

/** Commands of a page's code blocks, as argument lists; quotes and line ends as a shell reads them. */
function commandsOf(text: string): readonly (readonly string[])[] {
  return [...text.matchAll(/```sh\n([\s\S]*?)```/g)]
    .flatMap((block) => block[1]!.replaceAll('\\\n', ' ').split('\n'))
    .filter((line) => line.startsWith('npm run -s kettlefin -- '))
    .map((line) => line.replace(/\s+[#>].*$/, ''))
    .map((line) =>
      [...line.slice('npm run -s kettlefin -- '.length).matchAll(/"([^"]*)"|(\S+)/g)].map((m) => m[1] ?? m[2]!),
    )
    .filter((args) => !args.includes('COMMAND'));
}

test('every walk has commands', () => {
  expect(walks.length).toBeGreaterThan(2);
  for (const walk of walks) expect(commandsOf(walk)).not.toEqual([]);
});

const shownCommands = [...commands, ...walks.flatMap(commandsOf)];
test.each(shownCommands.map((args) => [args.join(' '), args] as const))('%s', async (_, args) => {
  const { streams, output, errors } = collected();
  const code = await main(args, streams);
  expect(errors()).toBe('');
  expect(output().length).toBeGreaterThan(300);
  expect([0, 1, 4]).toContain(code);
});

const names = ['check', 'load', 'machine', 'settle', 'fit', 'working', 'brief', 'compare', 'cycle', 'state'];

test('shows every command and every exit code', () => {
  expect(commands.length).toBeGreaterThan(5);
  for (const name of names) expect(commands.map(([command]) => command)).toContain(name);
  // The table at the head of the page, too.
  const named = [...page.matchAll(/^\| `(\w+)[^|]*` \| /gm)].map((match) => match[1]!);
  for (const name of names) expect(named).toContain(name);
  const shown = [...page.matchAll(/^\| (\d+) \|/gm)].map((match) => Number(match[1]));
  expect(shown).toEqual([...Object.values(exitCodes).sort(), 70]);
});

test('the request of the page is answered', async () => {
  const request = /echo '(.*)' \| npm run -s kettlefin -- state --batch/.exec(page)?.[1];
  const { streams, output } = collected(`${request}\n`);
  expect(await main(['state', '--batch'], streams)).toBe(0);
  expect(JSON.parse(output()).phase).toBe('vapour');
});
