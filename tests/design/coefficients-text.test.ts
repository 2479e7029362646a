// Ten coefficients as people paste them: what is read, and what is refused because it can be read in two ways.

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readCoefficients } from '../../src/design/checks/coefficients-text.ts';

const ten = [1200, 4.5, -0.067, 0.0012, 0, 3, -4e-5, 7, 8.25, -9];

describe('is read', () => {
  test.each([
    ['in a line', '1200 4.5 -0.067 0.0012 0 3 -4e-5 7 8.25 -9'],
    ['in a column', '1200\n4.5\n-0.067\n0.0012\n0\n3\n-4e-5\n7\n8.25\n-9\n'],
    ['as cells of a spreadsheet', '1200\t4.5\t-0.067\t0.0012\t0\t3\t-4E-05\t7\t8.25\t-9'],
    ['with semicolons', '1200; 4.5; -0.067; 0.0012; 0; 3; -4e-5; 7; 8.25; -9'],
    ['with commas between', '1200,4.5,-0.067,0.0012,0,3,-4e-5,7,8.25,-9'],
    ['with commas and blanks between', '1200, 4.5, -0.067, 0.0012, 0, 3, -4e-5, 7, 8.25, -9'],
    ['with decimal commas', '1200 4,5 -0,067 0,0012 0 3 -4e-5 7 8,25 -9'],
    ['with their names', 'C1 = 1200\nC2 4.5\nC3: -0.067\nC4 0.0012\nC5 0\nC6 3\nC7 -4e-5\nC8 7\nC9 8.25\nC10 -9'],
    ['with true minus signs', '1200 4.5 −0.067 0.0012 0 3 −4e-5 7 8.25 −9'],
  ])('%s', (_, text) => {
    expect(readCoefficients(text)).toEqual({ ok: true, numbers: ten });
  });
});

describe('is refused', () => {
  test.each([
    ['nine numbers', '1 2 3 4 5 6 7 8 9', 'notTenNumbers'],
    ['eleven numbers', '1 2 3 4 5 6 7 8 9 10 11', 'notTenNumbers'],
    ['ten zeros', '0 0 0 0 0 0 0 0 0 0', 'notTenNumbers'],
    ['a word', '1 2 3 4 5 6 7 8 9 ten', 'notANumber'],
    ['a number with its unit', '1 2 3 4 5 6 7 8 9 10W', 'notANumber'],
    ['commas that may be thousands', '1,200 2 3 4 5 6 7 8 9 10', 'ambiguousNumber'],
    ['points and decimal commas', '1.5 2,5 3 4 5 6 7 8 9 10', 'ambiguousNumber'],
    ['a number beyond all size', '1e400 2 3 4 5 6 7 8 9 10', 'notFinite'],
    ['nothing', ' ', 'notTenNumbers'],
  ])('%s', (_, text, code) => {
    const read = readCoefficients(text);
    expect(read).toMatchObject({ ok: false, problem: { code } });
    if (!read.ok) expect(read.problem.expected).not.toBe('');
  });
});

test('any ten numbers that are written are read again, any text is read or refused (1000 texts, seed 540)', () => {
  const number = fc.double({ noDefaultInfinity: true, noNaN: true, min: -1e12, max: 1e12 });
  const separator = fc.constantFrom(' ', '\n', '\t', '; ', ', ');
  fc.assert(
    fc.property(fc.array(number, { minLength: 10, maxLength: 10 }), separator, (numbers, between) => {
      fc.pre(numbers.some((each) => each !== 0));
      const read = readCoefficients(numbers.join(between));
      expect(read.ok && read.numbers.map((each) => each + 0)).toEqual(numbers.map((each) => each + 0));
    }),
    { seed: 540, numRuns: 500 },
  );
  fc.assert(
    fc.property(fc.string({ unit: fc.constantFrom(...'0123456789.,-eEC; \n\t=x') }), (text) => {
      const read = readCoefficients(text);
      if (read.ok) expect(read.numbers.every(Number.isFinite) && read.numbers.length === 10).toBe(true);
      else expect(read.problem.expected.length).toBeGreaterThan(3);
    }),
    { seed: 540, numRuns: 500 },
  );
});
