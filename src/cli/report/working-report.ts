// The working as a person reads it in a terminal: the results that can be asked for, the chain behind one of them step by
// step, and the hand-in of a textbook cycle. Formulas hold in SI, so the numbers put in stand in SI.

import { formulaById, type NamedResult } from '../../assess/index.ts';
import {
  numbersPutIn,
  type PrintedNumber,
  type PrintedStep,
  printedStep,
  sayBand,
  sayQuantity,
  type UnitView,
  type WorkingStep,
} from '../../quantities/index.ts';
import { printableLine } from './printable.ts';
import { columnAndText, columns, paragraph, section } from './text-table.ts';

/** What a chain begins with: where it stands, what it is, and what was given. */
export interface Beginning {
  readonly path: string;
  readonly label: string;
  /** The words of the file or the command line; or what is assumed. */
  readonly words: string;
  readonly isGiven: boolean;
}

const groupTitles = { tank: 'Tank', machine: 'Machine', year: 'Year', accounts: 'Accounts' } as const;

/** Names, words and values of results, by group. */
export function resultsReport(results: readonly NamedResult[], view: UnitView, currency: string): string {
  const groups = Object.keys(groupTitles) as (keyof typeof groupTitles)[];
  return groups
    .map((group) => {
      const rows = results.filter((result) => result.group === group);
      const table = rows.map((result) => [result.name, result.label, sayResult(result, view, currency)]);
      return section(groupTitles[group], columns(table));
    })
    .join('\n');
}

export function sayResult({ value, band, quantity }: NamedResult, view: UnitView, currency: string): string {
  const context = { currency };
  return band === undefined
    ? sayQuantity(value, quantity, view, undefined, context)
    : sayBand(band, quantity, view, context);
}

/** Each step as it is printed. @throws where a step names no formula, which the tests rule out */
export function printedSteps(steps: readonly WorkingStep[], view: UnitView): readonly PrintedStep[] {
  return steps.map((step) => printedStep(step, formulaById(step.formula)!, view));
}

/**
 * Numbered steps, each with formula, numbers put in, result, source and range.
 * @param steps      in the order of computing
 * @param sayGiven   what a person calls an origin that is no step
 * @param headingOf  the heading a step stands under; printed where it changes
 */
export function stepsReport(
  steps: readonly PrintedStep[],
  sayGiven = (origin: string) => origin,
  headingOf: (step: PrintedStep) => string | undefined = () => undefined,
): string {
  const numbers = new Map(steps.map(({ result }, index) => [result, index + 1]));
  const sayOrigin = (origin: string) => {
    const number = numbers.get(origin);
    return number === undefined ? sayGiven(origin) : `step\u00a0${number}`;
  };
  return steps
    .map((step, index) => {
      const heading = headingOf(step);
      const isNew = heading !== undefined && (index === 0 || headingOf(steps[index - 1]!) !== heading);
      return `${isNew ? `${heading}\n\n` : ''}${stepReport(step, index + 1, sayOrigin)}`;
    })
    .join('\n');
}

const indent = '     ';

function stepReport(step: PrintedStep, number: number, sayOrigin: (origin: string) => string): string {
  const { title, symbol, expression, value, source, validity, result } = step;
  const isTakenOver = step.inputs.length === 1 && step.inputs[0]!.symbol === expression;
  const rightSides = [
    expression,
    // A number taken over has nothing to put in.
    ...(isTakenOver ? [] : [numbersPutIn(step)]),
    sayNumber(value),
  ];
  return `${[
    `${String(number).padStart(3)}. ${title}`,
    ...rightSides.map((side, index) => equation(index === 0 ? symbol : ' '.repeat(symbol.length), side)),
    inputRows(step, sayOrigin),
    paragraph(sentence(`Source: ${source}`), indent),
    paragraph(sentence(`Holds for: ${validity}`), indent),
    `${indent}Name: ${result}`,
  ].join('\n')}\n`;
}

/** Later lines of a long equation begin under its right side. */
function equation(left: string, right: string): string {
  const under = `${indent}${' '.repeat(left.length + 3)}`;
  return `${indent}${left} = ${paragraph(right, under).slice(under.length)}`;
}

function sentence(words: string): string {
  return words.endsWith('.') ? words : `${words}.`;
}

function inputRows({ inputs }: PrintedStep, sayOrigin: (origin: string) => string): string {
  const rows = inputs.map(({ symbol, meaning, value, from }) => {
    const origin = from === undefined ? '' : `, from ${sayOrigin(from)}`;
    return [symbol, `${meaning}: ${sayNumber(value)}${origin}`] as const;
  });
  return columnAndText(rows)
    .split('\n')
    .map((line) => `   ${line}`)
    .join('\n');
}

/** "187.32 W (639.2 BTU/h)". */
function sayNumber({ text, unit, inView }: PrintedNumber): string {
  const inSi = unit === '1' ? text : `${text} ${unit}`;
  return inView === undefined ? inSi : `${inSi} (${inView})`;
}

/** What a chain goes back to, given first. */
export function beginningsReport(beginnings: readonly Beginning[]): string {
  const rows = (given: boolean) =>
    beginnings
      .filter(({ isGiven }) => isGiven === given)
      .map(({ path, label, words }) => [path, printableLine(`${label}: ${words}`)] as const);
  const [given, assumed] = [rows(true), rows(false)];
  return [
    ...(given.length === 0 ? [] : [section('It goes back to what was given', columnAndText(given))]),
    ...(assumed.length === 0 ? [] : [section('and to what is assumed', columnAndText(assumed))]),
  ].join('\n');
}
