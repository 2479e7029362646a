// Tables as pasted: what separates cells, headers and units in many spellings, decimal marks, and every refusal with its place.

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  mostTableRows,
  type PointTable,
  readPointTable,
  type TableProblem,
} from '../../../../src/parts/compressor/polynomial/table/point-table.ts';

const kelvin = (celsius: number) => celsius + 273.15;

function tableOf(text: string): PointTable {
  const read = readPointTable(text);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return read.table;
}

function problemsOf(text: string): readonly TableProblem[] {
  const read = readPointTable(text);
  if (read.ok) throw new Error(`was read: ${JSON.stringify(read.table)}`);
  expect(read.problems.length).toBeGreaterThan(0);
  return read.problems;
}

/** Quantities of the columns with their units. */
function headersOf(text: string): readonly string[] {
  return tableOf(text).columns.map(({ quantity, unit }) => `${quantity} ${unit}`);
}

describe('what separates cells', () => {
  const rows = [
    ['Te [°C]', 'Tc [°C]', 'Q [W]', 'P [W]'],
    ['-23.3', '54.4', '170', '150'],
    ['-10', '45', '300.5', '180'],
  ];
  test.each([
    ['tabs', '\t'],
    ['semicolons', ';'],
    ['commas', ','],
    ['commas and blanks', ', '],
    ['runs of blanks', '    '],
    ['single blanks', ' '],
  ])('%s', (_, separator) => {
    const table = tableOf(rows.map((row) => row.join(separator)).join('\n'));
    expect(table.rows).toHaveLength(2);
    const { line, values } = table.rows[1]!;
    expect(line).toBe(3);
    expect(values).toEqual({ evaporating: kelvin(-10), condensing: kelvin(45), capacity: 300.5, power: 180 });
  });

  test.each(['\n', '\r\n', '\r'])('line breaks %j, empty lines, a mark of byte order, blanks at the ends', (end) => {
    const text = `\uFEFF${end}${rows.map((row) => `  ${row.join(' ;')}  `).join(end + end)}${end}${end}`;
    const table = tableOf(text);
    expect(table.rows.map(({ line }) => line)).toEqual([4, 6]);
  });

  test('separators at the ends of lines', () => {
    expect(tableOf('Te [°C]\tTc [°C]\tQ [W]\t\t\n-10\t45\t300\t\t\n').rows).toHaveLength(1);
  });

  test('quotes hold separators and line breaks; doubled ones are one', () => {
    const text = '"Te\n[°C]","Tc, [°C]","capacity ""gross"" [W]"\n"-10,5",45,300\n';
    expect(problemsOf(text)[0]).toMatchObject({ code: 'unknownUnit', line: 1, column: 3 });
    const table = tableOf('"Te\n[°C]","Tc, [°C]","Q [W]"\n"-10,5",45,300\n');
    expect(table.rows[0]!.line).toBe(3);
    expect(table.rows[0]!.values.evaporating).toBeCloseTo(kelvin(-10.5), 12);
  });
});

