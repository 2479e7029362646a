// Sets an expression as mathematics is printed: fraction bars, raised powers, roots, | |, cases with their conditions,
// Greek letters, true minus signs and dots of multiplication; brackets only where the ranks of the operations need them.

import type { Expression } from '../../quantities/index.ts';
import { asOne, bracketed, holder, type MathNode, mi, mn, mo, mtext, upright } from './math-tree.ts';
import { setSymbol } from './symbol.ts';

/** Texts of numbers by symbol, as printed: "293.15", "-1.2e-5". */
export type NumberTexts = Readonly<Record<string, string>>;

/** The expression with every symbol that has a number replaced by it. */
export function withNumbers(expression: Expression, numbers: NumberTexts): Expression {
  const put = (inner: Expression) => withNumbers(inner, numbers);
  switch (expression.kind) {
    case 'number':
      return expression;
    case 'symbol':
      return Object.hasOwn(numbers, expression.name) ? numberFrom(numbers[expression.name]!) : expression;
    case 'negation':
      return { ...expression, of: put(expression.of) };
    case 'call':
      return { ...expression, of: expression.of.map(put) };
    case 'operation':
    case 'comparison':
      return { ...expression, left: put(expression.left), right: put(expression.right) };
    case 'choice': {
      const then = put(expression.then);
      return { ...expression, condition: put(expression.condition), then, otherwise: put(expression.otherwise) };
    }
  }
}

function numberFrom(text: string): Expression {
  if (text.startsWith('-')) return { kind: 'negation', of: numberFrom(text.slice(1)) };
  return { kind: 'number', text, value: Number(text) };
}

/** A symbol by its name in the formula record. */
export function symbolNode(name: string): MathNode {
  const { difference, letters, lowered } = setSymbol(name);
  const base = difference ? holder('mrow', upright('Δ'), mi(letters)) : mi(letters);
  return lowered === undefined ? base : holder('msub', base, loweredNode(lowered));
}

/** Where a number with an exponent stands, the power of ten is set as one: 1.2·10⁻⁵. */
export function numberRow(text: string): readonly MathNode[] {
  const negative = text.startsWith('-');
  const [digits = '', exponent] = (negative ? text.slice(1) : text).split(/e\+?/i);
  const sign = negative ? [minus] : [];
  if (exponent === undefined) return [...sign, mn(digits)];
  const power = holder('msup', mn('10'), exponentNumber(exponent));
  return [...sign, mn(digits), times, power];
}

/** The expression as a row of elements. */
export function setExpression(expression: Expression): readonly MathNode[] {
  return rowOf(expression, 'display');
}

/** In a raised part divisions stand in the line: x^(1/12). */
type Place = 'display' | 'raised';

const minus = mo('−', { form: 'prefix' });
const times = mo('⋅');
const applied = mo('\u2061');

const signs: Readonly<Record<string, string>> = {
  '+': '+',
  '-': '−',
  '<': '<',
  '<=': '≤',
  '>': '>',
  '>=': '≥',
  '==': '=',
  '!=': '≠',
};

/** Ranks of what an expression is when set: the looser part of a tighter one needs brackets. */
const ranks = { choice: 0, comparison: 1, sum: 2, product: 3, atom: 5 } as const;

function rankOf(expression: Expression, place: Place): number {
  switch (expression.kind) {
    case 'choice':
      return ranks.choice;
    case 'comparison':
      return ranks.comparison;
    case 'negation':
      return ranks.product;
    case 'number':
      return /e/i.test(expression.text) ? ranks.product : ranks.atom;
    case 'operation':
      if (expression.operator === '+' || expression.operator === '-') return ranks.sum;
      if (expression.operator === '*' || (expression.operator === '/' && place === 'raised')) return ranks.product;
      return ranks.atom;
    default:
      return ranks.atom;
  }
}

/** @param behind  whether a sign stands in front: two signs never meet, so a minus then stands in brackets */
function rowOf(expression: Expression, place: Place, behind = false): readonly MathNode[] {
  switch (expression.kind) {
    case 'number':
      return numberRow(expression.text);
    case 'symbol':
      return [symbolNode(expression.name)];
    case 'negation': {
      const row = [minus, ...rowWithin(expression.of, ranks.product, true, place)];
      return behind ? [bracketed(row)] : row;
    }
    case 'call':
      return callRow(expression.name, expression.of, place);
    case 'operation':
      return operationRow(expression, place, behind);
    case 'comparison':
      return [...rowOf(expression.left, place), mo(signs[expression.operator]!), ...rowOf(expression.right, place)];
    case 'choice':
      return [cases(expression, place)];
  }
}

