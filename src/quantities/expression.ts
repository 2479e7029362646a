// The plain algebra of formula records, read into a tree and evaluated: what the working prints with numbers put in, what
// a page may set with fraction bars and roots, and what a test can hold against a general-purpose mathematics library.
// Only what formula records use is understood (see formula.ts); anything else is an error that names the place.

import { InputError } from '../numerics/index.ts';
import type { FormulaValues } from './formula.ts';

export type ArithmeticOperator = '+' | '-' | '*' | '/' | '^';
export type ComparisonOperator = '<' | '<=' | '>' | '>=' | '==' | '!=';

export type Expression =
  | { readonly kind: 'number'; readonly text: string; readonly value: number }
  /** A symbol of the formula, or the constant pi. */
  | { readonly kind: 'symbol'; readonly name: string }
  | { readonly kind: 'negation'; readonly of: Expression }
  | {
      readonly kind: 'operation';
      readonly operator: ArithmeticOperator;
      readonly left: Expression;
      readonly right: Expression;
    }
  | { readonly kind: 'call'; readonly name: string; readonly of: readonly Expression[] }
  | {
      readonly kind: 'comparison';
      readonly operator: ComparisonOperator;
      readonly left: Expression;
      readonly right: Expression;
    }
  | {
      readonly kind: 'choice';
      readonly condition: Expression;
      readonly then: Expression;
      readonly otherwise: Expression;
    };

/** Every function an expression may call, with how many arguments it takes at least and at most. */
const functions: Readonly<Record<string, readonly [least: number, most: number, (...of: number[]) => number]>> = {
  abs: [1, 1, Math.abs],
  atan: [1, 1, Math.atan],
  cbrt: [1, 1, Math.cbrt],
  cos: [1, 1, Math.cos],
  exp: [1, 1, Math.exp],
  log: [1, 1, Math.log],
  log10: [1, 1, Math.log10],
  max: [1, Number.POSITIVE_INFINITY, Math.max],
  min: [1, Number.POSITIVE_INFINITY, Math.min],
  sin: [1, 1, Math.sin],
  sqrt: [1, 1, Math.sqrt],
  tanh: [1, 1, Math.tanh],
};

const constants: ReadonlyMap<string, number> = new Map([['pi', Math.PI]]);

/**
 * The tree of an expression.
 *     -a^2 is -(a^2); a^b^c is a^(b^c); a / b * c is (a / b) * c; comparison binds looser than +, a choice loosest
 * @param text  plain algebra: numbers, identifiers, + - * / ^, parentheses, comparison, `? :` and the functions above
 * @throws InputError 'badExpression' with path 'expression[7]', counted from 0, where the text stops making sense
 */
export function parseExpression(text: string): Expression {
  const reader = new Reader(text);
  const whole = readChoice(reader);
  if (reader.next.kind !== 'end') throw reader.unexpected('an operator or the end');
  return whole;
}

/**
 * The value of an expression.
 * @param expression  its tree
 * @param values      the number of every symbol in it
 * @returns           finite; a comparison gives 1 or 0. Only the chosen side of a choice is evaluated
 * @throws InputError 'missingSymbol' with path 'symbols.h_1' where a symbol has no number;
 *         'notFinite' where the numbers lead to none: a division by zero, the logarithm of a negative number
 * Worked value: "(h_2s - h_1) / (h_2 - h_1)" of h_1 = 391, h_2s = 425, h_2 = 442 → 0.66667.
 */
export function evaluateExpression(expression: Expression, values: FormulaValues): number {
  return evaluateWithChoices(expression, values, []);
}

/** The same, with the way it went: `choices` receives the outcome of every condition met, in order. */
export function evaluateWithChoices(expression: Expression, values: FormulaValues, choices: boolean[]): number {
  const value = numberOf(expression, values, choices);
  if (!Number.isFinite(value)) {
    throw new InputError('expression', value, 'numbers that lead to a finite result', 'notFinite');
  }
  return value;
}