describe('headers', () => {
  test.each([
    ['Te [°C]\tTc [°C]\tQ [W]', ['evaporating °C', 'condensing °C', 'capacity W']],
    ['evap. °F\tcond. °F\tcapacity BTU/h', ['evaporating °F', 'condensing °F', 'capacity BTU/h']],
    ['t0 (°C);tc (°C);Q0 (kW);P (kW)', ['evaporating °C', 'condensing °C', 'capacity kW', 'power kW']],
    ['t_e / °C; t_c / °C; m / kg/h; I / A', ['evaporating °C', 'condensing °C', 'massFlow kg/h', 'current A']],
    ['te in °C;tc in °C;P in W', ['evaporating °C', 'condensing °C', 'power W']],
    [
      'Evaporating temperature [°C]\tCondensing temperature [°C]\tMass flow rate [lb/h]\tPower input [W]',
      ['evaporating °C', 'condensing °C', 'massFlow lb/h', 'power W'],
    ],
    ['EVAP TEMP (F)\tCOND TEMP (F)\tCAPACITY (BTUH)', ['evaporating °F', 'condensing °F', 'capacity BTU/h']],
    ['SST °F, SDT °F, Capacity Btu/hr, Power W', ['evaporating °F', 'condensing °F', 'capacity BTU/h', 'power W']],
    [
      'Te °C Tc °C return gas °C superheat K liquid °C subcooling K Td °C m g/s',
      [
        'evaporating °C',
        'condensing °C',
        'returnGas °C',
        'superheat K',
        'liquid °C',
        'subcooling K',
        'dischargeTemperature °C',
        'massFlow g/s',
      ],
    ],
    ['saturated suction °C;saturated discharge °C;P W', ['evaporating °C', 'condensing °C', 'power W']],
    ['T_evap / °C;T_cond / °C;Input (W)', ['evaporating °C', 'condensing °C', 'power W']],
    ['SST (°F);SCT (°F);Input Watts', ['evaporating °F', 'condensing °F', 'power W']],
    ['Te K Tc K I mA', ['evaporating K', 'condensing K', 'current mA']],
    ['Evaporating (dew) [°C]; Condensing (dew) [°C]; Current [A]', ['evaporating °C', 'condensing °C', 'current A']],
  ] as const)('%s', (header, expected) => {
    const values = expected
      .map((_, index) => (index === 0 ? '260' : '300'))
      .join(header.includes('\t') ? '\t' : header.includes(';') ? ';' : header.includes(', ') ? ',' : ' ');
    expect(headersOf(`${header}\n${values}`)).toEqual(expected);
  });

  test('a line of units below the headers', () => {
    expect(headersOf('Te\tTc\tQ\tP\n°C\t°C\t[W]\t(kW)\n-10\t45\t300\t0.2')).toEqual([
      'evaporating °C',
      'condensing °C',
      'capacity W',
      'power kW',
    ]);
    expect(headersOf('Te Tc Q P\n°C °C W W\n-10 45 300 200')).toHaveLength(4);
  });

  test('units become base SI', () => {
    const { values } = tableOf('evap °F;cond °F;Q BTU/h;m lb/h;superheat °F;I mA\n-10;130;1000;12;20;950').rows[0]!;
    expect(values.evaporating).toBeCloseTo(249.8166667, 6);
    expect(values.condensing).toBeCloseTo(327.5944444, 6);
    expect(values.capacity).toBeCloseTo(293.0710702, 6);
    expect(values.massFlow).toBeCloseTo((12 * 0.45359237) / 3600, 12);
    expect(values.superheat).toBeCloseTo(11.1111111, 6);
    expect(values.current).toBeCloseTo(0.95, 12);
  });

  test('columns without use are passed over and listed', () => {
    const table = tableOf('No.\tTe [°C]\tTc [°C]\tQ [W]\tCOP\tremark\n1\t-10\t45\t300\t1.6\tsecond run');
    expect(table.passedOver).toEqual(['No.', 'COP', 'remark']);
    expect(table.columns.map(({ column }) => column)).toEqual([2, 3, 4]);
  });
});

