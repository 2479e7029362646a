// `npm run documents`: writes the pages of docs/theory from the formula records of the engine.

import { readdir, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { buildForNode, root } from '../../src/cli/build.mjs';

const folder = join(root, 'dist', `theory-${process.pid}`);
const target = join(root, 'docs', 'theory');

try {
  await buildForNode(join(target, 'gather.ts'), folder);
  const { theoryPages } = await import(pathToFileURL(join(folder, 'entry.js')).href);
  /** @type {readonly import('./gather.ts').TheoryPage[]} */
  const pages = theoryPages();
  if (pages.length === 0) throw new Error('no formula record was found');
  for (const name of await readdir(target)) if (name.endsWith('.md')) await rm(join(target, name));
  for (const { name, text } of pages) await writeFile(join(target, name), text);
  const list = pages.map(({ name, title }) => `- [${title}](${name})`).join('\n');
  await writeFile(
    join(target, 'README.md'),
    `# Theory\n\nOne page per folder of the engine. Written by \`npm run documents\`; do not edit.\n\n${list}\n`,
  );
  console.log(`${pages.length} pages written to docs/theory`);
} finally {
  await rm(folder, { recursive: true, force: true });
}
