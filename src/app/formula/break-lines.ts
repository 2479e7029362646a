// Sets a long row over several lines: a new line begins at a sign of the loosest rank that still fits, with the sign in
// front, as mathematics is printed. Browsers do not break formulas by themselves, and paper cannot be scrolled.

import { isText, linesBelow, type MathNode, mo, rowWidth, widthOf } from './math-tree.ts';

/** Lines of a row, none much wider than the limit [em] where signs allow it. */
export function linesOf(row: readonly MathNode[], limit: number): readonly (readonly MathNode[])[] {
  const fitted = row.map((node) => narrowed(node, limit));
  if (rowWidth(fitted) <= limit) return [fitted];
  return broken(opened(fitted, limit, 0), limit);
}

/** A place in an opened row: an element, how many brackets are open before it. */
interface Item {
  readonly node: MathNode;
  readonly depth: number;
}

/** Too wide a value of a case, and too wide a part of a fraction, stands over several lines. */
function narrowed(node: MathNode, limit: number): MathNode {
  if (isText(node) || widthOf(node) <= limit) return node;
  if (node.tag === 'mfrac') {
    return { ...node, children: node.children.map((child) => inLines(rowIn(child), limit * 0.9) ?? child) };
  }
  if (node.tag === 'mtd') {
    const lines = inLines(node.children.flatMap(rowIn), limit * 0.75);
    return lines === undefined ? node : { ...node, children: [lines] };
  }
  return { ...node, children: node.children.map((child) => narrowed(child, limit)) };
}

function rowIn(node: MathNode): readonly MathNode[] {
  return !isText(node) && node.tag === 'mrow' && node.role === undefined ? node.children : [node];
}

/** The row over several lines; undefined where it fits into one. */
function inLines(row: readonly MathNode[], limit: number): MathNode | undefined {
  const lines = linesOf(row, limit);
  return lines.length === 1 && rowWidth(row) <= limit ? undefined : linesBelow(lines);
}

/** Wide brackets are opened, so that a line may end inside them; they no longer grow with what they hold. */
function opened(row: readonly MathNode[], limit: number, depth: number): readonly Item[] {
  return row.flatMap((node): readonly Item[] => {
    if (isText(node) || node.role !== 'bracketed' || widthOf(node) <= limit / 2) return [{ node, depth }];
    const inside = node.children.slice(1, -1);
    const fixed = { stretchy: 'false' };
    return [
      { node: mo('(', fixed), depth: depth + 1 },
      ...opened(inside, limit, depth + 1),
      { node: mo(')', fixed), depth: depth + 1 },
    ];
  });
}

/** How badly a line ends before this element; undefined where it must not. */
function badness({ node, depth }: Item): number | undefined {
  if (!isText(node) || node.tag !== 'mo' || node.attributes !== undefined) return undefined;
  if ('=≤≥<>'.includes(node.text)) return depth - 0.5;
  if ('+−'.includes(node.text)) return depth;
  if (node.text === '⋅') return depth + 0.5;
  return undefined;
}

/** A line that ends before this share of the limit wastes paper. */
const shortest = 0.4;

function broken(items: readonly Item[], limit: number): readonly (readonly MathNode[])[] {
  const lines: MathNode[][] = [];
  let start = 0;
  while (start < items.length) {
    const end = endOfLine(items, start, limit);
    lines.push(items.slice(start, end).map(({ node }) => node));
    start = end;
  }
  return lines;
}

/** Where the next line begins: before the last of the best signs that fit, or the first sign beyond. */
function endOfLine(items: readonly Item[], start: number, limit: number): number {
  let width = 0;
  let best: { readonly at: number; readonly cost: number } | undefined;
  for (let at = start; at < items.length; at++) {
    const item = items[at]!;
    // The symbol on the left and its equals sign stay with what follows.
    const cost = at > start + 1 ? badness(item) : undefined;
    if (cost !== undefined) {
      const whole = cost + (width < shortest * limit ? 2 : 0);
      if (width > limit && best === undefined) return at;
      if (width <= limit && (best === undefined || whole <= best.cost)) best = { at, cost: whole };
    }
    width += widthOf(item.node);
    if (width > limit && best !== undefined) return best.at;
  }
  return items.length;
}
