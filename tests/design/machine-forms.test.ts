// A machine by whatever is known of it: each part alone makes a design, and every contradiction is a problem at its path.

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  checkDesign,
  type DesignProblem,
  noticesOf,
  parseDesign,
  plainDesign,
  resolveDesign,
  sayNotice,
  sayProblem,
} from '../../src/design/index.ts';
import { documentOf, fullDesign, knownCompressor, type Loose, problemsOf, sizedDesign } from './examples.ts';

const at = 'machine.compressor';

function withCompressor(compressor: Loose): Loose {
  const design = sizedDesign();
  design.machine = { compressor };
  return design;
}

describe('each part of what may be known is enough, and so is nothing', () => {
  test('no machine at all but the part', () => {
    expect(parseDesign(JSON.stringify({ ...sizedDesign(), machine: {} }))).toMatchObject({ ok: true, notices: [] });
  });

  test.each(Object.entries(knownCompressor()))('%s alone', (name, value) => {
    expect(parseDesign(JSON.stringify(withCompressor({ [name]: value })))).toMatchObject({ ok: true });
  });

  test.each(Object.keys(knownCompressor()))('all but %s', (name) => {
    const { [name]: _, ...rest } = knownCompressor();
    expect(parseDesign(JSON.stringify(withCompressor(rest)))).toMatchObject({ ok: true });
  });
});

type Break = (compressor: Loose, design: Loose) => void;
type Fault = readonly [what: string, spoil: Break, path: string, code: DesignProblem['code'], words: RegExp];

