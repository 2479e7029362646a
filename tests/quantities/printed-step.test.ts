// A printed step leads to its own result: what is printed, evaluated by mathjs, gives the printed digits. Here on steps made
// to be hard: differences of nearly equal numbers, zero, very large and small numbers, choices at their edge.

import { all, create } from 'mathjs';
import { describe, expect, test } from 'vitest';
import { InputError } from '../../src/numerics/index.ts';
import {
  type FormulaText,
  numbersPutIn,
  type PrintedStep,
  printedStep,
  type QuantityName,
  workingStep,
} from '../../src/quantities/index.ts';

const math = create(all!, {});

function formula(expression: string, symbols: readonly string[], unit = 'J/kg', quantity?: QuantityName): FormulaText {
  const about = quantity === undefined ? { meaning: 'number', unit } : { meaning: 'number', unit, quantity };
  return {
    id: 'test',
    title: 'Test',
    result: { symbol: 'y', ...about },
    expression,
    symbols: Object.fromEntries(symbols.map((symbol) => [symbol, about])),
    source: 'made for this test',
    validity: 'any',
    file: 'tests/quantities/printed-step.test.ts',
  };
}

/** Prints a step whose value is the expression's own, and holds the printed text against mathjs. */
function printed(expression: string, values: Readonly<Record<string, number>>): PrintedStep {
  const inputs = Object.fromEntries(Object.entries(values).map(([symbol, value]) => [symbol, [value] as const]));
  const value = Number(math.evaluate(expression, { ...values }));
  const step = workingStep('y', 'test', value, inputs);
  const text = printedStep(step, formula(expression, Object.keys(values)), 'metric');
  expect(fiveDigits(Number(math.evaluate(numbersPutIn(text))))).toBe(fiveDigits(Number(text.value.text)));
  expect(fiveDigits(value)).toBe(fiveDigits(Number(text.value.text)));
  return text;
}

const fiveDigits = (value: number) => (value === 0 ? '0' : value.toExponential(4));
const digitsOf = (text: string) => text.replace(/e.*/, '').replace('.', '').replace(/^-?0*/, '').length;
const inputText = (step: PrintedStep, symbol: string) =>
  step.inputs.find((input) => input.symbol === symbol)!.value.text;

describe('digits', () => {
  test('six are enough for a product; trailing zeros are left out', () => {
    const step = printed('a * b', { a: 1.23456789, b: 0.5 });
    expect(inputText(step, 'a')).toBe('1.23457');
    expect(inputText(step, 'b')).toBe('0.5');
    expect(step.value.text).toBe('0.61728');
  });

  test('a difference of nearly equal numbers takes as many as its result loses', () => {
    const step = printed('h_2 - h_1', { h_2: 398523.123456, h_1: 398522.012345 });
    expect(step.value.text).toBe('1.1111');
    expect(Math.max(...['h_1', 'h_2'].map((symbol) => digitsOf(inputText(step, symbol))))).toBeGreaterThanOrEqual(10);
  });

  test('only the numbers that need more get more', () => {
    const step = printed('q * (a - b)', { q: 2.345678912, a: 1000.00012345, b: 1000 });
    expect(inputText(step, 'q')).toBe('2.34568');
    expect(inputText(step, 'b')).toBe('1000');
    expect(digitsOf(inputText(step, 'a'))).toBeGreaterThan(8);
  });

  test('a result on the edge of rounding', () => {
    printed('a + b', { a: 1.2345, b: 0.00005 });
    printed('a * b', { a: 1.00005, b: 1 });
    printed('a / b', { a: 2.4690999999999, b: 2 });
  });

  test('results keep their trailing zeros, inputs their size', () => {
    expect(printed('a + b', { a: 7, b: 5 }).value.text).toBe('12.000');
    expect(printed('a + b', { a: 700000, b: 50000 }).value.text).toBe('7.5000e5');
    expect(inputText(printed('a + b', { a: 1013250, b: 0 }), 'a')).toBe('1013250');
  });

  test('very large and very small numbers', () => {
    const step = printed('R * a / b', { R: 3.1536e16, a: 4.2e-9, b: 6.02214e23 });
    expect(inputText(step, 'R')).toBe('3.1536e16');
    expect(inputText(step, 'a')).toBe('4.2e-9');
    expect(step.value.text).toBe('2.1994e-16');
  });
});

