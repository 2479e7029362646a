// Files that are no design, or a broken one: exit code 2, a message with the place and what is accepted, no stack trace,
// nothing on the output, and no hanging. Real files, real processes; edits of one demo.

import { existsSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { demoTexts } from '../designs.ts';
import { kettlefin, plain, stackTrace } from './process.ts';

const demo = demoTexts['reef-in-the-study.json']!;

let folder = '';
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'kettlefin-files-'));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** The demo with other values at some paths; undefined takes the key out. */
function changed(values: Readonly<Record<string, unknown>>): string {
  const design = JSON.parse(demo);
  for (const [path, value] of Object.entries(values)) {
    const keys = path.split('.');
    const last = keys.pop()!;
    const part = keys.reduce((node, key) => node[key], design);
    part[last] = value;
  }
  return JSON.stringify(design, null, 2);
}

async function check(name: string, content: string | Buffer, ...options: string[]) {
  const file = join(folder, name);
  writeFileSync(file, content);
  const outcome = await kettlefin(['check', file, ...options]);
  return { ...outcome, errors: plain(outcome.errors), file };
}

describe('each of these is unusable input, said with place and what is accepted', () => {
  const cases: readonly (readonly [string, string | Buffer, readonly RegExp[]])[] = [
    ['not JSON', 'once upon a time', [/not valid JSON \(line 1, column 1\)/, /Expected a value/]],
    ['truncated', demo.slice(0, 700), [/cut off \(line \d+, column \d+\)/]],
    ['empty', '', [/is empty/, /Expected the JSON text/]],
    ['blanks', ' \n\t\n', [/is empty/]],
    ['a list', '[]', [/not a design/, /"formatVersion": 2/]],
    ['a number', '7', [/not a design/]],
    ['null', 'null', [/not a design/]],
    ['binary', Buffer.from(Array.from({ length: 4096 }, (_, i) => (i * 37) % 256)), [/is not text/, /UTF-8/]],
    ['UTF-16', Buffer.from(`\ufeff${demo}`, 'utf16le'), [/is not text/, /UTF-8/]],
    ['50 MB of text', 'x'.repeat(50_000_000), [/is too large/, /at most 2 million characters/]],
    ['3 MB of text', 'x'.repeat(3_000_000), [/too large/, /at most 2 million characters/]],
    ['100,000 levels of lists', '['.repeat(100_000) + ']'.repeat(100_000), [/nested too deeply/, /at most 40 levels/]],
    ['100,000 levels of objects', `${'{"a":'.repeat(100_000)}1${'}'.repeat(100_000)}`, [/nested too deeply/]],
    ['NaN', demo.replace('"formatVersion": 2', '"formatVersion": NaN'), [/not valid JSON \(line 2, column 20\)/]],
    ['Infinity', demo.replace('"formatVersion": 2', '"formatVersion": Infinity'), [/not valid JSON/]],
    [
      'a number beyond all',
      demo.replace('"formatVersion": 2', '"formatVersion": 1e999'),
      [/formatVersion/, /version from 1 to 2/],
    ],
    ['a key given twice', demo.replace('"room": {', '"name": "again", "room": {'), [/name is given twice \(line/]],
    ['__proto__', demo.replace('"room": {', '"__proto__": {"x": 1}, "room": {'), [/__proto__ is not known/]],
    ['constructor', demo.replace('"room": {', '"room": {"constructor": "x",'), [/room\.constructor is not known/]],
    ['a future format', demo.replace('"formatVersion": 2', '"formatVersion": 99'), [/newer than this program/]],
    ['a wrong type', changed({ 'room.temperature': 20 }), [/room\.temperature: "20"/, /"26\.5 °C"/]],
    ['an unknown unit', changed({ 'room.temperature': '20 furlongs' }), [/room\.temperature/, /°C, °F, K/]],
    ['no unit', changed({ 'room.temperature': '20' }), [/room\.temperature: "20" has no unit/]],
    ['a wrong unit', changed({ 'room.temperature': '20 m' }), [/room\.temperature/, /unit of something else/]],
    ['a negative length', changed({ 'exchangers.tubeDiameter': '-9 mm' }), [/tubeDiameter/, /0 or above/]],
    ['low above high', changed({ 'room.coldest': '19 to 17 °C' }), [/room\.coldest/, /lower end first/]],
    ['a missing part', changed({ 'tank.load': undefined }), [/tank\.load is missing/, /"kind"/]],
    ['a missing field', changed({ 'prices.electricity': undefined }), [/prices\.electricity is missing/]],
    ['a part that is null', changed({ machine: null }), [/machine: "null"/, /an object/]],
    ['an unknown key', changed({ 'room.temprature': '20 °C' }), [/room\.temprature/, /mean "temperature"/]],
    ['an unknown kind', changed({ 'source.kind': 'moon' }), [/source\.kind/, /roomAir/]],
    ['an unknown refrigerant', changed({ 'machine.refrigerant': 'R999' }), [/machine\.refrigerant/, /R134a/]],
    ['a huge number', changed({ 'tank.load.volume': '1e300 L' }), [/tank\.load\.volume/, /1 L to 200 m³/]],
    ['a number that is no number', changed({ 'tank.load.volume': 'NaN L' }), [/tank\.load\.volume/]],
    ['a name of blanks', changed({ name: ' \u00a0\t' }), [/name: .* is not acceptable\. Expected a text .* not empty/]],
    ['a very long text', changed({ name: 'x'.repeat(100_000) }), [/name/, /at most 120 characters/]],
    ['another currency', changed({ 'prices.electricity': '0.3 USD/kWh' }), [/prices\.electricity/, /EUR/]],
  ];

  test.each(cases)('%s', async (title, content, expected) => {
    const { code, output, errors } = await check(`${title.replaceAll(/\W+/g, '-')}.json`, content);
    expect(code).toBe(2);
    expect(output).toBe('');
    for (const words of expected) expect(errors).toMatch(words);
    expect(errors).not.toMatch(stackTrace);
    expect(errors.length).toBeLessThan(2000);
  });

  test('every problem is told, not only the first', async () => {
    const { errors } = await check('two.json', changed({ 'room.temperature': 'warm', 'power.fan': '-1 W' }));
    expect(errors).toMatch(/room\.temperature/);
    expect(errors).toMatch(/power\.fan/);
  });

  test('programs get the same as JSON, with the caution', async () => {
    const { code, output, errors } = await check('json.json', changed({ 'room.temprature': '20 °C' }), '--json');
    expect(code).toBe(2);
    const { caution, error } = JSON.parse(output);
    expect(caution).toMatch(/not permission to build/);
    expect(error.kind).toBe('unusable');
    expect(error.problems).toEqual([
      expect.objectContaining({ path: 'room.temprature', code: 'unknownKey', nearest: 'temperature' }),
    ]);
    expect(errors).toContain('room.temprature');
  });
});

describe('paths that are no design file', () => {
  test('a folder', async () => {
    mkdirSync(join(folder, 'folder.json'));
    const { code, output, errors } = await kettlefin(['check', join(folder, 'folder.json')]);
    expect({ code, output }).toEqual({ code: 2, output: '' });
    expect(errors).toMatch(/is a folder/);
  });

  test('nothing', async () => {
    const { code, output, errors } = await kettlefin(['check', join(folder, 'nothing.json'), '--json']);
    expect(code).toBe(2);
    expect(JSON.parse(output).error.problems[0].code).toBe('noSuchFile');
    expect(errors).toMatch(/nothing\.json does not exist/);
  });

  if (existsSync('/dev/zero')) {
    test('a device without end', async () => {
      const { code, errors } = await kettlefin(['check', '/dev/zero']);
      expect(code).toBe(2);
      expect(errors).toMatch(/too large/);
    });
  }
});

describe('files that editors write differently are the same design', () => {
  test.each([
    ['with a byte order mark', `\ufeff${demo}`],
    ['with carriage returns', demo.replaceAll('\n', '\r\n')],
    ['without any line break', JSON.stringify(JSON.parse(demo))],
  ])('%s', async (title, content) => {
    const [{ code, output }, original] = await Promise.all([
      check(`${title.replaceAll(' ', '-')}.json`, content),
      check('original.json', demo),
    ]);
    expect(code).toBe(original.code);
    expect(output).toBe(original.output);
  });
});

test('nothing of a design can command the terminal', async () => {
  const name = 'first\u001b[2J\u001b[31m red\u0007\nsecond\u202eenil';
  const { output, errors } = await check('escapes.json', changed({ name: name }));
  const refused = await check('refused.json', changed({ 'room.temperature': '\u001b[31m20' }));
  // biome-ignore lint/suspicious/noControlCharactersInRegex: control characters are what is looked for
  for (const text of [output, errors, refused.errors]) expect(text).not.toMatch(/[\u0000-\u0009\u000b-\u001f\u202e]/);
  expect(output.split('\n')[0]).toContain('red');
  expect(output.split('\n')[0]).toContain('second');
});
