// What a file `rows.ts` in a folder below gives to the validation tables: our results beside values from outside.

/**
 * `reference`: a published or otherwise outside value; the tests hold us to it.
 * `common practice, no source`: a figure of the trade; reported, never held against us.
 */
export type ValidationStatus = 'reference' | 'common practice, no source';

export interface ValidationRow {
  /** What is looked at: 'R134a, saturation', 'open rippled surface'. Rows of one subject stand together. */
  readonly subject: string;
  /** Which number of it, with its unit: 'pressure at 0 °C [MPa]'. */
  readonly quantity: string;
  /** Author, year, table and row; or who says so. */
  readonly source: string;
  /** As printed there; a range for a figure of the trade. */
  readonly published: number | string;
  readonly ours: number;
  /** In words with unit or sign: '+0.02 %', '0.3 K', 'inside', 'outside'. */
  readonly deviation: string;
  readonly status: ValidationStatus;
  /** The known reason of a deviation, where there is one. */
  readonly reason?: string;
}

/** Ours against a published number, as a signed share in words. */
export function deviationInPercent(ours: number, published: number): string {
  const percent = (ours / published - 1) * 100;
  if (percent === 0) return '0 %';
  const size = Math.abs(percent);
  const digits = size >= 0.01 ? size.toPrecision(2) : size.toExponential(1);
  return `${percent > 0 ? '+' : '−'}${digits} %`;
}
