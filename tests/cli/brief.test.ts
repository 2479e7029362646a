// `brief`: HTML or data to the output or to a file that is never replaced unasked; refusals and exit codes; the charge
// withheld in either form.

import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { BriefDocument } from '../../src/brief/index.ts';
import { caution } from '../../src/cautions/index.ts';
import { main } from '../../src/cli/main.ts';
import { wordsOf } from '../brief/briefs.ts';
import { changedDesign, demoTexts } from '../designs.ts';
import { plain, run } from './process.ts';
import { collected } from './streams.ts';

const propane = demoTexts['propane-in-the-cabinet.json']!;
const reef = demoTexts['reef-in-the-study.json']!;

async function answer(args: readonly string[], input = '') {
  const { streams, output, errors } = collected(input);
  const code = await main(args, streams);
  return { code, output: output(), errors: plain(errors()) };
}

let folder = '';
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'kettlefin-brief-'));
});
afterAll(() => rm(folder, { recursive: true, force: true }));

test.each(Object.entries(demoTexts))('%s: a brief whatever the verdict, in either view', async (_file, text) => {
  for (const view of ['metric', 'us']) {
    const html = await answer(['brief', '-', '--units', view], text);
    expect(html).toMatchObject({ code: 0, errors: '' });
    expect(html.output).toMatch(/^<!doctype html>[\s\S]*<\/html>\n$/);
    const json = await answer(['brief', '-', '--units', view, '--json'], text);
    expect(json).toMatchObject({ code: 0, errors: '' });
    const document: BriefDocument = JSON.parse(json.output);
    expect(document).toMatchObject({ briefVersion: 1, caution, units: view });
    expect(document.date).toMatch(/^20\d\d-[01]\d-[0-3]\d$/);
    expect(wordsOf(html.output)).toContain(plain(document.sentence));
  }
});

test('npm run -s kettlefin -- brief: a file beside the person, once', async () => {
  const design = join(folder, 'design.json');
  await writeFile(design, reef);
  const args = ['run', '-s', 'kettlefin', '--', 'brief', design, '--output', join(folder, 'once.html')];
  const first = await run('npm', args);
  expect(first).toMatchObject({ code: 0, errors: '' });
  expect(first.output).toMatch(/^The brief is in .*once\.html\.\n$/);
  const written = await readFile(join(folder, 'once.html'), 'utf8');
  expect(wordsOf(written)).toContain('Reef tank in the study');
  const second = await run('npm', args);
  expect(second.code).toBe(2);
  expect(second.errors).toContain('--force');
  expect(await readFile(join(folder, 'once.html'), 'utf8')).toBe(written);
});

describe('a file', () => {
  test('is replaced with --force only', async () => {
    const file = join(folder, 'kept.html');
    await writeFile(file, 'mine');
    const refused = await answer(['brief', '-', '--output', file], reef);
    expect(refused).toMatchObject({ code: 2, output: '' });
    expect(await readFile(file, 'utf8')).toBe('mine');
    expect(await answer(['brief', '-', '--output', file, '--force'], reef)).toMatchObject({ code: 0, errors: '' });
    expect(await readFile(file, 'utf8')).toMatch(/^<!doctype html>/);
  });

  test('may hold the data', async () => {
    const file = join(folder, 'brief.json');
    await answer(['brief', '-', '--output', file, '--json', '--contact', 'A. Person, Invented Street 5'], reef);
    expect(JSON.parse(await readFile(file, 'utf8'))).toMatchObject({ contact: 'A. Person, Invented Street 5' });
  });

  test('called - is standard output, as for a picture of a cycle', async () => {
    const { code, output, errors } = await answer(['brief', '-', '--output', '-'], reef);
    expect([code, errors]).toEqual([0, '']);
    expect(output).toMatch(/^<!doctype html>[\s\S]*<\/html>\n$/);
  });

  test.each([
    ['in no folder', 'none/such/brief.html'],
    ['that is a folder', '.'],
  ])('%s is refused', async (_name, path) => {
    const { code, errors } = await answer(['brief', '-', '--output', join(folder, path)], reef);
    expect(code).toBe(2);
    expect(errors).toMatch(/Expected .*\./);
  });
});

test('where the answer is not to build, the charge is in neither form', async () => {
  const design = changedDesign(propane, { 'machine.charge': '91.7 to 133.3 g' });
  for (const form of [['--json'], []]) {
    const { output } = await answer(['brief', '-', ...form], design);
    expect(plain(output)).not.toMatch(/\b91\.7|\b92 g|\b133\.3|\b13[03] g/);
    expect(output).toContain('Nothing is asked to be built.');
  }
});

test.each([
  ['no file', ['brief'], 2],
  ['a file that is not there', ['brief', 'no-such-design.json'], 2],
  ['--force alone', ['brief', '-', '--force'], 2],
  ['an empty path', ['brief', '-', '--output', ''], 2],
  ['a letter for a contact', ['brief', '-', '--contact', 'x'.repeat(400)], 2],
  ['an unknown view', ['brief', '-', '--units', 'imperial'], 2],
  ['an unknown option', ['brief', '-', '--pages', '2'], 2],
])('%s is refused in a sentence', async (_name, args, code) => {
  const refused = await answer(args, reef);
  expect(refused).toMatchObject({ code, output: '' });
  expect(refused.errors).toMatch(/^.+\n/);
});

test('a design that cannot be used, and one without a solution, are refused as everywhere', async () => {
  const unusable = await answer(['brief', '-', '--json'], changedDesign(reef, { 'tank.waterTemperature': 'warm' }));
  expect(unusable.code).toBe(2);
  expect(JSON.parse(unusable.output)).toMatchObject({ caution, error: { kind: 'unusable' } });
  const impossible = changedDesign(reef, { 'exchangers.condenserApproach': '1 K' });
  const none = await answer(['brief', '-', '--json'], impossible);
  expect([none.code, JSON.parse(none.output).error.kind]).toEqual([3, 'noSolution']);
});
