// `kettlefin machine`, `settle` and `fit`: read in both views, their JSON, every way to write the two temperatures, what is refused
// and with which code.

import { describe, expect, test } from 'vitest';
import {
  assessMachinePoints,
  type FitAnswer,
  type MachinePoint,
  type MachineStudy,
  type SettleAnswer,
} from '../../src/assess/index.ts';
import { caution } from '../../src/cautions/index.ts';
import { main } from '../../src/cli/main.ts';
import { alone, fortkamp, kelvin, straightSet } from '../assess/studies/machine/machines.ts';
import { changedDesign, demoTexts } from '../designs.ts';
import { plain } from './process.ts';
import { collected } from './streams.ts';

const reef = demoTexts['reef-in-the-study.json']!;
const measured = alone(fortkamp);
const coefficients = alone({
  madeFor: 'R134a',
  coefficients: [straightSet('massFlow', 3.6, 0.16, 'kg/h'), straightSet('power', 120, 2, 'W')],
});
const unknown = alone({ appliance: 'householdRefrigerator' });

async function answer(args: readonly string[], input: string) {
  const { streams, output, errors } = collected(input);
  const code = await main(args, streams);
  return { code, output: plain(output()), errors: plain(errors()) };
}

async function said(input: string, ...args: readonly string[]): Promise<string> {
  const { code, output, errors } = await answer(args, input);
  expect({ code, errors }).toEqual({ code: 0, errors: '' });
  return output;
}

const unwrapped = (text: string) => text.replaceAll(/\s+/g, ' ');

