// What cross-checks read and say: the value of a field in SI, its limits in words, a problem at its path.

import { type Estimate, type QuantityName, readQuantity, sayQuantity } from '../../quantities/index.ts';
import { fieldRecord } from '../field-records.ts';
import { textAt } from '../paths.ts';
import type { DesignProblem } from '../problems.ts';
import type { DesignDocument } from '../schema/design.ts';

/** Rounding of unit conversions [SI]. */
export const hair = 1e-9;

/** The quantity at a path as it was typed; undefined where it was not. */
export function valueAt(document: DesignDocument, path: string): Estimate | undefined {
  const text = textAt(document, path);
  const quantity = fieldRecord(path, document)?.quantity;
  if (text === undefined || quantity === undefined) return undefined;
  const read = readQuantity(text, quantity);
  return read.ok ? read.estimate : undefined;
}

export function problemAt(
  document: DesignDocument,
  path: string,
  code: DesignProblem['code'],
  expected: string,
): DesignProblem {
  return { path, code, received: textAt(document, path) ?? '', expected };
}

export function inMetric(value: number, quantity: QuantityName): string {
  return sayQuantity(value, quantity, 'metric');
}

/**
 * A field must stay below, or at most at, what others allow. The ends are compared crosswise: every combination of what may
 * be so must be possible.
 */
export function aboveLimit(
  document: DesignDocument,
  path: string,
  limit: number | undefined,
  code: DesignProblem['code'],
  words: (limit: string) => string,
): readonly DesignProblem[] {
  const value = valueAt(document, path);
  if (value === undefined || limit === undefined || value.high <= limit + hair) return [];
  return [problemAt(document, path, code, words(inMetric(limit, fieldRecord(path, document)!.quantity!)))];
}
