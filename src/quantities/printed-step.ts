// One step of a working as it is printed: the formula, the numbers put in, the result. The printed text is complete:
// whoever evaluates the printed expression from the printed numbers finds the printed result, to its last digit.
// Formulas hold in SI, so the numbers stand in SI; beside each stands the same in the units of the view.

import { InputError, requireFinite } from '../numerics/index.ts';
import { type Expression, evaluateWithChoices, parseExpression } from './expression.ts';
import type { FormulaSymbol, FormulaText, FormulaValues, WorkingStep } from './formula.ts';
import { type QuantityName, quantityRecord, quantityRecords, type UnitView, viewUnit } from './records.ts';
import { sayQuantity } from './say.ts';

/** A number as printed. */
export interface PrintedNumber {
  /** Digits as printed, readable by a machine: "293.15", "-1.234e-5". */
  readonly text: string;
  /** SI unit of the formula; "1" for a pure number. */
  readonly unit: string;
  /** The same in the units of the view: "75.2 °F"; undefined where the view has no other unit for it. */
  readonly inView: string | undefined;
}

/** A number put in. */
export interface PrintedInput {
  readonly symbol: string;
  readonly meaning: string;
  readonly value: PrintedNumber;
  /** Design path or name of another step; undefined for a constant of the model. */
  readonly from: string | undefined;
}

export interface PrintedStep {
  /** Name of the result, as in the step. */
  readonly result: string;
  /** Id of the formula. */
  readonly formula: string;
  readonly title: string;
  readonly symbol: string;
  readonly meaning: string;
  readonly expression: string;
  readonly inputs: readonly PrintedInput[];
  readonly value: PrintedNumber;
  readonly source: string;
  readonly validity: string;
  readonly file: string;
}

/** Significant digits of a printed result. */
const resultDigits = 5;
/** Significant digits of a number put in: at least, and at most, where a double holds no more. */
const fewestDigits = 6;
const mostDigits = 17;

/**
 * A step as it is printed.
 * @param step     as it was computed
 * @param formula  the formula it names
 * @param view     which units stand beside those of SI
 * @returns        result with 5 significant digits; each number put in with as many as it takes (6 to 17) that the
 *                 expression, evaluated from the printed numbers, rounds to the result as printed
 * @throws InputError where the formula is not the step's, a symbol has no number, or (code 'brokenStep') the numbers put in
 *         do not lead to the step's value
 */
export function printedStep(step: WorkingStep, formula: FormulaText, view: UnitView): PrintedStep {
  if (formula.id !== step.formula) throw new InputError('formula', formula.id, step.formula);
  const { title, expression, result, symbols, source, validity, file } = formula;
  const tree = parseExpression(expression);
  // A choice between two numbers would pass over one that is none.
  for (const [symbol, number] of Object.entries(step.inputs)) requireFinite(`${step.result}.${symbol}`, number);
  const taken: boolean[] = [];
  const evaluated = evaluateWithChoices(tree, step.inputs, taken);
  requireHeld(step, tree, evaluated);
  const leading = (value: number) => printedInputs(tree, step.inputs, { text: printedResult(value), taken });
  const toItsValue = leading(step.value);
  // Where the step's own value cannot be met, the two differ by rounding alone; all digits lead to the other.
  const value = toItsValue === undefined ? evaluated : step.value;
  const texts = toItsValue ?? leading(evaluated)!;
  return {
    result: step.result,
    formula: formula.id,
    title,
    symbol: result.symbol,
    meaning: result.meaning,
    expression,
    inputs: Object.entries(symbols).map(([symbol, about]) => ({
      symbol,
      meaning: about.meaning,
      value: printedNumber(texts[symbol]!, step.inputs[symbol]!, about, view),
      from: step.from[symbol],
    })),
    value: printedNumber(printedResult(value), value, result, view),
    source,
    validity,
    file,
  };
}

/** A result as printed: 5 significant digits, trailing zeros kept, "3.9852e5" from 100,000 on and below 0.000001. */
export function printedResult(value: number): string {
  return value === 0 ? '0' : value.toPrecision(resultDigits).replace('e+', 'e');
}

function printedNumber(text: string, value: number, about: FormulaSymbol, view: UnitView): PrintedNumber {
  return { text, unit: about.unit, inView: inView(value, quantityOf(about), view) };
}

/** A step's value and what its formula gives of its numbers agree this closely, relative to the value: finer than printed. */
const agreement = 1e-6;

