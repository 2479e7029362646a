// Printed tables of the papers beside our own numbers, one row for each printed number.

import type { ValidationRow } from '../validation.ts';
import { boilingPointTables, handbookTables } from './published/handbook.ts';
import { paperTables } from './published/papers.ts';
import { type PublishedTable, type PublishedValue, valuesOf } from './published/table.ts';
import { verificationTables } from './published/verification.ts';

/** Every printed table, verification rows of the equations first. */
export const publishedTables: readonly PublishedTable[] = [
  ...verificationTables,
  ...paperTables,
  ...handbookTables,
  ...boilingPointTables,
];

export function validationRows(): readonly ValidationRow[] {
  return publishedTables.flatMap((table) => valuesOf(table).map(rowOf));
}

function rowOf({ table, where, column, printed, ours }: PublishedValue): ValidationRow {
  const { fluid, title, source, reason } = table;
  const published = Number(printed);
  return {
    subject: table.given === 'pascal' ? 'Normal boiling points' : `${fluid}, ${title}`,
    quantity: `${table.given === 'pascal' ? `${fluid}, ` : ''}${column} at ${where}`,
    source,
    published,
    ours,
    deviation: inWords(column, ours, published),
    status: 'reference',
    ...(reason === undefined ? {} : { reason }),
  };
}

/** Enthalpy, entropy and degrees Celsius have no natural zero: their differences stand in the unit of the column. */
function inWords(column: string, ours: number, published: number): string {
  const difference = ours - published;
  const hasZero = !/^[hst][′″ ]/.test(column);
  const share = hasZero ? difference / published : difference;
  const size = Math.abs(share) < 1e-3 ? Math.abs(share).toExponential(1) : Math.abs(share).toPrecision(2);
  const unit = hasZero ? '' : ` ${/\[(.*)\]/.exec(column)![1]}`;
  return `${share < 0 ? '−' : '+'}${size}${unit}`;
}
