// `npm run documents`: writes docs/validation/README.md from the rows of tests/reference/**/rows.ts: our results beside
// values from outside the project. Nothing here passes or fails; the tests do that.

import { rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { buildForNode, root } from '../../src/cli/build.mjs';

const folder = join(root, 'dist', `validation-${process.pid}`);
const target = join(root, 'docs', 'validation', 'README.md');

try {
  await buildForNode(join(root, 'docs', 'validation', 'gather.ts'), folder);
  const { gatherRows } = await import(pathToFileURL(join(folder, 'entry.js')).href);
  const files = gatherRows();
  const count = files.reduce((/** @type {number} */ sum, /** @type {RowsFile} */ { rows }) => sum + rows.length, 0);
  if (count === 0) throw new Error('no rows were found in tests/reference/**/rows.ts');
  await writeFile(target, page(files));
  console.log(`${count} rows from ${files.length} files written to docs/validation/README.md`);
} finally {
  await rm(folder, { recursive: true, force: true });
}

/**
 * @typedef {import('../../tests/reference/validation.ts').ValidationRow} ValidationRow
 * @typedef {{ file: string, rows: readonly ValidationRow[] }} RowsFile
 */

/** @param {readonly RowsFile[]} files */
function page(files) {
  const parts = [
    '# Validation',
    'Our results beside values from outside the project. Made by `npm run documents`; do not edit. "Reference" rows are held by the tests with a tolerance that stands there. Rows marked "common practice, no source" are figures of the trade nobody could name a source for: they are reported and hold nothing.',
  ];
  for (const { file, rows } of files) {
    parts.push(`## ${headline(file)}`, `From [${file}](../../${file}).`);
    for (const [subject, own] of groupBySubject(rows)) parts.push(`### ${subject}`, table(own));
  }
  return `${parts.join('\n\n')}\n`;
}

/** @param {string} file */
function headline(file) {
  const name = file.split('/').at(-2) ?? file;
  return name[0]?.toUpperCase() + name.slice(1);
}

/** @param {readonly ValidationRow[]} rows */
function groupBySubject(rows) {
  /** @type {Map<string, ValidationRow[]>} */
  const groups = new Map();
  for (const row of rows) groups.set(row.subject, [...(groups.get(row.subject) ?? []), row]);
  return groups;
}

/** @param {readonly ValidationRow[]} rows */
function table(rows) {
  const lines = rows.map(({ quantity, published, ours, deviation, status, source, reason }) =>
    [
      quantity,
      String(published),
      write(ours),
      deviation,
      status,
      reason === undefined ? source : `${source}. ${reason}`,
    ]
      .map((cell) => cell.replaceAll('|', '\\|').replaceAll('\n', ' '))
      .join(' | '),
  );
  return [
    '| quantity | published | ours | deviation | status | source |',
    '| --- | --- | --- | --- | --- | --- |',
    ...lines.map((line) => `| ${line} |`),
  ].join('\n');
}

/** @param {number} value */
function write(value) {
  return Number.isInteger(value) ? String(value) : String(Number(value.toPrecision(8)));
}
