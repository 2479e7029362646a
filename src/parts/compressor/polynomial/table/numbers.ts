// Numbers in the cells of a table. A comma or point may be the decimal mark, one in the whole table; separators of thousands are
// refused, because "1,234" reads as either.

export type CellNumber =
  | { readonly kind: 'number'; readonly value: number }
  | { readonly kind: 'nothing' }
  | { readonly kind: 'refused'; readonly code: 'notANumber' | 'thousandsSeparator' | 'mixedDecimals' };

export type DecimalMark = ',' | '.';

const number = /^([+-]?)(\d*)(?:([.,])(\d*))?(?:[eE][+-]?\d{1,3})?$/;
const nothing = /^(?:|-+|[–—]+|\/|n\/?a|#n\/a)$/i;
/** Reads as thousands or as decimals. */
const maybeThousands = /^[+-]?[1-9]\d{0,2},\d{3}$/;
/** Groups of three digits with any mark between them. */
const thousands = /^[+-]?\d{1,3}(?:[.,' \u00a0\u2009\u202f’]\d{3})+(?:[.,]\d+)?$/;

/** The decimal mark that the first undoubted cell shows; undefined where none does. */
export function decimalMarkOf(cells: readonly string[]): DecimalMark | undefined {
  for (const cell of cells) {
    const text = plain(cell);
    const mark = number.exec(text)?.[3];
    if (mark !== undefined && !maybeThousands.test(text)) return mark as DecimalMark;
  }
  return undefined;
}

/** A cell as a number, in a table with that decimal mark. */
export function cellNumber(cell: string, mark: DecimalMark | undefined): CellNumber {
  const text = plain(cell);
  if (nothing.test(text)) return { kind: 'nothing' };
  const parts = number.exec(text);
  if (parts === null) return { kind: 'refused', code: thousands.test(text) ? 'thousandsSeparator' : 'notANumber' };
  const [, , whole, ownMark, decimals] = parts;
  if (`${whole}${decimals ?? ''}` === '') return { kind: 'refused', code: 'notANumber' };
  if (maybeThousands.test(text) && mark !== ',') return { kind: 'refused', code: 'thousandsSeparator' };
  if (ownMark !== undefined && mark !== undefined && ownMark !== mark)
    return { kind: 'refused', code: 'mixedDecimals' };
  const value = Number(text.replace(',', '.'));
  return Number.isFinite(value) ? { kind: 'number', value: value + 0 } : { kind: 'refused', code: 'notANumber' };
}

function plain(cell: string): string {
  // A spreadsheet may have made an en dash of a minus sign.
  return cell.replace(/[−﹣－‐‑–]/g, '-').trim();
}
