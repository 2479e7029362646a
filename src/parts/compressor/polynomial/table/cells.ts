// A pasted text as lines of cells: tabs, semicolons, commas or runs of blanks between them, quotes around a cell that holds one of
// these. Written here rather than taken from a library: what a reader of comma-separated files brings (streams, typed
// columns, headers as keys) is 7 kB and not needed, and what is needed, the line and column of every cell and runs of blanks, it
// does not have.

export interface Cell {
  readonly text: string;
  readonly isQuoted: boolean;
}

/** Cells of one line, or of several where quotes hold line breaks. */
export interface CellLine {
  /** Of the pasted text, counted from 1. */
  readonly line: number;
  readonly cells: readonly Cell[];
}

export type Separator = 'tab' | 'semicolon' | 'comma' | 'blanks';

export type SplitText =
  | { readonly ok: true; readonly separator: Separator; readonly lines: readonly CellLine[] }
  /** Line in which the quote that is never closed begins. */
  | { readonly ok: false; readonly unclosedQuote: number };

const separatorCharacters = { tab: '\t', semicolon: ';', comma: ',' } as const;

/** Splits a text by what separates the cells of its first line; lines without any text are left out. */
export function splitText(text: string): SplitText {
  const plain = text.replace(/^\uFEFF/, '').replace(/\r\n?|[\u2028\u2029\v\f]/g, '\n');
  const separator = separatorOf(plain);
  const lines: CellLine[] = [];
  const reader = new CellReader(plain, separator);
  while (!reader.isAtEnd) {
    const next = reader.nextLine();
    if (next === undefined) return { ok: false, unclosedQuote: reader.quoteLine };
    if (next.cells.some((cell) => cell.text !== '')) lines.push(next);
  }
  return { ok: true, separator, lines };
}

/** The first of tab, semicolon and comma that stands outside quotes in the first line with text. */
function separatorOf(text: string): Separator {
  const first = /\S[^\n]*(?:\n|$)/.exec(text)?.[0] ?? '';
  const start = text.indexOf(first);
  // Quotes of the first line may hold line breaks: taken out with what they hold.
  const unquoted = text
    .slice(start)
    .replace(/"(?:[^"]|"")*"/g, '')
    .split('\n', 1)[0]!;
  for (const separator of ['tab', 'semicolon', 'comma'] as const) {
    if (unquoted.includes(separatorCharacters[separator])) return separator;
  }
  return 'blanks';
}

class CellReader {
  readonly #text: string;
  readonly #separator: Separator;
  #at = 0;
  #line = 1;
  /** Line of the last quote that was opened. */
  quoteLine = 1;

  constructor(text: string, separator: Separator) {
    this.#text = text;
    this.#separator = separator;
  }

  get isAtEnd(): boolean {
    return this.#at >= this.#text.length;
  }

  /** Cells up to the next line break outside quotes; undefined where a quote is never closed. */
  nextLine(): CellLine | undefined {
    const line = this.#line;
    const cells: Cell[] = [];
    for (;;) {
      const cell = this.#nextCell();
      if (cell === undefined) return undefined;
      if (this.#separator !== 'blanks' || cell.text !== '' || cell.isQuoted) cells.push(cell);
      const end = this.#text[this.#at];
      this.#at += 1;
      if (end === undefined) return { line, cells };
      if (end === '\n') {
        this.#line += 1;
        return { line, cells };
      }
    }
  }

  /** One cell; stops at the separator, the line break or the end behind it. */
  #nextCell(): Cell | undefined {
    this.#skipBlanks();
    if (this.#text[this.#at] !== '"') return { text: this.#upToSeparator(), isQuoted: false };
    const quoted = this.#quotedText();
    if (quoted === undefined) return undefined;
    // What follows a closed quote belongs to the cell: nothing pasted is dropped.
    return { text: `${quoted}${this.#upToSeparator()}`.replace(/\s+/g, ' ').trim(), isQuoted: true };
  }

  #quotedText(): string | undefined {
    this.quoteLine = this.#line;
    let text = '';
    for (;;) {
      const close = this.#text.indexOf('"', this.#at + 1);
      if (close < 0) return undefined;
      const part = this.#text.slice(this.#at + 1, close);
      this.#line += part.split('\n').length - 1;
      text += part;
      this.#at = close + 1;
      if (this.#text[this.#at] !== '"') return text;
      text += '"';
    }
  }

  #upToSeparator(): string {
    const start = this.#at;
    while (this.#at < this.#text.length && !this.#isSeparator(this.#text[this.#at]!)) this.#at += 1;
    return this.#text.slice(start, this.#at).trim();
  }

  #isSeparator(character: string): boolean {
    if (character === '\n') return true;
    if (this.#separator === 'blanks') return /\s/.test(character);
    return character === separatorCharacters[this.#separator];
  }

  #skipBlanks(): void {
    while (this.#isBlank(this.#text[this.#at])) this.#at += 1;
  }

  #isBlank(character: string | undefined): boolean {
    return character !== undefined && /\s/.test(character) && !this.#isSeparator(character);
  }
}
