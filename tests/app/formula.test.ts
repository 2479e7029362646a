// Formulas as they are set: every formula of the engine, set with numbers put in and read back from what stands on the
// page, gives what its function gives; symbols, brackets, cases and words as print has them.

import { evaluate } from 'mathjs';
import { describe, expect, test } from 'vitest';
import { linesOf } from '../../src/app/formula/break-lines.ts';
import { isText, type MathNode, rowWidth } from '../../src/app/formula/math-tree.ts';
import { sayExpression } from '../../src/app/formula/say-expression.ts';
import { setExpression, withNumbers } from '../../src/app/formula/set-expression.ts';
import { setSymbol, symbolWords } from '../../src/app/formula/symbol.ts';
import { allFormulas } from '../../src/assess/index.ts';
import { parseExpression } from '../../src/quantities/index.ts';

const signs: Readonly<Record<string, string>> = { '⋅': '*', '−': '-', '\u2061': '', '≤': '<=', '≥': '>=', '=': '==' };
const names: Readonly<Record<string, string>> = { ln: 'log', π: 'pi' };

/** What is set, as plain algebra for a general-purpose mathematics library: every element reads as it is drawn. */
function plain(row: readonly MathNode[]): string {
  return row.map(plainOne).join(' ');
}

function plainOne(node: MathNode): string {
  if (isText(node)) return signs[node.text] ?? names[node.text] ?? node.text;
  const [first, second] = node.children;
  switch (node.tag) {
    case 'mfrac':
      return `((${plainOne(first!)})/(${plainOne(second!)}))`;
    case 'msup':
      if (isText(first!) && first.text === 'e') return `exp(${plainOne(second!)})`;
      // What stands under a power without brackets is one number, one name or one pair of brackets.
      if (!isText(first!)) expect(first!.role).toBe('bracketed');
      return `(${plainOne(first!)})^(${plainOne(second!)})`;
    case 'msub':
      expect(first).toMatchObject({ text: 'log' });
      return 'log10';
    case 'msqrt':
      return `sqrt(${plainOne(first!)})`;
    case 'mroot':
      return `cbrt(${plainOne(first!)})`;
    case 'mtable':
      return node.children.map((line) => plainCase(line)).join('');
    case 'mrow':
      if (isText(first!) && first.text === '|') return `abs(${plain(node.children.slice(1, -1))})`;
      if (node.role === 'cases') return `(${plain(node.children.slice(1))})`;
      return plain(node.children);
    default:
      throw new Error(`${node.tag} stands where no value is`);
  }
}

/** Value and condition: "x if a < b" goes on with what is otherwise. */
function plainCase(line: MathNode): string {
  if (isText(line)) throw new Error('a case is no text');
  const [value, condition] = line.children.map((cell) => (isText(cell) ? [] : cell.children));
  const said = plain(condition!);
  return said.startsWith('if') ? `(${said.replace(/^if\s*/, '')}) ? (${plain(value!)}) : ` : `(${plain(value!)})`;
}

function written(text: string): string {
  return plain(setExpression(parseExpression(text))).replaceAll(' ', '');
}

describe('every formula of the engine', () => {
  test.each(allFormulas.map((formula) => [formula.id, formula] as const))('%s', (_id, formula) => {
    const expression = parseExpression(formula.expression);
    expect(formula.examples.length).toBeGreaterThan(0);
    for (const values of formula.examples) {
      const texts = Object.fromEntries(Object.entries(values).map(([name, value]) => [name, String(value)]));
      const row = setExpression(withNumbers(expression, texts));
      const expected = formula.compute(values);
      const read = Number(evaluate(plain(row)));
      expect(Math.abs(read - expected), plain(row)).toBeLessThanOrEqual(1e-9 * Math.max(1e-300, Math.abs(expected)));
      const lines = linesOf(row, 30);
      expect(plainLines(lines), 'a line break changes nothing').toBe(plainLines([row]));
    }
    expect(sayExpression(expression)).not.toMatch(/[*/^_]|undefined/);
  });
});