/**
 * A step must not be printed with a result that its numbers do not lead to. What is left of nearly equal numbers taken
 * from each other is rounding, and may differ as far as the last bits of the numbers put in move it.
 */
function requireHeld({ result, inputs, value }: WorkingStep, expression: Expression, evaluated: number): void {
  const gap = Math.abs(evaluated - value);
  if (gap <= agreement * Math.abs(value)) return;
  const moved = Object.entries(inputs).map(([name, number]) => {
    const nearby = valueOrNothing(expression, { ...inputs, [name]: number * (1 + roundingNoise) }, []);
    return nearby === undefined ? 0 : Math.abs(nearby - evaluated);
  });
  if (gap <= moved.reduce((sum, each) => sum + each, 0)) return;
  throw new InputError(result, value, `${evaluated}, which its numbers lead to`, 'brokenStep');
}

/** What rounding, or the end of an iteration, leaves in a number, relative to it. */
const roundingNoise = 1e-12;

/** What the printed numbers must lead to: the printed result, by the same side of every choice. */
interface Target {
  readonly text: string;
  readonly taken: readonly boolean[];
}

/** Each number with the fewest digits that still lead to the result; undefined where not even all digits do. */
function printedInputs(
  expression: Expression,
  inputs: FormulaValues,
  target: Target,
): Readonly<Record<string, string>> | undefined {
  const names = Object.keys(inputs);
  const digits = new Map<string, number>();
  const holds = () => leadsTo(target, expression, rounded(inputs, digits));
  let all = fewestDigits - 1;
  do {
    all++;
    for (const name of names) digits.set(name, all);
  } while (all < mostDigits && !holds());
  if (all === mostDigits && !holds()) return undefined;
  for (const name of names) shorten(name, digits, holds);
  return Object.fromEntries(names.map((name) => [name, digitsOf(inputs[name]!, digits.get(name)!)]));
}

/** Takes digits from one number as long as the result holds. */
function shorten(name: string, digits: Map<string, number>, holds: () => boolean): void {
  const needed = digits.get(name)!;
  for (let fewer = fewestDigits; fewer < needed; fewer++) {
    digits.set(name, fewer);
    if (holds()) return;
  }
  digits.set(name, needed);
}

function leadsTo({ text, taken }: Target, expression: Expression, values: FormulaValues): boolean {
  const choices: boolean[] = [];
  const value = valueOrNothing(expression, values, choices);
  return value !== undefined && printedResult(value) === text && String(choices) === String(taken);
}

/** Rounding may turn a small difference into a division by zero. */
function valueOrNothing(expression: Expression, values: FormulaValues, choices: boolean[]): number | undefined {
  try {
    return evaluateWithChoices(expression, values, choices);
  } catch (error) {
    if (error instanceof InputError && error.code === 'notFinite') return undefined;
    throw error;
  }
}

function rounded(inputs: FormulaValues, digits: ReadonlyMap<string, number>): FormulaValues {
  return Object.fromEntries(
    Object.entries(inputs).map(([name, value]) => [name, Number(digitsOf(value, digits.get(name)!))]),
  );
}

/** A number put in, without trailing zeros. */
function digitsOf(value: number, digits: number): string {
  const shortened = Number(value.toPrecision(digits));
  if (shortened === 0) return '0';
  const size = Math.abs(shortened);
  const text = size >= 1e9 || size < 1e-5 ? shortened.toExponential() : String(shortened);
  return text.replace('e+', 'e');
}

/** Units that one quantity alone is counted in. */
const quantityByUnit: ReadonlyMap<string, QuantityName> = new Map(
  Object.values(quantityRecords)
    .filter(({ unit }, _index, all) => unit !== '1' && all.filter((other) => other.unit === unit).length === 1)
    .map(({ unit, name }) => [unit, name]),
);

/** What a symbol is a number of; undefined where neither its record nor its unit tells. */
export function quantityOf(symbol: FormulaSymbol): QuantityName | undefined {
  return symbol.quantity ?? quantityByUnit.get(symbol.unit);
}

/** As many digits as a printed result; a temperature level to the hundredth. */
function inView(value: number, quantity: QuantityName | undefined, view: UnitView): string | undefined {
  if (quantity === undefined) return undefined;
  const record = quantityRecord(quantity);
  const { factor, shift } = viewUnit(record, view, value);
  if (factor === 1 && shift === 0) return undefined;
  return sayQuantity(value, quantity, view, record.family === 'temperature' ? 4 : resultDigits);
}
