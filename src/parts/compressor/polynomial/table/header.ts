// The headers of a table. Between separators each cell is one header; separated by blanks alone, where names hold blanks
// themselves, the line is read name by name, each with the unit that follows it.

import type { CellLine, Separator } from './cells.ts';
import { bareUnit, columnUnit, type HeaderReading, leadingName, readHeader, type TableQuantity } from './columns.ts';

export interface HeaderCell {
  readonly text: string;
  readonly reading: HeaderReading;
}

export function headerCells({ cells }: CellLine, separator: Separator): readonly HeaderCell[] {
  if (separator !== 'blanks' || cells.some(({ isQuoted }) => isQuoted)) {
    // Lines copied with a separator at their end have an empty last header.
    const last = cells.findLastIndex(({ text }) => text !== '');
    return cells.slice(0, last + 1).map(({ text }) => ({ text, reading: readHeader(text) }));
  }
  const line = cells.map(({ text }) => text).join(' ');
  if (line.length <= longestLine) return namesAlong(line);
  return [{ text: line, reading: { kind: 'unknown', nearest: undefined } }];
}

/** A line of headers is no longer; what is, is a text of another kind. */
const longestLine = 1000;

/** Names and units one after the other: "Te [°C] return gas °C Q W". */
function namesAlong(line: string): readonly HeaderCell[] {
  const found: HeaderCell[] = [];
  let rest = line;
  while (rest !== '') {
    const name = leadingName(rest);
    const length =
      name === undefined ? rest.search(/\s|$/) : name.length + unitLength(name.quantity, rest.slice(name.length));
    const text = rest.slice(0, length).trim();
    found.push({ text, reading: readHeader(text) });
    rest = rest.slice(length).trimStart();
  }
  return found;
}

/** How many characters after a name are its unit; 0 where what follows is none. */
function unitLength(quantity: TableQuantity, after: string): number {
  const bracketed = /^[\s.,:;]*(?:\[[^\]]*\]|\([^)]*\))/.exec(after);
  if (bracketed !== null) return bracketed[0].length;
  const [token] = /^[\s.,:;]*\S+/.exec(after) ?? [''];
  if (token === '' || columnUnit(quantity, bareUnit(token)) === undefined) return 0;
  return token.length;
}
