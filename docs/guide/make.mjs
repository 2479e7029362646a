// `node docs/guide/make.mjs`: writes the table of fields into design-file.md from the schema's field records.

import { readFile, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { buildForNode, root } from '../../src/cli/build.mjs';

const folder = join(root, 'dist', `guide-${process.pid}`);
const page = join(root, 'docs', 'guide', 'design-file.md');

try {
  await buildForNode(join(root, 'docs', 'guide', 'gather.ts'), folder);
  const { withFieldTable } = await import(pathToFileURL(join(folder, 'entry.js')).href);
  await writeFile(page, withFieldTable(await readFile(page, 'utf8')));
  console.log('fields written to docs/guide/design-file.md');
} finally {
  await rm(folder, { recursive: true, force: true });
}
