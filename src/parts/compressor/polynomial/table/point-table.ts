// Reads a table of running points as pasted from a spreadsheet: headers with units name the columns, a line of units may follow,
// then one point a line. Everything that is not understood is told with its line and column and with what is accepted; a column
// is passed over only if it is known to hold nothing of use, and is listed then.

import type { Unit } from '../../../../quantities/index.ts';
import { type Cell, type CellLine, type Separator, splitText } from './cells.ts';
import { acceptedHeaders, acceptedUnits, bareUnit, columnUnit, type TableQuantity } from './columns.ts';
import { type HeaderCell, headerCells } from './header.ts';
import { cellNumber, decimalMarkOf } from './numbers.ts';

export interface TableColumn {
  /** Counted from 1. */
  readonly column: number;
  readonly quantity: TableQuantity;
  /** As pasted. */
  readonly header: string;
  /** "°C". */
  readonly unit: string;
}

/** One point, in base SI: K, W, kg/s, A. What a cell leaves empty is absent. */
export interface PointRow {
  /** Line of the pasted text, counted from 1. */
  readonly line: number;
  readonly values: Readonly<Partial<Record<TableQuantity, number>>>;
}

export interface PointTable {
  readonly columns: readonly TableColumn[];
  /** Headers of columns that are not read, such as COP. */
  readonly passedOver: readonly string[];
  readonly rows: readonly PointRow[];
}

export type TableProblemCode =
  | 'empty'
  | 'tooLong'
  | 'unclosedQuote'
  | 'noHeader'
  | 'unknownColumn'
  | 'columnTwice'
  | 'columnMissing'
  | 'unitMissing'
  | 'unknownUnit'
  | 'unitTwice'
  | 'noRows'
  | 'tooManyRows'
  | 'tooManyCells'
  | 'tooFewCells'
  | 'notANumber'
  | 'thousandsSeparator'
  | 'mixedDecimals'
  | 'valueMissing'
  | 'notPositive'
  | 'belowAbsoluteZero'
  | 'evaporatingAboveCondensing';

/** Why a place of a table was not understood. */
export interface TableProblem {
  readonly code: TableProblemCode;
  /** Of the pasted text and of the line's cells, both counted from 1. */
  readonly line: number;
  readonly column: number;
  readonly received: string;
  /** What is accepted there, as a sentence part. */
  readonly expected: string;
  /** A header that may have been meant. */
  readonly nearest?: string;
}

export type ReadTable =
  | { readonly ok: true; readonly table: PointTable }
  /** At least one, the first at most 20. */
  | { readonly ok: false; readonly problems: readonly TableProblem[] };

/** Points that one table may hold. */
export const mostTableRows = 300;
const longestText = 60_000;
const mostProblems = 20;
const longestShown = 60;

/**
 * Reads a table.
 * @param text  as pasted; cells separated by tabs, semicolons, commas or blanks
 * @returns     columns and points in base SI, or all problems found. Never throws.
 * Worked value: "Te [°C]\tTc [°C]\tQ [W]\n-10\t45\t300" → one point, 263.15 K, 318.15 K, 300 W.
 */
export function readPointTable(text: string): ReadTable {
  if (text.length > longestText) {
    return refused('tooLong', 1, 1, `${text.length} characters`, `at most ${longestText} characters`);
  }
  const split = splitText(text);
  if (!split.ok) {
    return refused('unclosedQuote', split.unclosedQuote, 1, 'a quote', 'a second quote that closes it');
  }
  const [first, ...rest] = split.lines;
  if (first === undefined) return refused('empty', 1, 1, 'no text', acceptedHeaders);
  const reader = new TableReader(first, split.separator);
  const rows = reader.read(rest);
  if (reader.problems.length > 0) return { ok: false, problems: reader.problems };
  return { ok: true, table: { columns: reader.columns, passedOver: reader.passedOver, rows } };
}

function refused(code: TableProblemCode, line: number, column: number, received: string, expected: string): ReadTable {
  return { ok: false, problems: [{ code, line, column, received: shortened(received), expected }] };
}

/** A column with its unit, before and after the line of units was read. */
interface OpenColumn {
  readonly column: number;
  readonly quantity: TableQuantity;
  readonly header: string;
  unit: Unit | undefined;
}

class TableReader {
  readonly problems: TableProblem[] = [];
  readonly passedOver: string[] = [];
  readonly #header: CellLine;
  readonly #separator: Separator;
  readonly #open: OpenColumn[] = [];
  /** Cells in a line of points: as many as headers. */
  #width = 0;