const faults: readonly Fault[] = [
  ['two and a half machines', (_, d) => (d.machine.count = '2.5'), 'machine.count', 'notWhole', /whole number/],
  ['one or two machines', (_, d) => (d.machine.count = '1 to 2'), 'machine.count', 'notWhole', /whole number/],
  [
    'a locked-rotor current below the rated one',
    (c) => (c.nameplate.lockedRotorCurrent = '0.7 A'),
    `${at}.nameplate.lockedRotorCurrent`,
    'plateContradictsItself',
    /more than the rated current of 1.A/,
  ],
  [
    'more watts than volts times amps',
    (c) => (c.nameplate.power = '300 W'),
    `${at}.nameplate.power`,
    'plateContradictsItself',
    /230.W/,
  ],
  [
    'horsepower that is a number',
    (c) => (c.nameplate.horsepower = 0.2),
    `${at}.nameplate.horsepower`,
    'wrongType',
    /text/,
  ],
  [
    'a rating of nothing',
    (c) => (c.ratings[0] = { at: { kind: 'named', point: 'ashraeLow' } }),
    `${at}.ratings.0.capacity`,
    'missing',
    /capacity, an electric power or a current/,
  ],
  [
    'a rating point of no name',
    (c) => (c.ratings[0].at.point = 'ashraeLoww'),
    `${at}.ratings.0.at.point`,
    'unknownChoice',
    /ashraeLow/,
  ],
  [
    'a rating that evaporates warmer than it condenses',
    (c) => (c.ratings[1].at.condensing = '-12 °C'),
    `${at}.ratings.1.at.evaporating`,
    'notInOrder',
    /below the condensing temperature, −12.°C/,
  ],
  [
    'liquid warmer than the condensing temperature',
    (c) => (c.ratings[1].at.liquid = '50 °C'),
    `${at}.ratings.1.at.liquid`,
    'notInOrder',
    /at most the condensing temperature, 45.°C/,
  ],
  [
    'return gas colder than the evaporating temperature',
    (c) => (c.ratings[1].at.returnGas = '-15 °C'),
    `${at}.ratings.1.at.evaporating`,
    'notInOrder',
    /at most the return gas, −15.°C/,
  ],
  [
    'a rating without its liquid',
    (c) => delete c.ratings[1].at.liquid,
    `${at}.ratings.1.at.liquid`,
    'missing',
    /a fifth of the capacity/,
  ],
  [
    'nine coefficients',
    (c) => (c.coefficients[0].values = '1 2 3 4 5 6 7 8 9'),
    `${at}.coefficients.0.values`,
    'notTenNumbers',
    /ten numbers, C1 to C10/,
  ],
  [
    'a flow in watts',
    (c) => (c.coefficients[0].unit = 'W'),
    `${at}.coefficients.0.unit`,
    'wrongUnit',
    /one of kg\/h, g\/s, kg\/s, lb\/h/,
  ],
  [
    'coefficients without their frequency',
    (c) => delete c.coefficients[0].frequency,
    `${at}.coefficients.0.frequency`,
    'missing',
    /"50 Hz" or "60 Hz": flow and power go with the speed/,
  ],
  [
    'coefficients without the gas they hold for',
    (c) => delete c.coefficients[0].basis.suction,
    `${at}.coefficients.0.basis.suction`,
    'missing',
    /"kind".*colder return gas is denser/,
  ],
  [
    'coefficients of a capacity without the liquid',
    (c) => Object.assign(c.coefficients[0], { of: 'capacity', unit: 'W' }),
    `${at}.coefficients.0.basis.liquid`,
    'missing',
    /a fifth of the capacity/,
  ],
  [
    'ranges exchanged',
    (c) => Object.assign(c.coefficients[0], { evaporatingRange: '0 to 10 °C', condensingRange: '-20 to -5 °C' }),
    `${at}.coefficients.0.evaporatingRange`,
    'notInOrder',
    /begins below the end of the condensing range, −5.°C/,
  ],
  [
    'a range with its ends the wrong way round',
    (c) => (c.coefficients[0].evaporatingRange = '-10 to -35 °C'),
    `${at}.coefficients.0.evaporatingRange`,
    'lowAboveHigh',
    /lower end first/,
  ],
  [
    'one liquid temperature warmer than the coldest condensing',
    (c) => (c.coefficients[0].basis.liquid = { kind: 'temperature', temperature: '40 °C' }),
    `${at}.coefficients.0.basis.liquid.temperature`,
    'notInOrder',
    /let the range begin there/,
  ],
  [
    'return gas colder than the warmest evaporating',
    (c) => (c.coefficients[0].basis.suction.returnGas = '-20 °C'),
    `${at}.coefficients.0.basis.suction.returnGas`,
    'notInOrder',
    /upper end of the evaporating range, −10.°C/,
  ],
  [
    'a table without its frequency',
    (c) => delete c.tables[0].frequency,
    `${at}.tables.0.frequency`,
    'missing',
    /a sixth smaller/,
  ],
  [
    'a table of capacities without the liquid',
    (c) => delete c.tables[0].basis.liquid,
    `${at}.tables.0.basis.liquid`,
    'missing',
    /a fifth of the capacity/,
  ],
  [
    'a table without return gas',
    (c) => delete c.tables[0].basis,
    `${at}.tables.0.basis.suction`,
    'missing',
    /column of return gas or superheat/,
  ],
  [
    'a table without words',
    (c) => (c.tables[0].table = '-30\t45\t136'),
    `${at}.tables.0.table`,
    'tableUnreadable',
    /names the columns/,
  ],
  [
    'a condenser colder than the evaporator on the bench',
    (c) => Object.assign(c.bench[0], { evaporating: '-18 °C', condensing: '-19 °C' }),
    `${at}.bench.0.evaporating`,
    'notInOrder',
    /below the condensing temperature/,
  ],
  [
    'a discharge pipe colder than the suction pipe',
    (c) => (c.bench[0].discharge = '5 °C'),
    `${at}.bench.0.suction`,
    'notInOrder',
    /below the discharge pipe, 5.°C/,
  ],
  [
    'a power factor above 1',
    (c) => (c.bench[1].meter.powerFactor = '0.9 to 1.1'),
    `${at}.bench.1.meter.powerFactor`,
    'outOfRange',
    /0.2 to 1/,
  ],
  ['a year of the next age', (c) => (c.year = '19985'), `${at}.year`, 'outOfRange', /1930 to 2100/],
  ['the old kind', (c) => (c.kind = 'salvaged'), `${at}.kind`, 'unknownKey', /appliance, madeFor, year/],
];