describe('zero', () => {
  test('as a number put in and as a result', () => {
    expect(printed('a * b', { a: 0, b: 3.3 }).value.text).toBe('0');
    expect(printed('a - b', { a: 273.15, b: 273.15 }).value.text).toBe('0');
  });

  test('stays zero where rounding of the formula leaves a trace', () => {
    const traced = formula('a * b - c', ['a', 'b', 'c']);
    expect(0.1 * 3 - 0.3).not.toBe(0);
    const step = printedStep(workingStep('y', 'test', 0, { a: [0.1], b: [3], c: [0.3] }), traced, 'metric');
    expect(Number(math.evaluate(numbersPutIn(step)))).toBe(Number(step.value.text) === 0 ? 0 : 0.1 * 3 - 0.3);
  });
});

describe('choices', () => {
  test('go the same way with the numbers as printed', () => {
    const above = printed('a > b ? a * c : c', { a: 1.0000001, b: 1, c: 2 });
    expect(Number(inputText(above, 'a'))).toBeGreaterThan(1);
    const below = printed('a >= b ? a * c : c', { a: 0.9999999, b: 1, c: 2 });
    expect(Number(inputText(below, 'a'))).toBeLessThan(1);
  });
});

describe('views', () => {
  const inView = (unit: string, quantity: QuantityName | undefined, value: number, view: 'metric' | 'us') => {
    const step = workingStep('y', 'test', value, { x: [value] });
    return printedStep(step, formula('x', ['x'], unit, quantity), view).value.inView?.replaceAll(
      /[\u00a0\u202f]/g,
      ' ',
    );
  };

  test('a level and a difference of temperature are not the same', () => {
    expect(inView('K', 'temperature', 297.15, 'us')).toBe('75.2 °F');
    expect(inView('K', 'temperature', 297.15, 'metric')).toBe('24 °C');
    expect(inView('K', 'temperatureDifference', 5, 'us')).toBe('9 °F');
    expect(inView('K', 'temperatureDifference', 5, 'metric')).toBeUndefined();
  });

  test('heat and electricity are not the same', () => {
    expect(inView('W', 'power', 100, 'us')).toBe('341.21 BTU/h');
    expect(inView('W', 'power', 100, 'metric')).toBeUndefined();
    expect(inView('W', 'electricPower', 100, 'us')).toBeUndefined();
  });

  test('a unit that one quantity alone has needs no telling', () => {
    expect(inView('J/kg', undefined, 398520, 'metric')).toBe('398.52 kJ/kg');
    expect(inView('1', undefined, 0.63, 'metric')).toBeUndefined();
    expect(inView('Pa', 'pressure', 101325, 'us')).toBe('14.696 psia');
  });
});

describe('what is not printed', () => {
  const code = (run: () => unknown) => {
    try {
      return run();
    } catch (error) {
      return error instanceof InputError ? error.code : error;
    }
  };

  test('a step whose numbers do not lead to its value', () => {
    const wrong = workingStep('y', 'test', 12.001, { a: [7], b: [5] });
    expect(code(() => printedStep(wrong, formula('a + b', ['a', 'b']), 'metric'))).toBe('brokenStep');
  });

  test('a step with the formula of another, or without one of its numbers', () => {
    const step = workingStep('y', 'other', 12, { a: [7], b: [5] });
    expect(code(() => printedStep(step, formula('a + b', ['a', 'b']), 'metric'))).toBe('badInput');
    const bare = workingStep('y', 'test', 12, { a: [7] });
    expect(code(() => printedStep(bare, formula('a + b', ['a', 'b']), 'metric'))).toBe('missingSymbol');
  });

  test('a step of a number that is none, though its formula passes over it', () => {
    for (const none of [Number.POSITIVE_INFINITY, Number.NaN]) {
      const step = { result: 'y', formula: 'test', value: 7, inputs: { a: 7, b: none }, from: {} };
      expect(code(() => printedStep(step, formula('min(a, b)', ['a', 'b']), 'metric'))).toBe('badInput');
    }
  });
});

test('numbers are put in for symbols alone', () => {
  const number = (symbol: string, text: string) => ({
    symbol,
    meaning: '',
    value: { text, unit: '1', inView: undefined },
    from: undefined,
  });
  const inputs = [number('e', '2'), number('x', '-1.5'), number('exp_1', '7e-6')];
  expect(numbersPutIn({ expression: '1e5 * e + exp(x) - exp_1 + 2.5e-3', inputs })).toBe(
    '1e5 * 2 + exp((-1.5)) - 7e-6 + 2.5e-3',
  );
});
