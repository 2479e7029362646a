// A formula on the page, as MathML: set like print, read by screen readers, selected and copied like text. A long one
// stands over several lines; one that is still wider than the screen scrolls inside its own box.

import './formula.css';
import { type CSSProperties, createElement, type ReactNode, useMemo } from 'react';
import { type Expression, parseExpression } from '../../quantities/index.ts';
import { ScrollBox } from '../ui/scroll-box.tsx';
import { linesOf } from './break-lines.ts';
import { isText, linesBelow, type MathNode, mo, mtext, rowWidth } from './math-tree.ts';
import { numberWords, sayExpression } from './say-expression.ts';
import { type NumberTexts, numberRow, setExpression, symbolNode, withNumbers } from './set-expression.ts';
import { symbolWords } from './symbol.ts';

/** A line of a formula is not made wider than this [em]: what fits between the margins of paper. */
const lineWidth = 44;

export interface FormulaProps {
  /** Name of the symbol on the left of the equals sign. */
  readonly symbol: string;
  /** In plain algebra. */
  readonly expression: string;
  /** Numbers that stand in place of the symbols. */
  readonly numbers?: NumberTexts;
  /** What it comes to: digits, and the unit. */
  readonly result?: { readonly text: string; readonly unit: string };
}

/** `symbol = expression`, or with the numbers put in, `symbol = … = result unit`. */
export function Formula({ symbol, expression, numbers, result }: FormulaProps): ReactNode {
  const parsed = useMemo(() => {
    const tree = parseExpression(expression);
    return numbers === undefined ? tree : withNumbers(tree, numbers);
  }, [expression, numbers]);
  const row = useMemo(
    () => [symbolNode(symbol), mo('='), ...setExpression(parsed), ...resultRow(result)],
    [symbol, parsed, result],
  );
  const lines = linesOf(row, lineWidth);
  const [first = []] = lines;
  const style = { '--fit': fitOf(Math.max(...lines.map(rowWidth))) } as CSSProperties;
  return (
    <ScrollBox className="formula" label="Formula" style={style}>
      {createElement(
        'math',
        { display: 'block', alttext: sayFormula(symbol, parsed, result) },
        lines.length === 1 ? first.map(element) : element(linesBelow(lines), 0),
      )}
    </ScrollBox>
  );
}

/** A symbol alone, within a sentence or a table. */
export function SymbolName({ name }: { name: string }): ReactNode {
  return inMath([symbolNode(name)], symbolWords(name));
}

/** `symbol = number unit` within a line of text. */
export function SymbolEquals({ symbol, text, unit }: { symbol: string; text: string; unit: string }): ReactNode {
  return inMath([symbolNode(symbol), ...resultRow({ text, unit })], `${symbolWords(symbol)} ${sayResult(text, unit)}`);
}

/** A number as it is printed for people, readable by machines too: a true minus sign, powers of ten raised. */
export function PrintedDigits({ text }: { text: string }): ReactNode {
  return (
    <data value={text}>{/e/i.test(text) ? inMath(numberRow(text), numberWords(text)) : text.replace('-', '−')}</data>
  );
}

function inMath(row: readonly MathNode[], words: string): ReactNode {
  return createElement('math', { alttext: words }, row.map(element));
}

/** How much smaller a line that could not be broken stands on paper. */
function fitOf(widest: number): number {
  return Math.max(0.5, Math.min(1, (lineWidth + 2) / widest));
}

function resultRow(result: FormulaProps['result']): readonly MathNode[] {
  if (result === undefined) return [];
  const unit = result.unit === '1' ? [] : [mtext(`\u00a0${result.unit.replaceAll(' ', '\u00a0')}`)];
  return [mo('='), ...numberRow(result.text), ...unit];
}

function sayFormula(symbol: string, expression: Expression, result: FormulaProps['result']): string {
  const said = `${symbolWords(symbol)} equals ${sayExpression(expression)}`;
  if (result === undefined) return said;
  return `${said}; ${sayResult(result.text, result.unit)}`;
}

function sayResult(text: string, unit: string): string {
  return `equals ${numberWords(text)}${unit === '1' ? '' : ` ${unit}`}`;
}

/** A formula never changes its parts: their place is their key. */
function element(node: MathNode, index: number): ReactNode {
  const { class: className, ...attributes } = node.attributes ?? {};
  const properties = { key: index, className, ...attributes };
  return createElement(node.tag, properties, isText(node) ? node.text : node.children.map(element));
}
