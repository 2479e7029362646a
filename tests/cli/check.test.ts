// `check` and `load` on the demos and on designs at the edge: exit codes, what people read in both unit views, what programs
// get, what is withheld, and that a machine without a solution keeps nobody from the tank's load.

import { readdirSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import type { Assessment, TankLoadAnswer } from '../../src/assess/index.ts';
import { caution } from '../../src/cautions/index.ts';
import { main } from '../../src/cli/main.ts';
import { changedDesign, demoTexts } from '../designs.ts';
import { kettlefin, plain, root, run } from './process.ts';
import { collected } from './streams.ts';

/** Exit codes by standing: the contract that scripts rely on. */
const codes: Readonly<Record<string, number>> = {
  doNotBuild: 1,
  fallsShort: 1,
  uncertain: 4,
  notWorthIt: 1,
  carriesLoad: 0,
};

interface Answer {
  readonly code: number;
  readonly output: string;
  readonly errors: string;
}

const known = new Map<string, Promise<Answer>>();

/** The same question is asked once, since nothing changes an answer. */
function answer(args: readonly string[], input = ''): Promise<Answer> {
  const question = JSON.stringify([args, input]);
  const asked = known.get(question) ?? ask(args, input);
  known.set(question, asked);
  return asked;
}

async function ask(args: readonly string[], input: string): Promise<Answer> {
  const { streams, output, errors } = collected(input);
  const code = await main(args, streams);
  return { code, output: plain(output()), errors: plain(errors()) };
}

const unwrapped = (text: string) => text.replaceAll(/\s+/g, ' ');
const propane = 'propane-in-the-cabinet.json';
const reef = 'reef-in-the-study.json';

test('npm run -s kettlefin -- check FILE: verdicts with all exit codes, as real processes', async () => {
  const files = readdirSync(`${root}/data/designs`).filter((name) => name.endsWith('.json'));
  const seen = new Set<number | null>();
  for (const file of files) {
    const { code, output, errors } = await run('npm', [
      'run',
      '-s',
      'kettlefin',
      '--',
      'check',
      `data/designs/${file}`,
      '--json',
    ]);
    expect(errors).toBe('');
    expect(code, file).toBe(codes[JSON.parse(output).standing]);
    seen.add(code);
  }
  expect([...seen].sort()).toEqual([0, 1, 4]);
});

test('a path counts from where the person is, not from where npm starts the program', async () => {
  const { code, output } = await run(
    'npm',
    ['run', '-s', 'kettlefin', '--', 'check', `designs/${reef}`],
    '',
    `${root}/data`,
  );
  expect(code).toBe(0);
  expect(output).toMatch(/^Reef tank/);
});

describe.each(Object.entries(demoTexts))('%s', (_, text) => {
  test.each(['metric', 'us'])('reads well in the %s view', async (units) => {
    const { output, errors } = await answer(['check', '-', '--units', units], text);
    expect(errors).toBe('');
    const told = unwrapped(output);
    expect(told.endsWith(`${caution} `)).toBe(true);
    // Nothing a person should not have to read.
    expect(output).not.toMatch(/\b(safe|approved|compliant)\b/i);
    expect(output).not.toMatch(/undefined|NaN|Infinity|null|\[object/);
    // No more than three digits: nothing here is known better.
    expect(output).not.toMatch(/[1-9]\d+\.\d{2}|[1-9]\.\d{3}/);
    expect(told).not.toMatch(/\.\.|\. \.| ,|,,|:\.|\?\./);
    // No sentence twice in a row.
    for (const [, first, second] of told.matchAll(/([A-Z][^.]{30,}\.) ([A-Z][^.]{30,}\.)/g))
      expect(first).not.toBe(second);
    // Lines of a terminal; tables may be a little wider than text.
    expect(Math.max(...output.split('\n').map((line) => line.length))).toBeLessThanOrEqual(104);
    // Labels in the middle of a sentence are written small.
    const sentence = told.split(' values are assumed')[0]!;
    expect(sentence).not.toMatch(/settle most is [A-Z]/);
    // Gauge and absolute pressures are told apart, with the air pressure between them.
    const gauge = units === 'us' ? 'psig' : 'bar gauge';
    expect(output).toMatch(/pressure, absolute .*(bar abs|psia)/);
    expect(output).toMatch(new RegExp(`pressure, gauge .*${gauge}`));
    expect(output).toMatch(/air pressure of the place .*(bar abs|psia)/);
    if (units === 'us') expect(output).not.toMatch(/\d (°C|K|m³\/h|bar|kg|mm|cm|kPa)\b/);
    else expect(output).not.toMatch(/\d (°F|BTU|ft|psi|lb|oz|gal)\b/);
  });

  test('absolute and gauge pressure differ by the air pressure', async () => {
    const { output } = await answer(['check', '-'], text);
    const likely = (row: string) =>
      [...output.matchAll(new RegExp(`${row} +(?:about )?(-?[\\d.]+) bar`, 'g'))].map((match) => Number(match[1]));
    const [air] = likely('air pressure of the place');
    const absolute = likely('pressure, absolute');
    const gauge = likely('pressure, gauge');
    expect(absolute.length).toBe(2);
    absolute.forEach((value, index) => {
      expect(Math.abs(value - gauge[index]! - air!)).toBeLessThan(0.11);
    });
  });
});

describe('a design that must not be built', () => {
  test('opens with the reason and shows the capacity for study', async () => {
    const { code, output } = await answer(['check', '-'], demoTexts[propane]);
    expect(code).toBe(1);
    expect(output).toMatch(/^Propane .*\nDO NOT BUILD THIS\nR290 burns, and this equipment was not made for it/);
    expect(unwrapped(output)).toMatch(/to stop\. For study only: in the coldest spell/);
    expect(output).toMatch(/^Not for this machine, for study only\. The machine/m);
    expect(output).toMatch(/^ {2}this loop \(not for this machine, for study only\)$/m);
  });

  test('tells no figure of the charge, to people or programs, and keeps the concentration', async () => {
    const people = await answer(['check', '-'], demoTexts[propane]);
    expect(people.output).not.toMatch(/90 g|130 g|charge of \d/);
    expect(unwrapped(people.output)).toMatch(/The whole charge of R290 in 180 L makes up to 720 g\/m³/);
    const { output } = await answer(['check', '-', '--json'], demoTexts[propane]);
    expect(output).not.toMatch(/"charge(Low|High)"/);
    const { cautions } = JSON.parse(output) as Assessment;
    const leak = cautions.find(({ code }) => code === 'leakFlammableInEnclosure');
    expect(leak?.facts.concentration).toBeDefined();
  });

  test('an assumed charge is withheld too', async () => {
    const text = changedDesign(demoTexts[propane]!, { 'machine.charge': undefined });
    const people = await answer(['check', '-'], text);
    expect(people.output).toMatch(/machine\.charge +withheld/);
    const { assumptions } = JSON.parse((await answer(['check', '-', '--json'], text)).output) as Assessment;
    expect(assumptions.find(({ path }) => path === 'machine.charge')?.value).toBe('withheld');
  });

  test('a charge that stands in no way is a band', async () => {
    const text = changedDesign(demoTexts[reef]!, { 'machine.charge': undefined });
    const { output } = await answer(['check', '-'], text);
    expect(output).toMatch(/machine\.charge +about \d+ g \(\d+ to \d+\)/);
  });
});

describe('a machine without a solution', () => {
  // Loop water that cools by up to 4 K does not fit between refrigerant and tank 2 K apart.
  const impossible = changedDesign(demoTexts[reef]!, { 'exchangers.condenserApproach': '1 K' });

  test('is answered with exit code 3 and one sentence in the view', async () => {
    const { code, output, errors } = await answer(['check', '-', '--units', 'us'], impossible);
    expect({ code, output }).toEqual({ code: 3, output: '' });
    expect(errors).toMatch(/^standard input has no solution: .*°F/);
    expect(errors).not.toMatch(/\d K\b/);
  });

  test('is told to programs with code and facts', async () => {
    const { code, output } = await answer(['check', '-', '--json'], impossible);
    expect(code).toBe(3);
    expect(JSON.parse(output)).toMatchObject({ caution, error: { kind: 'noSolution', code: expect.any(String) } });
  });

  test('does not keep load from answering', async () => {
    const { code, output } = await answer(['load', '-', '--json'], impossible);
    expect(code).toBe(0);
    const load = JSON.parse(output) as TankLoadAnswer;
    const reference = JSON.parse((await answer(['load', '-', '--json'], demoTexts[reef])).output) as TankLoadAnswer;
    expect(load.tankLoad).toEqual(reference.tankLoad);
  });
});

describe('load', () => {
  test.each(Object.entries(demoTexts))('%s: the load of check, path by path', async (_, text) => {
    const load = JSON.parse((await answer(['load', '-', '--json'], text)).output) as TankLoadAnswer;
    const check = JSON.parse((await answer(['check', '-', '--json'], text)).output) as Assessment;
    expect(load.tankLoad.likely).toBe(check.tankLoad.likely);
    expect(load.tank.paths.map(({ path }) => path)).toEqual(check.tank.paths.map(({ path }) => path));
    for (const end of ['low', 'high'] as const) {
      expect(Math.abs(load.tankLoad[end] - check.tankLoad[end])).toBeLessThan(1e-9 * check.tankLoad.high);
    }
    expect(load.caution).toBe(caution);
    expect(load.influences.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 9);
    for (const { result, likely } of load.tank.paths.map(({ heat }) => heat)) {
      expect(load.workings.find((step) => step.result === result)?.value).toBeCloseTo(likely, 9);
    }
  });

  test('reads well and ends with the caution', async () => {
    const { code, output } = await answer(['load', '-', '--units', 'us'], demoTexts['frag-tank-cold-garage.json']);
    expect(code).toBe(0);
    expect(output).toMatch(/the tank needs about 1[45]\d\d BTU\/h/);
    expect(output).toMatch(/loses [\d.]+ gal\/day to [\d.]+ gal\/day/);
    expect(output).not.toMatch(/exchangers|machine|undefined/);
    expect(unwrapped(output).endsWith(`${caution} `)).toBe(true);
  });

  test('a tank that needs no heat is told so', async () => {
    const text = changedDesign(demoTexts['shrimp-rack-unknown-draughts.json']!, { 'tank.load.pumpPower': '900 W' });
    const { code, output } = await answer(['load', '-'], text);
    expect(code).toBe(0);
    expect(unwrapped(output)).toMatch(/needs no heat/);
  });

  test('a file that cannot be used is refused as by check', async () => {
    const { code, output, errors } = await answer(['load', '-'], '{');
    expect({ code, output }).toEqual({ code: 2, output: '' });
    expect(errors).toMatch(/cut off/);
  });
});

test('a design from a pipe is the same as from its file', async () => {
  const fromFile = await kettlefin(['check', `data/designs/${reef}`]);
  expect(await kettlefin(['check', '-'], demoTexts[reef])).toEqual(fromFile);
});

describe('--states', () => {
  test.each(Object.keys(demoTexts))(
    'tables: %s has the same exit code, and the report names the tables',
    async (file) => {
      const path = `${root}/data/designs/${file}`;
      const exact = await answer(['check', path]);
      const tables = await answer(['check', path, '--states', 'tables']);
      expect(tables.code).toBe(exact.code);
      expect(unwrapped(tables.output)).toContain('States of the refrigerant were read from tables');
      expect(exact.output).not.toContain('read from tables');
      const json = JSON.parse((await answer(['check', path, '--states=tables', '--json'])).output) as Assessment;
      expect(json.findings.map(({ code }) => code)).toContain('statesFromTables');
    },
  );

  test('exact is the default; another word is refused with both', async () => {
    const path = `${root}/data/designs/${reef}`;
    expect(await answer(['check', path, '--states', 'exact'])).toEqual(await answer(['check', path]));
    const refused = await answer(['check', path, '--states', 'guessed']);
    expect(refused.code).toBe(2);
    expect(refused.errors).toContain('exact or tables');
  });
});
