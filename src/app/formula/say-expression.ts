// An expression in words, for those who hear it: "open bracket h 2 minus h 3 close bracket", "the square root of".

import type { Expression } from '../../quantities/index.ts';
import { symbolWords } from './symbol.ts';

const operators: Readonly<Record<string, string>> = {
  '+': 'plus',
  '-': 'minus',
  '*': 'times',
  '/': 'over',
  '^': 'to the power of',
  '<': 'is less than',
  '<=': 'is at most',
  '>': 'is greater than',
  '>=': 'is at least',
  '==': 'equals',
  '!=': 'is not',
};

const functions: Readonly<Record<string, string>> = {
  abs: 'the size of',
  atan: 'the arc tangent of',
  cbrt: 'the cube root of',
  exp: 'e to the power of',
  log: 'the natural logarithm of',
  log10: 'the logarithm to base 10 of',
  sqrt: 'the square root of',
  cos: 'the cosine of',
  sin: 'the sine of',
  max: 'the greatest of',
  min: 'the least of',
};

/** The whole expression in words; brackets are said wherever a part is more than one number or symbol. */
export function sayExpression(expression: Expression): string {
  switch (expression.kind) {
    case 'number':
      return numberWords(expression.text);
    case 'symbol':
      return symbolWords(expression.name);
    case 'negation':
      return `minus ${part(expression.of)}`;
    case 'operation':
      return operationWords(expression);
    case 'comparison':
      return `${sayExpression(expression.left)} ${operators[expression.operator]} ${sayExpression(expression.right)}`;
    case 'call':
      return callWords(expression.name, expression.of);
    case 'choice':
      return `${sayExpression(expression.then)} if ${sayExpression(expression.condition)}, otherwise ${sayExpression(expression.otherwise)}`;
  }
}

/** "-1.2e-5" → "minus 1.2 times 10 to the power of minus 5". */
export function numberWords(text: string): string {
  const [digits = '', exponent] = text.split(/e\+?/i);
  const said = digits.replace('-', 'minus ');
  return exponent === undefined ? said : `${said} times 10 to the power of ${exponent.replace('-', 'minus ')}`;
}

function operationWords({ operator, left, right }: Extract<Expression, { kind: 'operation' }>): string {
  if (operator === '^' && right.kind === 'number' && right.text === '2') return `${part(left)} squared`;
  if (operator === '^' && right.kind === 'number' && right.text === '3') return `${part(left)} cubed`;
  const isSum = operator === '+' || operator === '-';
  const said = (inner: Expression, isRight: boolean) =>
    (isSum && !(isRight && isSumLike(inner))) || isSameRun(operator, inner, isRight)
      ? sayExpression(inner)
      : part(inner);
  return `${said(left, false)} ${operators[operator]} ${said(right, true)}`;
}

/** A run of products is said without brackets, as it is read. */
function isSameRun(operator: string, inner: Expression, isRight: boolean): boolean {
  return operator === '*' && !isRight && inner.kind === 'operation' && inner.operator === '*';
}

function isSumLike(inner: Expression): boolean {
  return inner.kind === 'operation' && (inner.operator === '+' || inner.operator === '-');
}

function part(inner: Expression): string {
  const words = sayExpression(inner);
  return inner.kind === 'number' || inner.kind === 'symbol' ? words : `open bracket ${words} close bracket`;
}

function callWords(name: string, parts: readonly Expression[]): string {
  const words = functions[name] ?? `${name} of`;
  return `${words} ${parts.map(part).join(parts.length > 2 ? ', ' : ' and ')}`;
}
