// `compare` in the machine of a demo and in the textbook cycle: exit codes, what people read in both views, what programs
// get, the heading over what is not for this machine, and refusals that help.

import { describe, expect, test } from 'vitest';
import type { RefrigerantComparison } from '../../src/assess/index.ts';
import { caution } from '../../src/cautions/index.ts';
import { main } from '../../src/cli/main.ts';
import { demoTexts } from '../designs.ts';
import { kettlefin, plain } from './process.ts';
import { collected } from './streams.ts';

const reef = demoTexts['reef-in-the-study.json']!;
const shrimp = demoTexts['shrimp-rack-unknown-draughts.json']!;
const propane = demoTexts['propane-in-the-cabinet.json']!;
const textbook = [
  '--evaporating',
  '-10 °C',
  '--condensing',
  '45 °C',
  '--superheat',
  '5 K',
  '--subcooling',
  '5 K',
  '--efficiency',
  '0.6',
];

async function answer(args: readonly string[], input = '') {
  const { streams, output, errors } = collected(input);
  const code = await main(['compare', ...args], streams);
  return { code, output: plain(output()), errors: plain(errors()) };
}

const unwrapped = (text: string) => text.replaceAll(/\s+/g, ' ');

test('a design file, as a real process', async () => {
  const file = 'data/designs/reef-in-the-study.json';
  const { code, output, errors } = await kettlefin(['compare', file, '--fluids', 'R134a,R290', '--json']);
  expect({ code, errors }).toEqual({ code: 0, errors: '' });
  expect(JSON.parse(output).columns.map(({ fluid }: { fluid: string }) => fluid)).toEqual(['R134a', 'R290']);
});

describe('for people', () => {
  test.each(['metric', 'us'])(
    'law and safety first, the basis in words, the heading, the caution (%s)',
    async (units) => {
      const { code, output } = await answer(['-', '--fluids', 'R290, R134a,R600a', '--units', units], reef);
      expect(code).toBe(0);
      const told = unwrapped(output);
      const places = [
        'made for R134a alone',
        'legal status',
        'safety class',
        'usual oil',
        'Side by side',
        'COP of the compressor',
      ];
      const found = places.map((words) => told.indexOf(words));
      expect(found).toEqual([...found].sort((left, right) => left - right));
      expect(found[0]).toBeGreaterThan(-1);
      expect(output).toContain('NOT FOR THIS MACHINE, FOR STUDY ONLY');
      expect(told).toContain('Both temperatures are held');
      expect(told).toContain('Only R134a is for this machine, so nothing is ranked.');
      expect(told).toContain(units === 'us' ? 'psig' : 'bar gauge');
      expect(told).toContain(caution);
      expect(told).not.toMatch(/undefined|NaN/);
      // The heading stands over the first column that is not for this machine.
      const lines = output.split('\n');
      const heading = lines.findIndex((line) => line.endsWith('Not for this machine, for study only:'));
      expect(lines[heading]!.indexOf('Not for this machine')).toBe(lines[heading + 1]!.indexOf('R290'));
    },
  );

  test('each basis by its words', async () => {
    const heat = unwrapped((await answer(['-', '--fluids', 'R600a,R290', '--basis', 'same-heat'], shrimp)).output);
    expect(heat).toContain('displacement needed for it');
    expect(heat).toContain('a machine alike of another size, until each gives the heat that R600a');
    const parts = unwrapped((await answer(['-', '--fluids', 'R600a,R290', '--basis', 'same-parts'], shrimp)).output);
    expect(parts).toContain('COP of the system');
    expect(parts).toContain('The approaches are held too');
  });

  test('the textbook cycle without a file is labelled as what it is', async () => {
    const { code, output } = await answer(['--fluids', 'R134a,R600a,R290,R12,R22', ...textbook]);
    expect(code).toBe(0);
    expect(output).toContain('Textbook cycle, not electricity');
    expect(output).not.toMatch(/NOT FOR THIS MACHINE|electricity of the compressor/);
    // Five columns stand in two tables.
    expect(output.match(/heating COP of the textbook cycle/g)?.length).toBe(2);
  });

  test('with a stop finding no figure of the charge is printed', async () => {
    const { output } = await answer(['-', '--fluids', 'R134a,R290'], propane);
    expect(output).not.toMatch(/\b(90|110|130)[ -].{0,6}g\b/);
    expect(unwrapped(output)).toContain('withheld');
  });

  test('nor exported: not beside the finding that stops it, nor as that of the appliance', async () => {
    const design = JSON.parse(propane);
    design.machine.charge = '137.83 to 151.67 g';
    const given = await answer(['-', '--fluids', 'R134a,R290', '--json'], JSON.stringify(design));
    expect(given.output).toContain('leakFlammableInEnclosure');
    // The charge itself, not numbers that happen to begin with its digits.
    expect(given.output).not.toMatch(/\b0\.1(?:3783|5167|4475)\d*\b|chargeLow|chargeHigh/);
    const assumed = JSON.parse(reef);
    assumed.machine.refrigerant = 'R290';
    delete assumed.machine.charge;
    const { output } = await answer(['-', '--fluids', 'R134a,R290', '--json'], JSON.stringify(assumed));
    const { columns } = JSON.parse(output) as RefrigerantComparison;
    expect(columns.map(({ charge }) => charge.kind)).toEqual(['withheld', 'withheld']);
  });
});

