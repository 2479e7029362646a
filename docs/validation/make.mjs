// `npm run documents`: writes the pages of docs/validation: our results beside values from outside the project. Nothing here
// passes or fails; the tests do that.

import { rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { buildForNode, root } from '../../src/cli/build.mjs';

const folder = join(root, 'dist', `validation-${process.pid}`);
const target = join(root, 'docs', 'validation');

try {
  await buildForNode(join(target, 'entry.ts'), folder);
  const { validationPages } = await import(pathToFileURL(join(folder, 'entry.js')).href);
  /** @type {readonly import('./pages.ts').ValidationPage[]} */
  const pages = validationPages();
  for (const { name, text } of pages) await writeFile(join(target, name), text);
  console.log(`${pages.length} pages written to docs/validation`);
} finally {
  await rm(folder, { recursive: true, force: true });
}