describe('numbers', () => {
  const head = 'Te [°C];Tc [°C];Q [W];m [kg/h]\n';
  test('decimal commas, and thousandths in their company', () => {
    const { rows } = tableOf(`${head}-23,3;54,4;170,5;1,793`);
    expect(rows[0]!.values.capacity).toBe(170.5);
    expect(rows[0]!.values.massFlow).toBeCloseTo(1.793 / 3600, 15);
  });

  test('signs, exponents, and marks for nothing', () => {
    const { rows } = tableOf(`${head}−23.3;+54.4;1.7e2;-\n-10;45;;2.5\n-5;45;300;n/a`);
    expect(rows.map(({ values }) => [values.capacity, values.massFlow === undefined])).toEqual([
      [170, true],
      [undefined, false],
      [300, true],
    ]);
    expect(rows[0]!.values.evaporating).toBeCloseTo(kelvin(-23.3), 12);
  });

  test.each([
    ['-10;45;1,234;5', 'thousandsSeparator', 3],
    ['-10.5;45;1,234;5', 'thousandsSeparator', 3],
    ['-10;45;1.234,5;5', 'thousandsSeparator', 3],
    ["-10;45;1'234;5", 'thousandsSeparator', 3],
    ['-10;45;1 234;5', 'thousandsSeparator', 3],
    ['-10;45;12.345.678;5', 'thousandsSeparator', 3],
    ['-10,5;45;300.5;5', 'mixedDecimals', 3],
    ['-10;45;300 W;5', 'notANumber', 3],
    ['-10;45;1/2;5', 'notANumber', 3],
    ['-10;45;about 300;5', 'notANumber', 3],
    ['-10;45;1e999;5', 'notANumber', 3],
    ['-10;45;.;5', 'notANumber', 3],
    [';45;300;5', 'valueMissing', 1],
    ['-10;;300;5', 'valueMissing', 2],
    ['-10;45;0;5', 'notPositive', 3],
    ['-10;45;-300;5', 'notPositive', 3],
    ['-300;45;300;5', 'belowAbsoluteZero', 1],
    ['50;45;300;5', 'evaporatingAboveCondensing', 1],
    ['-10;45;300;5;7', 'tooManyCells', 5],
  ] as const)('%s: %s', (line, code, column) => {
    expect(problemsOf(`${head}-12;40;250;4\n${line}`)[0]).toMatchObject({ code, line: 3, column });
  });

  test('decimal commas between commas: the way out is named', () => {
    const [problem] = problemsOf('Te [°C],Tc [°C],Q [W]\n-10,5,45,300');
    expect(problem).toMatchObject({ code: 'tooManyCells', line: 2, column: 4 });
    expect(problem!.expected).toMatch(/semicolons or tabs/);
  });

  test('too few cells between blanks, where none can be empty', () => {
    expect(problemsOf('Te °C Tc °C Q W P W\n-10 45 300')[0]).toMatchObject({ code: 'tooFewCells', line: 2 });
  });
});

describe('refusals of the whole', () => {
  const line = '-10\t45\t300\n';
  test.each([
    ['', 'empty', 1, 1],
    ['  \n \t \n', 'empty', 1, 1],
    [line, 'noHeader', 1, 1],
    ['any words that are no table', 'noHeader', 1, 1],
    [`Te [°C]\tTc [°C]\tCapasity [W]\n${line}`, 'unknownColumn', 1, 3],
    // Saturated, or that of the gas: the name alone does not tell.
    [`suction temperature [°C]\tTc [°C]\tQ [W]\n${line}`, 'unknownColumn', 1, 1],
    [`Te [°C]\tTc [°C]\tTe [°F]\n${line}`, 'columnTwice', 1, 3],
    [`Te [°C]\tP [W]\tQ [W]\n${line}`, 'columnMissing', 1, 1],
    [`Te [°C]\tTc [°C]\treturn gas [°C]\n${line}`, 'columnMissing', 1, 1],
    [`Te\tTc [°C]\tQ [W]\n${line}`, 'unitMissing', 1, 1],
    [`Te [°C]\tTc [°C]\tQ [hp/h]\n${line}`, 'unknownUnit', 1, 3],
    [`Te [kg/h]\tTc [°C]\tQ [W]\n${line}`, 'unknownUnit', 1, 1],
    [`Te [°C]\tTc [°C]\tQ [W]\n°C\t°C\tkW\n${line}`, 'unitTwice', 2, 3],
    [`Te [°C]\tTc [°C]\tQ [W]\n`, 'noRows', 1, 1],
    [`Te [°C]\tTc [°C]\tQ [W]\n${line.repeat(mostTableRows + 1)}`, 'tooManyRows', mostTableRows + 2, 1],
    [`Te [°C]\tTc [°C]\t"Q [W]\n${line}`, 'unclosedQuote', 1, 1],
    [`Te [°C]\tTc [°C]\tQ [W]\n${line}${line}-5\t40\t"300\n${line}`, 'unclosedQuote', 4, 1],
    ['x'.repeat(70_000), 'tooLong', 1, 1],
  ] as const)('%j', (text, code, atLine, column) => {
    expect(problemsOf(text)[0]).toMatchObject({ code, line: atLine, column });
  });

  test('what headers are accepted is told, and what may have been meant', () => {
    expect(problemsOf(line)[0]!.expected).toMatch(/Te \[°C\].*evaporating.*mass flow/);
    expect(problemsOf(`Te [°C]\tTc [°C]\tcapasity [W]\n${line}`)[0]!.nearest).toBe('capacity');
  });

  test('all problems at once, up to twenty', () => {
    const problems = problemsOf(`Te [°C]\tTc [°C]\tQ [W]\n${'a\tb\tc\n'.repeat(50)}`);
    expect(problems).toHaveLength(20);
    expect(problems[4]).toMatchObject({ line: 3, column: 2 });
  });
});