describe('for programs', () => {
  test('stable keys, bands with units, the caution', async () => {
    const { output } = await answer(['-', '--fluids', 'R134a,R600a', '--basis', 'same-parts', '--json'], reef);
    const comparison = JSON.parse(output) as RefrigerantComparison;
    expect(Object.keys(comparison)).toEqual([
      'comparisonVersion',
      'caution',
      'basis',
      'designName',
      'designFluid',
      'madeFor',
      'conditions',
      'rows',
      'columns',
      'differences',
    ]);
    expect(comparison.caution).toBe(caution);
    expect(comparison.basis).toBe('sameParts');
    for (const column of comparison.columns) {
      expect(Object.keys(column)).toEqual([
        'fluid',
        'standing',
        'reason',
        'stops',
        'facts',
        'charge',
        'cycle',
        'workings',
      ]);
      if (!column.cycle.ok) throw new Error(column.cycle.error.message);
      expect(Object.keys(column.cycle.values)).toEqual(comparison.rows.map(({ name }) => name));
      expect(column.cycle.values.heat).toEqual({
        low: expect.any(Number),
        likely: expect.any(Number),
        high: expect.any(Number),
        unit: 'W',
        result: 'operating.heatDelivered',
      });
    }
  });

  test('temperatures that are given', async () => {
    const levels = ['--evaporating', '-5 °C', '--condensing', '104 F'];
    const { output } = await answer(['-', '--fluids', 'R134a,R600a', ...levels, '--json'], reef);
    const { conditions } = JSON.parse(output) as RefrigerantComparison;
    expect(conditions.evaporatingTemperature).toBeCloseTo(268.15, 9);
    expect(conditions.condensingTemperature).toBeCloseTo(313.15, 9);
  });

  test('code 3 where no fluid has a loop, 0 where one has; columns say why', async () => {
    const at = (condensing: string) =>
      answer(['-', '--fluids', 'R134a,R290', '--evaporating', '0 °C', '--condensing', condensing, '--json'], reef);
    const none = await at('120 °C');
    expect(none.code).toBe(3);
    expect(JSON.parse(none.output).columns[0].cycle.error.code).toBe('condensingAboveCritical');
    const one = await at('99 °C');
    expect(one.code).toBe(0);
    expect(JSON.parse(one.output).columns.map(({ cycle }: { cycle: { ok: boolean } }) => cycle.ok)).toEqual([
      true,
      false,
    ]);
  });
});

describe('refusals', () => {
  const levels = ['--evaporating', '0 °C', '--condensing', '40 °C'];
  test.each([
    [['-'], /--fluids is missing\. Expected two to five fluids/],
    [['-', '--fluids', 'R134a'], /at least two fluids/],
    [['-', '--fluids', 'R134a,R134a'], /each fluid once/],
    [['-', '--fluids', 'R134a,R600b'], /nearest is R600a/],
    [['-', '--fluids', 'R134a,R600a,R290,R12,R22,R134'], /R134/],
    [['-', '--fluids', 'R134a,R600a', '--basis', 'same-part'], /did you mean same-parts\?/],
    [['-', '--fluids', 'R134a,R600a', '--basis', 'same-parts', ...levels], /source, water and approaches decide them/],
    [['-', '--fluids', 'R134a,R600a', '--condensing', '40 °C'], /--evaporating is missing\. Expected both/],
    [['-', '--fluids', 'R134a,R600a', '--superheat', '5 K'], /the design has its own/],
    [['--fluids', 'R134a,R600a', ...levels], /--superheat is missing.*textbook/],
    [['--fluids', 'R134a,R600a', '--basis', 'same-heat', ...textbook], /a design FILE beside it/],
    [['--fluids', 'R134a,R600a', '--evaporating', '5', ...textbook.slice(2)], /--evaporating: "5"/],
    [
      ['-', '--fluids', 'R134a,R600a', '--basis', 'constructor'],
      /--basis: constructor is not accepted\. Expected same-dome/,
    ],
    [['-', '--fluids', 'R134a,\u001b[31mR600a'], /--fluids: \uFFFD\[31mR600a/],
    [
      ['-', '--fluids', 'R134a,R600a', '--evaporating', '50 °C', '--condensing', '40 °C'],
      /--condensing: "40 °C" is not accepted\. Expected above --evaporating, "50 °C": there is nothing to pump/,
    ],
    [['--fluids', 'R134a,R600a', ...textbook.slice(0, -1), '60'], /--efficiency: 6000 % is not accepted/],
    [['--fluids', 'R134a,R600a', ...textbook.slice(0, -1), '0'], /--efficiency: 0 % is not accepted/],
    [
      ['--fluids', 'R134a,R600a', '--superheat', '-5 K', ...textbook.slice(0, 4), ...textbook.slice(6)],
      /--superheat: −5 K/,
    ],
  ] as const)('%j', async (args, sentence) => {
    const { code, output, errors } = await answer(args, reef);
    expect(code).toBe(2);
    expect(output).toBe('');
    expect(unwrapped(errors)).toMatch(sentence);
  });

  test('with --json also as an object, for fluids and for the design', async () => {
    const fluid = await answer(['-', '--fluids', 'R134a,R600b', '--json'], reef);
    expect(fluid.code).toBe(2);
    expect(JSON.parse(fluid.output)).toMatchObject({
      caution,
      error: { kind: 'unusable', problems: [{ path: '--fluids', code: 'unknownRefrigerant' }] },
    });
    const design = await answer(['-', '--fluids', 'R134a,R600a', '--json'], '{"formatVersion":1}');
    expect(design.code).toBe(2);
    expect(JSON.parse(design.output)).toMatchObject({ caution, error: { kind: 'unusable' } });
  });
});