function readsWell(output: string, units: string): void {
  expect(output).not.toMatch(/undefined|NaN|Infinity|null|\[object/);
  expect(output).not.toMatch(/\b(safe|approved|compliant)\b/i);
  expect(Math.max(...output.split('\n').map((line) => line.length))).toBeLessThanOrEqual(124);
  expect(output).not.toMatch(/\n\n\n/);
  expect(unwrapped(output).endsWith(`${caution} `)).toBe(true);
  if (units === 'us') expect(output).not.toMatch(/\d (°C|K|kg|g\/s|bar|kPa|kJ|cm³|m²)\b/);
  else expect(output).not.toMatch(/\d (°F|BTU|ft|psi|psia|lb|oz|gal|in³)\b/);
}

const files: Readonly<Record<string, string>> = { ...demoTexts, measured, coefficients, unknown };

describe.each(Object.entries(files))('%s', (name, text) => {
  const isAlone = !name.endsWith('.json');

  test.each(['metric', 'us'])('reads well in the %s view', async (units) => {
    const at = await said(text, 'machine', '-', '--at', '-10 °C; 45 °C', '--units', units);
    readsWell(at, units);
    for (const words of ['gas at the inlet', 'air around the shell', 'mains', 'capacity', 'discharge gas', 'Limits']) {
      expect(at).toContain(words);
    }
    readsWell(await said(text, 'fit', '-', '--units', units), units);
    const place = isAlone ? ['--source', '12 °C', '--water', '26 °C'] : [];
    readsWell(await said(text, 'settle', '-', ...place, '--units', units), units);
    if (isAlone) return;
    const study = await said(text, 'machine', '-', '--units', units);
    readsWell(study, units);
    for (const words of ['Built for', 'Condensing at', 'would likely trip', 'What would help', 'How many', 'Starts']) {
      expect(study).toContain(words);
    }
  });
});

describe('machine --at', () => {
  const point = async (at: string, ...more: readonly string[]): Promise<MachinePoint> =>
    JSON.parse(await said(measured, 'machine', '-', '--at', at, '--json', ...more));

  test('answers one point with ranges in SI', async () => {
    const told = await point('-20, 35');
    for (const name of [
      'capacity',
      'power',
      'massFlow',
      'current',
      'dischargeTemperature',
      'heat',
      'shellHeat',
    ] as const) {
      const { low, likely, high } = told[name];
      expect(low).toBeLessThanOrEqual(likely);
      expect(likely).toBeLessThanOrEqual(high);
    }
    expect(told.capacity.unit).toBe('W');
    expect(told.massFlow.unit).toBe('kg/s');
    expect(told.dischargeTemperature.unit).toBe('K');
    expect(told.at).toMatchObject({ refrigerant: 'R600a' });
    expect(told.at.evaporating).toBeCloseTo(253.15, 9);
    expect(told.limits.length).toBeGreaterThan(4);
    expect(told.residuals).toHaveLength(8);
    expect(told.caution).toBe(caution);
  });

  test.each(['-20,35', '-20, 35', '−20; 35', '-20 °C, 35 °C', '−20 °C; 35 °C', '-4 °F, 95 °F', '-4 F; 95 F', '-20/35'])(
    '"%s" is one and the same point',
    async (at) => {
      const told = await point(at);
      expect(told.at.evaporating).toBeCloseTo(253.15, 9);
      expect(told.at.condensing).toBeCloseTo(308.15, 9);
    },
  );

  test('the equals sign serves too', async () => {
    const told: MachinePoint = JSON.parse(await said(measured, 'machine', '-', '--at=-20,35', '--json'));
    expect(told.at.evaporating).toBeCloseTo(253.15, 9);
  });

  test('a bare number is taken in °C, and the answer says so', async () => {
    const bare = unwrapped(await said(measured, 'machine', '-', '--at', '-20, 35', '--superheat', '11.1'));
    expect(bare).toContain('Numbers without a unit are taken in °C and K: --at and --superheat.');
    const named = await said(measured, 'machine', '-', '--at', '-20 °C, 35 °C');
    expect(named).not.toContain('without a unit');
    expect(await point('-20, 35')).toMatchObject({ bareNumbers: ['--at'] });
  });

  test('several points are answered in the order asked', async () => {
    const args = ['machine', '-', '--at', '-20,35', '--at', '-10,45', '--json'];
    const { points } = JSON.parse(await said(measured, ...args)) as { points: readonly MachinePoint[] };
    expect(points.map(({ at }) => Math.round(at.condensing - 273.15))).toEqual([35, 45]);
    expect(await said(measured, ...args.slice(0, -1))).toMatch(/at −20 °C[\s\S]+at −10 °C/);
  });

  test('the basis may be asked', async () => {
    const { at } = await point(
      '-20, 35',
      '--return-gas',
      '50 °F',
      '--subcooling',
      '5 K',
      '--surroundings',
      '20 °C',
      '--frequency',
      '50 Hz',
      '--voltage',
      '220 V',
    );
    expect(at.returnGas).toMatchObject({ value: expect.closeTo(283.15, 9), from: 'asked' });
    expect(at.subcooling).toBeCloseTo(5, 9);
    expect(at.surroundings.value).toBeCloseTo(293.15, 9);
    expect([at.frequency.value, at.voltage.value]).toEqual([50, 220]);
  });

  test('coefficients are told beside the model', async () => {
    const told = unwrapped(await said(coefficients, 'machine', '-', '--at', '-23.3, 54.4', '--return-gas', '4.4 °C'));
    expect(told).toContain('What its coefficients say themselves');
    expect(told).toContain('1 g/s with gas at 32.2 °C, 50 Hz; carried to the gas and liquid here 1.083 g/s');
  });

  test('another fluid is told under a stop', async () => {
    const told = await said(measured, 'machine', '-', '--at', '-20, 35', '--refrigerant', 'R-134a');
    expect(told).toMatch(/^R134a, evaporating/);
    expect(told).toContain('[stop] Not for this machine');
  });

  test.each([
    [['--at', '-20'], '--at'],
    [['--at', '35, -20'], '--at'],
    [['--at', '-20 m, 35 m'], '--at'],
    [['--at', '-20, 35', '--superheat', '5 K', '--return-gas', '0 °C'], '--return-gas'],
    [['--at', '-20, 35', '--return-gas', '-30 °C'], '--return-gas'],
    [['--at', '-20, 35', '--liquid', '50 °C'], '--liquid'],
    [['--at', '-20, 35', '--frequency', '0 Hz'], '--frequency'],
    [['--at', '-20, 35', '--refrigerant', 'R999'], '--refrigerant'],
    [['--at', '-20, 35', '--superhaet', '5 K'], '--superhaet'],
    [['--superheat', '5 K'], '--superheat'],
    [[], '--at'],
  ])('%o is refused at %s', async (args, option) => {
    const { code, output, errors } = await answer(['machine', '-', ...args], measured);
    expect({ code, output }).toEqual({ code: 2, output: '' });
    expect(errors).toContain(option);
    const json = JSON.parse((await answer(['machine', '-', ...args, '--json'], measured)).output);
    expect(json.error.kind).toBe('unusable');
    expect(json.error.problems[0].message).toContain(option);
  });

  test('condensing above the critical point has no solution', async () => {
    const { code, errors } = await answer(['machine', '-', '--at', '-20, 140'], measured);
    expect(code).toBe(3);
    expect(errors).toContain('critical');
  });
});

describe('an impossible machine', () => {
  const rating = (more: object) => ({
    madeFor: 'R134a',
    displacement: '4 cm3',
    ratings: [
      { at: { kind: 'named', point: 'ashraeLow' }, capacity: '120 W', power: '115 W', frequency: '50 Hz', ...more },
    ],
  });

  test.each([
    [{ capacity: '250 W' }, 'moreThanSwept', /ratings\.0\.capacity.*4 cm³.*Possible is at most \d+ W/],
    [{ power: '15 W' }, 'belowIsentropic', /ratings\.0\.power.*Possible is at least/],
  ])('%o is refused with what would be possible', async (more, code, words) => {
    for (const command of [
      ['machine', '-', '--at', '-20, 45'],
      ['settle', '-', '--source', '10', '--water', '26'],
      ['fit', '-'],
    ]) {
      const told = await answer(command, alone(rating(more)));
      expect(told.code).toBe(3);
      expect(unwrapped(told.errors)).toMatch(words);
      const json = JSON.parse((await answer([...command, '--json'], alone(rating(more)))).output);
      expect(json.error).toMatchObject({ kind: 'noSolution', code });
    }
    const design = changedDesign(reef, { 'machine.compressor': rating(more) });
    expect((await answer(['check', '-'], design)).code).toBe(3);
  });

  test('a table that cannot be read is refused by line and column', async () => {
    const table = { ...fortkamp.tables[0], table: 't_e °C;t_c °C;capacity W;power W\n-35;35;many;129' };
    const { code, errors } = await answer(['fit', '-'], alone({ ...fortkamp, tables: [table] }));
    expect(code).toBe(2);
    expect(unwrapped(errors)).toMatch(/machine\.compressor\.tables\.0\.table.*line 2, column 3/);
  });

  test.each([
    '{}',
    '{"formatVersion":2}',
    '{"formatVersion":2,"machine":{}}x',
    '{"formatVersion":2,"machine":{"colour":"red"}}',
    '',
  ])('a file that is none: %s', async (text) => {
    for (const command of [
      ['machine', '-', '--at', '-20, 35'],
      ['fit', '-'],
      ['settle', '-', '--source', '5', '--water', '25'],
    ]) {
      const { code, errors } = await answer(command, text);
      expect(code).toBe(2);
      expect(errors).toContain('cannot be used');
    }
  });
});

describe('machine without --at', () => {
  test('answers the study as JSON', async () => {
    const study: MachineStudy = JSON.parse(await said(reef, 'machine', '-', '--json'));
    expect(study.machineVersion).toBe(1);
    expect(study.marks.map(({ when }) => when)).toEqual(['coldestSpell', 'mildDay']);
    expect(study.caution).toBe(caution);
  });

  test('needs a tank', async () => {
    const { code, errors } = await answer(['machine', '-'], measured);
    expect(code).toBe(2);
    expect(errors).toContain('without a tank');
  });
});

describe('settle', () => {
  const settle = async (text: string, ...args: readonly string[]): Promise<SettleAnswer> =>
    JSON.parse(await said(text, 'settle', '-', '--json', ...args));

  test.each(Object.entries(demoTexts))('is where check has the loop: %s', async (_, text) => {
    const settled = await settle(text);
    const { output } = await answer(['check', '-', '--json'], text);
    const { operating, machine } = JSON.parse(output);
    for (const end of ['low', 'likely', 'high'] as const) {
      expect(settled.heat[end] / machine.heat[end]).toBeCloseTo(1, 9);
      expect(settled.power[end] / machine.power[end]).toBeCloseTo(1, 9);
      expect(settled.current[end] / machine.current[end]).toBeCloseTo(1, 9);
      for (const name of [
        'evaporatingTemperature',
        'condensingTemperature',
        'dischargeTemperature',
        'massFlow',
      ] as const) {
        expect(settled[name][end] / operating[name][end]).toBeCloseTo(1, 9);
      }
    }
    expect(settled.points).toEqual(operating.points);
  });

  test('a warmer source gives more heat; warmer water less', async () => {
    const heat = async (...args: readonly string[]) => (await settle(reef, ...args)).heat.likely;
    expect(await heat('--source', '15 °C')).toBeGreaterThan(await heat('--source', '5 °C'));
    expect(await heat('--water', '30 °C')).toBeLessThan(await heat('--water', '22 °C'));
  });

  test('the asked temperatures have no doubt of their own', async () => {
    const { source, water, evaporatingTemperature } = await settle(reef, '--source', '10', '--water', '77 °F');
    expect(source).toEqual({ value: 283.15, from: 'asked' });
    expect(water.value).toBeCloseTo(298.15, 9);
    // The approach alone, 8 to 11 K, is left.
    expect(evaporatingTemperature.high - evaporatingTemperature.low).toBeCloseTo(3, 6);
  });

  test('a machine alone needs source and water', async () => {
    for (const args of [[], ['--source', '5'], ['--water', '25']]) {
      const { code, errors } = await answer(['settle', '-', ...args], measured);
      expect(code).toBe(2);
      expect(errors).toContain(args[0] === '--source' ? '--water' : '--source');
    }
    expect((await settle(measured, '--source', '5', '--water', '25')).designName).toBeNull();
  });

  test('no lift has no solution', async () => {
    const { code, errors } = await answer(['settle', '-', '--source', '60', '--water', '20'], measured);
    expect(code).toBe(3);
    expect(errors.length).toBeGreaterThan(20);
  });
});

describe('fit', () => {
  /** Sixteen points of a made-up machine, as the model has it. */
  const rows = modelledRows();
  const tabled = (points: readonly (readonly number[])[]) =>
    alone({
      madeFor: 'R134a',
      tables: [
        {
          table: [
            'te °C\ttc °C\tcapacity W\tpower W',
            ...points.map((row) => row.map((value) => value.toFixed(2)).join('\t')),
          ].join('\n'),
          basis: fortkamp.tables[0].basis,
          frequency: '50 Hz',
        },
      ],
    });
  const fitOf = async (text: string): Promise<FitAnswer> => JSON.parse(await said(text, 'fit', '-', '--json'));

  test('ten coefficients meet points that lie on a polynomial', async () => {
    const { coefficients: found } = await fitOf(tabled(rows));
    expect(found.map(({ of }) => of)).toEqual(['capacity', 'power']);
    for (const each of found) {
      if (!each.ok) throw new Error(each.error.message);
      expect(each.residuals).toHaveLength(16);
      expect(Math.max(...each.residuals.map(({ deviation }) => Math.abs(deviation)))).toBeLessThan(5e-3);
    }
  });

  test('a wrong point is named', async () => {
    const wrong = rows.map((row, index) => (index === 6 ? [row[0], row[1], 1.6 * row[2], row[3]] : row));
    const { coefficients: found, findings } = await fitOf(tabled(wrong));
    const [capacity] = found;
    if (capacity?.ok !== true) throw new Error('no coefficients');
    expect(capacity.residuals.filter(({ disagrees }) => disagrees).map(({ label }) => label)).toEqual([
      'Table, line 8',
    ]);
    expect(findings.map(({ code }) => code)).toContain('machineValueDisagrees');
    expect(unwrapped(await said(tabled(wrong), 'fit', '-'))).toMatch(
      /Table, line 8 does not fit the other points: .* the others have/,
    );
  });

  test('too few points get none, and the reason', async () => {
    const { coefficients: found, residuals, numbers } = await fitOf(measured);
    expect(found.map((each) => each.ok)).toEqual([false, false]);
    expect(residuals).toHaveLength(8);
    expect(numbers).toHaveLength(14);
    for (const { before, after } of numbers) {
      expect([before.low, before.high, after.low, after.likely, after.high].every(Number.isFinite)).toBe(true);
    }
  });

  test('a machine nobody has measured has no residuals', async () => {
    const { residuals, coefficients: found } = await fitOf(unknown);
    expect([residuals, found]).toEqual([[], []]);
    expect(unwrapped(await said(unknown, 'fit', '-'))).toContain('Nothing was printed or measured of it');
  });
});

function modelledRows(): readonly (readonly [number, number, number, number])[] {
  const rated = alone({
    madeFor: 'R134a',
    displacement: '6.5 cm3',
    ratings: [{ at: { kind: 'named', point: 'ashraeLow' }, capacity: '150 W', power: '115 W', frequency: '50 Hz' }],
  });
  const levels = [-30, -22, -14, -6].flatMap((evaporating) =>
    [34, 42, 50, 58].map((condensing) => ({ evaporating, condensing })),
  );
  const outcome = assessMachinePoints(rated, {
    at: levels.map(({ evaporating, condensing }) => ({
      evaporating: kelvin(evaporating),
      condensing: kelvin(condensing),
    })),
    basis: {},
  });
  if (!outcome.ok) throw new Error(JSON.stringify(outcome));
  return outcome.points.map((point, index) => {
    if ('error' in point) throw new Error(point.error.message);
    const { capacity, power } = point;
    const { evaporating, condensing } = levels[index]!;
    return [evaporating, condensing, capacity.likely, power.likely];
  });
}

test.each(['machine', 'settle', 'fit'])('%s says how it is called', async (name) => {
  const { code, output } = await answer([name, '--help'], '');
  expect(code).toBe(0);
  expect(output).toContain(`kettlefin ${name} FILE`);
  expect(output).toContain('Exit codes');
});

test('what to know of a file that is accepted stands on the error stream', async () => {
  const old = JSON.stringify({
    formatVersion: 1,
    machine: {
      refrigerant: 'R134a',
      compressor: {
        kind: 'rating',
        madeFor: 'R134a',
        ratingPoint: 'ashraeLow',
        capacity: '150 W',
        power: '115 W',
        fillingFactor: '0.8',
      },
    },
  });
  const { code, output, errors } = await answer(['machine', '-', '--at', '-23.3, 54.4', '--json'], old);
  expect(code).toBe(0);
  expect(errors).toMatch(/^Note: The design was of format version 1\./);
  expect(errors).toContain('machine.compressor.fillingFactor: "0.8" was left out');
  const { capacity, power } = JSON.parse(output) as MachinePoint;
  expect(Math.abs(capacity.likely / 150 - 1)).toBeLessThan(0.02);
  expect(Math.abs(power.likely / 115 - 1)).toBeLessThan(0.02);
});
