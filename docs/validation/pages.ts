// The pages of docs/validation as text: one for each folder of outside values; one each of the refrigerants' reference states,
// property tables and transport properties; the list of all.

import type { ValidationRow } from '../../tests/reference/validation.ts';
import { gatherRows, type RowsFile } from './gather.ts';
import { statesPage } from './states-page.ts';
import { tablesPage } from './tables-page.ts';
import { transportPage } from './transport-page.ts';

export interface ValidationPage {
  /** 'tank.md'. */
  readonly name: string;
  readonly text: string;
}

const words =
  '"Reference" rows are held by the tests with a tolerance that stands there. Rows marked "common practice, no source" are figures of the trade nobody could name a source for: they are reported and hold nothing.';
const made = 'Made by `npm run documents`; do not edit.';

/** Every page. @throws Error if nothing was gathered */
export function validationPages(): readonly ValidationPage[] {
  const folders = byFolder(gatherRows());
  if (folders.size === 0) throw new Error('no rows were found in tests/reference/**/rows.ts');
  const measured = [statesPage(), tablesPage(), transportPage()];
  const pages = [...folders].map(([folder, files]) => ({
    name: `${folder}.md`,
    title: headline(folder),
    about: `${count(files)} values`,
    text: rowsPage(folder, files),
  }));
  return [
    { name: 'README.md', text: listOf([...pages, ...measured].toSorted((a, b) => (a.name < b.name ? -1 : 1))) },
    ...pages.map(({ name, text }) => ({ name, text })),
    ...measured.map(({ name, text }) => ({ name, text })),
  ];
}

function listOf(pages: readonly { name: string; title: string; about: string }[]): string {
  const lines = pages.map(({ name, title, about }) => `- [${title}](${name}): ${about}`);
  return `# Validation\n\nOur results beside values from outside the project. ${made} ${words}\n\n${lines.join('\n')}\n`;
}

function rowsPage(folder: string, files: readonly RowsFile[]): string {
  const parts = [`# ${headline(folder)}`, `Our results beside values from outside the project. ${made} ${words}`];
  for (const { file, rows } of files) {
    parts.push(`From [${file}](../../${file}).`);
    for (const [subject, own] of groupBySubject(rows)) parts.push(`## ${subject}`, table(own));
  }
  return `${parts.join('\n\n')}\n`;
}

function byFolder(files: readonly RowsFile[]): ReadonlyMap<string, readonly RowsFile[]> {
  const folders = new Map<string, RowsFile[]>();
  for (const entry of files) {
    const folder = entry.file.split('/')[2]!;
    folders.set(folder, [...(folders.get(folder) ?? []), entry]);
  }
  return folders;
}

function count(files: readonly RowsFile[]): number {
  return files.reduce((sum, { rows }) => sum + rows.length, 0);
}

function headline(folder: string): string {
  return folder[0]!.toUpperCase() + folder.slice(1);
}

function groupBySubject(rows: readonly ValidationRow[]): ReadonlyMap<string, readonly ValidationRow[]> {
  const groups = new Map<string, ValidationRow[]>();
  for (const row of rows) groups.set(row.subject, [...(groups.get(row.subject) ?? []), row]);
  return groups;
}

/** What all rows of a subject share stands once above their table: status and source, and what is noted of them. */
function table(rows: readonly ValidationRow[]): string {
  const sources = noted(rows.map(({ status, source }) => `${status}: ${source}`));
  const reasons = noted(rows.map(({ reason }) => reason ?? ''));
  const lines = rows.map(({ quantity, published, ours, deviation }, k) => {
    const cells = [
      quantity,
      asPrinted(published),
      written(ours, published),
      deviation,
      ...(sources.shared === undefined ? [sources.all[k]!] : []),
      ...(reasons.shared === undefined ? [reasons.all[k]!] : []),
    ];
    return `| ${cells.map((cell) => cell.replaceAll('|', '\\|').replaceAll('\n', ' ')).join(' | ')} |`;
  });
  const columns = [
    'quantity',
    'published',
    'ours',
    'deviation',
    ...(sources.shared === undefined ? ['status and source'] : []),
    ...(reasons.shared === undefined ? ['note'] : []),
  ];
  const head = `| ${columns.join(' | ')} |\n| ${columns.map(() => '---').join(' | ')} |`;
  const above = [sources.shared, reasons.shared].filter((note) => note !== undefined && note !== '');
  return `${above.map((note) => `${capital(note!)}.\n\n`).join('')}${head}\n${lines.join('\n')}`;
}

/** Notes of all rows, and the one they share. */
function noted(all: readonly string[]): { readonly all: readonly string[]; readonly shared: string | undefined } {
  return { all, shared: new Set(all).size === 1 ? all[0] : undefined };
}

function capital(text: string): string {
  return text[0]!.toUpperCase() + text.slice(1);
}

/** A published number went through base SI: digits past the twelfth are those of the conversion. */
function asPrinted(published: number | string): string {
  return typeof published === 'number' ? String(Number(published.toPrecision(12))) : published;
}

/** To 8 digits, or one more than were printed. */
function written(ours: number, published: number | string): string {
  if (Number.isInteger(ours)) return String(ours);
  const printed =
    typeof published === 'number'
      ? Number(asPrinted(published)).toExponential().replace(/e.*/, '').replace(/\D/g, '').length
      : 0;
  return String(Number(ours.toPrecision(Math.min(Math.max(8, printed + 1), 12))));
}