/** Names of the symbols in an expression, each once, in the order they are first read; pi is none. */
export function symbolsIn(expression: Expression): readonly string[] {
  const names = new Set<string>();
  collectSymbols(expression, names);
  return [...names];
}

function collectSymbols(expression: Expression, names: Set<string>): void {
  if (expression.kind === 'symbol' && !constants.has(expression.name)) names.add(expression.name);
  for (const part of partsOf(expression)) collectSymbols(part, names);
}

function partsOf(expression: Expression): readonly Expression[] {
  switch (expression.kind) {
    case 'number':
    case 'symbol':
      return [];
    case 'negation':
      return [expression.of];
    case 'call':
      return expression.of;
    case 'operation':
    case 'comparison':
      return [expression.left, expression.right];
    case 'choice':
      return [expression.condition, expression.then, expression.otherwise];
  }
}

function numberOf(expression: Expression, values: FormulaValues, choices: boolean[]): number {
  switch (expression.kind) {
    case 'number':
      return expression.value;
    case 'symbol':
      return symbolValue(expression.name, values);
    case 'negation':
      return -numberOf(expression.of, values, choices);
    case 'call':
      return functions[expression.name]![2](...expression.of.map((part) => numberOf(part, values, choices)));
    case 'operation':
      return operate(
        expression.operator,
        numberOf(expression.left, values, choices),
        numberOf(expression.right, values, choices),
      );
    case 'comparison': {
      const [left, right] = [numberOf(expression.left, values, choices), numberOf(expression.right, values, choices)];
      return Number(compare(expression.operator, left, right));
    }
    case 'choice': {
      const chosen = numberOf(expression.condition, values, choices) !== 0;
      choices.push(chosen);
      return numberOf(chosen ? expression.then : expression.otherwise, values, choices);
    }
  }
}

function symbolValue(name: string, values: FormulaValues): number {
  const value = Object.hasOwn(values, name) ? values[name] : constants.get(name);
  if (value === undefined) throw new InputError(`symbols.${name}`, value, 'a number', 'missingSymbol');
  return value;
}

function operate(operator: ArithmeticOperator, left: number, right: number): number {
  switch (operator) {
    case '+':
      return left + right;
    case '-':
      return left - right;
    case '*':
      return left * right;
    case '/':
      return left / right;
    case '^':
      return left ** right;
  }
}

function compare(operator: ComparisonOperator, left: number, right: number): boolean {
  switch (operator) {
    case '<':
      return left < right;
    case '<=':
      return left <= right;
    case '>':
      return left > right;
    case '>=':
      return left >= right;
    case '==':
      return left === right;
    case '!=':
      return left !== right;
  }
}

/** choice = comparison [ "?" choice ":" choice ] */
function readChoice(reader: Reader): Expression {
  const condition = readComparison(reader);
  if (!reader.take('?')) return condition;
  const then = readChoice(reader);
  reader.demand(':');
  return { kind: 'choice', condition, then, otherwise: readChoice(reader) };
}

const comparisonOperators: readonly ComparisonOperator[] = ['<', '<=', '>', '>=', '==', '!='];

/** comparison = sum [ ("<" | "<=" | …) sum ] */
function readComparison(reader: Reader): Expression {
  const left = readSum(reader);
  const operator = reader.takeOne(comparisonOperators);
  if (operator === undefined) return left;
  return { kind: 'comparison', operator, left, right: readSum(reader) };
}

/** sum = product { ("+" | "-") product } */
function readSum(reader: Reader): Expression {
  return readRow(reader, ['+', '-'], readProduct);
}

/** product = signed { ("*" | "/") signed } */
function readProduct(reader: Reader): Expression {
  return readRow(reader, ['*', '/'], readSigned);
}

/** Operations of one rank, taken from the left. */
function readRow(
  reader: Reader,
  operators: readonly ArithmeticOperator[],
  part: (reader: Reader) => Expression,
): Expression {
  let left = part(reader);
  for (let operator = reader.takeOne(operators); operator !== undefined; operator = reader.takeOne(operators)) {
    left = { kind: 'operation', operator, left, right: part(reader) };
  }
  return left;
}