test.each(faults)('%s is a problem at its path', (_, spoil, path, code, words) => {
  const design = fullDesign();
  spoil(design.machine.compressor, design);
  const problems = problemsOf(design);
  const found = problems.find((problem) => problem.path === path && problem.code === code);
  expect(found, JSON.stringify(problems)).toBeDefined();
  expect(found!.expected).toMatch(words);
  for (const problem of problems) expect(sayProblem(problem)).not.toMatch(/undefined|NaN|\[object|\.\./);
});

test('what is wrong in a table is told by its line and column, each place by itself', () => {
  const design = fullDesign();
  const table = 'Te [°C]\tTc [°C]\tP [W]\n-30\t45\t99.5\n-25\tforty\t114\n-20\t45\t-130';
  design.machine.compressor.tables[0].table = table;
  const problems = problemsOf(design);
  expect(problems).toMatchObject([
    { path: `${at}.tables.0.table`, code: 'tableUnreadable', line: 3, column: 2, received: 'forty' },
    { path: `${at}.tables.0.table`, code: 'tableUnreadable', line: 4, column: 3, received: '-130' },
  ]);
  expect(sayProblem(problems[0]!)).toMatch(/table: "forty" cannot be read \(line 3, column 2\)\. Expected a number/);
});

test('columns of the table take the place of what holds for all points', () => {
  const design = fullDesign();
  const table = 'Te [°C]\tTc [°C]\tSH [K]\tSC [K]\tQ [W]\n-30\t45\t11\t0\t140\n-20\t45\t11\t0\t240';
  design.machine.compressor.tables = [{ table, frequency: '60 Hz' }];
  expect(parseDesign(JSON.stringify(design))).toMatchObject({ ok: true });
  design.machine.compressor.tables[0].table = table.replace('\t11\t0\t240', '\t\t0\t240');
  expect(problemsOf(design)).toMatchObject([{ path: `${at}.tables.0.basis.suction`, code: 'missing' }]);
});

describe('what is unusual is told and accepted', () => {
  const told = (compressor: Loose) => noticesOf(documentOf(withCompressor(compressor)));

  test('a fluid that such appliances were hardly built for', () => {
    const notices = told({ appliance: 'tumbleDryer', madeFor: 'R600a' });
    expect(notices).toMatchObject([{ code: 'unusualFluid', path: `${at}.madeFor`, received: 'R600a' }]);
    expect(sayNotice(notices[0]!)).toMatch(/tumble dryer was usually built for R134a, R290.*The plate decides/);
    expect(told({ appliance: 'tumbleDryer', madeFor: 'R290' })).toEqual([]);
  });

  test('a fluid that was not sold in that year', () => {
    const notices = told({ appliance: 'householdRefrigerator', madeFor: 'R12', year: '2018 to 2020' });
    expect(notices).toMatchObject([{ code: 'unusualYear', received: 'R12' }]);
    expect(sayNotice(notices[0]!)).toContain('2018 to 2020');
    expect(told({ appliance: 'householdRefrigerator', madeFor: 'R12', year: '1980 to 1990' })).toEqual([]);
  });

  test('reading a file says the same', () => {
    const read = parseDesign(JSON.stringify(withCompressor({ appliance: 'tumbleDryer', madeFor: 'R600a' })));
    expect(read).toMatchObject({ ok: true, notices: [{ code: 'unusualFluid' }] });
  });
});

describe('anything at all in the place of the compressor, in either version (400 each, seed 2)', () => {
  const whole = knownCompressor();
  const names = [
    ...Object.keys(whole),
    'kind',
    'speed',
    'ratingPoint',
    'capacity',
    'power',
    'fillingFactor',
    '__proto__',
  ];
  const scrap = fc.oneof(fc.jsonValue({ maxDepth: 3 }), fc.constantFrom(...Object.values(whole)));
  const compressor = fc.oneof(
    fc.jsonValue(),
    fc.dictionary(fc.constantFrom(...names), scrap),
    fc
      .tuple(fc.dictionary(fc.constantFrom(...names), scrap), fc.constantFrom('salvaged', 'displacement', 'rating'))
      .map(([parts, kind]) => ({ ...parts, kind })),
    fc.tuple(fc.constantFrom(...Object.keys(whole)), scrap).map(([name, value]) => ({ ...whole, [name]: value })),
  );

  test.each([1, 2])('version %d: a resolved design, or problems with paths', (formatVersion) => {
    let accepted = 0;
    fc.assert(
      fc.property(compressor, (value) => {
        const result = checkDesign({ ...sizedDesign(), formatVersion, machine: { compressor: value } });
        if (!result.ok) {
          expect(result.problems.length).toBeGreaterThan(0);
          for (const problem of result.problems) expect(sayProblem(problem)).not.toMatch(/undefined|NaN|\[object/);
          return;
        }
        accepted += 1;
        const text = JSON.stringify(plainDesign(resolveDesign(result.document).design).machine);
        expect(text).not.toMatch(/null|NaN/);
      }),
      { seed: 2, numRuns: 400 },
    );
    expect(accepted).toBeGreaterThan(5);
  });
});