/** A part inside a whole, in brackets where it is of lower rank. */
function rowWithin(part: Expression, least: number, behind: boolean, place: Place): readonly MathNode[] {
  return rankOf(part, place) < least ? [bracketed(rowOf(part, place))] : rowOf(part, place, behind);
}

function operationRow(
  { operator, left, right }: Extract<Expression, { kind: 'operation' }>,
  place: Place,
  behind: boolean,
): readonly MathNode[] {
  switch (operator) {
    case '+':
    case '-': {
      const rightLeast = operator === '-' ? ranks.product : ranks.sum;
      const sign = mo(signs[operator]!);
      return [...rowWithin(left, ranks.sum, behind, place), sign, ...rowWithin(right, rightLeast, true, place)];
    }
    case '*':
      return [...rowWithin(left, ranks.product, behind, place), times, ...rowWithin(right, ranks.product, true, place)];
    case '/':
      if (place === 'display') return [holder('mfrac', asOne(rowOf(left, place)), asOne(rowOf(right, place)))];
      return [...rowWithin(left, ranks.product, behind, place), mo('/'), ...rowWithin(right, ranks.atom, true, place)];
    case '^':
      return [powerNode(left, right, place)];
  }
}

function powerNode(base: Expression, exponent: Expression, place: Place): MathNode {
  const raised = asOne(rowOf(exponent, 'raised'));
  if (base.kind === 'symbol') {
    const { difference, letters, lowered } = setSymbol(base.name);
    if (lowered !== undefined && !difference) return holder('msubsup', mi(letters), loweredNode(lowered), raised);
    return holder('msup', symbolNode(base.name), raised);
  }
  const isPlain = base.kind === 'number' && rankOf(base, place) === ranks.atom;
  const row = rowOf(base, place);
  return holder('msup', isPlain ? asOne(row) : bracketed(row), raised);
}

const functionNames: Readonly<Record<string, string>> = { log: 'ln', exp: 'exp' };

function callRow(name: string, parts: readonly Expression[], place: Place): readonly MathNode[] {
  const [first] = parts;
  if (first === undefined) return [mi(name)];
  const inside = rowOf(first, place);
  switch (name) {
    case 'abs':
      return [
        holder(
          'mrow',
          mo('|', { form: 'prefix', fence: 'true' }),
          ...inside,
          mo('|', { form: 'postfix', fence: 'true' }),
        ),
      ];
    case 'sqrt':
      return [holder('msqrt', asOne(inside))];
    case 'cbrt':
      return [holder('mroot', asOne(inside), mn('3'))];
    case 'exp':
      if (isShort(first)) return [holder('msup', mi('e'), asOne(rowOf(first, 'raised')))];
      break;
  }
  const head = name === 'log10' ? holder('msub', mi('log'), mn('10')) : mi(functionNames[name] ?? name);
  const list = parts.flatMap((part, index) => [...(index > 0 ? [mo(',')] : []), ...rowOf(part, place)]);
  return [head, applied, bracketed(list)];
}

/** A power of e is raised where it is a symbol or a number, with a sign at most. */
function isShort(expression: Expression): boolean {
  const bare = expression.kind === 'negation' ? expression.of : expression;
  return bare.kind === 'symbol' || (bare.kind === 'number' && !/e/i.test(bare.text));
}

/** Every case of a choice with its condition; a choice in the last case goes on in the same list. */
function cases(choice: Extract<Expression, { kind: 'choice' }>, place: Place): MathNode {
  const rows: MathNode[] = [];
  let rest: Expression = choice;
  while (rest.kind === 'choice') {
    rows.push(caseRow(rowOf(rest.then, place), [mtext('if\u00a0'), ...rowOf(rest.condition, place)]));
    rest = rest.otherwise;
  }
  rows.push(caseRow(rowOf(rest, place), [mtext('otherwise')]));
  return {
    tag: 'mrow',
    role: 'cases',
    children: [
      mo('{', { form: 'prefix', fence: 'true', stretchy: 'true' }),
      { tag: 'mtable', attributes: { displaystyle: 'true', class: 'math-cases' }, children: rows },
    ],
  };
}

function caseRow(value: readonly MathNode[], condition: readonly MathNode[]): MathNode {
  return holder('mtr', holder('mtd', asOne(value)), holder('mtd', asOne(condition)));
}

function loweredNode(text: string): MathNode {
  return /^\d+$/.test(text) ? mn(text) : text.length === 1 ? mi(text) : mtext(text);
}

function exponentNumber(text: string): MathNode {
  return text.startsWith('-') ? holder('mrow', minus, mn(text.slice(1))) : mn(text);
}