  constructor(header: CellLine, separator: Separator) {
    this.#header = header;
    this.#separator = separator;
  }

  get columns(): readonly TableColumn[] {
    return this.#open.map(({ unit, ...column }) => ({ ...column, unit: unit!.label }));
  }

  read(lines: readonly CellLine[]): readonly PointRow[] {
    this.#readHeader();
    if (this.problems.length > 0) return [];
    const hasUnits = lines[0] !== undefined && this.#isLineOfUnits(lines[0]);
    if (hasUnits) this.#readUnits(lines[0]!);
    this.#requireUnits();
    if (this.problems.length > 0) return [];
    const points = hasUnits ? lines.slice(1) : lines;
    if (points.length === 0) {
      this.#refuse('noRows', this.#header.line, 1, 'headers alone', 'at least one line of numbers below them');
    }
    if (points.length > mostTableRows) {
      const line = points[mostTableRows]!.line;
      this.#refuse('tooManyRows', line, 1, `${points.length} points`, `at most ${mostTableRows} points`);
      return [];
    }
    const mark = decimalMarkOf(
      points.flatMap(({ cells }) => this.#open.map(({ column }) => cells[column - 1]?.text ?? '')),
    );
    return points.map((line) => this.#readRow(line, mark));
  }

  #readHeader(): void {
    const headers = headerCells(this.#header, this.#separator);
    this.#width = headers.length;
    if (!headers.some(({ reading }) => reading.kind === 'column')) {
      const received = this.#header.cells.map(({ text }) => text).join(' ');
      this.#refuse('noHeader', this.#header.line, 1, received, acceptedHeaders);
      return;
    }
    headers.forEach((cell, index) => {
      this.#readHeaderCell(cell, index + 1);
    });
    if (this.problems.length === 0) this.#requireColumns();
  }

  #readHeaderCell({ text, reading }: HeaderCell, column: number): void {
    const { line } = this.#header;
    if (reading.kind === 'passedOver') {
      this.passedOver.push(shortened(text));
      return;
    }
    if (reading.kind === 'unknown') {
      this.#refuse('unknownColumn', line, column, text, acceptedHeaders, reading.nearest);
      return;
    }
    const { quantity, unitText } = reading;
    const twin = this.#open.find((other) => other.quantity === quantity);
    if (twin !== undefined) {
      this.#refuse(
        'columnTwice',
        line,
        column,
        text,
        `each quantity once; column ${twin.column} is ${quantity} already`,
      );
      return;
    }
    const unit = unitText === '' ? undefined : columnUnit(quantity, unitText);
    if (unit === undefined && unitText !== '') {
      this.#refuse('unknownUnit', line, column, text, `${quantity} in ${acceptedUnits(quantity)}`);
    }
    this.#open.push({ column, quantity, header: shortened(text), unit });
  }