describe('property: any text is answered', () => {
  function isAnswered(text: string): void {
    const read = readPointTable(text);
    if (!read.ok) {
      expect(read.problems.length).toBeGreaterThan(0);
      for (const { line, column, expected } of read.problems) {
        expect(line >= 1 && column >= 1 && expected !== '').toBe(true);
      }
      return;
    }
    for (const { values } of read.table.rows) {
      for (const value of Object.values(values)) expect(Number.isFinite(value)).toBe(true);
    }
  }

  test('random text (seed 21)', () => {
    fc.assert(fc.property(fc.string({ maxLength: 400, unit: 'binary' }), isAnswered), { seed: 21, numRuns: 1000 });
  });

  test('random pieces of tables (seed 22)', () => {
    const piece = fc.constantFrom(
      ...[
        'Te',
        'Tc',
        '[°C]',
        '°F',
        'Q',
        'W',
        'P [W]',
        'm kg/h',
        '\t',
        ';',
        ',',
        ' ',
        '\n',
        '\r\n',
        '"',
        '-10',
        '45',
        '300',
      ],
      ...['1,234', '1.5', '1,5', '-', 'n/a', 'COP', '(', ']', '−3', '1e3', '1e309', 'superheat', 'K', '\u0000', '°C'],
    );
    const text = fc.array(piece, { maxLength: 60 }).map((pieces) => pieces.join(''));
    fc.assert(fc.property(text, isAnswered), { seed: 22, numRuns: 3000 });
  });

  test('good tables are read whatever the form (seed 23)', () => {
    const row = fc.tuple(
      fc.integer({ min: -400, max: 50 }),
      fc.integer({ min: 250, max: 650 }),
      fc.integer({ min: 1, max: 9999 }),
    );
    const form = fc.record({
      separator: fc.constantFrom('\t', ';', '; ', ' ', '   '),
      mark: fc.constantFrom('.', ','),
      end: fc.constantFrom('\n', '\r\n', '\n\n'),
    });
    fc.assert(
      fc.property(fc.array(row, { minLength: 1, maxLength: 40 }), form, (rows, { separator, mark, end }) => {
        const said = (tenths: number) => (tenths / 10).toFixed(1).replace('.', mark);
        const lines = [['Te [°C]', 'Tc [°C]', 'Q [W]'], ...rows.map((numbers) => numbers.map(said))];
        const table = tableOf(lines.map((cells) => cells.join(separator)).join(end));
        expect(table.rows.map(({ values }) => Math.round(values.capacity! * 10))).toEqual(rows.map(([, , q]) => q));
      }),
      { seed: 23, numRuns: 300 },
    );
  });

  test.each([
    ['"', 59_999],
    ['.', 59_999],
    ['Te ', 19_000],
    ['a b ', 14_000],
    ['1,', 29_000],
    ['\n', 59_999],
    ['Te [°C]\tTc [°C]\tQ [W]\n'.concat('9'.repeat(59_000)), 1],
    ['Te [°C] Tc [°C] Q [W]\n'.concat('-1 4 5\n'.repeat(8000)), 1],
  ])('long texts of %j are answered', (piece, count) => {
    // A search that grows with the square of the length would take longer than a test may.
    isAnswered(piece.repeat(count));
  });
});
