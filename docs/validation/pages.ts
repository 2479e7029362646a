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

/** What all rows of a subject share stands once above their table. */
function table(rows: readonly ValidationRow[]): string {
  const notes = rows.map(
    ({ status, source, reason }) => `${status}: ${source}${reason === undefined ? '' : `. ${reason}`}`,
  );
  const shared = new Set(notes).size === 1;
  const lines = rows.map(({ quantity, published, ours, deviation }, k) => {
    const cells = [quantity, String(published), written(ours, published), deviation, ...(shared ? [] : [notes[k]!])];
    return `| ${cells.map((cell) => cell.replaceAll('|', '\\|').replaceAll('\n', ' ')).join(' | ')} |`;
  });
  const columns = ['quantity', 'published', 'ours', 'deviation', ...(shared ? [] : ['status and source'])];
  const head = `| ${columns.join(' | ')} |\n| ${columns.map(() => '---').join(' | ')} |`;
  return `${shared ? `${capital(notes[0]!)}.\n\n` : ''}${head}\n${lines.join('\n')}`;
}

function capital(text: string): string {
  return text[0]!.toUpperCase() + text.slice(1);
}

/** To 8 digits, or one more than were printed. */
function written(ours: number, published: number | string): string {
  if (Number.isInteger(ours)) return String(ours);
  const printed =
    typeof published === 'number' ? published.toExponential().replace(/e.*/, '').replace(/\D/g, '').length : 0;
  return String(Number(ours.toPrecision(Math.min(Math.max(8, printed + 1), 12))));
}
