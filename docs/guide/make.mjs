// `node docs/guide/make.mjs`: writes the table of fields into design-file.md from the schema's field records, and the JSON
// Schemas of a design and of an assessment beside it.

import { readFile, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { buildForNode, root } from '../../src/cli/build.mjs';

const guide = join(root, 'docs', 'guide');
const page = join(guide, 'design-file.md');

const { withFieldTable } = await bundled('gather.ts');
await writeFile(page, withFieldTable(await readFile(page, 'utf8')));
console.log('fields written to docs/guide/design-file.md');

const { schemaFiles } = await bundled('schemas.ts');
for (const { name, text } of schemaFiles()) {
  await writeFile(join(guide, name), text);
  console.log(`docs/guide/${name}`);
}

/** @param {string} file  TypeScript file in docs/guide */
async function bundled(file) {
  const folder = join(root, 'dist', `guide-${file}-${process.pid}`);
  try {
    await buildForNode(join(guide, file), folder);
    return await import(pathToFileURL(join(folder, 'entry.js')).href);
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}