/** signed = "-" signed | power */
function readSigned(reader: Reader): Expression {
  return reader.take('-') ? { kind: 'negation', of: readSigned(reader) } : readPower(reader);
}

/** power = atom [ "^" signed ] */
function readPower(reader: Reader): Expression {
  const base = readAtom(reader);
  if (!reader.take('^')) return base;
  return { kind: 'operation', operator: '^', left: base, right: readSigned(reader) };
}

/** atom = number | name | name "(" choice { "," choice } ")" | "(" choice ")" */
function readAtom(reader: Reader): Expression {
  const { kind, text, at } = reader.next;
  if (kind === 'number') {
    reader.advance();
    return { kind, text, value: Number(text) };
  }
  if (kind === 'name') {
    reader.advance();
    return reader.take('(') ? readCall(reader, text, at) : { kind: 'symbol', name: text };
  }
  if (!reader.take('(')) throw reader.unexpected('a number, a name or "("');
  const inside = readChoice(reader);
  reader.demand(')');
  return inside;
}

function readCall(reader: Reader, name: string, at: number): Expression {
  if (!Object.hasOwn(functions, name)) throw reader.wrong(at, name, `one of ${Object.keys(functions).join(', ')}`);
  const of = [readChoice(reader)];
  while (reader.take(',')) of.push(readChoice(reader));
  reader.demand(')');
  const [least, most] = functions[name]!;
  if (of.length < least || of.length > most) {
    throw reader.wrong(at, `${name} of ${of.length}`, `${name} of ${most === least ? least : `${least} or more`}`);
  }
  return { kind: 'call', name, of };
}

interface Token {
  readonly kind: 'number' | 'name' | 'sign' | 'end';
  readonly text: string;
  /** Place in the text, counted from 0. */
  readonly at: number;
}

const tokenPattern =
  /\s*(?:(\d+(?:\.\d*)?(?:[eE][+-]?\d+)?|\.\d+(?:[eE][+-]?\d+)?)|([A-Za-z_]\w*)|([<>=!]=|[-+*/^(),?:<>]))/y;

/** The text as tokens, one looked at in advance. */
class Reader {
  next: Token;
  private readonly text: string;
  private place = 0;

  constructor(text: string) {
    this.text = text;
    this.next = this.read();
  }

  advance(): void {
    this.next = this.read();
  }

  /** Goes on if the next token is that sign. */
  take(sign: string): boolean {
    if (this.next.kind !== 'sign' || this.next.text !== sign) return false;
    this.advance();
    return true;
  }

  takeOne<Sign extends string>(signs: readonly Sign[]): Sign | undefined {
    return signs.find((sign) => this.take(sign));
  }

  demand(sign: string): void {
    if (!this.take(sign)) throw this.unexpected(`"${sign}"`);
  }

  unexpected(expected: string): InputError {
    const { kind, text, at } = this.next;
    return this.wrong(at, kind === 'end' ? 'the end' : text, expected);
  }

  wrong(at: number, received: string, expected: string): InputError {
    return new InputError(`expression[${at}]`, received, expected, 'badExpression');
  }

  private read(): Token {
    tokenPattern.lastIndex = this.place;
    const match = tokenPattern.exec(this.text);
    if (match === null) return this.endOrStranger();
    const [all, number, name, sign] = match;
    const text = (number ?? name ?? sign)!;
    const at = this.place + all.length - text.length;
    this.place += all.length;
    return { kind: number !== undefined ? 'number' : name !== undefined ? 'name' : 'sign', text, at };
  }

  private endOrStranger(): Token {
    const at = this.place + this.text.slice(this.place).search(/\S|$/);
    if (at === this.text.length) return { kind: 'end', text: '', at };
    throw this.wrong(at, this.text[at]!, 'a number, a name or a sign of plain algebra');
  }
}