/** All text in the order it is read, whatever lines it stands on. */
function plainLines(lines: readonly (readonly MathNode[])[]): string {
  const all = (node: MathNode): string => (isText(node) ? node.text : node.children.map(all).join(' '));
  return lines.map((line) => line.map(all).join(' ')).join(' ');
}

test.each([
  ['rho_1', 'ρ_1', 'rho 1'],
  ['dT_sh', 'ΔT_sh', 'delta T sh'],
  ['eta_s', 'η_s', 'eta s'],
  ['T_0', 'T_0', 'T 0'],
  ['h_2s', 'h_2s', 'h 2s'],
  ['dh_s', 'Δh_s', 'delta h s'],
  ['d', 'd', 'd'],
  ['difference_then', 'difference_then', 'difference then'],
  ['a1', 'a_1', 'a 1'],
  ['epsilon2', 'ε_2', 'epsilon 2'],
  ['Pr', 'Pr', 'Pr'],
  ['beta', 'β', 'beta'],
])('the symbol %s is set %s and said %s', (name, text, words) => {
  expect(inOneLine(setSymbol(name))).toBe(text);
  expect(symbolWords(name)).toBe(words);
});

test.each([
  ['a * (b + c)', 'a*(b+c)'],
  ['a * b + c', 'a*b+c'],
  ['a - (b - c)', 'a-(b-c)'],
  ['a + (b - c)', 'a+b-c'],
  ['(a + b) / c', '((a+b)/(c))'],
  ['a / b * c', '((a)/(b))*c'],
  ['-(a + b)', '-(a+b)'],
  ['a * -b', 'a*(-b)'],
  ['(a + b)^2', '((a+b))^(2)'],
  ['a^(1/3)', '(a)^(1/3)'],
  ['exp(-a)', 'exp(-a)'],
  ['abs(a - b)', 'abs(a-b)'],
  ['max(0, a - b)', 'max(0,a-b)'],
  ['a > 0 ? b : c', '((a>0)?(b):(c))'],
])('%s is set with brackets only where they are needed', (text, expected) => {
  expect(written(text)).toBe(expected);
});

test('a negative number put in stands in brackets behind a sign, and a power of ten is raised', () => {
  const put = withNumbers(parseExpression('a - b * c^2'), { a: '1', b: '-2.5e-6', c: '-3' });
  expect(plain(setExpression(put)).replaceAll(' ', '')).toBe('1-(-2.5*(10)^(-6))*((-3))^(2)');
});

test('words for those who hear a formula say where a bracket opens and closes', () => {
  expect(sayExpression(parseExpression('m * (h_2 - h_3)'))).toBe('m times open bracket h 2 minus h 3 close bracket');
  expect(sayExpression(parseExpression('a > 0 ? b : sqrt(c)'))).toBe(
    'b if a is greater than 0, otherwise the square root of c',
  );
  expect(sayExpression(parseExpression('T^4'))).toBe('T to the power of 4');
});

test('a long sum is set over lines that fit between the margins of paper', () => {
  const long = allFormulas.find(({ id }) => id === 'water.density')!;
  const lines = linesOf(setExpression(parseExpression(long.expression)), 44);
  expect(lines.length).toBeGreaterThan(2);
  for (const line of lines) expect(rowWidth(line)).toBeLessThan(46);
  expect(lines.slice(1).every(([first]) => first !== undefined && isText(first) && first.tag === 'mo')).toBe(true);
});

/** What is set, in one line: "ρ₁" is written "ρ_1", a difference "ΔT_sh". */
function inOneLine({ difference, letters, lowered }: ReturnType<typeof setSymbol>): string {
  return `${difference ? 'Δ' : ''}${letters}${lowered === undefined ? '' : `_${lowered}`}`;
}
