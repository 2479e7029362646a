// A formula as it is set, as plain data: the elements of MathML that this page uses, and how wide each is about.

/** Elements that hold text. */
export type TextTag = 'mi' | 'mn' | 'mo' | 'mtext';
/** Elements that hold others. */
export type HoldingTag = 'mrow' | 'mfrac' | 'msub' | 'msup' | 'msubsup' | 'msqrt' | 'mroot' | 'mtable' | 'mtr' | 'mtd';

export interface MathText {
  readonly tag: TextTag;
  readonly text: string;
  readonly attributes?: Readonly<Record<string, string>>;
}

export interface MathHolder {
  readonly tag: HoldingTag;
  readonly children: readonly MathNode[];
  /** What a row is, where it may be set over several lines: between brackets, or the cases of a choice. */
  readonly role?: 'bracketed' | 'cases';
  readonly attributes?: Readonly<Record<string, string>>;
}

export type MathNode = MathText | MathHolder;

export function isText(node: MathNode): node is MathText {
  return 'text' in node;
}

export function mi(text: string): MathText {
  return { tag: 'mi', text };
}

/** A single letter that is no quantity of its own, such as the sign of a difference. */
export function upright(text: string): MathText {
  return { tag: 'mi', text, attributes: { mathvariant: 'normal' } };
}

export function mn(text: string): MathText {
  return { tag: 'mn', text };
}

export function mo(text: string, attributes?: Readonly<Record<string, string>>): MathText {
  return attributes === undefined ? { tag: 'mo', text } : { tag: 'mo', text, attributes };
}

export function mtext(text: string): MathText {
  return { tag: 'mtext', text };
}

export function holder(tag: HoldingTag, ...children: readonly MathNode[]): MathHolder {
  return { tag, children };
}

/** One element for a row: itself where it is one, else all in a row. */
export function asOne(row: readonly MathNode[]): MathNode {
  const [only] = row;
  return row.length === 1 && only !== undefined ? only : holder('mrow', ...row);
}

/** A row between round brackets. */
export function bracketed(row: readonly MathNode[]): MathHolder {
  return { tag: 'mrow', children: [mo('('), ...row, mo(')')], role: 'bracketed' };
}

/** Rows under one another, each beginning at the left. */
export function linesBelow(lines: readonly (readonly MathNode[])[]): MathHolder {
  return {
    tag: 'mtable',
    attributes: { displaystyle: 'true', class: 'math-lines' },
    children: lines.map((line) => holder('mtr', holder('mtd', asOne(line)))),
  };
}

/** Width of a digit, of an operator with its spaces, of a bracket, and how small lowered and raised parts are [em]. */
const digitWidth = 0.58;
const operatorWidth = 1.1;
const bracketWidth = 0.4;
const small = 0.72;

/** About how wide an element is [em]: enough for choosing where to go on in a new line. */
export function widthOf(node: MathNode): number {
  if (isText(node)) return textWidth(node);
  const widths = node.children.map(widthOf);
  const sum = widths.reduce((total, width) => total + width, 0);
  const [first = 0, ...rest] = widths;
  switch (node.tag) {
    case 'mfrac':
    case 'mtable':
      return Math.max(0, ...widths) + 0.3;
    case 'msub':
    case 'msup':
    case 'mroot':
      return first + small * (rest[0] ?? 0) + (node.tag === 'mroot' ? 0.8 : 0);
    case 'msubsup':
      return first + small * Math.max(...rest);
    case 'msqrt':
      return sum + 0.8;
    case 'mtr':
      return sum + 1;
    case 'mrow':
    case 'mtd':
      return sum;
  }
}

export function rowWidth(row: readonly MathNode[]): number {
  return row.reduce((total, node) => total + widthOf(node), 0);
}

function textWidth({ tag, text }: MathText): number {
  if (tag !== 'mo') return digitWidth * text.length;
  return '()|{,'.includes(text) ? bracketWidth : text === '\u2061' ? 0 : operatorWidth;
}