  #requireColumns(): void {
    const { line } = this.#header;
    const has = (quantity: TableQuantity) => this.#open.some((column) => column.quantity === quantity);
    const received = this.#open.map(({ quantity }) => quantity).join(', ');
    for (const quantity of ['evaporating', 'condensing'] as const) {
      if (!has(quantity)) this.#refuse('columnMissing', line, 1, received, `a column of ${quantity} temperatures`);
    }
    const results = ['capacity', 'massFlow', 'power', 'current', 'dischargeTemperature'] as const;
    if (results.some(has)) return;
    const expected = 'at least one column of capacity, mass flow, power, current or discharge temperature';
    this.#refuse('columnMissing', line, 1, received, expected);
  }

  /** No cell of it is a number, and at least one is a unit of its column. */
  #isLineOfUnits({ cells }: CellLine): boolean {
    const own = this.#open.map(({ column, quantity }) => ({ quantity, text: bareUnit(cells[column - 1]?.text ?? '') }));
    if (own.some(({ text }) => /^[+\-−]?[.,]?\d/.test(text))) return false;
    return own.some(({ quantity, text }) => text !== '' && columnUnit(quantity, text) !== undefined);
  }

  #readUnits({ line, cells }: CellLine): void {
    for (const open of this.#open) {
      const text = bareUnit(cells[open.column - 1]?.text ?? '');
      if (text === '' || /^-+$/.test(text)) continue;
      const unit = columnUnit(open.quantity, text);
      const accepted = `${open.quantity} in ${acceptedUnits(open.quantity)}`;
      if (unit === undefined) this.#refuse('unknownUnit', line, open.column, text, accepted);
      else if (open.unit !== undefined && open.unit.label !== unit.label) {
        this.#refuse('unitTwice', line, open.column, text, `the unit of the header, ${open.unit.label}, or none`);
      } else open.unit = unit;
    }
  }

  #requireUnits(): void {
    for (const { column, quantity, header, unit } of this.#open) {
      if (unit !== undefined || this.problems.length >= mostProblems) continue;
      const expected = `its unit in the header or in the line below: ${acceptedUnits(quantity)}`;
      if (!this.problems.some((problem) => problem.column === column)) {
        this.#refuse('unitMissing', this.#header.line, column, header, expected);
      }
    }
  }

  #readRow({ line, cells }: CellLine, mark: ReturnType<typeof decimalMarkOf>): PointRow {
    const values: Partial<Record<TableQuantity, number>> = {};
    this.#checkWidth(line, cells);
    for (const { column, quantity, unit } of this.#open) {
      const text = cells[column - 1]?.text ?? '';
      const found = cellNumber(text, mark);
      if (found.kind === 'refused') this.#refuse(found.code, line, column, text, expectedNumber[found.code]);
      if (found.kind === 'nothing' && (quantity === 'evaporating' || quantity === 'condensing')) {
        this.#refuse('valueMissing', line, column, 'an empty cell', `the ${quantity} temperature of this point`);
      }
      if (found.kind !== 'number') continue;
      const value = (found.value + unit!.shift) * unit!.factor;
      this.#checkValue(quantity, value, line, column, text);
      values[quantity] = value;
    }
    const { evaporating, condensing } = values;
    if (evaporating !== undefined && condensing !== undefined && !(evaporating < condensing)) {
      const { column } = this.#open.find(({ quantity }) => quantity === 'evaporating')!;
      const received = cells[column - 1]?.text ?? '';
      this.#refuse(
        'evaporatingAboveCondensing',
        line,
        column,
        received,
        'below the condensing temperature of this line',
      );
    }
    return { line, values };
  }

  #checkWidth(line: number, cells: readonly Cell[]): void {
    const beyond = cells.findIndex(({ text }, index) => index >= this.#width && text !== '');
    if (beyond >= 0) {
      const advice =
        this.#separator === 'comma'
          ? '; where commas are decimal marks, separate the cells by semicolons or tabs'
          : this.#separator === 'blanks'
            ? '; write numbers without blanks inside'
            : '';
      this.#refuse(
        'tooManyCells',
        line,
        beyond + 1,
        cells[beyond]!.text,
        `${this.#width} cells, one for each header${advice}`,
      );
    }
    if (this.#separator === 'blanks' && cells.length < this.#width) {
      const expected = `${this.#width} cells, one for each header; write "-" where a value is missing`;
      this.#refuse('tooFewCells', line, cells.length, `${cells.length} cells`, expected);
    }
  }

  #checkValue(quantity: TableQuantity, value: number, line: number, column: number, text: string): void {
    if (!Number.isFinite(value)) this.#refuse('notANumber', line, column, text, expectedNumber.notANumber);
    else if (quantity === 'superheat' || quantity === 'subcooling') {
      if (value < 0) this.#refuse('notPositive', line, column, text, `${quantity} of 0 or above`);
    } else if (quantity === 'capacity' || quantity === 'power' || quantity === 'massFlow' || quantity === 'current') {
      if (value <= 0) this.#refuse('notPositive', line, column, text, `${quantity} above 0`);
    } else if (value <= 0) this.#refuse('belowAbsoluteZero', line, column, text, 'a temperature above −273.15 °C');
  }

  #refuse(
    code: TableProblemCode,
    line: number,
    column: number,
    received: string,
    expected: string,
    nearest?: string,
  ): void {
    if (this.problems.length >= mostProblems) return;
    const problem = { code, line, column, received: shortened(received), expected };
    this.problems.push(nearest === undefined ? problem : { ...problem, nearest });
  }
}

const expectedNumber = {
  notANumber: 'a number without its unit, such as -23.3 or 1,5; "-" or nothing where there is none',
  thousandsSeparator: 'a number without separators of thousands, because "1,234" may be 1234 or 1.234: write 1234',
  mixedDecimals: 'the same decimal mark, point or comma, in the whole table',
} as const;

function shortened(text: string): string {
  return text.length > longestShown ? `${text.slice(0, longestShown)}…` : text;
}
